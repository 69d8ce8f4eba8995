/**
 * How a voltage is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import { inKilovolts, inMillivolts, inVolts, kilovolts, millivolts, type Voltage, volts } from "../voltage.ts";

/** The units in which a voltage is read and written. */
export const voltageUnits: readonly UnitText<Voltage>[] = [
  { symbol: "V", words: ["V", "volt", "volts"], make: volts, read: inVolts },
  { symbol: "mV", words: ["mV"], make: millivolts, read: inMillivolts },
  { symbol: "kV", words: ["kV"], make: kilovolts, read: inKilovolts },
];

/**
 * Reads a voltage from text, with its unit.
 *
 * @param text - a number and a unit, such as `230 V`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseVoltage } from "risingmain/units";
 *
 * parseVoltage("230 V"); // ≈ 230.00
 * ```
 */
export function parseVoltage(text: string): Voltage {
  return parseQuantity("a voltage", voltageUnits, "230 V", text);
}
