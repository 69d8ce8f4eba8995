/**
 * How a density is written.
 *
 * @module
 */
import {
  type Density,
  inKilogramsPerCubicMetre,
  inPoundsPerCubicFoot,
  kilogramsPerCubicMetre,
  poundsPerCubicFoot,
} from "../density.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which a density is read and written. */
export const densityUnits: readonly UnitText<Density>[] = [
  { symbol: "kg/m³", words: ["kg/m³", "kg/m^3"], make: kilogramsPerCubicMetre, read: inKilogramsPerCubicMetre },
  { symbol: "lb/ft³", words: ["lb/ft³", "lb/ft^3"], make: poundsPerCubicFoot, read: inPoundsPerCubicFoot },
];

/**
 * Reads a density from text, with its unit.
 *
 * @param text - a number and a unit, such as `62.4 lb/ft³`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseDensity } from "risingmain/units";
 *
 * parseDensity("62.4 lb/ft³"); // ≈ 999.55
 * ```
 */
export function parseDensity(text: string): Density {
  return parseQuantity("a density", densityUnits, "62.4 lb/ft³", text);
}
