/**
 * Depth to water by an echo, and what a tape reads in a well that leans.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Length, Temperature } from "../units/index.ts";

/** Speed of sound in dry air at 0 °C, m/s (`cramer-1993`; recalled); it grows with the root of the absolute temperature. */
const SOUND_AT_ICE_POINT = 331.3;
const ICE_POINT = 273.15;

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
