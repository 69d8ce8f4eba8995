/** Every published record of every module, computed and compared: one test a record. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import * as sources from "../../src/sources/index.ts";
import { computationsOf, modules } from "./all-modules.ts";
import { compareRecord, loadRecords, unusedComputations } from "./register.ts";
import { STATUS, statusOf } from "./status.ts";

/** ONLY_MODULE limits the run to one module: `pipe` takes `pipe-standards` with it. */
const only = process.env["ONLY_MODULE"];
const chosen = modules.filter((module) => only === undefined || module === only || module.startsWith(`${only}-`));

for (const module of chosen) {
  const records = loadRecords(module);
  const computations = await computationsOf(module);

  // Computed inside the test, so that a record that throws fails alone.
  test.each(records.map((record) => [record.id, record] as const))(`${module}: %s`, (_, record) => {
    const misses = compareRecord(record, computations).filter(({ passes }) => !passes);
    expect(
      misses.map(({ name, printed, computed, unit }) => `${name}: printed ${printed} ${unit}, computed ${computed}`),
    ).toEqual([]);
  });

  test(`${module}: no computation is left over`, () => {
    expect(unusedComputations(records, computations)).toEqual([]);
  });

  test(`${module}: every id is given once`, () => {
    expect(new Set(records.map(({ id }) => id)).size).toBe(records.length);
  });
}

describe.skipIf(only !== undefined)("every record", () => {
  const records = modules.flatMap(loadRecords);
  const listed = JSON.parse(readFileSync(new URL("./sources.json", import.meta.url), "utf8")) as { id: string }[];
  const known = new Set([...listed, ...sources.bibliography()].map(({ id }) => id));

  test("names a source of the bibliography", () => {
    expect(records.filter(({ source }) => !known.has(source)).map(({ id, source }) => `${id}: ${source}`)).toEqual([]);
  });

  test("says why its tolerance is what it is", () => {
    expect(records.filter(({ tolerance }) => !(tolerance.why.length > 3)).map(({ id }) => id)).toEqual([]);
  });

  test("is counted in the README: npm run verify", () => {
    const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
    expect(STATUS.exec(readme)?.[0].split("\n")[1]).toBe(statusOf(records));
  });

  test("sources that no record names are not kept", () => {
    const used = new Set(records.map(({ source }) => source));
    expect(listed.filter(({ id }) => !used.has(id)).map(({ id }) => id)).toEqual([]);
  });
});
