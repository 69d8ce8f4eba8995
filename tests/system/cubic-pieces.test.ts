/** Curves of cubic pieces against the cubics they are made of. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { cubicSlope, cubicValue, monotoneCubic } from "../../src/numeric/monotone-cubic.ts";
import {
  added,
  type CubicPiece,
  crossings,
  cut,
  falls,
  pieceAt,
  piecesOf,
  slopeAt,
  upTo,
  valueAt,
  whereAt,
} from "../../src/system/cubic-pieces.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const coefficients = between(-3, 3);

/** A piece from 1 to 3, since one from 0 would hide where it is counted from. */
const piece = (c0: number, c1: number, c2: number, c3: number, from = 1, to = 3): CubicPiece => ({
  from,
  to,
  c0,
  c1,
  c2,
  c3,
});
const pieces = fc.tuple(coefficients, coefficients, coefficients, coefficients).map((c) => piece(...c));

/** Lines of up to six points, from 0 on. */
const lines = fc.array(fc.tuple(between(0.1, 2), between(-2, 2)), { minLength: 1, maxLength: 5 }).map((steps) => {
  const x = [0];
  const y = [1];
  for (const [dx, dy] of steps) {
    x.push((x.at(-1) as number) + dx);
    y.push((y.at(-1) as number) + dy);
  }
  return monotoneCubic(x, y);
});

test("the pieces of a line have its values and slopes, at every point the piece that begins there", () => {
  fc.assert(
    fc.property(lines, between(0, 1), (line, share) => {
      const own = piecesOf(line);
      const end = line.x.at(-1) as number;
      for (const x of [share * end, ...line.x]) {
        const its = pieceAt(own, x);
        expect(valueAt(its, x)).toBeCloseTo(cubicValue(line, x), 11);
        expect(slopeAt(its, x)).toBeCloseTo(cubicSlope(line, x), 9);
      }
      expect(line.x.slice(0, -1).map((x) => pieceAt(own, x).from)).toEqual(line.x.slice(0, -1));
      expect(pieceAt(own, end + 1)).toBe(own.at(-1));
    }),
  );
});

test("y = (x − 1)³ written out: 8 and 12 at 3", () => {
  const cube = piece(0, 0, 0, 1);
  expect([valueAt(cube, 3), slopeAt(cube, 3)]).toEqual([8, 12]);
  // Counted from 2: 1 + 3 t + 3 t² + t³.
  expect(cut(cube, 2, 3)).toEqual(piece(1, 3, 3, 1, 2, 3));
});

test("cut and ended early, a curve is the same curve", () => {
  fc.assert(
    fc.property(pieces, between(1, 2), between(0, 1), (whole, from, share) => {
      const part = cut(whole, from, 3);
      const x = from + share * (3 - from);
      expect([part.from, part.to]).toEqual([from, 3]);
      expect(valueAt(part, x)).toBeCloseTo(valueAt(whole, x), 11);
      expect(slopeAt(part, x)).toBeCloseTo(slopeAt(whole, x), 10);
    }),
  );
  const [a, b] = [piece(1, 0, 0, 1, 0, 1), piece(2, 3, 0, 0, 1, 2)] as const;
  expect(upTo([a, b], 1.5)).toEqual([a, { ...b, to: 1.5 }]);
  // At a knot the next piece is left out, and one that reaches just there is the same object.
  expect(upTo([a, b], 1)).toEqual([a]);
  expect(upTo([a, b], 2)[1]).toBe(b);
});

test("a sum is a sum at every point, with a knot wherever either has one", () => {
  fc.assert(
    fc.property(lines, lines, between(-2, 2), between(0, 1), (one, two, scale, share) => {
      const [a, b] = [piecesOf(one), piecesOf(two)];
      const end = Math.min(one.x.at(-1) as number, two.x.at(-1) as number);
      const sum = added(upTo(a, end), upTo(b, end), scale);
      const x = share * end;
      expect(valueAt(pieceAt(sum, x), x)).toBeCloseTo(cubicValue(one, x) + scale * cubicValue(two, x), 10);
      const knots = [...new Set([...one.x, ...two.x])].filter((knot) => knot <= end).sort((p, q) => p - q);
      expect(sum.map(({ from }) => from)).toEqual(knots.filter((knot) => knot < end));
      expect(sum.slice(1).map(({ from }) => from)).toEqual(sum.slice(0, -1).map(({ to }) => to));
      expect(sum.at(-1)?.to).toBe(end);
    }),
  );
});

test("knots nearer than a billionth of a thousandth of the stretch are one, and so are those at its ends", () => {
  const flat = (...knots: readonly number[]): CubicPiece[] =>
    knots.slice(1).map((to, i) => piece(i, 0, 0, 0, knots[i] as number, to));
  const knotsOf = (a: readonly CubicPiece[], b: readonly CubicPiece[]) => added(a, b, 1).map(({ from }) => from);
  // A stretch of 1000, whose trillionth is 1e-9.
  expect(knotsOf(flat(0, 500, 1000), flat(0, 500 + 5e-10, 1000))).toEqual([0, 500]);
  expect(knotsOf(flat(0, 500, 1000), flat(0, 500 + 2e-9, 1000))).toEqual([0, 500, 500 + 2e-9]);
  expect(knotsOf(flat(0, 1000), flat(0, 5e-10, 1000 - 5e-10, 1000))).toEqual([0]);
  expect(knotsOf(flat(0, 1000), flat(0, 2e-9, 1000 - 2e-9, 1000))).toEqual([0, 2e-9, 1000 - 2e-9]);
  // The same counted from 2000 on.
  expect(knotsOf(flat(2000, 3000), flat(2000, 2500, 2500 + 2e-9, 3000))).toEqual([2000, 2500, 2500 + 2e-9]);
});

test("a piece falls where no slope in it climbs: at its ends, or where it bends", () => {
  // Slopes −t² and its kin, from 1 on with t = x − 1.
  const cases: readonly (readonly [what: string, piece: CubicPiece, answer: boolean])[] = [
    ["a straight fall", piece(0, -1, 0, 0), true],
    ["a straight climb", piece(0, 1, 0, 0), false],
    ["level", piece(0, 0, 0, 0), false],
    ["flat at its start", piece(0, 0, -1, 0), true],
    ["flat at its end, 4 − t", piece(0, -4, 1, 0), true],
    ["climbs at its start alone", piece(0, 0.1, -1, 0), false],
    ["climbs at its end alone", piece(0, -3.9, 1, 0), false],
    // Slope −(t − 1)² is 0 in the middle; −(t − 1)² + 0.1 climbs there alone.
    ["flat in the middle", piece(0, -1, 1, -1 / 3), true],
    ["climbs in the middle alone", piece(0, -0.9, 1, -1 / 3), false],
    // Slope (t − 3)² − 10 is steepest past its end.
    ["bends past its end", piece(0, -1, -3, 1 / 3), true],
    // Slope −(t + 1)² + 0.5 would climb before its start.
    ["bends before its start", piece(0, -0.5, -1, -1 / 3), true],
    // A climb of a tenth of a billionth of the mean fall is rounding, one of a hundred billionths is not.
    ["flat but for rounding", piece(0, 1e-10, -0.5, 0), true],
    ["not flat", piece(0, 1e-7, -0.5, 0), false],
    ["flat but for rounding, a thousand times as high", piece(0, 1e-7, -500, 0), true],
    ["not flat, a thousand times as high", piece(0, 1e-4, -500, 0), false],
    ["flat but for rounding, short", piece(0, 1e-7, -50_000, 0, 1, 1.01), true],
    ["flat but for rounding, with a high end", piece(1e9, 1e-7, -0.5, 0), false],
  ];
  for (const [what, curve, answer] of cases) expect([what, falls(curve)]).toEqual([what, answer]);
});

test("a falling curve read backwards", () => {
  fc.assert(
    fc.property(between(-3, -0.1), between(-3, 0), between(-3, 0), between(0, 1), (c1, c2, c3, share) => {
      const curve = piece(2, c1, c2, c3);
      const x = 1 + 2 * share;
      expect(whereAt(curve, valueAt(curve, x))).toBeCloseTo(x, 9);
    }),
  );
  const line = piece(2, -1, 0, 0);
  // Past its ends it stays at them.
  expect([3, 2, 1, 0, -1].map((value) => whereAt(line, value))).toEqual([1, 1, 2, 3, 3]);
});

test("curves cross where their difference has its roots, those at the very ends left out", () => {
  /** Scaled (x − r₁)(x − r₂)(x − r₃), from `from` on. */
  const through = (scale: number, roots: readonly [number, number, number], from = 1): CubicPiece => {
    const [p, q, r] = roots.map((root) => from - root) as [number, number, number];
    return piece(scale * p * q * r, scale * (p * q + q * r + p * r), scale * (p + q + r), scale, from);
  };
  const base = piece(4, -1, 0.5, 0.25, 0.5, 4);
  const plus = (a: CubicPiece, b: CubicPiece): CubicPiece => {
    const other = cut(b, a.from, a.to);
    return { ...a, c0: a.c0 + other.c0, c1: a.c1 + other.c1, c2: a.c2 + other.c2, c3: a.c3 + other.c3 };
  };
  const found = (difference: CubicPiece) => crossings(plus(difference, base), base);
  const expectRoots = (difference: CubicPiece, roots: readonly number[]): void => {
    const got = found(difference);
    expect(got.length).toBe(roots.length);
    roots.forEach((root, i) => {
      expect(got[i]).toBeCloseTo(root, 7);
    });
  };
  fc.assert(
    fc.property(
      between(1.05, 1.6),
      between(1.7, 2.2),
      between(2.3, 2.95),
      fc.constantFrom(1, -1, 5, -0.2),
      (p, q, r, scale) => {
        expectRoots(through(scale, [p, q, r]), [p, q, r]);
        // One root inside, two outside on either side.
        expectRoots(through(scale, [p - 2, q, r + 2]), [q]);
        expectRoots(through(scale, [-1, -2, q]), [q]);
        // A parabola (x − p)(x − r) and a line x − q.
        expectRoots(piece(scale * (1 - p) * (1 - r), scale * (2 - p - r), scale, 0), [p, r]);
        expectRoots(piece(scale * (1 - q), scale, 0, 0), [q]);
      },
    ),
  );
  expectRoots(through(1, [-1, -2, -3]), []);
  expectRoots(piece(1, 0, 0, 0), []);
  expectRoots(piece(1, 0, 1, 0), []);
  // t³ + 1.5 t − 2.5 has no turn, as 3 t² + 1.5 has no root.
  expectRoots(piece(-2.5, 1.5, 0, 1), [2]);
  // (x − 2)³ is level where it crosses; its turns fall together.
  expectRoots(piece(-1, 3, -3, 1), [2]);
  // t (t² − 3) + 1: turns at t = ±1, the one inside between roots at 2 cos 80° and 2 cos 40°.
  expectRoots(piece(1, -3, 0, 1), [1 + 2 * Math.cos((80 * Math.PI) / 180), 1 + 2 * Math.cos((40 * Math.PI) / 180)]);
  // t² (t − 1) + 0.1: one turn at the start, the other at t = 2/3.
  const turned = found(piece(0.1, 0, -1, 1)).map((x) => x - 1);
  expect(turned.length).toBe(2);
  for (const t of turned) expect(t * t * (t - 1)).toBeCloseTo(-0.1, 9);
  // Roots at the ends, 1 and 3, are no crossing inside.
  expectRoots(piece(0, -2, 1, 0), []);
  expectRoots(piece(0, 1, 0, 0), []);
  expectRoots(piece(-2, 1, 0, 0), []);
  expectRoots(piece(2, -1, 0, 0), []);
  expectRoots(piece(0, -1, 0, 0), []);
});
