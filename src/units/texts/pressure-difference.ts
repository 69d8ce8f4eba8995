/**
 * How a difference of two pressures is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import {
  barDifference,
  inBarDifference,
  inKilopascalsDifference,
  inMegapascalsDifference,
  inPascalsDifference,
  inPsiDifference,
  kilopascalsDifference,
  megapascalsDifference,
  type PressureDifference,
  pascalsDifference,
  psiDifference,
} from "../pressure-difference.ts";

/** The units in which a difference of two pressures is read and written. */
export const pressureDifferenceUnits: readonly UnitText<PressureDifference>[] = [
  { symbol: "Pa", words: ["Pa"], make: pascalsDifference, read: inPascalsDifference },
  { symbol: "kPa", words: ["kPa"], make: kilopascalsDifference, read: inKilopascalsDifference },
  { symbol: "MPa", words: ["MPa"], make: megapascalsDifference, read: inMegapascalsDifference },
  { symbol: "bar", words: ["bar"], make: barDifference, read: inBarDifference },
  { symbol: "psi", words: ["psi"], make: psiDifference, read: inPsiDifference },
];

/**
 * Reads a difference of two pressures from text, with its unit.
 *
 * @param text - a number and a unit, such as `5 psi`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parsePressureDifference } from "risingmain/units";
 *
 * parsePressureDifference("5 psi"); // ≈ 34474
 * ```
 */
export function parsePressureDifference(text: string): PressureDifference {
  return parseQuantity("a difference of two pressures", pressureDifferenceUnits, "5 psi", text);
}
