/** The random jobs cover every field of the published form, so that no option escapes the laws of the whole job. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { readJob } from "risingmain/plan";
import { expect, test } from "vitest";
import { randomJobs } from "./random-jobs.ts";

interface Schema {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
}

const schema = JSON.parse(readFileSync(new URL("../../src/plan/job.schema.json", import.meta.url), "utf8")) as Schema;

function fieldsOf({ properties = {}, items }: Schema, path = ""): readonly string[] {
  return [
    ...Object.entries(properties).flatMap(([key, part]) => [`${path}.${key}`, ...fieldsOf(part, `${path}.${key}`)]),
    ...(items === undefined ? [] : fieldsOf(items, `${path}[]`)),
  ];
}

function fieldsIn(value: unknown, path = ""): readonly string[] {
  if (Array.isArray(value)) return value.flatMap((item) => fieldsIn(item, `${path}[]`));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => [`${path}.${key}`, ...fieldsIn(part, `${path}.${key}`)]);
}

const sample = () => fc.sample(randomJobs, 200);

test("every field of a job turns up in the random ones", () => {
  const jobs = sample();
  const seen = new Set(jobs.flatMap(({ metric }) => fieldsIn(metric)));
  expect(fieldsOf(schema).length).toBeGreaterThan(80);
  expect(fieldsOf(schema).filter((field) => !seen.has(field))).toEqual([]);
});

test("every random job is valid in either unit system", () => {
  for (const { metric, us } of sample()) {
    readJob(metric);
    readJob(us);
  }
}, 180_000);
