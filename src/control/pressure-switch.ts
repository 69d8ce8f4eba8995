/**
 * The pressure switch: where it starts and stops the pump, and whether pump, tank and parts can live with that.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { worstDemand } from "../tank/index.ts";
import {
  type Duration,
  type Frequency,
  type GaugePressure,
  InputError,
  type PressureDifference,
  type Volume,
  type VolumeFlow,
} from "../units/index.ts";
import type { ControlCondition } from "./condition.ts";

/** A pressure switch's two settings. */
export interface PressureSwitch {
  /** Gauge pressure at which it starts the pump. 0 to 100 MPa. */
  readonly cutIn: GaugePressure;
  /** Gauge pressure at which it stops the pump; above the cut-in. Up to 100 MPa. */
  readonly cutOut: GaugePressure;
}

/** A switch, and as much of what it works with as is known. What is left out is not checked. */
export interface PressureSwitchCheckInput extends PressureSwitch {
  /** Highest gauge pressure the pump makes at the switch, at no flow. 0 to 100 MPa. */
  readonly shutoffPressure?: GaugePressure;
  /** Rating of the weakest part the switch's pressure reaches. 0 to 100 MPa. */
  readonly weakestRating?: GaugePressure;
  /** Usable water of the tank between the two settings. 1e-12 to 10 000 m³. */
  readonly usable?: Volume;
  /** Flow of the pump near its cut-in. 1e-12 to 100 m³/s. */
  readonly pumpFlow?: VolumeFlow;
  /** Shortest run the motor should have; one minute if left out. 0 to one day. */
  readonly leastRunTime?: Duration;
  /** Most starts per time the motor should have. 1e-9 to 1 Hz. */
  readonly mostStarts?: Frequency;
}

/** What can be wrong with a switch's settings. */
export type PressureSwitchCode =
  | "pump cannot reach cut-out"
  | "cut-out above a rating"
  | "differential too small for the tank"
  | "starts too often";

/** What a check of a switch found. */
export interface PressureSwitchCheck {
  /** Cut-out less cut-in, Pa. */
  readonly differential: PressureDifference;
  /** The shortest run, with nothing used; only where usable water and pump flow were given. */
  readonly shortestRun?: Duration;
  /** Most starts per time, at the worst use; only where usable water and pump flow were given. */
  readonly mostStarts?: Frequency;
  /** What was found; empty where nothing was. */
  readonly conditions: readonly ControlCondition<PressureSwitchCode>[];
}

/** Shortest run of a small motor, s: one minute (`the-driller-when-the-well`). */
const LEAST_RUN_TIME = 60;

/**
 * Checks a pressure switch's settings against the pump, the tank and the weakest part.
 *
 * @remarks
 * The pump must make more than the cut-out, or it never stops. The cut-out must not pass the rating of the weakest part.
 * The tank must hold enough between the settings for a run the motor can take: run = W / Q with nothing used, and 4 W / Q
 * between starts at the worst use.
 *
 * @param input - the settings, and what is known of pump, tank and parts
 * @returns the differential, the shortest run and most starts, and the conditions found
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A 40/60 psi switch on a tank that gives 3 gal to a 10 gpm pump
 * ```ts
 * import { checkPressureSwitch } from "risingmain/control";
 * import { gpm, inPsiDifference, psi, usGallons } from "risingmain/units";
 *
 * const check = checkPressureSwitch({ cutIn: psi(40), cutOut: psi(60), usable: usGallons(3), pumpFlow: gpm(10) });
 * inPsiDifference(check.differential); // ≈ 20.0
 * check.conditions.map(({ code }) => code); // => ["differential too small for the tank"]
 * ```
 *
 * @source the-driller-when-the-well, storage paragraph: a minute's run
 * @source derived: the rest is arithmetic on the settings
 */
export function checkPressureSwitch(input: PressureSwitchCheckInput): PressureSwitchCheck {
  requirePressureSwitch(input);
  const { cutIn, cutOut, shutoffPressure, weakestRating, usable, pumpFlow, mostStarts } = input;
  const { leastRunTime = LEAST_RUN_TIME } = input;
  if (shutoffPressure !== undefined) requireWithin("shutoffPressure", shutoffPressure, 0, 1e8, "Pa gauge");
  if (weakestRating !== undefined) requireWithin("weakestRating", weakestRating, 0, 1e8, "Pa gauge");
  if (usable !== undefined) requireWithin("usable", usable, 1e-12, 1e4, "m³");
  if (pumpFlow !== undefined) requireWithin("pumpFlow", pumpFlow, 1e-12, 100, "m³/s");
  if (mostStarts !== undefined) requireWithin("mostStarts", mostStarts, 1e-9, 1, "Hz");
  requireWithin("leastRunTime", leastRunTime, 0, 86400, "s");

  const conditions: ControlCondition<PressureSwitchCode>[] = [];
  if (shutoffPressure !== undefined && !(shutoffPressure > cutOut)) {
    conditions.push({
      code: "pump cannot reach cut-out",
      severity: "problem",
      value: shutoffPressure,
      limit: cutOut,
      unit: "Pa",
      basis: "derived",
    });
  }
  if (weakestRating !== undefined && cutOut > weakestRating) {
    conditions.push({
      code: "cut-out above a rating",
      severity: "problem",
      value: cutOut,
      limit: weakestRating,
      unit: "Pa",
      basis: "derived",
    });
  }
  const differential = (cutOut - cutIn) as PressureDifference;
  if (usable === undefined || pumpFlow === undefined) return { differential, conditions };

  const shortestRun = (usable / pumpFlow) as Duration;
  const { starts } = worstDemand({ usable, pumpFlow });
  if (shortestRun < leastRunTime) {
    conditions.push({
      code: "differential too small for the tank",
      severity: "caution",
      value: shortestRun,
      limit: leastRunTime,
      unit: "s",
      basis: input.leastRunTime === undefined ? "the-driller-when-the-well" : "common practice",
    });
  }
  if (mostStarts !== undefined && starts > mostStarts) {
    conditions.push({
      code: "starts too often",
      severity: "caution",
      value: starts,
      limit: mostStarts,
      unit: "Hz",
      basis: "derived",
    });
  }
  return { differential, shortestRun, mostStarts: starts, conditions };
}

/** Refuses settings that do not open above where they close, under the names the caller's reader knows. @internal */
export function requirePressureSwitch(input: PressureSwitch, closes = "cutIn", opens = "cutOut"): void {
  requireObject("input", input);
  requireWithin(closes, input.cutIn, 0, 1e8, "Pa gauge");
  requireWithin(opens, input.cutOut, 0, 1e8, "Pa gauge");
  if (!(input.cutOut > input.cutIn)) {
    throw new InputError(opens, input.cutOut, `a gauge pressure above the ${closes} of ${input.cutIn} Pa`);
  }
}
