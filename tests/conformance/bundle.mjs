// @ts-check
/** Makes the conformance set one plain file: it imports the public modules of the package and nothing else. */
import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const REFERENCE = fileURLToPath(new URL("../reference/", import.meta.url));
/** Checks that need a solver from outside, which is not what an engine is tried on. */
const LEFT_OUT = ["selection.checks.ts"];
const modules = readdirSync(REFERENCE)
  .filter((file) => file.endsWith(".checks.ts") && !LEFT_OUT.includes(file))
  .map((file) => file.replace(".checks.ts", ""))
  .sort();

const entry = [
  `import { run } from "../conformance/set.ts";`,
  `export { exactPrefixes } from "../conformance/set.ts";`,
  ...modules.flatMap((name, i) => [
    `import { computations as c${i} } from "./${name}.checks.ts";`,
    `import r${i} from "./${name}.records.json";`,
  ]),
  `const checks = [${modules.map((name, i) => `{ module: "${name.split("-")[0]}", records: r${i}, computations: c${i} }`)}];`,
  `export const results = () => run(checks);`,
].join("\n");

/**
 * @param {"esm" | "cjs"} format
 * @param {string} outfile
 */
export async function bundleSet(format, outfile) {
  await build({
    stdin: { contents: entry, resolveDir: REFERENCE, sourcefile: "conformance.ts", loader: "ts" },
    outfile,
    bundle: true,
    format,
    // Without the tests' own paths: the set must meet the package as a user does.
    tsconfigRaw: "{}",
    external: ["risingmain/*"],
    plugins: [
      {
        // The register can read its records from files; here they are in the bundle, and no engine but Node has files.
        name: "no files",
        setup: ({ onResolve }) =>
          onResolve({ filter: /^node:/ }, ({ path }) => ({ path, external: true, sideEffects: false })),
      },
    ],
    logOverride: { "empty-import-meta": "silent" },
    logLevel: "warning",
  });
}
