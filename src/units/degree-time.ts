/**
 * A temperature difference held for a time (a freezing index), held as a number in K·s.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A temperature difference held for a time (a freezing index); a number in K·s, told apart from other quantities by its type alone. */
export type DegreeTime = Quantity<"DegreeTime">;

/**
 * A temperature difference held for a time (a freezing index) given in Celsius degree-days. 1 °C·d = 86 400 K·s (exact).
 *
 * @param value - the number of Celsius degree-days; any finite number
 * @returns the quantity in K·s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { celsiusDegreeDays } from "risingmain/units";
 *
 * celsiusDegreeDays(12); // ≈ 1036800
 * ```
 */
export function celsiusDegreeDays(value: number): DegreeTime {
  return scaled("celsiusDegreeDays", value, 86400) as DegreeTime;
}

/**
 * Reads a temperature difference held for a time (a freezing index) in Celsius degree-days; undoes {@link celsiusDegreeDays}.
 *
 * @param degreeTime - the quantity, in K·s
 * @returns the number of Celsius degree-days
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { celsiusDegreeDays, inCelsiusDegreeDays } from "risingmain/units";
 *
 * inCelsiusDegreeDays(celsiusDegreeDays(12)); // ≈ 12.0000000000
 * ```
 */
export function inCelsiusDegreeDays(degreeTime: DegreeTime): number {
  return read("inCelsiusDegreeDays", degreeTime, 86400);
}

/**
 * A temperature difference held for a time (a freezing index) given in Fahrenheit degree-days. 1 °F·d = 48 000 K·s (exact: 86 400 / 1.8).
 *
 * @param value - the number of Fahrenheit degree-days; any finite number
 * @returns the quantity in K·s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { fahrenheitDegreeDays } from "risingmain/units";
 *
 * fahrenheitDegreeDays(12); // ≈ 576000
 * ```
 */
export function fahrenheitDegreeDays(value: number): DegreeTime {
  return scaled("fahrenheitDegreeDays", value, 48000) as DegreeTime;
}

/**
 * Reads a temperature difference held for a time (a freezing index) in Fahrenheit degree-days; undoes {@link fahrenheitDegreeDays}.
 *
 * @param degreeTime - the quantity, in K·s
 * @returns the number of Fahrenheit degree-days
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { fahrenheitDegreeDays, inFahrenheitDegreeDays } from "risingmain/units";
 *
 * inFahrenheitDegreeDays(fahrenheitDegreeDays(12)); // ≈ 12.0000000000
 * ```
 */
export function inFahrenheitDegreeDays(degreeTime: DegreeTime): number {
  return read("inFahrenheitDegreeDays", degreeTime, 48000);
}
