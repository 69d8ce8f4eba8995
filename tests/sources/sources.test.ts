/** The bibliography and its exports, read back by a reference library of its own (citation-js) and held to the exports. */
// @ts-expect-error: the library brings no types
import { Cite } from "@citation-js/core";
import "@citation-js/plugin-bibtex";
import { readdirSync } from "node:fs";
import {
  asBibtex,
  asCslJson,
  basesOf,
  bibliography,
  citeAsBibtex,
  citeAsText,
  findSource,
  type Source,
} from "risingmain/sources";
import { describe, expect, test } from "vitest";
import * as library from "../../src/index.ts";
import { functionBases } from "../../src/sources/function-bases.ts";
import { refused } from "../refused.ts";

type Item = Record<string, unknown> & Pick<Source, "title" | "author">;

const exported = Object.entries(library as Record<string, Record<string, unknown>>).flatMap(([module, names]) =>
  Object.keys(names).map((name) => `${module}.${name}`),
);

/** What the reference library reads in a BibTeX text. */
const read = (bibtex: string): readonly Item[] => new Cite(bibtex).data as Item[];

/** The reference library takes a body for a person without a given name. */
const familyNames = (source: Pick<Source, "author">): readonly (string | undefined)[] =>
  (source.author ?? []).map(({ family, literal }) => literal ?? family);

/** A record with every field, and one with none that may be missing. */
const full: Source = {
  id: "full",
  type: "article-journal",
  title: "Water Up a Hill",
  author: [{ family: "Lowe", given: "A. B." }, { literal: "Board of Pumps" }, { family: "Hill" }, { given: "Anon" }],
  issued: { "date-parts": [[1931, 5, 2]] },
  "container-title": "Annals of Lifting",
  volume: "12",
  issue: "3",
  page: "45–67",
  edition: "2",
  number: "B 7",
  publisher: "Lift Press",
  DOI: "10.0000/lift",
  URL: "https://example.org/hill",
  note: "Read in part.",
};
const bare: Source = { id: "bare", type: "book", title: "Wells" };

describe("the bibliography", () => {
  test("is ordered by id, no id twice, and holds every file of records", async () => {
    const all = bibliography();
    const ids = all.map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)].sort());
    const folder = new URL("../../src/sources/records/", import.meta.url);
    for (const file of readdirSync(folder)) {
      const records = Object.values((await import(new URL(file, folder).href)) as Record<string, Source[]>).flat();
      expect(records.length, file).toBeGreaterThan(0);
      expect(all, file).toEqual(expect.arrayContaining(records));
    }
  });

  test("gives each record by its id, and none by another", () => {
    for (const source of bibliography()) expect(findSource(source.id)).toBe(source);
    expect(refused(() => findSource("nist"))).toBe("id");
  });
});

describe("a source as one line", () => {
  // The order is author, (year), title, where; what a record lacks leaves no mark.
  test.each<[string, Source, string]>([
    [
      "a record with every field",
      full,
      "Lowe, A. B.; Board of Pumps; Hill; Anon (1931). Water Up a Hill. Annals of Lifting, 12(3), 45–67, edition 2, B 7, Lift Press, doi:10.0000/lift.",
    ],
    ["a title alone", bare, "Wells."],
    ["a year without an author", { ...bare, issued: { "date-parts": [[1900], [1902]] } }, "(1900). Wells."],
    ["an author without a year", { ...bare, author: [{ family: "Hill" }] }, "Hill. Wells."],
    ["a volume without an issue", { ...bare, volume: "4" }, "Wells. 4."],
    ["a publisher", { ...bare, publisher: "Lift Press" }, "Wells. Lift Press."],
  ])("%s", (_, source, line) => {
    expect(citeAsText(source)).toBe(line);
  });
});

describe("a source as BibTeX", () => {
  test("the whole bibliography is read back", () => {
    const all = bibliography();
    const items = read(asBibtex(all));
    expect(items.map(({ id }) => id)).toEqual(all.map(({ id }) => id));
    for (const [i, source] of all.entries()) {
      const item = items[i] as Item;
      expect(item.title).toBe(source.title);
      expect(familyNames(item)).toEqual(familyNames(source));
      expect((item["issued"] as Source["issued"])?.["date-parts"][0]?.[0]).toBe(source.issued?.["date-parts"][0]?.[0]);
      expect(item["DOI"]).toBe(source.DOI);
      expect(item["volume"]).toBe(source.volume);
      expect(item["note"]).toBe(source.note);
    }
  });

  // The fields each entry type of BibTeX has (Patashnik, BibTeXing, 1988, section 3; from memory).
  test.each<[Source["type"], string, string, string]>([
    ["article-journal", "article", "journal", "publisher"],
    ["book", "book", "series", "publisher"],
    ["chapter", "incollection", "booktitle", "publisher"],
    ["report", "techreport", "series", "institution"],
    ["standard", "misc", "series", "publisher"],
    ["thesis", "phdthesis", "series", "school"],
    ["webpage", "misc", "series", "publisher"],
    ["legislation", "misc", "series", "publisher"],
    ["software", "misc", "series", "publisher"],
  ])("%s is @%s with %s and %s", (type, entry, within, from) => {
    expect(citeAsBibtex({ ...full, type })).toBe(`@${entry}{full,
  author = {Lowe, A. B. and {Board of Pumps} and Hill and Anon},
  title = {{Water Up a Hill}},
  year = {1931},
  ${within} = {Annals of Lifting},
  volume = {12},
  number = {3},
  pages = {45--67},
  edition = {2},
  ${from} = {Lift Press},
  doi = {10.0000/lift},
  url = {https://example.org/hill},
  note = {Read in part.},
}`);
    expect(citeAsBibtex({ ...bare, type, number: "B 7" })).toBe(`@${entry}{bare,
  title = {{Wells}},
  number = {B 7},
}`);
  });

  test("a file is the entries with a line between", () => {
    expect(asBibtex([bare, full])).toBe(`${citeAsBibtex(bare)}\n\n${citeAsBibtex(full)}\n`);
    expect(asBibtex([])).toBe("");
  });

  test("what TeX would take for a command stays text", () => {
    const title = "5 % of R&D_x #1 $ {a} \\b ~c ^d";
    const [item] = read(citeAsBibtex({ id: "odd", type: "book", title, note: title }));
    expect(item?.title.replace(/\s+/g, "")).toBe(title.replace(/\s+/g, ""));
  });
});

describe("the bibliography as CSL-JSON", () => {
  test("is the records, and a general reader takes it", () => {
    const all = [...bibliography(), full];
    expect(JSON.parse(asCslJson(all))).toEqual(all);
    expect((new Cite(asCslJson(all)).data as unknown[]).length).toBe(all.length);
  });

  test("leaves out what a caller hung on a record", () => {
    const { author, issued } = full;
    const hung = {
      ...full,
      more: 1,
      author: author?.map((name) => ({ ...name, more: 1 })),
      issued: { ...issued, more: 1 },
    } as unknown as Source;
    expect(asCslJson([hung])).toBe(asCslJson([full]));
  });

  test("no id comes twice", () => {
    expect(refused(() => asCslJson([bare, full, bare]))).toBe("sources[2].id");
  });
});

describe("a record", () => {
  const texts = Object.keys(full).filter((field) => typeof full[field as "id"] === "string" && field !== "type");

  test("needs id, type and title, and nothing else", () => {
    const needed = Object.keys(full).filter((field) => {
      const { [field as keyof Source]: _, ...rest } = full;
      return refused(() => citeAsText(rest as Source)) === `source.${field}`;
    });
    expect(needed).toEqual(["id", "type", "title"]);
  });

  test.each(texts)("%s is a text of 1 to 4000 characters", (field) => {
    const at = (value: unknown) => refused(() => citeAsText({ ...full, [field]: value }));
    expect(["x", "x".repeat(4000)].map(at)).toEqual([undefined, undefined]);
    expect(["", "x".repeat(4001), 3].map(at)).toEqual(Array(3).fill(`source.${field}`));
  });

  test("its authors and dates are lists of the form of CSL", () => {
    const authors = (count: number) => Array(count).fill({ family: "Hill" });
    const dated = (...parts: unknown[]) => ({ issued: { "date-parts": parts } });
    const at = (changed: object) => refused(() => citeAsText({ ...full, ...changed }));
    const good = [{ author: [] }, { author: authors(1000) }, dated([-9999]), dated([9999, 1, 1], [9999])];
    expect(good.map(at)).toEqual(good.map(() => undefined));
    const bad: [object, string][] = [
      [{ author: authors(1001) }, "source.author"],
      [{ author: ["Hill"] }, "source.author[0]"],
      [{ author: [{ family: "Hill" }, { given: "" }] }, "source.author[1]"],
      [{ issued: 1931 }, "source.issued"],
      [dated(), "source.issued.date-parts"],
      [dated([1], [2], [3]), "source.issued.date-parts"],
      [dated([]), "source.issued.date-parts[0]"],
      [dated([1931, 5, 2, 1]), "source.issued.date-parts[0]"],
      [dated([1931], [10_000]), "source.issued.date-parts[1]"],
      [dated([-10_000]), "source.issued.date-parts[0]"],
      [{ type: "song" }, "source.type"],
    ];
    expect(bad.map(([changed]) => at(changed))).toEqual(bad.map(([, path]) => path));
  });
});

describe("what a function rests on", () => {
  test("every public name says it, and nothing else is listed", () => {
    expect(Object.keys(functionBases).sort()).toEqual(exported.sort());
    for (const name of exported) expect(basesOf(name).length, name).toBeGreaterThan(0);
  });

  test("every published basis names a record", () => {
    for (const name of exported)
      for (const { kind, source } of basesOf(name)) {
        expect(source !== undefined).toBe(kind === "published");
        if (source !== undefined) expect(citeAsText(findSource(source)).length).toBeGreaterThan(10);
      }
  });

  test("its kind or source and its locator are the line of the docstring, with a comma, a stop or a space between", () => {
    for (const name of exported)
      for (const [i, { kind, source = kind, locator = "" }] of basesOf(name).entries()) {
        const line = functionBases[name]?.[i] as string;
        expect(line.startsWith(source)).toBe(true);
        expect(line.slice(source.length, line.length - locator.length)).toMatch(/^(?:[,:;]? |)$/);
        expect(line.endsWith(locator)).toBe(true);
        expect(locator).not.toMatch(/^[\s,:;]/);
      }
  });

  test("a locator is left out where the line has none", () => {
    expect(basesOf("units.volts")).toEqual([{ kind: "published", source: "nist-sp811" }]);
    expect(basesOf("well.motorCooling")).toEqual([{ kind: "common practice" }]);
    expect(basesOf("well.singleTestLaw")).toEqual([{ kind: "derived", locator: "proportion" }]);
    expect(basesOf("well.fitStepTest")[0]).toEqual({ kind: "published", source: "jacob-1947", locator: "the law" });
  });

  test.each(["frictionFactor", "pipe.toString", "__proto__", "pipe.", 3])("%s is no export", (name) => {
    expect(() => basesOf(name as string)).toThrow("name");
  });
});
