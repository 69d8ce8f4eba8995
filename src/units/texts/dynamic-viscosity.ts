/**
 * How a dynamic viscosity is written.
 *
 * @module
 */
import {
  centipoise,
  type DynamicViscosity,
  inCentipoise,
  inMillipascalSeconds,
  inPascalSeconds,
  millipascalSeconds,
  pascalSeconds,
} from "../dynamic-viscosity.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which a dynamic viscosity is read and written. */
export const dynamicViscosityUnits: readonly UnitText<DynamicViscosity>[] = [
  { symbol: "Pa·s", words: ["Pa·s", "Pas"], make: pascalSeconds, read: inPascalSeconds },
  { symbol: "mPa·s", words: ["mPa·s", "mPas"], make: millipascalSeconds, read: inMillipascalSeconds },
  { symbol: "cP", words: ["cP"], make: centipoise, read: inCentipoise },
];

/**
 * Reads a dynamic viscosity from text, with its unit.
 *
 * @param text - a number and a unit, such as `1.3 cP`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseDynamicViscosity } from "risingmain/units";
 *
 * parseDynamicViscosity("1.3 cP"); // ≈ 0.0013
 * ```
 */
export function parseDynamicViscosity(text: string): DynamicViscosity {
  return parseQuantity("a dynamic viscosity", dynamicViscosityUnits, "1.3 cP", text);
}
