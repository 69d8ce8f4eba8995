/**
 * The sources a plan rests on.
 *
 * @module
 */
import { requireObject } from "../numeric/index.ts";
import { bibliography, findSource, type Source } from "../sources/index.ts";
import type { Finding } from "./finding.ts";
import type { Plan } from "./plan-system.ts";
import { readPlan } from "./read-plan.ts";

/** Fields of plan data that hold a source id. */
const ID_FIELDS: readonly string[] = ["method", "source", "basis"];

/** What every plan is worked out with, whatever it holds: the equations behind the stages. */
const ALWAYS: readonly string[] = ["iapws-sr6-08", "colebrook-1939", "iso-9906"];

/**
 * The bibliography of a plan, each source that a stage or a finding of it names; or of one finding.
 *
 * @param cited - a plan from {@link planSystem}, or one of its findings
 * @returns the records, ordered by id; none for a finding that rests on no printed source
 * @throws InputError where it is neither
 * @source derived: the ids in the plan's own data
 *
 * @example
 * ```ts
 * import { citationsOf, planSystem, readJob, sampleJob } from "risingmain/plan";
 *
 * const plan = planSystem(readJob(sampleJob));
 * citationsOf(plan).some(({ id }) => id === "colebrook-1939"); // => true
 * ```
 */
export function citationsOf(cited: Plan | Finding): readonly Source[] {
  requireObject("cited", cited);
  if (!("stages" in cited)) {
    requireObject("cited.basis", cited.basis);
    const { source } = cited.basis;
    return source === undefined ? [] : [findSource(source)];
  }
  return readPlan(cited, (plan) => {
    const named = new Set(ALWAYS);
    collect(plan, named);
    return bibliography().filter(({ id }) => named.has(id));
  });
}

/** Plans are trees of plain data a few levels deep; the walk goes no deeper than they do. */
function collect(value: unknown, into: Set<string>, depth = 12): void {
  if (typeof value !== "object" || value === null || depth === 0) return;
  for (const [key, item] of Object.entries(value)) {
    if (typeof item === "string" && ID_FIELDS.includes(key)) into.add(item);
    else collect(item, into, depth - 1);
  }
}
