// @ts-check
/**
 * What one import costs an app: each named export bundled alone from the built package, minified and gzipped.
 */
import { gzipSync } from "node:zlib";
import { build } from "esbuild";

/** @param {string} code @returns {Promise<number>} bytes, minified and gzipped */
export async function bytesOf(code) {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: process.cwd(), loader: "js" },
    bundle: true,
    minify: true,
    format: "esm",
    write: false,
    // The built files stand in for the installed package.
    alias: Object.fromEntries(MODULES.map((name) => [`risingmain/${name}`, `./dist/${name}/index.js`])),
    logLevel: "silent",
  });
  return gzipSync(/** @type {{ contents: Uint8Array }} */ (outputFiles[0]).contents, { level: 9 }).length;
}

import { readdirSync } from "node:fs";

const MODULES = readdirSync("dist", { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

/** What is promised: the import, and the most it may cost. */
export const BUDGETS = [
  { module: "units", name: "feet", most: 300 },
  { module: "pipe", name: "hazenWilliamsLoss", most: 300 },
  { module: "pipe", name: "frictionFactor", most: 750 },
  { module: "pipe", name: "darcyWeisbachLoss", most: 1500 },
];

if (process.argv[1]?.endsWith("size.mjs")) {
  for (const { module, name, most } of BUDGETS) {
    const bytes = await bytesOf(`import { ${name} } from "risingmain/${module}"; globalThis.x = ${name};`);
    console.log(`${module}.${name}: ${bytes} B of ${most}`);
    if (bytes > most) process.exitCode = 1;
  }
}
