/**
 * Stands in for fast-check under mutation: fewer runs, and no shrinking, since nobody reads the counterexample. A mutant
 * that only a longer run would find is counted as surviving.
 */
import * as whole from "../../node_modules/fast-check/lib/fast-check.js";

/** A run of a property of plan works through a whole job. */
const MOST_RUNS = process.env["MUTATED"] === "plan" ? 10 : 40;

export * from "../../node_modules/fast-check/lib/fast-check.js";

export const assert: typeof whole.assert = ((property: never, parameters: whole.Parameters = {}) =>
  whole.assert(property, {
    ...parameters,
    numRuns: Math.min(parameters.numRuns ?? MOST_RUNS, MOST_RUNS),
    endOnFailure: true,
  })) as never;

export default { ...whole.default, assert };
