/**
 * What the worksheet keeps: on this device alone, in the browser's own store, and in files the reader saves.
 *
 * @module
 */
import { isObject, type Json, type JsonObject, misshapen } from "./document.ts";
import { FRESH, SECTIONS } from "./questions.ts";

/** Everything that is typed into the sheet. */
export interface Sheet {
  /** The job document. */
  document: JsonObject;
  /** Readings as typed, by their code. */
  readings: Record<string, string>;
  /** Day of the readings, year-month-day. */
  date: string;
  /** Who took them. */
  by: string;
  /** What the next installer should know. */
  notes: string;
}

/** The name it is kept under in the browser's store. */
export const KEPT_AS = "risingmain worksheet";

/** A sheet with nothing answered. */
export function freshSheet(): Sheet {
  return { document: structuredClone(FRESH) as JsonObject, readings: {}, date: "", by: "", notes: "" };
}

/** The sheet kept on this device; a fresh one where there is none, or none that can be read. */
export function keptSheet(): Sheet {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEPT_AS) ?? "null");
    if (!isObject(kept) || !isObject(kept["document"]) || misshapen(kept["document"], SECTIONS) !== null)
      return freshSheet();
    const text = (value: Json | undefined): string => (typeof value === "string" ? value : "");
    const { document, readings, date, by, notes } = kept;
    const typed = isObject(readings) ? Object.entries(readings).map(([code, value]) => [code, text(value)]) : [];
    return {
      document: document as JsonObject,
      readings: Object.fromEntries(typed),
      date: text(date),
      by: text(by),
      notes: text(notes),
    };
  } catch {
    return freshSheet();
  }
}

/** Keeps the sheet; false where the browser keeps nothing. */
export function keep(sheet: Sheet): boolean {
  try {
    localStorage.setItem(KEPT_AS, JSON.stringify(sheet));
    return true;
  } catch {
    return false;
  }
}

/** Hands the reader a file to save. */
export function saveFile(name: string, content: unknown): void {
  const blob = new Blob([`${JSON.stringify(content, null, 2)}\n`], { type: "application/json" });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  // The browser has taken the content over by the next turn.
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

/** A name as a file may be called: letters, digits and hyphens. */
export function fileName(name: unknown, ending: string): string {
  const words = String(name ?? "")
    .normalize("NFKD")
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu);
  return `${words === null ? "well" : words.join("-").slice(0, 60)}.${ending}`;
}
