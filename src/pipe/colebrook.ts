/**
 * The equation of Colebrook and White, solved.
 *
 * With a = k/3.7, b = 2·2.51/(ln 10·Re) and F = (ln 10/2)/√f the equation 1/√f = −2 log₁₀(k/3.7 + 2.51/(Re √f)) reads
 * F = −ln(a + b F): no cancellation, and a slope of F that is never far from −b/(a + b F).
 *
 * @module
 */

/** (ln 10 / 2)². */
const SQUARE = 1.3254745276195995;
/** 2 · 2.51 / ln 10. */
const B = 2.180158299154324;

/** Darcy friction factor of turbulent flow; the caller keeps Re ≥ 2000 and 0 ≤ k ≤ 0.5. */
export function colebrookFactor(reynolds: number, relativeRoughness: number): number {
  const a = relativeRoughness / 3.7;
  const b = B / reynolds;
  let F = 10;
  // The step is Newton's on a convex function: after the first it only falls, and four reach the last bit.
  for (let i = 0; i < 6; i++) {
    const g = a + b * F;
    F -= (F + Math.log(g)) / (1 + b / g);
  }
  return SQUARE / (F * F);
}

/** Slope d ln f / d ln Re of the same equation, from its solution. */
export function colebrookSlope(reynolds: number, relativeRoughness: number, factor: number): number {
  const b = B / reynolds;
  const g = relativeRoughness / 3.7 + b * Math.sqrt(SQUARE / factor);
  return (-2 * b) / (g + b);
}
