/**
 * The explicit friction formula of Serghides: three rounds of Colebrook from a start, and Steffensen's shortcut.
 *
 * @module
 */
import { type ExplicitFactor, isInside, requireTurbulent } from "./explicit-factor.ts";
import type { FrictionFactorInput } from "./friction-factor.ts";

/**
 * Friction factor of turbulent flow by the three-term explicit formula of Serghides.
 *
 * @remarks
 * A = −2 log₁₀(k/3.7 + 12/Re), B = −2 log₁₀(k/3.7 + 2.51 A/Re), C = −2 log₁₀(k/3.7 + 2.51 B/Re),
 * f = [A − (B − A)² / (C − 2B + A)]⁻². Published as within 0.0023 % of Colebrook on the author's grid; for Re 4e3 to
 * 1e8 and k 0 to 0.05 the largest departure found is 0.0031 %, near Re 2e5 on a smooth wall.
 *
 * @param input - Reynolds number (2000 to 1e17) and relative roughness (0 to 0.5)
 * @returns the Darcy friction factor, and whether it lies inside the published range
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { serghidesFactor } from "risingmain/pipe";
 *
 * serghidesFactor({ reynolds: 1e5, relativeRoughness: 1e-4 }).value; // ≈ 0.0185136
 * ```
 *
 * @source serghides-1984
 */
export function serghidesFactor(input: FrictionFactorInput): ExplicitFactor {
  requireTurbulent(input);
  const { reynolds, relativeRoughness } = input;
  const round = (x: number): number => -2 * Math.log10(relativeRoughness / 3.7 + x / reynolds);
  const A = round(12);
  const B = round(2.51 * A);
  const C = round(2.51 * B);
  const bend = C - 2 * B + A;
  // On a fully rough wall the three agree to the last bit, and there is nothing to correct.
  const root = bend === 0 ? C : A - (B - A) ** 2 / bend;
  const value = root ** -2;
  return { value, method: "serghides-1984", insideRange: isInside(input, [4e3, 1e8], [0, 0.05]) };
}
