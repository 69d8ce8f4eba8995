/**
 * What holds for every chart: the standard's own compiler and renderer take it without a word, it is plain data, and it
 * says in words what it shows.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { Ajv } from "ajv";
import * as plot from "risingmain/plot";
import { describe, expect, test } from "vitest";
import { draw } from "../../docs/charts/render.ts";
import { samples } from "./specs.ts";

/** The standard's own schema, as its compiler is published with it; the compiler says nothing of a word it does not know. */
const schemaFile = createRequire(import.meta.url).resolve("vega-lite/vega-lite-schema.json");
const followsSchema = new Ajv({ strict: false, validateFormats: false }).compile(
  JSON.parse(readFileSync(schemaFile, "utf8")),
);

/** How often each kind of mark was drawn, by the renderer's own labels. */
function marksIn(svg: string, kind: string): number {
  return [...svg.matchAll(/aria-roledescription="(\w+)(?: mark)?"/g)].filter(([, found]) => found === kind).length;
}

test("every chart of the module has a sample", () => {
  const charts = Object.keys(plot).filter((name) => name.endsWith("Chart"));
  expect(samples.map(({ name }) => name)).toEqual(expect.arrayContaining(charts));
  expect(charts.length).toBe(8);
});

describe.each(samples.map((sample) => [sample.name, sample] as const))("%s", (_, { draw: chart, marks }) => {
  test.each([
    {},
    { units: "metric", paper: "dark" },
    { width: 360 },
    { width: 240, height: 60, units: "metric" },
  ] as const)("compiles and is drawn without a warning: %o", async (options) => {
    const { svg, warnings } = await draw(chart(options));
    expect(warnings).toEqual([]);
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
    for (const [kind, count] of Object.entries(marks)) expect([kind, marksIn(svg, kind)]).toEqual([kind, count]);
  });

  test("follows the schema of the standard", () => {
    expect(followsSchema(chart()) ? [] : followsSchema.errors).toEqual([]);
  });

  test("fits the width asked for", async () => {
    for (const width of [360, 560, 900]) {
      const { svg } = await draw(chart({ width }));
      const drawn = Number(/<svg[^>]* width="([\d.]+)"/.exec(svg)?.[1]);
      // A phone's width must not be passed; the stacked chart may stay a little below it.
      expect(drawn).toBeGreaterThan(0.95 * width);
      expect(drawn).toBeLessThanOrEqual(width + 2);
    }
  });

  test("is plain data that JSON carries, the same twice, and drawn in the same bytes", async () => {
    const spec = chart();
    expect(structuredClone(spec)).toStrictEqual(spec);
    expect(JSON.parse(JSON.stringify(spec))).toStrictEqual(spec);
    expect(JSON.stringify(chart())).toBe(JSON.stringify(spec));
    expect((await draw(chart())).svg).toBe((await draw(spec)).svg);
  });

  test("has a title, units in words on its axes, and a description", () => {
    const spec = chart({ units: "metric" });
    expect(spec.title["text"]).not.toBe("");
    expect(spec.description.length).toBeGreaterThan(40);
    const text = JSON.stringify(spec);
    expect(text).not.toMatch(/gallons|feet|pounds/);
    expect(JSON.stringify(chart())).not.toMatch(/litres|metres|kilopascals/);
    for (const [, title] of text.matchAll(/"title":"([^"]+)"/g)) {
      expect(title).toMatch(/, |Reynolds number|friction factor|Hours/);
    }
  });
});

test("unknown options are refused", () => {
  const [sample] = samples;
  for (const bad of [{ units: "imperial" }, { paper: "red" }, { width: 100 }, { height: Number.NaN }, null]) {
    expect(() => sample?.draw(bad as never)).toThrow(expect.objectContaining({ name: "InputError" }));
  }
});
