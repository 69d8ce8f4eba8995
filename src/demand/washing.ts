/**
 * Water for washing down, by what is washed.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { usGallons, type Volume } from "../units/index.ts";
import { WASHING, type Washing } from "./washing-table.ts";

/** What is washed, and how often. */
export interface WashingInput {
  /** What is washed. */
  readonly washing: Washing;
  /** Times in the day. 0 to 10 000. */
  readonly times: number;
}

/** The water. */
export interface WashingDemand {
  /** Water in the day at the printed high end, the safe one, m³. */
  readonly volume: Volume;
  /** Water in the day at the printed low end, m³. */
  readonly low: Volume;
  /** Source id. */
  readonly method: string;
}

/**
 * Water that washing takes in a day.
 *
 * @remarks
 * times × the printed volume. The printed figures predate thrifty appliances, so they err on the safe side.
 *
 * @param input - what and how often; each field says its unit and range
 * @returns the volume at the high end, and at the low
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example A milk pipeline washed twice a day
 * ```ts
 * import { washingDemand } from "risingmain/demand";
 * import { inUsGallons } from "risingmain/units";
 *
 * inUsGallons(washingDemand({ washing: "milk pipeline", times: 2 }).volume); // ≈ 250.0
 * ```
 *
 * @source unh-livestock-water, dairy washing table
 * @source broz-g1801, table 1
 * @source h2ouse-outdoor
 */
export function washingDemand(input: WashingInput): WashingDemand {
  requireObject("input", input);
  requireOneOf("washing", input.washing, Object.keys(WASHING));
  requireWithin("times", input.times, 0, 1e4, "");
  const { low, high, source } = WASHING[input.washing];
  return { volume: usGallons(input.times * high), low: usGallons(input.times * low), method: source };
}
