/**
 * An electric current, root mean square where it alternates, held as a number in A.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** An electric current, root mean square where it alternates; a number in A, told apart from other quantities by its type alone. */
export type Current = Quantity<"Current">;

/**
 * An electric current, root mean square where it alternates given in amperes.
 *
 * @param value - the number of amperes; any finite number
 * @returns the quantity in A
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { amperes } from "risingmain/units";
 *
 * amperes(12); // ≈ 12.000
 * ```
 */
export function amperes(value: number): Current {
  return scaled("amperes", value) as Current;
}

/**
 * Reads an electric current, root mean square where it alternates in amperes; undoes {@link amperes}.
 *
 * @param current - the quantity, in A
 * @returns the number of amperes
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { amperes, inAmperes } from "risingmain/units";
 *
 * inAmperes(amperes(12)); // ≈ 12.0000000000
 * ```
 */
export function inAmperes(current: Current): number {
  return read("inAmperes", current);
}

/**
 * An electric current, root mean square where it alternates given in milliamperes. 1 mA = 1e-3 A (SI prefix).
 *
 * @param value - the number of milliamperes; any finite number
 * @returns the quantity in A
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { milliamperes } from "risingmain/units";
 *
 * milliamperes(12); // ≈ 0.012
 * ```
 */
export function milliamperes(value: number): Current {
  return scaled("milliamperes", value, 1e-3) as Current;
}

/**
 * Reads an electric current, root mean square where it alternates in milliamperes; undoes {@link milliamperes}.
 *
 * @param current - the quantity, in A
 * @returns the number of milliamperes
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMilliamperes, milliamperes } from "risingmain/units";
 *
 * inMilliamperes(milliamperes(12)); // ≈ 12.0000000000
 * ```
 */
export function inMilliamperes(current: Current): number {
  return read("inMilliamperes", current, 1e-3);
}
