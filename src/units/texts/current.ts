/**
 * How an electric current is written.
 *
 * @module
 */
import { amperes, type Current, inAmperes, inMilliamperes, milliamperes } from "../current.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which an electric current is read and written. */
export const currentUnits: readonly UnitText<Current>[] = [
  { symbol: "A", words: ["A", "amp", "amps", "ampere", "amperes"], make: amperes, read: inAmperes },
  { symbol: "mA", words: ["mA"], make: milliamperes, read: inMilliamperes },
];

/**
 * Reads an electric current from text, with its unit.
 *
 * @param text - a number and a unit, such as `10.4 A`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseCurrent } from "risingmain/units";
 *
 * parseCurrent("10.4 A"); // ≈ 10.400
 * ```
 */
export function parseCurrent(text: string): Current {
  return parseQuantity("an electric current", currentUnits, "10.4 A", text);
}
