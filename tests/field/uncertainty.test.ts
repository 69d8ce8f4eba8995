/** The first-order law against Monte Carlo and against closed forms; the generator against chance. */
import fc from "fast-check";
import { monteCarlo, propagateUncertainty, type Spread } from "risingmain/field";
import { expect, test } from "vitest";
import { seededRandom } from "../../src/field/seeded-random.ts";

const two = (x: number, ux: number, y: number, uy: number) => [
  { name: "x", value: x, standardUncertainty: ux },
  { name: "y", value: y, standardUncertainty: uy },
];

const numbers = fc.double({ min: 1, max: 1000, noNaN: true });
const shares = fc.double({ min: 1e-4, max: 0.2, noNaN: true });

test("a sum adds squares; a product adds squares of shares", () => {
  fc.assert(
    fc.property(numbers, shares, numbers, shares, (x, a, y, b) => {
      const inputs = two(x, a * x, y, b * y);
      const sum = propagateUncertainty({ inputs, model: ([p = 0, q = 0]) => p + q });
      expect(sum.standardUncertainty / Math.hypot(a * x, b * y)).toBeCloseTo(1, 7);
      const product = propagateUncertainty({ inputs, model: ([p = 0, q = 0]) => p * q });
      expect(product.standardUncertainty / product.value / Math.hypot(a, b)).toBeCloseTo(1, 7);
      expect(product.parts.reduce((total, { share }) => total + share, 0)).toBeCloseTo(1, 12);
    }),
  );
});

test("readings that err together: whole correlation adds, opposite cancels", () => {
  const inputs = two(10, 0.3, 10, 0.3);
  const model = ([p = 0, q = 0]: readonly number[]) => p + q;
  const at = (coefficient: number) =>
    propagateUncertainty({ inputs, model, correlations: [{ first: 0, second: 1, coefficient }] }).standardUncertainty;
  expect(at(1)).toBeCloseTo(0.6, 7);
  expect(at(0)).toBeCloseTo(0.3 * Math.SQRT2, 7);
  expect(at(-1)).toBeCloseTo(0, 7);
});

const models: readonly [string, (values: readonly number[]) => number][] = [
  ["a flow from a bucket", ([v = 0, t = 1]) => v / t],
  ["a jet", ([x = 0, y = 1]) => x / Math.sqrt(Math.abs(y))],
  ["a difference", ([p = 0, q = 0]) => p - q],
  ["a head from friction", ([q = 0, d = 1]) => (q * Math.abs(q)) / d ** 2],
];

test.each(models)("first order agrees with Monte Carlo within its sampling error: %s", (_, model) => {
  for (const seed of [1, 2, 3]) {
    const inputs = two(20, 0.2, 18, 0.15);
    const law = propagateUncertainty({ inputs, model });
    const trial = monteCarlo({ inputs, model, seed, trials: 40_000 });
    // Four standard errors: one run in 16 000 strays further by chance; the seeds are fixed.
    expect(Math.abs(trial.standardUncertainty - law.standardUncertainty)).toBeLessThan(4 * trial.samplingError);
    expect(Math.abs(trial.mean - law.value)).toBeLessThan(
      (4 * law.standardUncertainty) / 200 + 1e-3 * Math.abs(law.value),
    );
  }
});

test("where the model bends first order is wrong and Monte Carlo says so", () => {
  const inputs = [{ name: "x", value: 0, standardUncertainty: 1 }];
  const model = ([x = 0]: readonly number[]) => x * x;
  expect(propagateUncertainty({ inputs, model }).standardUncertainty).toBeCloseTo(0, 6);
  // The square of a standard normal number has mean 1 and variance 2.
  const trial = monteCarlo({ inputs, model, seed: 5, trials: 100_000 });
  expect(Math.abs(trial.mean - 1)).toBeLessThan(0.02);
  expect(Math.abs(trial.standardUncertainty - Math.SQRT2)).toBeLessThan(0.03);
});

test("the same seed gives the same bits, another seed others", () => {
  const run = (seed: number) =>
    monteCarlo({ inputs: two(5, 0.1, 18, 0.5), model: ([v = 0, t = 1]) => v / t, seed, trials: 1000 });
  expect(run(42)).toEqual(run(42));
  expect(run(42).mean).not.toBe(run(43).mean);
});

test("each spread has the standard uncertainty it was given, and its own interval", () => {
  const half: Readonly<Record<Spread, number>> = {
    normal: 1.959964,
    rectangular: 0.95 * Math.sqrt(3),
    triangular: (1 - Math.sqrt(0.05)) * Math.sqrt(6),
  };
  for (const spread of ["normal", "rectangular", "triangular"] as const) {
    const trial = monteCarlo({
      inputs: [{ name: "x", value: 0, standardUncertainty: 1 }],
      spreads: [spread],
      model: ([x = 0]) => x,
      seed: 9,
      trials: 100_000,
    });
    expect(Math.abs(trial.standardUncertainty - 1)).toBeLessThan(0.01);
    expect(Math.abs(trial.interval95[1] - half[spread])).toBeLessThan(0.03);
    expect(Math.abs(trial.interval95[0] + half[spread])).toBeLessThan(0.03);
  }
});

test("the generator: even over a hundred cells, its neighbours unrelated, its normals normal", () => {
  for (const seed of [0, 1, 4294967295]) {
    const random = seededRandom(seed);
    const cells = new Array<number>(100).fill(0);
    let product = 0;
    let outside = 0;
    let last = random.uniform();
    const n = 50_000;
    for (let i = 0; i < n; i++) {
      const u = random.uniform();
      if (!(u >= 0 && u < 1)) outside++;
      cells[Math.floor(u * 100)] = (cells[Math.floor(u * 100)] ?? 0) + 1;
      product += (u - 0.5) * (last - 0.5);
      last = u;
    }
    expect(outside).toBe(0);
    // Chi-square of 99 degrees of freedom: mean 99, standard deviation 14; correlation: standard error 1/√n.
    const chi = cells.reduce((sum, count) => sum + (count - n / 100) ** 2 / (n / 100), 0);
    expect(chi).toBeGreaterThan(50);
    expect(chi).toBeLessThan(160);
    expect(Math.abs((12 * product) / n)).toBeLessThan(5 / Math.sqrt(n));
    let fourth = 0;
    for (let i = 0; i < n; i++) fourth += random.normal() ** 4;
    expect(Math.abs(fourth / n - 3)).toBeLessThan(0.25);
  }
});

test("a model that gives no number is refused by name", () => {
  const inputs = two(1, 0.1, 1, 0.1);
  expect(() => propagateUncertainty({ inputs, model: () => Number.NaN })).toThrow(/model/);
  expect(() => monteCarlo({ inputs, model: ([x = 0]) => Math.log(-x), seed: 1 })).toThrow(/model/);
});
