/**
 * The plan as a report: Markdown that a tired installer can read at the wellhead.
 *
 * @module
 */
import { requireObject, requireOneOf } from "../numeric/index.ts";
import { citeAsText } from "../sources/index.ts";
import { citationsOf } from "./citations.ts";
import { stageFigures } from "./figures.ts";
import type { Basis, Finding, Severity } from "./finding.ts";
import { markdownTable, oneLine } from "./markdown.ts";
import { type Measure, showMeasure, type UnitSystem } from "./measure.ts";
import type { Plan } from "./plan-system.ts";
import { MARGINS } from "./power-findings.ts";
import { readPlan } from "./read-plan.ts";

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
  return readPlan(plan, () => written(plan, (value) => showMeasure(value, units)));
}

function written(plan: Plan, show: Show): string {
  return `${[
    `# ${oneLine(plan.name)}: water system plan`,
    answer(plan, show),
    findingsOf(plan, "stop", "Must not be built like this", show),
    findingsOf(plan, "fix", "To change", show),
    findingsOf(plan, "look", "To look at", show),
    findingsOf(plan, "good", "In order", show),
    layoutTables(plan, show),
    ...stageFigures(plan.stages).map(
      ({ title, figures }) =>
        `## ${title}\n\n${markdownTable(
          ["figure", "value"],
          figures.map(({ label, value }) => [label, typeof value === "string" ? value : show(value)]),
        )}`,
    ),
    candidates(plan, show),
    cables(plan, show),
    generators(plan, show),
    `## Commissioning sheet\n\nTake these readings in order, the first two with the pump off. A reading outside its band means the plan or the work is wrong: find out which before leaving.\n\n${markdownTable(
      ["reading", "how", "expected", "passes", "read"],
      plan.commissioning.map(({ reading, how, expected, low, high }) => [
        reading,
        how,
        show(expected),
        `${show(low)} to ${show(high)}`,
        "",
      ]),
    )}`,
    `## Cautions\n\n${plan.cautions.map(({ text }) => `- ${text}`).join("\n")}`,
    `## Sources\n\nLimits marked common practice have no printed source.\n\n${citationsOf(plan)
      .map((source) => `- ${source.id}: ${citeAsText(source)}`)
      .join("\n")}`,
  ]
    .filter((part) => part !== "")
    .join("\n\n")}\n`;
}

type Show = (value: Measure) => string;

/** What to buy and set, in the fewest lines. */
function answer({ stages, findings }: Plan, show: Show): string {
  const { pump, dropPipe, tank, controls, power, disinfection } = stages;
  const grave = findings.filter(({ severity }) => severity === "stop").length;
  const toFix = findings.filter(({ severity }) => severity === "fix").length;
  const verdict =
    grave > 0
      ? `**Do not build it like this: ${count(grave, "thing")} must change first.**`
      : toFix > 0
        ? `**It will run; ${count(toFix, "thing")} should change.**`
        : pump.chosen === null
          ? "**Buy a pump for the duty below.**"
          : "**It will run as planned.**";
  const duty = `${show({ kind: "flow", value: pump.dutyFlow })} at ${show({ kind: "length", value: pump.duty.totalDynamicHead })} of head`;
  const unchecked = pump.chosen === null ? " Without a pump, power, controls and relief are not checked." : "";
  return [
    `${verdict}${unchecked}`,
    "",
    `- Pump: ${pump.chosen === null ? `one that gives ${duty}` : `${pump.chosen.name} (wanted: ${duty})`}, intake at ${show({ kind: "length", value: pump.setting })}.`,
    `- Drop pipe: ${show({ kind: "length", value: dropPipe.length })} of ${dropPipe.pipe.name}.`,
    `- Switch: ${show({ kind: "pressure", value: controls.cutIn })} to ${show({ kind: "pressure", value: controls.cutOut })}${controls.setPressure === null ? "" : `, valve at ${show({ kind: "pressure", value: controls.setPressure })}`}.`,
    `- Tank: ${show({ kind: "volume", value: tank.volume })}, precharge ${show({ kind: "pressure", value: tank.precharge })}, gives ${show({ kind: "volume", value: tank.drawdown.usable })} a cycle.`,
    ...(power === null
      ? []
      : [
          `- Cables: ${power.cables.map(({ name, size, material, length }) => `${size} ${material}, ${show({ kind: "length", value: length })} (${name})`).join("; ")}. Motor circuit, with overload protection: breaker at most ${show({ kind: "current", value: power.highestBreaker })}.`,
        ]),
    `- Disinfection: ${show({ kind: "smallVolume", value: disinfection.dose.bleach })} of bleach.`,
  ].join("\n");
}

function count(n: number, thing: string): string {
  return `${n} ${thing}${n === 1 ? "" : "s"}`;
}

function findingsOf({ findings }: Plan, severity: Severity, title: string, show: Show): string {
  const list = findings.filter((finding) => finding.severity === severity);
  return list.length === 0 ? "" : `## ${title}\n\n${list.map((finding) => `- ${sentence(finding, show)}`).join("\n")}`;
}

function sentence({ severity, subject, message, value, limit, basis, remedy }: Finding, show: Show): string {
  const about = subject === "" ? "" : `**${capital(subject)}.** `;
  const found =
    severity === "good"
      ? `${show(value)} against a limit of ${show(limit)}`
      : `Found ${show(value)}, limit ${show(limit)}`;
  return `${about}${message} ${found} (${basisText(basis)}).${remedy === "" ? "" : ` ${remedy}`}`;
}

function basisText({ kind, source, locator }: Basis): string {
  return [kind === "published" ? "" : kind, source ?? "", locator ?? ""].filter((part) => part !== "").join(", ");
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

function layoutTables({ stages }: Plan, show: Show): string {
  const { runs, uses } = stages.layout;
  const parts = [
    runs.length === 0
      ? ""
      : `## Yard lines\n\n${markdownTable(
          ["run", "length", "pipe", "most flow", "velocity", "head lost"],
          runs.map((run) => [
            run.name,
            show({ kind: "length", value: run.length }),
            run.pipe.name,
            show({ kind: "flow", value: run.flow }),
            show({ kind: "velocity", value: run.velocity }),
            show({ kind: "length", value: run.headLoss }),
          ]),
        )}`,
    `## Pressure at the outlets\n\n${markdownTable(
      ["use", "outlet", "flow", "while the pump runs", "at cut-in", "wanted"],
      uses.flatMap(({ name, outlets }) =>
        outlets.map((outlet) => [
          name,
          outlet.name,
          show({ kind: "flow", value: outlet.flow }),
          show({ kind: "pressure", value: outlet.pressureHeld }),
          show({ kind: "pressure", value: outlet.pressureAtCutIn }),
          show({ kind: "pressure", value: outlet.wanted }),
        ]),
      ),
    )}`,
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

function candidates({ stages }: Plan, show: Show): string {
  const { candidates: tried } = stages.pump;
  if (tried.length === 0) return "";
  const flow = (point: { readonly flow: number } | null): string =>
    point === null ? "none" : show({ kind: "flow", value: point.flow });
  return `## Pumps tried\n\n${markdownTable(
    ["pump", "at cut-in", "at cut-out", "does the job"],
    tried.map(({ name, atCutIn, atCutOut, suits, faults }) => [
      name,
      flow(atCutIn),
      flow(atCutOut),
      suits ? "yes" : `no: ${faults.map(({ reason }) => reason).join("; ")}`,
    ]),
  )}`;
}

function cables({ stages }: Plan, show: Show): string {
  const { power } = stages;
  if (power === null) return "";
  return `## Cables\n\n${markdownTable(
    ["cable", "length", "size", "grounding, at least", "voltage lost"],
    power.cables.map(({ name, length, size, material, groundingSize, drop }) => [
      name,
      show({ kind: "length", value: length }),
      `${size} ${material}`,
      groundingSize,
      show({ kind: "voltage", value: drop }),
    ]),
  )}`;
}

/** Every margin of every generator: the installer asks which of them is near. */
function generators({ stages }: Plan, show: Show): string {
  const rows = (stages.power?.sources ?? []).flatMap(({ name, generator }) =>
    generator === null || !("margins" in generator)
      ? []
      : generator.margins.map(({ check, value, limit, margin }) => {
          const { kind } = MARGINS[check];
          return [name, check, show({ kind, value }), show({ kind, value: limit }), show({ kind, value: margin })];
        }),
  );
  return rows.length === 0
    ? ""
    : `## Generator\n\n${markdownTable(["source", "check", "asked", "limit", "left"], rows)}`;
}
