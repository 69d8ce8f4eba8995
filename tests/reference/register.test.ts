/** Every published record of every module, computed and compared: one test a record. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import * as sources from "../../src/sources/index.ts";
import { compareAllModules } from "./all-modules.ts";

const compared = await compareAllModules();

for (const [module, deviations] of compared) {
  test.each([...new Set(deviations.map(({ record }) => record.id))])(`${module}: %s`, (id) => {
    const misses = deviations.filter(({ record, passes }) => record.id === id && !passes);
    expect(
      misses.map(({ name, printed, computed, unit }) => `${name}: printed ${printed} ${unit}, computed ${computed}`),
    ).toEqual([]);
  });
}

describe("every record", () => {
  const records = [...compared.values()].flat().map(({ record }) => record);
  const listed = JSON.parse(readFileSync(new URL("./sources.json", import.meta.url), "utf8")) as { id: string }[];
  const known = new Set([...listed, ...sources.bibliography()].map(({ id }) => id));

  test("names a source of the bibliography", () => {
    expect(records.filter(({ source }) => !known.has(source)).map(({ id, source }) => `${id}: ${source}`)).toEqual([]);
  });

  test("says why its tolerance is what it is", () => {
    expect(records.filter(({ tolerance }) => !(tolerance.why.length > 3)).map(({ id }) => id)).toEqual([]);
  });

  test("sources that no record names are not kept", () => {
    const used = new Set(records.map(({ source }) => source));
    expect(listed.filter(({ id }) => !used.has(id)).map(({ id }) => id)).toEqual([]);
  });
});
