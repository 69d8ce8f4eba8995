/**
 * An animal's water by its weight.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWhole, requireWithin } from "../numeric/index.ts";
import { inPounds, type Mass, usGallonsPerDay, type VolumeFlow } from "../units/index.ts";

/** Animals with a published use by weight. */
export type WeighedAnimal = "horse" | "cow, summer" | "cow, winter";

/** US gallons a day for each 100 lb (`kstate-livestock-water`). */
const PER_HUNDREDWEIGHT: Readonly<Record<WeighedAnimal, number>> = {
  horse: 1,
  "cow, summer": 1.5,
  "cow, winter": 0.75,
};

/** Some animals of one weight. */
export interface WeightRuleInput {
  /** Animal, and season for a cow. */
  readonly animal: WeighedAnimal;
  /** Live mass of one. 0 to 2000 kg. */
  readonly mass: Mass;
  /** Number of animals. 0 to 10 000 000; 1 where left out. */
  readonly head?: number;
  /** Factor for work in heat, a horse's: 2 to 4 in hot working weather. 1 to 4; 1 where left out. */
  readonly workFactor?: number;
}

/**
 * Daily water of an animal by its weight.
 *
 * @remarks
 * US gallons a day for each 100 lb: 1 for a horse (at least; 2 to 4 times that in hot working weather), 1.5 for a cow in
 * summer, 0.75 in winter.
 *
 * @param input - animal, mass, number and work; each field says its unit and range
 * @returns the day's use as a mean flow, m³/s
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { weightRuleDemand } from "risingmain/demand";
 * import { inUsGallonsPerDay, pounds } from "risingmain/units";
 *
 * inUsGallonsPerDay(weightRuleDemand({ animal: "horse", mass: pounds(1000) })); // ≈ 10.0
 * ```
 *
 * @source kstate-livestock-water, text
 */
export function weightRuleDemand(input: WeightRuleInput): VolumeFlow {
  requireObject("input", input);
  const { animal, mass, head = 1, workFactor = 1 } = input;
  requireOneOf("animal", animal, Object.keys(PER_HUNDREDWEIGHT));
  requireWithin("mass", mass, 0, 2000, "kg");
  requireWhole("head", head, 0, 1e7);
  requireWithin("workFactor", workFactor, 1, 4, "");
  return usGallonsPerDay((head * workFactor * PER_HUNDREDWEIGHT[animal] * inPounds(mass)) / 100);
}
