/**
 * What a herd drinks in a day, by kind and by the heat.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWhole, requireWithin } from "../numeric/index.ts";
import { imperialGallonsPerDay, type Temperature, usGallonsPerDay, type VolumeFlow } from "../units/index.ts";
import { LIVESTOCK, type LivestockKind } from "./livestock-table.ts";

/** 40 °F and 90 °F in kelvins: the ends of the published temperature table of cattle (`nrc-beef-1996`). */
const COOL = (40 + 459.67) / 1.8;
const HOT = (90 + 459.67) / 1.8;

/** Some animals of one kind. */
export interface LivestockInput {
  /** Kind of animal. */
  readonly kind: LivestockKind;
  /** Number of animals. 0 to 10 000 000. */
  readonly head: number;
  /** Mean temperature of the day. 200 to 340 K. The hottest week, the design case, where left out. */
  readonly temperature?: Temperature;
}

/** What they drink. */
export interface LivestockDemand {
  /** Daily use at the temperature asked (the printed high end where none was), m³/s as a day's mean. */
  readonly daily: VolumeFlow;
  /** Daily use at the printed low end. */
  readonly low: VolumeFlow;
  /** Daily use at the printed high end. */
  readonly high: VolumeFlow;
  /** Source id of the range. */
  readonly method: string;
  /** False below 40 °F and above 90 °F, where the end is used. */
  readonly insideRange: boolean;
}

/**
 * Daily drinking water of livestock of one kind.
 *
 * @remarks
 * head × use a head. The printed ranges span season and animal; the low end is taken at 40 °F (4.4 °C) and below, the high
 * end at 90 °F (32.2 °C) and above, a straight line between (common practice: the ends are published, the line is not).
 * Published tables for the same animal differ by half. Size for the hottest week.
 *
 * @param input - kind, number and heat; each field says its unit and range
 * @returns the use with the printed range and its source
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example Fifty nursing cows in the hottest week
 * ```ts
 * import { livestockDemand } from "risingmain/demand";
 * import { inUsGallonsPerDay } from "risingmain/units";
 *
 * inUsGallonsPerDay(livestockDemand({ kind: "nursing beef cow", head: 50 }).daily); // ≈ 900.0
 * ```
 *
 * @source unh-livestock-water, livestock table
 * @source kstate-livestock-water, daily requirement pages
 * @source federal-livestock-figures
 * @source alberta-pasture-pipeline, table 1
 */
export function livestockDemand(input: LivestockInput): LivestockDemand {
  requireObject("input", input);
  const { kind, head, temperature } = input;
  requireOneOf("kind", kind, Object.keys(LIVESTOCK));
  requireWhole("head", head, 0, 1e7);
  if (temperature !== undefined) requireWithin("temperature", temperature, 200, 340, "K");
  const { low, high, source, imperial } = LIVESTOCK[kind];
  const perDay = imperial ? imperialGallonsPerDay : usGallonsPerDay;
  const heat = temperature === undefined ? 1 : Math.min(Math.max((temperature - COOL) / (HOT - COOL), 0), 1);
  return {
    daily: perDay(head * (low + (high - low) * heat)),
    low: perDay(head * low),
    high: perDay(head * high),
    method: source,
    insideRange: temperature === undefined || (temperature >= COOL && temperature <= HOT),
  };
}
