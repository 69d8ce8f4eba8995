/**
 * Mutation of one module, named by MUTATED. Left out:
 * - StringLiteral: texts for people, and members of unions, which the compiler checks;
 * - static mutants, evaluated when a module loads: tables and constants, held by the published rows. Each would cost a
 *   whole run.
 */
const module = process.env.MUTATED;

export default {
  testRunner: "in-process",
  plugins: ["./tests/mutation/runner.mjs"],
  mutate: [`src/${module}/**/*.ts`, "!src/**/index.ts", "!src/bin/risingmain.ts"],
  mutator: { excludedMutations: ["StringLiteral"] },
  ignoreStatic: true,
  coverageAnalysis: "perTest",
  dryRunTimeoutMinutes: 20,
  // Loops without end are counted and found out early; a slow machine is not one.
  timeoutMS: 20_000,
  concurrency: 2,
  ignorePatterns: ["/bench", "/.changeset", "/dist", "/coverage", "/docs/site", "/tests/runtimes"],
  tempDirName: "coverage/stryker",
  incremental: true,
  incrementalFile: `coverage/mutation/${module}.incremental.json`,
  reporters: ["progress-append-only", "json"],
  jsonReporter: { fileName: `coverage/mutation/${module}.json` },
  thresholds: { high: 95, low: 90, break: null },
};
