/** Every published record of every module, computed and compared: one test a record. */
import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { type Computation, compareAll, loadRecords } from "./register.ts";

const here = new URL("./", import.meta.url);
const modules = readdirSync(here)
  .filter((file) => file.endsWith(".checks.ts"))
  .map((file) => file.slice(0, -".checks.ts".length));

for (const module of modules) {
  const { computations } = (await import(`./${module}.checks.ts`)) as { computations: readonly Computation[] };
  const deviations = compareAll(loadRecords(module), computations);
  for (const id of new Set(deviations.map(({ record }) => record.id))) {
    test(`${module}: ${id}`, () => {
      const misses = deviations.filter(({ record, passes }) => record.id === id && !passes);
      expect(
        misses.map(({ name, printed, computed, unit }) => `${name}: printed ${printed} ${unit}, computed ${computed}`),
      ).toEqual([]);
    });
  }
}
