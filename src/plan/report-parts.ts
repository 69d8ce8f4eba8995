/**
 * What the report of a plan says, part by part, for any kind of page: text alone, no markup.
 *
 * @module
 */
import { citeAsText } from "../sources/index.ts";
import { citationsOf } from "./citations.ts";
import { stageFigures } from "./figures.ts";
import type { Basis, Finding, Severity } from "./finding.ts";
import type { Measure } from "./measure.ts";
import type { Plan } from "./plan-system.ts";
import { MARGINS } from "./power-findings.ts";

/** A sentence or two. */
export interface ReportLine {
  /** What it opens with, set heavier; empty where nothing does. */
  readonly strong: string;
  /** The rest; empty where there is none. */
  readonly text: string;
}

/** A table: the first row names the columns. */
export interface ReportTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A part of the report under its own heading: a paragraph, a list, a table, each where there is one. */
export interface ReportPart {
  /** Short name that does not change: `answer`, `stop`, `figures`. Parts of one kind share it. */
  readonly code: string;
  /** The heading. */
  readonly title: string;
  /** The paragraph; null where there is none. */
  readonly lead: ReportLine | null;
  /** The list; empty where there is none. */
  readonly list: readonly ReportLine[];
  /** The table; null where there is none. */
  readonly table: ReportTable | null;
}

type Show = (value: Measure) => string;

/** The parts of the report in their order: the answer, what must be changed, the numbers, the sheet, cautions, sources. */
export function reportParts(plan: Plan, show: Show): readonly ReportPart[] {
  const { commissioning, cautions } = plan;
  return [
    answer(plan, show),
    ...findingsOf(plan, "stop", "Must not be built like this", show),
    ...findingsOf(plan, "fix", "To change", show),
    ...findingsOf(plan, "look", "To look at", show),
    ...findingsOf(plan, "good", "In order", show),
    ...layoutTables(plan, show),
    ...stageFigures(plan.stages).map(({ title, figures }) =>
      part("figures", title, {
        table: {
          heads: ["figure", "value"],
          rows: figures.map(({ label, value }) => [label, typeof value === "string" ? value : show(value)]),
        },
      }),
    ),
    ...candidates(plan, show),
    ...cables(plan, show),
    ...generators(plan, show),
    part("commissioning", "Commissioning sheet", {
      lead: plain(
        "Take these readings in order, the first two with the pump off. A reading outside its band means the plan or the work is wrong: find out which before leaving.",
      ),
      table: {
        heads: ["reading", "how", "expected", "passes", "read"],
        rows: commissioning.map(({ reading, how, expected, low, high }) => [
          reading,
          how,
          show(expected),
          `${show(low)} to ${show(high)}`,
          "",
        ]),
      },
    }),
    part("cautions", "Cautions", { list: cautions.map(({ text }) => plain(text)) }),
    part("sources", "Sources", {
      lead: plain("Limits marked common practice have no printed source."),
      list: citationsOf(plan).map((source) => plain(`${source.id}: ${citeAsText(source)}`)),
    }),
  ];
}

function part(code: string, title: string, content: Partial<Omit<ReportPart, "code" | "title">>): ReportPart {
  return { code, title, lead: null, list: [], table: null, ...content };
}

function plain(text: string): ReportLine {
  return { strong: "", text };
}

/** What to buy and set, in the fewest lines. */
function answer({ name, stages, findings }: Plan, show: Show): ReportPart {
  const { pump, dropPipe, tank, controls, power, disinfection } = stages;
  const grave = findings.filter(({ severity }) => severity === "stop").length;
  const toFix = findings.filter(({ severity }) => severity === "fix").length;
  const verdict =
    grave > 0
      ? `Do not build it like this: ${count(grave, "thing")} must change first.`
      : toFix > 0
        ? `It will run; ${count(toFix, "thing")} should change.`
        : pump.chosen === null
          ? "Buy a pump for the duty below."
          : "It will run as planned.";
  const duty = `${show({ kind: "flow", value: pump.dutyFlow })} at ${show({ kind: "length", value: pump.duty.totalDynamicHead })} of head`;
  const unchecked = pump.chosen === null ? "Without a pump, power, controls and relief are not checked." : "";
  const list = [
    `Pump: ${pump.chosen === null ? `one that gives ${duty}` : `${pump.chosen.name} (wanted: ${duty})`}, intake at ${show({ kind: "length", value: pump.setting })}.`,
    `Drop pipe: ${show({ kind: "length", value: dropPipe.length })} of ${dropPipe.pipe.name}.`,
    `Switch: ${show({ kind: "pressure", value: controls.cutIn })} to ${show({ kind: "pressure", value: controls.cutOut })}${controls.setPressure === null ? "" : `, valve at ${show({ kind: "pressure", value: controls.setPressure })}`}.`,
    `Tank: ${show({ kind: "volume", value: tank.volume })}, precharge ${show({ kind: "pressure", value: tank.precharge })}, gives ${show({ kind: "volume", value: tank.drawdown.usable })} a cycle.`,
    ...(power === null
      ? []
      : [
          `Cables: ${power.cables.map(({ name, size, material, length }) => `${size} ${material}, ${show({ kind: "length", value: length })} (${name})`).join("; ")}. Motor circuit, with overload protection: breaker at most ${show({ kind: "current", value: power.highestBreaker })}.`,
        ]),
    `Disinfection: ${show({ kind: "smallVolume", value: disinfection.dose.bleach })} of bleach.`,
  ];
  return part("answer", `${name}: water system plan`, {
    lead: { strong: verdict, text: unchecked },
    list: list.map(plain),
  });
}

function count(n: number, thing: string): string {
  return `${n} ${thing}${n === 1 ? "" : "s"}`;
}

function findingsOf({ findings }: Plan, severity: Severity, title: string, show: Show): ReportPart[] {
  const list = findings.filter((finding) => finding.severity === severity);
  return list.length === 0 ? [] : [part(severity, title, { list: list.map((finding) => sentence(finding, show)) })];
}

function sentence({ severity, subject, message, value, limit, basis, remedy }: Finding, show: Show): ReportLine {
  const found =
    severity === "good"
      ? `${show(value)} against a limit of ${show(limit)}`
      : `Found ${show(value)}, limit ${show(limit)}`;
  return {
    strong: subject === "" ? "" : `${capital(subject)}.`,
    text: `${message} ${found} (${basisText(basis)}).${remedy === "" ? "" : ` ${remedy}`}`,
  };
}

function basisText({ kind, source, locator }: Basis): string {
  return [kind === "published" ? "" : kind, source ?? "", locator ?? ""].filter((part) => part !== "").join(", ");
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

function layoutTables({ stages }: Plan, show: Show): ReportPart[] {
  const { runs, uses } = stages.layout;
  return [
    ...(runs.length === 0
      ? []
      : [
          part("runs", "Yard lines", {
            table: {
              heads: ["run", "length", "pipe", "most flow", "velocity", "head lost"],
              rows: runs.map((run) => [
                run.name,
                show({ kind: "length", value: run.length }),
                run.pipe.name,
                show({ kind: "flow", value: run.flow }),
                show({ kind: "velocity", value: run.velocity }),
                show({ kind: "length", value: run.headLoss }),
              ]),
            },
          }),
        ]),
    part("outlets", "Pressure at the outlets", {
      table: {
        heads: ["use", "outlet", "flow", "while the pump runs", "at cut-in", "wanted"],
        rows: uses.flatMap(({ name, outlets }) =>
          outlets.map((outlet) => [
            name,
            outlet.name,
            show({ kind: "flow", value: outlet.flow }),
            show({ kind: "pressure", value: outlet.pressureHeld }),
            show({ kind: "pressure", value: outlet.pressureAtCutIn }),
            show({ kind: "pressure", value: outlet.wanted }),
          ]),
        ),
      },
    }),
  ];
}

function candidates({ stages }: Plan, show: Show): ReportPart[] {
  const { candidates: tried } = stages.pump;
  if (tried.length === 0) return [];
  const flow = (point: { readonly flow: number } | null): string =>
    point === null ? "none" : show({ kind: "flow", value: point.flow });
  return [
    part("candidates", "Pumps tried", {
      table: {
        heads: ["pump", "at cut-in", "at cut-out", "does the job"],
        rows: tried.map(({ name, atCutIn, atCutOut, suits, faults }) => [
          name,
          flow(atCutIn),
          flow(atCutOut),
          suits ? "yes" : `no: ${faults.map(({ reason }) => reason).join("; ")}`,
        ]),
      },
    }),
  ];
}

function cables({ stages }: Plan, show: Show): ReportPart[] {
  const { power } = stages;
  if (power === null) return [];
  return [
    part("cables", "Cables", {
      table: {
        heads: ["cable", "length", "size", "grounding, at least", "voltage lost"],
        rows: power.cables.map(({ name, length, size, material, groundingSize, drop }) => [
          name,
          show({ kind: "length", value: length }),
          `${size} ${material}`,
          groundingSize,
          show({ kind: "voltage", value: drop }),
        ]),
      },
    }),
  ];
}

/** Every margin of every generator: the installer asks which of them is near. */
function generators({ stages }: Plan, show: Show): ReportPart[] {
  const rows = (stages.power?.sources ?? []).flatMap(({ name, generator }) =>
    generator === null || !("margins" in generator)
      ? []
      : generator.margins.map(({ check, value, limit, margin }) => {
          const { kind } = MARGINS[check];
          return [name, check, show({ kind, value }), show({ kind, value: limit }), show({ kind, value: margin })];
        }),
  );
  if (rows.length === 0) return [];
  const heads = ["source", "check", "asked", "limit", "left"];
  return [part("generator", "Generator", { table: { heads, rows } })];
}
