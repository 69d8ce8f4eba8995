/**
 * A source as a reader cites it: one line of text, or a BibTeX entry.
 *
 * @module
 */
import { requireObject } from "../numeric/guards.ts";
import { InputError } from "../units/input-error.ts";
import type { Source, SourceName } from "./source.ts";

/** BibTeX entry types for the CSL types in use. */
const BIBTEX_TYPES: Readonly<Record<Source["type"], string>> = {
  "article-journal": "article",
  book: "book",
  chapter: "incollection",
  report: "techreport",
  standard: "misc",
  thesis: "phdthesis",
  webpage: "misc",
  legislation: "misc",
  software: "misc",
};

/** A title longer than this is no title. */
const LONGEST = 1000;

/**
 * A source as one line of text: who, when, what, where.
 *
 * @param source - the record
 * @returns the line, without a closing line break
 * @throws {@link InputError} where the record has no id, type or title
 * @source derived: the fields of the record in the usual order
 *
 * @example
 * ```ts
 * import { citeAsText, findSource } from "risingmain/sources";
 *
 * citeAsText(findSource("nist-sp811")).slice(0, 38); // => "Thompson, A.; Taylor, B. N. (2008). Gu"
 * ```
 */
export function citeAsText(source: Source): string {
  requireSource(source);
  const who = (source.author ?? []).map(nameOf).join("; ");
  const year = yearOf(source);
  const where = [
    source["container-title"],
    source.volume === undefined
      ? undefined
      : `${source.volume}${source.issue === undefined ? "" : `(${source.issue})`}`,
    source.page,
    source.edition === undefined ? undefined : `edition ${source.edition}`,
    source.number,
    source.publisher,
    source.DOI === undefined ? undefined : `doi:${source.DOI}`,
  ].filter((part) => part !== undefined);
  const head = [who, year === undefined ? "" : `(${year})`].filter((part) => part !== "").join(" ");
  return `${[head, source.title, where.join(", ")].filter((part) => part !== "").join(". ")}.`;
}

/**
 * A source as a BibTeX entry.
 *
 * @param source - the record
 * @returns the entry, several lines
 * @throws {@link InputError} where the record has no id, type or title
 * @source derived: the fields of the record under BibTeX's names
 *
 * @example
 * ```ts
 * import { citeAsBibtex, findSource } from "risingmain/sources";
 *
 * citeAsBibtex(findSource("nist-sp811")).split("\n")[0]; // => "@techreport{nist-sp811,"
 * ```
 */
export function citeAsBibtex(source: Source): string {
  requireSource(source);
  const fields: readonly (readonly [string, string | undefined])[] = [
    [
      "author",
      source.author?.map((name) => (name.literal === undefined ? nameOf(name) : `{${name.literal}}`)).join(" and "),
    ],
    ["title", `{${source.title}}`],
    ["year", yearOf(source)],
    ["journal", source.type === "article-journal" ? source["container-title"] : undefined],
    ["volume", source.volume],
    ["number", source.issue ?? source.number],
    ["pages", source.page?.replace(/[–-]/, "--")],
    ["edition", source.edition],
    [source.type === "report" ? "institution" : "publisher", source.publisher],
    ["doi", source.DOI],
    ["url", source.URL],
    ["note", source.note],
  ];
  const lines = fields
    .filter(([, value]) => value !== undefined && value !== "")
    .map(([key, value]) => `  ${key} = {${value}},`);
  return [`@${BIBTEX_TYPES[source.type]}{${source.id},`, ...lines, "}"].join("\n");
}

function requireSource(source: Source): void {
  requireObject("source", source);
  for (const field of ["id", "title"] as const) {
    const value: unknown = source[field];
    if (typeof value !== "string" || value === "" || value.length > LONGEST)
      throw new InputError(`source.${field}`, value, "a text");
  }
  if (!Object.hasOwn(BIBTEX_TYPES, source.type)) {
    throw new InputError("source.type", source.type, `one of ${Object.keys(BIBTEX_TYPES).join(", ")}`);
  }
  if (source.author !== undefined && !Array.isArray(source.author))
    throw new InputError("source.author", source.author, "a list of names");
}

function nameOf(name: SourceName): string {
  requireObject("source.author", name);
  return name.literal ?? [name.family, name.given].filter((part) => part !== undefined).join(", ");
}

function yearOf(source: Source): string | undefined {
  const year: unknown = source.issued?.["date-parts"]?.[0]?.[0];
  return year === undefined ? undefined : String(year);
}
