/**
 * Dynamic viscosity of liquid water.
 *
 * @module
 */
import type { DynamicViscosity, Temperature } from "../units/index.ts";
import { requireLiquid } from "./temperature-range.ts";

/** Amplitudes, µPa·s, and exponents of equation 7 of `iapws-sr6-08`. */
const TERMS: readonly (readonly [amplitude: number, exponent: number])[] = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
];

/** Reference temperature of that equation, K. */
const REFERENCE = 300;

/**
 * Dynamic viscosity of pure liquid water at 0.1 MPa.
 *
 * @remarks
 * µ = Σ aᵢ (T / 300 K)^bᵢ, four terms, in µPa·s.
 * Published for 253.15 to 383.15 K (−20 to 110 °C); uncertainty 1 %, and 0.17 % at 20 °C. Pressures met in private
 * systems change it by less than 0.1 %.
 *
 * @param temperature - water temperature, K; 253.15 to 383.15
 * @returns dynamic viscosity, Pa·s
 * @throws {@link units.InputError} where the temperature is not a number in its range
 *
 * @example
 * ```ts
 * import { celsius, inMillipascalSeconds } from "risingmain/units";
 * import { waterDynamicViscosity } from "risingmain/water";
 *
 * inMillipascalSeconds(waterDynamicViscosity(celsius(20))); // ≈ 1.0016
 * ```
 *
 * @source iapws-sr6-08, equation 7
 */
export function waterDynamicViscosity(temperature: Temperature): DynamicViscosity {
  requireLiquid(temperature);
  const ratio = temperature / REFERENCE;
  return (1e-6 * TERMS.reduce((sum, [a, b]) => sum + a * ratio ** b, 0)) as DynamicViscosity;
}
