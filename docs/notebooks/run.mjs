// @ts-check
/**
 * Runs every notebook of this folder from its first cell to its last, with Deno's kernel and the package as built.
 * Fails where a cell throws, where a cell that shows a chart has none in its output, and where outputs were committed.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** @typedef {{ cell_type: string, source: string[], execution_count?: number | null, outputs?: { text?: string[], data?: Record<string, unknown> }[] }} Cell */

const HERE = import.meta.dirname;
const CHART = "application/vnd.vegalite.v6+json";
const SHOWS = /await (show|Deno\.jupyter\.display)\(/;

/** The binary itself: its package would copy it at install, which needs a script. */
const built = join(HERE, "node_modules/@deno");
const deno = join(built, readdirSync(built)[0] ?? "", "deno");
const work = mkdtempSync(join(tmpdir(), "notebooks-"));
mkdirSync(join(work, "kernels/deno"), { recursive: true });
writeFileSync(
  join(work, "kernels/deno/kernel.json"),
  JSON.stringify({
    argv: [deno, "jupyter", "--kernel", "--conn", "{connection_file}"],
    display_name: "Deno",
    language: "typescript",
  }),
);

/** @param {string} path @returns {Cell[]} */
const codeCells = (path) =>
  JSON.parse(readFileSync(path, "utf8")).cells.filter((/** @type {Cell} */ cell) => cell.cell_type === "code");

/** @param {string} notebook @returns {string[]} what is wrong with it */
function faultsOf(notebook) {
  const kept = codeCells(join(HERE, notebook)).some((cell) => cell.outputs?.length !== 0 || cell.execution_count);
  if (kept) return ["clear its outputs before committing it"];
  // On a busy machine a cell's output may come long after its reply; left alone, nbconvert would go on without it.
  const patient = ["timeout=600", "iopub_timeout=120", "raise_on_iopub_timeout=True"];
  const options = ["kernel_name=deno", ...patient].map((option) => `--ExecutePreprocessor.${option}`);
  const args = ["--to", "notebook", "--execute", ...options];
  const { status, stderr, error } = spawnSync("jupyter-nbconvert", [...args, "--output-dir", work, notebook], {
    cwd: HERE,
    encoding: "utf8",
    env: { ...process.env, JUPYTER_PATH: work },
  });
  if (status !== 0) return [error?.message ?? stderr];
  const faults = [];
  for (const { source, outputs = [] } of codeCells(join(work, notebook))) {
    const charts = outputs.filter(({ data }) => data && CHART in data).length;
    if (SHOWS.test(source.join("")) && charts === 0) faults.push(`shows no chart: ${source.join("").slice(0, 100)}`);
    for (const { text } of outputs) if (text) process.stdout.write(`  ${text.join("  ").trimEnd()}\n`);
    if (charts > 0) console.log(`  (${charts} chart)`);
  }
  return faults;
}

const notebooks = readdirSync(HERE).filter((file) => file.endsWith(".ipynb"));
let faulty = notebooks.length < 3 ? 1 : 0;
for (const notebook of notebooks) {
  console.log(notebook);
  const faults = faultsOf(notebook);
  for (const fault of faults) console.error(`${notebook}: ${fault}`);
  faulty += faults.length;
}
rmSync(work, { recursive: true });
console.log(`${notebooks.length} notebooks, ${faulty} faults`);
if (faulty > 0) process.exitCode = 1;
