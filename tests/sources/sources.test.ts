/** The bibliography and its exports, read back by a reference library of its own (citation-js) and held to the exports. */
// @ts-expect-error: the library brings no types
import { Cite } from "@citation-js/core";
import "@citation-js/plugin-bibtex";
import { asBibtex, asCslJson, basesOf, bibliography, citeAsBibtex, citeAsText, findSource } from "risingmain/sources";
import { describe, expect, test } from "vitest";
import * as library from "../../src/index.ts";
import { functionBases } from "../../src/sources/function-bases.ts";

const all = bibliography();
const exported = Object.entries(library as Record<string, Record<string, unknown>>).flatMap(([module, names]) =>
  Object.keys(names).map((name) => `${module}.${name}`),
);

describe("the bibliography as BibTeX", () => {
  const parsed = new Map<string, Record<string, unknown>>(
    (new Cite(asBibtex(all)).data as Record<string, unknown>[]).map((item) => [String(item["id"]), item]),
  );

  test.each(all.map((source) => [source.id, source] as const))("%s is read back whole", (id, source) => {
    const item = parsed.get(id);
    expect(item?.["title"]).toBe(source.title);
    const names = (item?.["author"] ?? []) as readonly { family?: string; literal?: string }[];
    expect(names.map(({ family, literal }) => literal ?? family)).toEqual(
      (source.author ?? []).map(({ family, literal }) => literal ?? family),
    );
    const issued = item?.["issued"] as { "date-parts": number[][] } | undefined;
    expect(issued?.["date-parts"][0]?.[0]).toBe(source.issued?.["date-parts"][0]?.[0]);
    expect(item?.["DOI"]).toBe(source.DOI);
  });

  test("what TeX would take for a command stays text", () => {
    const title = "5 % of R&D_x #1 $ {a} \\b ~c ^d";
    const [item] = new Cite(citeAsBibtex({ id: "odd", type: "book", title, note: title })).data as { title: string }[];
    expect(item?.title.replace(/\s+/g, "")).toBe(title.replace(/\s+/g, ""));
  });
});

describe("the bibliography as CSL-JSON", () => {
  test("is the records, and a general reader takes it", () => {
    expect(JSON.parse(asCslJson(all))).toEqual(all);
    expect((new Cite(asCslJson(all)).data as unknown[]).length).toBe(all.length);
  });

  test("no id comes twice", () => {
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    const [first] = all;
    if (first === undefined) throw new Error("no sources");
    expect(() => asCslJson([first, first])).toThrow("sources[1].id");
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

  test.each(["frictionFactor", "pipe.toString", "__proto__", "pipe.", 3])("%s is no export", (name) => {
    expect(() => basesOf(name as string)).toThrow("name");
  });
});
