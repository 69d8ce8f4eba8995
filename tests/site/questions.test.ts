/**
 * The questions of the worksheet against the published form of the job document: nothing left out, nothing made up.
 */
import { describe, expect, test } from "vitest";
import ranch from "../../docs/jobs/ranch.json" with { type: "json" };
import { askedOf, type JsonObject, misshapen, setValue, valueAt } from "../../docs/worksheet/document.ts";
import { shownTwice, textOf, unitOf } from "../../docs/worksheet/quantities.ts";
import { FRESH, type Item, SECTIONS } from "../../docs/worksheet/questions.ts";
import schema from "../../src/plan/job.schema.json" with { type: "json" };

interface Schema {
  readonly type?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly enum?: readonly string[];
}

/** Every field of the published schema, rows as `[]`: whether it must be there, and its words. */
function fields(
  of: Schema,
  path = "",
  required = true,
): ReadonlyMap<string, { required: boolean; words: readonly string[] }> {
  if (of.type === "object")
    return new Map(
      Object.entries(of.properties ?? {}).flatMap(([key, part]) => [
        ...fields(part, path === "" ? key : `${path}.${key}`, required && (of.required ?? []).includes(key)),
      ]),
    );
  if (of.type === "array" && of.items?.type === "object") return fields(of.items, `${path}[]`, true);
  return new Map([[path, { required, words: of.enum ?? [] }]]);
}

function asked(items: readonly Item[], path = ""): readonly (readonly [string, Item])[] {
  return items.flatMap((item): readonly (readonly [string, Item])[] => {
    if (item.ask === "group") return asked(item.items, path);
    const at = path === "" ? item.key : `${path}.${item.key}`;
    return item.ask === "list" ? asked(item.items, `${at}[]`) : [[at, item]];
  });
}

const published = fields(schema as Schema);
const questions = new Map(asked(SECTIONS));

describe("the questions", () => {
  test("ask for every field of the published job document but its form number, and for nothing else", () => {
    expect(published.size).toBeGreaterThan(70);
    expect([...questions.keys()].sort()).toEqual([...published.keys()].filter((path) => path !== "version").sort());
  });

  test("say of a field that it may be left out exactly where the document may", () => {
    for (const [path, item] of questions) {
      if (item.ask === "group" || item.ask === "list" || item.ask === "yes") continue;
      // A valve is left out whole; a generator alone must say what it runs.
      if (path.startsWith("controls.regulatingValve.") || item.when !== undefined) continue;
      expect([path, item.left === undefined]).toEqual([path, published.get(path)?.required]);
    }
  });

  test("offer the words of the document", () => {
    for (const [path, item] of questions) {
      const words = published.get(path)?.words ?? [];
      if (words.length > 0) expect([path, item.ask]).toEqual([path, "choice"]);
      if (item.ask === "choice" && words.length > 0)
        expect(item.options.map(({ value }) => value).sort()).toEqual([...words].sort());
    }
  });

  test("give samples that the library reads", () => {
    for (const [path, item] of questions) {
      if (item.ask !== "quantity") continue;
      expect(() => shownTwice(item.kind, item.sample), `${path}: ${item.sample}`).not.toThrow();
    }
  });
});

describe("the document", () => {
  test("is taken apart without loss", () => {
    const { asked: known, kept } = askedOf(structuredClone(ranch) as JsonObject, SECTIONS);
    expect(known).toEqual(ranch);
    expect(kept).toEqual([]);
    expect(misshapen(ranch as JsonObject, SECTIONS)).toBeNull();
  });

  test("keeps apart what is not asked for", () => {
    const strange = JSON.parse(
      '{"version":1,"__proto__":{"a":1},"well":{"driller":"x","test":[{"hours":4}]}}',
    ) as JsonObject;
    const { asked: known, kept } = askedOf(strange, SECTIONS);
    expect(kept.map(({ path }) => path)).toEqual(["__proto__", "well.driller", "well.test[0].hours"]);
    expect(valueAt(known, "well.test")).toEqual([{}]);
    expect(valueAt(known, "a")).toBeUndefined();
  });

  test("an answer taken back leaves no trace, and rows stay", () => {
    const document = structuredClone(FRESH) as JsonObject;
    setValue(document, "disinfection.target", "100 mg/L");
    setValue(document, "controls.regulatingValve.setPressure", "50 psi");
    setValue(document, "runs[0].length", "10 m");
    expect(valueAt(document, "controls.regulatingValve.setPressure")).toBe("50 psi");
    setValue(document, "disinfection.target", undefined);
    setValue(document, "controls.regulatingValve.setPressure", undefined);
    setValue(document, "runs[0].length", undefined);
    expect(document).toEqual(FRESH);
  });
});

describe("readings", () => {
  test("go into text and back", () => {
    // Exact by definition: the foot is 0.3048 m; the psi is the exact pound-force over the exact square inch.
    expect(textOf("length", 0.3048 * 41, "us")).toBe("41 ft");
    expect(textOf("pressure", 44 * (4.4482216152605 / 0.0254 ** 2), "us")).toBe("44 psi");
    expect(textOf("flow", 0.00125, "metric")).toBe("1.25 L/s");
    expect(textOf("shortTime", 16.4, "us")).toBe("16.4 s");
    expect(unitOf("voltage", "metric")).toBe("V");
  });
});
