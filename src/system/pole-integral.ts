/**
 * Integrals with a pole outside the stretch, or at its end: panels that shrink towards it.
 *
 * @module
 */
import { gaussIntegral } from "../numeric/index.ts";

/** A panel may reach from the pole to at most this many times its nearest point: twelve Gauss points then err by 2e-14. */
export const POLE_RATIO = 3;

/** ∫ g(Q) / |Q − pole| dQ over [low, high], the pole outside or at an end; panels shrink towards it. */
export function poleIntegral(g: (q: number) => number, low: number, high: number, pole: number): number {
  const above = pole <= low;
  const closest = above ? low - pole : pole - high;
  let far = above ? high - pole : pole - low;
  let sum = 0;
  // At the pole itself the integral is infinite; a bound on panels ends it where a double no longer tells them apart.
  for (let panel = 0; far > closest && panel < 80; panel++) {
    const next = Math.max(closest, far / POLE_RATIO);
    const a = above ? pole + next : pole - far;
    const b = above ? pole + far : pole - next;
    // A point that rounding puts on the pole has no width left to count for.
    sum += gaussIntegral((q) => (q === pole ? 0 : g(q) / Math.abs(q - pole)), a, b);
    far = next;
  }
  return sum;
}
