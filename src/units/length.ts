/**
 * A length, depth, diameter, elevation or head of liquid, held as a number in m.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A length, depth, diameter, elevation or head of liquid; a number in m, told apart from other quantities by its type alone. */
export type Length = Quantity<"Length">;

/**
 * A length, depth, diameter, elevation or head of liquid given in metres.
 *
 * @param value - the number of metres; any finite number
 * @returns the quantity in m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { metres } from "risingmain/units";
 *
 * metres(12); // ≈ 12.000
 * ```
 */
export function metres(value: number): Length {
  return scaled("metres", value) as Length;
}

/**
 * Reads a length, depth, diameter, elevation or head of liquid in metres; undoes {@link metres}.
 *
 * @param length - the quantity, in m
 * @returns the number of metres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMetres, metres } from "risingmain/units";
 *
 * inMetres(metres(12)); // ≈ 12.0000000000
 * ```
 */
export function inMetres(length: Length): number {
  return read("inMetres", length);
}

/**
 * A length, depth, diameter, elevation or head of liquid given in millimetres. 1 mm = 1e-3 m (SI prefix).
 *
 * @param value - the number of millimetres; any finite number
 * @returns the quantity in m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { millimetres } from "risingmain/units";
 *
 * millimetres(12); // ≈ 0.012
 * ```
 */
export function millimetres(value: number): Length {
  return scaled("millimetres", value, 1e-3) as Length;
}

/**
 * Reads a length, depth, diameter, elevation or head of liquid in millimetres; undoes {@link millimetres}.
 *
 * @param length - the quantity, in m
 * @returns the number of millimetres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMillimetres, millimetres } from "risingmain/units";
 *
 * inMillimetres(millimetres(12)); // ≈ 12.0000000000
 * ```
 */
export function inMillimetres(length: Length): number {
  return read("inMillimetres", length, 1e-3);
}

/**
 * A length, depth, diameter, elevation or head of liquid given in centimetres. 1 cm = 1e-2 m (SI prefix).
 *
 * @param value - the number of centimetres; any finite number
 * @returns the quantity in m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { centimetres } from "risingmain/units";
 *
 * centimetres(12); // ≈ 0.12
 * ```
 */
export function centimetres(value: number): Length {
  return scaled("centimetres", value, 1e-2) as Length;
}

/**
 * Reads a length, depth, diameter, elevation or head of liquid in centimetres; undoes {@link centimetres}.
 *
 * @param length - the quantity, in m
 * @returns the number of centimetres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { centimetres, inCentimetres } from "risingmain/units";
 *
 * inCentimetres(centimetres(12)); // ≈ 12.0000000000
 * ```
 */
export function inCentimetres(length: Length): number {
  return read("inCentimetres", length, 1e-2);
}

/**
 * A length, depth, diameter, elevation or head of liquid given in kilometres. 1 km = 1e3 m (SI prefix).
 *
 * @param value - the number of kilometres; any finite number
 * @returns the quantity in m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilometres } from "risingmain/units";
 *
 * kilometres(12); // ≈ 1.2e+4
 * ```
 */
export function kilometres(value: number): Length {
  return scaled("kilometres", value, 1e3) as Length;
}

/**
 * Reads a length, depth, diameter, elevation or head of liquid in kilometres; undoes {@link kilometres}.
 *
 * @param length - the quantity, in m
 * @returns the number of kilometres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilometres, kilometres } from "risingmain/units";
 *
 * inKilometres(kilometres(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilometres(length: Length): number {
  return read("inKilometres", length, 1e3);
}

/**
 * A length, depth, diameter, elevation or head of liquid given in micrometres. 1 µm = 1e-6 m (SI prefix).
 *
 * @param value - the number of micrometres; any finite number
 * @returns the quantity in m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { micrometres } from "risingmain/units";
 *
 * micrometres(12); // ≈ 0.000012
 * ```
 */
export function micrometres(value: number): Length {
  return scaled("micrometres", value, 1e-6) as Length;
}

/**
 * Reads a length, depth, diameter, elevation or head of liquid in micrometres; undoes {@link micrometres}.
 *
 * @param length - the quantity, in m
 * @returns the number of micrometres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMicrometres, micrometres } from "risingmain/units";
 *
 * inMicrometres(micrometres(12)); // ≈ 12.0000000000
 * ```
 */
export function inMicrometres(length: Length): number {
  return read("inMicrometres", length, 1e-6);
}

/**
 * A length, depth, diameter, elevation or head of liquid given in inches. 1 in = 0.0254 m (exact: 25.4 mm).
 *
 * @param value - the number of inches; any finite number
 * @returns the quantity in m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inches } from "risingmain/units";
 *
 * inches(12); // ≈ 0.3048
 * ```
 */
export function inches(value: number): Length {
  return scaled("inches", value, 0.0254) as Length;
}

/**
 * Reads a length, depth, diameter, elevation or head of liquid in inches; undoes {@link inches}.
 *
 * @param length - the quantity, in m
 * @returns the number of inches
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inInches, inches } from "risingmain/units";
 *
 * inInches(inches(12)); // ≈ 12.0000000000
 * ```
 */
export function inInches(length: Length): number {
  return read("inInches", length, 0.0254);
}

/**
 * A length, depth, diameter, elevation or head of liquid given in international feet. 1 ft = 0.3048 m (exact: 0.3048 m).
 *
 * @param value - the number of international feet; any finite number
 * @returns the quantity in m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { feet } from "risingmain/units";
 *
 * feet(12); // ≈ 3.6576
 * ```
 */
export function feet(value: number): Length {
  return scaled("feet", value, 0.3048) as Length;
}

/**
 * Reads a length, depth, diameter, elevation or head of liquid in international feet; undoes {@link feet}.
 *
 * @param length - the quantity, in m
 * @returns the number of international feet
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { feet, inFeet } from "risingmain/units";
 *
 * inFeet(feet(12)); // ≈ 12.0000000000
 * ```
 */
export function inFeet(length: Length): number {
  return read("inFeet", length, 0.3048);
}

/**
 * A length, depth, diameter, elevation or head of liquid given in yards. 1 yd = 0.9144 m (exact: 3 ft).
 *
 * @param value - the number of yards; any finite number
 * @returns the quantity in m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { yards } from "risingmain/units";
 *
 * yards(12); // ≈ 10.9728
 * ```
 */
export function yards(value: number): Length {
  return scaled("yards", value, 0.9144) as Length;
}

/**
 * Reads a length, depth, diameter, elevation or head of liquid in yards; undoes {@link yards}.
 *
 * @param length - the quantity, in m
 * @returns the number of yards
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inYards, yards } from "risingmain/units";
 *
 * inYards(yards(12)); // ≈ 12.0000000000
 * ```
 */
export function inYards(length: Length): number {
  return read("inYards", length, 0.9144);
}

/**
 * A length, depth, diameter, elevation or head of liquid given in miles. 1 mi = 1609.344 m (exact: 5280 ft).
 *
 * @param value - the number of miles; any finite number
 * @returns the quantity in m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { miles } from "risingmain/units";
 *
 * miles(12); // ≈ 19312.1
 * ```
 */
export function miles(value: number): Length {
  return scaled("miles", value, 1609.344) as Length;
}

/**
 * Reads a length, depth, diameter, elevation or head of liquid in miles; undoes {@link miles}.
 *
 * @param length - the quantity, in m
 * @returns the number of miles
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMiles, miles } from "risingmain/units";
 *
 * inMiles(miles(12)); // ≈ 12.0000000000
 * ```
 */
export function inMiles(length: Length): number {
  return read("inMiles", length, 1609.344);
}

/**
 * A length, depth, diameter, elevation or head of liquid given in mils (thousandths of an inch). 1 mil = 2.54e-5 m (exact: 0.001 in).
 *
 * @param value - the number of mils (thousandths of an inch); any finite number
 * @returns the quantity in m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { mils } from "risingmain/units";
 *
 * mils(12); // ≈ 0.0003048
 * ```
 */
export function mils(value: number): Length {
  return scaled("mils", value, 2.54e-5) as Length;
}

/**
 * Reads a length, depth, diameter, elevation or head of liquid in mils (thousandths of an inch); undoes {@link mils}.
 *
 * @param length - the quantity, in m
 * @returns the number of mils (thousandths of an inch)
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMils, mils } from "risingmain/units";
 *
 * inMils(mils(12)); // ≈ 12.0000000000
 * ```
 */
export function inMils(length: Length): number {
  return read("inMils", length, 2.54e-5);
}
