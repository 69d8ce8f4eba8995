/** Gauss–Legendre rules by what defines them, and the adaptive integral against closed forms. */
import { describe, expect, test } from "vitest";
import {
  GAUSS_POINTS,
  gaussIntegral,
  gaussPoint,
  gaussWeight,
  integrate,
  SHORT_POINTS,
  SHORT_WEIGHTS,
} from "../../src/numeric/index.ts";

const [low, high] = [0.5, 2];
const powers = (most: number): readonly number[] => Array.from({ length: most + 1 }, (_, power) => power);
const exact = (power: number): number => (high ** (power + 1) - low ** (power + 1)) / (power + 1);

describe("twelve points", () => {
  test.each(powers(23))("integrate x^%i exactly, in one call and by hand", (power) => {
    expect(Math.abs(gaussIntegral((x) => x ** power, low, high) / exact(power) - 1)).toBeLessThan(1e-14);
    let sum = 0;
    for (let i = 0; i < GAUSS_POINTS; i++) sum += gaussWeight(i, low, high) * gaussPoint(i, low, high) ** power;
    expect(Math.abs(sum / exact(power) - 1)).toBeLessThan(1e-14);
  });

  test("the points ascend within the interval", () => {
    const points = Array.from({ length: GAUSS_POINTS }, (_, i) => gaussPoint(i, low, high));
    expect(points).toEqual([...points].sort((a, b) => a - b));
    expect(points[0]).toBeGreaterThan(low);
    expect(points.at(-1)).toBeLessThan(high);
  });
});

test.each(powers(7))("four points integrate x^%i exactly over −1 to 1", (power) => {
  const sum = SHORT_POINTS.reduce((total, x, i) => total + (SHORT_WEIGHTS[i] ?? Number.NaN) * x ** power, 0);
  expect(Math.abs(sum - (power % 2 === 0 ? 2 / (power + 1) : 0))).toBeLessThan(1e-15);
});

describe("the adaptive integral", () => {
  test.each([
    ["√x over 0 to 1", Math.sqrt, 0, 1, 2 / 3],
    ["|x − 1/3| over 0 to 1", (x: number) => Math.abs(x - 1 / 3), 0, 1, (1 / 9 + 4 / 9) / 2],
    ["1/(1 + 100x²) over −1 to 2", (x: number) => 1 / (1 + 100 * x * x), -1, 2, (Math.atan(20) + Math.atan(10)) / 10],
    ["e^x, backwards", Math.exp, 1, 0, 1 - Math.E],
  ] as const)("of %s", (_, f, a, b, value) => {
    const got = integrate(f, a, b);
    expect(Math.abs(got.value / value - 1)).toBeLessThan(1e-11);
    expect(got.met).toBe(true);
  });

  test("of nothing is nothing", () => {
    for (const f of [Math.exp, (x: number) => -x]) expect(integrate(f, 3, 3)).toEqual({ value: 0, met: true });
    expect(integrate(() => 0, 0, 1)).toEqual({ value: 0, met: true });
  });

  test("of a function a million times as large is as much larger, for the same work", () => {
    const times = (factor: number) => {
      let calls = 0;
      const { value } = integrate(
        (x) => {
          calls++;
          return factor * Math.sqrt(x);
        },
        0,
        1,
      );
      return { value: value / factor, calls };
    };
    expect(times(2 ** 20)).toEqual(times(1));
    expect(times(2 ** -20)).toEqual(times(1));
  });

  test("a looser tolerance asks for fewer values, and is met", () => {
    let calls = 0;
    const f = (x: number): number => {
      calls++;
      return Math.sqrt(x);
    };
    const rough = integrate(f, 0, 1, 1e-4);
    const roughCalls = calls;
    calls = 0;
    integrate(f, 0, 1);
    expect(roughCalls).toBeLessThan(calls / 4);
    expect(Math.abs(rough.value - 2 / 3)).toBeLessThan(1e-4);
    expect(rough.met).toBe(true);
  });

  test("a jump is closed in on, and said not to be met", () => {
    let calls = 0;
    const jump = (x: number): number => {
      calls++;
      return x > 1 / Math.PI ? 1 : 0;
    };
    const got = integrate(jump, 0, 1, 1e-15);
    expect(Math.abs(got.value - (1 - 1 / Math.PI))).toBeLessThan(1e-11);
    expect(got.met).toBe(false);
    // The whole, its halves, and forty times those of both halves.
    expect(calls).toBeLessThanOrEqual(12 * (1 + 2 + 4 * 40));
  });

  test("a function of nothing but jumps ends, within the budget of intervals", () => {
    let calls = 0;
    const got = integrate(
      (x) => {
        calls++;
        return Math.sin(1e9 * x) > 0 ? 1 : -1;
      },
      0,
      1,
    );
    expect(got.met).toBe(false);
    // 20,000 intervals of two times twelve points, the halves still open when it runs out, and the first twelve points.
    expect(calls).toBeLessThan(24 * 20_100);
    expect(calls).toBeGreaterThan(24 * 19_000);
  });
});
