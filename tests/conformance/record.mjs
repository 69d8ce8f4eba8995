// @ts-check
/**
 * The numbers of the conformance set, kept: `npm run results:check` fails where one has moved, `npm run results -- why it moved`
 * records them anew and writes the changeset that says old, new and why. Values not yet recorded are recorded with the next.
 *
 * On another version of V8 than the recording one, what the engines are allowed to differ by is allowed here.
 */
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { differences, isAllowed } from "../runtimes/compare.mjs";
import { bundleSet } from "./bundle.mjs";

const FILE = new URL("./results.json", import.meta.url);
/** Rows of a changeset; the record itself has them all. */
const MOST_ROWS = 60;
/** Of a plan its stages: findings and sheets are lists, whose numbers change place when one is added. */
const isKept = (/** @type {string} */ key) => !key.startsWith("plan: ") || key.includes(".plan.stages.");

mkdirSync("coverage", { recursive: true });
const bundle = resolve("coverage/conformance.mjs");
await bundleSet("esm", bundle);
/** @type {import("./set.ts").Results} */
const { values } = (await import(pathToFileURL(bundle).href)).results();
const numbers = Object.fromEntries(
  Object.entries(values).filter(([key, value]) => typeof value === "number" && isKept(key)),
);

/** @type {{ v8: string, values: Record<string, number> }} */
const recorded = existsSync(FILE) ? JSON.parse(readFileSync(FILE, "utf8")) : { v8: "", values: {} };
const sameEngine = recorded.v8 === process.versions.v8;
const shared = Object.keys(numbers).filter((key) => Object.hasOwn(recorded.values, key));
const pick = (/** @type {Record<string, unknown>} */ from) => Object.fromEntries(shared.map((key) => [key, from[key]]));
const moved = differences(pick(recorded.values), pick(numbers)).filter((d) => !(isAllowed(d) && !sameEngine));
const added = Object.keys(numbers).length - shared.length;
const gone = Object.keys(recorded.values).length - shared.length;

// Beyond rounding every one is shown; of those that move in the last places the worst.
const rounding = moved.filter(isAllowed).sort((a, b) => b.ulp - a.ulp);
const shown = [...moved.filter((d) => !isAllowed(d)).slice(0, MOST_ROWS), ...rounding.slice(0, 1)];
const rows = shown.map(({ key, from, to }) => `| ${key} | ${from} | ${to} |`);
const more =
  moved.length > rows.length
    ? `\nand ${moved.length - rows.length} more, ${rounding.length} of all by rounding alone.\n`
    : "";
console.log(`${shared.length} recorded, ${moved.length} moved, ${added} not yet recorded, ${gone} gone`);

if (process.argv.includes("--check")) {
  for (const row of rows) console.error(row);
  if (more !== "") console.error(more.trim());
  if (moved.length > 0) {
    console.error("numbers moved (value, old, new): if they should, `npm run results -- why they moved`");
    process.exitCode = 1;
  }
} else {
  const why = process.argv.slice(2).join(" ");
  if (moved.length > 0 && why === "") throw new Error("say why the numbers move: npm run results -- why they moved");
  writeFileSync(FILE, `${JSON.stringify({ v8: process.versions.v8, values: numbers }, null, 1)}\n`);
  if (moved.length > 0) {
    const text = `---\n"risingmain": patch\n---\n\nNumbers moved: ${why}\n\n| value | old | new |\n| --- | --- | --- |\n${rows.join("\n")}\n${more}`;
    writeFileSync(`.changeset/numbers-${createHash("sha256").update(text).digest("hex").slice(0, 8)}.md`, text);
  }
}
