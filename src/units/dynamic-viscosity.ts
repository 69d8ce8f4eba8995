/**
 * A dynamic viscosity, held as a number in Pa·s.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A dynamic viscosity; a number in Pa·s, told apart from other quantities by its type alone. */
export type DynamicViscosity = Quantity<"DynamicViscosity">;

/**
 * A dynamic viscosity given in pascal seconds.
 *
 * @param value - the number of pascal seconds; any finite number
 * @returns the quantity in Pa·s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { pascalSeconds } from "risingmain/units";
 *
 * pascalSeconds(12); // ≈ 12.000
 * ```
 */
export function pascalSeconds(value: number): DynamicViscosity {
  return scaled("pascalSeconds", value) as DynamicViscosity;
}

/**
 * Reads a dynamic viscosity in pascal seconds; undoes {@link pascalSeconds}.
 *
 * @param dynamicViscosity - the quantity, in Pa·s
 * @returns the number of pascal seconds
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPascalSeconds, pascalSeconds } from "risingmain/units";
 *
 * inPascalSeconds(pascalSeconds(12)); // ≈ 12.0000000000
 * ```
 */
export function inPascalSeconds(dynamicViscosity: DynamicViscosity): number {
  return read("inPascalSeconds", dynamicViscosity);
}

/**
 * A dynamic viscosity given in millipascal seconds. 1 mPa·s = 1e-3 Pa·s (SI prefix).
 *
 * @param value - the number of millipascal seconds; any finite number
 * @returns the quantity in Pa·s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { millipascalSeconds } from "risingmain/units";
 *
 * millipascalSeconds(12); // ≈ 0.012
 * ```
 */
export function millipascalSeconds(value: number): DynamicViscosity {
  return scaled("millipascalSeconds", value, 1e-3) as DynamicViscosity;
}

/**
 * Reads a dynamic viscosity in millipascal seconds; undoes {@link millipascalSeconds}.
 *
 * @param dynamicViscosity - the quantity, in Pa·s
 * @returns the number of millipascal seconds
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMillipascalSeconds, millipascalSeconds } from "risingmain/units";
 *
 * inMillipascalSeconds(millipascalSeconds(12)); // ≈ 12.0000000000
 * ```
 */
export function inMillipascalSeconds(dynamicViscosity: DynamicViscosity): number {
  return read("inMillipascalSeconds", dynamicViscosity, 1e-3);
}

/**
 * A dynamic viscosity given in centipoise. 1 cP = 1e-3 Pa·s (exact: 1 mPa·s).
 *
 * @param value - the number of centipoise; any finite number
 * @returns the quantity in Pa·s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { centipoise } from "risingmain/units";
 *
 * centipoise(12); // ≈ 0.012
 * ```
 */
export function centipoise(value: number): DynamicViscosity {
  return scaled("centipoise", value, 1e-3) as DynamicViscosity;
}

/**
 * Reads a dynamic viscosity in centipoise; undoes {@link centipoise}.
 *
 * @param dynamicViscosity - the quantity, in Pa·s
 * @returns the number of centipoise
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { centipoise, inCentipoise } from "risingmain/units";
 *
 * inCentipoise(centipoise(12)); // ≈ 12.0000000000
 * ```
 */
export function inCentipoise(dynamicViscosity: DynamicViscosity): number {
  return read("inCentipoise", dynamicViscosity, 1e-3);
}
