/**
 * A day's water for a place, added up by use, and the flow that a peak asks for.
 *
 * @module
 */
import { requireList, requireObject, requireWhole, requireWithin } from "../numeric/index.ts";
import { type Duration, InputError, usGallonsPerDay, type Volume, type VolumeFlow } from "../units/index.ts";
import { type LivestockInput, livestockDemand } from "./livestock.ts";

/** Household use a person a day, US gallons: 50 to 100 (`penn-state-water-planning`, first paragraph). */
const PERSON_LOW = 50;
const PERSON_HIGH = 100;
/** A bedroom's use a day, US gallons (`new-york-fact-sheet-2`). */
const BEDROOM = 110;
const DAY = 86_400;

/** What uses water in a day. */
export interface DailyDemandInput {
  /** People in the house. 0 to 1 000 000; none where left out. */
  readonly people?: number;
  /** Use a person a day, as a day's mean flow. 0 to 1 m³/s; 100 US gal a day where left out. */
  readonly perPerson?: VolumeFlow;
  /** Animals by kind, up to 100 entries. */
  readonly livestock?: readonly LivestockInput[];
  /** Other uses, each a volume on the day it is used (irrigation, washing, filter backwash), up to 100. */
  readonly other?: readonly OtherUse[];
}

/** A use that is not people or animals. */
export interface OtherUse {
  /** What it is. */
  readonly name: string;
  /** Water on a day it is used. 0 to 1 000 000 m³. */
  readonly volume: Volume;
}

/** One line of the sum. */
export interface DailyPart {
  /** What uses it. */
  readonly name: string;
  /** Water a day, m³. */
  readonly volume: Volume;
  /** Source id, or "given". */
  readonly method: string;
}

/** A day's water. */
export interface DailyDemand {
  /** Water in the day, m³. */
  readonly volume: Volume;
  /** The same spread over 24 h, m³/s. */
  readonly mean: VolumeFlow;
  /** The lines it was added from. */
  readonly parts: readonly DailyPart[];
}

/**
 * The water a place needs in a day.
 *
 * @remarks
 * The sum of people × use a person, animals (see `livestockDemand`) and other uses. 100 US gallons a person a day is the
 * upper end of the published 50 to 100.
 *
 * @param input - what uses water; each field says its unit and range
 * @returns the day's volume with its parts
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example Four people, fifty cows and a garden
 * ```ts
 * import { dailyDemand } from "risingmain/demand";
 * import { inUsGallons, usGallons } from "risingmain/units";
 *
 * const day = dailyDemand({
 *   people: 4, livestock: [{ kind: "nursing beef cow", head: 50 }], other: [{ name: "garden", volume: usGallons(150) }],
 * });
 * inUsGallons(day.volume); // ≈ 1450.0
 * ```
 *
 * @source penn-state-water-planning, first paragraph
 */
export function dailyDemand(input: DailyDemandInput): DailyDemand {
  requireObject("input", input);
  const { people = 0, perPerson = usGallonsPerDay(PERSON_HIGH), livestock = [], other = [] } = input;
  requireWhole("people", people, 0, 1e6);
  requireWithin("perPerson", perPerson, 0, 1, "m³/s");
  requireList("livestock", livestock, 0, 100);
  requireList("other", other, 0, 100);
  const parts: DailyPart[] = [];
  if (people > 0) {
    const method = input.perPerson === undefined ? "penn-state-water-planning" : "given";
    parts.push({ name: "people", volume: (people * perPerson * DAY) as Volume, method });
  }
  for (const herd of livestock) {
    const { daily, method } = livestockDemand(herd);
    parts.push({ name: herd.kind, volume: (daily * DAY) as Volume, method });
  }
  other.forEach((use, i) => {
    const at = `other[${i}]`;
    requireObject(at, use);
    if (typeof use.name !== "string") throw new InputError(`${at}.name`, use.name, "a text");
    requireWithin(`${at}.volume`, use.volume, 0, 1e6, "m³");
    parts.push({ name: use.name, volume: use.volume, method: "given" });
  });
  const volume = parts.reduce((sum, part) => sum + part.volume, 0);
  return { volume: volume as Volume, mean: (volume / DAY) as VolumeFlow, parts };
}

/** A range of household use. */
export interface HouseholdRange {
  /** Low end, as a day's mean flow, m³/s. */
  readonly low: VolumeFlow;
  /** High end, m³/s. */
  readonly high: VolumeFlow;
}

/**
 * The published range of household use for a number of people.
 *
 * @remarks
 * 50 to 100 US gallons a person a day.
 *
 * @param people - number of people; a whole number from 0 to 1 000 000
 * @returns the low and the high end as a day's mean flow, m³/s
 * @throws {@link units.InputError} where the number is not in its range
 *
 * @example
 * ```ts
 * import { householdRange } from "risingmain/demand";
 * import { inUsGallonsPerDay } from "risingmain/units";
 *
 * inUsGallonsPerDay(householdRange(4).low); // ≈ 200.0
 * ```
 *
 * @source penn-state-water-planning, first paragraph
 */
export function householdRange(people: number): HouseholdRange {
  requireWhole("people", people, 0, 1e6);
  return { low: usGallonsPerDay(people * PERSON_LOW), high: usGallonsPerDay(people * PERSON_HIGH) };
}

/** A day's water and the time it is wanted in. */
export interface PeakFlowInput {
  /** Water wanted in the period. 0 to 1 000 000 m³. */
  readonly volume: Volume;
  /** Time it is wanted in. 1 s to 100 days; 2 h where left out: the published farmstead peak. */
  readonly period?: Duration;
}

/**
 * The flow that delivers a day's water in a shortened peak.
 *
 * @remarks
 * q = V / t. A home is sized to deliver the day in 2 h (`penn-state-water-planning`); a peak lasts 1 h in a home and 2 h on
 * a farmstead (`broz-g1801`); a herd that comes to the trough together drinks its day in 4 h (`alberta-pasture-pipeline`).
 *
 * @param input - the water and the period; each field says its unit and range
 * @returns the flow, m³/s
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { peakFlow } from "risingmain/demand";
 * import { hours, inGpm, usGallons } from "risingmain/units";
 *
 * inGpm(peakFlow({ volume: usGallons(400), period: hours(2) })); // ≈ 3.333
 * ```
 *
 * @source penn-state-water-planning, peak demand paragraph
 */
export function peakFlow(input: PeakFlowInput): VolumeFlow {
  requireObject("input", input);
  const { volume, period = 7200 } = input;
  requireWithin("volume", volume, 0, 1e6, "m³");
  requireWithin("period", period, 1, 100 * DAY, "s");
  return (volume / period) as VolumeFlow;
}

/**
 * The day's water of a house by its bedrooms.
 *
 * @remarks
 * 110 US gallons a day a bedroom, moderate use.
 *
 * @param bedrooms - number of bedrooms; a whole number from 0 to 100 000
 * @returns the day's mean flow, m³/s
 * @throws {@link units.InputError} where the number is not in its range
 *
 * @example
 * ```ts
 * import { bedroomDemand } from "risingmain/demand";
 * import { inUsGallonsPerDay } from "risingmain/units";
 *
 * inUsGallonsPerDay(bedroomDemand(3)); // ≈ 330.0
 * ```
 *
 * @source new-york-fact-sheet-2, well yield, demand and storage
 */
export function bedroomDemand(bedrooms: number): VolumeFlow {
  requireWhole("bedrooms", bedrooms, 0, 1e5);
  return usGallonsPerDay(BEDROOM * bedrooms);
}
