// @ts-check
/** How each bundler makes an app of the installed package: no warning allowed. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { nodeResolve } from "@rollup/plugin-node-resolve";
import { build as esbuild, transform } from "esbuild";
import { rollup } from "rollup";
import { createLogger, build as vite } from "vite";
import webpack from "webpack";

/**
 * A bundler: from an entry to the minified code, and what it warned of.
 *
 * @typedef {{ code: string, warnings: readonly string[] }} Bundle
 * @typedef {{ name: string, version: string, bundle: (consumer: string, entry: string) => Promise<Bundle> }} Bundler
 */

/** @param {string} name */
const versionOf = (name) =>
  JSON.parse(readFileSync(new URL(`./node_modules/${name}/package.json`, import.meta.url), "utf8")).version;

/** @type {readonly Bundler[]} */
export const bundlers = [
  {
    name: "Vite",
    version: versionOf("vite"),
    async bundle(consumer, entry) {
      /** @type {string[]} */
      const warnings = [];
      const customLogger = createLogger("silent");
      customLogger.warn = (text) => void warnings.push(text);
      customLogger.warnOnce = (text) => void warnings.push(text);
      const built = await vite({
        root: consumer,
        configFile: false,
        customLogger,
        logLevel: "silent",
        build: {
          write: false,
          target: "es2022",
          modulePreload: false,
          // The size of the app is not the package's affair.
          chunkSizeWarningLimit: 1e5,
          rollupOptions: { input: join(consumer, entry) },
        },
      });
      const { output } = /** @type {{ output: any[] }} */ (Array.isArray(built) ? built[0] : built);
      return { code: output[0].code, warnings };
    },
  },
  {
    name: "webpack",
    version: versionOf("webpack"),
    bundle: (consumer, entry) =>
      new Promise((resolve, reject) => {
        const path = join(consumer, "webpack-out");
        const options = {
          mode: /** @type {const} */ ("production"),
          context: consumer,
          target: ["web", "es2022"],
          entry: `./${entry}`,
          output: { path, filename: entry },
          performance: /** @type {const} */ (false),
          // Making the whole set small takes a minute and shows nothing the small app does not.
          optimization: { minimize: entry === "one.mjs" },
        };
        webpack(options, (error, stats) => {
          if (error || !stats || stats.hasErrors()) return reject(error ?? new Error(stats?.toString("errors-only")));
          const { warnings = [] } = stats.toJson({ all: false, warnings: true });
          resolve({ code: readFileSync(join(path, entry), "utf8"), warnings: warnings.map(({ message }) => message) });
        });
      }),
  },
  {
    name: "esbuild",
    version: versionOf("esbuild"),
    async bundle(consumer, entry) {
      const { outputFiles, warnings } = await esbuild({
        entryPoints: [join(consumer, entry)],
        bundle: true,
        minify: true,
        format: "esm",
        write: false,
        logLevel: "silent",
      });
      return { code: outputFiles[0]?.text ?? "", warnings: warnings.map(({ text }) => text) };
    },
  },
  {
    name: "Rollup",
    version: versionOf("rollup"),
    async bundle(consumer, entry) {
      /** @type {string[]} */
      const warnings = [];
      const built = await rollup({
        input: join(consumer, entry),
        plugins: [nodeResolve()],
        onwarn: ({ message }) => void warnings.push(message),
      });
      const { output } = await built.generate({ format: "es" });
      // Rollup leaves making it small to others.
      const { code } = await transform(output[0].code, { minify: true, format: "esm" });
      return { code, warnings };
    },
  },
];
