/**
 * The plan on the page, in the words of the report.
 *
 * @module
 */
import type { ReportLine, ReportPart, ReportTable } from "../../src/plan/report-parts.ts";
import { h } from "./dom.ts";
import type { Fault } from "./form.ts";

/** What stands in place of the plan while answers are missing or wrong: what they are, each a way to its question. */
export function drawFaults(faults: readonly Fault[]): readonly HTMLElement[] {
  const missing = faults.filter(({ expected }) => expected === "");
  const wrong = faults.filter(({ expected }) => expected !== "");
  const list = (some: readonly Fault[]): HTMLElement =>
    h(
      "ul",
      {},
      ...some.map(({ where, expected, go }) =>
        h(
          "li",
          {},
          go === null ? where : h("button", { type: "button", class: "go", onclick: go }, where),
          ...(expected === "" ? [] : [h("span", {}, `. Expected ${expected}.`)]),
        ),
      ),
    );
  return [
    h("h2", {}, "No plan yet"),
    ...(wrong.length === 0 ? [] : [h("h3", {}, `To put right: ${counted(wrong.length, "answer")}`), list(wrong)]),
    ...(missing.length === 0
      ? []
      : [h("h3", {}, `Still missing: ${counted(missing.length, "answer")}`), list(missing)]),
  ];
}

/** One line of what keeps the plan back. */
export function faultsInShort(faults: readonly Fault[]): string {
  const missing = faults.filter(({ expected }) => expected === "").length;
  const wrong = faults.length - missing;
  const parts = [
    ...(wrong === 0 ? [] : [`${counted(wrong, "answer")} to put right`]),
    ...(missing === 0 ? [] : [`${counted(missing, "answer")} missing`]),
  ];
  return `No plan yet: ${parts.join(", ")}.`;
}

function counted(n: number, thing: string): string {
  return `${n} ${thing}${n === 1 ? "" : "s"}`;
}

/** Draws a list of things, each anew only where it says something else than the last time. */
export function remembering<T>(draw: (thing: T) => HTMLElement): (things: readonly T[]) => readonly HTMLElement[] {
  let drawn: ReadonlyMap<string, HTMLElement> = new Map();
  return (things) => {
    const next = new Map<string, HTMLElement>();
    for (const thing of things) {
      const said = JSON.stringify(thing);
      next.set(said, drawn.get(said) ?? draw(thing));
    }
    drawn = next;
    return [...next.values()];
  };
}

/** A part of the report. */
export function drawPart({ code, title, lead, list, table }: ReportPart): HTMLElement {
  return h(
    "section",
    { class: `part ${code}` },
    h(code === "answer" ? "h2" : "h3", {}, title),
    ...(lead === null ? [] : [h("p", { class: "lead" }, ...line(lead))]),
    ...(list.length === 0 ? [] : [h("ul", {}, ...list.map((item) => h("li", {}, ...line(item))))]),
    ...(table === null ? [] : [drawTable(table, title, code === "figures")]),
  );
}

function line({ strong, text }: ReportLine): readonly (Node | string)[] {
  return [...(strong === "" ? [] : [h("strong", {}, strong), " "]), text];
}

/** A table; one of many columns is moved sideways on a narrow page. */
function drawTable({ heads, rows }: ReportTable, title: string, plain: boolean): HTMLElement {
  const table = h(
    "table",
    {},
    h("thead", plain ? { class: "unseen" } : {}, h("tr", {}, ...heads.map((head) => h("th", { scope: "col" }, head)))),
    h(
      "tbody",
      {},
      ...rows.map(([first = "", ...rest]) =>
        h("tr", {}, h("th", { scope: "row" }, first), ...rest.map((cell) => h("td", {}, cell))),
      ),
    ),
  );
  if (plain) return table;
  return h("div", { class: "wide", role: "region", "aria-label": `${title}, table`, tabindex: "0" }, table);
}
