/**
 * A mass per length of pipe or cable, held as a number in kg/m.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A mass per length of pipe or cable; a number in kg/m, told apart from other quantities by its type alone. */
export type MassPerLength = Quantity<"MassPerLength">;

/**
 * A mass per length of pipe or cable given in kilograms per metre.
 *
 * @param value - the number of kilograms per metre; any finite number
 * @returns the quantity in kg/m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilogramsPerMetre } from "risingmain/units";
 *
 * kilogramsPerMetre(12); // ≈ 12.000
 * ```
 */
export function kilogramsPerMetre(value: number): MassPerLength {
  return scaled("kilogramsPerMetre", value) as MassPerLength;
}

/**
 * Reads a mass per length of pipe or cable in kilograms per metre; undoes {@link kilogramsPerMetre}.
 *
 * @param massPerLength - the quantity, in kg/m
 * @returns the number of kilograms per metre
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilogramsPerMetre, kilogramsPerMetre } from "risingmain/units";
 *
 * inKilogramsPerMetre(kilogramsPerMetre(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilogramsPerMetre(massPerLength: MassPerLength): number {
  return read("inKilogramsPerMetre", massPerLength);
}

/**
 * A mass per length of pipe or cable given in pounds per foot. 1 lb/ft = 1.4881639435695537 kg/m (0.45359237 kg / 0.3048 m, to the nearest double).
 *
 * @param value - the number of pounds per foot; any finite number
 * @returns the quantity in kg/m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { poundsPerFoot } from "risingmain/units";
 *
 * poundsPerFoot(12); // ≈ 17.8580
 * ```
 */
export function poundsPerFoot(value: number): MassPerLength {
  return scaled("poundsPerFoot", value, 1.4881639435695537) as MassPerLength;
}

/**
 * Reads a mass per length of pipe or cable in pounds per foot; undoes {@link poundsPerFoot}.
 *
 * @param massPerLength - the quantity, in kg/m
 * @returns the number of pounds per foot
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPoundsPerFoot, poundsPerFoot } from "risingmain/units";
 *
 * inPoundsPerFoot(poundsPerFoot(12)); // ≈ 12.0000000000
 * ```
 */
export function inPoundsPerFoot(massPerLength: MassPerLength): number {
  return read("inPoundsPerFoot", massPerLength, 1.4881639435695537);
}
