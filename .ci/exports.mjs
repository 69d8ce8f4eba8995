// @ts-check
/**
 * Writes the package's `exports` and `typesVersions` from the folders of `src`: one subpath a module.
 * With --check it writes nothing and fails where package.json differs.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";

/** Folders of `src` that are not part of the package's interface. */
const PRIVATE = new Set(["numeric", "bin"]);

const modules = readdirSync("src")
  .filter((name) => !PRIVATE.has(name) && existsSync(`src/${name}/index.ts`))
  .sort();

const entry = (/** @type {string} */ path) => ({
  import: { types: `./dist/${path}.d.ts`, default: `./dist/${path}.js` },
  require: { types: `./dist/${path}.d.cts`, default: `./dist/${path}.cjs` },
});

const text = readFileSync("package.json", "utf8");
const manifest = JSON.parse(text);
manifest.exports = {
  ".": entry("index"),
  ...Object.fromEntries(modules.map((name) => [`./${name}`, entry(`${name}/index`)])),
  "./job.schema.json": "./src/plan/job.schema.json",
  "./record.schema.json": "./src/plan/record.schema.json",
  "./package.json": "./package.json",
};
manifest.typesVersions = { "*": Object.fromEntries(modules.map((name) => [name, [`./dist/${name}/index.d.ts`]])) };
const wanted = `${JSON.stringify(manifest, null, 2)}\n`;
const root = `${[
  "/**",
  " * The whole library as namespaces. A program that wants one module imports it by its subpath.",
  " *",
  " * @module",
  " */",
  ...modules.map((name) => `export * as ${name} from "./${name}/index.ts";`),
].join("\n")}\n`;

if (process.argv.includes("--check")) {
  if (text !== wanted || readFileSync("src/index.ts", "utf8") !== root) {
    console.error("package.json or src/index.ts is behind the folders of src: run `npm run exports`");
    process.exitCode = 1;
  }
} else {
  writeFileSync("package.json", wanted);
  writeFileSync("src/index.ts", root);
}
