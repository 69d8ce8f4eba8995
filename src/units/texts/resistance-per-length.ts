/**
 * How an electric resistance or reactance per length is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import {
  inOhmsPerKilometre,
  inOhmsPerMetre,
  inOhmsPerThousandFeet,
  ohmsPerKilometre,
  ohmsPerMetre,
  ohmsPerThousandFeet,
  type ResistancePerLength,
} from "../resistance-per-length.ts";

/** The units in which an electric resistance or reactance per length is read and written. */
export const resistancePerLengthUnits: readonly UnitText<ResistancePerLength>[] = [
  { symbol: "Ω/m", words: ["Ω/m", "ohm/m"], make: ohmsPerMetre, read: inOhmsPerMetre },
  { symbol: "Ω/km", words: ["Ω/km", "ohm/km"], make: ohmsPerKilometre, read: inOhmsPerKilometre },
  {
    symbol: "Ω/kft",
    words: ["Ω/kft", "ohm/kft", "Ω/1000ft", "ohm/1000ft"],
    make: ohmsPerThousandFeet,
    read: inOhmsPerThousandFeet,
  },
];

/**
 * Reads an electric resistance or reactance per length from text, with its unit.
 *
 * @param text - a number and a unit, such as `1.24 ohm/kft`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseResistancePerLength } from "risingmain/units";
 *
 * parseResistancePerLength("1.24 ohm/kft"); // ≈ 0.0040682
 * ```
 */
export function parseResistancePerLength(text: string): ResistancePerLength {
  return parseQuantity(
    "an electric resistance or reactance per length",
    resistancePerLengthUnits,
    "1.24 ohm/kft",
    text,
  );
}
