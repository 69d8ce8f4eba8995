/**
 * Density of liquid water.
 *
 * @module
 */
import type { Density, Temperature } from "../units/index.ts";
import { specificVolume } from "./liquid-at-one-bar.ts";
import { requireLiquid } from "./temperature-range.ts";

/**
 * Density of pure liquid water at 0.1 MPa.
 *
 * @remarks
 * ρ = 1 / v(T), with v the specific volume by equation 2 of the release.
 * Published for 253.15 to 383.15 K (−20 to 110 °C, beyond 0 to 100 °C undercooled or superheated); uncertainty there
 * 0.0001 % from 0 to 40 °C and 0.001 % to 100 °C. Pressure adds about 0.005 % per bar, and each gram of dissolved
 * salts per litre about 0.08 %: both left out.
 *
 * @param temperature - water temperature, K; 253.15 to 383.15
 * @returns density, kg/m³
 * @throws {@link units.InputError} where the temperature is not a number in its range
 *
 * @example
 * ```ts
 * import { celsius, inKilogramsPerCubicMetre } from "risingmain/units";
 * import { waterDensity } from "risingmain/water";
 *
 * inKilogramsPerCubicMetre(waterDensity(celsius(10))); // ≈ 999.70
 * ```
 *
 * @source iapws-sr6-08, equation 2
 */
export function waterDensity(temperature: Temperature): Density {
  requireLiquid(temperature);
  return (1 / specificVolume(temperature)) as Density;
}
