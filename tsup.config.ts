import { readFileSync } from "node:fs";
import { defineConfig } from "tsup";

/** The public modules are those the package exports; their types are rolled up one file a module. */
const { exports } = JSON.parse(readFileSync("package.json", "utf8")) as { exports: Record<string, unknown> };
const modules = Object.keys(exports).filter((key) => key.startsWith("./") && !key.endsWith(".json"));

export default defineConfig({
  // Every file is an entry, so that a program which takes one formula does not carry the tables beside it.
  entry: ["src/**/*.ts"],
  format: ["esm", "cjs"],
  target: "es2022",
  platform: "neutral",
  external: [/^node:/],
  dts: {
    entry: {
      index: "src/index.ts",
      ...Object.fromEntries(modules.map((key) => [`${key.slice(2)}/index`, `src/${key.slice(2)}/index.ts`])),
    },
    compilerOptions: { ignoreDeprecations: "6.0" },
  },
  sourcemap: true,
  splitting: true,
  treeshake: false,
  clean: true,
});
