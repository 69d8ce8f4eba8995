/**
 * Vapour pressure of water: where it boils, and where a suction line parts.
 *
 * @module
 */
import { requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { AbsolutePressure, Length, Temperature } from "../units/index.ts";
import { waterDensity } from "./density.ts";

/** Critical temperature, K, and pressure, Pa, of water (`iapws-sr1-86`, section 1). */
const CRITICAL_TEMPERATURE = 647.096;
const CRITICAL_PRESSURE = 22.064e6;

/** Coefficients a1 to a6 of equation 1 of `iapws-sr1-86`, with their exponents. */
const TERMS: readonly (readonly [coefficient: number, exponent: number])[] = [
  [-7.85951783, 1],
  [1.84408259, 1.5],
  [-11.7866497, 3],
  [22.6807411, 3.5],
  [-15.9618719, 4],
  [1.80122502, 7.5],
];

/** Lowest temperature accepted, K: that of the liquid's other properties. */
const LOWEST = 253.15;

/**
 * Pressure at which pure water boils: of its vapour in balance with the liquid.
 *
 * @remarks
 * ln(p / p_c) = (T_c / T) Σ aᵢ τ^nᵢ,  τ = 1 − T / T_c, T_c = 647.096 K, p_c = 22.064 MPa.
 * Published from the triple point, 273.16 K, to the critical point; uncertainty 0.025 % at the triple point, less than
 * 0.1 % above. Taken down to 253.15 K, where the liquid's other properties end; below 273.16 K it continues the line over
 * undercooled liquid, not ice.
 *
 * @param temperature - water temperature, K; 253.15 to 647.096
 * @returns vapour pressure, Pa absolute
 * @throws {@link units.InputError} where the temperature is not a number in its range
 *
 * @example
 * ```ts
 * import { celsius, inKilopascalsAbsolute } from "risingmain/units";
 * import { waterVapourPressure } from "risingmain/water";
 *
 * inKilopascalsAbsolute(waterVapourPressure(celsius(20))); // ≈ 2.339
 * ```
 *
 * @source iapws-sr1-86, equation 1
 */
export function waterVapourPressure(temperature: Temperature): AbsolutePressure {
  requireWithin("temperature", temperature, LOWEST, CRITICAL_TEMPERATURE, "K (−20 to 373.946 °C)");
  const tau = 1 - temperature / CRITICAL_TEMPERATURE;
  const sum = TERMS.reduce((total, [a, n]) => total + a * tau ** n, 0);
  return (CRITICAL_PRESSURE * Math.exp((CRITICAL_TEMPERATURE / temperature) * sum)) as AbsolutePressure;
}

/**
 * Vapour pressure as a height of the water itself: what boiling takes off a suction lift.
 *
 * @remarks
 * h = p_v / (ρ g), with p_v `waterVapourPressure`, ρ `waterDensity`, g standard gravity.
 *
 * @param temperature - water temperature, K; 253.15 to 383.15
 * @returns vapour pressure head, m of that water, above vacuum
 * @throws {@link units.InputError} where the temperature is not a number in its range
 *
 * @example
 * ```ts
 * import { celsius, inMetres } from "risingmain/units";
 * import { waterVapourPressureHead } from "risingmain/water";
 *
 * inMetres(waterVapourPressureHead(celsius(20))); // ≈ 0.239
 * ```
 *
 * @source derived: weight of a column, from iapws-sr1-86, equation 1 and iapws-sr6-08, equation 2
 */
export function waterVapourPressureHead(temperature: Temperature): Length {
  return (waterVapourPressure(temperature) / (waterDensity(temperature) * STANDARD_GRAVITY)) as Length;
}
