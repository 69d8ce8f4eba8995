/**
 * How a length is written.
 *
 * @module
 */
import {
  centimetres,
  feet,
  inCentimetres,
  inches,
  inFeet,
  inInches,
  inKilometres,
  inMetres,
  inMicrometres,
  inMiles,
  inMillimetres,
  inMils,
  inYards,
  kilometres,
  type Length,
  metres,
  micrometres,
  miles,
  millimetres,
  mils,
  yards,
} from "../length.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which a length is read and written. */
export const lengthUnits: readonly UnitText<Length>[] = [
  { symbol: "m", words: ["m", "metre", "metres", "meter", "meters"], make: metres, read: inMetres },
  {
    symbol: "mm",
    words: ["mm", "millimetre", "millimetres", "millimeter", "millimeters"],
    make: millimetres,
    read: inMillimetres,
  },
  {
    symbol: "cm",
    words: ["cm", "centimetre", "centimetres", "centimeter", "centimeters"],
    make: centimetres,
    read: inCentimetres,
  },
  {
    symbol: "km",
    words: ["km", "kilometre", "kilometres", "kilometer", "kilometers"],
    make: kilometres,
    read: inKilometres,
  },
  { symbol: "µm", words: ["µm", "um", "micron", "microns"], make: micrometres, read: inMicrometres },
  { symbol: "in", words: ["in", "inch", "inches", '"'], make: inches, read: inInches },
  { symbol: "ft", words: ["ft", "foot", "feet", "'"], make: feet, read: inFeet },
  { symbol: "yd", words: ["yd", "yard", "yards"], make: yards, read: inYards },
  { symbol: "mi", words: ["mi", "mile", "miles"], make: miles, read: inMiles },
  { symbol: "mil", words: ["mil", "mils", "thou"], make: mils, read: inMils },
];

/**
 * Reads a length from text, with its unit. Parts may follow each other, largest first.
 *
 * @param text - a number and a unit, such as `1-1/4 in`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseLength } from "risingmain/units";
 *
 * parseLength("1-1/4 in"); // ≈ 0.03175
 * ```
 */
export function parseLength(text: string): Length {
  return parseQuantity("a length", lengthUnits, "1-1/4 in", text, true);
}
