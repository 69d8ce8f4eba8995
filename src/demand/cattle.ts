/**
 * Beef cattle's water by class and temperature, from the published table.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWhole, requireWithin } from "../numeric/index.ts";
import { type Temperature, usGallonsPerDay, type VolumeFlow } from "../units/index.ts";
import { CATTLE, CATTLE_TEMPERATURES, type CattleClass } from "./cattle-table.ts";
import { lineThrough } from "./line-through.ts";

/** Some cattle of one class. */
export interface CattleInput {
  /** Class and weight. */
  readonly cattle: CattleClass;
  /** Number of animals. 0 to 10 000 000. */
  readonly head: number;
  /** Mean temperature of the day. 200 to 340 K. */
  readonly temperature: Temperature;
}

/** What they drink. */
export interface CattleDemand {
  /** Daily use as a day's mean flow, m³/s. */
  readonly daily: VolumeFlow;
  /** Source of the table. */
  readonly method: "nrc-beef-1996";
  /** False outside the temperatures of the table, where the end value is used. */
  readonly insideRange: boolean;
}

/**
 * Daily water of beef cattle at a temperature.
 *
 * @remarks
 * Printed at 40 to 90 °F in steps of 10 °F (wintering cows to 70 °F); a straight line between. Feed, milk and breed move it
 * by a quarter either way.
 *
 * @param input - class, number and temperature; each field says its unit and range
 * @returns the use, and whether the temperature is inside the table
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { cattleDemand } from "risingmain/demand";
 * import { fahrenheit, inUsGallonsPerDay } from "risingmain/units";
 *
 * const herd = { cattle: "lactating cow", head: 10, temperature: fahrenheit(60) } as const;
 * inUsGallonsPerDay(cattleDemand(herd).daily); // ≈ 145.0
 * ```
 *
 * @source nrc-beef-1996, table of daily water intake; recalled
 * @source kstate-livestock-water: five of the figures
 */
export function cattleDemand(input: CattleInput): CattleDemand {
  requireObject("input", input);
  requireOneOf("cattle", input.cattle, Object.keys(CATTLE));
  requireWhole("head", input.head, 0, 1e7);
  requireWithin("temperature", input.temperature, 200, 340, "K");
  const uses = CATTLE[input.cattle];
  const fahrenheit = input.temperature * 1.8 - 459.67;
  const { value, inside } = lineThrough(CATTLE_TEMPERATURES.slice(0, uses.length), uses, fahrenheit);
  return { daily: usGallonsPerDay(input.head * value), method: "nrc-beef-1996", insideRange: inside };
}
