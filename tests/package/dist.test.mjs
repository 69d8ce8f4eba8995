// @ts-check
/**
 * The built package, resolved through its own `exports` in both module systems: same exports, same results.
 * Run by `npm run test:dist` after a build, with Node alone.
 */
import { strict as assert } from "node:assert";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { test } from "node:test";

const require = createRequire(import.meta.url);
const { exports } = JSON.parse(readFileSync("package.json", "utf8"));
const modules = Object.keys(exports)
  .filter((key) => !key.endsWith(".json"))
  .map((key) => key.replace(/^\./, "risingmain"));

for (const name of modules) {
  test(`${name} exports the same names as ESM and CJS`, async () => {
    const esm = Object.keys(await import(name))
      .filter((key) => key !== "default" && key !== "module.exports")
      .sort();
    assert.deepEqual(Object.keys(require(name)).sort(), esm);
    assert.ok(esm.length > 0);
  });
}

test("the plan of the demo is the same, bit for bit, in both module systems", async () => {
  const text = readFileSync("docs/jobs/ranch.json", "utf8");
  const esm = await import("risingmain/plan");
  const cjs = require("risingmain/plan");
  assert.deepEqual(esm.planSystem(esm.readJobText(text)), cjs.planSystem(cjs.readJobText(text)));
});

test("an InputError is recognised by its name across the two", async () => {
  const { feet } = require("risingmain/units");
  assert.throws(() => feet(Number.NaN), { name: "InputError", parameter: "feet" });
});
