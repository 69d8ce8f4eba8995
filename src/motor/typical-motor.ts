/**
 * What to assume of a two-pole pump motor of which only the power is known.
 *
 * @module
 */
import { requireObject, requireOneOf, requirePositive } from "../numeric/index.ts";
import { inHorsepower, type Power, type Ratio } from "../units/index.ts";
import type { CodeLetter } from "./code-letters.ts";
import { MOTOR_SYSTEMS, type MotorSystem } from "./full-load-current.ts";
import { capacitorMotorEfficiency, enclosedMotorEfficiency, type LeastEfficiencyRow } from "./least-efficiency.ts";

/** Running power factor, lagging; textbook motors lie from 0.77 to 0.85, and 0.8 is the default of one design manual. */
const RUNNING_POWER_FACTOR = 0.8;
/** Power factor standing still: 0.53 in a textbook circuit, 0.35 in a design handbook; half is the usual estimate. */
const LOCKED_ROTOR_POWER_FACTOR = 0.5;
/** Usual code letter of standard three-phase motors, from this many horsepower up. */
const THREE_PHASE_LETTERS: readonly (readonly [from: number, letter: CodeLetter])[] = [
  [15, "G"],
  [7.5, "H"],
  [5, "J"],
  [3, "K"],
  [0, "L"],
];
/** Single-phase pump motors with capacitors: common practice, no source. */
const SINGLE_PHASE_LETTER: CodeLetter = "K";

/** A motor of which only the power is known. */
export interface TypicalMotorInput {
  /** Rated power. Above 0, at most 1 MW. */
  readonly power: Power;
  /** Phases of the supply. */
  readonly system: MotorSystem;
}

/** Assumptions, to be replaced by nameplate values as soon as there is a nameplate. */
export interface TypicalMotor {
  /** Full-load efficiency. */
  readonly efficiency: Ratio;
  /** Running power factor, lagging. */
  readonly powerFactor: Ratio;
  /** Power factor standing still, lagging. */
  readonly lockedRotorPowerFactor: Ratio;
  /** Locked-rotor code letter. */
  readonly codeLetter: CodeLetter;
  /** Electric input at full load, W. */
  readonly inputPower: Power;
  /** False where the efficiency table does not reach to the power. */
  readonly insideRange: boolean;
  /** The efficiency is published; the power factors and the single-phase code letter are common practice. */
  readonly method: "cfr-10-431-446" | "cfr-10-431-25";
}

/**
 * Efficiency, power factors and code letter to assume for a pump motor of which only the power is known.
 *
 * @remarks
 * Efficiency is the least that the law allows a two-pole, general-purpose motor of the next listed power; submersible motors
 * are usually a few points lower. Power factors 0.8 running and 0.5 standing still. Code letter K single-phase, L to G by
 * power in three-phase. Read the nameplate and use its values instead.
 *
 * @param input - power and phases
 * @returns the assumptions
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { typicalMotor } from "risingmain/motor";
 * import { horsepower } from "risingmain/units";
 *
 * const motor = typicalMotor({ power: horsepower(1.5), system: "single-phase" });
 * motor.efficiency; // ≈ 0.815
 * motor.codeLetter; // => "K"
 * ```
 *
 * @source cfr-10-431-446, (a): single-phase efficiency
 * @source cfr-10-431-25, (a): three-phase efficiency
 * @source ufc-3-520-01: power factor 0.8
 * @source common practice
 */
export function typicalMotor(input: TypicalMotorInput): TypicalMotor {
  requireObject("input", input);
  const { power, system } = input;
  requirePositive("power", power, 1e6, "W");
  requireOneOf("system", system, MOTOR_SYSTEMS);
  const single = system === "single-phase";
  const rows = single ? capacitorMotorEfficiency : enclosedMotorEfficiency;
  const needed = inHorsepower(power) / 1.001;
  const row = rows.find(({ horsepower }) => horsepower >= needed);
  // Beyond the table's end its last row still serves as a careful guess, and is marked.
  const { twoPole } = (row ?? rows.at(-1)) as LeastEfficiencyRow;
  const efficiency = (twoPole as number) / 100;
  const most = inHorsepower(power) * 1.001;
  const [, letter] = THREE_PHASE_LETTERS.find(([from]) => most >= from) as readonly [number, CodeLetter];
  return {
    efficiency: efficiency as Ratio,
    powerFactor: RUNNING_POWER_FACTOR as Ratio,
    lockedRotorPowerFactor: LOCKED_ROTOR_POWER_FACTOR as Ratio,
    codeLetter: single ? SINGLE_PHASE_LETTER : letter,
    inputPower: (power / efficiency) as Power,
    insideRange: row !== undefined,
    method: single ? "cfr-10-431-446" : "cfr-10-431-25",
  };
}
