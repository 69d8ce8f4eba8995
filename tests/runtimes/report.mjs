// @ts-check
/** What the runs showed: the page, and what is a fault. */
import { createHash } from "node:crypto";
import { ALLOWED, differences, isAllowed, MOST_ULPS, ulps } from "./compare.mjs";

/**
 * @typedef {import("./engines.mjs").Outcome} Outcome
 * @typedef {import("./compare.mjs").Difference} Difference
 * @typedef {{ name: string, version: string, warnings: readonly string[], bytes: number, minified: number }} BundleResult
 * @typedef {{ version: string, exactPrefixes: readonly string[], outcomes: readonly Outcome[], bundles: readonly BundleResult[] }} Report
 */

/** @param {Report} report @returns {readonly string[]} */
export function faultsOf({ exactPrefixes, outcomes, bundles }) {
  const [reference] = outcomes;
  if (reference === undefined) return ["nothing ran"];
  return [
    ...outcomes.flatMap((outcome) => {
      const { name, format, results } = outcome;
      const where = `${name}, ${format}`;
      const twin = outcomes.find((other) => other.name === name) ?? reference;
      // CommonJS on the engine itself, a bundle on Node 20: nothing but the packaging is different.
      const samePackage = format.startsWith("bundled") ? reference : twin;
      return [
        ...results.misses.map((key) => `${where}: ${key} is outside its published tolerance`),
        ...differences(samePackage.results.values, results.values).map(
          ({ key }) => `${where}: ${key} is not as in ${samePackage.format}`,
        ),
        ...differences(reference.results.values, results.values)
          .filter(
            (difference) => exactPrefixes.some((prefix) => difference.key.startsWith(prefix)) || !isAllowed(difference),
          )
          .map(({ key, from, to, ulp }) => `${where}: ${key} is ${to}, on Node 20 ${from} (${ulp} ulp)`),
      ];
    }),
    ...bundles.flatMap(({ name, warnings }) => warnings.map((text) => `${name} warns: ${text}`)),
  ];
}

/** @param {readonly (string | number)[]} cells */
const row = (cells) => `| ${cells.join(" | ")} |`;
/** @param {readonly string[]} heads @param {readonly (readonly (string | number)[])[]} rows */
const table = (heads, rows) => [row(heads), row(heads.map(() => "---")), ...rows.map(row)].join("\n");

/** @param {readonly Difference[]} found */
const worst = (found) => {
  const top = Math.max(...found.map(({ ulp }) => ulp));
  return top > MOST_ULPS ? `over ${MOST_ULPS} ulp (below)` : `${top} ulp`;
};
/** @param {readonly Difference[]} found */
const inWords = (found) => (found.length === 0 ? "same bits" : `${found.length} differ, worst ${worst(found)}`);

/** @param {Report} report */
export function pageOf({ version, exactPrefixes, outcomes, bundles }) {
  const [reference] = /** @type {readonly [Outcome]} */ (outcomes);
  const keys = Object.keys(reference.results.values);
  const modules = [...new Set(keys.map((key) => key.split(":")[0] ?? ""))].sort();
  const found = outcomes.map((outcome) => differences(reference.results.values, outcome.results.values));
  // CommonJS is as ESM on each engine, or a fault: one column will do.
  const engines = outcomes.flatMap((outcome, i) =>
    i > 0 && outcome.format.startsWith("ESM") ? [{ ...outcome, found: found[i] ?? [] }] : [],
  );
  const functions = Object.keys(reference.results.functions);
  const date = new Date().toISOString().slice(0, 10);
  const digest = (/** @type {string} */ module) =>
    createHash("sha256")
      .update(JSON.stringify(Object.entries(reference.results.values).filter(([key]) => key.startsWith(`${module}:`))))
      .digest("hex")
      .slice(0, 12);

  return `---
title: Runtimes
---

# Where it runs, and whether the numbers are the same

The packed library, installed as a user would, in each engine and module system, and built into an app by each bundler.
Every time the same set is computed: the ${keys.filter((key) => key.split(": ").length > 2).length} published values of the [verification page](verification.md) and whole jobs, solvers and dense grids,
${keys.length} values in all, compared bit by bit with those of Node 20. Written by \`npm run test:runtimes\` on ${date}, for version ${version}.

${table(
  ["engine", "version", "how", "published values outside tolerance", "all values"],
  outcomes.map(({ name, version: of, format, results }, i) => [
    name,
    of,
    format,
    results.misses.length,
    i === 0 ? "the reference" : inWords(found[i] ?? []),
  ]),
)}

ESM and CommonJS give the same bits on every engine, and so does every bundle.

## Module by module

Friction by Colebrook–White and its inverses, networks with it, tanks with air at one temperature, and the operating point of a
pump use + − × ÷ and square roots alone, which IEEE 754 fixes to the last bit: they must be, and are, the same everywhere
(${exactPrefixes.length} sets of calls, dense grids among them). What uses a logarithm, an exponential or a power rests on the engine's own, and may differ in the last places.

${table(
  ["module", "values", "digest on Node 20", ...engines.map(({ name }) => name)],
  modules.map((module) => {
    const of = (/** @type {string} */ key) => key.startsWith(`${module}:`);
    return [
      module,
      keys.filter(of).length,
      digest(module),
      ...engines.map((engine) => inWords(engine.found.filter(({ key }) => of(key)))),
    ];
  }),
)}

Allowed: ${MOST_ULPS} units in the last place (ulp), that is at most ${(MOST_ULPS * 2 ** -52).toExponential(1)} of the value. More only here:

${ALLOWED.map(({ what, why }) => `- ${what}: ${why}.`).join("\n")}

## The engines' own functions

How many of 500 results differ from those of Node 20, and the most by which they do.

${table(
  ["function", ...engines.map(({ name }) => name)],
  functions.map((name) => {
    const want = reference.results.functions[name] ?? [];
    return [
      name,
      ...engines.map(({ results }) => {
        const apart = want
          .map((value, i) => ulps(value, results.functions[name]?.[i] ?? Number.NaN))
          .filter((ulp) => ulp > 0);
        return apart.length === 0 ? "same" : `${apart.length}, ${Math.max(...apart)} ulp`;
      }),
    ];
  }),
)}

## Bundlers

An app that imports \`frictionFactor\` and prints one value: built without a warning, run, and weighed with everything in it.

${table(
  ["bundler", "version", "warnings", "minified", "and gzipped"],
  bundles.map(({ name, version: of, warnings, minified, bytes }) => [
    name,
    of,
    warnings.length,
    `${minified} B`,
    `${bytes} B`,
  ]),
)}
`;
}
