/**
 * How an electric resistance, reactance or impedance is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import {
  inKilohms,
  inMegohms,
  inMilliohms,
  inOhms,
  kilohms,
  megohms,
  milliohms,
  ohms,
  type Resistance,
} from "../resistance.ts";

/** The units in which an electric resistance, reactance or impedance is read and written. */
export const resistanceUnits: readonly UnitText<Resistance>[] = [
  { symbol: "Ω", words: ["Ω", "ohm", "ohms"], make: ohms, read: inOhms },
  { symbol: "mΩ", words: ["mΩ", "mohm"], make: milliohms, read: inMilliohms },
  { symbol: "kΩ", words: ["kΩ", "kohm", "kilohm", "kilohms"], make: kilohms, read: inKilohms },
  { symbol: "MΩ", words: ["MΩ", "Mohm", "megohm", "megohms"], make: megohms, read: inMegohms },
];

/**
 * Reads an electric resistance, reactance or impedance from text, with its unit.
 *
 * @param text - a number and a unit, such as `1.2 ohm`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseResistance } from "risingmain/units";
 *
 * parseResistance("1.2 ohm"); // ≈ 1.2000
 * ```
 */
export function parseResistance(text: string): Resistance {
  return parseQuantity("an electric resistance, reactance or impedance", resistanceUnits, "1.2 ohm", text);
}
