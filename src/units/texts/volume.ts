/**
 * How a volume is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import {
  acreFeet,
  cubicFeet,
  cubicInches,
  cubicMetres,
  cubicYards,
  imperialFluidOunces,
  imperialGallons,
  inAcreFeet,
  inCubicFeet,
  inCubicInches,
  inCubicMetres,
  inCubicYards,
  inImperialFluidOunces,
  inImperialGallons,
  inLitres,
  inMillilitres,
  inUsCups,
  inUsFluidOunces,
  inUsGallons,
  inUsPints,
  inUsQuarts,
  inUsTablespoons,
  litres,
  millilitres,
  usCups,
  usFluidOunces,
  usGallons,
  usPints,
  usQuarts,
  usTablespoons,
  type Volume,
} from "../volume.ts";

/** The units in which a volume is read and written. */
export const volumeUnits: readonly UnitText<Volume>[] = [
  { symbol: "m³", words: ["m³", "m^3"], make: cubicMetres, read: inCubicMetres },
  { symbol: "L", words: ["L", "l", "litre", "litres", "liter", "liters"], make: litres, read: inLitres },
  {
    symbol: "mL",
    words: ["mL", "ml", "millilitre", "millilitres", "milliliter", "milliliters"],
    make: millilitres,
    read: inMillilitres,
  },
  {
    symbol: "gal",
    words: ["gal", "gals", "gallon", "gallons", "USgal", "USgallon", "USgallons"],
    make: usGallons,
    read: inUsGallons,
  },
  {
    symbol: "imp gal",
    words: ["impgal", "imperialgallon", "imperialgallons"],
    make: imperialGallons,
    read: inImperialGallons,
  },
  { symbol: "qt", words: ["qt", "USqt", "quart", "quarts"], make: usQuarts, read: inUsQuarts },
  { symbol: "pt", words: ["pt", "USpt", "pint", "pints"], make: usPints, read: inUsPints },
  { symbol: "cup", words: ["cup", "cups", "UScup", "UScups"], make: usCups, read: inUsCups },
  { symbol: "fl oz", words: ["floz", "USfloz"], make: usFluidOunces, read: inUsFluidOunces },
  { symbol: "imp fl oz", words: ["impfloz"], make: imperialFluidOunces, read: inImperialFluidOunces },
  {
    symbol: "tbsp",
    words: ["tbsp", "UStbsp", "tablespoon", "tablespoons"],
    make: usTablespoons,
    read: inUsTablespoons,
  },
  { symbol: "ft³", words: ["ft³", "ft^3", "cuft"], make: cubicFeet, read: inCubicFeet },
  { symbol: "in³", words: ["in³", "in^3", "cuin"], make: cubicInches, read: inCubicInches },
  { symbol: "yd³", words: ["yd³", "yd^3", "cuyd"], make: cubicYards, read: inCubicYards },
  { symbol: "acre-ft", words: ["acre-ft", "acre-feet", "ac-ft", "acreft"], make: acreFeet, read: inAcreFeet },
];

/**
 * Reads a volume from text, with its unit.
 *
 * @param text - a number and a unit, such as `5 gal`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseVolume } from "risingmain/units";
 *
 * parseVolume("5 gal"); // ≈ 0.018927
 * ```
 */
export function parseVolume(text: string): Volume {
  return parseQuantity("a volume", volumeUnits, "5 gal", text);
}
