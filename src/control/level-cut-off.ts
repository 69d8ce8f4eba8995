/**
 * The low-level cut-off: levels at which a pump is stopped before it runs dry and may start again.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { InputError, type Length } from "../units/index.ts";
import type { ControlCondition } from "./condition.ts";

/** A low-level cut-off by depth below one datum, such as the top of the casing. */
export interface LevelCutOff {
  /** Depth of water at which the pump is stopped. 0 to 10 000 m. */
  readonly stopLevel: Length;
  /** Depth to which the water must rise before the pump may start; less than `stopLevel`. 0 to 10 000 m. */
  readonly restartLevel: Length;
}

/** Depths typed in feet differ in their last bits once subtracted, m. */
const ROUNDING = 1e-9;

/** A cut-off in a well. */
export interface LevelCutOffCheckInput extends LevelCutOff {
  /** Depth of the water at rest, at its lowest of the year. 0 to 10 000 m. */
  readonly staticLevel: Length;
  /** Depth of the pump's intake. 0 to 10 000 m. */
  readonly pumpIntake: Length;
  /** Least water over the intake while it pumps. 0 to 1000 m. */
  readonly leastSubmergence: Length;
}

/** What can be wrong with a low-level cut-off. */
export type LevelCutOffCode =
  | "intake uncovered before the stop"
  | "submergence too small at the stop"
  | "restart above the static level"
  | "stops at rest";

/** What a check of a cut-off found. */
export interface LevelCutOffCheck {
  /** Water over the intake when the pump is stopped, m; negative where it is already dry. */
  readonly submergenceAtStop: Length;
  /** Rise of the water from stop to restart, m. */
  readonly band: Length;
  /** What was found; empty where nothing was. */
  readonly conditions: readonly ControlCondition<LevelCutOffCode>[];
}

/**
 * Checks that a low-level cut-off stops the pump in time and can let it start again.
 *
 * @remarks
 * All depths run downwards from one datum. The stop must leave the least submergence over the intake; the restart
 * must lie below the static level, or the water never comes back to it.
 *
 * @param input - the two levels, the water at rest and the intake
 * @returns the submergence at the stop, the band and the conditions found
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { checkLevelCutOff } from "risingmain/control";
 * import { feet, inFeet } from "risingmain/units";
 *
 * const well = { staticLevel: feet(80), pumpIntake: feet(200), leastSubmergence: feet(10) };
 * const check = checkLevelCutOff({ ...well, stopLevel: feet(185), restartLevel: feet(120) });
 * inFeet(check.submergenceAtStop); // ≈ 15.0
 * check.conditions.length; // => 0
 * ```
 *
 * @source derived: differences of levels
 */
export function checkLevelCutOff(input: LevelCutOffCheckInput): LevelCutOffCheck {
  requireLevelCutOff("input", input);
  const { stopLevel, restartLevel, staticLevel, pumpIntake, leastSubmergence } = input;
  requireWithin("staticLevel", staticLevel, 0, 1e4, "m");
  requireWithin("pumpIntake", pumpIntake, 0, 1e4, "m");
  requireWithin("leastSubmergence", leastSubmergence, 0, 1e3, "m");

  const submergenceAtStop = pumpIntake - stopLevel;
  const conditions: ControlCondition<LevelCutOffCode>[] = [];
  const found = (code: LevelCutOffCode, value: number, limit: number): void => {
    conditions.push({ code, severity: "problem", value, limit, unit: "m", basis: "derived" });
  };
  if (submergenceAtStop <= 0) found("intake uncovered before the stop", submergenceAtStop, 0);
  else if (submergenceAtStop < leastSubmergence - ROUNDING) {
    found("submergence too small at the stop", submergenceAtStop, leastSubmergence);
  }
  if (stopLevel <= staticLevel) found("stops at rest", stopLevel, staticLevel);
  else if (restartLevel <= staticLevel) found("restart above the static level", restartLevel, staticLevel);
  return { submergenceAtStop: submergenceAtStop as Length, band: (stopLevel - restartLevel) as Length, conditions };
}

/** Refuses levels that do not stop below where they start. @internal */
export function requireLevelCutOff(parameter: string, levels: LevelCutOff): void {
  requireObject(parameter, levels);
  const path = parameter === "input" ? "" : `${parameter}.`;
  requireWithin(`${path}stopLevel`, levels.stopLevel, 0, 1e4, "m");
  requireWithin(`${path}restartLevel`, levels.restartLevel, 0, 1e4, "m");
  if (!(levels.restartLevel < levels.stopLevel)) {
    throw new InputError(
      `${path}restartLevel`,
      levels.restartLevel,
      `a depth less than the stop at ${levels.stopLevel} m`,
    );
  }
}
