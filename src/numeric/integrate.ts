/**
 * The integral of a function over an interval to a stated tolerance, by halving where it is difficult.
 *
 * @module
 */
import { gaussIntegral } from "./gauss-legendre.ts";

/** Halvings of one interval at most: 2⁻⁴⁰ of it is below what a double tells apart near its middle. */
const MOST_HALVINGS = 40;

/** Intervals looked at in all, so that a function made of jumps ends too. */
const MOST_INTERVALS = 20_000;

/** An integral and how it was got. */
export interface Integral {
  /** The value. */
  readonly value: number;
  /** False where the interval budget ran out before the tolerance was met. */
  readonly met: boolean;
}

/**
 * Integrates f over [low, high]: twelve Gauss points on the whole against twelve on each half, and on down while they differ
 * by more than `tolerance` of the integral's size. Private: trusts its caller for a finite f.
 */
export function integrate(f: (x: number) => number, low: number, high: number, tolerance = 1e-13): Integral {
  let budget = MOST_INTERVALS;
  let met = true;
  const whole = gaussIntegral(f, low, high);
  // Sizes add up from the halves, so the scale of the tolerance grows to that of the integral of |f|.
  let scale = Math.abs(whole);
  const part = (a: number, b: number, value: number, depth: number): number => {
    const middle = a + (b - a) / 2;
    const left = gaussIntegral(f, a, middle);
    const right = gaussIntegral(f, middle, b);
    const better = left + right;
    scale = Math.max(scale, Math.abs(better));
    budget--;
    if (Math.abs(better - value) <= tolerance * scale) return better;
    if (depth >= MOST_HALVINGS || budget <= 0) {
      met = false;
      return better;
    }
    return part(a, middle, left, depth + 1) + part(middle, b, right, depth + 1);
  };
  const value = low === high ? 0 : part(low, high, whole, 0);
  return { value, met };
}
