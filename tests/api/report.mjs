// @ts-check
/**
 * The public interface as text, one report a module, from the built types: `npm run api` writes, `npm run api:check` compares.
 * A change to a report is a change to what users build on, and must come with a changeset (changesets.mjs).
 */
import { mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { resolve } from "node:path";
import { CompilerState, Extractor, ExtractorConfig } from "@microsoft/api-extractor";

const check = process.argv.includes("--check");
const manifest = JSON.parse(readFileSync("package.json", "utf8"));
const modules = Object.keys(manifest.exports)
  .filter((key) => key.startsWith("./") && !key.endsWith(".json"))
  .map((key) => key.slice(2));

const scratch = resolve("coverage/api");
mkdirSync(scratch, { recursive: true });

const none = { default: { logLevel: /** @type {any} */ ("none") } };
const entry = (/** @type {string} */ name) => resolve(`dist/${name}/index.d.ts`);
const configs = modules.map((name) =>
  ExtractorConfig.prepare({
    configObjectFullPath: undefined,
    packageJsonFullPath: resolve("package.json"),
    configObject: {
      projectFolder: process.cwd(),
      mainEntryPointFilePath: entry(name),
      newlineKind: "lf",
      compiler: {
        overrideTsconfig: {
          compilerOptions: { target: "ES2022", module: "NodeNext", types: [], strict: true, skipLibCheck: true },
          files: modules.map(entry),
        },
      },
      apiReport: {
        enabled: true,
        reportFileName: name,
        reportFolder: resolve("tests/api"),
        reportTempFolder: scratch,
      },
      docModel: { enabled: false },
      dtsRollup: { enabled: false },
      tsdocMetadata: { enabled: false },
      // Types and docstrings have checks of their own; here only the shape counts.
      messages: { compilerMessageReporting: none, extractorMessageReporting: none, tsdocMessageReporting: none },
    },
  }),
);
const [first] = configs;
if (first === undefined) throw new Error("no public module");
// One reading of all the types serves every report.
const compilerState = CompilerState.create(first, { additionalEntryPoints: modules.map(entry) });

/** @type {string[]} */
const changed = [];
for (const [i, config] of configs.entries()) {
  const { apiReportChanged, succeeded } = Extractor.invoke(config, {
    localBuild: !check,
    compilerState,
    messageCallback: (message) => {
      // What it has to say about changes is said below, once.
      message.handled = true;
    },
  });
  if (apiReportChanged) changed.push(/** @type {string} */ (modules[i]));
  else if (!succeeded) process.exitCode = 1;
}

for (const file of readdirSync("tests/api").filter((f) => f.endsWith(".api.md"))) {
  const name = file.replace(".api.md", "");
  if (modules.includes(name)) continue;
  changed.push(name);
  if (!check) rmSync(`tests/api/${file}`);
}
console.log(
  `${modules.length} modules, ${changed.length} changed${changed.length > 0 ? `: ${changed.join(", ")}` : ""}`,
);
if (check && changed.length > 0) {
  console.error("the public interface is not as reported: look at it, run `npm run api`, add a changeset");
  process.exitCode = 1;
}
