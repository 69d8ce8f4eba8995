/**
 * How a mass is written.
 *
 * @module
 */
import {
  grams,
  inGrams,
  inKilograms,
  inMilligrams,
  inOunces,
  inPounds,
  inTonnes,
  kilograms,
  type Mass,
  milligrams,
  ounces,
  pounds,
  tonnes,
} from "../mass.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which a mass is read and written. */
export const massUnits: readonly UnitText<Mass>[] = [
  { symbol: "kg", words: ["kg", "kilogram", "kilograms"], make: kilograms, read: inKilograms },
  { symbol: "g", words: ["g", "gram", "grams"], make: grams, read: inGrams },
  { symbol: "mg", words: ["mg", "milligram", "milligrams"], make: milligrams, read: inMilligrams },
  { symbol: "t", words: ["t", "tonne", "tonnes"], make: tonnes, read: inTonnes },
  { symbol: "lb", words: ["lb", "lbs", "pound", "pounds"], make: pounds, read: inPounds },
  { symbol: "oz", words: ["oz", "ounce", "ounces"], make: ounces, read: inOunces },
];

/**
 * Reads a mass from text, with its unit. Parts may follow each other, largest first.
 *
 * @param text - a number and a unit, such as `8 lb`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseMass } from "risingmain/units";
 *
 * parseMass("8 lb"); // ≈ 3.6287
 * ```
 */
export function parseMass(text: string): Mass {
  return parseQuantity("a mass", massUnits, "8 lb", text, true);
}
