/**
 * A velocity, held as a number in m/s.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A velocity; a number in m/s, told apart from other quantities by its type alone. */
export type Velocity = Quantity<"Velocity">;

/**
 * A velocity given in metres per second.
 *
 * @param value - the number of metres per second; any finite number
 * @returns the quantity in m/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { metresPerSecond } from "risingmain/units";
 *
 * metresPerSecond(12); // ≈ 12.000
 * ```
 */
export function metresPerSecond(value: number): Velocity {
  return scaled("metresPerSecond", value) as Velocity;
}

/**
 * Reads a velocity in metres per second; undoes {@link metresPerSecond}.
 *
 * @param velocity - the quantity, in m/s
 * @returns the number of metres per second
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMetresPerSecond, metresPerSecond } from "risingmain/units";
 *
 * inMetresPerSecond(metresPerSecond(12)); // ≈ 12.0000000000
 * ```
 */
export function inMetresPerSecond(velocity: Velocity): number {
  return read("inMetresPerSecond", velocity);
}

/**
 * A velocity given in feet per second. 1 ft/s = 0.3048 m/s (exact: 0.3048 m/s).
 *
 * @param value - the number of feet per second; any finite number
 * @returns the quantity in m/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { feetPerSecond } from "risingmain/units";
 *
 * feetPerSecond(12); // ≈ 3.6576
 * ```
 */
export function feetPerSecond(value: number): Velocity {
  return scaled("feetPerSecond", value, 0.3048) as Velocity;
}

/**
 * Reads a velocity in feet per second; undoes {@link feetPerSecond}.
 *
 * @param velocity - the quantity, in m/s
 * @returns the number of feet per second
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { feetPerSecond, inFeetPerSecond } from "risingmain/units";
 *
 * inFeetPerSecond(feetPerSecond(12)); // ≈ 12.0000000000
 * ```
 */
export function inFeetPerSecond(velocity: Velocity): number {
  return read("inFeetPerSecond", velocity, 0.3048);
}

/**
 * A velocity given in kilometres per hour. 1 km/h = 1/3.6 m/s (exact: 1/3.6 m/s).
 *
 * @param value - the number of kilometres per hour; any finite number
 * @returns the quantity in m/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilometresPerHour } from "risingmain/units";
 *
 * kilometresPerHour(12); // ≈ 3.33333
 * ```
 */
export function kilometresPerHour(value: number): Velocity {
  return scaled("kilometresPerHour", value, 1, 3.6) as Velocity;
}

/**
 * Reads a velocity in kilometres per hour; undoes {@link kilometresPerHour}.
 *
 * @param velocity - the quantity, in m/s
 * @returns the number of kilometres per hour
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilometresPerHour, kilometresPerHour } from "risingmain/units";
 *
 * inKilometresPerHour(kilometresPerHour(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilometresPerHour(velocity: Velocity): number {
  return read("inKilometresPerHour", velocity, 1, 3.6);
}

/**
 * A velocity given in miles per hour. 1 mph = 0.44704 m/s (exact: 1609.344/3600 m/s).
 *
 * @param value - the number of miles per hour; any finite number
 * @returns the quantity in m/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { milesPerHour } from "risingmain/units";
 *
 * milesPerHour(12); // ≈ 5.36448
 * ```
 */
export function milesPerHour(value: number): Velocity {
  return scaled("milesPerHour", value, 0.44704) as Velocity;
}

/**
 * Reads a velocity in miles per hour; undoes {@link milesPerHour}.
 *
 * @param velocity - the quantity, in m/s
 * @returns the number of miles per hour
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMilesPerHour, milesPerHour } from "risingmain/units";
 *
 * inMilesPerHour(milesPerHour(12)); // ≈ 12.0000000000
 * ```
 */
export function inMilesPerHour(velocity: Velocity): number {
  return read("inMilesPerHour", velocity, 0.44704);
}
