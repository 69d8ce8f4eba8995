/**
 * A voltage, root mean square where it alternates, held as a number in V.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A voltage, root mean square where it alternates; a number in V, told apart from other quantities by its type alone. */
export type Voltage = Quantity<"Voltage">;

/**
 * A voltage, root mean square where it alternates given in volts.
 *
 * @param value - the number of volts; any finite number
 * @returns the quantity in V
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { volts } from "risingmain/units";
 *
 * volts(12); // ≈ 12.000
 * ```
 */
export function volts(value: number): Voltage {
  return scaled("volts", value) as Voltage;
}

/**
 * Reads a voltage, root mean square where it alternates in volts; undoes {@link volts}.
 *
 * @param voltage - the quantity, in V
 * @returns the number of volts
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inVolts, volts } from "risingmain/units";
 *
 * inVolts(volts(12)); // ≈ 12.0000000000
 * ```
 */
export function inVolts(voltage: Voltage): number {
  return read("inVolts", voltage);
}

/**
 * A voltage, root mean square where it alternates given in millivolts. 1 mV = 1e-3 V (SI prefix).
 *
 * @param value - the number of millivolts; any finite number
 * @returns the quantity in V
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { millivolts } from "risingmain/units";
 *
 * millivolts(12); // ≈ 0.012
 * ```
 */
export function millivolts(value: number): Voltage {
  return scaled("millivolts", value, 1e-3) as Voltage;
}

/**
 * Reads a voltage, root mean square where it alternates in millivolts; undoes {@link millivolts}.
 *
 * @param voltage - the quantity, in V
 * @returns the number of millivolts
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMillivolts, millivolts } from "risingmain/units";
 *
 * inMillivolts(millivolts(12)); // ≈ 12.0000000000
 * ```
 */
export function inMillivolts(voltage: Voltage): number {
  return read("inMillivolts", voltage, 1e-3);
}

/**
 * A voltage, root mean square where it alternates given in kilovolts. 1 kV = 1e3 V (SI prefix).
 *
 * @param value - the number of kilovolts; any finite number
 * @returns the quantity in V
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilovolts } from "risingmain/units";
 *
 * kilovolts(12); // ≈ 1.2e+4
 * ```
 */
export function kilovolts(value: number): Voltage {
  return scaled("kilovolts", value, 1e3) as Voltage;
}

/**
 * Reads a voltage, root mean square where it alternates in kilovolts; undoes {@link kilovolts}.
 *
 * @param voltage - the quantity, in V
 * @returns the number of kilovolts
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilovolts, kilovolts } from "risingmain/units";
 *
 * inKilovolts(kilovolts(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilovolts(voltage: Voltage): number {
  return read("inKilovolts", voltage, 1e3);
}
