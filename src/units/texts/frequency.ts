/**
 * How a frequency is written.
 *
 * @module
 */
import {
  type Frequency,
  hertz,
  inHertz,
  inPerDay,
  inPerHour,
  inPerMinute,
  perDay,
  perHour,
  perMinute,
} from "../frequency.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which a frequency is read and written. */
export const frequencyUnits: readonly UnitText<Frequency>[] = [
  { symbol: "Hz", words: ["Hz", "hertz", "/s"], make: hertz, read: inHertz },
  { symbol: "1/min", words: ["1/min", "/min", "rpm", "r/min"], make: perMinute, read: inPerMinute },
  { symbol: "1/h", words: ["1/h", "/h", "/hour"], make: perHour, read: inPerHour },
  { symbol: "1/d", words: ["1/d", "/d", "/day"], make: perDay, read: inPerDay },
];

/**
 * Reads a frequency from text, with its unit.
 *
 * @param text - a number and a unit, such as `60 Hz`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseFrequency } from "risingmain/units";
 *
 * parseFrequency("60 Hz"); // ≈ 60.000
 * ```
 */
export function parseFrequency(text: string): Frequency {
  return parseQuantity("a frequency", frequencyUnits, "60 Hz", text);
}
