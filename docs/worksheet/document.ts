/**
 * The job document as the worksheet holds it: the answers as they were typed, each at its place. What a loaded document
 * holds beyond the questions stays where it was, is told, and goes back into the saved one.
 *
 * @module
 */
import type { Item, ListQuestion, Question } from "./questions.ts";

/** A part of a JSON document. */
export type Json = null | boolean | number | string | Json[] | JsonObject;
export interface JsonObject {
  [key: string]: Json;
}

/** One step of a path: a field, or a row. */
type Step = string | number;

/** `well.test[0].flow` as steps. */
function stepsOf(path: string): readonly Step[] {
  return path.split(/[.[]/).map((step) => (step.endsWith("]") ? Number(step.slice(0, -1)) : step));
}

export function isObject(value: unknown): value is JsonObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** A field of its own, never one that every object inherits. */
function own(holder: Json | undefined, step: Step): Json | undefined {
  if (Array.isArray(holder)) return typeof step === "number" ? holder[step] : undefined;
  return isObject(holder) && Object.hasOwn(holder, step) ? holder[step] : undefined;
}

/** What stands at a path; undefined where nothing does. */
export function valueAt(document: Json, path: string): Json | undefined {
  return stepsOf(path).reduce<Json | undefined>(own, document);
}

/** Puts an answer at its path; undefined takes it away, and the parts left empty by that with it. */
export function setValue(document: JsonObject, path: string, value: Json | undefined): void {
  const steps = stepsOf(path);
  const holders: (JsonObject | Json[])[] = [document];
  for (const [i, step] of steps.slice(0, -1).entries()) {
    const holder = holders[i] as JsonObject;
    let next = own(holder, step);
    if (!isObject(next) && !Array.isArray(next)) {
      if (value === undefined) return;
      next = typeof steps[i + 1] === "number" ? [] : {};
      holder[step] = next;
    }
    holders.push(next);
  }
  for (let i = steps.length - 1; i >= 0; i--) {
    const holder = holders[i] as JsonObject;
    const step = steps[i] as string;
    if (i === steps.length - 1 && value !== undefined) {
      holder[step] = value;
      return;
    }
    // Rows stay, however empty: they are taken away by their own button.
    if (Array.isArray(holder)) return;
    const inner = own(holder, step);
    if (i === steps.length - 1 || (isObject(inner) && Object.keys(inner).length === 0)) delete holder[step];
    else return;
  }
}

/** Lists a document must have, though they may be empty. */
const LISTS = ["places", "runs"] as const;

/** A part of a document that no question asks for. */
export interface KeptPart {
  readonly path: string;
  readonly value: Json;
}

/** A document as the library reads it, and what it was read without. */
export interface AskedDocument {
  readonly asked: JsonObject;
  readonly kept: readonly KeptPart[];
}

/** What the questions ask for, apart from the rest. */
export function askedOf(document: JsonObject, items: readonly Item[]): AskedDocument {
  const kept: KeptPart[] = [];
  const asked = pick(document, fieldsOf(items), "", kept) as JsonObject;
  for (const key of LISTS) asked[key] ??= [];
  return { asked, kept };
}

/** The questions by place: a place holds a question, a list, or further places. */
type Places = Map<string, Places | Question | ListQuestion>;

/** The version is the document's own affair, and no question. */
function fieldsOf(items: readonly Item[]): Places {
  const places = new Map() as Places;
  gather(items, places);
  return places;
}

function gather(items: readonly Item[], into: Places): void {
  for (const item of items) {
    if (item.ask === "group") {
      gather(item.items, into);
      continue;
    }
    const steps = item.key.split(".");
    let place = into;
    for (const step of steps.slice(0, -1)) {
      const next = place.get(step);
      place = next instanceof Map ? next : (place.set(step, new Map()).get(step) as Places);
    }
    place.set(steps.at(-1) as string, item);
  }
}

function pick(value: Json, places: Places, path: string, kept: KeptPart[]): Json {
  // Of another form altogether: the library says what is wrong with it.
  if (!isObject(value)) return structuredClone(value);
  const result: JsonObject = {};
  for (const [key, part] of Object.entries(value)) {
    const at = path === "" ? key : `${path}.${key}`;
    const place = places.get(key);
    if (place === undefined) {
      if (at === "version") result[key] = part;
      else kept.push({ path: at, value: part });
    } else if (place instanceof Map) {
      result[key] = pick(part, place, at, kept);
    } else if (place.ask === "list" && Array.isArray(part)) {
      const inner = fieldsOf(place.items);
      result[key] = part.map((row, i) => pick(row, inner, `${at}[${i}]`, kept));
    } else {
      result[key] = structuredClone(part);
    }
  }
  // What must be answered is missed question by question, not as one missing part.
  for (const [key, place] of places) {
    if (Object.hasOwn(result, key) || !isNeeded(place)) continue;
    if (place instanceof Map) result[key] = pick({}, place, path === "" ? key : `${path}.${key}`, kept);
    else if (place.ask === "list") result[key] = [];
  }
  return result;
}

function isNeeded(place: Places | Question | ListQuestion): boolean {
  if (place instanceof Map) return [...place.values()].some(isNeeded);
  return place.ask !== "yes" && place.left === undefined;
}

/** Whether the parts that hold others are what the questions need them to be; the path of the first that is not. */
export function misshapen(document: Json, items: readonly Item[], path = ""): string | null {
  if (!isObject(document)) return path === "" ? "the document" : path;
  return misshapenIn(document, fieldsOf(items), path);
}

function misshapenIn(value: JsonObject, places: Places, path: string): string | null {
  for (const [key, place] of places) {
    const part = own(value, key);
    if (part === undefined) continue;
    const at = path === "" ? key : `${path}.${key}`;
    if (place instanceof Map) {
      if (!isObject(part)) return at;
      const wrong = misshapenIn(part, place, at);
      if (wrong !== null) return wrong;
    } else if (place.ask === "list") {
      if (!Array.isArray(part)) return at;
      for (const [i, row] of part.entries()) {
        const wrong = misshapen(row, place.items, `${at}[${i}]`);
        if (wrong !== null) return wrong;
      }
    } else if (place.ask === "names" ? !isNames(part) : typeof part === "object") {
      return at;
    }
  }
  return null;
}

function isNames(part: Json): boolean {
  return Array.isArray(part) && part.every((name) => typeof name === "string");
}
