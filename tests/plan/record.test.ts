/** The as-built record: verdicts at both ends of every band, stored and read back, and documents that someone has spoiled. */
import { readFileSync } from "node:fs";
import { toJsonSchema } from "@valibot/to-json-schema";
import {
  type AsBuiltRecord,
  asBuiltRecord,
  type JobError,
  type Plan,
  planSystem,
  readJob,
  readRecord,
  recordReport,
  sampleJob,
} from "risingmain/plan";
import { feet, psi } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { recordSchema } from "../../src/plan/record-schema.ts";

const fileOf = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
const ranch = planSystem(readJob(JSON.parse(fileOf("docs/jobs/ranch.json"))));
const cabin = planSystem(readJob(sampleJob));

function linesOf(call: () => unknown): readonly string[] {
  try {
    call();
  } catch (error) {
    expect((error as Error).name).toBe("InputError");
    return (error as JobError).lines;
  }
  return [];
}

function verdictOf(plan: Plan, code: string, value: number): string | undefined {
  return asBuiltRecord({ plan, readings: { [code]: value } }).readings.find((reading) => reading.code === code)
    ?.verdict;
}

describe("verdicts", () => {
  test.each(ranch.commissioning.map((row) => [row.code, row] as const))("%s, at both ends of its band", (code, row) => {
    const step = 1e-9 * Math.max(row.expected.value, row.high.value);
    const read = (value: number): string | undefined => verdictOf(ranch, code, value);
    expect(read(row.low.value)).toBe("pass");
    // Under no current there is none to read.
    if (row.low.value > 0) expect(read(row.low.value - step)).toBe("fail");
    expect(read(row.expected.value)).toBe("pass");
    expect(read(row.high.value)).toBe("pass");
    expect(read(row.high.value + step)).toBe("fail");
  });

  test("a reading left out, or null, is not tested; the order is the sheet's", () => {
    const { readings } = asBuiltRecord({ plan: ranch, readings: { "cut-in": psi(52), "cut-out": null } });
    expect(readings.map(({ code }) => code)).toEqual(ranch.commissioning.map(({ code }) => code));
    const tested = readings.filter(({ verdict }) => verdict !== "not tested");
    expect(tested.map(({ code, verdict }) => [code, verdict])).toEqual([["cut-in", "pass"]]);
  });

  test("the reason says which side", () => {
    const reason = (pressure: number) =>
      asBuiltRecord({ plan: ranch, readings: { precharge: psi(pressure) } }).readings.find(
        ({ code }) => code === "precharge",
      )?.reason;
    expect([40, 50, 60].map(reason)).toEqual([
      "Below the least that passes.",
      "Inside its band.",
      "Above the most that passes.",
    ]);
  });

  test("reasons hold no numbers", () => {
    const { readings } = asBuiltRecord({
      plan: ranch,
      readings: { "cut-in": psi(52), "cut-out": psi(90), precharge: psi(20) },
    });
    expect(new Set(readings.map(({ reason }) => reason)).size).toBe(4);
    for (const { reason } of readings) expect(reason).not.toMatch(/\d/);
  });

  test("unknown codes and impossible readings, all at once", () => {
    const readings = JSON.parse(
      '{"static level": 20, "static-level": -1, "cut-in": "52 psi", "flow-at-cut-in": 30, "__proto__": 1, "constructor": 2}',
    );
    readings["tank-fill"] = Number.NaN;
    const lines = linesOf(() => asBuiltRecord({ plan: ranch, readings }));
    expect(lines.map((line) => line.split(":")[0])).toEqual([
      "readings.static level",
      "readings.static-level",
      "readings.cut-in",
      "readings.flow-at-cut-in",
      "readings.__proto__",
      "readings.constructor",
      "readings.tank-fill",
    ]);
    expect(lines[0]).toMatch(/a code of the plan's commissioning sheet: static-level, /);
  });

  test("readings that are inherited are not readings", () => {
    const readings = Object.create({ "static-level": 20 }) as Record<string, number>;
    expect(asBuiltRecord({ plan: ranch, readings }).readings[0]?.measured).toBe(null);
  });

  test("an outlet that the plan cannot reach has a band the right way round", () => {
    const row = { ...(cabin.commissioning[0] as never as object), code: "up" } as never;
    const under = [-1000, -1050, -950].map((value) => ({ kind: "pressure", value }));
    const [expected, low, high] = under;
    const plan = { ...cabin, commissioning: [{ ...(row as object), expected, low: high, high: low }] } as never as Plan;
    const [reading] = asBuiltRecord({ plan, readings: {} }).readings;
    expect([reading?.low.value, reading?.high.value]).toEqual([-1050, -950]);
  });
});

/** A record with everything in it. */
const full = (): AsBuiltRecord =>
  asBuiltRecord({
    plan: cabin,
    readings: { "static-level": feet(41), precharge: psi(19), "cut-in": psi(30), "running-current": -0 },
    date: "2031-05-14",
    by: "the installer",
    notes: "Casing | cap is new.\n# Not a heading\n<b>look</b>",
  });

describe("stored and read back", () => {
  test("JSON carries it whole", () => {
    const record = full();
    expect(readRecord(JSON.parse(JSON.stringify(record)))).toStrictEqual(record);
    expect(structuredClone(record)).toStrictEqual(record);
  });

  test("the published schema is that of the reader", () => {
    const published = JSON.parse(fileOf("src/plan/record.schema.json"));
    const { $schema: _, title: __, ...rest } = published;
    const { $schema: ___, ...schema } = toJsonSchema(recordSchema());
    expect(rest).toEqual(JSON.parse(JSON.stringify(schema)));
    const manifest = JSON.parse(fileOf("package.json"));
    expect(manifest.exports["./record.schema.json"]).toBe("./src/plan/record.schema.json");
  });

  /** The record's document with one part replaced. */
  const spoiled = (path: string, value: unknown): unknown => {
    const document = JSON.parse(JSON.stringify(full()));
    const keys = path.split(/[.[\]]+/).filter((key) => key !== "");
    const last = keys.pop() as string;
    const parent = keys.reduce((node, key) => node[key], document);
    if (value === undefined) delete parent[last];
    else Object.defineProperty(parent, last, { value, enumerable: true, configurable: true, writable: true });
    return document;
  };

  const FAULTS: readonly (readonly [kind: string, path: string, value: unknown, message: RegExp])[] = [
    ["an unknown form", "version", 2, /^version: .*1, the form of record this release reads.*got 2/],
    ["no form", "version", undefined, /^version: .*\(missing\)/],
    ["a name of nothing", "name", "", /^name: .*not empty/],
    ["an unknown field", "colour", "blue", /^colour: .*a known field of the record: version, name/],
    ["a prototype key", "__proto__", { admin: true }, /^__proto__: .*a known field/],
    ["a field every object inherits", "constructor", 1, /^constructor: .*a known field/],
    ["the same in a reading", "readings[0].toString", 1, /^readings\[0\]\.toString: .*a known field of a reading/],
    ["a day that is none", "date", "2031-13-40", /^date: .*such as "2031-05-14"/],
    ["a day in another order", "date", "14/05/2031", /^date: /],
    ["an unknown verdict", "readings[0].verdict", "maybe", /^readings\[0\]\.verdict: .*one of "pass", "fail"/],
    ["a pass that failed", "readings[1].verdict", "pass", /^readings\[1\]\.verdict: .*"fail", as the reading/],
    ["a fail that passed", "readings[0].verdict", "fail", /^readings\[0\]\.verdict: .*"pass", as the reading/],
    ["a pass of nothing", "readings[2].verdict", "pass", /^readings\[2\]\.verdict: .*"not tested"/],
    ["a reading as text", "readings[0].measured", "41 ft", /^readings\[0\]\.measured: .*a number/],
    ["a reading that cannot be", "readings[0].measured", -3, /^readings\[0\]\.measured: .*from 0 to 2000/],
    ["an unknown kind", "readings[0].low.kind", "toString", /^readings\[0\]\.low\.kind: .*one of "length"/],
    [
      "a band of another kind",
      "readings[0].low.kind",
      "pressure",
      /^readings\[0\]\.low\.kind: .*"length", as expected/,
    ],
    ["a band turned round", "readings[2].low.value", 1, /^readings\[2\]\.expected\.value: .*between low and high/],
    ["a code twice", "readings[1].code", "static-level", /^readings\[1\]\.code: .*occurs once/],
    ["a number JSON turns to null", "readings[0].expected.value", null, /^readings\[0\]\.expected\.value: .*a number/],
    ["a number for an object", "readings[0]", 7, /^readings\[0\]: expected a reading, an object, got 7$/],
    ["the same far down the sheet", "readings[12].verdict", "maybe", /^readings\[12\]\.verdict: .*one of "pass"/],
    [
      "a band below its reading",
      "readings[2].high.value",
      1e-9,
      /^readings\[2\]\.expected\.value: .*between low and high/,
    ],
    ["a well deeper than any", "readings[2].measured", 1.01, /^readings\[2\]\.measured: .*from 0 to 1,/],
    ["an endless text", "notes", "x".repeat(10_001), /^notes: .*at most 10000 letters/],
    ["a list for an object", "readings[0]", [], /^readings\[0\]/],
    ["a text for a list", "cautions", "none", /^cautions: .*a list/],
  ];

  test.each(FAULTS)("%s", (_, path, value, message) => {
    const lines = linesOf(() => readRecord(spoiled(path, value)));
    expect(lines.length).toBeGreaterThan(0);
    expect(lines[0]).toMatch(message);
  });

  test("what is there and wrong is not missing", () => {
    for (const [path, value] of [
      ["version", 2],
      ["date", "14/05/2031"],
      ["readings[0].code", ""],
    ] as const) {
      const [line] = linesOf(() => readRecord(spoiled(path, value)));
      expect(line).not.toMatch(/missing/);
    }
    expect(linesOf(() => readRecord(spoiled("name", undefined)))[0]).toMatch(/\(missing\)/);
  });

  test("a band may end at its expected value, and a reading at what is possible", () => {
    const edge = (side: "low" | "high") => {
      const document = JSON.parse(JSON.stringify(full()));
      const [row] = document.readings;
      row[side].value = row.expected.value;
      Object.assign(row, { measured: null, verdict: "not tested", reason: "No reading was taken." });
      return readRecord(document).readings[0]?.[side].value;
    };
    expect([edge("low"), edge("high")]).toEqual([feet(40), feet(40)]);
    // 2000 m of well, 1 m³/s of flow.
    const most = asBuiltRecord({ plan: cabin, readings: { "static-level": 2000, "flow-at-cut-in": 1 } });
    expect(readRecord(JSON.parse(JSON.stringify(most)))).toEqual(most);
    expect(linesOf(() => asBuiltRecord({ plan: cabin, readings: { "static-level": 2000.1 } }))[0]).toMatch(
      /from 0 to 2,?000/,
    );
    // A number in quotes is a text.
    expect(linesOf(() => asBuiltRecord({ plan: cabin, readings: { "static-level": "12" as never } }))[0]).toMatch(
      /^readings\.static-level/,
    );
  });

  test("all that is wrong at once", () => {
    const document = { ...(spoiled("readings[0].verdict", "maybe") as object), version: "1", by: 7 };
    expect(linesOf(() => readRecord(document)).map((line) => line.split(":")[0])).toEqual([
      "version",
      "by",
      "readings[0].verdict",
    ]);
  });

  test.each([undefined, null, 1, "record", [], {}])("%j is no record", (document) => {
    expect(linesOf(() => readRecord(document)).length).toBeGreaterThan(0);
  });
});

describe("on paper", () => {
  test("says first what it comes to", () => {
    expect(recordReport(full()).split("\n")[2]).toMatch(/^\*\*Not in order: 1 failed, 3 passed, 12 not tested\.\*\*/);
    const all = Object.fromEntries(cabin.commissioning.map(({ code, expected }) => [code, expected.value]));
    const good = recordReport(asBuiltRecord({ plan: cabin, readings: all }));
    expect(good).toMatch(/\n\*\*In order: all 16 readings passed\.\*\*\n/);
    expect(good).toMatch(/Read on a day not recorded, by a person not recorded\./);
    const none = recordReport(asBuiltRecord({ plan: cabin, readings: {} }));
    expect(none).toMatch(/\n\*\*Not finished: 0 passed, none failed, 16 not tested\.\*\*\n/);
  });

  test("shows readings in either unit system", () => {
    expect(recordReport(full(), { units: "us" })).toMatch(/\| 40\.0 ft \| 36\.0 ft to 44\.0 ft \| 41\.0 ft \| pass \|/);
    expect(recordReport(full(), { units: "metric" })).toMatch(/\| 12\.2 m \| 11\.0 m to 13\.4 m \| 12\.5 m \| pass \|/);
    expect(() => recordReport(full(), { units: "nautical" as never })).toThrow("units");
  });

  test("notes and names cannot break it", () => {
    const report = recordReport({ ...full(), name: "A | B\n# C <i>" });
    expect(report.split("\n")[0]).toBe("# A   B # C &lt;i>: as-built record");
    expect(report).toContain("> Casing   cap is new.\n> # Not a heading\n> &lt;b>look&lt;/b>");
    expect(report.match(/^# /gm)).toHaveLength(1);
  });

  test("is headings, a table with its heads, and lists; a failure stands out", () => {
    for (const record of [full(), { ...full(), notes: null }]) {
      const report = recordReport(record);
      expect(report).toContain("\n| reading | how | expected | passes | read | verdict | reason |\n");
      expect(report).toMatch(/\| \*\*fail\*\* \| Below the least that passes\. \|/);
      expect(report).toContain("by the installer.");
      expect(report).not.toMatch(/\n\n\n/);
      const cautions = report.match(/^- .*$/gm) ?? [];
      expect(new Set(cautions).size).toBe(cautions.length);
    }
    const twice = { ...full(), cautions: [...full().cautions, ...full().cautions] };
    expect(recordReport(twice)).toBe(recordReport(full()));
  });

  test("notes keep their empty lines", () => {
    expect(recordReport({ ...full(), notes: "One.\n\nTwo.\r\nThree." })).toContain("> One.\n>\n> Two.\n> Three.");
  });

  test("says its cautions, and defers, whatever became of those stored", () => {
    for (const cautions of [full().cautions, []]) {
      const report = recordReport({ ...full(), cautions });
      expect(report).toMatch(/Local code, the health department and the licensed trades have the last word/);
      expect(report).toMatch(/no permit, no inspection and no water test/);
      expect(report).toMatch(/never with compressed air/);
      expect(report).toMatch(/Live readings are for a qualified person/);
    }
    expect(recordReport(full())).toMatch(/Drink nothing from the well before a sample has come back clean/);
  });
});
