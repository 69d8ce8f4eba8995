/**
 * A span of time, held as a number in s.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A span of time; a number in s, told apart from other quantities by its type alone. */
export type Duration = Quantity<"Duration">;

/**
 * A span of time given in seconds.
 *
 * @param value - the number of seconds; any finite number
 * @returns the quantity in s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { seconds } from "risingmain/units";
 *
 * seconds(12); // ≈ 12.000
 * ```
 */
export function seconds(value: number): Duration {
  return scaled("seconds", value) as Duration;
}

/**
 * Reads a span of time in seconds; undoes {@link seconds}.
 *
 * @param duration - the quantity, in s
 * @returns the number of seconds
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inSeconds, seconds } from "risingmain/units";
 *
 * inSeconds(seconds(12)); // ≈ 12.0000000000
 * ```
 */
export function inSeconds(duration: Duration): number {
  return read("inSeconds", duration);
}

/**
 * A span of time given in milliseconds. 1 ms = 1e-3 s (SI prefix).
 *
 * @param value - the number of milliseconds; any finite number
 * @returns the quantity in s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { milliseconds } from "risingmain/units";
 *
 * milliseconds(12); // ≈ 0.012
 * ```
 */
export function milliseconds(value: number): Duration {
  return scaled("milliseconds", value, 1e-3) as Duration;
}

/**
 * Reads a span of time in milliseconds; undoes {@link milliseconds}.
 *
 * @param duration - the quantity, in s
 * @returns the number of milliseconds
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMilliseconds, milliseconds } from "risingmain/units";
 *
 * inMilliseconds(milliseconds(12)); // ≈ 12.0000000000
 * ```
 */
export function inMilliseconds(duration: Duration): number {
  return read("inMilliseconds", duration, 1e-3);
}

/**
 * A span of time given in minutes. 1 min = 60 s (exact).
 *
 * @param value - the number of minutes; any finite number
 * @returns the quantity in s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { minutes } from "risingmain/units";
 *
 * minutes(12); // ≈ 720.000
 * ```
 */
export function minutes(value: number): Duration {
  return scaled("minutes", value, 60) as Duration;
}

/**
 * Reads a span of time in minutes; undoes {@link minutes}.
 *
 * @param duration - the quantity, in s
 * @returns the number of minutes
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMinutes, minutes } from "risingmain/units";
 *
 * inMinutes(minutes(12)); // ≈ 12.0000000000
 * ```
 */
export function inMinutes(duration: Duration): number {
  return read("inMinutes", duration, 60);
}

/**
 * A span of time given in hours. 1 h = 3600 s (exact).
 *
 * @param value - the number of hours; any finite number
 * @returns the quantity in s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { hours } from "risingmain/units";
 *
 * hours(12); // ≈ 43200.000
 * ```
 */
export function hours(value: number): Duration {
  return scaled("hours", value, 3600) as Duration;
}

/**
 * Reads a span of time in hours; undoes {@link hours}.
 *
 * @param duration - the quantity, in s
 * @returns the number of hours
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { hours, inHours } from "risingmain/units";
 *
 * inHours(hours(12)); // ≈ 12.0000000000
 * ```
 */
export function inHours(duration: Duration): number {
  return read("inHours", duration, 3600);
}

/**
 * A span of time given in days of 24 hours. 1 d = 86400 s (exact).
 *
 * @param value - the number of days of 24 hours; any finite number
 * @returns the quantity in s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { days } from "risingmain/units";
 *
 * days(12); // ≈ 1.03680e+6
 * ```
 */
export function days(value: number): Duration {
  return scaled("days", value, 86400) as Duration;
}

/**
 * Reads a span of time in days of 24 hours; undoes {@link days}.
 *
 * @param duration - the quantity, in s
 * @returns the number of days of 24 hours
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { days, inDays } from "risingmain/units";
 *
 * inDays(days(12)); // ≈ 12.0000000000
 * ```
 */
export function inDays(duration: Duration): number {
  return read("inDays", duration, 86400);
}

/**
 * A span of time given in Julian years of 365.25 days. 1 a = 31557600 s (exact by convention (IAU)).
 *
 * @param value - the number of Julian years of 365.25 days; any finite number
 * @returns the quantity in s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { years } from "risingmain/units";
 *
 * years(12); // ≈ 3.78691e+8
 * ```
 */
export function years(value: number): Duration {
  return scaled("years", value, 31557600) as Duration;
}

/**
 * Reads a span of time in Julian years of 365.25 days; undoes {@link years}.
 *
 * @param duration - the quantity, in s
 * @returns the number of Julian years of 365.25 days
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inYears, years } from "risingmain/units";
 *
 * inYears(years(12)); // ≈ 12.0000000000
 * ```
 */
export function inYears(duration: Duration): number {
  return read("inYears", duration, 31557600);
}
