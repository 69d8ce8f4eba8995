/**
 * The pair of sizes over two runs in series that needs the least metal for one drop limit.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import {
  type Area,
  type Current,
  InputError,
  type Length,
  type Ratio,
  type ResistancePerLength,
  type Volume,
} from "../units/index.ts";
import { type CircuitSegment, conductorCount } from "./circuit.ts";
import type { ConductorChoice } from "./conductor-choices.ts";
import { readChoices } from "./smallest-conductor.ts";
import { type VoltageDrop, type VoltageDropInput, voltageDrop } from "./voltage-drop.ts";

/** One run of the pair. */
export interface LeastMetalRun {
  /** One-way length. 0 to 100 000 m. */
  readonly length: Length;
  /** Sizes on offer, thin to thick, each with its area. 1 to 100. */
  readonly choices: readonly ConductorChoice[];
  /** Least ampacity; the current itself where left out. 0 to 100 000 A. */
  readonly ampacityNeeded?: Current;
}

/** Two runs in series, such as service to wellhead and wellhead to motor. */
export interface LeastMetalInput extends Omit<VoltageDropInput, "segments"> {
  /** The two runs, in order from the source. */
  readonly runs: readonly [LeastMetalRun, LeastMetalRun];
  /** Greatest drop over both as a share of the nominal voltage. Above 0, below 1. */
  readonly dropLimit: Ratio;
}

/** The pair, or that there is none. */
export type LeastMetal =
  | {
      /** A pair keeps the limit. */
      readonly state: "found";
      /** The size for each run. */
      readonly choices: readonly [ConductorChoice, ConductorChoice];
      /** Metal in all conductors of both runs, m³. */
      readonly metal: Volume;
      /** The circuit with them. */
      readonly drop: VoltageDrop;
    }
  | {
      /** No pair on offer keeps the limit. */
      readonly state: "none thick enough";
      /** The circuit with the thickest sizes. */
      readonly drop: VoltageDrop;
    };

/**
 * The sizes for two runs in series that keep one drop limit with the least metal.
 *
 * @remarks
 * Every pair on offer is tried with {@link voltageDrop}; among those that pass, the one with the smallest sum of area times
 * length wins, the lower drop where two are equal. Without steps between sizes the answer would be one size throughout;
 * with them, and with different sizes on offer in the well, it often is not.
 *
 * @param input - runs, load and limit; each field says its unit and the values it takes
 * @returns the pair, or `"none thick enough"`
 * @throws InputError naming the first field that is not in its range
 *
 * @example 150 ft to the wellhead, 300 ft down the well, 10 A, 6 %
 * ```ts
 * import { conductorChoices, leastMetal } from "risingmain/conductor";
 * import { amperes, feet, percent, ratio, volts } from "risingmain/units";
 *
 * const choices = conductorChoices({ insulation: "75 °C" });
 * const pair = leastMetal({
 *   system: "single-phase", sourceVoltage: volts(230), current: amperes(10), powerFactor: ratio(1), dropLimit: percent(6),
 *   runs: [{ length: feet(150), choices }, { length: feet(300), choices }],
 * });
 * if (pair.state !== "found") throw new Error(pair.state);
 * pair.choices.map(({ size }) => size); // => ["12 AWG", "10 AWG"]
 * ```
 *
 * @source derived: search over every pair
 */
export function leastMetal(input: LeastMetalInput): LeastMetal {
  requireObject("input", input);
  const { runs, dropLimit, system, current } = input;
  requireList("runs", runs, 2, 2);
  if (!(typeof dropLimit === "number" && dropLimit > 0 && dropLimit < 1)) {
    throw new InputError("dropLimit", dropLimit, "a share above 0 and below 1, such as 0.05 for 5 %");
  }
  const [first, second] = runs.map((run, i) => readLeastMetalRun(run, i, current)) as [Offer, Offer];
  const pairs = first.able.flatMap((one) => second.able.map((other) => [one, other] as const));
  const thickest = [first.thickest, second.thickest] as const;
  let best: Extract<LeastMetal, { state: "found" }> | undefined;
  const tryPair = (pair: readonly [ConductorChoice, ConductorChoice]): VoltageDrop =>
    voltageDrop({ ...input, segments: [segment(first.length, pair[0]), segment(second.length, pair[1])] });
  const last = tryPair(thickest);
  for (const pair of pairs) {
    const drop = tryPair(pair);
    if (drop.state === "collapsed" || drop.share > dropLimit) continue;
    const sections = [first.length * area(pair[0]), second.length * area(pair[1])];
    const metal = conductorCount(system) * ((sections[0] as number) + (sections[1] as number));
    const better =
      best === undefined ||
      metal < best.metal ||
      (metal === best.metal && best.drop.state === "carried" && drop.drop < best.drop.drop);
    if (better) best = { state: "found", choices: pair, metal: metal as Volume, drop };
  }
  return best ?? { state: "none thick enough", drop: last };
}

interface Offer {
  readonly length: Length;
  readonly able: readonly ConductorChoice[];
  readonly thickest: ConductorChoice;
}

function readLeastMetalRun(run: LeastMetalRun, i: number, current: Current): Offer {
  requireObject(`runs[${i}]`, run);
  requireWithin(`runs[${i}].length`, run.length, 0, 1e5, "m");
  const { ampacityNeeded = current } = run;
  requireWithin(`runs[${i}].ampacityNeeded`, ampacityNeeded, 0, 1e5, "A");
  const choices = readChoices(run.choices, `runs[${i}].choices`);
  for (const [j, choice] of choices.entries()) {
    requireWithin(`runs[${i}].choices[${j}].area`, choice.area, 1e-9, 0.1, "m²");
  }
  return {
    length: run.length,
    able: choices.filter(({ ampacity }) => ampacity === undefined || ampacity >= ampacityNeeded),
    thickest: choices[choices.length - 1] as ConductorChoice,
  };
}

function area(choice: ConductorChoice): Area {
  return choice.area as Area;
}

function segment(
  length: Length,
  { resistance, reactance = 0 as ResistancePerLength }: ConductorChoice,
): CircuitSegment {
  return { length, resistance, reactance };
}
