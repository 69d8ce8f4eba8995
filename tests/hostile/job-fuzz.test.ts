/**
 * Job documents spoiled by chance: each is refused with an InputError that says where, or planned into finite numbers and a
 * report. FUZZ_JOBS sets how many: 5,000 here, 100,000 in the nightly run.
 */
import fc from "fast-check";
import { planSystem, readJob, readJobText, reportOf } from "risingmain/plan";
import { expect, test } from "vitest";
import { notFinite } from "./garbage.ts";
import { mutatedJobs, mutatedTexts } from "./mutated-jobs.ts";

const JOBS = Number(process.env["FUZZ_JOBS"] ?? 5_000);
/** Milliseconds a document may take, a hang and not a speed: hundreds of times what one takes. */
const HANG = 20_000;

/** What was done with a document; throws what no document may bring about. */
function outcome(read: () => ReturnType<typeof readJob>): "refused" | "planned" {
  const start = performance.now();
  let plan: ReturnType<typeof planSystem>;
  try {
    plan = planSystem(read());
  } catch (error) {
    if ((error as Error).name !== "InputError") throw error;
    expect((error as Error).message.length).toBeLessThan(100_000);
    return "refused";
  } finally {
    expect(performance.now() - start).toBeLessThan(HANG);
  }
  expect(notFinite(plan)).toBeUndefined();
  expect(reportOf(plan)).not.toMatch(/NaN|undefined|Infinity|\[object/);
  return "planned";
}

test(
  `${JOBS} documents changed in one place to four`,
  () => {
    const seen = { refused: 0, planned: 0 };
    fc.assert(
      fc.property(mutatedJobs, (document) => {
        seen[outcome(() => readJob(document))]++;
      }),
      { numRuns: JOBS },
    );
    // Both ways are taken often, or nothing was tried.
    expect(Math.min(seen.refused, seen.planned)).toBeGreaterThan(JOBS / 20);
  },
  JOBS * 1_000,
);

test(
  `${JOBS} job files with bytes lost or made up`,
  () => {
    fc.assert(
      fc.property(mutatedTexts, (text) => {
        outcome(() => readJobText(text));
      }),
      { numRuns: JOBS },
    );
  },
  JOBS * 1_000,
);

// A prototype never leaks in from a document: nothing a job says reaches other objects.
test("no document changed what all objects share", () => {
  expect(({} as Record<string, unknown>)["version"]).toBeUndefined();
});
