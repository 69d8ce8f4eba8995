/** Every quantity of a job at either end of the range that the published form gives it, one at a time. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { planSystem, readJob, reportOf } from "risingmain/plan";
import { expect, test } from "vitest";
import { type Changes, cabin, ranch } from "./jobs.ts";

interface Schema {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly description?: string;
}

/** A change for each end of each quantity's range, read from its description: "from 3.281 ft to 6,562 ft (1 to 2000 m)". */
function ends({ properties, items, description = "" }: Schema, path = ""): readonly Changes[] {
  if (properties !== undefined)
    return Object.entries(properties).flatMap(([key, part]) => ends(part, path === "" ? key : `${path}.${key}`));
  if (items !== undefined) return [0, 1].flatMap((i) => ends(items, `${path}[${i}]`));
  const [, least, most, unit = ""] = /\((\S+) to (\S+?)(?: ([^)]*?)(?: gauge)?)?\)$/.exec(description) ?? [];
  return least === undefined ? [] : [least, most].map((end) => ({ [path]: `${end} ${unit}`.trim() }));
}

const schema = JSON.parse(readFileSync(new URL("../../src/plan/job.schema.json", import.meta.url), "utf8")) as Schema;
const fields = Object.keys(schema.properties ?? {});

test("there is a plan, all of it numbers, or a refusal that names a field of the job", () => {
  const changes = ends(schema);
  expect(changes.length).toBeGreaterThan(120);
  fc.assert(
    fc.property(fc.constantFrom(...changes), fc.constantFrom(ranch, cabin), (change, document) => {
      try {
        expect(reportOf(planSystem(readJob(document(change))))).not.toMatch(/NaN|undefined|Infinity/);
      } catch (error) {
        const { name, parameter = "" } = error as { name: string; parameter?: string };
        expect([name, parameter.split(/[.[]/)[0]], String(error)).toEqual(["InputError", expect.toBeOneOf(fields)]);
      }
    }),
    { numRuns: 60, endOnFailure: true },
  );
}, 180_000);
