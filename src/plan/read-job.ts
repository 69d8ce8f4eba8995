/**
 * A job from its JSON document, or typed data checked: every fault found at once, with its path.
 *
 * @module
 */
import * as v from "valibot";
import { InputError } from "../units/index.ts";
import { contradictions } from "./contradictions.ts";
import type { Job } from "./job.ts";
import { JobError, type JobIssue } from "./job-error.ts";
import { jobSchema, type QuantityForm } from "./job-schema.ts";

/**
 * Reads a job document: the parsed JSON of a job file, quantities as text with units.
 *
 * @param document - what `JSON.parse` gave; unknown fields are refused
 * @returns the job in SI quantities, for {@link planSystem}
 * @throws {@link JobError} with every issue found: missing and unknown fields, texts without a unit or with a unit of
 * something else, values out of range, parts that contradict each other
 * @source derived
 *
 * @example
 * ```ts
 * import { readJob } from "risingmain/plan";
 *
 * readJob({ version: 1, name: "Cold Creek", well: { depth: "240" } }); // throws InputError
 * ```
 */
export function readJob(document: unknown): Job {
  return checked(document, "text");
}

/**
 * A typed job that may have come from anywhere, checked.
 *
 * @internal
 */
export function checkedJob(job: unknown): Job {
  return checked(job, "si");
}

function checked(value: unknown, form: QuantityForm): Job {
  const result = v.safeParse(jobSchema(form), value);
  if (!result.success) throw new JobError(result.issues.map(toIssue));
  const issues = contradictions(result.output);
  if (issues.length > 0) throw new JobError(issues);
  return result.output;
}

function toIssue(issue: v.BaseIssue<unknown>): JobIssue {
  const path = pathOf(issue.path ?? []);
  const missing = issue.received === "undefined" && issue.kind === "schema";
  const expected = missing ? `${issue.message} (missing)` : issue.message;
  return { path: path === "" ? "job" : path, value: missing ? "nothing" : issue.input, expected };
}

function pathOf(path: readonly v.IssuePathItem[]): string {
  return path.reduce((text, { key }) => {
    if (typeof key === "number") return `${text}[${key}]`;
    return text === "" ? String(key) : `${text}.${String(key)}`;
  }, "");
}

/** Text of a job file to a job; says where the JSON itself is broken.
 *
 * @param text - the whole file
 * @returns the job
 * @throws InputError where the text is not JSON, {@link JobError} where it is no job
 * @source derived
 *
 * @example
 * ```ts
 * import { readJobText } from "risingmain/plan";
 *
 * readJobText("{ version: 1 }"); // throws InputError
 * ```
 */
export function readJobText(text: string): Job {
  if (typeof text !== "string") throw new InputError("text", text, "the text of a job file");
  let document: unknown;
  try {
    document = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    throw new InputError("text", text, `JSON (${(error as Error).message})`);
  }
  return readJob(document);
}
