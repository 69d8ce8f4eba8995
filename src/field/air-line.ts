/**
 * Where the water stands, by air line and gauge.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, GaugePressure, Length } from "../units/index.ts";
import { type Carried, carried, type TrialOptions } from "./carried.ts";
import { GAUGE } from "./usual-doubts.ts";

/** A small tube down the well, pumped full of air till the gauge rises no more. */
export interface AirLineInput extends TrialOptions {
  /** Depth of the tube's open end below the point that levels are measured from. 0 to 5000 m. */
  readonly lineLength: Length;
  /** Greatest gauge pressure that pumping air in gives. 0 to 50 MPa. */
  readonly pressure: GaugePressure;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
  /** Standard uncertainty of the gauge. 0 to 10 MPa; 1 psi where left out (common practice). */
  readonly pressureUncertainty?: GaugePressure;
  /** Standard uncertainty of the line's length. 0 to 100 m; 0 where left out. */
  readonly lengthUncertainty?: Length;
}

/** The level. */
export type AirLineLevel =
  | (Carried<Length> & {
      /** The gauge answers to water over the line's end. */
      readonly state: "read";
      /** Depth to water, m. */
      readonly level: Length;
      /** Water over the end of the line, m. */
      readonly submergence: Length;
    })
  | {
      /** More pressure than water up to the measuring point makes: the length, the gauge or the line is wrong. */
      readonly state: "over the top";
      /** Water over the end of the line that the pressure would mean, m. */
      readonly submergence: Length;
    };

/**
 * The depth to water from an air line's gauge.
 *
 * @remarks
 * level = L − p/(ρ g) with L `lineLength`. One psi of gauge error is 2.3 ft of level, so a 2 % gauge of 60 psi is good to
 * 2.8 ft: enough to watch a pumping level, not to analyse a test. A leak in the tube reads as a level that is too low.
 *
 * @param input - line, pressure and density; each field says its unit and range
 * @returns the level, or that the pressure is more than the line can mean
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example 180 ft of line, 4 psi
 * ```ts
 * import { airLineLevel } from "risingmain/field";
 * import { feet, inFeet, kilogramsPerCubicMetre, psi } from "risingmain/units";
 *
 * const pumping = airLineLevel({ lineLength: feet(180), pressure: psi(4), density: kilogramsPerCubicMetre(999.7) });
 * if (pumping.state !== "read") throw new Error(pumping.state);
 * inFeet(pumping.level); // ≈ 170.8
 * ```
 *
 * @source derived: hydrostatic pressure of a column of water
 * @source jcgm-100, 5.1.2
 */
export function airLineLevel(input: AirLineInput): AirLineLevel {
  requireObject("input", input);
  const { lineLength, pressure, density, pressureUncertainty = GAUGE, lengthUncertainty = 0 } = input;
  requireWithin("lineLength", lineLength, 0, 5000, "m");
  requireWithin("pressure", pressure, 0, 5e7, "Pa");
  requireWithin("density", density, 900, 1100, "kg/m³");
  requireWithin("pressureUncertainty", pressureUncertainty, 0, 1e7, "Pa");
  requireWithin("lengthUncertainty", lengthUncertainty, 0, 100, "m");
  const weight = density * STANDARD_GRAVITY;
  const submergence = (pressure / weight) as Length;
  if (!(submergence <= lineLength)) return { state: "over the top", submergence };
  return {
    state: "read",
    level: (lineLength - submergence) as Length,
    submergence,
    ...carried<Length>(
      [
        { name: "lineLength", value: lineLength, standardUncertainty: lengthUncertainty, low: 0, high: 1e5 },
        { name: "pressure", value: pressure, standardUncertainty: pressureUncertainty, low: -1e8, high: 1e8 },
      ],
      ([length = 0, read = 0]) => length - read / weight,
      input,
    ),
  };
}
