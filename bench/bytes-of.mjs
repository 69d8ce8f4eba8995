// @ts-check
// What a program weighs with what it imports from the built package: bundled, minified and gzipped.
import { readdirSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";

/** The modules of the built package. */
export const MODULES = readdirSync("dist", { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && !["bin", "numeric"].includes(entry.name))
  .map((entry) => entry.name);

/** @param {string} code @returns {Promise<number>} bytes, minified and gzipped */
export async function bytesOf(code) {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: process.cwd(), loader: "js" },
    bundle: true,
    minify: true,
    format: "esm",
    write: false,
    external: ["valibot"],
    // The built files stand in for the installed package.
    alias: Object.fromEntries(MODULES.map((name) => [`risingmain/${name}`, `./dist/${name}/index.js`])),
    logLevel: "silent",
  });
  return gzipSync(/** @type {{ contents: Uint8Array }} */ (outputFiles[0]).contents, { level: 9 }).length;
}
