/**
 * How a stiffness or a stress is written.
 *
 * @module
 */
import {
  gigapascals,
  inGigapascals,
  inMegapascalsModulus,
  inPascalsModulus,
  inPsiModulus,
  type Modulus,
  megapascalsModulus,
  pascalsModulus,
  psiModulus,
} from "../modulus.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which a stiffness or a stress is read and written. */
export const modulusUnits: readonly UnitText<Modulus>[] = [
  { symbol: "Pa", words: ["Pa"], make: pascalsModulus, read: inPascalsModulus },
  { symbol: "MPa", words: ["MPa"], make: megapascalsModulus, read: inMegapascalsModulus },
  { symbol: "GPa", words: ["GPa"], make: gigapascals, read: inGigapascals },
  { symbol: "psi", words: ["psi"], make: psiModulus, read: inPsiModulus },
];

/**
 * Reads a stiffness or a stress from text, with its unit.
 *
 * @param text - a number and a unit, such as `3 GPa`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseModulus } from "risingmain/units";
 *
 * parseModulus("3 GPa"); // ≈ 3000000000
 * ```
 */
export function parseModulus(text: string): Modulus {
  return parseQuantity("a stiffness or a stress", modulusUnits, "3 GPa", text);
}
