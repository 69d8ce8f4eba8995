// @ts-check
/**
 * The tests with a new seed for the property tests and 100,000 spoiled jobs of each kind, and the record of it that the
 * verification page shows. FC_SEED repeats a run, FUZZ_JOBS sets how many; further arguments go to the test runner.
 */
import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";

const RESULTS = "coverage/nightly.json";

const json = (/** @type {string} */ path) => JSON.parse(readFileSync(path, "utf8"));

const seed = Number(process.env.FC_SEED ?? Date.now() % 2 ** 31);
const documents = Number(process.env.FUZZ_JOBS ?? 100_000);
console.log(`FC_SEED=${seed} FUZZ_JOBS=${documents}`);
const only = process.argv.slice(2);
const reporters = ["--reporter=dot", "--reporter=json", `--outputFile=${RESULTS}`];
const { status } = spawnSync("npx", ["vitest", "run", ...reporters, ...only], {
  stdio: "inherit",
  env: { ...process.env, FC_SEED: String(seed), FUZZ_JOBS: String(documents) },
});
const { numPassedTests: passed, numFailedTests: failed } = json(RESULTS);
const record = {
  date: new Date().toISOString().slice(0, 10),
  version: json("package.json").version,
  node: process.versions.node,
  tests: only.join(" ") || "all",
  seed,
  documents,
  passed,
  failed,
};
writeFileSync("tests/hostile/nightly.json", `${JSON.stringify(record, undefined, 1)}\n`);
process.exitCode = status ?? 1;
