/**
 * How far a delivered pump may lie from its guaranteed point: the acceptance grades of ISO 9906 and HI 14.6 (2012).
 *
 * The six lettered grades were read in one full transcription of the table, not in the standards themselves; secondary
 * pages disagree on single figures. The row for small pumps is recalled. State grade and edition in any contract.
 *
 * @module
 */

/** An acceptance grade: 1 is the narrowest; U allows only more than guaranteed, E guards the efficiency, B goes both ways. */
export type AcceptanceGrade = "1U" | "1E" | "1B" | "2U" | "2B" | "3B" | "small pump";

/** Allowed deviations from the guaranteed point, as shares of it. */
export interface GradeRow {
  readonly flowLow: number;
  readonly flowHigh: number;
  readonly headLow: number;
  readonly headHigh: number;
  /** Lowest deviation of efficiency as a share of the guaranteed efficiency, not points; null: see the small-pump rule. */
  readonly efficiencyLow: number | null;
  /** Highest deviation of shaft power; null where the grade has none. */
  readonly powerHigh: number | null;
}

/** ISO 9906:2012, acceptance-grade table, as transcribed (`iso-9906`); the small-pump row from memory. */
export const acceptanceGrades: Readonly<Record<AcceptanceGrade, GradeRow>> = {
  "1U": { flowLow: 0, flowHigh: 0.1, headLow: 0, headHigh: 0.06, efficiencyLow: 0, powerHigh: 0.1 },
  "1E": { flowLow: -0.05, flowHigh: 0.05, headLow: -0.03, headHigh: 0.03, efficiencyLow: 0, powerHigh: 0.04 },
  "1B": { flowLow: -0.05, flowHigh: 0.05, headLow: -0.03, headHigh: 0.03, efficiencyLow: -0.03, powerHigh: 0.04 },
  "2U": { flowLow: 0, flowHigh: 0.16, headLow: 0, headHigh: 0.1, efficiencyLow: -0.05, powerHigh: 0.16 },
  "2B": { flowLow: -0.08, flowHigh: 0.08, headLow: -0.05, headHigh: 0.05, efficiencyLow: -0.05, powerHigh: 0.08 },
  "3B": { flowLow: -0.09, flowHigh: 0.09, headLow: -0.07, headHigh: 0.07, efficiencyLow: -0.07, powerHigh: 0.09 },
  "small pump": {
    flowLow: -0.1,
    flowHigh: 0.1,
    headLow: -0.08,
    headHigh: 0.08,
    efficiencyLow: null,
    powerHigh: null,
  },
};
