/**
 * How often a pump motor may start.
 *
 * @module
 */
import { requirePositive } from "../numeric/index.ts";
import type { Frequency, Power } from "../units/index.ts";

/** Up to this power, W, a motor may start twice as often: three quarters of a mechanical horsepower. */
const SMALL_MOTOR = 0.75 * 745.6998715822702;

const HOUR = 3600;
const DAY = 86400;

/** Limits on starts. */
export interface StartLimit {
  /** Most starts in an hour, as a rate, Hz; `inPerHour` reads it. */
  readonly perHour: Frequency;
  /** Most starts in a day, as a rate, Hz; `inPerDay` reads it. */
  readonly perDay: Frequency;
  /** Where the limits come from. */
  readonly method: "water-systems-council-performance-standard-for";
}

/**
 * The most starts a tank standard allows a pump motor.
 *
 * @remarks
 * Up to 0.75 hp: 15 an hour; above: 7.5 an hour; 300 a day in any case. Limits, not design targets: a trade journal
 * allows motors above 5 hp only 50 a day (`kill-tank-selection-by`), and the motor's own papers come first.
 *
 * @param power - rated output of the motor, above 0 to 10 MW
 * @returns the limits per hour and per day
 * @throws {@link units.InputError} where the power is not a number in its range
 *
 * @example
 * ```ts
 * import { motorStartLimit } from "risingmain/tank";
 * import { horsepower, inPerDay, inPerHour } from "risingmain/units";
 *
 * inPerHour(motorStartLimit(horsepower(1.5)).perHour); // ≈ 7.5
 * inPerDay(motorStartLimit(horsepower(1.5)).perDay); // ≈ 300
 * ```
 *
 * @source water-systems-council-performance-standard-for, introductory text
 */
export function motorStartLimit(power: Power): StartLimit {
  requirePositive("power", power, 1e7, "W");
  // A rating typed as 0.75 hp must be a small motor, whatever its last bit.
  const small = power <= SMALL_MOTOR * (1 + 1e-12);
  return {
    perHour: ((small ? 15 : 7.5) / HOUR) as Frequency,
    perDay: (300 / DAY) as Frequency,
    method: "water-systems-council-performance-standard-for",
  };
}
