/**
 * The explicit friction formula of Churchill: one expression from laminar to turbulent.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { type ExplicitFactor, isInside } from "./explicit-factor.ts";
import type { FrictionFactorInput } from "./friction-factor.ts";

/**
 * Friction factor of any flow by the explicit formula of Churchill.
 *
 * @remarks
 * f = 8 [(8/Re)¹² + (A + B)^−1.5]^(1/12), A = {2.457 ln[1/((7/Re)^0.9 + 0.27 k)]}¹⁶, B = (37 530/Re)¹⁶.
 * Published for every Re, without a stated bound against Colebrook; for Re 4e3 to 1e8 and k 0 to 0.05 the largest
 * departure found is 3.2 %, high, near Re 4400 and k 0.017. Laminar it is 64/Re. Its passage between the two is a
 * curve through no data.
 *
 * @param input - Reynolds number (0.001 to 1e17) and relative roughness (0 to 0.5)
 * @returns the Darcy friction factor, and whether it lies inside the published range
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { churchillFactor } from "risingmain/pipe";
 *
 * churchillFactor({ reynolds: 1e5, relativeRoughness: 1e-4 }).value; // ≈ 0.0184626
 * ```
 *
 * @source churchill-1977
 */
export function churchillFactor(input: FrictionFactorInput): ExplicitFactor {
  requireObject("input", input);
  requireWithin("reynolds", input.reynolds, 1e-3, 1e17, "");
  requireWithin("relativeRoughness", input.relativeRoughness, 0, 0.5, "");
  const { reynolds, relativeRoughness } = input;
  const A = (2.457 * Math.log(1 / ((7 / reynolds) ** 0.9 + 0.27 * relativeRoughness))) ** 16;
  const B = (37530 / reynolds) ** 16;
  const value = 8 * ((8 / reynolds) ** 12 + (A + B) ** -1.5) ** (1 / 12);
  return { value, method: "churchill-1977", insideRange: isInside(input, [1e-3, 1e8], [0, 0.05]) };
}
