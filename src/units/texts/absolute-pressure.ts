/**
 * How an absolute pressure is written.
 *
 * @module
 */
import {
  type AbsolutePressure,
  barAbsolute,
  inBarAbsolute,
  inchesOfMercury,
  inInchesOfMercury,
  inKilopascalsAbsolute,
  inMegapascalsAbsolute,
  inPascalsAbsolute,
  inPsia,
  inStandardAtmospheres,
  kilopascalsAbsolute,
  megapascalsAbsolute,
  pascalsAbsolute,
  psia,
  standardAtmospheres,
} from "../absolute-pressure.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which an absolute pressure is read and written. */
export const absolutePressureUnits: readonly UnitText<AbsolutePressure>[] = [
  { symbol: "Pa abs", words: ["Paabs"], make: pascalsAbsolute, read: inPascalsAbsolute },
  { symbol: "kPa abs", words: ["kPaabs", "kPaa"], make: kilopascalsAbsolute, read: inKilopascalsAbsolute },
  { symbol: "MPa abs", words: ["MPaabs"], make: megapascalsAbsolute, read: inMegapascalsAbsolute },
  { symbol: "bar abs", words: ["barabs", "bara"], make: barAbsolute, read: inBarAbsolute },
  { symbol: "psia", words: ["psia", "psiabs"], make: psia, read: inPsia },
  { symbol: "atm", words: ["atm"], make: standardAtmospheres, read: inStandardAtmospheres },
  { symbol: "inHg", words: ["inHg"], make: inchesOfMercury, read: inInchesOfMercury },
];

/**
 * Reads an absolute pressure from text, with its unit.
 *
 * @param text - a number and a unit, such as `14.7 psia`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseAbsolutePressure } from "risingmain/units";
 *
 * parseAbsolutePressure("14.7 psia"); // ≈ 101353
 * ```
 */
export function parseAbsolutePressure(text: string): AbsolutePressure {
  return parseQuantity("an absolute pressure", absolutePressureUnits, "14.7 psia", text);
}
