/**
 * The root of a continuous function between two points of opposite sign: Brent's method, which cannot fail to end.
 *
 * @module
 */

/** Where the search stands at its end. */
export interface Root {
  /** The abscissa found. */
  readonly x: number;
  /** The function there. */
  readonly residual: number;
  /** How often the function was called. */
  readonly evaluations: number;
}

/** Bisection alone halves any bracket of doubles to nothing within 1100 steps; Brent's bound is its square, never met. */
const MOST_STEPS = 4000;

/**
 * Finds x in [low, high] with f(x) = 0, given f(low) and f(high) of opposite sign or zero (`brent-1973`, chapter 4).
 *
 * Ends: each step keeps a bracket, and a bisection is forced whenever interpolation shrinks it too slowly.
 * Private, so it trusts its caller to have checked the signs; it throws a plain Error where they agree.
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance = 0): Root {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  let evaluations = 2;
  if (fa === 0) return { x: a, residual: 0, evaluations };
  if (fb === 0) return { x: b, residual: 0, evaluations };
  if (fa > 0 === fb > 0) throw new Error(`no sign change between ${low} and ${high}: ${fa}, ${fb}`);
  let c = a;
  let fc = fa;
  let step = b - a;
  let previousStep = step;
  for (let i = 0; i < MOST_STEPS; i++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const smallest = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2 + Number.MIN_VALUE;
    const half = (c - b) / 2;
    if (fb === 0 || Math.abs(half) <= smallest) break;
    if (Math.abs(previousStep) < smallest || Math.abs(fa) <= Math.abs(fb)) {
      step = previousStep = half;
    } else {
      const s = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * half * s;
        q = 1 - s;
      } else {
        const t = fa / fc;
        const r = fb / fc;
        p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
        q = (t - 1) * (r - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      else p = -p;
      if (2 * p < Math.min(3 * half * q - Math.abs(smallest * q), Math.abs(previousStep * q))) {
        previousStep = step;
        step = p / q;
      } else {
        step = previousStep = half;
      }
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > smallest ? step : half > 0 ? smallest : -smallest;
    fb = f(b);
    evaluations++;
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = previousStep = b - a;
    }
  }
  return { x: b, residual: fb, evaluations };
}
