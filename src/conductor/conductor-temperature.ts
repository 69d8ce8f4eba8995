/**
 * Temperature of a conductor from the current it carries.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { type Current, InputError, type Temperature } from "../units/index.ts";
import { CONDUCTOR_MATERIALS, type ConductorMaterial, conductorMetals } from "./material.ts";

/** A loaded conductor. */
export interface ConductorTemperatureInput {
  /** Current it carries. 0 to 100 000 A. */
  readonly current: Current;
  /** Tabulated current at which it reaches `ratedTemperature` in `tableAmbient`, corrected for bundling. 0.1 to 100 000 A. */
  readonly ampacity: Current;
  /** Temperature it reaches at its ampacity. 300 to 500 K. */
  readonly ratedTemperature: Temperature;
  /** Ambient of the table; 30 °C where left out. 200 to 400 K, below the rated temperature. */
  readonly tableAmbient?: Temperature;
  /** Ambient where it lies. 200 to 400 K. */
  readonly ambient: Temperature;
  /** Metal; copper where left out. */
  readonly material?: ConductorMaterial;
}

/** How warm it gets. */
export type ConductorTemperature =
  | {
      /** Whether the insulation stands it. */
      readonly state: "within rating" | "above rating";
      /** Steady temperature of the metal, K. */
      readonly temperature: Temperature;
    }
  | {
      /** So much current that the rise of resistance outruns the cooling: no steady temperature below 1000 K. */
      readonly state: "burns out";
    };

/**
 * Steady temperature of a conductor under load, from its ampacity.
 *
 * @remarks
 * Heat made equals heat shed: (T − Tₐ) / (T_r − T₀) = (I / I_z)² R(T) / R(T_r), with I_z the ampacity for the rated
 * temperature T_r in ambient T₀. R rises on a straight line, so T has a closed form. The heat path is taken as the same at
 * all temperatures, so the figure is a rough one. A pump conductor sized for drop usually runs within 10 K of its ambient,
 * so its resistance is 15 to 20 % below the 75 °C table.
 *
 * @param input - current, ampacity and temperatures; each field says its unit and the values it takes
 * @returns the temperature and whether it is within the rating
 * @throws InputError naming the first field that is not in its range
 *
 * @example 10 A in a 12 AWG conductor good for 25 A, in 15 °C ground
 * ```ts
 * import { conductorTemperature } from "risingmain/conductor";
 * import { amperes, celsius, inCelsius } from "risingmain/units";
 *
 * const warm = conductorTemperature({
 *   current: amperes(10), ampacity: amperes(25), ratedTemperature: celsius(75), ambient: celsius(15),
 * });
 * if (warm.state !== "within rating") throw new Error(warm.state);
 * inCelsius(warm.temperature); // ≈ 20.9
 * ```
 *
 * @source derived: heat balance with resistance linear in temperature
 */
export function conductorTemperature(input: ConductorTemperatureInput): ConductorTemperature {
  requireObject("input", input);
  const { current, ampacity, ratedTemperature, ambient, material = "copper" } = input;
  const { tableAmbient = 303.15 as Temperature } = input;
  requireWithin("current", current, 0, 1e5, "A");
  requireWithin("ampacity", ampacity, 0.1, 1e5, "A");
  requireWithin("ratedTemperature", ratedTemperature, 300, 500, "K");
  requireWithin("tableAmbient", tableAmbient, 200, 400, "K");
  if (tableAmbient >= ratedTemperature) {
    throw new InputError("tableAmbient", tableAmbient, `below the rated temperature, ${ratedTemperature} K`);
  }
  requireWithin("ambient", ambient, 200, 400, "K");
  requireOneOf("material", material, CONDUCTOR_MATERIALS);
  // Resistance is proportional to T − zero: the line through 20 °C reaches nothing at `zero`.
  const zero = 293.15 - 1 / conductorMetals[material].coefficientAt20;
  const share = (current / ampacity) ** 2 * ((ratedTemperature - tableAmbient) / (ratedTemperature - zero));
  const temperature = (ambient - share * zero) / (1 - share);
  if (!(share < 1 && temperature <= 1000)) return { state: "burns out" };
  return {
    state: temperature <= ratedTemperature ? "within rating" : "above rating",
    temperature: temperature as Temperature,
  };
}
