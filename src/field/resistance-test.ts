/**
 * Ohmmeter and insulation tester on a motor, with their doubt and their cautions.
 *
 * @module
 */
import {
  type InsulationReading,
  type InsulationReadingInput,
  insulationReading,
  type WindingReading,
  type WindingReadingInput,
  windingReading,
} from "../motor/index.ts";
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Resistance, Temperature, TemperatureDifference } from "../units/index.ts";
import { type Carried, carried, type TrialOptions } from "./carried.ts";
import { mainsCautions } from "./cautions.ts";
import { clearOf } from "./judge-reading.ts";
import { MEGOHMMETER_SHARE, OHMMETER_SHARE, WINDING_TEMPERATURE } from "./usual-doubts.ts";

/** What both tests say beside the reading itself. */
export interface ResistanceJudged extends Carried<Resistance> {
  /** True where two standard uncertainties either way would not change the state. */
  readonly sure: boolean;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

/** A winding read through its cable. */
export interface WindingTestInput extends WindingReadingInput, TrialOptions {
  /** Standard uncertainty of the reading. 0 to 10 000 Ω; 1 % of it where left out (common practice). */
  readonly readingUncertainty?: Resistance;
  /** Standard uncertainty of the cable's resistance. 0 to 1000 Ω; 1 % of it where left out (common practice). */
  readonly cableUncertainty?: Resistance;
  /** Standard uncertainty of the winding's temperature. 0 to 50 K; 2 K where left out (common practice). */
  readonly temperatureUncertainty?: TemperatureDifference;
}

/** The winding judged; the uncertainty is that of `winding`. */
export type WindingTest = WindingReading & ResistanceJudged;

/** A winding is taken as open at this many times the expected resistance, as in `windingReading`. */
const OPEN = 10;
/** The temperatures that copper's line is accepted at, K. */
const COLDEST = 200;
const HOTTEST = 600;

/**
 * Judges a winding's resistance read at the surface, with its uncertainty.
 *
 * @remarks
 * `windingReading` of `risingmain/motor`, whose reading, cable and temperature carry their doubts. Five kelvins are 2 % of copper,
 * and a long cable is often more than the winding: its doubt is then most of it.
 *
 * @param input - reading, data and uncertainties; each field says its unit and range
 * @returns the winding's resistance, the verdict, whether it is sure, and the cautions
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { windingTest } from "risingmain/field";
 * import { celsius, ohms } from "risingmain/units";
 *
 * const read = windingTest({
 *   reading: ohms(3.1), cable: ohms(0.94), temperature: celsius(10), expected: ohms(2.2),
 * });
 * read.state; // => "as expected"
 * read.standardUncertainty; // ≈ 0.038
 * read.sure; // => true
 * ```
 *
 * @source common practice
 * @source jcgm-100, 5.1.2
 */
export function windingTest(input: WindingTestInput): WindingTest {
  const read = windingReading(input);
  const { reading, cable = 0, temperature, expected, tolerance = USUAL_TOLERANCE } = input;
  const { readingUncertainty = OHMMETER_SHARE * reading, cableUncertainty = OHMMETER_SHARE * cable } = input;
  const { temperatureUncertainty = WINDING_TEMPERATURE } = input;
  requireWithin("readingUncertainty", readingUncertainty, 0, 1e4, "Ω");
  requireWithin("cableUncertainty", cableUncertainty, 0, 1000, "Ω");
  requireWithin("temperatureUncertainty", temperatureUncertainty, 0, 50, "K");
  const doubt = carried<Resistance>(
    [
      { name: "reading", value: reading, standardUncertainty: readingUncertainty, low: 0, high: 1e4 },
      { name: "cable", value: cable, standardUncertainty: cableUncertainty, low: 0, high: 1000 },
      {
        name: "temperature",
        value: temperature,
        standardUncertainty: temperatureUncertainty,
        low: COLDEST,
        high: HOTTEST,
      },
    ],
    ([ohms = 0, lead = 0, kelvins = 0]) =>
      windingReading({
        ...input,
        reading: ohms as Resistance,
        cable: lead as Resistance,
        temperature: kelvins as Temperature,
      }).winding,
    input,
  );
  const edges = [expected * (1 - tolerance), expected * (1 + tolerance), expected * OPEN];
  return {
    ...read,
    ...doubt,
    sure: clearOf(read.winding, edges, doubt.standardUncertainty),
    cautions: mainsCautions,
  };
}

/** The tolerance where none is given, as in `windingReading`. Common practice. */
const USUAL_TOLERANCE = 0.1;

/** An insulation tester's reading. */
export interface InsulationTestInput extends InsulationReadingInput, TrialOptions {
  /** Standard uncertainty of the reading. 0 to 1e15 Ω; 5 % of it where left out (common practice). */
  readonly readingUncertainty?: Resistance;
  /** Standard uncertainty of the winding's temperature. 0 to 50 K; 2 K where left out (common practice). */
  readonly temperatureUncertainty?: TemperatureDifference;
}

/** The insulation judged; the uncertainty is that of `at40`. */
export type InsulationTest = InsulationReading & ResistanceJudged;

/**
 * Judges a motor's insulation resistance, with its uncertainty.
 *
 * @remarks
 * `insulationReading` of `risingmain/motor`, whose reading and temperature carry their doubts. The rule of halving each 10 K turns
 * 2 K into 14 %, most of the doubt.
 *
 * @param input - reading, motor and uncertainties; each field says its unit and range
 * @returns the corrected reading, the minima, the verdict, whether it is sure, and the cautions
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { insulationTest } from "risingmain/field";
 * import { celsius, inMegohms, megohms, volts } from "risingmain/units";
 *
 * const motor = insulationTest({ reading: megohms(24), temperature: celsius(20), ratedVoltage: volts(230) });
 * motor.state; // => "good"
 * inMegohms(motor.at40); // ≈ 6
 * inMegohms(motor.standardUncertainty); // ≈ 0.88
 * motor.sure; // => false
 * ```
 *
 * @source ieee-43, minima, test voltage and temperature correction
 * @source jcgm-100, 5.1.2
 */
export function insulationTest(input: InsulationTestInput): InsulationTest {
  requireObject("input", input);
  const read = insulationReading(input);
  const { reading, temperature } = input;
  const { readingUncertainty = MEGOHMMETER_SHARE * reading, temperatureUncertainty = WINDING_TEMPERATURE } = input;
  requireWithin("readingUncertainty", readingUncertainty, 0, 1e15, "Ω");
  requireWithin("temperatureUncertainty", temperatureUncertainty, 0, 50, "K");
  const doubt = carried<Resistance>(
    [
      { name: "reading", value: reading, standardUncertainty: readingUncertainty, low: 0, high: 1e15 },
      {
        name: "temperature",
        value: temperature,
        standardUncertainty: temperatureUncertainty,
        low: 233.15,
        high: 433.15,
      },
    ],
    ([ohms = 0, kelvins = 0]) =>
      insulationReading({ ...input, reading: ohms as Resistance, temperature: kelvins as Temperature }).at40,
    input,
  );
  return {
    ...read,
    ...doubt,
    sure: clearOf(read.at40, [read.minimum, Math.min(read.minimum, read.olderMinimum)], doubt.standardUncertainty),
    cautions: mainsCautions,
  };
}
