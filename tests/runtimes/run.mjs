// @ts-check
/**
 * The packed library, installed as a user would, in every engine, module system and bundler: the conformance set must give
 * what it gives on Node 20. Writes docs/runtimes.md; fails on a difference that is not allowed.
 *
 * `npm run test:runtimes [-- name …]` takes the engines and bundlers whose names begin so, or all; the page is written for
 * all, and not in CI.
 */
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";

const here = fileURLToPath(new URL("./", import.meta.url));
const root = fileURLToPath(new URL("../../", import.meta.url));
const wanted = process.argv.slice(2).map((name) => name.toLowerCase());
const isWanted = (/** @type {string} */ name) =>
  wanted.length === 0 || wanted.some((part) => name.toLowerCase().startsWith(part));

/** @param {string} cwd @param {readonly string[]} args */
const npm = (cwd, ...args) =>
  execFileSync("npm", args, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "inherit"] });

if (!existsSync(join(here, "node_modules"))) npm(here, "ci", "--ignore-scripts");
const { bundleSet } = await import("../conformance/bundle.mjs");
const { engines, output } = await import("./engines.mjs");
const { bundlers } = await import("./bundlers.mjs");
const { pageOf, faultsOf } = await import("./report.mjs");

const consumer = mkdtempSync(join(tmpdir(), "consumer-"));
try {
  const [{ filename }] = JSON.parse(npm(root, "pack", "--json", "--ignore-scripts", "--pack-destination", consumer));
  writeFileSync(join(consumer, "package.json"), '{ "name": "consumer", "private": true }\n');
  npm(consumer, "install", "--ignore-scripts", "--no-audit", "--no-fund", `./${filename}`);

  const print = (/** @type {string} */ module) => `${module}console.log(JSON.stringify(results()));\n`;
  await bundleSet("esm", join(consumer, "set.mjs"));
  await bundleSet("cjs", join(consumer, "set.cjs"));
  writeFileSync(join(consumer, "main.mjs"), print('import { results } from "./set.mjs";\n'));
  writeFileSync(join(consumer, "main.cjs"), print('const { results } = require("./set.cjs");\n'));
  writeFileSync(
    join(consumer, "one.mjs"),
    'import { frictionFactor } from "risingmain/pipe";\nconsole.log(frictionFactor({ reynolds: 1e5, relativeRoughness: 1e-4 }).value);\n',
  );

  const outcomes = [];
  // Node 20 is what the others are held against.
  for (const engine of engines.filter(({ name }) => name === "Node 20" || isWanted(name))) {
    const start = Date.now();
    outcomes.push(...(await engine.run(consumer)));
    console.log(`${engine.name}: ${((Date.now() - start) / 1000).toFixed(1)} s`);
  }

  const node = join(here, "node_modules/node20/bin/node");
  const expectedOne = await output(node, ["one.mjs"], consumer);
  const bundles = [];
  for (const { name, version, bundle } of bundlers.filter((b) => isWanted(b.name))) {
    const start = Date.now();
    const one = await bundle(consumer, "one.mjs");
    const whole = await bundle(consumer, "main.mjs");
    writeFileSync(join(consumer, `${name}-one.mjs`), one.code);
    writeFileSync(join(consumer, `${name}-whole.mjs`), whole.code);
    if ((await output(node, [`${name}-one.mjs`], consumer)) !== expectedOne)
      throw new Error(`${name}: the app of one function`);
    const results = JSON.parse(await output(node, [`${name}-whole.mjs`], consumer));
    outcomes.push({ name, version, format: "bundled, on Node 20", results });
    bundles.push({
      name,
      version,
      warnings: [...one.warnings, ...whole.warnings],
      bytes: gzipSync(one.code, { level: 9 }).length,
      minified: one.code.length,
    });
    console.log(`${name}: ${((Date.now() - start) / 1000).toFixed(1)} s`);
  }

  const { exactPrefixes } = await import(join(consumer, "set.mjs"));
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const report = { version, exactPrefixes, outcomes, bundles };
  if (wanted.length === 0 && !process.env.CI) writeFileSync(join(root, "docs/runtimes.md"), pageOf(report));
  const faults = faultsOf(report);
  for (const fault of faults) console.error(fault);
  console.log(`${outcomes.length} runs, ${bundles.length} bundlers, ${faults.length} faults`);
  if (faults.length > 0) process.exitCode = 1;
} finally {
  rmSync(consumer, { recursive: true, force: true });
}
