// @ts-check
/** What an app takes in with the package, and under which licences; and that no tool here brings one that reaches further. */
import { strict as assert } from "node:assert";
import { readFileSync } from "node:fs";
import { test } from "node:test";

/** Licences that ask for no more than the notice to be kept. */
const FREE = new Set([
  "MIT",
  "ISC",
  "0BSD",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "Apache-2.0",
  "BlueOak-1.0.0",
  "Unlicense",
]);
/** Licences that reach the work they are used in. */
const REACHING = /\b(?:A|L)?GPL|CPAL|SSPL|EUPL|OSL/;

const { packages } = JSON.parse(readFileSync("package-lock.json", "utf8"));
const installed = Object.entries(packages)
  .filter(([path]) => path !== "")
  .map(([path, { license, dev, devOptional, optional }]) => ({
    name: path.replace(/^.*node_modules\//, ""),
    license: String(license),
    shipped: !dev && !devOptional && !optional,
  }));

test("an app takes in one package beside this one, under a free licence", () => {
  const shipped = installed.filter((one) => one.shipped);
  assert.deepEqual(
    shipped.map(({ name }) => name),
    ["valibot"],
  );
  for (const { name, license } of shipped) assert.ok(FREE.has(license), `${name}: ${license}`);
});

test("no tool is under a licence that reaches the work", () => {
  assert.ok(installed.length > 500);
  assert.deepEqual(
    installed.filter(({ license }) => REACHING.test(license)).map(({ name, license }) => `${name}: ${license}`),
    [],
  );
});
