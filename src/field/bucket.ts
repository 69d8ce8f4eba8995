/**
 * Bucket and stopwatch: the flow of a hose or pipe from the time it takes to fill a bucket, and how far to trust it.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Ratio, Volume, VolumeFlow } from "../units/index.ts";
import { type Carried, carried, type TrialOptions } from "./carried.ts";
import { PAIL_SHARE, THUMB } from "./usual-doubts.ts";

/** Coverage factor for about 95 % (`jcgm-100`, 6.3.3). */
const COVERAGE = 2;

/** A bucket filled once or more. */
export interface BucketInput extends TrialOptions {
  /** Volume to the mark. Above 0, to 1000 m³. */
  readonly volume: Volume;
  /** Seconds to fill it, one for each run; 1 to 1000 runs, each above 0.01 s, to 1 000 000 s. */
  readonly times: readonly Duration[];
  /** Standard uncertainty of the volume to the mark; the same error in every run. 0 to half the volume; 2 % of the
   * volume where left out (common practice). */
  readonly volumeUncertainty?: Volume;
  /** Standard uncertainty of one timing, thumb included. 0 to half the shortest time; 0.5 s, or that half if less, where
   * left out (common practice). */
  readonly timeUncertainty?: Duration;
}

/** The flow read, with its uncertainty taken apart. */
export interface BucketFlow extends Carried<VolumeFlow> {
  /** Mean of the flows of the runs, m³/s. */
  readonly flow: VolumeFlow;
  /** The flow of each run, m³/s. */
  readonly runs: readonly VolumeFlow[];
  /** Expanded uncertainty, coverage factor 2, about 95 %, m³/s. */
  readonly expandedUncertainty: VolumeFlow;
  /** Combined standard uncertainty over the flow. */
  readonly relativeUncertainty: Ratio;
  /** Standard uncertainty that comes from the bucket's mark, m³/s. */
  readonly fromVolume: VolumeFlow;
  /** Standard uncertainty that comes from the timing, m³/s: the thumb, or the scatter of the runs where that is more. */
  readonly fromTiming: VolumeFlow;
  /** Share of the variance that is the timing: 1 where the thumb on the watch is all of it. */
  readonly timingShare: Ratio;
  /** Source of the method. */
  readonly method: "jcgm-100";
}

/**
 * The flow that fills a bucket, with its standard uncertainty.
 *
 * @remarks
 * q = V / t for each run, then the mean. By the law of propagation,
 * u²(q) = (q u_V / V)² + u_t²,  u_t = max(q u(t) / (t √n), s / √n)
 *
 * with u_V `volumeUncertainty` (common to all runs, so that repeating does not shrink it), u(t) `timeUncertainty`, t the
 * mean time, n the number of runs and s the standard deviation of the n flows. The larger of the thumb and the scatter
 * counts, lest two runs that happen to agree look like certainty. First-order; holds while u is well under the reading.
 * One filling that lasts 10 s has 5 % from the thumb alone, so use a bigger vessel for a bigger flow.
 *
 * @param input - the bucket and the times; each field says its unit and range
 * @returns the flow, its uncertainty, and how much of it is the timing
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example Five gallons in 18 s
 * ```ts
 * import { bucketFlow } from "risingmain/field";
 * import { inGpm, seconds, usGallons } from "risingmain/units";
 *
 * const hose = bucketFlow({ volume: usGallons(5), times: [seconds(18)] });
 * inGpm(hose.flow); // ≈ 16.67
 * inGpm(hose.standardUncertainty); // ≈ 0.57
 * hose.timingShare; // ≈ 0.66
 * ```
 *
 * @source jcgm-100, 5.1.2 (independent inputs) and 4.2 (repeated readings)
 */
export function bucketFlow(input: BucketInput): BucketFlow {
  requireObject("input", input);
  const { volume: V, times } = input;
  requireBucket(V);
  requireList("times", times, 1, 1000);
  times.forEach((time, i) => {
    requireWithin(`times[${i}]`, time, 0.01, 1e6, "s");
  });
  const shortest = times.reduce<number>((least, time) => Math.min(least, time), times[0] as number);
  const { volumeUncertainty: uV = V * PAIL_SHARE, timeUncertainty: ut = Math.min(THUMB, shortest / 2) } = input;
  requireWithin("volumeUncertainty", uV, 0, V / 2, "m³ (half the volume)");
  requireWithin("timeUncertainty", ut, 0, shortest / 2, "s (half the shortest time)");

  const n = times.length;
  const runs = times.map((time) => V / time);
  const flow = runs.reduce((sum, q) => sum + q, 0) / n;
  const meanTime = times.reduce<number>((sum, time) => sum + time, 0) / n;
  const scatter = n > 1 ? Math.sqrt(runs.reduce((sum, q) => sum + (q - flow) ** 2, 0) / (n - 1)) : 0;
  // The mean flow is that of one filling in this time, whose doubt is the thumb's or that of the scatter.
  const time = V / flow;
  const timing = (time * Math.max(ut / meanTime, scatter / flow)) / Math.sqrt(n);
  const doubt = carried<VolumeFlow>(
    [
      { name: "volume", value: V, standardUncertainty: uV, low: 0, high: 1e5 },
      { name: "time", value: time, standardUncertainty: timing, low: time / 100, high: 1e9 },
    ],
    ([volume = 0, t = 1]) => volume / t,
    input,
  );
  const combined = doubt.standardUncertainty;
  const [fromVolume, fromTiming] = doubt.parts.map(({ contribution }) => contribution) as [number, number];
  return {
    flow: flow as VolumeFlow,
    runs: runs as VolumeFlow[],
    ...doubt,
    expandedUncertainty: (COVERAGE * combined) as VolumeFlow,
    relativeUncertainty: (combined / flow) as Ratio,
    fromVolume: fromVolume as VolumeFlow,
    fromTiming: fromTiming as VolumeFlow,
    timingShare: (combined > 0 ? (fromTiming / combined) ** 2 : 0) as Ratio,
    method: "jcgm-100",
  };
}

/** A bucket and the flow into it. */
export interface BucketTimeInput {
  /** Volume to the mark. Above 0, to 1000 m³. */
  readonly volume: Volume;
  /** Flow into it. 1e-9 to 1000 m³/s. */
  readonly flow: VolumeFlow;
}

/**
 * The time a bucket takes to fill at a flow: what the stopwatch should say.
 *
 * @remarks
 * t = V / q with V `volume` and q `flow`.
 *
 * @param input - the bucket and the flow; each field says its unit and range
 * @returns the time, s
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example Five gallons at 12 gpm
 * ```ts
 * import { bucketTime } from "risingmain/field";
 * import { gpm, inSeconds, usGallons } from "risingmain/units";
 *
 * inSeconds(bucketTime({ volume: usGallons(5), flow: gpm(12) })); // ≈ 25.000
 * ```
 *
 * @source derived: definition of volume flow
 */
export function bucketTime(input: BucketTimeInput): Duration {
  requireObject("input", input);
  requireBucket(input.volume);
  requireWithin("flow", input.flow, 1e-9, 1000, "m³/s");
  return (input.volume / input.flow) as Duration;
}

/**
 * Refuses a bucket of no size.
 *
 * @internal
 */
export function requireBucket(volume: Volume): void {
  requireWithin("volume", volume, 1e-9, 1000, "m³");
}
