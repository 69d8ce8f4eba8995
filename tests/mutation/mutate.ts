/**
 * Runs the mutants of the named modules and records what lived.
 * `npm run mutate -- pipe pump`; `npm run mutate -- pipe/colebrook.ts` runs one file and leaves the rest as it was;
 * `npm run mutate -- --record pipe` records the last report again without a run.
 * `npm run mutate -- --again pipe` runs again those that the clock stopped: on a busy machine some are only slow.
 */
import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { changeOf, judgements, modules, score, writeResult } from "./results.ts";

interface Report {
  readonly files: Readonly<Record<string, { readonly source: string; readonly mutants: readonly Mutant[] }>>;
}

interface Mutant {
  readonly status: string;
  readonly statusReason?: string;
  readonly replacement: string;
  readonly location: { readonly start: Position; readonly end: Position };
}

interface Placed extends Mutant {
  readonly file: string;
}

interface Position {
  readonly line: number;
  readonly column: number;
}

/** How a mutant may end; another end is a fault of the run. */
const STATUSES: readonly string[] = ["Killed", "Timeout", "Survived", "NoCoverage", "Ignored"];

/** Characters kept of a change: enough to say which. */
const LONGEST = 90;

const json = <T>(path: string): T => JSON.parse(readFileSync(path, "utf8")) as T;
const versionOf = (manifest: string): string => json<{ version: string }>(manifest).version;

const { values: asked, positionals: names } = parseArgs({
  allowPositionals: true,
  options: { record: { type: "boolean" }, again: { type: "boolean" } },
});
const known = modules();
if (names.length === 0 || names.some((name) => !known.includes(name.split("/")[0] ?? ""))) {
  const usage = "npm run mutate -- [--record] [--again] <module>[/<file>] …";
  console.error(`usage: ${usage}   with a module of ${known.join(", ")}`);
  process.exit(2);
}
for (const name of names) {
  const [module = "", file] = name.split("/", 2);
  if (asked.again === true) forgetStopped(module);
  if (asked.record !== true) run(module, file);
  record(module);
}

/** Takes the mutants that the clock stopped, not the count of what they did, out of what the next run starts from. */
function forgetStopped(module: string): void {
  const path = `coverage/mutation/${module}.incremental.json`;
  const before = json<Report>(path);
  const byClock = ({ status, statusReason }: Mutant): boolean => status === "Timeout" && statusReason === undefined;
  const files = Object.entries(before.files).map(([file, part]) => [
    file,
    { ...part, mutants: part.mutants.filter((mutant) => !byClock(mutant)) },
  ]);
  writeFileSync(path, JSON.stringify({ ...before, files: Object.fromEntries(files) }));
}

function run(module: string, file: string | undefined): void {
  const part = file === undefined ? [] : ["--mutate", `src/${module}/${file}`];
  const { status } = spawnSync("npx", ["stryker", "run", "tests/mutation/stryker.config.mjs", ...part], {
    stdio: "inherit",
    env: { ...process.env, MUTATED: module },
  });
  if (status !== 0) process.exit(status ?? 1);
}

function record(module: string): void {
  const { files } = json<Report>(`coverage/mutation/${module}.json`);
  const mutants = Object.entries(files).flatMap(([file, { source, mutants }]) =>
    mutants.map((mutant) => ({ file, source, ...mutant })),
  );
  const count = (status: string): number => mutants.filter((mutant) => mutant.status === status).length;
  const unknown = mutants.filter(({ status }) => !STATUSES.includes(status));
  if (unknown.length > 0) throw new Error(`${unknown.length} mutants ended in ${unknown[0]?.status}`);
  const survivors: Record<string, string[]> = {};
  for (const { file, source, location, replacement } of mutants.filter(lived).sort(byPlace)) {
    survivors[file] ??= [];
    survivors[file].push(`${location.start.line}: ${short(cut(source, location))} → ${short(replacement)}`);
  }
  const result = {
    module,
    date: new Date().toISOString().slice(0, 10),
    version: versionOf("package.json"),
    stryker: versionOf("node_modules/@stryker-mutator/core/package.json"),
    killed: count("Killed"),
    timeout: count("Timeout"),
    survived: count("Survived"),
    uncovered: count("NoCoverage"),
    ignored: count("Ignored"),
    survivors,
  };
  writeResult(result);
  const judged = judgements(module);
  let open = 0;
  for (const [file, changes] of Object.entries(survivors)) {
    for (const survivor of changes) {
      const judgement = judged.find((j) => j.file === file && j.changes.includes(changeOf(survivor)));
      if (judgement === undefined) open++;
      console.log(`${file}:${survivor}\n    ${judgement?.why ?? "NOT JUDGED"}`);
    }
  }
  const living = mutants.filter(lived).length;
  console.log(`${module}: ${(100 * score(result)).toFixed(1)} %, ${living} lived, ${open} of them not judged`);
}

function lived({ status }: Mutant): boolean {
  return status === "Survived" || status === "NoCoverage";
}

/** By file, line and column; where one place has two changes, by what they put there. */
function byPlace(a: Placed, b: Placed): number {
  const [from, to] = [a.location.start, b.location.start];
  return (
    Number(a.file > b.file) - Number(a.file < b.file) ||
    from.line - to.line ||
    from.column - to.column ||
    Number(a.replacement > b.replacement) - Number(a.replacement < b.replacement)
  );
}

/** The changed text; the report counts lines and columns from 1. */
function cut(source: string, { start, end }: Mutant["location"]): string {
  const lines = source.split("\n").slice(start.line - 1, end.line);
  const last = lines.length - 1;
  return lines
    .map((line, i) => line.slice(i === 0 ? start.column - 1 : 0, i === last ? end.column - 1 : undefined))
    .join(" ");
}

/** On one line. */
function short(text: string): string {
  const line = text.replace(/\s+/g, " ").trim();
  return line.length > LONGEST ? `${line.slice(0, LONGEST)}…` : line;
}
