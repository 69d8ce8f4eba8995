/**
 * Current of a running or starting pump against what was expected.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Current, Ratio } from "../units/index.ts";
import { type Carried, carried, type TrialOptions } from "./carried.ts";
import { mainsCautions } from "./cautions.ts";
import { clearOf } from "./judge-reading.ts";
import { CLAMP_SHARE } from "./usual-doubts.ts";

/** A current read and the one expected. */
export interface CurrentTestInput extends TrialOptions {
  /** Running or starting current read, by a meter quick enough for it. 0 to 100 000 A. */
  readonly reading: Current;
  /** Current expected: of the duty, the nameplate or the locked rotor. Above 0, to 100 000 A. */
  readonly expected: Current;
  /** The most the motor may carry on: its service-factor current. Above 0, to 100 000 A; not judged where left out. */
  readonly most?: Current;
  /** Share of the expected that still counts as it. 0 to 1; 0.1 where left out (common practice). */
  readonly tolerance?: Ratio;
  /** Standard uncertainty of the reading. 0 to 100 000 A; 2 % of it where left out (common practice). */
  readonly readingUncertainty?: Current;
  /** Standard uncertainty of the current expected. 0 to 100 000 A; 0 where left out. */
  readonly expectedUncertainty?: Current;
}

/** The current judged; the uncertainty is that of `ratio`. */
export interface CurrentTest extends Carried<Ratio> {
  /** "over the motor's limit" comes before the others. */
  readonly state: "as expected" | "low" | "high" | "over the motor's limit";
  /** True where two standard uncertainties either way would not change the state. */
  readonly sure: boolean;
  /** Reading over expected. */
  readonly ratio: Ratio;
  /** Reading over the limit; null where none was given. */
  readonly limitShare: Ratio | null;
  /** What such a reading has usually meant, common practice. */
  readonly hints: readonly string[];
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

const TOLERANCE = 0.1;
const HINTS: Readonly<Record<CurrentTest["state"], readonly string[]>> = {
  "as expected": [],
  low: ["less water than expected: closed valve, plugged screen, worn pump, low level", "a broken shaft or coupling"],
  high: ["more water than expected: broken pipe", "rubbing, sand, low voltage", "wrong rotation on three phases"],
  "over the motor's limit": ["stop the pump: overload, low voltage, locked or dragging parts, failing winding"],
};

/**
 * Judges a motor's current against what was expected.
 *
 * @remarks
 * ratio = reading/expected. A submersible's current changes little with flow, so it takes a large change of flow to show.
 *
 * @param input - reading, expected and limit; each field says its unit and range
 * @returns the state, the ratios, the usual meanings and the cautions
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { currentTest } from "risingmain/field";
 * import { amperes } from "risingmain/units";
 *
 * currentTest({ reading: amperes(9.8), expected: amperes(10), most: amperes(11.5) }).state; // => "as expected"
 * ```
 *
 * @source common practice
 * @source jcgm-100, 5.1.2
 */
export function currentTest(input: CurrentTestInput): CurrentTest {
  requireObject("input", input);
  const { reading, expected, most, tolerance = TOLERANCE } = input;
  requireWithin("reading", reading, 0, 1e5, "A");
  requireWithin("expected", expected, 1e-6, 1e5, "A");
  if (most !== undefined) requireWithin("most", most, 1e-6, 1e5, "A");
  requireWithin("tolerance", tolerance, 0, 1, "(0.1 for 10 %)");
  const { readingUncertainty = CLAMP_SHARE * reading, expectedUncertainty = 0 } = input;
  requireWithin("readingUncertainty", readingUncertainty, 0, 1e5, "A");
  requireWithin("expectedUncertainty", expectedUncertainty, 0, 1e5, "A");
  const doubt = carried<Ratio>(
    [
      { name: "reading", value: reading, standardUncertainty: readingUncertainty, low: 0, high: 1e6 },
      { name: "expected", value: expected, standardUncertainty: expectedUncertainty, low: 1e-7, high: 1e6 },
    ],
    ([read = 0, planned = 1]) => read / planned,
    input,
  );
  const state = currentState(reading, expected, tolerance, most);
  return {
    state,
    sure:
      clearOf(reading / expected, [1 - tolerance, 1 + tolerance], doubt.standardUncertainty) &&
      clearOf(reading, most === undefined ? [] : [most], readingUncertainty),
    ratio: (reading / expected) as Ratio,
    limitShare: most === undefined ? null : ((reading / most) as Ratio),
    hints: HINTS[state],
    ...doubt,
    cautions: mainsCautions,
  };
}

function currentState(reading: number, expected: number, tolerance: number, most?: number): CurrentTest["state"] {
  if (most !== undefined && reading > most) return "over the motor's limit";
  if (reading > expected * (1 + tolerance)) return "high";
  return reading < expected * (1 - tolerance) ? "low" : "as expected";
}
