/**
 * The equation of Colebrook and White, solved to the last bits a double holds, without iterating.
 *
 * With a = k/3.7, b = 2·2.51/(ln 10·Re) and F = (ln 10/2)/√f the equation 1/√f = −2 log₁₀(k/3.7 + 2.51/(Re √f)) reads
 * F = −ln(a + b F): nothing cancels, and d ln f / d ln Re = −2b/(a + bF + b) falls out.
 *
 * @module
 */
import { minusLogLess, roughMinusLog } from "./minus-log.ts";

/** (ln 10/2)², a share of 7.9e-17 too high. */
export const LN10_HALF_SQUARED = 1.3254745276195996;
/** 2 · 2.51 / ln 10. */
const B = 2.180158299154324;

/** Above this a whole number no longer fits 32 bits (2³¹); the start then takes two more steps, from anywhere. */
const LARGEST_WHOLE = 2e9;

/**
 * Darcy friction factor by Colebrook and White; the caller keeps 2000 ≤ Re ≤ 1e17 and 0 ≤ k ≤ 0.5.
 *
 * A start good to 0.006 by a line and one rough step, one accurate residual s, and the solution of
 * u + ln(1 + b u/g) = s as a series in t = q s, q = b/(g + b), of which the first term left out is below 1e-16 (t stays
 * below 6e-4). No function here is over 460 bytes of bytecode, so that V8 inlines them all and boxes no number: as one
 * function it took 50 ns, in pieces 30.
 */
export function colebrookFactor(reynolds: number, relativeRoughness: number): number {
  const a = relativeRoughness / 3.7;
  const b = B / reynolds;
  const line = reynolds < LARGEST_WHOLE ? smoothLine(reynolds) : roughStep(roughStep(17, a, b), a, b);
  const F = roughStep(line, a, b);
  const g = a + b * F;
  const s = minusLogLess(g, F);
  const q = b / (g + b);
  const t = q * s;
  const u = (s - t) * (1 + t * q * (0.5 + t * (0.5 * q - 0.33333333 + t * (0.25 - q * (0.8333 - 0.625 * q)))));
  // F + u in two parts: one of 24 bits, whose square is exact, and the rest as a share of it.
  const high = Math.fround(F + u);
  const rest = (F - high + u) / high;
  const f = LN10_HALF_SQUARED / (high * high);
  // 1/(1 + rest)² to second order, and the constant's own excess.
  return f - f * (rest * (2 - 3 * rest) + 7.9e-17);
}

/** Slope d ln f / d ln Re of the same equation, from its solution. */
export function colebrookSlope(reynolds: number, relativeRoughness: number, factor: number): number {
  const b = B / reynolds;
  const g = relativeRoughness / 3.7 + b * Math.sqrt(LN10_HALF_SQUARED / factor);
  return (-2 * b) / (g + b);
}

/** A straight line in log Re, for F of the smooth pipe: within 0.2 of it, and above it where the wall is rough. */
function smoothLine(reynolds: number): number {
  const whole = reynolds | 0;
  const zeros = Math.clz32(whole);
  // The bits of the whole number, read as log2 in units of 2⁻²⁰: a polygon, within 0.09 of the curve.
  return (((whole << zeros) >>> 11) - (zeros << 20)) * 5.968787e-7 + 17.02286;
}

/** One step of Newton's on F + ln(a + b F) = 0, with the rough logarithm. */
function roughStep(F: number, a: number, b: number): number {
  const g = a + b * F;
  return F + (roughMinusLog(g) - F) * (g / (g + b));
}
