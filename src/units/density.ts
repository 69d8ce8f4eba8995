/**
 * A density, held as a number in kg/m³.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A density; a number in kg/m³, told apart from other quantities by its type alone. */
export type Density = Quantity<"Density">;

/**
 * A density given in kilograms per cubic metre.
 *
 * @param value - the number of kilograms per cubic metre; any finite number
 * @returns the quantity in kg/m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilogramsPerCubicMetre } from "risingmain/units";
 *
 * kilogramsPerCubicMetre(12); // ≈ 12.000
 * ```
 */
export function kilogramsPerCubicMetre(value: number): Density {
  return scaled("kilogramsPerCubicMetre", value) as Density;
}

/**
 * Reads a density in kilograms per cubic metre; undoes {@link kilogramsPerCubicMetre}.
 *
 * @param density - the quantity, in kg/m³
 * @returns the number of kilograms per cubic metre
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilogramsPerCubicMetre, kilogramsPerCubicMetre } from "risingmain/units";
 *
 * inKilogramsPerCubicMetre(kilogramsPerCubicMetre(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilogramsPerCubicMetre(density: Density): number {
  return read("inKilogramsPerCubicMetre", density);
}

/**
 * A density given in pounds per cubic foot. 1 lb/ft³ = 16.018463373960138 kg/m³ (0.45359237 kg / 0.028316846592 m³, to the nearest double).
 *
 * @param value - the number of pounds per cubic foot; any finite number
 * @returns the quantity in kg/m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { poundsPerCubicFoot } from "risingmain/units";
 *
 * poundsPerCubicFoot(12); // ≈ 192.222
 * ```
 */
export function poundsPerCubicFoot(value: number): Density {
  return scaled("poundsPerCubicFoot", value, 16.018463373960138) as Density;
}

/**
 * Reads a density in pounds per cubic foot; undoes {@link poundsPerCubicFoot}.
 *
 * @param density - the quantity, in kg/m³
 * @returns the number of pounds per cubic foot
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPoundsPerCubicFoot, poundsPerCubicFoot } from "risingmain/units";
 *
 * inPoundsPerCubicFoot(poundsPerCubicFoot(12)); // ≈ 12.0000000000
 * ```
 */
export function inPoundsPerCubicFoot(density: Density): number {
  return read("inPoundsPerCubicFoot", density, 16.018463373960138);
}
