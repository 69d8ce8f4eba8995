/**
 * How a velocity is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import {
  feetPerSecond,
  inFeetPerSecond,
  inKilometresPerHour,
  inMetresPerSecond,
  inMilesPerHour,
  kilometresPerHour,
  metresPerSecond,
  milesPerHour,
  type Velocity,
} from "../velocity.ts";

/** The units in which a velocity is read and written. */
export const velocityUnits: readonly UnitText<Velocity>[] = [
  { symbol: "m/s", words: ["m/s"], make: metresPerSecond, read: inMetresPerSecond },
  { symbol: "ft/s", words: ["ft/s", "fps"], make: feetPerSecond, read: inFeetPerSecond },
  { symbol: "km/h", words: ["km/h"], make: kilometresPerHour, read: inKilometresPerHour },
  { symbol: "mph", words: ["mph", "mi/h"], make: milesPerHour, read: inMilesPerHour },
];

/**
 * Reads a velocity from text, with its unit.
 *
 * @param text - a number and a unit, such as `5 ft/s`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseVelocity } from "risingmain/units";
 *
 * parseVelocity("5 ft/s"); // ≈ 1.524
 * ```
 */
export function parseVelocity(text: string): Velocity {
  return parseQuantity("a velocity", velocityUnits, "5 ft/s", text);
}
