/** The fit against mpmath's normal equations in 50 digits, and where there is none. */
import { expect, test } from "vitest";
import { leastSquares } from "../../src/numeric/index.ts";
import { apart, fixture } from "./fixture.ts";

const { rows, y, ...want } = fixture.fit;

test("three unknowns, seven values", () => {
  const got = leastSquares(rows, y);
  expect(apart(got?.coefficients ?? [], want.coefficients)).toBeLessThan(1e-13);
  expect(apart(got?.residuals ?? [], want.residuals)).toBeLessThan(1e-12);
  expect(apart(got?.standardErrors ?? [], want.standardErrors)).toBeLessThan(1e-13);
  expect(Math.abs((got?.deviation ?? 0) / want.deviation - 1)).toBeLessThan(1e-13);
});

test("the columns may differ by any scale", () => {
  const scaled = rows.map(([one = 0, x = 0, xx = 0]) => [one * 1e150, x * 1e-150, xx]);
  const [a = 0, b = 0, c = 0] = want.coefficients;
  const got = leastSquares(scaled, y)?.coefficients.map((value, i) => value * ([1e150, 1e-150, 1][i] ?? 0));
  expect(apart(got ?? [], [a, b, c])).toBeLessThan(1e-12);
});

test("as many values as unknowns: solved, with no error to state", () => {
  const got = leastSquares(
    [
      [2, 1],
      [1, 3],
    ],
    [5, 10],
  );
  // 2·1 + 3 = 5 and 1 + 3·3 = 10.
  expect(apart(got?.coefficients ?? [], [1, 3])).toBeLessThan(1e-15);
  expect(got).toMatchObject({ standardErrors: null, deviation: null });
});

test.each([1, -1])(
  "a column along its axis, of sign %i, is reflected away from itself and not into nothing",
  (sign) => {
    const rows = [
      [sign, 0],
      [0, sign],
      [0, 0],
    ];
    expect(leastSquares(rows, [3, 4, 5])).toMatchObject({ coefficients: [3 * sign, 4 * sign], residuals: [0, 0, 5] });
  },
);

test("no fit where columns depend on each other, are empty, or outnumber the rows", () => {
  expect(
    leastSquares(
      [
        [1, 2],
        [2, 4],
        [3, 6],
      ],
      [1, 2, 3],
    ),
  ).toBeNull();
  expect(
    leastSquares(
      [
        [1, 0],
        [2, 0],
        [3, 0],
      ],
      [1, 2, 3],
    ),
  ).toBeNull();
  expect(leastSquares([[1, 2]], [3])).toBeNull();
  expect(leastSquares([[1e308], [1.7e308]], [1, 2])).toBeNull();
});

test("columns all but alike are told apart down to the limit", () => {
  const nearly = (gap: number) =>
    leastSquares(
      [
        [1, 1 + gap],
        [1, 1 - gap],
        [1, 1],
      ],
      [1, 2, 3],
    );
  expect(nearly(1e-10)).not.toBeNull();
  expect(nearly(1e-14)).toBeNull();
});
