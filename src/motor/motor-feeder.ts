/**
 * Conductors that feed several motors together.
 *
 * @module
 */
import { requireList, requireWithin } from "../numeric/index.ts";
import type { Current } from "../units/index.ts";
import { CONDUCTOR_SHARE } from "./motor-rules.ts";

/**
 * Least ampacity of conductors that feed several motors.
 *
 * @remarks
 * 125 % of the largest full-load current and 100 % of the others. Other loads on the same conductors come on top.
 *
 * @param fullLoadCurrents - full-load current of each motor, 0.01 to 2000 A; 1 to 1000 motors
 * @returns the ampacity, A
 * @throws InputError where the list, or a current in it, is out of range
 *
 * @example A well pump and a booster pump
 * ```ts
 * import { motorFeederAmpacity } from "risingmain/motor";
 * import { amperes } from "risingmain/units";
 *
 * motorFeederAmpacity([amperes(10), amperes(8)]); // => 20.5
 * ```
 *
 * @source nfpa-70, 430.24
 */
export function motorFeederAmpacity(fullLoadCurrents: readonly Current[]): Current {
  requireList("fullLoadCurrents", fullLoadCurrents, 1, 1000);
  let sum = 0;
  let largest = 0;
  for (const [i, current] of Array.from(fullLoadCurrents).entries()) {
    requireWithin(`fullLoadCurrents[${i}]`, current, 0.01, 2000, "A");
    sum += current;
    largest = Math.max(largest, current);
  }
  return (sum + (CONDUCTOR_SHARE - 1) * largest) as Current;
}
