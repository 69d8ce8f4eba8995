/**
 * Prints what the register shows, and writes it as the page the site publishes, and in short into the README: counts by module and provenance, the
 * worst deviation of each module, every deviation beyond half its tolerance, the records found wrong.
 * Exits non-zero on a miss.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { judgedRows, mutationRows } from "../mutation/page.ts";
import { compareAllModules } from "./all-modules.ts";
import type { Deviation } from "./register.ts";
import { STATUS, statusOf } from "./status.ts";

const PAGE = new URL("../../docs/verification.md", import.meta.url);
const README = new URL("../../README.md", import.meta.url);
const compared = await compareAllModules();

const number = (value: number | string): string =>
  typeof value === "number" ? String(Number(value.toPrecision(8))) : value;
const share = (value: number): string => (Number.isFinite(value) ? `${Math.round(100 * value)} %` : "differs");
const row = (cells: readonly (string | number)[]): string => `| ${cells.join(" | ")} |`;

function table(heads: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return [row(heads), row(heads.map(() => "---")), ...rows.map(row)].join("\n");
}

function detail({ record, name, printed, computed, unit, shareOfTolerance }: Deviation): readonly (string | number)[] {
  return [
    record.id,
    name,
    number(printed),
    number(computed),
    unit,
    share(shareOfTolerance),
    record.provenance,
    `${record.source}, ${record.locator}`,
  ];
}

const counts = [...compared].map(([module, deviations]) => {
  const ids = new Map(deviations.map(({ record }) => [record.id, record]));
  const records = [...ids.values()];
  const of = (provenance: string): number => records.filter((r) => r.provenance === provenance).length;
  const sound = deviations.filter(({ record }) => record.wrong === undefined);
  const worst = Math.max(0, ...sound.map(({ shareOfTolerance }) => shareOfTolerance));
  return {
    module,
    cells: [
      records.length,
      deviations.length,
      of("read"),
      of("computed"),
      of("memory"),
      records.filter((r) => r.wrong !== undefined).length,
    ],
    misses: deviations.filter(({ passes }) => !passes).length,
    worst,
  };
});
const total = counts.reduce((sum, { cells }) => cells.map((cell, i) => cell + (sum[i] ?? 0)), [] as number[]);
const all = [...compared.values()].flat();
const misses = all.filter(({ passes }) => !passes);
const near = all.filter(
  ({ record, passes, shareOfTolerance }) => passes && record.wrong === undefined && shareOfTolerance > 0.5,
);
const wrong = all.filter(({ record, shareOfTolerance }) => record.wrong !== undefined && shareOfTolerance > 1);

const summary = table(
  [
    "module",
    "records",
    "values",
    "read",
    "computed by a named library",
    "from memory",
    "found wrong",
    "worst share of tolerance",
    "misses",
  ],
  [
    ...counts.map(({ module, cells, worst, misses: missed }) => [module, ...cells, share(worst), missed]),
    ["**all**", ...total, "", misses.length],
  ],
);
const heads = ["record", "value", "printed", "computed", "unit", "share of tolerance", "provenance", "source"];

const [mutationHeads = [], ...mutation] = mutationRows();
const judged = judgedRows();
/** What the last long run left. */
const nightly = JSON.parse(readFileSync(new URL("../hostile/nightly.json", import.meta.url), "utf8")) as object;

const page = `---
title: Verification
---

# What was checked, against what, how closely

Each record is a value somebody else published, or a general-purpose library computed, beside what this library computes.
*Read*: the printed value was seen. *Computed*: evaluated with a named library from a published formula. *From memory*: recalled and not looked at again.
This page is written by \`npm run verify\` from the records in \`tests/reference\`; the same comparison is run by the tests.

${summary}

## Values beyond half their tolerance

${near.length === 0 ? "None." : table(heads, near.map(detail))}

## Records found wrong

The record stays, with the reason; the deviation is the size of the source's own error.

${
  wrong.length === 0
    ? "None."
    : table(
        [...heads, "why"],
        wrong.map((d) => [...detail(d), d.record.wrong ?? ""]),
      )
}

## Strength of the tests

A mutant is one small change to the library: a comparison turned, a term dropped, a branch taken always. It should make a
test fail; the score is the share that did, or that ran without end. \`npm run mutate -- <module>\` runs a module's mutants
against its own tests, its published rows and garbage. Left out: texts, which are for people or checked by the compiler, and what is
evaluated once when a module loads, such as tables. A mutant is equivalent where no input can tell it from the original.

${table(mutationHeads, mutation)}

${judged.length === 0 ? "" : table(["file", "living mutants", "judged", "why"], judged)}

## The long run

\`npm run test:nightly\`: the tests with another seed for the laws, and many more job documents spoiled by chance: so
many changed in a few places, and as many with bytes lost or made up. Each must be refused with a reason or planned into finite numbers.

${table(Object.keys(nightly), [Object.values(nightly).map(String)])}
`;
writeFileSync(PAGE, page);
writeFileSync(
  README,
  readFileSync(README, "utf8").replace(STATUS, `$1${statusOf([...new Set(all.map(({ record }) => record))])}$2`),
);

console.log(summary.replace(/^\| -.*\n/m, ""));
console.log(`\n${near.length} values beyond half their tolerance:`);
for (const d of near)
  console.log(
    `  ${d.record.id} ${d.name}: printed ${number(d.printed)}, computed ${number(d.computed)} ${d.unit} (${share(d.shareOfTolerance)})`,
  );
console.log(`\n${new Set(wrong.map(({ record }) => record.id)).size} records found wrong, kept with the reason.`);
for (const d of misses)
  console.log(`MISS ${d.record.id} ${d.name}: printed ${number(d.printed)}, computed ${number(d.computed)} ${d.unit}`);
if (misses.length > 0) process.exitCode = 1;
