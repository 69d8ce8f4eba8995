/**
 * How a transmissivity or a specific capacity is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import {
  gpmPerFoot,
  inGpmPerFoot,
  inLitresPerSecondPerMetre,
  inSquareFeetPerDay,
  inSquareMetresPerDay,
  inSquareMetresPerSecondTransmissivity,
  inUsGallonsPerDayPerFoot,
  litresPerSecondPerMetre,
  squareFeetPerDay,
  squareMetresPerDay,
  squareMetresPerSecondTransmissivity,
  type Transmissivity,
  usGallonsPerDayPerFoot,
} from "../transmissivity.ts";

/** The units in which a transmissivity or a specific capacity is read and written. */
export const transmissivityUnits: readonly UnitText<Transmissivity>[] = [
  {
    symbol: "m²/s",
    words: ["m²/s", "m^2/s"],
    make: squareMetresPerSecondTransmissivity,
    read: inSquareMetresPerSecondTransmissivity,
  },
  { symbol: "m²/d", words: ["m²/d", "m^2/d", "m²/day"], make: squareMetresPerDay, read: inSquareMetresPerDay },
  { symbol: "ft²/d", words: ["ft²/d", "ft^2/d", "ft²/day"], make: squareFeetPerDay, read: inSquareFeetPerDay },
  { symbol: "gpm/ft", words: ["gpm/ft"], make: gpmPerFoot, read: inGpmPerFoot },
  { symbol: "gpd/ft", words: ["gpd/ft"], make: usGallonsPerDayPerFoot, read: inUsGallonsPerDayPerFoot },
  { symbol: "L/s/m", words: ["L/s/m", "l/s/m"], make: litresPerSecondPerMetre, read: inLitresPerSecondPerMetre },
];

/**
 * Reads a transmissivity or a specific capacity from text, with its unit.
 *
 * @param text - a number and a unit, such as `0.8 gpm/ft`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseTransmissivity } from "risingmain/units";
 *
 * parseTransmissivity("0.8 gpm/ft"); // ≈ 0.00016559
 * ```
 */
export function parseTransmissivity(text: string): Transmissivity {
  return parseQuantity("a transmissivity or a specific capacity", transmissivityUnits, "0.8 gpm/ft", text);
}
