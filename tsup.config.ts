import { readFileSync } from "node:fs";
import type { Plugin } from "esbuild";
import { defineConfig } from "tsup";

/** The public modules are those the package exports; their types are rolled up one file a module. */
const { exports } = JSON.parse(readFileSync("package.json", "utf8")) as { exports: Record<string, unknown> };
const modules = Object.keys(exports).filter((key) => key.startsWith("./") && !key.endsWith(".json"));

/** Each source becomes one file in each format: what it imports stays an import, of the built file. */
const fileForFile: Plugin = {
  name: "file-for-file",
  setup({ initialOptions, onResolve }) {
    const extension = initialOptions.format === "cjs" ? ".cjs" : ".js";
    onResolve({ filter: /^\..*\.ts$/ }, ({ kind, path }) =>
      kind === "entry-point" ? undefined : { path: path.replace(/\.ts$/, extension), external: true },
    );
  },
};

export default defineConfig({
  // File for file, so that a program which takes one formula does not carry the tables beside it.
  entry: ["src/**/*.ts"],
  esbuildPlugins: [fileForFile],
  format: ["esm", "cjs"],
  target: "es2022",
  platform: "neutral",
  external: [/^node:/],
  removeNodeProtocol: false,
  dts: {
    // The root's are written by .ci/root-types.mjs.
    entry: Object.fromEntries(modules.map((key) => [`${key.slice(2)}/index`, `src/${key.slice(2)}/index.ts`])),
    compilerOptions: { ignoreDeprecations: "6.0" },
  },
  sourcemap: true,
  // The package holds the sources; its maps need not hold them again.
  esbuildOptions: (options) => {
    options.sourcesContent = false;
  },
  // In CommonJS a split build loses the way from its maps to the sources.
  splitting: false,
  treeshake: false,
  clean: true,
});
