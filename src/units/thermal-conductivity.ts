/**
 * A thermal conductivity, held as a number in W/(m·K).
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A thermal conductivity; a number in W/(m·K), told apart from other quantities by its type alone. */
export type ThermalConductivity = Quantity<"ThermalConductivity">;

/**
 * A thermal conductivity given in watts per metre kelvin.
 *
 * @param value - the number of watts per metre kelvin; any finite number
 * @returns the quantity in W/(m·K)
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { wattsPerMetreKelvin } from "risingmain/units";
 *
 * wattsPerMetreKelvin(12); // ≈ 12.000
 * ```
 */
export function wattsPerMetreKelvin(value: number): ThermalConductivity {
  return scaled("wattsPerMetreKelvin", value) as ThermalConductivity;
}

/**
 * Reads a thermal conductivity in watts per metre kelvin; undoes {@link wattsPerMetreKelvin}.
 *
 * @param thermalConductivity - the quantity, in W/(m·K)
 * @returns the number of watts per metre kelvin
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inWattsPerMetreKelvin, wattsPerMetreKelvin } from "risingmain/units";
 *
 * inWattsPerMetreKelvin(wattsPerMetreKelvin(12)); // ≈ 12.0000000000
 * ```
 */
export function inWattsPerMetreKelvin(thermalConductivity: ThermalConductivity): number {
  return read("inWattsPerMetreKelvin", thermalConductivity);
}

/**
 * A thermal conductivity given in Btu (IT) per hour, foot and degree Fahrenheit. 1 Btu/(h·ft·°F) = 1.7307346663713912 W/(m·K) (0.2930710701722222 W / 0.3048 m × 1.8, to the nearest double).
 *
 * @param value - the number of Btu (IT) per hour, foot and degree Fahrenheit; any finite number
 * @returns the quantity in W/(m·K)
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { btuPerHourFootDegreeF } from "risingmain/units";
 *
 * btuPerHourFootDegreeF(12); // ≈ 20.7688
 * ```
 */
export function btuPerHourFootDegreeF(value: number): ThermalConductivity {
  return scaled("btuPerHourFootDegreeF", value, 1.7307346663713912) as ThermalConductivity;
}

/**
 * Reads a thermal conductivity in Btu (IT) per hour, foot and degree Fahrenheit; undoes {@link btuPerHourFootDegreeF}.
 *
 * @param thermalConductivity - the quantity, in W/(m·K)
 * @returns the number of Btu (IT) per hour, foot and degree Fahrenheit
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { btuPerHourFootDegreeF, inBtuPerHourFootDegreeF } from "risingmain/units";
 *
 * inBtuPerHourFootDegreeF(btuPerHourFootDegreeF(12)); // ≈ 12.0000000000
 * ```
 */
export function inBtuPerHourFootDegreeF(thermalConductivity: ThermalConductivity): number {
  return read("inBtuPerHourFootDegreeF", thermalConductivity, 1.7307346663713912);
}
