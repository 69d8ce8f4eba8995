/**
 * The precharge of a tank: what it should be, and what a change of temperature does to it.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { AbsolutePressure, GaugePressure, Temperature, Volume } from "../units/index.ts";
import { requireAirCharge } from "./air-charge.ts";

/** One pound-force per square inch, Pa (`nist-sp811`). */
const PSI = 6894.757293168361;

/** How far below the cut-in the precharge is set, Pa: 2 psi (`water-systems-council-2007`). */
export const PRECHARGE_BELOW_CUT_IN: number = 2 * PSI;

/** How far below the cut-in a precharge may lie and still be called right, Pa: 4 psi, twice the rule (common practice). */
export const LOWEST_PRECHARGE_BELOW_CUT_IN: number = 4 * PSI;

/**
 * The precharge a captive-air tank should have: 2 psi below the cut-in.
 *
 * @remarks
 * Set with the tank empty of water and the pump off. A little below the cut-in leaves some water in the tank when the
 * pump starts, so the pressure at the tap does not dip. A switch that closes below 2 psi gets 0.
 *
 * @param cutIn - gauge pressure at which the pump starts, 0 to 100 MPa
 * @returns the gauge pressure of the air in the empty tank
 * @throws {@link units.InputError} where the cut-in is not a number in its range
 *
 * @example
 * ```ts
 * import { recommendedPrecharge } from "risingmain/tank";
 * import { inPsi, psi } from "risingmain/units";
 *
 * inPsi(recommendedPrecharge(psi(40))); // ≈ 38.0
 * ```
 *
 * @source water-systems-council-2007, p. 3
 */
export function recommendedPrecharge(cutIn: GaugePressure): GaugePressure {
  requireWithin("cutIn", cutIn, 0, 1e8, "Pa gauge");
  return Math.max(0, cutIn - PRECHARGE_BELOW_CUT_IN) as GaugePressure;
}

/** An air charge, and the temperatures it was set at and is wanted at. */
export interface PrechargeAtTemperatureInput {
  /** Gauge pressure of the air in the empty tank, as set. From 100 Pa absolute to 100 MPa. */
  readonly precharge: GaugePressure;
  /** Temperature of the air when it was set. 200 to 400 K. */
  readonly setAt: Temperature;
  /** Temperature of the air when it is wanted. 200 to 400 K. */
  readonly temperature: Temperature;
  /** Absolute pressure of the air outside. 10 to 200 kPa. */
  readonly atmosphere: AbsolutePressure;
}

/**
 * The precharge after the air in the empty tank has warmed or cooled.
 *
 * @remarks
 * (p₂ + a) / (p₁ + a) = T₂ / T₁, the volume being that of the empty tank.
 *
 * A tank charged in a warm shop and hung in a cold pit reads low for this reason alone.
 *
 * @param input - the charge, the two temperatures and the air outside
 * @returns the gauge pressure of the air in the empty tank at `temperature`; negative where the air has become a vacuum
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example 38 psi set at 70 °F, found at 40 °F
 * ```ts
 * import { prechargeAtTemperature } from "risingmain/tank";
 * import { fahrenheit, inPsi, psi, psia } from "risingmain/units";
 *
 * const input = { precharge: psi(38), setAt: fahrenheit(70), temperature: fahrenheit(40), atmosphere: psia(14.7) };
 * inPsi(prechargeAtTemperature(input)); // ≈ 35.0
 * ```
 *
 * @source derived: ideal gas at constant volume
 */
export function prechargeAtTemperature(input: PrechargeAtTemperatureInput): GaugePressure {
  requireObject("input", input);
  const { precharge, setAt, temperature, atmosphere } = input;
  // The volume cancels; any one will do to have the pressures looked at.
  requireAirCharge({ volume: 1 as Volume, precharge, atmosphere });
  requireWithin("setAt", setAt, 200, 400, "K");
  requireWithin("temperature", temperature, 200, 400, "K");
  return ((precharge + atmosphere) * (temperature / setAt) - atmosphere) as GaugePressure;
}
