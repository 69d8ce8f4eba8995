/**
 * The plan as a report: Markdown that a tired installer can read at the wellhead.
 *
 * @module
 */
import { requireObject, requireOneOf } from "../numeric/index.ts";
import { markdownTable, oneLine } from "./markdown.ts";
import { showMeasure, type UnitSystem } from "./measure.ts";
import type { Plan } from "./plan-system.ts";
import { readPlan } from "./read-plan.ts";
import { type ReportLine, type ReportPart, reportParts } from "./report-parts.ts";

/** How a report is written. */
export interface ReportOptions {
  /** US customary or metric; US where left out. */
  readonly units?: UnitSystem;
}

/**
 * Writes the report of a plan: the answer, what must be changed, the numbers, the commissioning sheet, cautions, sources.
 *
 * @param plan - a plan from {@link planSystem}
 * @param options - the unit system
 * @returns Markdown
 * @throws InputError where it is no plan, or the unit system is neither of the two
 * @source derived: the plan's own data
 *
 * @example
 * ```ts
 * import { planSystem, readJob, reportOf, sampleJob } from "risingmain/plan";
 *
 * const report = reportOf(planSystem(readJob(sampleJob)), { units: "metric" });
 * report.split("\n")[0]; // => "# Alder Spring cabin: water system plan"
 * ```
 */
export function reportOf(plan: Plan, options: ReportOptions = {}): string {
  requireObject("options", options);
  const { units = "us" } = options;
  requireOneOf("options.units", units, ["us", "metric"]);
  return readPlan(plan, () => {
    const parts = reportParts(plan, (value) => showMeasure(value, units));
    return `${parts.map(written).join("\n\n")}\n`;
  });
}

/** The first part, the answer, has the title of the whole. */
function written({ code, title, lead, list, table }: ReportPart): string {
  return [
    code === "answer" ? `# ${oneLine(title)}` : `## ${title}`,
    ...(lead === null ? [] : [line(lead)]),
    ...(list.length === 0 ? [] : [list.map((item) => `- ${line(item)}`).join("\n")]),
    ...(table === null ? [] : [markdownTable(table.heads, table.rows)]),
  ].join("\n\n");
}

function line({ strong, text }: ReportLine): string {
  return [strong === "" ? "" : `**${strong}**`, text].filter((part) => part !== "").join(" ");
}
