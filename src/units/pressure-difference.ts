/**
 * A difference of two pressures: a loss, a rise, a band, held as a number in Pa.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A difference of two pressures: a loss, a rise, a band; a number in Pa, told apart from other quantities by its type alone. */
export type PressureDifference = Quantity<"PressureDifference">;

/**
 * A difference of two pressures given in pascals.
 *
 * @param value - the number of pascals; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { pascalsDifference } from "risingmain/units";
 *
 * pascalsDifference(12); // ≈ 12.000
 * ```
 */
export function pascalsDifference(value: number): PressureDifference {
  return scaled("pascalsDifference", value) as PressureDifference;
}

/**
 * Reads a difference of two pressures in pascals; undoes {@link pascalsDifference}.
 *
 * @param pressureDifference - the quantity, in Pa
 * @returns the number of pascals
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPascalsDifference, pascalsDifference } from "risingmain/units";
 *
 * inPascalsDifference(pascalsDifference(12)); // ≈ 12.0000000000
 * ```
 */
export function inPascalsDifference(pressureDifference: PressureDifference): number {
  return read("inPascalsDifference", pressureDifference);
}

/**
 * A difference of two pressures given in kilopascals. 1 kPa diff = 1e3 Pa (SI prefix).
 *
 * @param value - the number of kilopascals; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilopascalsDifference } from "risingmain/units";
 *
 * kilopascalsDifference(12); // ≈ 1.2e+4
 * ```
 */
export function kilopascalsDifference(value: number): PressureDifference {
  return scaled("kilopascalsDifference", value, 1e3) as PressureDifference;
}

/**
 * Reads a difference of two pressures in kilopascals; undoes {@link kilopascalsDifference}.
 *
 * @param pressureDifference - the quantity, in Pa
 * @returns the number of kilopascals
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilopascalsDifference, kilopascalsDifference } from "risingmain/units";
 *
 * inKilopascalsDifference(kilopascalsDifference(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilopascalsDifference(pressureDifference: PressureDifference): number {
  return read("inKilopascalsDifference", pressureDifference, 1e3);
}

/**
 * A difference of two pressures given in megapascals. 1 MPa diff = 1e6 Pa (SI prefix).
 *
 * @param value - the number of megapascals; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { megapascalsDifference } from "risingmain/units";
 *
 * megapascalsDifference(12); // ≈ 1.2e+7
 * ```
 */
export function megapascalsDifference(value: number): PressureDifference {
  return scaled("megapascalsDifference", value, 1e6) as PressureDifference;
}

/**
 * Reads a difference of two pressures in megapascals; undoes {@link megapascalsDifference}.
 *
 * @param pressureDifference - the quantity, in Pa
 * @returns the number of megapascals
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMegapascalsDifference, megapascalsDifference } from "risingmain/units";
 *
 * inMegapascalsDifference(megapascalsDifference(12)); // ≈ 12.0000000000
 * ```
 */
export function inMegapascalsDifference(pressureDifference: PressureDifference): number {
  return read("inMegapascalsDifference", pressureDifference, 1e6);
}

/**
 * A difference of two pressures given in bar. 1 bar diff = 1e5 Pa (exact: 100 kPa).
 *
 * @param value - the number of bar; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { barDifference } from "risingmain/units";
 *
 * barDifference(12); // ≈ 1.2e+6
 * ```
 */
export function barDifference(value: number): PressureDifference {
  return scaled("barDifference", value, 1e5) as PressureDifference;
}

/**
 * Reads a difference of two pressures in bar; undoes {@link barDifference}.
 *
 * @param pressureDifference - the quantity, in Pa
 * @returns the number of bar
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { barDifference, inBarDifference } from "risingmain/units";
 *
 * inBarDifference(barDifference(12)); // ≈ 12.0000000000
 * ```
 */
export function inBarDifference(pressureDifference: PressureDifference): number {
  return read("inBarDifference", pressureDifference, 1e5);
}

/**
 * A difference of two pressures given in pounds-force per square inch. 1 psi diff = 6894.757293168362 Pa (lbf/in² of 4.4482216152605 N and 0.0254 m, to the nearest double).
 *
 * @param value - the number of pounds-force per square inch; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { psiDifference } from "risingmain/units";
 *
 * psiDifference(12); // ≈ 82737.1
 * ```
 */
export function psiDifference(value: number): PressureDifference {
  return scaled("psiDifference", value, 6894.757293168362) as PressureDifference;
}

/**
 * Reads a difference of two pressures in pounds-force per square inch; undoes {@link psiDifference}.
 *
 * @param pressureDifference - the quantity, in Pa
 * @returns the number of pounds-force per square inch
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPsiDifference, psiDifference } from "risingmain/units";
 *
 * inPsiDifference(psiDifference(12)); // ≈ 12.0000000000
 * ```
 */
export function inPsiDifference(pressureDifference: PressureDifference): number {
  return read("inPsiDifference", pressureDifference, 6894.757293168362);
}
