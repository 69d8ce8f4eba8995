/**
 * The one or two figures that make residuals least, inside their ends: a coarse look, then damped Gauss–Newton steps.
 *
 * @module
 */

/** Ends of a figure. */
export interface Ends {
  readonly low: number;
  readonly high: number;
}

/** Where the sum of squares is least. */
export interface LeastSquaresFit {
  readonly values: readonly number[];
  readonly least: number;
}

/** Places looked at along one figure alone, and along each of two. */
const LOOKS_ALONE = 12;
const LOOKS_BOTH = 7;
/** Steps after; each is taken only where it lessens the sum, so there is nothing to run away. */
const STEPS = 16;
/** Steps so short that none has helped: the least is found. */
const MOST_DAMPING = 1e4;
/** Sums nearer than this share are of one level. */
const LEVEL = 1e-9;
/** Step of the slopes over the range of a figure. */
const SLOPE_STEP = 1e-5;

/** Ends after a fixed number of calls, whatever the function (`levenberg-1944`). */
export function fitResiduals(
  f: (values: readonly number[]) => readonly number[],
  ends: readonly Ends[],
): LeastSquaresFit {
  const at = (values: readonly number[]): Place => {
    const residuals = f(values);
    return { values, residuals, sum: residuals.reduce((sum, r) => sum + r * r, 0) };
  };
  const descended = (start: Place): Place => {
    let best = start;
    let damping = 1e-3;
    for (let i = 0; i < STEPS && ends.length > 0 && damping < MOST_DAMPING; i++) {
      const next = at(step(f, best, ends, damping));
      if (next.sum < best.sum) {
        best = next;
        damping /= 10;
      } else damping *= 10;
    }
    return best;
  };
  const looked = places(ends)
    .map(at)
    .sort((a, b) => a.sum - b.sum);
  const [first] = looked as [Place, ...Place[]];
  // The best look may lie on a shelf (a pump that gives nothing gives nothing however it is worn) and lead nowhere: the best
  // one that is not level with it is followed as well.
  const second = looked.find(({ sum }) => sum > first.sum * (1 + LEVEL));
  const best = [first, ...(second === undefined ? [] : [second])]
    .map(descended)
    .reduce((least, place) => (place.sum < least.sum ? place : least));
  return { values: best.values, least: best.sum };
}

interface Place {
  readonly values: readonly number[];
  readonly residuals: readonly number[];
  readonly sum: number;
}

function places(ends: readonly Ends[]): readonly (readonly number[])[] {
  const [first, second] = ends;
  if (first === undefined) return [[]];
  if (second === undefined) return along(first, LOOKS_ALONE).map((a) => [a]);
  return along(first, LOOKS_BOTH).flatMap((a) => along(second, LOOKS_BOTH).map((b) => [a, b]));
}

/** Crowded at the low end, since the figures of faults span decades; even where a figure may have either sign. */
function along({ low, high }: Ends, looks: number): readonly number[] {
  return Array.from({ length: looks }, (_, i) => {
    const share = i / (looks - 1);
    return low + (low < 0 ? share : share ** 3) * (high - low);
  });
}

/** One step of the damped normal equations, in shares of each figure's range, kept inside the ends. */
function step(
  f: (values: readonly number[]) => readonly number[],
  { values, residuals: here }: Place,
  ends: readonly Ends[],
  damping: number,
): readonly number[] {
  const slopes = ends.map(({ low, high }, j) => {
    const range = high - low;
    // Away from the nearer end, so that the step of the slope stays inside.
    const away = (values[j] as number) - low > range / 2 ? -SLOPE_STEP : SLOPE_STEP;
    const there = f(values.map((value, i) => (i === j ? value + away * range : value)));
    return there.map((r, i) => (r - (here[i] as number)) / away);
  });
  const dot = (a: readonly number[], b: readonly number[]): number =>
    a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
  const [a = [], b] = slopes;
  const aa = dot(a, a) * (1 + damping) + Number.MIN_VALUE;
  const ar = dot(a, here);
  let moves: readonly number[];
  if (b === undefined) moves = [-ar / aa];
  else {
    const bb = dot(b, b) * (1 + damping) + Number.MIN_VALUE;
    const ab = dot(a, b);
    const br = dot(b, here);
    // Positive by Cauchy and Schwarz, the damping making it strictly so.
    const determinant = aa * bb - ab * ab + Number.MIN_VALUE;
    moves = [(ab * br - bb * ar) / determinant, (ab * ar - aa * br) / determinant];
  }
  return values.map((value, j) => {
    const { low, high } = ends[j] as Ends;
    const moved = value + (moves[j] as number) * (high - low);
    return Number.isNaN(moved) ? value : Math.min(Math.max(moved, low), high);
  });
}
