/**
 * The explicit friction formula of Swamee and Jain: one logarithm and one power.
 *
 * @module
 */
import { type ExplicitFactor, isInside, requireTurbulent } from "./explicit-factor.ts";
import type { FrictionFactorInput } from "./friction-factor.ts";

/**
 * Friction factor of turbulent flow by the explicit formula of Swamee and Jain.
 *
 * @remarks
 * f = 0.25 / [log₁₀(k/3.7 + 5.74/Re^0.9)]². Published as within 1 % of Colebrook for Re 5e3 to 1e8 and k 1e-6 to 1e-2.
 * That holds from Re 1e5 to 3e7. Below, on walls rougher than 1e-3, it is up to 2.8 % high (Re 5e3, k 1e-2), and 1.1 %
 * high at Re 1e8 and k 1e-6. `frictionFactor` is exact, and faster here.
 *
 * @param input - Reynolds number (2000 to 1e17) and relative roughness (0 to 0.5)
 * @returns the Darcy friction factor, and whether it lies inside the published range
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { swameeJainFactor } from "risingmain/pipe";
 *
 * swameeJainFactor({ reynolds: 1e5, relativeRoughness: 1e-4 }).value; // ≈ 0.018452
 * ```
 *
 * @source swamee-jain-1976
 */
export function swameeJainFactor(input: FrictionFactorInput): ExplicitFactor {
  requireTurbulent(input);
  const { reynolds, relativeRoughness } = input;
  const value = 0.25 / Math.log10(relativeRoughness / 3.7 + 5.74 / reynolds ** 0.9) ** 2;
  return { value, method: "swamee-jain-1976", insideRange: isInside(input, [5e3, 1e8], [1e-6, 1e-2]) };
}
