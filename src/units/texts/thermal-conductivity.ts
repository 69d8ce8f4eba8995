/**
 * How a thermal conductivity is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import {
  btuPerHourFootDegreeF,
  inBtuPerHourFootDegreeF,
  inWattsPerMetreKelvin,
  type ThermalConductivity,
  wattsPerMetreKelvin,
} from "../thermal-conductivity.ts";

/** The units in which a thermal conductivity is read and written. */
export const thermalConductivityUnits: readonly UnitText<ThermalConductivity>[] = [
  { symbol: "W/(m·K)", words: ["W/(m·K)", "W/(mK)", "W/mK"], make: wattsPerMetreKelvin, read: inWattsPerMetreKelvin },
  {
    symbol: "Btu/(h·ft·°F)",
    words: ["Btu/(h·ft·°F)", "Btu/(hftF)"],
    make: btuPerHourFootDegreeF,
    read: inBtuPerHourFootDegreeF,
  },
];

/**
 * Reads a thermal conductivity from text, with its unit.
 *
 * @param text - a number and a unit, such as `0.5 W/(m·K)`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseThermalConductivity } from "risingmain/units";
 *
 * parseThermalConductivity("0.5 W/(m·K)"); // ≈ 0.50000
 * ```
 */
export function parseThermalConductivity(text: string): ThermalConductivity {
  return parseQuantity("a thermal conductivity", thermalConductivityUnits, "0.5 W/(m·K)", text);
}
