/**
 * Transmissivity and storativity from the straight part of a plot of drawdown against the logarithm of time.
 *
 * @module
 */
import { leastSquares, requireList, requireObject, requireWithin } from "../numeric/index.ts";
import { type Duration, InputError, type Length, type Transmissivity, type VolumeFlow } from "../units/index.ts";
import { JACOB_CONSTANT } from "./theis.ts";

/** A reading of the level while the well is pumped. */
export interface DrawdownReading {
  /** Time since pumping began. 1e-3 to 1e12 s. */
  readonly time: Duration;
  /** Fall of the level below static. 0 to 10 000 m. */
  readonly drawdown: Length;
}

/** A steady test watched with time. */
export interface TimeDrawdownInput {
  /** Steady flow. 1e-9 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Distance from the pumped well to where the level is read; the effective radius in the well itself. 1e-3 to 1e6 m. */
  readonly radius: Length;
  /** 3 to 10 000 readings, in any order, at two or more times. */
  readonly readings: readonly DrawdownReading[];
  /** Readings before this are left out: the line is straight only later. 0 to 1e12 s; none left out without it. */
  readonly from?: Duration;
}

/** The line as it is read from a plot by hand. */
export interface PlottedLineInput {
  /** Steady flow. 1e-9 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Drawdown gained from any time to ten times it. 1e-6 to 10 000 m. */
  readonly drawdownPerLogCycle: Length;
  /** Time at which the line, drawn back, shows no drawdown. 1e-9 to 1e12 s. */
  readonly timeAtZero: Duration;
  /** Distance to where the level was read. 1e-3 to 1e6 m. */
  readonly radius: Length;
}

/** What a line says of an aquifer. */
export interface AquiferFromLine {
  /** Transmissivity, m²/s. */
  readonly transmissivity: Transmissivity;
  /** Storativity; above 1 it shows a radius or a line that is wrong, as in a pumped well with well loss. */
  readonly storativity: number;
}

/**
 * Transmissivity and storativity from a line drawn by hand through drawdown against the logarithm of time.
 *
 * @remarks
 * T = ln 10 · Q / (4 π Δs), S = 2.2458 T t₀ / r², with Δs `drawdownPerLogCycle`, t₀ `timeAtZero`, r `radius`. T is
 * sound even in the pumped well; S only in a well apart from it, because well loss shifts the line.
 *
 * @param input - flow, slope, zero and distance; each field says its unit and the values it takes
 * @returns both constants of the aquifer
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { aquiferFromPlottedLine } from "risingmain/well";
 * import { feet, gpm, inUsGallonsPerDayPerFoot, minutes } from "risingmain/units";
 *
 * const aquifer = aquiferFromPlottedLine({
 *   flow: gpm(350), drawdownPerLogCycle: feet(2.9), timeAtZero: minutes(0.3), radius: feet(225),
 * });
 * inUsGallonsPerDayPerFoot(aquifer.transmissivity); // ≈ 3.18e4
 * aquifer.storativity; // ≈ 3.93e-5
 * ```
 *
 * @source cooper-jacob-1946
 */
export function aquiferFromPlottedLine(input: PlottedLineInput): AquiferFromLine {
  requireObject("input", input);
  const { flow, drawdownPerLogCycle, timeAtZero, radius } = input;
  requireWithin("flow", flow, 1e-9, 100, "m³/s");
  requireWithin("drawdownPerLogCycle", drawdownPerLogCycle, 1e-6, 10_000, "m");
  requireWithin("timeAtZero", timeAtZero, 1e-9, 1e12, "s");
  requireWithin("radius", radius, 1e-3, 1e6, "m");
  const transmissivity = (Math.LN10 * flow) / (4 * Math.PI * drawdownPerLogCycle);
  return {
    transmissivity: transmissivity as Transmissivity,
    storativity: (JACOB_CONSTANT * transmissivity * timeAtZero) / (radius * radius),
  };
}

/** The straight line through readings, or the news that they show none. */
export type StraightLineFit =
  | (AquiferFromLine & {
      /** The level falls with the logarithm of time. */
      readonly state: "line";
      /** Standard errors as shares of transmissivity and storativity; null with two readings. */
      readonly relativeErrors: readonly [transmissivity: number, storativity: number] | null;
      /** Drawdown gained in each tenfold of time, m. */
      readonly drawdownPerLogCycle: Length;
      /** Measured less the line, for the readings taken, in order of the input, m. */
      readonly residuals: readonly Length[];
      /** u at the first reading taken; the line holds where it is small. */
      readonly greatestU: number;
      /** Whether `greatestU` is at most 0.05, within 2 % of Theis. */
      readonly insideRange: boolean;
      /** The method. */
      readonly method: "cooper-jacob-1946";
    })
  | {
      /** The level does not fall with time, or falls so little that no constant follows: a boundary that feeds, or no test. */
      readonly state: "no line";
    };

/** u at which the straight line is 2 % from Theis; with more the fit bends. */
const GREATEST_U = 0.05;

/**
 * Transmissivity and storativity by the least-squares straight line of drawdown against the logarithm of time.
 *
 * @remarks
 * s = Q/(4 π T) · (ln t − ln t₀), S = 2.2458 T t₀ / r². Early readings bend away below the line and make T too large
 * and S too small: leave them out with `from` until `insideRange`, or use {@link fitTheis}, which needs no straight part.
 *
 * @param input - flow, distance and readings; each field says its unit and the values it takes
 * @returns the aquifer's constants with relative standard errors, or that there is no line
 * @throws {@link units.InputError} naming the first field that cannot be used, or too few readings left after `from`
 *
 * @example
 * ```ts
 * import { fitStraightLine } from "risingmain/well";
 * import { cubicMetresPerHour, inSquareMetresPerDay, metres, minutes } from "risingmain/units";
 *
 * const fit = fitStraightLine({
 *   flow: cubicMetresPerHour(10), radius: metres(20),
 *   readings: [
 *     { time: minutes(30), drawdown: metres(0.75) },
 *     { time: minutes(60), drawdown: metres(0.9) },
 *     { time: minutes(120), drawdown: metres(1.05) },
 *     { time: minutes(240), drawdown: metres(1.2) },
 *   ],
 * });
 * fit.state === "line" ? inSquareMetresPerDay(fit.transmissivity) : 0; // ≈ 88.25
 * ```
 *
 * @source cooper-jacob-1946
 */
export function fitStraightLine(input: TimeDrawdownInput): StraightLineFit {
  const { flow, radius, readings } = requireReadings(input);
  const times = readings.map(({ time }) => Math.log(time));
  // Centred, so that height and slope of the line err independently.
  const middle = times.reduce((sum, time) => sum + time, 0) / times.length;
  const fit = leastSquares(
    times.map((time) => [1, time - middle]),
    readings.map(({ drawdown }) => drawdown),
  );
  if (fit === null) throw new InputError("readings", readings, "readings at two or more different times");
  const [height, slope] = fit.coefficients as [number, number];
  if (!(slope > LEAST_SLOPE)) return { state: "no line" };
  const transmissivity = flow / (4 * Math.PI * slope);
  const timeAtZero = Math.exp(middle - height / slope);
  const storativity = (JACOB_CONSTANT * transmissivity * timeAtZero) / (radius * radius);
  // A line so flat that its zero lies before any time there is.
  if (storativity === 0) return { state: "no line" };
  const greatestU = (JACOB_CONSTANT / 4) * (timeAtZero / Math.min(...readings.map(({ time }) => time)));
  return {
    state: "line",
    transmissivity: transmissivity as Transmissivity,
    storativity,
    relativeErrors:
      fit.standardErrors && relativeErrors(fit.standardErrors as readonly [number, number], height, slope),
    drawdownPerLogCycle: (slope * Math.LN10) as Length,
    residuals: fit.residuals as readonly Length[],
    greatestU,
    insideRange: greatestU <= GREATEST_U,
    method: "cooper-jacob-1946",
  };
}

/** A gain of a thousandth of a millimetre in each factor e of time is no slope. */
const LEAST_SLOPE = 1e-6;

/** First-order errors of ln T = −ln b + … and ln S = −ln b − a/b + …, a and b independent. */
function relativeErrors(errors: readonly [number, number], a: number, b: number): readonly [number, number] {
  const [ea, eb] = errors;
  return [eb / b, Math.hypot(ea / b, ((a / b - 1) * eb) / b)];
}

/**
 * The readings from `from` on, each checked.
 *
 * @internal
 */
export function requireReadings(input: TimeDrawdownInput): TimeDrawdownInput {
  requireObject("input", input);
  const { flow, radius, readings, from = 0 } = input;
  requireWithin("flow", flow, 1e-9, 100, "m³/s");
  requireWithin("radius", radius, 1e-3, 1e6, "m");
  requireList("readings", readings, 3, 10_000);
  requireWithin("from", from, 0, 1e12, "s");
  readings.forEach((reading, i) => {
    requireObject(`readings[${i}]`, reading);
    requireWithin(`readings[${i}].time`, reading.time, 1e-3, 1e12, "s");
    requireWithin(`readings[${i}].drawdown`, reading.drawdown, 0, 10_000, "m");
  });
  const taken = readings.filter(({ time }) => time >= from);
  if (taken.length < 2) throw new InputError("from", from, "a time with at least two readings after it");
  return { flow, radius, readings: taken };
}
