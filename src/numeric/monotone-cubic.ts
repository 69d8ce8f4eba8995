/**
 * A smooth curve through points that never overshoots them: piecewise cubics with limited three-point slopes.
 *
 * The slope at a point is that of the parabola through it and its neighbours, cut back to three times the flatter of
 * the two chords beside it, and to zero where the points turn. Within that limit a cubic piece is monotone between
 * its ends (`fritsch-carlson-1980`; the limit on three-point slopes is `hyman-1983`'s), so the curve rises and falls
 * only where its points do. Points of a parabola that opens from its vertex outwards are reproduced exactly.
 *
 * @module
 */

/** A cubic through points: their abscissas (strictly ascending), values and slopes. Plain data. */
export interface CubicLine {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly slope: readonly number[];
}

/** The line through points with strictly ascending `x`; two or more of them. Private: trusts its caller to have checked. */
export function monotoneCubic(x: readonly number[], y: readonly number[]): CubicLine {
  const last = x.length - 1;
  const width = (i: number): number => at(x, i + 1) - at(x, i);
  const chord = (i: number): number => (at(y, i + 1) - at(y, i)) / width(i);
  const slope = x.map((_, i) => {
    if (last === 1) return chord(0);
    if (i === 0) return limitedEnd(width(0), width(1), chord(0), chord(1));
    if (i === last) return limitedEnd(width(last - 1), width(last - 2), chord(last - 1), chord(last - 2));
    const before = chord(i - 1);
    const after = chord(i);
    if (Math.sign(before) !== Math.sign(after)) return 0;
    const parabola = (width(i) * before + width(i - 1) * after) / (width(i - 1) + width(i));
    return limited(parabola, Math.min(Math.abs(before), Math.abs(after)));
  });
  return { x, y, slope };
}

/** The value of a line at a position, which must lie between its first and last abscissa. */
export function cubicValue({ x, y, slope }: CubicLine, position: number): number {
  const i = pieceAt(x, position);
  const x0 = at(x, i);
  const x1 = at(x, i + 1);
  const y0 = at(y, i);
  const y1 = at(y, i + 1);
  // The last point is met to the bit, and rounding never carries the value outside the piece it belongs to.
  if (position === x1) return y1;
  const h = x1 - x0;
  const t = (position - x0) / h;
  const rise = y1 - y0;
  const d0 = at(slope, i) * h;
  const d1 = at(slope, i + 1) * h;
  const value = y0 + t * (d0 + t * (3 * rise - 2 * d0 - d1 + t * (d0 + d1 - 2 * rise)));
  return rise > 0 ? Math.min(Math.max(value, y0), y1) : Math.min(Math.max(value, y1), y0);
}

/** The derivative of a line at a position, which must lie between its first and last abscissa. */
export function cubicSlope({ x, y, slope }: CubicLine, position: number): number {
  const i = pieceAt(x, position);
  const x0 = at(x, i);
  const h = at(x, i + 1) - x0;
  const t = (position - x0) / h;
  const chord = (at(y, i + 1) - at(y, i)) / h;
  const d0 = at(slope, i);
  const d1 = at(slope, i + 1);
  return d0 + t * (2 * (3 * chord - 2 * d0 - d1) + t * 3 * (d0 + d1 - 2 * chord));
}

/** The piece a position lies in, by halving. */
function pieceAt(x: readonly number[], position: number): number {
  let low = 0;
  let high = x.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (position >= at(x, middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** The three-point slope at an end, kept to the sense of the end's own chord and to three times it. */
function limitedEnd(near: number, far: number, chord: number, next: number): number {
  const parabola = chord + (near * (chord - next)) / (near + far);
  return Math.sign(parabola) === Math.sign(chord) ? limited(parabola, Math.abs(chord)) : 0;
}

function limited(slope: number, flattest: number): number {
  return Math.sign(slope) * Math.min(Math.abs(slope), 3 * flattest);
}

/** Indexing that the callers' loops keep inside the list. */
function at(list: readonly number[], i: number): number {
  return list[i] as number;
}
