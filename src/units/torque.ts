/**
 * A torque, held as a number in N·m.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A torque; a number in N·m, told apart from other quantities by its type alone. */
export type Torque = Quantity<"Torque">;

/**
 * A torque given in newton metres.
 *
 * @param value - the number of newton metres; any finite number
 * @returns the quantity in N·m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { newtonMetres } from "risingmain/units";
 *
 * newtonMetres(12); // ≈ 12.000
 * ```
 */
export function newtonMetres(value: number): Torque {
  return scaled("newtonMetres", value) as Torque;
}

/**
 * Reads a torque in newton metres; undoes {@link newtonMetres}.
 *
 * @param torque - the quantity, in N·m
 * @returns the number of newton metres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inNewtonMetres, newtonMetres } from "risingmain/units";
 *
 * inNewtonMetres(newtonMetres(12)); // ≈ 12.0000000000
 * ```
 */
export function inNewtonMetres(torque: Torque): number {
  return read("inNewtonMetres", torque);
}

/**
 * A torque given in pound-force feet. 1 lbf·ft = 1.3558179483314004 N·m (4.4482216152605 N × 0.3048 m, to the nearest double).
 *
 * @param value - the number of pound-force feet; any finite number
 * @returns the quantity in N·m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { poundFeet } from "risingmain/units";
 *
 * poundFeet(12); // ≈ 16.2698
 * ```
 */
export function poundFeet(value: number): Torque {
  return scaled("poundFeet", value, 1.3558179483314004) as Torque;
}

/**
 * Reads a torque in pound-force feet; undoes {@link poundFeet}.
 *
 * @param torque - the quantity, in N·m
 * @returns the number of pound-force feet
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPoundFeet, poundFeet } from "risingmain/units";
 *
 * inPoundFeet(poundFeet(12)); // ≈ 12.0000000000
 * ```
 */
export function inPoundFeet(torque: Torque): number {
  return read("inPoundFeet", torque, 1.3558179483314004);
}
