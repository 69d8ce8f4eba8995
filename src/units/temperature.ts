/**
 * A temperature and a difference of temperatures: two quantities, since 10 °C above 20 °C is not 303.15 K above it.
 *
 * @module
 */
import { finite, type Quantity, read, scaled } from "./quantity.ts";

/** A temperature; a number in kelvins, told apart from other quantities by its type alone. */
export type Temperature = Quantity<"Temperature">;

/** A difference of two temperatures; a number in kelvins, told apart from other quantities by its type alone. */
export type TemperatureDifference = Quantity<"TemperatureDifference">;

/** 0 °C in kelvins; exact by definition. */
const ICE_POINT = 273.15;
/** 0 °F is this many Fahrenheit degrees above absolute zero; exact: 273.15 × 1.8 − 32. */
const FAHRENHEIT_ZERO = 459.67;

/**
 * A temperature given in kelvins.
 *
 * @param value - the number of kelvins; any finite number
 * @returns the quantity in kelvins
 * @throws {@link InputError} where the value is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kelvins } from "risingmain/units";
 *
 * kelvins(12); // ≈ 12.0000
 * ```
 */
export function kelvins(value: number): Temperature {
  return finite("kelvins", value) as Temperature;
}

/**
 * Reads a temperature in kelvins; undoes {@link kelvins}.
 *
 * @param temperature - the quantity, in kelvins
 * @returns the number of kelvins
 * @throws {@link InputError} where the quantity is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKelvins, kelvins } from "risingmain/units";
 *
 * inKelvins(kelvins(12)); // ≈ 12.0000000000
 * ```
 */
export function inKelvins(temperature: Temperature): number {
  return finite("inKelvins", temperature);
}

/**
 * A temperature given in degrees Celsius. T/K = t/°C + 273.15 (exact).
 *
 * @param value - the number of degrees Celsius; any finite number
 * @returns the quantity in kelvins
 * @throws {@link InputError} where the value is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { celsius } from "risingmain/units";
 *
 * celsius(12); // ≈ 285.15
 * ```
 */
export function celsius(value: number): Temperature {
  return (finite("celsius", value) + ICE_POINT) as Temperature;
}

/**
 * Reads a temperature in degrees Celsius; undoes {@link celsius}.
 *
 * @param temperature - the quantity, in kelvins
 * @returns the number of degrees Celsius
 * @throws {@link InputError} where the quantity is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { celsius, inCelsius } from "risingmain/units";
 *
 * inCelsius(celsius(12)); // ≈ 12.0000000000
 * ```
 */
export function inCelsius(temperature: Temperature): number {
  return finite("inCelsius", temperature) - ICE_POINT;
}

/**
 * A temperature given in degrees Fahrenheit. T/K = (t/°F + 459.67) / 1.8 (exact).
 *
 * @param value - the number of degrees Fahrenheit; any finite number
 * @returns the quantity in kelvins
 * @throws {@link InputError} where the value is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { fahrenheit } from "risingmain/units";
 *
 * fahrenheit(12); // ≈ 262.0389
 * ```
 */
export function fahrenheit(value: number): Temperature {
  return ((finite("fahrenheit", value) + FAHRENHEIT_ZERO) / 1.8) as Temperature;
}

/**
 * Reads a temperature in degrees Fahrenheit; undoes {@link fahrenheit}.
 *
 * @param temperature - the quantity, in kelvins
 * @returns the number of degrees Fahrenheit
 * @throws {@link InputError} where the quantity is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { fahrenheit, inFahrenheit } from "risingmain/units";
 *
 * inFahrenheit(fahrenheit(12)); // ≈ 12.0000000000
 * ```
 */
export function inFahrenheit(temperature: Temperature): number {
  return finite("inFahrenheit", finite("inFahrenheit", temperature) * 1.8 - FAHRENHEIT_ZERO, temperature);
}

/**
 * A difference of temperatures given in kelvins.
 *
 * @param value - the number of kelvins; any finite number
 * @returns the quantity in kelvins
 * @throws {@link InputError} where the value is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kelvinsDifference } from "risingmain/units";
 *
 * kelvinsDifference(12); // ≈ 12.0000
 * ```
 */
export function kelvinsDifference(value: number): TemperatureDifference {
  return scaled("kelvinsDifference", value) as TemperatureDifference;
}

/**
 * Reads a difference of temperatures in kelvins; undoes {@link kelvinsDifference}.
 *
 * @param difference - the quantity, in kelvins
 * @returns the number of kelvins
 * @throws {@link InputError} where the quantity is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKelvinsDifference, kelvinsDifference } from "risingmain/units";
 *
 * inKelvinsDifference(kelvinsDifference(12)); // ≈ 12.0000000000
 * ```
 */
export function inKelvinsDifference(difference: TemperatureDifference): number {
  return read("inKelvinsDifference", difference);
}

/**
 * A difference of temperatures given in Celsius degrees.
 *
 * @param value - the number of Celsius degrees; any finite number
 * @returns the quantity in kelvins
 * @throws {@link InputError} where the value is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { celsiusDegrees } from "risingmain/units";
 *
 * celsiusDegrees(12); // ≈ 12.0000
 * ```
 */
export function celsiusDegrees(value: number): TemperatureDifference {
  return scaled("celsiusDegrees", value) as TemperatureDifference;
}

/**
 * Reads a difference of temperatures in Celsius degrees; undoes {@link celsiusDegrees}.
 *
 * @param difference - the quantity, in kelvins
 * @returns the number of Celsius degrees
 * @throws {@link InputError} where the quantity is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { celsiusDegrees, inCelsiusDegrees } from "risingmain/units";
 *
 * inCelsiusDegrees(celsiusDegrees(12)); // ≈ 12.0000000000
 * ```
 */
export function inCelsiusDegrees(difference: TemperatureDifference): number {
  return read("inCelsiusDegrees", difference);
}

/**
 * A difference of temperatures given in Fahrenheit degrees. 1 Fahrenheit degree = 1/1.8 K (exact).
 *
 * @param value - the number of Fahrenheit degrees; any finite number
 * @returns the quantity in kelvins
 * @throws {@link InputError} where the value is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { fahrenheitDegrees } from "risingmain/units";
 *
 * fahrenheitDegrees(12); // ≈ 6.6667
 * ```
 */
export function fahrenheitDegrees(value: number): TemperatureDifference {
  return scaled("fahrenheitDegrees", value, 1, 1.8) as TemperatureDifference;
}

/**
 * Reads a difference of temperatures in Fahrenheit degrees; undoes {@link fahrenheitDegrees}.
 *
 * @param difference - the quantity, in kelvins
 * @returns the number of Fahrenheit degrees
 * @throws {@link InputError} where the quantity is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { fahrenheitDegrees, inFahrenheitDegrees } from "risingmain/units";
 *
 * inFahrenheitDegrees(fahrenheitDegrees(12)); // ≈ 12.0000000000
 * ```
 */
export function inFahrenheitDegrees(difference: TemperatureDifference): number {
  return read("inFahrenheitDegrees", difference, 1, 1.8);
}
