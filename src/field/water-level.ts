/**
 * Where the water stands: by air line and gauge, or by an echo.
 *
 * @module
 */
import { requireList, requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, Duration, GaugePressure, Length, Temperature } from "../units/index.ts";

/** Speed of sound in dry air at 0 °C, m/s (`cramer-1993`; recalled); it grows with the root of the absolute temperature. */
const SOUND_AT_ICE_POINT = 331.3;
const ICE_POINT = 273.15;

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

/** An echo from the water. */
export interface EchoInput {
  /** Time from the shot to the echo. 0 to 60 s. */
  readonly echoTime: Duration;
  /** Temperature of the air in the well. 223.15 to 333.15 K. */
  readonly airTemperature: Temperature;
}

/**
 * The depth to water from the time of an echo in the casing.
 *
 * @remarks
 * d = c t/2,  c = 331.3 m/s √(T/273.15 K). Ten Fahrenheit degrees of error are one percent of depth; damp air, gas in the well and
 * ledges in the casing add more.
 *
 * @param input - time and air temperature; each field says its unit and range
 * @returns the depth, m
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { echoDepth } from "risingmain/field";
 * import { fahrenheit, inFeet, seconds } from "risingmain/units";
 *
 * inFeet(echoDepth({ echoTime: seconds(0.178), airTemperature: fahrenheit(50) })); // ≈ 98.5
 * ```
 *
 * @source derived: sound in an ideal gas
 * @source cramer-1993: the speed at 0 °C; recalled
 */
export function echoDepth(input: EchoInput): Length {
  requireObject("input", input);
  requireWithin("echoTime", input.echoTime, 0, 60, "s");
  requireWithin("airTemperature", input.airTemperature, 223.15, 333.15, "K");
  const speed = SOUND_AT_ICE_POINT * Math.sqrt(input.airTemperature / ICE_POINT);
  return ((speed * input.echoTime) / 2) as Length;
}

/** A tape let down a well that leans or bends. */
export interface LeaningTapeInput {
  /** True depth, straight down. 0 to 5000 m. */
  readonly trueDepth: Length;
  /** How far the tape's end lies to the side. 0 to 5000 m. */
  readonly offset: Length;
}

/**
 * What a tape reads in a well that is out of plumb.
 *
 * @remarks
 * √(d² + x²): a foot out in a hundred reads 0.005 ft too much. A stretched or kinked tape errs by more than 0.1 ft.
 *
 * @param input - depth and offset; each field says its unit and range
 * @returns the tape's reading, m
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { leaningTape } from "risingmain/field";
 * import { feet, inFeet } from "risingmain/units";
 *
 * inFeet(leaningTape({ trueDepth: feet(100), offset: feet(1) })); // ≈ 100.005
 * ```
 *
 * @source derived: right triangle
 */
export function leaningTape(input: LeaningTapeInput): Length {
  requireObject("input", input);
  requireWithin("trueDepth", input.trueDepth, 0, 5000, "m");
  requireWithin("offset", input.offset, 0, 5000, "m");
  return Math.hypot(input.trueDepth, input.offset) as Length;
}

/** One reading of a pumping test. */
export interface LevelReading {
  /** Time since the pump was started. 0 to 1 year, s. */
  readonly time: Duration;
  /** Depth to water, from the same point as the static level. 0 to 5000 m. */
  readonly level: Length;
}

/** Checks readings in order of time.
 *
 * @internal
 */
export function requireReadings(readings: readonly LevelReading[]): void {
  requireList("readings", readings, 1, 100_000);
  let previous = 0;
  readings.forEach((reading, i) => {
    requireObject(`readings[${i}]`, reading);
    requireWithin(`readings[${i}].time`, reading.time, previous, 31_557_600, "s (not before the reading ahead of it)");
    requireWithin(`readings[${i}].level`, reading.level, 0, 5000, "m");
    previous = reading.time;
  });
}
