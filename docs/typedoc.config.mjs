// @ts-check
import { readFileSync } from "node:fs";
import markdownItKatex from "@vscode/markdown-it-katex";
import katex from "katex";
import { globSync } from "tinyglobby";

/** Equations that do not parse must fail the build; the Markdown plugin would print them in red and go on. */
let badEquations = 0;
const strictKatex = {
  ...katex,
  renderToString: (/** @type {string} */ tex, /** @type {object} */ options) => {
    try {
      return katex.renderToString(tex, { ...options, throwOnError: true });
    } catch (error) {
      badEquations++;
      console.error(`equation: ${tex}\n${error}`);
      throw error;
    }
  },
};
process.on("exit", () => {
  if (badEquations > 0) process.exitCode = 1;
});

/** The guides in the order of the job, and what a programmer asks after them. A guide not named here stands at the end. */
const ORDER = [
  ...["start", "demand", "well", "head", "friction", "pipe-sizes", "fittings", "choosing", "network", "pump"],
  ...["running-system", "tank", "controls", "surge", "conductor", "motor", "generator", "freeze", "disinfection"],
  ...["field-tests", "record", "diagnosis", "water", "charts", "notebooks", "sweeps", "embedding", "citing"],
].map((name) => `guides/${name}.md`);
const guides = globSync("guides/*.md", { cwd: "docs" }).sort();

const { exports } = JSON.parse(readFileSync("package.json", "utf8"));
const modules = Object.keys(exports).filter((key) => key.startsWith("./") && !key.endsWith(".json"));

/** @type {Partial<import("typedoc").TypeDocOptions>} */
export default {
  name: "risingmain",
  entryPoints: modules.map((key) => `../src/${key.slice(2)}/index.ts`),
  tsconfig: "../tsconfig.json",
  out: "site",
  readme: "../README.md",
  projectDocuments: [
    ...ORDER,
    ...guides.filter((guide) => !ORDER.includes(guide)),
    "examples/*.md",
    "verification.md",
    "runtimes.md",
    "pages/made/*.md",
  ],
  customCss: "assets/site.css",
  favicon: "assets/icon.svg",
  // The menu is a plain list of guides and modules: what a module holds stands on its own page.
  navigationLeaves: modules.map((key) => key.slice(2)),
  visibilityFilters: {},
  hideGenerator: true,
  navigationLinks: { Worksheet: "site:worksheet.html" },
  plugin: ["./typedoc-plugin.mjs"],
  excludeInternal: true,
  excludePrivate: true,
  disableSources: true,
  githubPages: false,
  searchInComments: true,
  searchInDocuments: true,
  treatWarningsAsErrors: true,
  treatValidationWarningsAsErrors: true,
  blockTags: [
    "@param",
    "@returns",
    "@throws",
    "@remarks",
    "@example",
    "@module",
    "@source",
    "@defaultValue",
    "@see",
    "@typeParam",
    "@deprecated",
  ],
  validation: { notExported: true, invalidLink: true, invalidPath: true, notDocumented: true },
  requiredToBeDocumented: ["Module", "Variable", "Function", "Class", "Interface", "Property", "Method", "TypeAlias"],
  markdownItLoader: (/** @type {any} */ parser) => {
    parser.use(/** @type {any} */ (markdownItKatex).default ?? markdownItKatex, {
      katex: strictKatex,
      output: "mathml",
      strict: "error",
    });
  },
};
