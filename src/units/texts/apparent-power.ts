/**
 * How an apparent power is written.
 *
 * @module
 */
import {
  type ApparentPower,
  inKilovoltAmperes,
  inVoltAmperes,
  kilovoltAmperes,
  voltAmperes,
} from "../apparent-power.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which an apparent power is read and written. */
export const apparentPowerUnits: readonly UnitText<ApparentPower>[] = [
  { symbol: "VA", words: ["VA"], make: voltAmperes, read: inVoltAmperes },
  { symbol: "kVA", words: ["kVA"], make: kilovoltAmperes, read: inKilovoltAmperes },
];

/**
 * Reads an apparent power from text, with its unit.
 *
 * @param text - a number and a unit, such as `10 kVA`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseApparentPower } from "risingmain/units";
 *
 * parseApparentPower("10 kVA"); // ≈ 10000
 * ```
 */
export function parseApparentPower(text: string): ApparentPower {
  return parseQuantity("an apparent power", apparentPowerUnits, "10 kVA", text);
}
