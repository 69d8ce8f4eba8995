/**
 * How an energy is written.
 *
 * @module
 */
import {
  btu,
  type Energy,
  inBtu,
  inJoules,
  inKilowattHours,
  inMegajoules,
  inWattHours,
  joules,
  kilowattHours,
  megajoules,
  wattHours,
} from "../energy.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which an energy is read and written. */
export const energyUnits: readonly UnitText<Energy>[] = [
  { symbol: "J", words: ["J", "joule", "joules"], make: joules, read: inJoules },
  { symbol: "MJ", words: ["MJ"], make: megajoules, read: inMegajoules },
  { symbol: "Wh", words: ["Wh"], make: wattHours, read: inWattHours },
  { symbol: "kWh", words: ["kWh"], make: kilowattHours, read: inKilowattHours },
  { symbol: "Btu", words: ["Btu"], make: btu, read: inBtu },
];

/**
 * Reads an energy from text, with its unit.
 *
 * @param text - a number and a unit, such as `2 kWh`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseEnergy } from "risingmain/units";
 *
 * parseEnergy("2 kWh"); // ≈ 7200000
 * ```
 */
export function parseEnergy(text: string): Energy {
  return parseQuantity("an energy", energyUnits, "2 kWh", text);
}
