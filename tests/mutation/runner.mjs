/**
 * Runs one module's tests for Stryker, in the process that loaded them: no worker to start and no file to load again for
 * each mutant, which takes most of the time otherwise. MUTATED names the module; its tests are its own folder, its
 * published rows, and its exports against garbage. Docstring examples are left out: they hold values this code printed.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { pathToFileURL } from "node:url";
import { declareFactoryPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import {
  DryRunStatus,
  determineHitLimitReached,
  TestStatus,
  toMutantRunResult,
} from "@stryker-mutator/api/test-runner";
import { glob } from "tinyglobby";
import { register } from "tsx/esm/api";

/** Tests that read the source text, which Stryker has rewritten. */
const READS_SOURCE = "tests/pipe/same-bits.test.ts";

/** Runs the command as it loads; what it does is beside it. */
const RUNS = "src/bin/risingmain.ts";

/** Tests of every module, which ONLY_MODULE limits to one. */
const SHARED = ["tests/reference/register.test.ts", "tests/hostile/every-export.test.ts"];

/** Spoils a whole plan and draws it, for minutes: left out without trying. */
const ENDLESS = /every-export\.test\.ts#.* plot\.chartsOf$/;

/** Garbage for a whole job takes each export seconds, far longer than LONGEST: in plan it is not even tried. */
const sharedWith = (module) => (module === "plan" ? SHARED.slice(0, 1) : SHARED);

const FEWEST_HITS = 100_000;

/**
 * A test that takes more processor time than this, ms, is left out: each survivor would cost it again. The score is a
 * lower bound. LONGEST_TEST is for a busy machine.
 */
const LONGEST = Number(process.env.LONGEST_TEST ?? 500);

/** How long each test takes by the dry run, which one process makes for all. */
const TIMES = "coverage/mutation-times.json";

const load = (file) => import(pathToFileURL(file).href);

class Runner {
  /** Instrumented code reads the active mutant here and counts its hits. */
  #code = globalThis.__stryker__ ?? {};
  #tests = new Map();
  #ordered = false;

  capabilities() {
    return { reloadEnvironment: false };
  }

  async init() {
    globalThis.__stryker__ = this.#code;
    const module = process.env.MUTATED;
    process.env.ONLY_MODULE = module;
    register({ tsconfig: "tests/mutation/tsconfig.json" });
    const { collect, tests } = await load("tests/mutation/collect.mjs");
    await load("tests/setup.ts");
    for (const file of await glob(`src/${module}/**/*.ts`, { ignore: [RUNS] })) await load(file);
    // Only what a source file does as it loads is static. What a test file does as it loads is no test: not covered.
    const loaded = { ...this.#code.mutantCoverage?.static };
    const own = await glob(`tests/${module}/**/*.test.ts`, { ignore: [READS_SOURCE] });
    for (const file of [...own.sort(), ...sharedWith(module)]) await collect(file, () => load(file));
    if (this.#code.mutantCoverage) this.#code.mutantCoverage.static = loaded;
    this.#tests = new Map([...tests].filter(([id]) => !ENDLESS.test(id)));
  }

  async dryRun() {
    const mutantCoverage = this.#code.mutantCoverage;
    const results = [];
    const times = {};
    for (const test of this.#tests.values()) {
      this.#code.currentTestId = test.id;
      const start = process.cpuUsage();
      const [result] = await this.#run([test]);
      const { user, system } = process.cpuUsage(start);
      times[test.id] = user + system;
      if ((user + system) / 1000 <= LONGEST) results.push(result);
      else delete mutantCoverage?.perTest[test.id];
    }
    this.#code.currentTestId = undefined;
    mkdirSync(dirname(TIMES), { recursive: true });
    writeFileSync(TIMES, JSON.stringify(times));
    return { status: DryRunStatus.Complete, tests: results, mutantCoverage };
  }

  /** Quick tests first: most mutants fail one of them, and the long ones need not run. */
  #order() {
    this.#ordered = true;
    if (!existsSync(TIMES)) return;
    const times = JSON.parse(readFileSync(TIMES, "utf8"));
    this.#tests = new Map([...this.#tests].sort(([a], [b]) => (times[a] ?? 0) - (times[b] ?? 0)));
  }

  async mutantRun({ testFilter, hitLimit, activeMutant }) {
    if (!this.#ordered) this.#order();
    // Stryker's limit is 100 times the hits of all the tests together. One test alone that makes more than 5 times the
    // hits of them all will not end; found out early, the process need not be ended for it.
    const limit = hitLimit === undefined ? undefined : Math.max(hitLimit / 20, FEWEST_HITS);
    Object.assign(this.#code, { hitLimit: limit, activeMutant: activeMutant.id });
    const asked = testFilter && new Set(testFilter);
    const chosen = [...this.#tests.values()].filter(({ id }) => !asked || asked.has(id));
    const startCounting = () => {
      this.#code.hitCount = 0;
    };
    const results = await this.#run(chosen, startCounting);
    const failed = results.find(({ status }) => status === TestStatus.Failed);
    // What noticed this mutant will notice its neighbours: first next time.
    if (failed) this.#tests = new Map([[failed.id, this.#tests.get(failed.id)], ...this.#tests]);
    this.#code.activeMutant = undefined;
    return toMutantRunResult(
      determineHitLimitReached(this.#code.hitCount, limit) ?? { status: DryRunStatus.Complete, tests: results },
    );
  }

  /** Up to the first failure. */
  async #run(chosen, before = () => {}) {
    const results = [];
    for (const { id, name, fileName, run } of chosen) {
      before();
      const start = performance.now();
      const result = { id, name, fileName, status: TestStatus.Success };
      try {
        await run();
      } catch (error) {
        Object.assign(result, { status: TestStatus.Failed, failureMessage: String(error) });
      }
      results.push({ ...result, timeSpentMs: performance.now() - start });
      if (result.status === TestStatus.Failed) break;
    }
    return results;
  }
}

function create() {
  return new Runner();
}
create.inject = [];

export const strykerPlugins = [declareFactoryPlugin(PluginKind.TestRunner, "in-process", create)];
