/**
 * What a well's recovery says: residual drawdown after the pump stops, and transmissivity from it.
 *
 * @module
 */
import { leastSquares, requireList, requireObject, requireWithin } from "../numeric/index.ts";
import { type Duration, InputError, type Length, type Transmissivity, type VolumeFlow } from "../units/index.ts";
import { drawdownOfSchedule } from "./superposition.ts";
import type { Aquifer } from "./theis.ts";

/** A well that was pumped steadily and then rested. */
export interface ResidualDrawdownInput {
  /** The aquifer. */
  readonly aquifer: Aquifer;
  /** Steady flow while it was pumped. 0 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** How long it was pumped. 1e-3 to 1e11 s. */
  readonly pumpingTime: Duration;
  /** Time since the pump stopped. 0 to 1e11 s. */
  readonly sinceStop: Duration;
}

/**
 * Drawdown still left some time after the pump stopped.
 *
 * @remarks
 * s′ = Q / (4 π T) · (W(u) − W(u′)), u from the time since the start, u′ from the time since the stop. Never below 0.
 *
 * @param input - aquifer, flow and the two times; each field says its unit and the values it takes
 * @returns fall of the level still below static, m
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { residualDrawdown } from "risingmain/well";
 * import { gpm, hours, inFeet, inches, usGallonsPerDayPerFoot } from "risingmain/units";
 *
 * const aquifer = { transmissivity: usGallonsPerDayPerFoot(2000), storativity: 1e-4, radius: inches(3) };
 * const left = residualDrawdown({ aquifer, flow: gpm(15), pumpingTime: hours(24), sinceStop: hours(24) });
 * inFeet(left); // ≈ 0.60
 * ```
 *
 * @source theis-1935
 */
export function residualDrawdown(input: ResidualDrawdownInput): Length {
  requireObject("input", input);
  const { aquifer, flow, pumpingTime, sinceStop } = input;
  requireWithin("flow", flow, 0, 100, "m³/s");
  requireWithin("pumpingTime", pumpingTime, 1e-3, 1e11, "s");
  requireWithin("sinceStop", sinceStop, 0, 1e11, "s");
  const rest = 0 as VolumeFlow;
  const changes = [
    { time: 0 as Duration, flow },
    { time: pumpingTime, flow: rest },
  ];
  return drawdownOfSchedule({ aquifer, changes, at: (pumpingTime + sinceStop) as Duration });
}

/** A reading after the pump stopped. */
export interface RecoveryReading {
  /** Time since the pump stopped. 1e-3 to 1e11 s. */
  readonly sinceStop: Duration;
  /** Fall of the level still below static. 0 to 10 000 m. */
  readonly residual: Length;
}

/** A recovery watched with time. */
export interface RecoveryInput {
  /** Steady flow before the stop. 1e-9 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** How long the well was pumped. 1e-3 to 1e11 s. */
  readonly pumpingTime: Duration;
  /** 2 to 10 000 readings, in any order, at two or more times. */
  readonly readings: readonly RecoveryReading[];
}

/** What a recovery says. */
export type RecoveryFit =
  | {
      /** The level rises along a line. */
      readonly state: "line";
      /** Transmissivity, m²/s. */
      readonly transmissivity: Transmissivity;
      /** Its standard error as a share of it; null with two readings. */
      readonly relativeError: number | null;
      /** Residual drawdown lost in each tenfold of t/t′, m. */
      readonly residualPerLogCycle: Length;
      /**
       * t/t′ where the line meets the static level: 1 in Theis's aquifer; well above 1 the aquifer is fed, below 1 it is
       * bounded and does not come back.
       */
      readonly ratioAtZero: number;
      /** Measured less the line, in order of the input, m. */
      readonly residuals: readonly Length[];
      /** The method. */
      readonly method: "theis-1935";
    }
  | {
      /** The level does not rise along a line. */
      readonly state: "no line";
    };

/** A thousandth of a millimetre in each factor e of t/t′ is no slope. */
const LEAST_SLOPE = 1e-6;
/** ln(t/t′) beyond which the zero of the line has no meaning, and its exponential no number. */
const MOST_LOG = 690;

/**
 * Transmissivity from a recovery: residual drawdown against the logarithm of t/t′.
 *
 * @remarks
 * s′ = Q / (4 π T) · ln(t/t′), with t the time since the start and t′ since the stop, once u′ is small. Free of well
 * loss and of the jitter of a pumped level, so it is the better number from a single well.
 *
 * @param input - flow, pumping time and readings; each field says its unit and the values it takes
 * @returns transmissivity with its error and where the line meets the static level, or that there is no line
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { fitRecovery } from "risingmain/well";
 * import { cubicMetresPerHour, hours, inSquareMetresPerDay, metres, minutes } from "risingmain/units";
 *
 * const fit = fitRecovery({
 *   flow: cubicMetresPerHour(5), pumpingTime: hours(4),
 *   readings: [
 *     { sinceStop: minutes(5), residual: metres(1.0) },
 *     { sinceStop: minutes(20), residual: metres(0.66) },
 *     { sinceStop: minutes(80), residual: metres(0.36) },
 *   ],
 * });
 * fit.state === "line" ? inSquareMetresPerDay(fit.transmissivity) : 0; // ≈ 37
 * ```
 *
 * @source theis-1935
 */
export function fitRecovery(input: RecoveryInput): RecoveryFit {
  requireObject("input", input);
  const { flow, pumpingTime, readings } = input;
  requireWithin("flow", flow, 1e-9, 100, "m³/s");
  requireWithin("pumpingTime", pumpingTime, 1e-3, 1e11, "s");
  requireList("readings", readings, 2, 10_000);
  readings.forEach((reading, i) => {
    requireObject(`readings[${i}]`, reading);
    requireWithin(`readings[${i}].sinceStop`, reading.sinceStop, 1e-3, 1e11, "s");
    requireWithin(`readings[${i}].residual`, reading.residual, 0, 10_000, "m");
  });
  const ratios = readings.map(({ sinceStop }) => Math.log1p(pumpingTime / sinceStop));
  const fit = leastSquares(
    ratios.map((ratio) => [1, ratio]),
    readings.map(({ residual }) => residual),
  );
  if (fit === null) throw new InputError("readings", readings, "readings at two or more different times");
  const [height, slope] = fit.coefficients as [number, number];
  if (!(slope > LEAST_SLOPE) || !(Math.abs(height / slope) < MOST_LOG)) return { state: "no line" };
  return {
    state: "line",
    transmissivity: (flow / (4 * Math.PI * slope)) as Transmissivity,
    relativeError: fit.standardErrors && (fit.standardErrors[1] as number) / slope,
    residualPerLogCycle: (slope * Math.LN10) as Length,
    ratioAtZero: Math.exp(-height / slope),
    residuals: fit.residuals as readonly Length[],
    method: "theis-1935",
  };
}
