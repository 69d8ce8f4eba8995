/**
 * The worksheet: answers in, plan out, at every keystroke.
 *
 * @module
 */

import {
  JobError,
  type JobIssue,
  type Plan,
  planSystem,
  readJob,
  readRecord,
  type UnitSystem,
} from "../../src/plan/index.ts";
import { showMeasure } from "../../src/plan/measure.ts";
import { type ReportPart, reportParts } from "../../src/plan/report-parts.ts";
import { InputError } from "../../src/units/index.ts";
import ranch from "../jobs/ranch.json" with { type: "json" };
import { chartsFor, chartsForPaper } from "./chart-place.ts";
import { askedOf, isObject, type Json, type JsonObject, type KeptPart, misshapen } from "./document.ts";
import { byId, h, place, say } from "./dom.ts";
import { type Fault, makeForm } from "./form.ts";
import { fileName, freshSheet, KEPT_AS, keep, keptSheet, type Sheet, saveFile } from "./keep.ts";
import { textOf } from "./quantities.ts";
import { SECTIONS } from "./questions.ts";
import { drawSheet, judge } from "./readings.ts";
import { drawFaults, drawPart, faultsInShort, remembering } from "./results.ts";

/** A pause in the typing, before the findings are read out. */
const READ_OUT_AFTER = 900;

let sheet: Sheet = keptSheet();
/** The sheet before the last file or example replaced it. */
let former: Sheet | null = null;
let plan: Plan | null = null;
/** Counts the sheets put in place of one another. */
let sheetNumber = 0;

/** What the commissioning sheet is drawn from. */
interface SheetBasis extends Pick<Plan, "name" | "commissioning" | "cautions"> {
  readonly system: UnitSystem;
  readonly lead: string;
  /** Number of the sheet whose readings it holds. */
  readonly sheet: number;
}

/** Most of a plan stays as it was while one answer is typed. */
const drawn = {
  answer: remembering(drawPart),
  numbers: remembering(drawPart),
  finePrint: remembering(drawPart),
  readings: remembering(({ system, lead }: SheetBasis) => drawSheet(plan as Plan, sheet, system, lead, store)),
};

const form = makeForm(byId("questions"), () => {
  recompute();
});

/** The plan of the answers, or what keeps it back. */
function planned(asked: JsonObject): { readonly plan: Plan } | { readonly issues: readonly JobIssue[] } {
  try {
    return { plan: planSystem(readJob(asked)) };
  } catch (error) {
    if (error instanceof JobError) return { issues: error.issues };
    // Whatever went wrong, the page says so and shows no number.
    const expected = error instanceof InputError ? error.expected : `a job the library can plan (${String(error)})`;
    return { issues: [{ path: "the job", value: undefined, expected }] };
  }
}

function recompute(): void {
  const { asked, kept } = askedOf(sheet.document, SECTIONS);
  const outcome = planned(asked);
  const faults = form.mark("issues" in outcome ? outcome.issues : []);
  if ("plan" in outcome) {
    plan = outcome.plan;
    showPlan(outcome.plan);
  } else {
    plan = null;
    showFaults(faults);
  }
  document.body.dataset["plan"] = plan === null ? "none" : "made";
  showKept(kept);
  store();
}

function showFaults(faults: readonly Fault[]): void {
  byId("answer").replaceChildren(...drawFaults(faults));
  for (const id of ["numbers", "readings", "fine-print"]) byId(id).replaceChildren();
  chartsFor(null, "us");
  verdict(faultsInShort(faults), "none");
}

function showPlan(made: Plan): void {
  const system = reportUnits();
  const parts = reportParts(made, (value) => showMeasure(value, system));
  const of = (...codes: readonly string[]): readonly ReportPart[] => parts.filter(({ code }) => codes.includes(code));
  const findings = ["answer", "stop", "fix", "look", "good"];
  const fine = ["cautions", "sources"];
  const lead = of("commissioning")[0]?.lead?.text ?? "";
  place(byId("answer"), drawn.answer(of(...findings)));
  place(
    byId("numbers"),
    drawn.numbers(parts.filter(({ code }) => ![...findings, ...fine, "commissioning"].includes(code))),
  );
  const { name, commissioning, cautions } = made;
  place(byId("readings"), drawn.readings([{ name, commissioning, cautions, system, lead, sheet: sheetNumber }]));
  place(byId("fine-print"), drawn.finePrint(of(...fine)));
  chartsFor(made, system);
  document.body.style.setProperty("--print-size", `${printSize(commissioning.length)}pt`);
  const [answer] = of("answer");
  const grave = made.findings.find(({ severity }) => severity !== "good")?.severity ?? "good";
  verdict(answer?.lead?.strong ?? "", grave);
}

/** Height of a page of either usual paper within its margins, points; what stands around the readings; a reading. */
const PAGE = 700;
const AROUND = 42;
const ROW = 2;
/** Type that is read without a lens, and the largest that looks like a form, points. */
const SMALLEST_TYPE = 5.5;
const LARGEST_TYPE = 9;

/** The size of type at which the commissioning sheet stands on one page, points. */
function printSize(rows: number): number {
  return Math.min(LARGEST_TYPE, Math.max(SMALLEST_TYPE, PAGE / (AROUND + ROW * rows)));
}

let reading: ReturnType<typeof setTimeout> | undefined;

/** The answer in a line, at the edge of the page; read out once the typing pauses. */
function verdict(text: string, state: string): void {
  say(byId("verdict"), text);
  byId("verdict").dataset["state"] = state;
  clearTimeout(reading);
  reading = setTimeout(() => {
    const first = (plan?.findings ?? []).filter(({ severity }) => severity !== "good").slice(0, 3);
    say(byId("live"), [text, ...first.map(({ subject, message }) => `${subject} ${message}`.trim())].join(" "));
  }, READ_OUT_AFTER);
}

function showKept(kept: readonly KeptPart[]): void {
  const names = kept.map(({ path }) => path).join(", ");
  say(
    byId("kept"),
    kept.length === 0 ? "" : `Kept in the saved file, but not asked here and not part of the plan: ${names}.`,
  );
}

function store(): void {
  const kept = keep(sheet);
  say(
    byId("storage"),
    kept
      ? "Your answers stay on this device, in this browser. Nothing is sent anywhere."
      : "This browser keeps nothing: save your answers to a file before you close the page.",
  );
}

/** Another sheet in place of this one, with a way back. */
function replaceSheet(next: Sheet): void {
  former = sheet;
  sheet = next;
  sheetNumber++;
  form.draw(sheet.document);
  recompute();
}

function tell(text: string, undo = false): void {
  const back = h("button", { type: "button", onclick: () => undoReplace() }, "Put the former answers back");
  byId("told").replaceChildren(text, ...(undo ? [" ", back] : []));
}

function undoReplace(): void {
  if (former === null) return;
  replaceSheet(former);
  former = null;
  tell("The former answers are back.");
}

async function openFile(file: File): Promise<void> {
  try {
    const content = JSON.parse((await file.text()).replace(/^\uFEFF/, "")) as Json;
    tell(isObject(content) && Array.isArray(content["readings"]) ? openRecord(content) : openJob(content), true);
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    const lines = error instanceof JobError ? error.lines.slice(0, 3) : [error.message];
    tell(`${file.name} was not opened, and nothing was changed: ${lines.join("; ")}.`);
  }
}

/** Puts a job document into the sheet; what was done, in words. */
function openJob(content: Json): string {
  const wrong = misshapen(content, SECTIONS);
  if (wrong !== null) throw new Error(`it is no job document, ${wrong} is not what it should be`);
  const document = content as JsonObject;
  if (document["version"] !== 1) throw new Error("it is no job document of form 1, the form this page reads");
  replaceSheet({ ...freshSheet(), document });
  return "The job is opened.";
}

/** Puts the readings of a record into the sheet; what was done, in words. */
function openRecord(content: JsonObject): string {
  const { name, date, by, notes, readings } = readRecord(content);
  if (name !== String(sheet.document["name"] ?? "").trim())
    throw new Error(`it is the record of “${name}”: open the job of that property first`);
  const system = reportUnits();
  const typed = readings.flatMap(({ code, expected, measured }) =>
    measured === null ? [] : [[code, textOf(expected.kind, measured, system)] as const],
  );
  replaceSheet({
    ...sheet,
    readings: Object.fromEntries(typed),
    date: date ?? "",
    by: by ?? "",
    notes: notes ?? "",
  });
  return "The readings of the record are filled in.";
}

function on(id: string, act: () => void): void {
  byId(id).addEventListener("click", act);
}

on("example", () => {
  replaceSheet({ ...freshSheet(), document: structuredClone(ranch) as JsonObject });
  tell("The example is filled in: an invented ranch.", true);
});
on("clear", () => {
  replaceSheet(freshSheet());
  tell("The sheet is empty.", true);
});
on("save", () => {
  saveFile(fileName(sheet.document["name"], "job.json"), sheet.document);
  tell(plan === null ? "Saved, as far as it is filled in." : "Saved.");
});
on("save-record", () => {
  const judged = plan === null ? null : judge(plan, sheet);
  if (judged?.record == null) {
    tell("No record to save: it needs a plan, and readings that can be read.");
  } else {
    saveFile(fileName(sheet.document["name"], "record.json"), judged.record);
    tell("The record is saved.");
  }
});
on("print-sheet", () => window.print());
on("print-plan", () => void printPlan());
byId("open").addEventListener("change", (event) => {
  const input = event.target as HTMLInputElement;
  const [file] = input.files ?? [];
  if (file !== undefined) void openFile(file);
  input.value = "";
});

/** The whole plan on paper; the page by itself prints the commissioning sheet. */
async function printPlan(): Promise<void> {
  if (plan === null) return;
  await chartsForPaper(plan, reportUnits());
  document.body.dataset["print"] = "plan";
  window.print();
  document.body.dataset["print"] = "sheet";
  chartsFor(plan, reportUnits());
}

function reportUnits(): UnitSystem {
  return sheet.document["reportUnits"] === "metric" ? "metric" : "us";
}

/** Light or dark as the rest of the site is set; as the device is, where nothing was set. */
function followSite(): void {
  try {
    const theme = localStorage.getItem("tsd-theme");
    if (theme === "light" || theme === "dark") document.documentElement.dataset["theme"] = theme;
  } catch {
    // A browser that keeps nothing has nothing set.
  }
}

/** Kept for the next visit without a network, where the browser can; a copy in one file needs no keeping. */
async function keepPage(): Promise<void> {
  if (byId("offline").dataset["copy"] === "one file" || !("serviceWorker" in navigator)) return;
  try {
    await navigator.serviceWorker.register("worksheet-offline.js", { scope: "worksheet.html" });
    await navigator.serviceWorker.ready;
    say(byId("offline"), "This page is kept on this device and opens without a network.");
  } catch {
    say(byId("offline"), "This browser does not keep the page for use without a network: download it as one file.");
  }
}

followSite();
form.draw(sheet.document);
recompute();
void keepPage();
window.addEventListener("storage", ({ key }) => {
  if (key === KEPT_AS)
    tell("The sheet was changed in another window. Load this page again to see it; typing here replaces it.");
});
matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => {
  if (plan !== null) chartsFor(plan, reportUnits());
});
