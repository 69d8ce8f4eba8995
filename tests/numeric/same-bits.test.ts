/** The logarithm and exponential that every engine computes alike, beside the engine's own, which is good to 1 ulp. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { sameBitsExp, sameBitsLog } from "../../src/numeric/index.ts";

const MOST_ULPS = 3;

test("ln x over the whole range of doubles, and dense about 1", () => {
  const near = fc.double({ min: 0.25, max: 4, noNaN: true });
  const any = fc.double({ min: Number.MIN_VALUE, max: Number.MAX_VALUE, noNaN: true });
  fc.assert(
    fc.property(fc.oneof(near, any), (x) => {
      const want = Math.log(x);
      expect(Math.abs(sameBitsLog(x) - want)).toBeLessThanOrEqual(MOST_ULPS * Number.EPSILON * Math.abs(want));
    }),
    { numRuns: 5000 },
  );
});

test("eˣ wherever it is an ordinary number", () => {
  fc.assert(
    fc.property(fc.double({ min: -708, max: 709.6, noNaN: true }), (x) => {
      const want = Math.exp(x);
      expect(Math.abs(sameBitsExp(x) / want - 1)).toBeLessThanOrEqual(MOST_ULPS * Number.EPSILON);
    }),
    { numRuns: 5000 },
  );
});

test("ln x at every power of two, and within each octave", () => {
  for (let e = -1074; e < 1024; e++) {
    for (const m of [1, 1.1, Math.SQRT2, 1.9]) {
      const x = m * 2 ** e;
      const want = Math.log(x);
      expect(Math.abs(sameBitsLog(x) - want)).toBeLessThanOrEqual(MOST_ULPS * Number.EPSILON * Math.abs(want));
    }
  }
});

test("eˣ evenly over its range", () => {
  for (let x = -708; x < 709.6; x += 0.0625 * Math.PI) {
    expect(Math.abs(sameBitsExp(x) / Math.exp(x) - 1)).toBeLessThanOrEqual(MOST_ULPS * Number.EPSILON);
  }
});

test("the ends", () => {
  expect([sameBitsLog(1), sameBitsExp(0)]).toEqual([0, 1]);
  expect([sameBitsLog(0), sameBitsLog(Infinity), sameBitsExp(1000), sameBitsExp(-1000)]).toEqual([
    -Infinity,
    Infinity,
    Infinity,
    0,
  ]);
  expect([709.7, Infinity].map(sameBitsExp)).toEqual([Infinity, Infinity]);
  expect([-745.2, -Infinity].map(sameBitsExp)).toEqual([0, 0]);
  expect(sameBitsExp(-745)).toBeLessThanOrEqual(Number.MIN_VALUE);
  for (const x of [-1, -Infinity, Number.NaN]) expect(sameBitsLog(x)).toBeNaN();
  expect(sameBitsExp(Number.NaN)).toBeNaN();
});
