/**
 * Speed of sound in water, and the stiffness it tells of.
 *
 * @module
 */
import type { Modulus, Temperature, Velocity } from "../units/index.ts";
import { waterDensity } from "./density.ts";
import {
  heatCapacity,
  specificVolume,
  volumeSlopeWithPressure,
  volumeSlopeWithTemperature,
} from "./liquid-at-one-bar.ts";
import { requireLiquid } from "./temperature-range.ts";

/**
 * Speed of sound in pure, bubble-free liquid water at 0.1 MPa.
 *
 * @remarks
 * w² = −v² / (v_p + T v_T² / c_p), with v the specific volume, v_p and v_T its slopes with pressure and temperature,
 * c_p the heat capacity. Published for 253.15 to 383.15 K; uncertainty 0.1 %, 0.005 % near room temperature.
 * A trace of air bubbles lowers it severalfold.
 *
 * @param temperature - water temperature, K; 253.15 to 383.15
 * @returns speed of sound, m/s
 * @throws {@link units.InputError} where the temperature is not a number in its range
 *
 * @example
 * ```ts
 * import { celsius, inMetresPerSecond } from "risingmain/units";
 * import { waterSpeedOfSound } from "risingmain/water";
 *
 * inMetresPerSecond(waterSpeedOfSound(celsius(20))); // ≈ 1482.3
 * ```
 *
 * @source iapws-sr6-08, equations 2 to 5 and table 3
 */
export function waterSpeedOfSound(temperature: Temperature): Velocity {
  requireLiquid(temperature);
  const v = specificVolume(temperature);
  const vT = volumeSlopeWithTemperature(temperature);
  const squeeze = volumeSlopeWithPressure(temperature) + (temperature * vT * vT) / heatCapacity(temperature);
  return (v / Math.sqrt(-squeeze)) as Velocity;
}

/**
 * Bulk modulus of water: its stiffness against sudden pressure, without heat exchange.
 *
 * @remarks
 * K = ρ w², the adiabatic modulus, which is the one a pressure wave meets. The isothermal modulus is 1.5 %
 * lower at 30 °C.
 *
 * @param temperature - water temperature, K; 253.15 to 383.15
 * @returns adiabatic bulk modulus, Pa
 * @throws {@link units.InputError} where the temperature is not a number in its range
 *
 * @example
 * ```ts
 * import { celsius, inGigapascals } from "risingmain/units";
 * import { waterBulkModulus } from "risingmain/water";
 *
 * inGigapascals(waterBulkModulus(celsius(20))); // ≈ 2.193
 * ```
 *
 * @source derived: definition of the speed of sound, from iapws-sr6-08
 */
export function waterBulkModulus(temperature: Temperature): Modulus {
  return (waterDensity(temperature) * waterSpeedOfSound(temperature) ** 2) as Modulus;
}

/**
 * Isothermal bulk modulus of water: its stiffness against slow pressure, when heat has time to leave.
 *
 * @remarks
 * K_T = −v / v_p. Handbooks often print this one; a pressure wave meets `waterBulkModulus`, up to 4 % higher in warm
 * water.
 *
 * @param temperature - water temperature, K; 253.15 to 383.15
 * @returns isothermal bulk modulus, Pa
 * @throws {@link units.InputError} where the temperature is not a number in its range
 *
 * @example
 * ```ts
 * import { celsius, inGigapascals } from "risingmain/units";
 * import { waterIsothermalBulkModulus } from "risingmain/water";
 *
 * inGigapascals(waterIsothermalBulkModulus(celsius(20))); // ≈ 2.179
 * ```
 *
 * @source derived: definition, from iapws-sr6-08
 */
export function waterIsothermalBulkModulus(temperature: Temperature): Modulus {
  requireLiquid(temperature);
  return (-specificVolume(temperature) / volumeSlopeWithPressure(temperature)) as Modulus;
}
