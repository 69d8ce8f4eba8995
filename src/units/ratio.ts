/**
 * A plain ratio: an efficiency, a power factor, a share, held as a number in plain units.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A plain ratio: an efficiency, a power factor, a share; a number in plain units, told apart from other quantities by its type alone. */
export type Ratio = Quantity<"Ratio">;

/**
 * A plain ratio given in the plain number.
 *
 * @param value - the number of the plain number; any finite number
 * @returns the quantity in plain units
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { ratio } from "risingmain/units";
 *
 * ratio(12); // ≈ 12.000
 * ```
 */
export function ratio(value: number): Ratio {
  return scaled("ratio", value) as Ratio;
}

/**
 * Reads a plain ratio in the plain number; undoes {@link ratio}.
 *
 * @param value - the quantity, in plain units
 * @returns the number of the plain number
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inRatio, ratio } from "risingmain/units";
 *
 * inRatio(ratio(12)); // ≈ 12.0000000000
 * ```
 */
export function inRatio(value: Ratio): number {
  return read("inRatio", value);
}

/**
 * A plain ratio given in percent. 1 % = 1/100 (exact: 1/100).
 *
 * @param value - the number of percent; any finite number
 * @returns the quantity in plain units
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { percent } from "risingmain/units";
 *
 * percent(12); // ≈ 0.12
 * ```
 */
export function percent(value: number): Ratio {
  return scaled("percent", value, 1, 100) as Ratio;
}

/**
 * Reads a plain ratio in percent; undoes {@link percent}.
 *
 * @param value - the quantity, in plain units
 * @returns the number of percent
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPercent, percent } from "risingmain/units";
 *
 * inPercent(percent(12)); // ≈ 12.0000000000
 * ```
 */
export function inPercent(value: Ratio): number {
  return read("inPercent", value, 1, 100);
}
