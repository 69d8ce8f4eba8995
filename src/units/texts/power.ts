/**
 * How a power is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import {
  btuPerHour,
  electricHorsepower,
  horsepower,
  inBtuPerHour,
  inElectricHorsepower,
  inHorsepower,
  inKilowatts,
  inMetricHorsepower,
  inWatts,
  kilowatts,
  metricHorsepower,
  type Power,
  watts,
} from "../power.ts";

/** The units in which a power is read and written. */
export const powerUnits: readonly UnitText<Power>[] = [
  { symbol: "W", words: ["W", "watt", "watts"], make: watts, read: inWatts },
  { symbol: "kW", words: ["kW", "kilowatt", "kilowatts"], make: kilowatts, read: inKilowatts },
  { symbol: "hp", words: ["hp", "horsepower"], make: horsepower, read: inHorsepower },
  { symbol: "hp(E)", words: ["hp(E)"], make: electricHorsepower, read: inElectricHorsepower },
  { symbol: "hp(M)", words: ["hp(M)", "PS"], make: metricHorsepower, read: inMetricHorsepower },
  { symbol: "Btu/h", words: ["Btu/h"], make: btuPerHour, read: inBtuPerHour },
];

/**
 * Reads a power from text, with its unit.
 *
 * @param text - a number and a unit, such as `1.5 hp`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parsePower } from "risingmain/units";
 *
 * parsePower("1.5 hp"); // ≈ 1118.5
 * ```
 */
export function parsePower(text: string): Power {
  return parseQuantity("a power", powerUnits, "1.5 hp", text);
}
