/** Straight lines from point to point: through each, straight between, level beyond. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { polyline } from "../../src/numeric/polyline.ts";

const points = [
  [1, 10],
  [2, 20],
  [4, 0],
] as const;

test.each([...points, [0, 10], [1.5, 15], [3, 10], [3.5, 5], [5, 0]] as const)("at %f it is %f", (x, y) => {
  expect(polyline(points, x)).toBe(y);
});

test("between two points it divides as x does", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
      expect(polyline(points, 2 + 2 * share)).toBeCloseTo(20 * (1 - share), 12);
    }),
  );
});
