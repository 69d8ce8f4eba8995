/**
 * How far to go along a step of Newton's method. Private to the network solver.
 *
 * @module
 */

/** Trials for a step length; half of them are bisections, and fifty bisections reach rounding. */
const MOST_TRIALS = 100;

/**
 * A step along which a convex content surely falls, given its slope along the step at both ends; that slope never falls.
 *
 * The full step is taken where what it climbs after the middle is less than it fell before; otherwise the bracket is
 * narrowed until the slope is still downhill but no more than half as steep.
 */
export function stepLength(slopeAt: (t: number) => number, downhill: number, atEnd: number): number {
  let low = 0;
  let high = 1;
  let slopeLow = downhill;
  let slopeHigh = atEnd;
  for (let i = 0; i < MOST_TRIALS; i++) {
    // Bisection and regula falsi in turn: safe where the slope has a kink, quick where it is straight.
    const t = i % 2 === 0 ? (low + high) / 2 : low - (slopeLow * (high - low)) / (slopeHigh - slopeLow);
    const slope = slopeAt(t);
    if (i === 0 && slope + atEnd < 0) return 1;
    if (slope > 0) {
      high = t;
      slopeHigh = slope;
    } else {
      if (slope >= downhill / 2) return t;
      low = t;
      slopeLow = slope;
    }
  }
  return low > 0 ? low : high;
}
