/**
 * What a check of a control reports: a condition, its value, its limit and where the limit comes from.
 *
 * @module
 */

/** Something a check found. Data for a report to put in words. */
export interface ControlCondition<Code extends string = string> {
  /** What was found, in a few words that stay the same. */
  readonly code: Code;
  /** "problem" where it will not work or is not safe; "caution" where it works poorly. */
  readonly severity: "problem" | "caution";
  /** The value found, in the SI unit of `unit`. */
  readonly value: number;
  /** The limit it was held against, in the same unit. */
  readonly limit: number;
  /** SI unit of both. */
  readonly unit: "Pa" | "m³/s" | "s" | "Hz" | "m";
  /** A source id, "common practice" or "derived". */
  readonly basis: string;
}
