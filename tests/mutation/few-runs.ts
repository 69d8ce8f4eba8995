/**
 * Stands in for fast-check under mutation: fewer runs, and no shrinking, since nobody reads the counterexample. A mutant
 * that only a longer run would find is counted as surviving.
 */
import * as whole from "../../node_modules/fast-check/lib/fast-check.js";

const MOST_RUNS = 40;

export * from "../../node_modules/fast-check/lib/fast-check.js";

export const assert: typeof whole.assert = ((property: never, parameters: whole.Parameters = {}) =>
  whole.assert(property, {
    ...parameters,
    numRuns: Math.min(parameters.numRuns ?? MOST_RUNS, MOST_RUNS),
    endOnFailure: true,
  })) as never;

export default { ...whole.default, assert };
