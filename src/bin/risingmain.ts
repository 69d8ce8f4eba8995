#!/usr/bin/env node
/**
 * The command: plans the job of a file, or of standard input, and prints the report.
 *
 * @module
 */
import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { JobError, planSystem, readJobText, reportOf, type UnitSystem } from "../plan/index.ts";

const USAGE = `usage: risingmain [--units us|metric] [--json] JOB.json
       risingmain [--units us|metric] [--json] -

Plans the private water system of a job file (- for standard input) and prints the report as Markdown,
or the whole plan as JSON. Wrong input is listed, one fault a line, and the exit status is 1.`;

/** Descriptor of standard input. */
const STDIN = 0;

try {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { units: { type: "string" }, json: { type: "boolean" }, help: { type: "boolean", short: "h" } },
  });
  // A later file replaces an earlier one, so that a wrapper can name a default.
  const file = positionals.at(-1);
  if (values.help === true || file === undefined) {
    console.log(USAGE);
    process.exitCode = values.help === true ? 0 : 1;
  } else {
    if (values.units !== undefined && values.units !== "us" && values.units !== "metric") {
      throw new Error(`--units: expected us or metric, got ${values.units}`);
    }
    const job = readJobText(readFileSync(file === "-" ? STDIN : file, "utf8"));
    const plan = planSystem(job);
    const units: UnitSystem = values.units ?? job.reportUnits ?? "us";
    process.stdout.write(values.json === true ? `${JSON.stringify(plan, null, 2)}\n` : reportOf(plan, { units }));
  }
} catch (error) {
  const lines = error instanceof JobError ? error.lines : [(error as Error).message];
  for (const line of lines) console.error(line);
  process.exitCode = 1;
}
