/**
 * The as-built record: the commissioning sheet with what was read, and what came of it.
 *
 * @module
 */
import { judgeReading } from "../field/index.ts";
import { requireObject } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { ExpectedReading } from "./commissioning.ts";
import { JobError, type JobIssue } from "./job-error.ts";
import type { Plan } from "./plan-system.ts";
import { readPlan } from "./read-plan.ts";
import { checkedRecord } from "./read-record.ts";
import { possibleReading } from "./record-schema.ts";

/** What came of a reading. */
export type RecordVerdict = "pass" | "fail" | "not tested";

/** A reading of the sheet, taken or not. */
export interface RecordedReading extends ExpectedReading {
  /** What was read, in the SI unit of the expected value; null where it was not. */
  readonly measured: number | null;
  /** "pass" inside the band, its ends with it; "fail" outside; "not tested" where nothing was read. */
  readonly verdict: RecordVerdict;
  /** Why, in a sentence without numbers. */
  readonly reason: string;
}

/** The as-built record: plain data that JSON carries, in the form of the published `record.schema.json`. */
export interface AsBuiltRecord {
  /** Form of the record; 1. */
  readonly version: 1;
  /** What the property is called. */
  readonly name: string;
  /** Day of the readings, `2031-05-14`; null where it was not said. */
  readonly date: string | null;
  /** Who read them; null where it was not said. */
  readonly by: string | null;
  /** What else the next installer should know; null where nothing. */
  readonly notes: string | null;
  /** Every reading of the sheet, in its order. */
  readonly readings: readonly RecordedReading[];
  /** The cautions that went with the plan. */
  readonly cautions: readonly Caution[];
}

/** A plan and what was read. */
export interface AsBuiltInput {
  /** The plan, from {@link planSystem}. */
  readonly plan: Plan;
  /** What was read, by the code of the sheet, in SI; a reading left out or null was not taken. */
  readonly readings: Readonly<Record<string, number | null>>;
  /** Day of the readings, as year-month-day: `2031-05-14`. */
  readonly date?: string;
  /** Who read them. 1 to 200 letters. */
  readonly by?: string;
  /** What else the next installer should know. 1 to 10 000 letters. */
  readonly notes?: string;
}

/**
 * Fills the commissioning sheet of a plan: pass, fail or not tested for every reading, with its band and the reason.
 *
 * @remarks
 * A reading passes where low ≤ reading ≤ high. The bands already hold what gauges and stopwatches leave open, so nothing is
 * added to them here. A reading that no such instrument can show (a negative depth, a flow of a river) is refused, as a slip
 * of the pen.
 *
 * @param input - plan, readings by code, and who read them when; each field says its range
 * @returns the record; `JSON.stringify` makes the document that {@link readRecord} reads back
 * @throws {@link JobError} (an InputError) with every unknown code and impossible reading
 *
 * @example
 * ```ts
 * import { asBuiltRecord, planSystem, readJob, sampleJob } from "risingmain/plan";
 * import { feet, psi } from "risingmain/units";
 *
 * const plan = planSystem(readJob(sampleJob));
 * const record = asBuiltRecord({
 *   plan,
 *   readings: { "static-level": feet(41), precharge: psi(19) },
 *   date: "2031-05-14",
 * });
 * record.readings.slice(0, 3).map(({ verdict }) => verdict); // => ["pass", "fail", "not tested"]
 * record.readings[1]?.reason; // => "Below the least that passes."
 *
 * asBuiltRecord({ plan, readings: { "static level": feet(41) } }); // throws InputError
 * ```
 *
 * @source derived: the plan's sheet against the readings
 */
export function asBuiltRecord(input: AsBuiltInput): AsBuiltRecord {
  requireObject("input", input);
  const { plan, readings, date = null, by = null, notes = null } = input;
  requireObject("readings", readings);
  return readPlan(plan, ({ name, commissioning, cautions }) => {
    const issues = readingIssues(readings, commissioning);
    if (issues.length > 0) throw new JobError(issues);
    const filled = commissioning.map((expected) => filledIn(expected, readings));
    // What a made-up plan brings along is found by the form of the record itself.
    return checkedRecord({ version: 1, name, date, by, notes, readings: filled, cautions });
  });
}

/** Codes the sheet has not, and readings that cannot be. */
function readingIssues(readings: AsBuiltInput["readings"], sheet: readonly ExpectedReading[]): readonly JobIssue[] {
  const kinds = new Map(sheet.map(({ code, expected }) => [code, expected.kind]));
  return Object.entries(readings).flatMap(([code, value]): readonly JobIssue[] => {
    const path = `readings.${code}`;
    const kind = kinds.get(code);
    if (kind === undefined)
      return [{ path, value, expected: `a code of the plan's commissioning sheet: ${[...kinds.keys()].join(", ")}` }];
    const [low, high] = possibleReading(kind);
    const possible = value === null || (typeof value === "number" && value >= low && value <= high);
    return possible ? [] : [{ path, value, expected: `a reading in SI from ${low} to ${high}, or null` }];
  });
}

function filledIn(row: ExpectedReading, readings: AsBuiltInput["readings"]): RecordedReading {
  const { code, reading, how, expected } = row;
  // A share of a pressure below the air's turns the band round.
  const [low, high] = row.low.value <= row.high.value ? [row.low, row.high] : [row.high, row.low];
  // Own fields alone: a sheet may have a code that every object inherits.
  const value = Object.hasOwn(readings, code) ? (readings[code] ?? null) : null;
  // JSON has no negative zero.
  const measured = value === null ? null : value + 0;
  return { code, reading, how, expected, low, high, measured, ...verdictOf(measured, low.value, high.value) };
}

/** Verdict and reason of a reading against its band. */
function verdictOf(measured: number | null, low: number, high: number): Pick<RecordedReading, "verdict" | "reason"> {
  if (measured === null) return { verdict: "not tested", reason: "No reading was taken." };
  const { side } = judgeReading({ reading: measured, low, high });
  if (side === "inside") return { verdict: "pass", reason: "Inside its band." };
  return side === "low"
    ? { verdict: "fail", reason: "Below the least that passes." }
    : { verdict: "fail", reason: "Above the most that passes." };
}
