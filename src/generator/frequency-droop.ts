/**
 * Frequency of a generator under load: a mechanical governor lets the engine slow down a little.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Frequency, Ratio } from "../units/index.ts";

/** Droop of small sets with a mechanical governor; electronic ones hold zero: common practice. */
const USUAL_DROOP = 0.05;

/** A generator and its load. */
export interface FrequencyUnderLoadInput {
  /** Frequency with the full rated load. 10 to 400 Hz. */
  readonly ratedFrequency: Frequency;
  /** Load as a share of the rated power. 0 to 1.5. */
  readonly loadShare: Ratio;
  /** Droop: rise from full load to none, as a share of the rated frequency; 0.05 where left out. 0 to 0.2. */
  readonly droop?: Ratio;
}

/**
 * Frequency of a generator at a share of its load.
 *
 * @remarks
 * f = f_rated (1 + droop · (1 − load share)). With 5 % a 60 Hz set reads 63 Hz with nothing on. A pump on it turns in
 * proportion, and gives head with the square of that.
 *
 * @param input - rated frequency, load and droop
 * @returns the frequency, Hz
 * @throws InputError naming the first field that is not in its range
 *
 * @example A quarter of the load on
 * ```ts
 * import { frequencyUnderLoad } from "risingmain/generator";
 * import { hertz, ratio } from "risingmain/units";
 *
 * frequencyUnderLoad({ ratedFrequency: hertz(60), loadShare: ratio(0.25) }); // ≈ 62.25
 * ```
 *
 * @source derived: straight line of a droop governor
 */
export function frequencyUnderLoad(input: FrequencyUnderLoadInput): Frequency {
  requireObject("input", input);
  const { ratedFrequency, loadShare, droop = USUAL_DROOP } = input;
  requireWithin("ratedFrequency", ratedFrequency, 10, 400, "Hz");
  requireWithin("loadShare", loadShare, 0, 1.5, "as a ratio");
  requireWithin("droop", droop, 0, 0.2, "as a ratio");
  return (ratedFrequency * (1 + droop * (1 - loadShare))) as Frequency;
}
