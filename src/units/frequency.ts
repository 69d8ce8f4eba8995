/**
 * How often something happens: cycles of the supply, starts of a pump, turns of a shaft, held as a number in Hz.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** How often something happens: cycles of the supply, starts of a pump, turns of a shaft; a number in Hz, told apart from other quantities by its type alone. */
export type Frequency = Quantity<"Frequency">;

/**
 * How often something happens given in hertz.
 *
 * @param value - the number of hertz; any finite number
 * @returns the quantity in Hz
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { hertz } from "risingmain/units";
 *
 * hertz(12); // ≈ 12.000
 * ```
 */
export function hertz(value: number): Frequency {
  return scaled("hertz", value) as Frequency;
}

/**
 * Reads how often something happens in hertz; undoes {@link hertz}.
 *
 * @param frequency - the quantity, in Hz
 * @returns the number of hertz
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { hertz, inHertz } from "risingmain/units";
 *
 * inHertz(hertz(12)); // ≈ 12.0000000000
 * ```
 */
export function inHertz(frequency: Frequency): number {
  return read("inHertz", frequency);
}

/**
 * How often something happens given in times per minute, or revolutions per minute. 1 1/min = 1/60 Hz (exact).
 *
 * @param value - the number of times per minute, or revolutions per minute; any finite number
 * @returns the quantity in Hz
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { perMinute } from "risingmain/units";
 *
 * perMinute(12); // ≈ 0.200000
 * ```
 */
export function perMinute(value: number): Frequency {
  return scaled("perMinute", value, 1, 60) as Frequency;
}

/**
 * Reads how often something happens in times per minute, or revolutions per minute; undoes {@link perMinute}.
 *
 * @param frequency - the quantity, in Hz
 * @returns the number of times per minute, or revolutions per minute
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPerMinute, perMinute } from "risingmain/units";
 *
 * inPerMinute(perMinute(12)); // ≈ 12.0000000000
 * ```
 */
export function inPerMinute(frequency: Frequency): number {
  return read("inPerMinute", frequency, 1, 60);
}

/**
 * How often something happens given in times per hour. 1 1/h = 1/3600 Hz (exact).
 *
 * @param value - the number of times per hour; any finite number
 * @returns the quantity in Hz
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { perHour } from "risingmain/units";
 *
 * perHour(12); // ≈ 0.00333333
 * ```
 */
export function perHour(value: number): Frequency {
  return scaled("perHour", value, 1, 3600) as Frequency;
}

/**
 * Reads how often something happens in times per hour; undoes {@link perHour}.
 *
 * @param frequency - the quantity, in Hz
 * @returns the number of times per hour
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPerHour, perHour } from "risingmain/units";
 *
 * inPerHour(perHour(12)); // ≈ 12.0000000000
 * ```
 */
export function inPerHour(frequency: Frequency): number {
  return read("inPerHour", frequency, 1, 3600);
}

/**
 * How often something happens given in times per day. 1 1/d = 1/86400 Hz (exact).
 *
 * @param value - the number of times per day; any finite number
 * @returns the quantity in Hz
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { perDay } from "risingmain/units";
 *
 * perDay(12); // ≈ 0.000138889
 * ```
 */
export function perDay(value: number): Frequency {
  return scaled("perDay", value, 1, 86400) as Frequency;
}

/**
 * Reads how often something happens in times per day; undoes {@link perDay}.
 *
 * @param frequency - the quantity, in Hz
 * @returns the number of times per day
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPerDay, perDay } from "risingmain/units";
 *
 * inPerDay(perDay(12)); // ≈ 12.0000000000
 * ```
 */
export function inPerDay(frequency: Frequency): number {
  return read("inPerDay", frequency, 1, 86400);
}
