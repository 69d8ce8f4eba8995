/** What `npm run verify` prints and publishes of the mutation runs. */
import { changeOf, type Judgement, judgements, type MutationResult, modules, readResult, score } from "./results.ts";

/** One row a module: heads first. */
export function mutationRows(): readonly (readonly string[])[] {
  const rows = modules().map((module) => {
    const result = readResult(module);
    if (result === undefined) return [module, "not run", "", "", "", "", "", "", ""];
    const { date, version, killed, timeout, survived, uncovered, ignored, survivors } = result;
    const equivalent = judgements(module)
      .filter((judgement) => judgement.equivalent)
      .reduce((sum, judgement) => sum + living(judgement, survivors), 0);
    const counts = [killed, timeout, survived, uncovered, equivalent, ignored].map(String);
    return [module, `${(100 * score(result)).toFixed(1)} %`, ...counts, `${date}, ${version}`];
  });
  const heads = [
    "module",
    "score",
    "failed a test",
    "ran without end",
    "lived",
    "no test runs them",
    "of the living, equivalent",
    "left out",
    "run on, with",
  ];
  return [heads, ...rows];
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
