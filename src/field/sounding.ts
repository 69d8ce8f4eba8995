/**
 * Depth to water by an echo, and what a tape reads in a well that leans.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Length, Temperature, TemperatureDifference } from "../units/index.ts";
import { type Carried, carried, type TrialOptions } from "./carried.ts";
import { ECHO, WELL_AIR } from "./usual-doubts.ts";

/** Speed of sound in dry air at 0 °C, m/s (`cramer-1993`; recalled); it grows with the root of the absolute temperature. */
const SOUND_AT_ICE_POINT = 331.3;
const ICE_POINT = 273.15;

/** An echo from the water. */
export interface EchoInput extends TrialOptions {
  /** Time from the shot to the echo. 0 to 60 s. */
  readonly echoTime: Duration;
  /** Temperature of the air in the well. 223.15 to 333.15 K. */
  readonly airTemperature: Temperature;
  /** Standard uncertainty of the time. 0 to 10 s; 1 ms where left out (common practice). */
  readonly timeUncertainty?: Duration;
  /** Standard uncertainty of the air's temperature. 0 to 50 K; 3 K where left out (common practice). */
  readonly temperatureUncertainty?: TemperatureDifference;
}

/** A depth by echo. */
export interface EchoDepth extends Carried<Length> {
  /** Depth to water, m. */
  readonly depth: Length;
}

/**
 * The depth to water from the time of an echo in the casing.
 *
 * @remarks
 * d = c t/2,  c = 331.3 m/s √(T/273.15 K). Ten Fahrenheit degrees of error are one percent of depth; damp air, gas in the well and
 * ledges in the casing add more.
 *
 * @param input - time and air temperature; each field says its unit and range
 * @returns the depth and its uncertainty
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { echoDepth } from "risingmain/field";
 * import { fahrenheit, inFeet, seconds } from "risingmain/units";
 *
 * inFeet(echoDepth({ echoTime: seconds(0.178), airTemperature: fahrenheit(50) }).depth); // ≈ 98.5
 * ```
 *
 * @source derived: sound in an ideal gas
 * @source cramer-1993: the speed at 0 °C; recalled
 * @source jcgm-100, 5.1.2
 */
export function echoDepth(input: EchoInput): EchoDepth {
  requireObject("input", input);
  const { echoTime, airTemperature, timeUncertainty = ECHO, temperatureUncertainty = WELL_AIR } = input;
  requireWithin("echoTime", echoTime, 0, 60, "s");
  requireWithin("airTemperature", airTemperature, 223.15, 333.15, "K");
  requireWithin("timeUncertainty", timeUncertainty, 0, 10, "s");
  requireWithin("temperatureUncertainty", temperatureUncertainty, 0, 50, "K");
  const depth = (time: number, temperature: number): number =>
    (SOUND_AT_ICE_POINT * Math.sqrt(temperature / ICE_POINT) * time) / 2;
  return {
    depth: depth(echoTime, airTemperature) as Length,
    ...carried<Length>(
      [
        { name: "echoTime", value: echoTime, standardUncertainty: timeUncertainty, low: 0, high: 1000 },
        {
          name: "airTemperature",
          value: airTemperature,
          standardUncertainty: temperatureUncertainty,
          low: 0,
          high: 1000,
        },
      ],
      ([time = 0, temperature = 0]) => depth(time, temperature),
      input,
    ),
  };
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
