// @ts-check
/** The whole library as one ES module, for pages and browser notebooks that cannot install a package. */
import { build } from "esbuild";

const { metafile } = await build({
  entryPoints: ["src/index.ts"],
  outfile: "docs/site/lib/risingmain.js",
  bundle: true,
  minify: true,
  format: "esm",
  target: "es2022",
  charset: "utf8",
  legalComments: "none",
  logLevel: "warning",
  metafile: true,
});
for (const [file, { bytes }] of Object.entries(metafile.outputs)) console.log(`${file}: ${bytes} bytes`);
