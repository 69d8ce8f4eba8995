/** Slopes by hand from the three-point formula and its limits; values and derivatives against SciPy's cubic spline. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicSlope, cubicValue, monotoneCubic } from "../../src/numeric/index.ts";
import { fixture } from "./fixture.ts";

describe("slopes", () => {
  test("are the parabola's through three points, cut to three times the flatter chord", () => {
    // Chords 1, 1/2 and 8 over widths 1, 2 and 1.
    // First: 1 + 1·(1 − 1/2)/3. Second: (2·1 + 1·1/2)/3. Third: (1·1/2 + 2·8)/3 = 5.5, cut to 3·1/2. Last: 8 + 1·(8 − 1/2)/3.
    const { slope } = monotoneCubic([0, 1, 3, 4], [0, 1, 2, 10]);
    [7 / 6, 5 / 6, 1.5, 10.5].forEach((want, i) => {
      expect(slope[i]).toBeCloseTo(want, 14);
    });
    // The same mirrored, falling.
    monotoneCubic([0, 1, 3, 4], [0, -1, -2, -10]).slope.forEach((got, i) => {
      expect(got).toBe(-(slope[i] ?? 0));
    });
    monotoneCubic([-4, -3, -1, 0], [-10, -2, -1, 0]).slope.forEach((got, i) => {
      expect(got).toBeCloseTo(slope[3 - i] ?? 0, 14);
    });
  });

  test("are zero where the points turn or stand still", () => {
    expect(monotoneCubic([0, 1, 2], [0, 5, 1]).slope[1]).toBe(0);
    expect(monotoneCubic([0, 1, 2, 3], [0, 2, 2, 4]).slope.slice(1, 3)).toEqual([0, 0]);
  });

  test("at an end keep the sense of its chord, and three times it at most", () => {
    // 1 + (1 − 9)/2 is against the chord; 1 + (1 + 9)/2 is six times it.
    expect(monotoneCubic([0, 1, 2], [0, 1, 10]).slope[0]).toBe(0);
    expect(monotoneCubic([0, 1, 2], [0, 1, -8]).slope[0]).toBe(3);
  });

  test("of two points are their chord", () => {
    expect(monotoneCubic([1, 3], [2, 8]).slope).toEqual([3, 3]);
  });
});

test.each(fixture.cubic.read)("value and derivative at $x are SciPy's", ({ x, value, slope }) => {
  // The slope given at 4 would carry the value beyond the points between 3 and 4; the others lie between theirs.
  expect(cubicValue(fixture.cubic, x)).toBeCloseTo(value, 13);
  expect(cubicSlope(fixture.cubic, x)).toBeCloseTo(slope, 12);
});

test("a value never leaves its piece, though the slopes would carry it out", () => {
  const wild = { x: [0, 1, 2], y: [0, 1, 0], slope: [12, 12, 12] };
  // 0.25 (12 − 33/4 + 22/16) = 1.28 and 0.75 (12 − 99/4 + 22·9/16) = −0.28, cut to the points.
  expect(cubicValue(wild, 0.25)).toBe(1);
  expect(cubicValue(wild, 0.75)).toBe(0);
  expect(cubicValue(wild, 1.25)).toBe(1);
  expect(cubicValue(wild, 1.75)).toBe(0);
});

test("every point is met to the bit, the last too", () => {
  const points = fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), { minLength: 2, maxLength: 9 });
  fc.assert(
    fc.property(points, (y) => {
      const x = y.map((_, i) => i / 3);
      const line = monotoneCubic(x, y);
      x.forEach((at, i) => {
        expect(cubicValue(line, at)).toBe(y[i]);
      });
    }),
  );
});
