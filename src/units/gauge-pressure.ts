/**
 * A gauge pressure: above (or below) the air outside, held as a number in Pa.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A gauge pressure: above (or below) the air outside; a number in Pa, told apart from other quantities by its type alone. */
export type GaugePressure = Quantity<"GaugePressure">;

/**
 * A gauge pressure given in pascals.
 *
 * @param value - the number of pascals; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { pascals } from "risingmain/units";
 *
 * pascals(12); // ≈ 12.000
 * ```
 */
export function pascals(value: number): GaugePressure {
  return scaled("pascals", value) as GaugePressure;
}

/**
 * Reads a gauge pressure in pascals; undoes {@link pascals}.
 *
 * @param gaugePressure - the quantity, in Pa
 * @returns the number of pascals
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPascals, pascals } from "risingmain/units";
 *
 * inPascals(pascals(12)); // ≈ 12.0000000000
 * ```
 */
export function inPascals(gaugePressure: GaugePressure): number {
  return read("inPascals", gaugePressure);
}

/**
 * A gauge pressure given in kilopascals. 1 kPa = 1e3 Pa (SI prefix).
 *
 * @param value - the number of kilopascals; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilopascals } from "risingmain/units";
 *
 * kilopascals(12); // ≈ 1.2e+4
 * ```
 */
export function kilopascals(value: number): GaugePressure {
  return scaled("kilopascals", value, 1e3) as GaugePressure;
}

/**
 * Reads a gauge pressure in kilopascals; undoes {@link kilopascals}.
 *
 * @param gaugePressure - the quantity, in Pa
 * @returns the number of kilopascals
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilopascals, kilopascals } from "risingmain/units";
 *
 * inKilopascals(kilopascals(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilopascals(gaugePressure: GaugePressure): number {
  return read("inKilopascals", gaugePressure, 1e3);
}

/**
 * A gauge pressure given in megapascals. 1 MPa = 1e6 Pa (SI prefix).
 *
 * @param value - the number of megapascals; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { megapascals } from "risingmain/units";
 *
 * megapascals(12); // ≈ 1.2e+7
 * ```
 */
export function megapascals(value: number): GaugePressure {
  return scaled("megapascals", value, 1e6) as GaugePressure;
}

/**
 * Reads a gauge pressure in megapascals; undoes {@link megapascals}.
 *
 * @param gaugePressure - the quantity, in Pa
 * @returns the number of megapascals
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMegapascals, megapascals } from "risingmain/units";
 *
 * inMegapascals(megapascals(12)); // ≈ 12.0000000000
 * ```
 */
export function inMegapascals(gaugePressure: GaugePressure): number {
  return read("inMegapascals", gaugePressure, 1e6);
}

/**
 * A gauge pressure given in bar. 1 bar = 1e5 Pa (exact: 100 kPa).
 *
 * @param value - the number of bar; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { bar } from "risingmain/units";
 *
 * bar(12); // ≈ 1.2e+6
 * ```
 */
export function bar(value: number): GaugePressure {
  return scaled("bar", value, 1e5) as GaugePressure;
}

/**
 * Reads a gauge pressure in bar; undoes {@link bar}.
 *
 * @param gaugePressure - the quantity, in Pa
 * @returns the number of bar
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { bar, inBar } from "risingmain/units";
 *
 * inBar(bar(12)); // ≈ 12.0000000000
 * ```
 */
export function inBar(gaugePressure: GaugePressure): number {
  return read("inBar", gaugePressure, 1e5);
}

/**
 * A gauge pressure given in pounds-force per square inch. 1 psi = 6894.757293168362 Pa (lbf/in² of 4.4482216152605 N and 0.0254 m, to the nearest double).
 *
 * @param value - the number of pounds-force per square inch; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { psi } from "risingmain/units";
 *
 * psi(12); // ≈ 82737.1
 * ```
 */
export function psi(value: number): GaugePressure {
  return scaled("psi", value, 6894.757293168362) as GaugePressure;
}

/**
 * Reads a gauge pressure in pounds-force per square inch; undoes {@link psi}.
 *
 * @param gaugePressure - the quantity, in Pa
 * @returns the number of pounds-force per square inch
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPsi, psi } from "risingmain/units";
 *
 * inPsi(psi(12)); // ≈ 12.0000000000
 * ```
 */
export function inPsi(gaugePressure: GaugePressure): number {
  return read("inPsi", gaugePressure, 6894.757293168362);
}
