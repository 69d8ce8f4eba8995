/**
 * A source as a reader cites it: one line of text, or a BibTeX entry.
 *
 * @module
 */
import { requireList, requireObject, requireOneOf, requireWhole } from "../numeric/guards.ts";
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

/** A text longer than this is no title and no note. */
const LONGEST = 4000;
/** More records than any list of sources has. */
const MOST_SOURCES = 10_000;
/** Characters that a backslash alone does not make harmless in TeX. */
const TEX_NAMES: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}",
  "^": "\\textasciicircum{}",
  "~": "\\textasciitilde{}",
};
/** More authors than any work has. */
const MOST_AUTHORS = 1000;
/** The fields that hold text. */
const TEXT_FIELDS = [
  "id",
  "title",
  "container-title",
  "volume",
  "issue",
  "page",
  "edition",
  "number",
  "publisher",
  "DOI",
  "URL",
  "note",
] as const;

/**
 * A source as one line of text: who, when, what, where.
 *
 * @param source - the record
 * @returns the line, without a closing line break
 * @throws InputError where the record has no id, type or title
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
  const { author, title, volume, issue, edition, DOI } = source;
  const who = author?.map(nameOf).join("; ");
  const year = yearOf(source);
  const where = [
    source["container-title"],
    volume && `${volume}${issue ? `(${issue})` : ""}`,
    source.page,
    edition && `edition ${edition}`,
    source.number,
    source.publisher,
    DOI && `doi:${DOI}`,
  ];
  return `${joined([joined([who, year && `(${year})`], " "), title, joined(where, ", ")], ". ")}.`;
}

/**
 * A source as a BibTeX entry.
 *
 * @param source - the record
 * @returns the entry, several lines
 * @throws InputError where the record has no id, type or title
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
  return bibtexEntry(source);
}

function bibtexEntry(source: Source): string {
  const { type, author, title, page, volume, edition, publisher, DOI, URL, note } = source;
  const fields: readonly (readonly [string, string | undefined])[] = [
    ["author", author?.map(bibtexName).join(" and ")],
    // Twice in braces: a title keeps its capitals.
    ["title", `{${tex(title)}}`],
    ["year", yearOf(source)],
    [
      type === "article-journal" ? "journal" : type === "chapter" ? "booktitle" : "series",
      tex(source["container-title"]),
    ],
    ["volume", tex(volume)],
    ["number", tex(source.issue ?? source.number)],
    ["pages", tex(page).replace(/[–-]/, "--")],
    ["edition", tex(edition)],
    [type === "report" ? "institution" : type === "thesis" ? "school" : "publisher", tex(publisher)],
    ["doi", DOI],
    ["url", URL],
    ["note", tex(note)],
  ];
  const lines = fields.filter(([, value]) => value).map(([key, value]) => `  ${key} = {${value}},`);
  return [`@${BIBTEX_TYPES[type]}{${source.id},`, ...lines, "}"].join("\n");
}

/**
 * Sources as one BibTeX file.
 *
 * @param sources - the records: all of {@link bibliography}, or those of a plan
 * @returns the text of the file
 * @throws {@link units.InputError} where a record has no id, type or title, or an id comes twice
 * @source derived: the entries, one after another
 *
 * @example
 * ```ts
 * import { asBibtex, bibliography } from "risingmain/sources";
 *
 * asBibtex(bibliography()).includes("@article{colebrook-1939,"); // => true
 * ```
 */
export function asBibtex(sources: readonly Source[]): string {
  requireSources(sources);
  return sources.map((source) => `${bibtexEntry(source)}\n`).join("\n");
}

/**
 * Sources as one CSL-JSON file, the open format that reference managers and word processors read.
 *
 * @param sources - the records: all of {@link bibliography}, or those of a plan
 * @returns the text of the file
 * @throws {@link units.InputError} where a record has no id, type or title, or an id comes twice
 * @source derived: the records are CSL items
 *
 * @example
 * ```ts
 * import { asCslJson, findSource } from "risingmain/sources";
 *
 * JSON.parse(asCslJson([findSource("colebrook-1939")]))[0].id; // => "colebrook-1939"
 * ```
 */
export function asCslJson(sources: readonly Source[]): string {
  requireSources(sources);
  return `${JSON.stringify(sources.map(cslItem), null, 2)}\n`;
}

/** The fields of a record and no others, whatever the caller hung on it. */
function cslItem(source: Source): Source {
  const { author, issued } = source;
  return {
    ...(Object.fromEntries(
      ["type", ...TEXT_FIELDS].map((field) => [field, source[field as "id"]]),
    ) as unknown as Source),
    ...(author && { author: author.map(({ family, given, literal }) => ({ family, given, literal }) as SourceName) }),
    ...(issued && { issued: { "date-parts": issued["date-parts"] } }),
  };
}

function requireSources(sources: readonly Source[]): void {
  requireList("sources", sources, 0, MOST_SOURCES);
  const ids = new Set<string>();
  sources.forEach((source, i) => {
    requireSource(source);
    if (ids.has(source.id))
      throw new InputError(`sources[${i}].id`, source.id, "an id that no other record of the list has");
    ids.add(source.id);
  });
}

function requireSource(source: Source): void {
  requireObject("source", source);
  for (const field of TEXT_FIELDS) {
    const value: unknown = source[field];
    const needed = field === "id" || field === "title";
    if (value === undefined && !needed) continue;
    requireText(`source.${field}`, value);
  }
  requireOneOf("source.type", source.type, Object.keys(BIBTEX_TYPES));
  if (source.author !== undefined) {
    requireList("source.author", source.author, 0, MOST_AUTHORS);
    source.author.forEach((name, i) => {
      requireObject(`source.author[${i}]`, name);
      for (const part of [name.family, name.given, name.literal])
        if (part !== undefined) requireText(`source.author[${i}]`, part);
    });
  }
  if (source.issued !== undefined) {
    requireObject("source.issued", source.issued);
    requireList("source.issued.date-parts", source.issued["date-parts"], 1, 2);
    source.issued["date-parts"].forEach((parts, i) => {
      requireList(`source.issued.date-parts[${i}]`, parts, 1, 3);
      for (const part of parts) requireWhole(`source.issued.date-parts[${i}]`, part, -9999, 9999);
    });
  }
}

function requireText(parameter: string, value: unknown): void {
  if (typeof value !== "string" || value === "" || value.length > LONGEST)
    throw new InputError(parameter, value, "a text");
}

/** Text with the characters that TeX takes for commands made harmless. */
function tex(text = ""): string {
  return text.replace(/[\\{}&%$#_^~]/g, (character) => TEX_NAMES[character] ?? `\\${character}`);
}

function bibtexName(name: SourceName): string {
  return name.literal === undefined ? tex(nameOf(name)) : `{${tex(name.literal)}}`;
}

function nameOf({ literal, family, given }: SourceName): string {
  return literal ?? joined([family, given], ", ");
}

/** The year; an empty text where the record has none. */
function yearOf(source: Source): string {
  return String(source.issued?.["date-parts"][0]?.[0] ?? "");
}

/** The parts that a record has. */
function joined(parts: readonly (string | undefined)[], separator: string): string {
  return parts.filter((part) => part).join(separator);
}
