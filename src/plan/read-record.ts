/**
 * A stored as-built record read back, next year or from another hand: every fault found at once, with its path.
 *
 * @module
 */
import * as v from "valibot";
import { JobError, type JobIssue } from "./job-error.ts";
import type { AsBuiltRecord, RecordedReading } from "./record.ts";
import { possibleReading, recordSchema } from "./record-schema.ts";

/**
 * Reads a stored record: what `JSON.parse` gave, or a record from anywhere.
 *
 * @remarks
 * Beyond the published form it checks what a JSON Schema cannot say: codes that occur once, bands in one unit and the right
 * way round, readings an instrument can show, and verdicts that agree with the number beside them.
 *
 * @param document - the parsed JSON; unknown fields are refused
 * @returns the record
 * @throws {@link JobError} (an InputError) with every issue found
 *
 * @example
 * ```ts
 * import { asBuiltRecord, planSystem, readJob, readRecord, sampleJob } from "risingmain/plan";
 *
 * const record = asBuiltRecord({ plan: planSystem(readJob(sampleJob)), readings: {}, by: "the installer" });
 * const stored = JSON.stringify(record);
 * readRecord(JSON.parse(stored)).by; // => "the installer"
 * readRecord({ version: 2, name: "Alder Spring cabin" }); // throws InputError
 * ```
 *
 * @source derived
 */
export function readRecord(document: unknown): AsBuiltRecord {
  return checkedRecord(document);
}

/**
 * A record that may have come from anywhere, checked.
 *
 * @internal
 */
export function checkedRecord(document: unknown): AsBuiltRecord {
  const result = v.safeParse(recordSchema(), document);
  if (!result.success) throw new JobError(result.issues.map(toIssue));
  const { readings } = result.output;
  const codes = new Set<string>();
  const issues = readings.flatMap((reading, i) => {
    const twice = codes.has(reading.code);
    codes.add(reading.code);
    return [
      ...(twice ? [{ path: `readings[${i}].code`, value: reading.code, expected: "a code that occurs once" }] : []),
      ...readingIssues(reading, `readings[${i}]`),
    ];
  });
  if (issues.length > 0) throw new JobError(issues);
  return result.output;
}

function toIssue(issue: v.BaseIssue<unknown>): JobIssue {
  const missing = issue.received === "undefined" && issue.kind === "schema";
  return {
    path: v.getDotPath(issue)?.replace(/\.(\d+)(?=\.|$)/g, "[$1]") ?? "record",
    value: issue.input,
    expected: missing ? `${issue.message} (missing)` : issue.message,
  };
}

/** Where a reading contradicts itself. */
function readingIssues({ expected, low, high, measured, verdict }: RecordedReading, path: string): readonly JobIssue[] {
  const issues: JobIssue[] = [];
  for (const [end, measure] of [
    ["low", low],
    ["high", high],
  ] as const) {
    if (measure.kind !== expected.kind)
      issues.push({ path: `${path}.${end}.kind`, value: measure.kind, expected: `"${expected.kind}", as expected` });
  }
  if (!(low.value <= expected.value && expected.value <= high.value))
    issues.push({ path: `${path}.expected.value`, value: expected.value, expected: "a number between low and high" });
  const [least, most] = possibleReading(expected.kind);
  if (measured !== null && !(measured >= least && measured <= most))
    issues.push({ path: `${path}.measured`, value: measured, expected: `a reading in SI from ${least} to ${most}` });
  const inside = measured !== null && measured >= low.value && measured <= high.value;
  const right = measured === null ? "not tested" : inside ? "pass" : "fail";
  if (verdict !== right)
    issues.push({ path: `${path}.verdict`, value: verdict, expected: `"${right}", as the reading and its band say` });
  return issues;
}
