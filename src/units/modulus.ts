/**
 * A stiffness or a stress: Young's modulus, bulk modulus, hydrostatic design stress, held as a number in Pa.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A stiffness or a stress: Young's modulus, bulk modulus, hydrostatic design stress; a number in Pa, told apart from other quantities by its type alone. */
export type Modulus = Quantity<"Modulus">;

/**
 * A stiffness or a stress given in pascals.
 *
 * @param value - the number of pascals; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { pascalsModulus } from "risingmain/units";
 *
 * pascalsModulus(12); // ≈ 12.000
 * ```
 */
export function pascalsModulus(value: number): Modulus {
  return scaled("pascalsModulus", value) as Modulus;
}

/**
 * Reads a stiffness or a stress in pascals; undoes {@link pascalsModulus}.
 *
 * @param modulus - the quantity, in Pa
 * @returns the number of pascals
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPascalsModulus, pascalsModulus } from "risingmain/units";
 *
 * inPascalsModulus(pascalsModulus(12)); // ≈ 12.0000000000
 * ```
 */
export function inPascalsModulus(modulus: Modulus): number {
  return read("inPascalsModulus", modulus);
}

/**
 * A stiffness or a stress given in megapascals. 1 MPa = 1e6 Pa (SI prefix).
 *
 * @param value - the number of megapascals; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { megapascalsModulus } from "risingmain/units";
 *
 * megapascalsModulus(12); // ≈ 1.2e+7
 * ```
 */
export function megapascalsModulus(value: number): Modulus {
  return scaled("megapascalsModulus", value, 1e6) as Modulus;
}

/**
 * Reads a stiffness or a stress in megapascals; undoes {@link megapascalsModulus}.
 *
 * @param modulus - the quantity, in Pa
 * @returns the number of megapascals
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMegapascalsModulus, megapascalsModulus } from "risingmain/units";
 *
 * inMegapascalsModulus(megapascalsModulus(12)); // ≈ 12.0000000000
 * ```
 */
export function inMegapascalsModulus(modulus: Modulus): number {
  return read("inMegapascalsModulus", modulus, 1e6);
}

/**
 * A stiffness or a stress given in gigapascals. 1 GPa = 1e9 Pa (SI prefix).
 *
 * @param value - the number of gigapascals; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { gigapascals } from "risingmain/units";
 *
 * gigapascals(12); // ≈ 1.2e+10
 * ```
 */
export function gigapascals(value: number): Modulus {
  return scaled("gigapascals", value, 1e9) as Modulus;
}

/**
 * Reads a stiffness or a stress in gigapascals; undoes {@link gigapascals}.
 *
 * @param modulus - the quantity, in Pa
 * @returns the number of gigapascals
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { gigapascals, inGigapascals } from "risingmain/units";
 *
 * inGigapascals(gigapascals(12)); // ≈ 12.0000000000
 * ```
 */
export function inGigapascals(modulus: Modulus): number {
  return read("inGigapascals", modulus, 1e9);
}

/**
 * A stiffness or a stress given in pounds-force per square inch. 1 psi = 6894.757293168362 Pa (lbf/in² of 4.4482216152605 N and 0.0254 m, to the nearest double).
 *
 * @param value - the number of pounds-force per square inch; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { psiModulus } from "risingmain/units";
 *
 * psiModulus(12); // ≈ 82737.1
 * ```
 */
export function psiModulus(value: number): Modulus {
  return scaled("psiModulus", value, 6894.757293168362) as Modulus;
}

/**
 * Reads a stiffness or a stress in pounds-force per square inch; undoes {@link psiModulus}.
 *
 * @param modulus - the quantity, in Pa
 * @returns the number of pounds-force per square inch
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPsiModulus, psiModulus } from "risingmain/units";
 *
 * inPsiModulus(psiModulus(12)); // ≈ 12.0000000000
 * ```
 */
export function inPsiModulus(modulus: Modulus): number {
  return read("inPsiModulus", modulus, 6894.757293168362);
}
