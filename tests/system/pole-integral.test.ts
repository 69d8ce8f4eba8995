/** Integrals with a pole against their closed forms. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { poleIntegral } from "../../src/system/pole-integral.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("∫ dQ/|Q − a| is the logarithm of the distances, on either side, however near", () => {
  fc.assert(
    fc.property(between(-5, 5), between(1e-6, 3), between(1e-3, 10), (pole, near, width) => {
      const want = Math.log1p(width / near);
      expect(poleIntegral(() => 1, pole + near, pole + near + width, pole) / want).toBeCloseTo(1, 9);
      expect(poleIntegral(() => 1, pole - near - width, pole - near, pole) / want).toBeCloseTo(1, 9);
    }),
  );
});

test("with a polynomial over it: ∫ Q²/(Q − 1) from 2 to 4 is 6 + 2 + ln 3", () => {
  // Q²/(Q − 1) = Q + 1 + 1/(Q − 1).
  expect(poleIntegral((q) => q * q, 2, 4, 1)).toBeCloseTo(6 + 2 + Math.log(3), 11);
  // The same from the other side: ∫ Q²/(5 − Q) from 2 to 4 is −6 − 10 + 25 ln 3.
  expect(poleIntegral((q) => q * q, 2, 4, 5)).toBeCloseTo(-16 + 25 * Math.log(3), 11);
});

test("at the pole itself: finite where the function vanishes there, and ended where it does not", () => {
  expect(poleIntegral((q) => q - 2, 2, 4, 2)).toBeCloseTo(2, 12);
  expect(poleIntegral((q) => 4 - q, 2, 4, 4)).toBeCloseTo(2, 12);
  let calls = 0;
  const endless = poleIntegral(
    () => {
      calls++;
      return 1;
    },
    0,
    1,
    0,
  );
  // Panels that end at a third each: so many times ln 3.
  expect(endless).toBeCloseTo(80 * Math.log(3), 8);
  expect(calls).toBeLessThanOrEqual(80 * 12);
  expect(poleIntegral(() => 1, 3, 3, 0)).toBe(0);
});

test("few calls: a panel for each factor of three", () => {
  let calls = 0;
  poleIntegral(
    () => {
      calls++;
      return 1;
    },
    1,
    3 ** 5,
    0,
  );
  expect(calls).toBeLessThanOrEqual(6 * 12);
});
