/**
 * How a temperature is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import { celsius, fahrenheit, inCelsius, inFahrenheit, inKelvins, kelvins, type Temperature } from "../temperature.ts";

/** The units in which a temperature is read and written. */
export const temperatureUnits: readonly UnitText<Temperature>[] = [
  { symbol: "K", words: ["K"], make: kelvins, read: inKelvins },
  { symbol: "°C", words: ["°C", "C", "degC"], make: celsius, read: inCelsius },
  { symbol: "°F", words: ["°F", "F", "degF"], make: fahrenheit, read: inFahrenheit },
];

/**
 * Reads a temperature from text, with its unit.
 *
 * @param text - a number and a unit, such as `52 °F`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseTemperature } from "risingmain/units";
 *
 * parseTemperature("52 °F"); // ≈ 284.26
 * ```
 */
export function parseTemperature(text: string): Temperature {
  return parseQuantity("a temperature", temperatureUnits, "52 °F", text);
}
