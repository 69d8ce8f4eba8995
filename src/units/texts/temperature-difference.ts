/**
 * How a difference of temperatures is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import {
  celsiusDegrees,
  fahrenheitDegrees,
  inCelsiusDegrees,
  inFahrenheitDegrees,
  inKelvinsDifference,
  kelvinsDifference,
  type TemperatureDifference,
} from "../temperature.ts";

/** The units in which a difference of temperatures is read and written. */
export const temperatureDifferenceUnits: readonly UnitText<TemperatureDifference>[] = [
  { symbol: "K", words: ["K"], make: kelvinsDifference, read: inKelvinsDifference },
  { symbol: "°C", words: ["°C", "C", "degC"], make: celsiusDegrees, read: inCelsiusDegrees },
  { symbol: "°F", words: ["°F", "F", "degF"], make: fahrenheitDegrees, read: inFahrenheitDegrees },
];

/**
 * Reads a difference of temperatures from text, with its unit.
 *
 * @param text - a number and a unit, such as `18 °F`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseTemperatureDifference } from "risingmain/units";
 *
 * parseTemperatureDifference("18 °F"); // ≈ 10.000
 * ```
 */
export function parseTemperatureDifference(text: string): TemperatureDifference {
  return parseQuantity("a difference of temperatures", temperatureDifferenceUnits, "18 °F", text);
}
