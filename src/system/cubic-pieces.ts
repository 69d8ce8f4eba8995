/**
 * Curves made of cubic pieces in flow: adding them, splitting them, reading them backwards.
 *
 * Pump head, loss in the main and drawdown are all such curves, so the pressure a pump makes at the tank is one too,
 * exactly, and every integral along it is of a smooth function piece by piece.
 *
 * @module
 */
import { type CubicLine, findRoot } from "../numeric/index.ts";

/** y = c0 + c1 t + c2 t² + c3 t³ with t = x − from, for x between `from` and `to`. */
export interface CubicPiece {
  readonly from: number;
  readonly to: number;
  readonly c0: number;
  readonly c1: number;
  readonly c2: number;
  readonly c3: number;
}

/** The pieces of a line of points, values and slopes. */
export function piecesOf(line: CubicLine): readonly CubicPiece[] {
  return line.x.slice(1).map((to, i) => {
    const from = line.x[i] as number;
    const y0 = line.y[i] as number;
    const d0 = line.slope[i] as number;
    const d1 = line.slope[i + 1] as number;
    const h = to - from;
    const chord = ((line.y[i + 1] as number) - y0) / h;
    return { from, to, c0: y0, c1: d0, c2: (3 * chord - 2 * d0 - d1) / h, c3: (d0 + d1 - 2 * chord) / (h * h) };
  });
}

/** The value of a piece at x. */
export function valueAt(piece: CubicPiece, x: number): number {
  const t = x - piece.from;
  return piece.c0 + t * (piece.c1 + t * (piece.c2 + t * piece.c3));
}

/** The slope of a piece at x. */
export function slopeAt(piece: CubicPiece, x: number): number {
  const t = x - piece.from;
  return piece.c1 + t * (2 * piece.c2 + t * 3 * piece.c3);
}

/** The same curve on a narrower stretch, counted from its own start. */
export function cut(piece: CubicPiece, from: number, to: number): CubicPiece {
  const t = from - piece.from;
  const { c0, c1, c2, c3 } = piece;
  return {
    from,
    to,
    c0: c0 + t * (c1 + t * (c2 + t * c3)),
    c1: c1 + t * (2 * c2 + t * 3 * c3),
    c2: c2 + 3 * t * c3,
    c3,
  };
}

/** Knots nearer than this share of the stretch are one knot. */
const SAME_KNOT = 1e-12;

/** a + scale · b, over the stretch of `a`; `b` must reach as far. */
export function added(a: readonly CubicPiece[], b: readonly CubicPiece[], scale: number): readonly CubicPiece[] {
  const start = (a[0] as CubicPiece).from;
  const end = (a.at(-1) as CubicPiece).to;
  // Two curves may have the same knot but for rounding; a piece that thin would be all rounding.
  const apart = SAME_KNOT * (end - start);
  const inner = [...a, ...b]
    .flatMap(({ from, to }) => [from, to])
    .filter((x) => x > start + apart && x < end - apart)
    .sort((x, y) => x - y);
  const knots = [start, ...inner.filter((x, i) => i === 0 || x - (inner[i - 1] as number) > apart), end];
  return knots.slice(1).map((to, i) => {
    const from = knots[i] as number;
    const p = cut(pieceAt(a, from), from, to);
    const q = cut(pieceAt(b, from), from, to);
    return {
      from,
      to,
      c0: p.c0 + scale * q.c0,
      c1: p.c1 + scale * q.c1,
      c2: p.c2 + scale * q.c2,
      c3: p.c3 + scale * q.c3,
    };
  });
}

/** The curve up to `end` only. */
export function upTo(pieces: readonly CubicPiece[], end: number): readonly CubicPiece[] {
  return pieces.filter(({ from }) => from < end).map((piece) => (piece.to > end ? cut(piece, piece.from, end) : piece));
}

/** The piece that x lies in, or the last. */
export function pieceAt(pieces: readonly CubicPiece[], x: number): CubicPiece {
  return pieces.find(({ to }) => x < to) ?? (pieces.at(-1) as CubicPiece);
}

/** Whether a piece falls all the way, strictly: no slope above 0, and lower at its end than at its start. */
export function falls(piece: CubicPiece): boolean {
  const { from, to, c2, c3 } = piece;
  const bend = c3 === 0 ? from : Math.min(Math.max(from - c2 / (3 * c3), from), to);
  // A slope within rounding of level is level: cubics that end flat meet it so.
  const rounding = 1e-9 * Math.abs((valueAt(piece, from) - valueAt(piece, to)) / (to - from));
  return valueAt(piece, to) < valueAt(piece, from) && [from, bend, to].every((x) => slopeAt(piece, x) <= rounding);
}

/** Where a falling piece has a value, which must lie between those at its ends. */
export function whereAt(piece: CubicPiece, value: number): number {
  const { from, to } = piece;
  if (value >= valueAt(piece, from)) return from;
  if (value <= valueAt(piece, to)) return to;
  return findRoot((x) => valueAt(piece, x) - value, from, to).x;
}

/** Where two curves cross inside a stretch that both cover, ascending: the roots of their difference. */
export function crossings(a: CubicPiece, b: CubicPiece): readonly number[] {
  const { from, to } = a;
  const other = cut(b, from, to);
  const d: CubicPiece = {
    from,
    to,
    c0: a.c0 - other.c0,
    c1: a.c1 - other.c1,
    c2: a.c2 - other.c2,
    c3: a.c3 - other.c3,
  };
  // Between the turns of the difference it is monotone, so each stretch holds one root or none.
  const turns = turnsOf(d).filter((x) => x > from && x < to);
  const stretches = [from, ...turns, to];
  return stretches.slice(1).flatMap((end, i) => {
    const begin = stretches[i] as number;
    const yBegin = valueAt(d, begin);
    const yEnd = valueAt(d, end);
    if (yBegin === 0 || yEnd === 0 || yBegin > 0 === yEnd > 0) return [];
    return [findRoot((x) => valueAt(d, x), begin, end).x];
  });
}

/** Where the slope of a piece is 0, ascending. */
function turnsOf({ from, c1, c2, c3 }: CubicPiece): readonly number[] {
  if (c3 === 0) return c2 === 0 ? [] : [from - c1 / (2 * c2)];
  const under = c2 * c2 - 3 * c3 * c1;
  if (!(under > 0)) return [];
  const root = -(c2 + Math.sign(c2 || 1) * Math.sqrt(under));
  const turns = root === 0 ? [0] : [root / (3 * c3), c1 / root];
  return turns.map((t) => from + t).sort((x, y) => x - y);
}
