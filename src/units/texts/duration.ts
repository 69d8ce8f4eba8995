/**
 * How a span of time is written.
 *
 * @module
 */
import {
  type Duration,
  days,
  hours,
  inDays,
  inHours,
  inMilliseconds,
  inMinutes,
  inSeconds,
  inYears,
  milliseconds,
  minutes,
  seconds,
  years,
} from "../duration.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which a span of time is read and written. */
export const durationUnits: readonly UnitText<Duration>[] = [
  { symbol: "s", words: ["s", "sec", "secs", "second", "seconds"], make: seconds, read: inSeconds },
  { symbol: "ms", words: ["ms"], make: milliseconds, read: inMilliseconds },
  { symbol: "min", words: ["min", "mins", "minute", "minutes"], make: minutes, read: inMinutes },
  { symbol: "h", words: ["h", "hr", "hrs", "hour", "hours"], make: hours, read: inHours },
  { symbol: "d", words: ["d", "day", "days"], make: days, read: inDays },
  { symbol: "a", words: ["a", "yr", "yrs", "year", "years"], make: years, read: inYears },
];

/**
 * Reads a span of time from text, with its unit. Parts may follow each other, largest first.
 *
 * @param text - a number and a unit, such as `1 h 30 min`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseDuration } from "risingmain/units";
 *
 * parseDuration("1 h 30 min"); // ≈ 5400
 * ```
 */
export function parseDuration(text: string): Duration {
  return parseQuantity("a span of time", durationUnits, "1 h 30 min", text, true);
}
