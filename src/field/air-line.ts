/**
 * Where the water stands, by air line and gauge.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, GaugePressure, Length } from "../units/index.ts";

/** A small tube down the well, pumped full of air till the gauge rises no more. */
export interface AirLineInput {
  /** Depth of the tube's open end below the point that levels are measured from. 0 to 5000 m. */
  readonly lineLength: Length;
  /** Greatest gauge pressure that pumping air in gives. 0 to 50 MPa. */
  readonly pressure: GaugePressure;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
  /** Standard uncertainty of the gauge. 0 to 10 MPa; 0 where left out. */
  readonly pressureUncertainty?: GaugePressure;
}

/** The level. */
export type AirLineLevel =
  | {
      /** The gauge answers to water over the line's end. */
      readonly state: "read";
      /** Depth to water, m. */
      readonly level: Length;
      /** Water over the end of the line, m. */
      readonly submergence: Length;
      /** Standard uncertainty of the level from that of the gauge, m: 2.3 ft for each psi. */
      readonly standardUncertainty: Length;
    }
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
 */
export function airLineLevel(input: AirLineInput): AirLineLevel {
  requireObject("input", input);
  const { lineLength, pressure, density, pressureUncertainty = 0 } = input;
  requireWithin("lineLength", lineLength, 0, 5000, "m");
  requireWithin("pressure", pressure, 0, 5e7, "Pa");
  requireWithin("density", density, 900, 1100, "kg/m³");
  requireWithin("pressureUncertainty", pressureUncertainty, 0, 1e7, "Pa");
  const weight = density * STANDARD_GRAVITY;
  const submergence = (pressure / weight) as Length;
  if (!(submergence <= lineLength)) return { state: "over the top", submergence };
  return {
    state: "read",
    level: (lineLength - submergence) as Length,
    submergence,
    standardUncertainty: (pressureUncertainty / weight) as Length,
  };
}
