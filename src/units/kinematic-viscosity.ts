/**
 * A kinematic viscosity, held as a number in m²/s.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A kinematic viscosity; a number in m²/s, told apart from other quantities by its type alone. */
export type KinematicViscosity = Quantity<"KinematicViscosity">;

/**
 * A kinematic viscosity given in square metres per second.
 *
 * @param value - the number of square metres per second; any finite number
 * @returns the quantity in m²/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { squareMetresPerSecond } from "risingmain/units";
 *
 * squareMetresPerSecond(12); // ≈ 12.000
 * ```
 */
export function squareMetresPerSecond(value: number): KinematicViscosity {
  return scaled("squareMetresPerSecond", value) as KinematicViscosity;
}

/**
 * Reads a kinematic viscosity in square metres per second; undoes {@link squareMetresPerSecond}.
 *
 * @param kinematicViscosity - the quantity, in m²/s
 * @returns the number of square metres per second
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inSquareMetresPerSecond, squareMetresPerSecond } from "risingmain/units";
 *
 * inSquareMetresPerSecond(squareMetresPerSecond(12)); // ≈ 12.0000000000
 * ```
 */
export function inSquareMetresPerSecond(kinematicViscosity: KinematicViscosity): number {
  return read("inSquareMetresPerSecond", kinematicViscosity);
}

/**
 * A kinematic viscosity given in square millimetres per second. 1 mm²/s = 1e-6 m²/s (SI prefix).
 *
 * @param value - the number of square millimetres per second; any finite number
 * @returns the quantity in m²/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { squareMillimetresPerSecond } from "risingmain/units";
 *
 * squareMillimetresPerSecond(12); // ≈ 0.000012
 * ```
 */
export function squareMillimetresPerSecond(value: number): KinematicViscosity {
  return scaled("squareMillimetresPerSecond", value, 1e-6) as KinematicViscosity;
}

/**
 * Reads a kinematic viscosity in square millimetres per second; undoes {@link squareMillimetresPerSecond}.
 *
 * @param kinematicViscosity - the quantity, in m²/s
 * @returns the number of square millimetres per second
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inSquareMillimetresPerSecond, squareMillimetresPerSecond } from "risingmain/units";
 *
 * inSquareMillimetresPerSecond(squareMillimetresPerSecond(12)); // ≈ 12.0000000000
 * ```
 */
export function inSquareMillimetresPerSecond(kinematicViscosity: KinematicViscosity): number {
  return read("inSquareMillimetresPerSecond", kinematicViscosity, 1e-6);
}

/**
 * A kinematic viscosity given in centistokes. 1 cSt = 1e-6 m²/s (exact: 1 mm²/s).
 *
 * @param value - the number of centistokes; any finite number
 * @returns the quantity in m²/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { centistokes } from "risingmain/units";
 *
 * centistokes(12); // ≈ 0.000012
 * ```
 */
export function centistokes(value: number): KinematicViscosity {
  return scaled("centistokes", value, 1e-6) as KinematicViscosity;
}

/**
 * Reads a kinematic viscosity in centistokes; undoes {@link centistokes}.
 *
 * @param kinematicViscosity - the quantity, in m²/s
 * @returns the number of centistokes
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { centistokes, inCentistokes } from "risingmain/units";
 *
 * inCentistokes(centistokes(12)); // ≈ 12.0000000000
 * ```
 */
export function inCentistokes(kinematicViscosity: KinematicViscosity): number {
  return read("inCentistokes", kinematicViscosity, 1e-6);
}

/**
 * A kinematic viscosity given in square feet per second. 1 ft²/s = 0.09290304 m²/s (exact: (0.3048 m)²/s).
 *
 * @param value - the number of square feet per second; any finite number
 * @returns the quantity in m²/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { squareFeetPerSecond } from "risingmain/units";
 *
 * squareFeetPerSecond(12); // ≈ 1.11484
 * ```
 */
export function squareFeetPerSecond(value: number): KinematicViscosity {
  return scaled("squareFeetPerSecond", value, 0.09290304) as KinematicViscosity;
}

/**
 * Reads a kinematic viscosity in square feet per second; undoes {@link squareFeetPerSecond}.
 *
 * @param kinematicViscosity - the quantity, in m²/s
 * @returns the number of square feet per second
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inSquareFeetPerSecond, squareFeetPerSecond } from "risingmain/units";
 *
 * inSquareFeetPerSecond(squareFeetPerSecond(12)); // ≈ 12.0000000000
 * ```
 */
export function inSquareFeetPerSecond(kinematicViscosity: KinematicViscosity): number {
  return read("inSquareFeetPerSecond", kinematicViscosity, 0.09290304);
}
