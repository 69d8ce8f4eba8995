/** Every mutant that lived is judged, and no judgement is left of one that no longer does. */
import { describe, expect, test } from "vitest";
import { changeOf, judgements, modules, readResult } from "./results.ts";

describe.each(modules())("%s", (module) => {
  const { survivors = {} } = readResult(module) ?? {};
  const judged = judgements(module);

  test("each survivor is judged", () => {
    const open = Object.entries(survivors).flatMap(([file, living]) =>
      living
        .filter((survivor) => !judged.some((j) => j.file === file && j.changes.includes(changeOf(survivor))))
        .map((survivor) => `${file}:${survivor}`),
    );
    expect(open).toEqual([]);
  });

  test("each judgement is of a survivor, with a reason", () => {
    const stale = judged.flatMap(({ file, changes, why }) => {
      const living = (survivors[file] ?? []).map(changeOf);
      const gone = changes.filter((change) => !living.includes(change));
      return why === "" || changes.length === 0 ? [file] : gone.map((change) => `${file}: ${change}`);
    });
    expect(stale).toEqual([]);
  });
});
