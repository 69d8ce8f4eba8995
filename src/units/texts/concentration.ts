/**
 * How a mass concentration in water is written.
 *
 * @module
 */
import {
  type Concentration,
  gramsPerLitre,
  inGramsPerLitre,
  inKilogramsPerCubicMetreConcentration,
  inMgPerLitre,
  inMicrogramsPerLitre,
  kilogramsPerCubicMetreConcentration,
  mgPerLitre,
  microgramsPerLitre,
} from "../concentration.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which a mass concentration in water is read and written. */
export const concentrationUnits: readonly UnitText<Concentration>[] = [
  {
    symbol: "kg/m³",
    words: ["kg/m³", "kg/m^3"],
    make: kilogramsPerCubicMetreConcentration,
    read: inKilogramsPerCubicMetreConcentration,
  },
  { symbol: "mg/L", words: ["mg/L", "mg/l"], make: mgPerLitre, read: inMgPerLitre },
  { symbol: "g/L", words: ["g/L", "g/l"], make: gramsPerLitre, read: inGramsPerLitre },
  { symbol: "µg/L", words: ["µg/L", "ug/L", "µg/l"], make: microgramsPerLitre, read: inMicrogramsPerLitre },
];

/**
 * Reads a mass concentration in water from text, with its unit.
 *
 * @param text - a number and a unit, such as `0.2 mg/L`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseConcentration } from "risingmain/units";
 *
 * parseConcentration("0.2 mg/L"); // ≈ 0.00020000
 * ```
 */
export function parseConcentration(text: string): Concentration {
  return parseQuantity("a mass concentration in water", concentrationUnits, "0.2 mg/L", text);
}
