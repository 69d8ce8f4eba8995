/**
 * The commissioning sheet: what should be read, what was, and what came of it.
 *
 * @module
 */
import {
  type AsBuiltRecord,
  asBuiltRecord,
  JobError,
  type Plan,
  type RecordVerdict,
  type UnitSystem,
} from "../../src/plan/index.ts";
import { type Measure, showMeasure } from "../../src/plan/measure.ts";
import { InputError } from "../../src/units/index.ts";
import { h, say } from "./dom.ts";
import type { Sheet } from "./keep.ts";
import { parseKind, unitOf } from "./quantities.ts";

/** As many letters as a record holds. */
const MOST_LETTERS = { date: 10, by: 200, notes: 10_000 } as const;

/** The readings of a sheet against its plan. */
interface Judged {
  /** The record; null while a reading cannot be read. */
  readonly record: AsBuiltRecord | null;
  /** What came of each reading that can be read. */
  readonly verdicts: ReadonlyMap<string, RecordVerdict>;
  /** What is wrong with the others, by code. */
  readonly faults: ReadonlyMap<string, string>;
  /** Readings kept that this plan does not ask for. */
  readonly strays: readonly string[];
}

/** Reads what was typed and fills the sheet of the plan. */
export function judge(plan: Plan, sheet: Sheet): Judged {
  const { readings, date, by, notes } = sheet;
  const faults = new Map<string, string>();
  const taken: Record<string, number> = {};
  for (const { code, expected } of plan.commissioning) {
    const typed = typedOf(sheet, code).trim();
    if (typed === "") continue;
    try {
      taken[code] = parseKind(expected.kind, typed);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      faults.set(code, `Expected ${error.expected}.`);
    }
  }
  const said = (key: string, value: string): object => (value.trim() === "" ? {} : { [key]: value.trim() });
  const fill = (): AsBuiltRecord =>
    asBuiltRecord({ plan, readings: taken, ...said("date", date), ...said("by", by), ...said("notes", notes) });
  let record: AsBuiltRecord;
  try {
    record = fill();
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    for (const code of Object.keys(taken)) {
      if (!error.issues.some(({ path }) => path === `readings.${code}`)) continue;
      faults.set(code, "Expected a reading that such an instrument can show.");
      delete taken[code];
    }
    record = fill();
  }
  const codes = new Set(plan.commissioning.map(({ code }) => code));
  return {
    record: faults.size > 0 ? null : record,
    verdicts: new Map(record.readings.map(({ code, verdict }) => [code, verdict])),
    faults,
    strays: Object.keys(readings).filter((code) => !codes.has(code) && typedOf(sheet, code).trim() !== ""),
  };
}

function typedOf({ readings }: Sheet, code: string): string {
  return Object.hasOwn(readings, code) ? (readings[code] ?? "") : "";
}

/** The sheet, drawn; `changed` is called after every reading. */
export function drawSheet(
  plan: Plan,
  sheet: Sheet,
  system: UnitSystem,
  lead: string,
  changed: () => void,
): HTMLElement {
  const show = (value: Measure): string => showMeasure(value, system);
  const summary = h("p", { class: "summary" });
  const update = (): void => {
    const { record, verdicts, faults, strays } = judge(plan, sheet);
    for (const { code, cell, input } of rows) {
      const fault = faults.get(code);
      const said = fault ?? (input.value.trim() === "" ? "" : (verdicts.get(code) ?? ""));
      say(cell, said);
      cell.dataset["verdict"] = fault === undefined ? said : "wrong";
      if (fault === undefined) input.removeAttribute("aria-invalid");
      else input.setAttribute("aria-invalid", "true");
    }
    say(summary, summaryOf(record, faults.size, strays));
    element.dataset["taken"] = rows.some(({ input }) => input.value.trim() !== "") ? "some" : "none";
  };
  const rows = plan.commissioning.map((reading, i) => {
    const { code, expected } = reading;
    const cell = h("td", { role: "cell", id: `reading-${i}-verdict`, class: "verdict" });
    const unit = unitOf(expected.kind, system);
    const input = h("input", {
      type: "text",
      id: `reading-${i}`,
      autocomplete: "off",
      spellcheck: "false",
      "aria-label": `Read: ${reading.reading}, such as ${show(expected)}`,
      "aria-describedby": cell.id,
      oninput: () => {
        if (input.value.trim() === "") delete sheet.readings[code];
        else sheet.readings[code] = input.value;
        update();
        changed();
      },
    });
    input.value = typedOf(sheet, code);
    const row = h(
      "tr",
      { role: "row" },
      h("th", { role: "rowheader", scope: "row" }, reading.reading, h("span", { class: "how" }, reading.how)),
      h("td", { role: "cell", "data-head": "expected" }, show(expected)),
      h("td", { role: "cell", "data-head": "passes" }, `${show(reading.low)} to ${show(reading.high)}`),
      h("td", { role: "cell", "data-head": `read, in ${unit}`, class: "read" }, input),
      cell,
    );
    return { code, cell, input, row };
  });
  const written = (key: "date" | "by" | "notes", label: string, type: string): HTMLElement => {
    const input = h(type === "textarea" ? "textarea" : "input", {
      id: `record-${key}`,
      ...(type === "textarea" ? { rows: "2" } : { type }),
      maxlength: String(MOST_LETTERS[key]),
      oninput: () => {
        sheet[key] = input.value;
        input.toggleAttribute("data-empty", input.value === "");
        update();
        changed();
      },
    });
    input.value = sheet[key];
    // The browser drops what is no day.
    sheet[key] = input.value;
    input.toggleAttribute("data-empty", input.value === "");
    return h("div", { class: `field ${key}` }, h("label", { for: input.id }, label), input);
  };
  const element = h(
    "div",
    {},
    h("h3", {}, "Commissioning sheet"),
    h("p", {}, lead),
    h("div", { class: "who" }, written("date", "Day of the readings", "date"), written("by", "Read by", "text")),
    h(
      "table",
      { class: "readings", role: "table", "aria-label": "Readings to take" },
      h(
        "thead",
        { role: "rowgroup" },
        h(
          "tr",
          { role: "row" },
          ...["reading", "expected", "passes", "read", "verdict"].map((head) =>
            h("th", { role: "columnheader", scope: "col" }, head),
          ),
        ),
      ),
      h("tbody", { role: "rowgroup" }, ...rows.map(({ row }) => row)),
    ),
    written("notes", "Notes", "textarea"),
    summary,
  );
  update();
  return element;
}

function summaryOf(record: AsBuiltRecord | null, wrong: number, strays: readonly string[]): string {
  const kept =
    strays.length === 0 ? "" : ` Kept, though this plan does not ask for them: the readings ${strays.join(", ")}.`;
  if (record === null) return `${wrong} of the readings cannot be read: no record until they are put right.${kept}`;
  const count = (verdict: RecordVerdict): number => record.readings.filter((row) => row.verdict === verdict).length;
  return `${count("pass")} passed, ${count("fail")} failed, ${count("not tested")} not tested.${kept}`;
}
