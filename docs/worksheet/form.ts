/**
 * The questions on the page: each answer goes into the job document as it is typed.
 *
 * @module
 */
import type { JobIssue } from "../../src/plan/index.ts";
import { type JsonObject, setValue, valueAt } from "./document.ts";
import { h, say } from "./dom.ts";
import { shownTwice } from "./quantities.ts";
import {
  type Group,
  type Item,
  type ListQuestion,
  type NameList,
  type Question,
  SECTIONS,
  WELLHEAD,
} from "./questions.ts";

/** An answer that is missing or wrong. */
export interface Fault {
  /** Where the answer stands, in words: "Runs of pipe, run 2: Length". */
  readonly where: string;
  /** What is expected; empty where the answer is merely missing. */
  readonly expected: string;
  /** Puts the reader there; null where no question asks for it. */
  readonly go: (() => void) | null;
}

/** The questions, drawn. */
export interface Form {
  /** Draws everything again, from another document. */
  draw(document: JsonObject): void;
  /** Says at each question what is wrong with its answer; returns the faults in the order of the page. */
  mark(issues: readonly JobIssue[]): readonly Fault[];
}

interface Field {
  readonly path: string;
  /** The row the question stands in; empty at the top. */
  readonly row: string;
  readonly item: Question | ListQuestion;
  readonly where: string;
  /** What is hidden where the question is not asked. */
  readonly box: HTMLElement;
  /** What takes the focus, and is marked as wrong. */
  readonly control: HTMLElement;
  readonly note: HTMLElement;
  /** Writes the options again where they are names of the job. */
  readonly refresh?: () => void;
  /** What the note was last written for: most answers stay as they were while one is typed. */
  noted?: string;
}

/** Digits alone: a whole number. */
const WHOLE = /^\d{1,9}$/;

/** Draws the questions into a part of the page; `changed` is called after every answer. */
export function makeForm(root: HTMLElement, changed: () => void): Form {
  let answers: JsonObject = {};
  const fields = new Map<string, Field>();

  const draw = (document: JsonObject): void => {
    answers = document;
    fields.clear();
    root.replaceChildren(
      ...SECTIONS.map((section, i) =>
        h(
          "section",
          { "aria-labelledby": `section-${i}` },
          h("h2", { id: `section-${i}` }, `${i + 1}. ${section.label}`),
          ...section.items.map((item) => drawItem(item, "", "")),
        ),
      ),
    );
    refreshAll();
  };

  const drawItem = (item: Item, row: string, where: string): HTMLElement => {
    if (item.ask === "group") return drawGroup(item, row, where);
    const path = row === "" ? item.key : `${row}.${item.key}`;
    if (item.ask === "list") return drawList(item, path, row, where === "" ? item.label : `${where}, ${item.label}`);
    return drawQuestion(item, path, row, where === "" ? item.label : `${where}: ${item.label}`);
  };

  const drawGroup = (group: Group, row: string, where: string): HTMLElement => {
    const inner = [
      ...(group.note === undefined ? [] : [h("p", { class: "hint" }, group.note)]),
      ...group.items.map((item) => drawItem(item, row, where)),
    ];
    if (!group.folded) return h("fieldset", { class: "group" }, h("legend", {}, group.label), ...inner);
    const open = group.items.some((item) => isAnswered(item, row));
    return h(
      "details",
      { open },
      h("summary", {}, group.label, h("span", { class: "faults" })),
      h("div", { class: "folded" }, ...inner),
    );
  };

  const isAnswered = (item: Item, row: string): boolean =>
    item.ask === "group"
      ? item.items.some((inner) => isAnswered(inner, row))
      : valueAt(answers, row === "" ? item.key : `${row}.${item.key}`) !== undefined;

  const drawList = (list: ListQuestion, path: string, row: string, where: string): HTMLElement => {
    const rows = h("div", { class: list.line === true ? "rows lines" : "rows" });
    const note = h("p", { class: "note", id: `${path}-note` });
    const add = h(
      "button",
      { type: "button", class: "add", "aria-describedby": note.id, onclick: () => addRow() },
      `Add ${list.row.toLowerCase()}`,
    );
    const drawRows = (): void => {
      for (const key of fields.keys()) if (key.startsWith(`${path}[`)) fields.delete(key);
      const held = valueAt(answers, path);
      const length = Array.isArray(held) ? held.length : 0;
      rows.replaceChildren(
        ...Array.from({ length }, (_, i) => {
          const title = `${list.row} ${i + 1}`;
          const inner = list.items.map((item) => drawItem(item, `${path}[${i}]`, `${where}, ${title.toLowerCase()}`));
          const remove = h(
            "button",
            { type: "button", class: "remove", onclick: () => removeRow(i) },
            "Remove",
            h("span", { class: "unseen" }, ` ${title.toLowerCase()} of ${list.label}`),
          );
          return h("fieldset", { class: "row" }, h("legend", {}, title), ...inner, remove);
        }),
      );
    };
    const redraw = (): void => {
      drawRows();
      refreshAll();
      changed();
    };
    const addRow = (): void => {
      const held = valueAt(answers, path);
      const before = Array.isArray(held) ? held : [];
      const missing = Math.max(1, (list.rows ?? 1) - before.length);
      setValue(answers, path, [
        ...before,
        ...Array.from({ length: missing }, () => structuredClone(list.fresh)),
      ] as never);
      redraw();
      rows.children[before.length]?.querySelector<HTMLElement>("input, select")?.focus();
    };
    const removeRow = (i: number): void => {
      const held = valueAt(answers, path);
      const rest = Array.isArray(held) ? held.filter((_, k) => k !== i) : [];
      // An optional list without a row is no list at all.
      setValue(answers, path, rest.length === 0 && list.left !== undefined ? undefined : rest);
      redraw();
      (rows.children[Math.min(i, rest.length - 1)]?.querySelector<HTMLElement>(".remove") ?? add).focus();
    };
    drawRows();
    const box = h(
      "fieldset",
      { class: "list" },
      h("legend", {}, list.label),
      ...(list.note === undefined ? [] : [h("p", { class: "hint" }, list.note)]),
      rows,
      note,
      add,
    );
    fields.set(path, { path, row, item: list, where, box, control: add, note });
    return box;
  };

  const drawQuestion = (item: Question, path: string, row: string, where: string): HTMLElement => {
    const note = h("p", { class: "note", id: `${path}-note` });
    const described = { id: path, "aria-describedby": note.id };
    const label = h("label", { for: path }, item.label);
    const put = (value: Parameters<typeof setValue>[2]): void => {
      setValue(answers, path, value);
      changed();
    };
    let field: Field;
    if (item.ask === "yes") {
      const control = h("input", { ...described, type: "checkbox", onchange: () => put(control.checked || undefined) });
      control.checked = valueAt(answers, path) === true;
      const box = h("div", { class: "field yes" }, control, label, note);
      field = { path, row, item, where, box, control, note };
    } else if (item.ask === "choice" || item.ask === "name") {
      const control = h("select", {
        ...described,
        onchange: () => {
          setValue(answers, path, control.value === "" ? undefined : control.value);
          askWhen();
          changed();
        },
      });
      const refresh = (): void => fillSelect(control, optionsOf(item), String(valueAt(answers, path) ?? ""), item.left);
      const box = h("div", { class: "field" }, label, control, note);
      field = { path, row, item, where, box, control, note, refresh };
    } else if (item.ask === "names") {
      const control = h("fieldset", { ...described, class: "names", tabindex: "-1" });
      const refresh = (): void => drawNames(control, item.label, path, item.of, note, put);
      field = { path, row, item, where, box: h("div", { class: "field" }, control, note), control, note, refresh };
    } else {
      const control = h("input", {
        ...described,
        type: "text",
        autocomplete: "off",
        autocapitalize: "off",
        spellcheck: "false",
        ...(item.ask === "count" ? { inputmode: "numeric" } : {}),
      });
      control.value = String(valueAt(answers, path) ?? "");
      const follow = item.ask === "text" && item.names !== undefined ? follower(control, item.names, path) : () => {};
      control.addEventListener("input", () => {
        const typed = control.value.trim();
        setValue(
          answers,
          path,
          typed === "" ? undefined : item.ask === "count" && WHOLE.test(typed) ? Number(typed) : control.value,
        );
        follow();
        changed();
      });
      if (item.ask === "text" && item.offers !== undefined) offer(control, item.offers);
      field = { path, row, item, where, box: h("div", { class: "field" }, label, control, note), control, note };
    }
    fields.set(path, field);
    return field.box;
  };

  /** Names of a list, the wellhead among the places, each once and as given. */
  const namesOf = (list: NameList): readonly string[] => {
    const held = valueAt(answers, list);
    const names = (Array.isArray(held) ? held : []).flatMap((_, i) => {
      const name = valueAt(answers, `${list}[${i}].name`);
      return typeof name === "string" && name.trim() !== "" ? [name] : [];
    });
    return [...new Set(list === "places" ? [WELLHEAD, ...names] : names)];
  };

  const optionsOf = (item: Question): readonly { value: string; label: string }[] => {
    if (item.ask === "choice") return item.options;
    return item.ask === "name" ? namesOf(item.of).map((name) => ({ value: name, label: name })) : [];
  };

  const drawNames = (
    control: HTMLElement,
    label: string,
    path: string,
    of: NameList,
    note: HTMLElement,
    put: (value: string[] | undefined) => void,
  ): void => {
    const held = valueAt(answers, path);
    const chosen = (Array.isArray(held) ? held : []).map(String);
    const known = namesOf(of);
    const boxes = [...new Set([...known, ...chosen])].map((name, i) => {
      const box = h("input", { type: "checkbox", id: `${path}-${i}`, value: name, "aria-describedby": note.id });
      box.checked = chosen.includes(name);
      return { box, line: h("div", { class: "yes" }, box, h("label", { for: box.id }, name)) };
    });
    for (const { box } of boxes) {
      box.addEventListener("change", () => {
        const names = boxes.filter((other) => other.box.checked).map((other) => other.box.value);
        put(names.length === 0 ? undefined : names);
      });
    }
    control.replaceChildren(h("legend", {}, label), ...boxes.map(({ line }) => line));
  };

  /** A name is mentioned elsewhere: while it is typed, the mentions follow it. */
  const follower = (control: HTMLInputElement, list: NameList, path: string): (() => void) => {
    let mentions: readonly string[] = [];
    control.addEventListener("focus", () => {
      const unique = countOf(list, control.value) === 1 && control.value !== WELLHEAD;
      mentions = unique ? mentionsOf(list, control.value) : [];
    });
    return () => {
      for (const mention of mentions) setValue(answers, mention, valueAt(answers, path));
      refreshAll();
    };
  };

  const countOf = (list: NameList, name: string): number => {
    const held = valueAt(answers, list);
    return (Array.isArray(held) ? held : []).filter((_, i) => valueAt(answers, `${list}[${i}].name`) === name).length;
  };

  const mentionsOf = (list: NameList, name: string): readonly string[] =>
    [...fields.values()].flatMap(({ path, item }) => {
      if (item.ask === "name" && item.of === list) return valueAt(answers, path) === name ? [path] : [];
      if (item.ask !== "names" || item.of !== list) return [];
      const held = valueAt(answers, path);
      return (Array.isArray(held) ? held : []).flatMap((other, i) => (other === name ? [`${path}[${i}]`] : []));
    });

  const askWhen = (): void => {
    for (const { path, row, item, box } of fields.values()) {
      if (item.ask === "list" || item.when === undefined) continue;
      const asked = item.when((valueAt(answers, row) ?? {}) as JsonObject);
      box.hidden = !asked && valueAt(answers, path) === undefined;
    }
  };

  const refreshAll = (): void => {
    for (const field of fields.values()) field.refresh?.();
    askWhen();
  };

  /** The question an issue belongs to: its own, or the nearest part that holds it. */
  const fieldOf = (path: string): Field | undefined => {
    for (let at = path; at !== ""; at = at.replace(/(\.[^.[]*|\[\d+\]|^[^.[]*)$/, "")) {
      const field = fields.get(at);
      if (field !== undefined) return field;
    }
    return undefined;
  };

  const mark = (issues: readonly JobIssue[]): readonly Fault[] => {
    const found = new Map<Field, string>();
    const homeless: Fault[] = [];
    for (const { path, expected } of issues) {
      const field = fieldOf(path);
      if (field === undefined) homeless.push({ where: path, expected, go: null });
      else if (!found.has(field)) found.set(field, isMissing(field) ? "" : expected);
    }
    const inOrder: Fault[] = [];
    // In the order of the page, which is not that of the document.
    const marked = new Map([...fields.values()].map((field) => [field.control, field]));
    for (const control of root.querySelectorAll<HTMLElement>("input, select, fieldset, button")) {
      const field = marked.get(control);
      if (field === undefined) continue;
      const expected = found.get(field);
      annotate(field, expected);
      if (expected !== undefined) inOrder.push({ where: field.where, expected, go: () => goTo(field.control) });
    }
    for (const fold of root.querySelectorAll("details")) {
      const wrong = fold.querySelectorAll("[data-state]").length;
      const faults = fold.querySelector<HTMLElement>(":scope > summary > .faults");
      if (faults !== null) say(faults, wrong === 0 ? "" : ` (${wrong} to put right)`);
    }
    return [...inOrder, ...homeless];
  };

  /** Missing: a question that must be answered, and is not. */
  const isMissing = ({ path, item }: Field): boolean => {
    const value = valueAt(answers, path);
    return (value === undefined || value === "") && item.ask !== "list" && (item.left === undefined || value === "");
  };

  const annotate = (field: Field, expected: string | undefined): void => {
    const { path, item, box, control, note } = field;
    const state = expected === undefined ? "" : expected === "" ? "missing" : "wrong";
    const value = String(valueAt(answers, path) ?? "");
    const noted = `${state} ${value} ${expected}`;
    if (field.noted === noted) return;
    field.noted = noted;
    if (state === "") delete box.dataset["state"];
    else box.dataset["state"] = state;
    if (item.ask !== "list" && item.ask !== "names") {
      if (state === "wrong") control.setAttribute("aria-invalid", "true");
      else control.removeAttribute("aria-invalid");
    }
    say(note, state === "wrong" ? `Expected ${expected}.` : helpOf(item, value, state));
  };

  return { draw, mark };
}

/** What stands under a question whose answer is not wrong. */
function helpOf(item: Question | ListQuestion, value: string, state: string): string {
  const left = item.ask === "yes" || item.left === undefined ? "" : `Left out: ${item.left}.`;
  if (item.ask === "list") return value === "" ? left : "";
  if (item.ask === "yes" || item.ask === "choice" || item.ask === "name" || item.ask === "names")
    return state === "missing" ? "Needed." : "";
  if (value === "") return `${state === "missing" ? "Needed, such" : "Such"} as ${item.sample}. ${left}`.trim();
  return item.ask === "quantity" ? shownTwice(item.kind, value) : "";
}

function fillSelect(
  select: HTMLSelectElement,
  options: readonly { value: string; label: string }[],
  value: string,
  left: string | undefined,
): void {
  const known = options.some((option) => option.value === value) || value === "";
  const all = [
    { value: "", label: left === undefined ? "choose" : `left out: ${left}` },
    ...options,
    ...(known ? [] : [{ value, label: `${value} (not in the list)` }]),
  ];
  select.replaceChildren(...all.map((option) => h("option", { value: option.value }, option.label)));
  select.value = value;
}

let offered = 0;

/** Names to choose from while typing, written when the field is first entered: the lists are long. */
function offer(control: HTMLInputElement, names: () => readonly string[]): void {
  control.addEventListener(
    "focus",
    () => {
      const list = h("datalist", { id: `offer-${offered++}` }, ...names().map((name) => h("option", { value: name })));
      control.after(list);
      control.setAttribute("list", list.id);
    },
    { once: true },
  );
}

/** Opens what is folded around a question and puts the cursor there. */
function goTo(control: HTMLElement): void {
  for (let fold = control.closest("details"); fold !== null; fold = fold.parentElement?.closest("details") ?? null)
    fold.open = true;
  control.focus();
}
