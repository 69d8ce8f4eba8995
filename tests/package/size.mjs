// @ts-check
/**
 * What one import costs an app: each named export bundled alone from the built package, minified and gzipped.
 */
import { readdirSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";

/** The modules of the built package. */
const MODULES = readdirSync("dist", { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

/** @param {string} code @returns {Promise<number>} bytes, minified and gzipped */
async function bytesOf(code) {
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

/** An app that imports nothing: what gzip and the bundle's own frame weigh is no cost of the library. */
const EMPTY_APP = "globalThis.x = 0;";

/** What is promised: the import, and the most it may add to an app. */
const BUDGETS = [
  { module: "units", name: "feet", most: 300 },
  { module: "head", name: "velocityHead", most: 300 },
  { module: "pipe", name: "frictionFactor", most: 1500 },
  { module: "pipe", name: "darcyWeisbachLoss", most: 1500 },
];

const empty = await bytesOf(EMPTY_APP);
for (const { module, name, most } of BUDGETS) {
  const bytes = (await bytesOf(`import { ${name} } from "risingmain/${module}"; globalThis.x = ${name};`)) - empty;
  console.log(`${module}.${name}: ${bytes} B of ${most}`);
  if (bytes > most) process.exitCode = 1;
}
