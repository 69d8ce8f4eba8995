/**
 * The explicit friction formula of Haaland: one logarithm and one power.
 *
 * @module
 */
import { type ExplicitFactor, isInside, requireTurbulent } from "./explicit-factor.ts";
import type { FrictionFactorInput } from "./friction-factor.ts";

/**
 * Friction factor of turbulent flow by the explicit formula of Haaland.
 *
 * @remarks
 * 1/√f = −1.8 log₁₀[(k/3.7)^1.11 + 6.9/Re]. Published as within 2 % of Colebrook for Re 4e3 to 1e8 and k 1e-6 to
 * 0.05; the largest departure found is 1.4 %, low, near Re 9e4 and k 2e-4. `frictionFactor` is exact, and faster here.
 *
 * @param input - Reynolds number (2000 to 1e17) and relative roughness (0 to 0.5)
 * @returns the Darcy friction factor, and whether it lies inside the published range
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { haalandFactor } from "risingmain/pipe";
 *
 * haalandFactor({ reynolds: 1e5, relativeRoughness: 1e-4 }).value; // ≈ 0.018265
 * ```
 *
 * @source haaland-1983
 */
export function haalandFactor(input: FrictionFactorInput): ExplicitFactor {
  requireTurbulent(input);
  const { reynolds, relativeRoughness } = input;
  const value = (-1.8 * Math.log10((relativeRoughness / 3.7) ** 1.11 + 6.9 / reynolds)) ** -2;
  return { value, method: "haaland-1983", insideRange: isInside(input, [4e3, 1e8], [1e-6, 0.05]) };
}
