/**
 * The well function W(u): the exponential integral E₁, to the rounding of doubles.
 *
 * @module
 */
import { requirePositive } from "../numeric/index.ts";

/** Euler's constant (`nist-dlmf`, 5.2.3). */
const EULER = 0.5772156649015329;

/** Below this the series adds positive terms only and is shortest; above it the fraction takes fewer than 180 steps. */
const SERIES_UP_TO = 0.5;

/** Steps of the fraction for u: its error falls as exp(−4 √(n u)), so 84/u reaches 1e-16; some more for large u. */
const FRACTION_STEPS = 84;
const FEWEST_STEPS = 12;

/**
 * The well function of a confined aquifer, W(u) = E₁(u) = ∫ᵤ^∞ e⁻ˣ/x dx.
 *
 * @remarks
 * For u ≤ 0.5 the series −γ − ln u + u − u²/(2·2!) + u³/(3·3!) − …; above, the continued fraction
 * e⁻ᵘ/(u + 1/(1 + 1/(u + 2/(1 + 2/(u + …))))), whose terms are all positive. Error below 5e-16 of the value against
 * 40-digit values from u = 1e-300 to 700. Underflows to 0 beyond u ≈ 740.
 *
 * @param u - r² S / (4 T t), above 0
 * @returns W(u), without unit
 * @throws {@link units.InputError} where u is not a number above 0
 *
 * @example
 * ```ts
 * import { wellFunction } from "risingmain/well";
 *
 * wellFunction(0.01); // ≈ 4.0379295765381134
 * ```
 *
 * @source nist-dlmf, 6.6.2 and 6.9.1
 * @source theis-1935
 */
export function wellFunction(u: number): number {
  requirePositive("u", u, Number.MAX_VALUE, "");
  return u <= SERIES_UP_TO ? bySeries(u) : byFraction(u);
}

function bySeries(u: number): number {
  let power = u;
  let sum = u;
  for (let k = 2; Math.abs(power) > Number.EPSILON; k++) {
    power *= -u / k;
    sum += power / k;
  }
  return sum - EULER - Math.log(u);
}

function byFraction(u: number): number {
  let tail = u;
  for (let k = Math.ceil(FEWEST_STEPS + FRACTION_STEPS / u); k > 0; k--) tail = u + k / (1 + k / tail);
  return Math.exp(-u) / tail;
}
