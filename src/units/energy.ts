/**
 * An energy, held as a number in J.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** An energy; a number in J, told apart from other quantities by its type alone. */
export type Energy = Quantity<"Energy">;

/**
 * An energy given in joules.
 *
 * @param value - the number of joules; any finite number
 * @returns the quantity in J
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { joules } from "risingmain/units";
 *
 * joules(12); // ≈ 12.000
 * ```
 */
export function joules(value: number): Energy {
  return scaled("joules", value) as Energy;
}

/**
 * Reads an energy in joules; undoes {@link joules}.
 *
 * @param energy - the quantity, in J
 * @returns the number of joules
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inJoules, joules } from "risingmain/units";
 *
 * inJoules(joules(12)); // ≈ 12.0000000000
 * ```
 */
export function inJoules(energy: Energy): number {
  return read("inJoules", energy);
}

/**
 * An energy given in megajoules. 1 MJ = 1e6 J (SI prefix).
 *
 * @param value - the number of megajoules; any finite number
 * @returns the quantity in J
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { megajoules } from "risingmain/units";
 *
 * megajoules(12); // ≈ 1.2e+7
 * ```
 */
export function megajoules(value: number): Energy {
  return scaled("megajoules", value, 1e6) as Energy;
}

/**
 * Reads an energy in megajoules; undoes {@link megajoules}.
 *
 * @param energy - the quantity, in J
 * @returns the number of megajoules
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMegajoules, megajoules } from "risingmain/units";
 *
 * inMegajoules(megajoules(12)); // ≈ 12.0000000000
 * ```
 */
export function inMegajoules(energy: Energy): number {
  return read("inMegajoules", energy, 1e6);
}

/**
 * An energy given in watt-hours. 1 Wh = 3600 J (exact).
 *
 * @param value - the number of watt-hours; any finite number
 * @returns the quantity in J
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { wattHours } from "risingmain/units";
 *
 * wattHours(12); // ≈ 43200.000
 * ```
 */
export function wattHours(value: number): Energy {
  return scaled("wattHours", value, 3600) as Energy;
}

/**
 * Reads an energy in watt-hours; undoes {@link wattHours}.
 *
 * @param energy - the quantity, in J
 * @returns the number of watt-hours
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inWattHours, wattHours } from "risingmain/units";
 *
 * inWattHours(wattHours(12)); // ≈ 12.0000000000
 * ```
 */
export function inWattHours(energy: Energy): number {
  return read("inWattHours", energy, 3600);
}

/**
 * An energy given in kilowatt-hours. 1 kWh = 3.6e6 J (exact).
 *
 * @param value - the number of kilowatt-hours; any finite number
 * @returns the quantity in J
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilowattHours } from "risingmain/units";
 *
 * kilowattHours(12); // ≈ 4.32e+7
 * ```
 */
export function kilowattHours(value: number): Energy {
  return scaled("kilowattHours", value, 3.6e6) as Energy;
}

/**
 * Reads an energy in kilowatt-hours; undoes {@link kilowattHours}.
 *
 * @param energy - the quantity, in J
 * @returns the number of kilowatt-hours
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilowattHours, kilowattHours } from "risingmain/units";
 *
 * inKilowattHours(kilowattHours(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilowattHours(energy: Energy): number {
  return read("inKilowattHours", energy, 3.6e6);
}

/**
 * An energy given in British thermal units (IT). 1 Btu = 1055.05585262 J (exact by definition).
 *
 * @param value - the number of British thermal units (IT); any finite number
 * @returns the quantity in J
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { btu } from "risingmain/units";
 *
 * btu(12); // ≈ 12660.7
 * ```
 */
export function btu(value: number): Energy {
  return scaled("btu", value, 1055.05585262) as Energy;
}

/**
 * Reads an energy in British thermal units (IT); undoes {@link btu}.
 *
 * @param energy - the quantity, in J
 * @returns the number of British thermal units (IT)
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { btu, inBtu } from "risingmain/units";
 *
 * inBtu(btu(12)); // ≈ 12.0000000000
 * ```
 */
export function inBtu(energy: Energy): number {
  return read("inBtu", energy, 1055.05585262);
}
