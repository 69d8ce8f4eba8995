/**
 * The bore that carries a turbulent flow for a given head loss, by Colebrook and White.
 *
 * @module
 */
import { fifthRoot } from "./fifth-root.ts";
import { minusLogLess, roughMinusLog } from "./minus-log.ts";

/** ln 10 / 2. */
const HALF_LN10 = 1.151292546497023;

/** Beyond these the wall is rougher than half the bore, or the flow slower than Re 4000 (see below). */
const LARGEST_A = 0.109;
const LARGEST_B = 0.00125;

/**
 * Bore, m, for a flow, m³/s, and g h / L, m/s²; Infinity where the flow is not turbulent, 0 where the wall is too rough.
 *
 * With y = f^−1/10 and D = D₁/y², F = c y⁵ (c = ln 10 / 2) and c y⁵ + ln(A y² + B y³) = 0. At k = 0.5 y² is 1.25, and
 * A = k/(3.7 y²) = 0.108; at Re = 4000 B = 2.51 y²/4000 is 0.0012 at most.
 */
export function colebrookDiameter(flow: number, drop: number, roughness: number, viscosity: number): number {
  const D1 = fifthRoot((8 * flow * flow) / (Math.PI * Math.PI * drop));
  const A = roughness / (3.7 * D1);
  const B = (2.51 * viscosity) / (D1 * Math.sqrt(2 * D1 * drop));
  if (B > LARGEST_B) return Infinity;
  if (A > LARGEST_A) return 0;
  let y = 1.45;
  for (let i = 0; i < 4; i++) {
    const y2 = y * y;
    const inner = A + B * y;
    const F = HALF_LN10 * y2 * y2 * y;
    const g = y2 * inner;
    const s = i < 2 ? roughMinusLog(g) - F : minusLogLess(g, F);
    // Newton's step for the sum of F and a logarithm, whose slope is p/y; then the first order of its curvature.
    const p = 5 * F + 2 + (B * y) / inner;
    const step = s / p;
    y += y * step * (1 - (step * (10 * F - 1)) / p);
  }
  return D1 / (y * y);
}
