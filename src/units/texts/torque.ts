/**
 * How a torque is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import { inNewtonMetres, inPoundFeet, newtonMetres, poundFeet, type Torque } from "../torque.ts";

/** The units in which a torque is read and written. */
export const torqueUnits: readonly UnitText<Torque>[] = [
  { symbol: "N·m", words: ["N·m", "Nm"], make: newtonMetres, read: inNewtonMetres },
  { symbol: "lbf·ft", words: ["lbf·ft", "lbfft", "ft·lbf"], make: poundFeet, read: inPoundFeet },
];

/**
 * Reads a torque from text, with its unit.
 *
 * @param text - a number and a unit, such as `20 lbf·ft`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseTorque } from "risingmain/units";
 *
 * parseTorque("20 lbf·ft"); // ≈ 27.116
 * ```
 */
export function parseTorque(text: string): Torque {
  return parseQuantity("a torque", torqueUnits, "20 lbf·ft", text);
}
