/**
 * From gauge to absolute pressure and back: the air outside is the only difference, and it depends on altitude.
 *
 * @module
 */
import type { AbsolutePressure } from "./absolute-pressure.ts";
import type { GaugePressure } from "./gauge-pressure.ts";
import { finite } from "./quantity.ts";

/**
 * The absolute pressure of a gauge pressure, p_abs = p_gauge + p_air.
 *
 * @param gauge - the gauge pressure, Pa
 * @param atmosphere - the absolute pressure of the air outside, Pa; see `atmosphereAt` in `risingmain/water`
 * @returns the absolute pressure, Pa
 * @throws {@link InputError} where either is not a finite number
 * @source derived
 *
 * @example
 * ```ts
 * import { absoluteOfGauge, inPsia, psi, standardAtmospheres } from "risingmain/units";
 *
 * inPsia(absoluteOfGauge(psi(40), standardAtmospheres(1))); // ≈ 54.696
 * ```
 */
export function absoluteOfGauge(gauge: GaugePressure, atmosphere: AbsolutePressure): AbsolutePressure {
  return finite("gauge", finite("gauge", gauge) + finite("atmosphere", atmosphere)) as AbsolutePressure;
}

/**
 * The gauge pressure of an absolute pressure, p_gauge = p_abs − p_air; undoes {@link absoluteOfGauge}.
 *
 * @param absolute - the absolute pressure, Pa
 * @param atmosphere - the absolute pressure of the air outside, Pa; see `atmosphereAt` in `risingmain/water`
 * @returns the gauge pressure, Pa
 * @throws {@link InputError} where either is not a finite number
 * @source derived
 *
 * @example
 * ```ts
 * import { gaugeOfAbsolute, inPsi, psia, standardAtmospheres } from "risingmain/units";
 *
 * inPsi(gaugeOfAbsolute(psia(54.696), standardAtmospheres(1))); // ≈ 40.000
 * ```
 */
export function gaugeOfAbsolute(absolute: AbsolutePressure, atmosphere: AbsolutePressure): GaugePressure {
  return finite("absolute", finite("absolute", absolute) - finite("atmosphere", atmosphere)) as GaugePressure;
}
