/**
 * How a mass per length of pipe or cable is written.
 *
 * @module
 */
import {
  inKilogramsPerMetre,
  inPoundsPerFoot,
  kilogramsPerMetre,
  type MassPerLength,
  poundsPerFoot,
} from "../mass-per-length.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which a mass per length of pipe or cable is read and written. */
export const massPerLengthUnits: readonly UnitText<MassPerLength>[] = [
  { symbol: "kg/m", words: ["kg/m"], make: kilogramsPerMetre, read: inKilogramsPerMetre },
  { symbol: "lb/ft", words: ["lb/ft"], make: poundsPerFoot, read: inPoundsPerFoot },
];

/**
 * Reads a mass per length of pipe or cable from text, with its unit.
 *
 * @param text - a number and a unit, such as `2 lb/ft`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseMassPerLength } from "risingmain/units";
 *
 * parseMassPerLength("2 lb/ft"); // ≈ 2.9763
 * ```
 */
export function parseMassPerLength(text: string): MassPerLength {
  return parseQuantity("a mass per length of pipe or cable", massPerLengthUnits, "2 lb/ft", text);
}
