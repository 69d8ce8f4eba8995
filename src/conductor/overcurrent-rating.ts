/**
 * Standard ratings of breakers and fuses, and the limits the code sets on small conductors.
 *
 * @module
 */
import { requireOneOf, requireWithin } from "../numeric/index.ts";
import { type Current, InputError } from "../units/index.ts";
import { CONDUCTOR_MATERIALS, type ConductorMaterial } from "./material.ts";
import { type ConductorSize, readSize } from "./size.ts";

/**
 * Standard ratings of inverse-time breakers and fuses, A, without the 10 A step that the 2020 edition added.
 *
 * @source nfpa-70, 240.6(A), 2014 edition
 */
export const standardOvercurrentRatings: readonly number[] = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600,
  700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
];

/** The two standard ratings around a current. */
export interface StandardRatings {
  /** Largest standard rating not above the current, A; 0 where it is less than the smallest. */
  readonly below: Current;
  /** Smallest standard rating not below the current, A. */
  readonly above: Current;
}

/**
 * The standard breaker ratings next below and next above a current.
 *
 * @remarks
 * The 37 ratings of the code's 240.6(A), 15 to 6000 A. A current that is itself a rating is both.
 *
 * @param current - the current, 0 to 6000 A
 * @returns the two ratings
 * @throws InputError where the current is not in that range
 *
 * @example
 * ```ts
 * import { standardRatings } from "risingmain/conductor";
 * import { amperes } from "risingmain/units";
 *
 * standardRatings(amperes(55)).above; // => 60
 * standardRatings(amperes(55)).below; // => 50
 * ```
 *
 * @source nfpa-70, 240.6(A), 2014 edition
 */
export function standardRatings(current: Current): StandardRatings {
  requireWithin("current", current, 0, 6000, "A");
  // 2.5 × 10 A must not miss 25 A by a rounding of the product.
  const slack = current * 1e-12;
  const above = standardOvercurrentRatings.find((rating) => rating >= current - slack) as number;
  const below = standardOvercurrentRatings.filter((rating) => rating <= current + slack).at(-1) ?? 0;
  return { below: below as Current, above: above as Current };
}

/**
 * The largest breaker or fuse the code allows on a small conductor that does not feed a motor.
 *
 * @remarks
 * 15, 20 and 30 A on 14, 12 and 10 AWG copper, 15 and 25 A on 12 and 10 AWG aluminium. Motor branch circuits follow 430.52
 * instead (240.4(G)).
 *
 * @param size - trade size
 * @param material - metal; copper where left out
 * @returns the limit, A, or null where the code sets none beyond the ampacity
 * @throws InputError where the size or the metal is unknown
 *
 * @example
 * ```ts
 * import { smallConductorLimit } from "risingmain/conductor";
 *
 * smallConductorLimit("12 AWG"); // => 20
 * smallConductorLimit("8 AWG"); // => null
 * ```
 *
 * @source nfpa-70, 240.4(D)
 */
export function smallConductorLimit(size: ConductorSize, material: ConductorMaterial = "copper"): Current | null {
  const parts = readSize("size", size);
  requireOneOf("material", material, CONDUCTOR_MATERIALS);
  if (parts.system !== "AWG") return null;
  const limits: Readonly<Record<number, number>> =
    material === "copper" ? { 14: 15, 12: 20, 10: 30 } : { 12: 15, 10: 25 };
  const thinnest = material === "copper" ? 14 : 12;
  if (parts.gauge > thinnest) {
    throw new InputError("size", size, `${thinnest} AWG or thicker, the thinnest for power wiring`);
  }
  return (limits[parts.gauge] ?? null) as Current | null;
}
