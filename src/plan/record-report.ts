/**
 * The as-built record on paper: Markdown for the owner, the inspector and the next installer.
 *
 * @module
 */
import { authorityCaution, mainsCautions, pressureCautions } from "../field/index.ts";
import { requireObject, requireOneOf } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import { markdownTable, oneLine, quoted } from "./markdown.ts";
import { type Measure, showMeasure } from "./measure.ts";
import { checkedRecord } from "./read-record.ts";
import type { AsBuiltRecord, RecordedReading, RecordVerdict } from "./record.ts";
import type { ReportOptions } from "./report.ts";

/**
 * Writes an as-built record: what passed, what failed, what was not tested, and the cautions.
 *
 * @param record - from {@link asBuiltRecord} or {@link readRecord}; it is checked again
 * @param options - the unit system
 * @returns Markdown
 * @throws {@link JobError} (an InputError) where it is no record, InputError where the unit system is neither of the two
 *
 * @example
 * ```ts
 * import { asBuiltRecord, planSystem, readJob, recordReport, sampleJob } from "risingmain/plan";
 * import { psi } from "risingmain/units";
 *
 * const plan = planSystem(readJob(sampleJob));
 * const report = recordReport(asBuiltRecord({ plan, readings: { "cut-in": psi(30) } }), { units: "us" });
 * report.split("\n")[0]; // => "# Alder Spring cabin: as-built record"
 * ```
 *
 * @source derived: the record's own data
 */
export function recordReport(record: AsBuiltRecord, options: ReportOptions = {}): string {
  requireObject("options", options);
  const { units = "us" } = options;
  requireOneOf("options.units", units, ["us", "metric"]);
  const { name, date, by, notes, readings, cautions } = checkedRecord(record);
  const show = (value: Measure): string => showMeasure(value, units);
  return `${[
    `# ${oneLine(name)}: as-built record`,
    summary(readings),
    `Read ${date ?? "on a day not recorded"}, by ${by === null ? "a person not recorded" : oneLine(by)}.`,
    `## Readings\n\n${markdownTable(
      ["reading", "how", "expected", "passes", "read", "verdict", "reason"],
      readings.map(({ reading, how, expected, low, high, measured, verdict, reason }) => [
        reading,
        how,
        show(expected),
        `${show(low)} to ${show(high)}`,
        measured === null ? "" : show({ kind: expected.kind, value: measured }),
        verdict === "fail" ? "**fail**" : verdict,
        reason,
      ]),
    )}`,
    notes === null ? "" : `## Notes\n\n${quoted(notes)}`,
    `## How far it goes\n\n${LIMITS}`,
    `## Cautions\n\n${allCautions(cautions)
      .map(({ text }) => `- ${oneLine(text)}`)
      .join("\n")}`,
  ]
    .filter((part) => part !== "")
    .join("\n\n")}\n`;
}

const LIMITS =
  "The bands come from the plan; they are common practice and what the pump's acceptance grade leaves open. The record says what was read on one day. It is no permit, no inspection and no water test, and it stands in place of none.";

/** The answer, first. */
function summary(readings: readonly RecordedReading[]): string {
  const count = (wanted: RecordVerdict): number => readings.filter(({ verdict }) => verdict === wanted).length;
  const [passed, failed, open] = [count("pass"), count("fail"), count("not tested")];
  if (failed > 0)
    return `**Not in order: ${failed} failed, ${passed} passed, ${open} not tested.** The plan or the work is wrong where a reading failed: find out which before it is put into use.`;
  if (open > 0) return `**Not finished: ${passed} passed, none failed, ${open} not tested.**`;
  return `**In order: all ${passed} readings passed.**`;
}

/** The plan's own, and those of reading gauges and meters, whatever became of them in a stored document. */
function allCautions(stored: readonly Caution[]): readonly Caution[] {
  const all = [authorityCaution, ...stored, ...pressureCautions, ...mainsCautions];
  return all.filter(({ code }, i) => all.findIndex((other) => other.code === code) === i);
}
