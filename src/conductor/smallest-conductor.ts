/**
 * The thinnest conductor that keeps both the drop and the temperature of a run in bounds.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import {
  type Current,
  InputError,
  type Length,
  type Ratio,
  type ResistancePerLength,
  type Voltage,
} from "../units/index.ts";
import type { CircuitSegment } from "./circuit.ts";
import type { ConductorChoice } from "./conductor-choices.ts";
import { lockedRotorDrop } from "./locked-rotor-drop.ts";
import { type VoltageDrop, type VoltageDropInput, voltageDrop } from "./voltage-drop.ts";

/** A run to be sized, and what must be kept. */
export interface SmallestConductorInput extends Omit<VoltageDropInput, "segments"> {
  /** One-way length of the run to be sized. 0 to 100 000 m. */
  readonly length: Length;
  /** Sizes on offer, thin to thick, for instance from {@link conductorChoices}. 1 to 100. */
  readonly choices: readonly ConductorChoice[];
  /** Greatest drop from source to load as a share of the nominal voltage. Above 0, below 1. */
  readonly dropLimit: Ratio;
  /** Least ampacity, such as 125 % of a motor's current; the current itself where left out. 0 to 100 000 A. */
  readonly ampacityNeeded?: Current;
  /** Segments of the circuit that are already settled; they take their part of the drop. 0 to 999. */
  readonly settled?: readonly CircuitSegment[];
  /** A motor that must start at the end of the run; no check of the start where left out. */
  readonly start?: ConductorStart;
}

/** The start of a motor, as a limit on the conductors. */
export interface ConductorStart {
  /** Line current of the motor standing still at its rated voltage. 0.01 to 10 000 A. */
  readonly lockedRotorCurrent: Current;
  /** Power factor of the motor standing still, lagging. 0 to 1. */
  readonly lockedRotorPowerFactor: Ratio;
  /** Rated voltage of the motor. 0.1 to 1000 V. */
  readonly ratedVoltage: Voltage;
  /** Least voltage at the motor in the first moment, as a share of its rated voltage. 0.1 to 1. */
  readonly leastVoltage: Ratio;
}

/** What a size can fail by. */
export type ConductorLimit = "voltage drop" | "starting voltage" | "ampacity";

/** A size was found. */
export interface ConductorFound {
  /** A size on offer keeps every limit. */
  readonly state: "found";
  /** The size. */
  readonly choice: ConductorChoice;
  /** What asked for it: the next thinner size fails by this, or there is no thinner one on offer. */
  readonly governedBy: ConductorLimit | "thinnest on offer";
  /** The whole circuit with it; the run that was sized is its last segment. */
  readonly drop: VoltageDrop;
}

/** No size on offer will do. */
export interface ConductorNotFound {
  /** Not even the thickest size on offer keeps every limit. */
  readonly state: "none thick enough";
  /** What the thickest size fails by. */
  readonly governedBy: ConductorLimit;
  /** The thickest size. */
  readonly choice: ConductorChoice;
  /** The whole circuit with the thickest size. */
  readonly drop: VoltageDrop;
}

/**
 * The thinnest conductor on offer that keeps the drop within a limit and can carry the current.
 *
 * @remarks
 * Sizes are tried from thin to thick; each must pass {@link voltageDrop}, the start where one is given
 * ({@link lockedRotorDrop}), and the ampacity asked for. 3 % on a branch
 * circuit and 5 % in all are recommendations of the code, not limits. Where the first segment is fixed, pass it as `settled`.
 *
 * @param input - the run, the limits and the sizes; each field says its unit and the values it takes
 * @returns the size and what governed it, or `"none thick enough"` with what the thickest one does
 * @throws InputError naming the first field that is not in its range, or choices that are not in order of resistance
 *
 * @example A 1-1/2 hp, 230 V motor 450 ft away
 * ```ts
 * import { conductorChoices, smallestConductor } from "risingmain/conductor";
 * import { amperes, feet, percent, ratio, volts } from "risingmain/units";
 *
 * const run = smallestConductor({
 *   system: "single-phase", sourceVoltage: volts(230), current: amperes(10), powerFactor: ratio(0.85), length: feet(450),
 *   dropLimit: percent(5), ampacityNeeded: amperes(12.5), choices: conductorChoices({ insulation: "75 °C" }),
 * });
 * run.choice.size; // => "10 AWG"
 * run.governedBy; // => "voltage drop"
 * ```
 *
 * @source nfpa-70, 210.19(A) and 215.2 informational notes: 3 % and 5 %
 */
export function smallestConductor(input: SmallestConductorInput): ConductorFound | ConductorNotFound {
  requireObject("input", input);
  const { choices, length, dropLimit, settled = [], ampacityNeeded = input.current, start } = input;
  requireWithin("length", length, 0, 1e5, "m");
  if (!(typeof dropLimit === "number" && dropLimit > 0 && dropLimit < 1)) {
    throw new InputError("dropLimit", dropLimit, "a share above 0 and below 1, such as 0.05 for 5 %");
  }
  requireList("settled", settled, 0, 999);
  requireWithin("ampacityNeeded", ampacityNeeded, 0, 1e5, "A");
  if (start !== undefined) {
    requireObject("start", start);
    requireWithin("start.leastVoltage", start.leastVoltage, 0.1, 1, "as a ratio");
  }
  const offered = readChoices(choices);

  const tried = offered.map((choice) => {
    const { resistance, reactance = 0 as ResistancePerLength } = choice;
    const segments = [...settled, { length, resistance, reactance }];
    const drop = voltageDrop({ ...input, segments });
    return { choice, drop, fails: firstFailure() };

    function firstFailure(): ConductorLimit | undefined {
      if (!(drop.state === "carried" && drop.share <= dropLimit)) return "voltage drop";
      if (start !== undefined && startingShare(input, start, segments) < start.leastVoltage) return "starting voltage";
      return (choice.ampacity ?? Infinity) < ampacityNeeded ? "ampacity" : undefined;
    }
  });
  const at = tried.findIndex(({ fails }) => fails === undefined);
  const chosen = tried[at];
  if (chosen !== undefined) {
    const governedBy = tried[at - 1]?.fails ?? "thinnest on offer";
    return { state: "found", choice: chosen.choice, governedBy, drop: chosen.drop };
  }
  // readChoices refuses an empty list, and each size has failed by something.
  const { choice, drop, fails } = tried[tried.length - 1] as (typeof tried)[number];
  return { state: "none thick enough", governedBy: fails as ConductorLimit, choice, drop };
}

/** Voltage at the motor in the first moment of its start, as a share of its rated voltage. */
function startingShare(
  input: SmallestConductorInput,
  start: ConductorStart,
  segments: readonly CircuitSegment[],
): number {
  const { system } = input;
  if (system === "direct current") throw new InputError("start", start, "nothing for direct current");
  const { motorVoltage } = lockedRotorDrop({ ...input, ...start, system, segments });
  return motorVoltage / start.ratedVoltage;
}

/** Checks the sizes on offer. Private to the library. */
export function readChoices(choices: readonly ConductorChoice[], parameter = "choices"): readonly ConductorChoice[] {
  requireList(parameter, choices, 1, 100);
  let thinner = Infinity;
  return Array.from(choices, (choice, i) => {
    const at = `${parameter}[${i}]`;
    requireObject(at, choice);
    if (typeof choice.size !== "string") throw new InputError(`${at}.size`, choice.size, "the name of a size");
    requireWithin(`${at}.resistance`, choice.resistance, 0, 10, "Ω/m");
    if (choice.resistance > thinner)
      throw new InputError(`${at}.resistance`, choice.resistance, "sizes from thin to thick");
    thinner = choice.resistance;
    if (choice.reactance !== undefined) requireWithin(`${at}.reactance`, choice.reactance, 0, 10, "Ω/m");
    if (choice.ampacity !== undefined) requireWithin(`${at}.ampacity`, choice.ampacity, 0, 1e5, "A");
    return choice;
  });
}
