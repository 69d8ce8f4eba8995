/**
 * A force, held as a number in N.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A force; a number in N, told apart from other quantities by its type alone. */
export type Force = Quantity<"Force">;

/**
 * A force given in newtons.
 *
 * @param value - the number of newtons; any finite number
 * @returns the quantity in N
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { newtons } from "risingmain/units";
 *
 * newtons(12); // ≈ 12.000
 * ```
 */
export function newtons(value: number): Force {
  return scaled("newtons", value) as Force;
}

/**
 * Reads a force in newtons; undoes {@link newtons}.
 *
 * @param force - the quantity, in N
 * @returns the number of newtons
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inNewtons, newtons } from "risingmain/units";
 *
 * inNewtons(newtons(12)); // ≈ 12.0000000000
 * ```
 */
export function inNewtons(force: Force): number {
  return read("inNewtons", force);
}

/**
 * A force given in kilonewtons. 1 kN = 1e3 N (SI prefix).
 *
 * @param value - the number of kilonewtons; any finite number
 * @returns the quantity in N
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilonewtons } from "risingmain/units";
 *
 * kilonewtons(12); // ≈ 1.2e+4
 * ```
 */
export function kilonewtons(value: number): Force {
  return scaled("kilonewtons", value, 1e3) as Force;
}

/**
 * Reads a force in kilonewtons; undoes {@link kilonewtons}.
 *
 * @param force - the quantity, in N
 * @returns the number of kilonewtons
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilonewtons, kilonewtons } from "risingmain/units";
 *
 * inKilonewtons(kilonewtons(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilonewtons(force: Force): number {
  return read("inKilonewtons", force, 1e3);
}

/**
 * A force given in pounds-force. 1 lbf = 4.4482216152605 N (exact: 0.45359237 kg × 9.80665 m/s²).
 *
 * @param value - the number of pounds-force; any finite number
 * @returns the quantity in N
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { poundsForce } from "risingmain/units";
 *
 * poundsForce(12); // ≈ 53.3787
 * ```
 */
export function poundsForce(value: number): Force {
  return scaled("poundsForce", value, 4.4482216152605) as Force;
}

/**
 * Reads a force in pounds-force; undoes {@link poundsForce}.
 *
 * @param force - the quantity, in N
 * @returns the number of pounds-force
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPoundsForce, poundsForce } from "risingmain/units";
 *
 * inPoundsForce(poundsForce(12)); // ≈ 12.0000000000
 * ```
 */
export function inPoundsForce(force: Force): number {
  return read("inPoundsForce", force, 4.4482216152605);
}
