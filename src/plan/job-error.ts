/**
 * All that is wrong with a job, at once: an installer mends a file in one sitting, not one error a run.
 *
 * @module
 */
import { InputError } from "../units/index.ts";

/** One thing wrong with a job. */
export interface JobIssue {
  /** Where: `well.depth`, `outlets[2].flow`. */
  readonly path: string;
  /** What was read there. */
  readonly value: unknown;
  /** What was expected, or what to do about it. */
  readonly expected: string;
}

/**
 * A job that cannot be planned. Its name is "InputError", as for every refused input; `parameter`, `value` and
 * `expected` are those of the first issue.
 *
 * @source derived
 *
 * @example
 * ```ts
 * import { readJob } from "risingmain/plan";
 *
 * readJob({ version: 1, name: "no well" }); // throws InputError
 * ```
 */
export class JobError extends InputError {
  /** Everything found wrong, in the order of the document. */
  readonly issues: readonly JobIssue[];

  /**
   * @param issues - everything found wrong, at least one
   */
  constructor(issues: readonly JobIssue[]) {
    const [first] = issues;
    super(first?.path ?? "job", first?.value, first?.expected ?? "a job");
    this.issues = issues;
  }

  /** The issues as text, one a line. */
  get lines(): readonly string[] {
    return this.issues.map(({ path, value, expected }) => new InputError(path, value, expected).message);
  }
}
