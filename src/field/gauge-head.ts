/**
 * From a gauge to the head it reads over a datum.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, GaugePressure, Length } from "../units/index.ts";
import { type Carried, carried, type TrialOptions } from "./carried.ts";
import { GAUGE } from "./usual-doubts.ts";

/** A gauge and where it is. */
export interface GaugeHeadInput extends TrialOptions {
  /** Gauge pressure read, the gauge's own centre being what it reads at. −100 kPa to 100 MPa. */
  readonly pressure: GaugePressure;
  /** Elevation of the centre of the gauge over the datum; negative below it. −5000 to 5000 m. */
  readonly gaugeElevation: Length;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
  /** Standard uncertainty of the gauge. 0 to 10 MPa; 1 psi where left out (common practice). */
  readonly pressureUncertainty?: GaugePressure;
  /** Standard uncertainty of its elevation. 0 to 100 m; 0 where left out. */
  readonly elevationUncertainty?: Length;
}

/** The head a gauge reads. */
export interface GaugeHead extends Carried<Length> {
  /** Head over the datum, m. */
  readonly head: Length;
}

/**
 * The head over a datum that a gauge reads: where the water would stand in an open tube.
 *
 * @remarks
 * H = z + p/(ρ g) with z `gaugeElevation`. Leave no air in the gauge's tube.
 *
 * @param input - pressure, elevation and density; each field says its unit and range
 * @returns the head over the datum and its uncertainty
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example 50 psi on a gauge 3 ft above the ground
 * ```ts
 * import { gaugeHead } from "risingmain/field";
 * import { feet, inFeet, kilogramsPerCubicMetre, psi } from "risingmain/units";
 *
 * const water = kilogramsPerCubicMetre(999.7);
 * inFeet(gaugeHead({ pressure: psi(50), gaugeElevation: feet(3), density: water }).head); // ≈ 118.4
 * ```
 *
 * @source derived: hydrostatic pressure of a column of water
 * @source jcgm-100, 5.1.2
 */
export function gaugeHead(input: GaugeHeadInput): GaugeHead {
  requireObject("input", input);
  const { pressure, gaugeElevation, density, pressureUncertainty = GAUGE, elevationUncertainty = 0 } = input;
  requireWithin("pressure", pressure, -1e5, 1e8, "Pa");
  requireWithin("gaugeElevation", gaugeElevation, -5000, 5000, "m");
  requireWithin("density", density, 900, 1100, "kg/m³");
  requireWithin("pressureUncertainty", pressureUncertainty, 0, 1e7, "Pa");
  requireWithin("elevationUncertainty", elevationUncertainty, 0, 100, "m");
  const weight = density * STANDARD_GRAVITY;
  return {
    head: (gaugeElevation + pressure / weight) as Length,
    ...carried<Length>(
      [
        { name: "pressure", value: pressure, standardUncertainty: pressureUncertainty, low: -1e9, high: 1e9 },
        {
          name: "gaugeElevation",
          value: gaugeElevation,
          standardUncertainty: elevationUncertainty,
          low: -1e4,
          high: 1e4,
        },
      ],
      ([read = 0, elevation = 0]) => elevation + read / weight,
      input,
    ),
  };
}
