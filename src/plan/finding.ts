/**
 * What a plan found: a limit met or missed, with the numbers, the ground for the limit, and what to do.
 *
 * @module
 */
import type { Basis } from "../sources/index.ts";
import type { Measure } from "./measure.ts";

export type { Basis };

/** How much a finding matters. */
export type Severity =
  /** Must not be built or run like this. */
  | "stop"
  /** Will work badly or wear out early: change it. */
  | "fix"
  /** Worth a second look on site. */
  | "look"
  /** In order; said because the reader will ask. */
  | "good";

/** The stages of a plan, in the order the work is done. */
export type StageName =
  | "site"
  | "demand"
  | "well"
  | "layout"
  | "pump"
  | "dropPipe"
  | "controls"
  | "tank"
  | "day"
  | "power"
  | "disinfection";

/** A finding. */
export interface Finding {
  /** Short name that does not change, for an app that words its own: `pump-below-casing`. */
  readonly code: string;
  /** How much it matters. */
  readonly severity: Severity;
  /** The stage it belongs to. */
  readonly stage: StageName;
  /** What it is about: an outlet, a run, a pump; empty where the stage says it. */
  readonly subject: string;
  /** What was found, in a sentence without numbers. */
  readonly message: string;
  /** The number found. */
  readonly value: Measure;
  /** The limit it was held against. */
  readonly limit: Measure;
  /** Where the limit comes from. */
  readonly basis: Basis;
  /** What to do about it; empty where nothing need be done. */
  readonly remedy: string;
}

/** A fact of the trade. */
export const PRACTICE: Basis = { kind: "common practice" };
