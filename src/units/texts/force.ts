/**
 * How a force is written.
 *
 * @module
 */
import { type Force, inKilonewtons, inNewtons, inPoundsForce, kilonewtons, newtons, poundsForce } from "../force.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which a force is read and written. */
export const forceUnits: readonly UnitText<Force>[] = [
  { symbol: "N", words: ["N", "newton", "newtons"], make: newtons, read: inNewtons },
  { symbol: "kN", words: ["kN"], make: kilonewtons, read: inKilonewtons },
  { symbol: "lbf", words: ["lbf"], make: poundsForce, read: inPoundsForce },
];

/**
 * Reads a force from text, with its unit.
 *
 * @param text - a number and a unit, such as `100 lbf`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseForce } from "risingmain/units";
 *
 * parseForce("100 lbf"); // ≈ 444.82
 * ```
 */
export function parseForce(text: string): Force {
  return parseQuantity("a force", forceUnits, "100 lbf", text);
}
