/**
 * How often to fill a bucket for a wanted accuracy.
 *
 * @module
 */
import { requireObject, requirePositive, requireWithin } from "../numeric/index.ts";
import type { Duration, Ratio, Volume, VolumeFlow } from "../units/index.ts";
import { requireBucket } from "./bucket.ts";
import { PAIL_SHARE, THUMB } from "./usual-doubts.ts";

/** What an accuracy is wanted of. */
export interface BucketRunsInput {
  /** Volume to the mark. Above 0, to 1000 m³. */
  readonly volume: Volume;
  /** Flow expected. 1e-9 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Relative standard uncertainty wanted of the mean: 0.02 for 2 %. 1e-6 to 0.5. */
  readonly wanted: Ratio;
  /** Standard uncertainty of the volume to the mark. 0 to half the volume; 2 % of it where left out (common practice). */
  readonly volumeUncertainty?: Volume;
  /** Standard uncertainty of one timing. 0 to 3600 s; 0.5 s where left out (common practice). */
  readonly timeUncertainty?: Duration;
}

/** How often to fill the bucket, or why filling it again will not help. */
export type BucketRuns =
  | {
      /** The accuracy can be had. */
      readonly state: "enough";
      /** Number of runs, 1 or more. */
      readonly runs: number;
    }
  | {
      /** The mark on the bucket alone is worse than the accuracy wanted: measure its volume better, by weight. */
      readonly state: "volume too uncertain";
      /** Relative standard uncertainty that endless runs would come down to. */
      readonly limit: Ratio;
    };

/**
 * How many runs a bucket test needs for a wanted accuracy.
 *
 * @remarks
 * n = ⌈(u(t)/t)² / (w² − (u_V/V)²)⌉ with w `wanted`, t = V/q; symbols as in `bucketFlow`. The uncertainty of the
 * volume is common to all runs and is a floor.
 *
 * @param input - the bucket, the flow expected and the accuracy wanted; each field says its unit and range
 * @returns the number of runs, or the floor that no number of runs comes under
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example 2.5 % at about 17 gpm in a five gallon bucket, then 1 %
 * ```ts
 * import { bucketRuns } from "risingmain/field";
 * import { gpm, percent, usGallons } from "risingmain/units";
 *
 * const hose = { volume: usGallons(5), flow: gpm(17) };
 * bucketRuns({ ...hose, wanted: percent(2.5) }); // => { state: "enough", runs: 4 }
 * bucketRuns({ ...hose, wanted: percent(1) }).state; // => "volume too uncertain"
 * ```
 *
 * @source jcgm-100, 5.1.2 and 4.2.3
 */
export function bucketRuns(input: BucketRunsInput): BucketRuns {
  requireObject("input", input);
  const { volume: V, flow, wanted } = input;
  requireBucket(V);
  requireWithin("flow", flow, 1e-9, 1000, "m³/s");
  requireWithin("wanted", wanted, 1e-6, 0.5, "(0.02 for 2 %)");
  const { volumeUncertainty: uV = V * PAIL_SHARE, timeUncertainty: ut = THUMB } = input;
  requireWithin("volumeUncertainty", uV, 0, V / 2, "m³ (half the volume)");
  requireWithin("timeUncertainty", ut, 0, 3600, "s");
  const floor = uV / V;
  const room = wanted ** 2 - floor ** 2;
  if (!(room > 0)) return { state: "volume too uncertain", limit: floor as Ratio };
  const one = (ut * flow) / V;
  requirePositive("runs needed (timeUncertainty × flow / volume)", one ** 2 / room + Number.MIN_VALUE, 1e9, "");
  return { state: "enough", runs: Math.max(1, Math.ceil(one ** 2 / room)) };
}
