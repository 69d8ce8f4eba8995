/**
 * Stands in for vitest under mutation: the part of it our tests use, collecting them instead of running them, so that
 * files are loaded once and each mutant runs its tests in the same process. `expect` is vitest's own.
 */
import { customMatchers, JestAsymmetricMatchers, JestChaiExpect, JestExtend } from "@vitest/expect";
import * as chai from "chai";

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const { expect } = chai;
expect.extend(expect, customMatchers);
expect.unreachable = (message = "expected not to be reached") => chai.assert.fail(message);

/** What the files define, by id. */
export const tests = new Map();

/** The file that is loading, and the groups it stands in. */
const place = { file: "", groups: [] };

/** Loads a file and collects its tests. */
export async function collect(file, load) {
  place.file = file;
  await load();
}

/** A test that asks for longer than this is long whatever the mutant, and left out, ms. */
const LONGEST = 120_000;

/** Settings of the real runner, which mean nothing here. */
export const vi = { setConfig() {} };

export function test(title, run, timeout = 0) {
  if (timeout > LONGEST) return;
  const name = [...place.groups, title].join(" ");
  let id = `${place.file}#${name}`;
  for (let n = 2; tests.has(id); n++) id = `${place.file}#${name} ${n}`;
  tests.set(id, { id, name, fileName: place.file, run });
}

export function describe(title, define) {
  place.groups.push(title);
  define();
  place.groups.pop();
}

/** One definition for each case. The titles need not read well, only differ. */
const each =
  (define) =>
  (cases) =>
  (title, run, ...options) => {
    for (const [i, item] of cases.entries()) {
      const args = Array.isArray(item) ? item : [item];
      define(`${title} ${i} ${String(args[0]).slice(0, 60)}`, () => run(...args), ...options);
    }
  };

test.each = each(test);
describe.each = each(describe);
describe.skipIf = (skipped) => (skipped ? () => {} : describe);
