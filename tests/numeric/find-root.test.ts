/** Brent's method: roots and number of calls against SciPy's, and the bracket kept. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { findRoot } from "../../src/numeric/index.ts";
import { fixture } from "./fixture.ts";

/** The functions of the fixture, by its names. */
const functions: Readonly<Record<string, (x: number) => number>> = {
  "cos x - x": (x) => Math.cos(x) - x,
  "x^3 - 2x - 5": (x) => x ** 3 - 2 * x - 5,
  "exp x - 1e4": (x) => Math.exp(x) - 1e4,
  "x^9": (x) => x ** 9,
  "1 - 1/x": (x) => 1 - 1 / x,
  "sqrt x - 3": (x) => Math.sqrt(x) - 3,
  "jump at 1/3": (x) => (x > 1 / 3 ? 1 : -1),
};

test.each(fixture.roots)("$name, in not many more calls than SciPy takes", ({ name, low, high, x, calls }) => {
  const f = functions[name] as (x: number) => number;
  let called = 0;
  const counted = (at: number): number => {
    called++;
    return f(at);
  };
  const root = findRoot(counted, low, high);
  expect(Math.abs(root.x - x)).toBeLessThanOrEqual(4 * Number.EPSILON * Math.max(Math.abs(x), 1e-15));
  expect(root.residual).toBe(f(root.x));
  expect(root.evaluations).toBe(called);
  // SciPy stops at 4 epsilon of x, this at 2: a third more calls where the root is flat.
  expect(called).toBeLessThanOrEqual(Math.ceil((4 / 3) * calls) + 1);
  // The other way round is the same task.
  expect(Math.abs(findRoot(f, high, low).x - x)).toBeLessThanOrEqual(4 * Number.EPSILON * Math.max(Math.abs(x), 1e-15));
});

test("a root at an end is taken at once", () => {
  expect(findRoot((x) => x - 2, 2, 5)).toEqual({ x: 2, residual: 0, evaluations: 2 });
  expect(findRoot((x) => x - 5, 2, 5)).toEqual({ x: 5, residual: 0, evaluations: 2 });
  expect(findRoot((x) => 2 - x, 2, 5)).toEqual({ x: 2, residual: 0, evaluations: 2 });
});

test("ends of one sign are no bracket", () => {
  expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow("no sign change");
  expect(() => findRoot((x) => -x * x - 1, -1, 1)).toThrow("no sign change");
});

test("a tolerance is kept, and saves calls", () => {
  const f = (x: number): number => Math.exp(x) - 1e4;
  const exact = Math.log(1e4);
  const rough = findRoot(f, 0, 20, 1e-3);
  expect(Math.abs(rough.x - exact)).toBeLessThanOrEqual(1e-3);
  expect(rough.evaluations).toBeLessThan(findRoot(f, 0, 20).evaluations);
});

test("a jump is closed in on to the tolerance, or to the smallest double within the 1100 halvings there are", () => {
  const jump = (x: number): number => (x > 0 ? 1 : -1);
  for (const [low, high] of [
    [-1, 4],
    [4, -1],
    [-100, 150],
  ] as const) {
    expect(Math.abs(findRoot(jump, low, high, 1e-3).x)).toBeLessThanOrEqual(1e-3);
    const { x, evaluations } = findRoot(jump, low, high);
    expect(Math.abs(x)).toBeLessThanOrEqual(2 * Number.MIN_VALUE);
    expect(evaluations).toBeLessThanOrEqual(1100);
  }
});

/** Calls that halving the bracket would take down to a width of twice the tolerance. */
const halvings = (low: number, high: number, tolerance: number): number =>
  2 + Math.ceil(Math.log2(Math.abs(high - low) / (2 * tolerance)));

test.each<[name: string, f: (x: number) => number, low: number, high: number, root: number, tolerance: number]>([
  ["x³, the root near an end", (x) => x ** 3, -1e-3, 1e6, 0, 1e-3],
  ["x³ + x, from afar", (x) => (x - 0.9) ** 3 + (x - 0.9), -1e9, 1, 0.9, 1e-12],
  ["a kink", (x) => (x > 0 ? 1e6 * x : x), -100, 150, 0, 1e-12],
  ["x e^(−1/x²), flat at its root", (x) => x * Math.exp(-1 / (x * x)), -100, 150, 0, 1e-3],
])("%s: never more calls than halving would take, either way round", (_, f, low, high, root, tolerance) => {
  for (const found of [findRoot(f, low, high, tolerance), findRoot(f, high, low, tolerance)]) {
    expect(Math.abs(f(found.x))).toBeLessThanOrEqual(
      Math.max(Math.abs(f(root + tolerance)), Math.abs(f(root - tolerance))),
    );
    expect(found.evaluations).toBeLessThanOrEqual(halvings(low, high, tolerance));
  }
});

test("a root where the function is all but straight takes a dozen calls, however far the bracket reaches", () => {
  for (const reach of [1, 1e3, 1e6, 1e9]) {
    const root = findRoot((x) => x + x ** 3 / (1 + x * x), -reach / 3, reach);
    expect(root.evaluations).toBeLessThanOrEqual(12);
    expect(Math.abs(root.x)).toBeLessThan(1e-15);
    const cubic = findRoot((x) => (x - 0.9) ** 3 + (x - 0.9), -reach, 1);
    expect(cubic.evaluations).toBeLessThanOrEqual(12);
  }
});

test("a rising function's root lies between its sign change, wherever that is", () => {
  const place = fc.double({ min: -100, max: 100, noNaN: true });
  fc.assert(
    fc.property(place, fc.double({ min: 0.1, max: 50, noNaN: true }), (at, steepness) => {
      const { x } = findRoot((z) => Math.atan(steepness * (z - at)), -150, 200);
      expect(Math.abs(x - at)).toBeLessThanOrEqual(1e-13 * Math.max(1, Math.abs(at)));
    }),
  );
});
