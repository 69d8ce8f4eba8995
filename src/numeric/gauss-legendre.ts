/**
 * Gauss–Legendre quadrature with twelve points, exact for polynomials up to degree 23, and with four, up to degree 7.
 *
 * @module
 */

/** Positive half of the points on [−1, 1], computed with mpmath 1.2.1 to 40 digits and rounded. */
const POINTS: readonly number[] = [
  0.9815606342467192, 0.9041172563704749, 0.7699026741943047, 0.5873179542866175, 0.3678314989981802,
  0.1252334085114689,
];

/** Their weights. */
const WEIGHTS: readonly number[] = [
  0.04717533638651183, 0.10693932599531843, 0.16007832854334622, 0.20316742672306592, 0.2334925365383548,
  0.24914704581340277,
];

/** How many points the rule has. */
export const GAUSS_POINTS = 12;

/** Abscissa of point `i` (0 to 11) of the rule on [low, high]. */
export function gaussPoint(i: number, low: number, high: number): number {
  const half = (high - low) / 2;
  const middle = low + half;
  return i < 6 ? middle - half * (POINTS[i] as number) : middle + half * (POINTS[11 - i] as number);
}

/** Weight of point `i` (0 to 11) of the rule on [low, high]. */
export function gaussWeight(i: number, low: number, high: number): number {
  return ((high - low) / 2) * (WEIGHTS[i < 6 ? i : 11 - i] as number);
}

/** Integral of a function over [low, high] by the twelve points. */
export function gaussIntegral(f: (x: number) => number, low: number, high: number): number {
  const half = (high - low) / 2;
  const middle = low + half;
  let sum = 0;
  for (let i = 0; i < 6; i++) {
    const step = half * (POINTS[i] as number);
    sum += (WEIGHTS[i] as number) * (f(middle - step) + f(middle + step));
  }
  return half * sum;
}

/** The four points on [−1, 1]: ±√(3/7 ∓ 2/7·√(6/5)). */
export const SHORT_POINTS: readonly number[] = [
  -0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526,
];

/** Their weights, (18 ± √30)/36. */
export const SHORT_WEIGHTS: readonly number[] = [
  0.34785484513745385, 0.6521451548625461, 0.6521451548625461, 0.34785484513745385,
];
