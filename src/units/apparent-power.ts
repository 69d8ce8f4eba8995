/**
 * An apparent power, held as a number in VA.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** An apparent power; a number in VA, told apart from other quantities by its type alone. */
export type ApparentPower = Quantity<"ApparentPower">;

/**
 * An apparent power given in volt-amperes.
 *
 * @param value - the number of volt-amperes; any finite number
 * @returns the quantity in VA
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { voltAmperes } from "risingmain/units";
 *
 * voltAmperes(12); // ≈ 12.000
 * ```
 */
export function voltAmperes(value: number): ApparentPower {
  return scaled("voltAmperes", value) as ApparentPower;
}

/**
 * Reads an apparent power in volt-amperes; undoes {@link voltAmperes}.
 *
 * @param apparentPower - the quantity, in VA
 * @returns the number of volt-amperes
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inVoltAmperes, voltAmperes } from "risingmain/units";
 *
 * inVoltAmperes(voltAmperes(12)); // ≈ 12.0000000000
 * ```
 */
export function inVoltAmperes(apparentPower: ApparentPower): number {
  return read("inVoltAmperes", apparentPower);
}

/**
 * An apparent power given in kilovolt-amperes. 1 kVA = 1e3 VA (SI prefix).
 *
 * @param value - the number of kilovolt-amperes; any finite number
 * @returns the quantity in VA
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilovoltAmperes } from "risingmain/units";
 *
 * kilovoltAmperes(12); // ≈ 1.2e+4
 * ```
 */
export function kilovoltAmperes(value: number): ApparentPower {
  return scaled("kilovoltAmperes", value, 1e3) as ApparentPower;
}

/**
 * Reads an apparent power in kilovolt-amperes; undoes {@link kilovoltAmperes}.
 *
 * @param apparentPower - the quantity, in VA
 * @returns the number of kilovolt-amperes
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilovoltAmperes, kilovoltAmperes } from "risingmain/units";
 *
 * inKilovoltAmperes(kilovoltAmperes(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilovoltAmperes(apparentPower: ApparentPower): number {
  return read("inKilovoltAmperes", apparentPower, 1e3);
}
