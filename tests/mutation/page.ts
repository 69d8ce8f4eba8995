/** What `npm run verify` prints and publishes of the mutation runs. */
import { changeOf, type Judgement, judgements, type MutationResult, modules, readResult, score } from "./results.ts";

const HEADS = [
  "module",
  "score",
  "score without the equivalent",
  "failed a test",
  "ran without end",
  "lived",
  "no test runs them",
  "of the living, equivalent",
  "left out",
  "run on, with",
];

/** One row a module and one of them all: heads first. */
export function mutationRows(): readonly (readonly string[])[] {
  const all = { killed: 0, timeout: 0, survived: 0, uncovered: 0, ignored: 0 };
  let allEquivalent = 0;
  const rows = modules().map((module) => {
    const result = readResult(module);
    if (result === undefined) return [module, "not run", ...HEADS.slice(2).map(() => "")];
    const equivalent = judgements(module)
      .filter((judgement) => judgement.equivalent)
      .reduce((sum, judgement) => sum + living(judgement, result.survivors), 0);
    for (const key of Object.keys(all) as (keyof typeof all)[]) all[key] += result[key];
    allEquivalent += equivalent;
    return row(module, result, equivalent, `${result.date}, ${result.version}`);
  });
  return [HEADS, ...rows, row("**all**", all, allEquivalent, "")];
}

type Counts = Pick<MutationResult, "killed" | "timeout" | "survived" | "uncovered" | "ignored">;

function row(name: string, counts: Counts, equivalent: number, run: string): readonly string[] {
  const { killed, timeout, survived, uncovered, ignored } = counts;
  const scores = [score(counts), score(counts, equivalent)].map((share) => `${(100 * share).toFixed(1)} %`);
  return [name, ...scores, ...[killed, timeout, survived, uncovered, equivalent, ignored].map(String), run];
}

/** What was judged of the mutants that lived, and still do. */
export function judgedRows(): readonly (readonly string[])[] {
  return modules().flatMap((module) => {
    const survivors = readResult(module)?.survivors ?? {};
    return judgements(module).flatMap((judgement) => {
      const { file, equivalent, why } = judgement;
      const count = living(judgement, survivors);
      return count === 0 ? [] : [[file, String(count), equivalent ? "equivalent" : "can be told", why]];
    });
  });
}

type Survivors = MutationResult["survivors"];

/** How many of the survivors a judgement is of. */
function living({ file, changes }: Judgement, survivors: Survivors): number {
  return (survivors[file] ?? []).filter((survivor) => changes.includes(changeOf(survivor))).length;
}
