/** What the command does, apart from the process it runs in. */
import { parseArgs } from "node:util";
import { JobError, planSystem, readJobText, reportOf, type UnitSystem } from "../plan/index.ts";

const USAGE = `usage: risingmain [--units us|metric] [--json] JOB.json
       risingmain [--units us|metric] [--json] -

Plans the private water system of a job file (- for standard input) and prints the report as Markdown,
or the whole plan as JSON. Wrong input is listed, one fault a line, and the exit status is 1.
`;

/** The process, as far as the command needs it. */
export interface Surroundings {
  /** Text of a file, or of standard input for `-`. */
  readonly read: (file: string) => string;
  readonly print: (text: string) => void;
  /** Takes one line. */
  readonly complain: (line: string) => void;
}

/** Runs the command with its arguments, and gives the exit status. */
export function command(args: readonly string[], { read, print, complain }: Surroundings): 0 | 1 {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { units: { type: "string" }, json: { type: "boolean" }, help: { type: "boolean", short: "h" } },
    });
    // A later file replaces an earlier one, so that a wrapper can name a default.
    const file = positionals.at(-1);
    if (values.help === true || file === undefined) {
      print(USAGE);
      return values.help === true ? 0 : 1;
    }
    const asked = values.units;
    if (asked !== undefined && !isUnitSystem(asked)) throw new Error(`--units: expected us or metric, got ${asked}`);
    const job = readJobText(text(file, read));
    const plan = planSystem(job);
    const units = asked ?? job.reportUnits ?? "us";
    print(values.json === true ? `${JSON.stringify(plan, null, 2)}\n` : reportOf(plan, { units }));
    return 0;
  } catch (error) {
    const lines = error instanceof JobError ? error.lines : [(error as Error).message];
    for (const line of lines) complain(line);
    return 1;
  }
}

const isUnitSystem = (name: string): name is UnitSystem => name === "us" || name === "metric";

/** Why the system will not read a file, in words. */
const REFUSALS: Readonly<Record<string, string>> = {
  ENOENT: "no such file",
  EISDIR: "a folder, not a file",
  EACCES: "this user may not read it",
};

function text(file: string, read: Surroundings["read"]): string {
  try {
    return read(file);
  } catch (error) {
    const { code = "", message } = error as NodeJS.ErrnoException;
    throw new Error(`${file}: ${REFUSALS[code] ?? message}`);
  }
}
