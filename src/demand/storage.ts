/**
 * What storage closes the gap between a day's draw and the well's yield: the mass curve.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Ratio, Volume, VolumeFlow } from "../units/index.ts";

/** Volumes under this share of all that is drawn are the rounding of sums, not water. */
const ROUNDING = 1e-12;

/** One stretch of a day that repeats. */
export interface DrawPeriod {
  /** How long it lasts. Above 0, to 1000 days. */
  readonly duration: Duration;
  /** Water drawn in it, as a steady flow. 0 to 1000 m³/s. */
  readonly draw: VolumeFlow;
}

/** A pattern of use and a well. */
export interface StorageInput {
  /** The pattern, which repeats for ever; 1 to 10 000 periods in order. */
  readonly pattern: readonly DrawPeriod[];
  /** What the well gives steadily while the store is not full. 0 to 1000 m³/s. */
  readonly wellYield: VolumeFlow;
}

/** What closes the gap. */
export type StorageNeed =
  | {
      /** The well gives enough over the pattern. */
      readonly state: "enough";
      /** Least storage for no shortfall, m³; 0 where the yield meets every draw. */
      readonly storage: Volume;
      /** Longest time from empty-most to full again, s; 0 where no storage is used. */
      readonly refillTime: Duration;
      /** Mean draw over the well's yield: how hard the well is worked. */
      readonly wellUse: Ratio;
      /** Where in the pattern the store is lowest, the first time where it is so twice: the time from its start, s. */
      readonly lowestAt: Duration;
    }
  | {
      /** The pattern draws more than the well gives: no storage closes that. */
      readonly state: "well too weak";
      /** Yield that would just do, with storage, m³/s. */
      readonly neededYield: VolumeFlow;
      /** Shortfall in one pattern, m³. */
      readonly short: Volume;
    };

/**
 * The least storage that carries a repeating pattern of use on a steady well, and how long it takes to refill.
 *
 * @remarks
 * The mass curve: with D(t) the water drawn and Y(t) = y t the water the well could give, the storage is the greatest rise of
 * D − Y from any time to any later time, the pattern repeated. The store is kept from going over full, so
 * S = max s, with s ← max(0, s + (d − y) Δt) the water gone from the store, d the draw. The second pass of the pattern is the
 * steady cycle. Exact for steps. The refill time is from the lowest point to full.
 *
 * @param input - the pattern and the yield; each field says its unit and range
 * @returns storage and refill time; or that the well is too weak, with the yield needed
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example A well of 2 gpm under a house that draws 8 gpm for two hours, morning and evening
 * ```ts
 * import { storageNeed } from "risingmain/demand";
 * import { gpm, hours, inHours, inUsGallons } from "risingmain/units";
 *
 * const need = storageNeed({
 *   wellYield: gpm(2),
 *   pattern: [
 *     { duration: hours(2), draw: gpm(8) }, { duration: hours(10), draw: gpm(0) },
 *     { duration: hours(2), draw: gpm(8) }, { duration: hours(10), draw: gpm(0) },
 *   ],
 * });
 * if (need.state !== "enough") throw new Error(need.state);
 * inUsGallons(need.storage); // ≈ 720.0
 * inHours(need.refillTime); // ≈ 6.0
 * ```
 *
 * @source rippl-1883: the mass curve
 */
export function storageNeed(input: StorageInput): StorageNeed {
  requireObject("input", input);
  const { pattern, wellYield } = input;
  requireList("pattern", pattern, 1, 10_000);
  requireWithin("wellYield", wellYield, 0, 1000, "m³/s");
  let span = 0;
  let drawn = 0;
  pattern.forEach((period, i) => {
    requireObject(`pattern[${i}]`, period);
    requireWithin(`pattern[${i}].duration`, period.duration, 1e-3, 86_400_000, "s");
    requireWithin(`pattern[${i}].draw`, period.draw, 0, 1000, "m³/s");
    span += period.duration;
    drawn += period.draw * period.duration;
  });
  const mean = drawn / span;
  if (mean > wellYield) {
    return {
      state: "well too weak",
      neededYield: mean as VolumeFlow,
      short: Math.max(drawn - wellYield * span, 0) as Volume,
    };
  }

  // The first pass starts full, the second is the steady cycle, the third ends a refill that began in the second.
  const nothing = drawn * ROUNDING;
  let gone = 0;
  let storage = 0;
  let lowestAt = 0;
  let refill = 0;
  let lowest = 0;
  let lowTime = 0;
  for (const pass of [0, 1, 2]) {
    let clock = 0;
    for (const { duration, draw } of pattern) {
      const rate = draw - wellYield;
      const left = gone + rate * duration;
      if (gone > 0 && left <= nothing) {
        // Full again inside this period: the time since the lowest point is a refill.
        refill = Math.max(refill, pass * span + clock + Math.min(gone / -rate, duration) - lowTime);
        lowest = 0;
      }
      gone = left <= nothing ? 0 : left;
      clock += duration;
      if (gone > lowest) {
        lowest = gone;
        lowTime = pass * span + clock;
      }
      if (gone > storage) {
        storage = gone;
        lowestAt = clock;
      }
    }
  }
  return {
    state: "enough",
    storage: storage as Volume,
    refillTime: refill as Duration,
    wellUse: (wellYield > 0 ? mean / wellYield : 0) as Ratio,
    lowestAt: lowestAt as Duration,
  };
}
