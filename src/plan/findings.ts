/**
 * How stages write their findings: a limit, the value held against it, and the words for either side.
 *
 * @module
 */
import type { Basis, Finding, Severity, StageName } from "./finding.ts";
import { type MeasureKind, measure } from "./measure.ts";

/** A limit and what crossing it means. */
export interface Limit {
  /** Finding code. */
  readonly code: string;
  /** Stage. */
  readonly stage: StageName;
  /** What it is about; the stage itself where left out. */
  readonly subject?: string;
  /** Kind of both numbers. */
  readonly kind: MeasureKind;
  /** The number found, SI. */
  readonly value: number;
  /** The limit, SI. */
  readonly limit: number;
  /** Which side of the limit is wrong. */
  readonly wrong: "above" | "below" | "at or above" | "at or below";
  /** How much crossing it matters. */
  readonly severity: Severity;
  /** What crossing it means, without numbers. */
  readonly message: string;
  /** What to do. */
  readonly remedy: string;
  /** Where the limit comes from. */
  readonly basis: Basis;
}

/** The finding where the value is on the wrong side of the limit; nothing on the right side. */
export function finding(limit: Limit): readonly Finding[] {
  const { value, limit: bound, wrong, kind, code, severity, stage, subject = "", message, remedy, basis } = limit;
  const crossed = {
    above: value > bound,
    below: value < bound,
    "at or above": value >= bound,
    "at or below": value <= bound,
  }[wrong];
  if (!crossed) return [];
  return [
    {
      code,
      severity,
      stage,
      subject,
      message,
      value: measure(kind, value),
      limit: measure(kind, bound),
      basis,
      remedy,
    },
  ];
}
