/** Laws of the as-built record that hold for every job. */
import fc from "fast-check";
import { asBuiltRecord, diagnoseRecord, planSystem, readJob, readRecord, recordReport } from "risingmain/plan";
import { expect, test } from "vitest";
import { randomJobs } from "./random-jobs.ts";

/** A plan and a diagnosis run in tens of milliseconds: few cases, and none made smaller, which takes minutes. */
const RUNS = { numRuns: 60, endOnFailure: true };
/** More than a mutation run waits for: there whole jobs by the dozen would be planned again for each mutant. */
const TIME_LIMIT = 180_000;

test(
  "a plant that reads as its plan passes, is stored and read back the same, and nothing is found wrong",
  () => {
    fc.assert(
      fc.property(randomJobs, ({ metric }) => {
        const job = readJob(metric);
        const plan = planSystem(job);
        // A plan that fails its own property has pressures no gauge can show; those outlets are not read.
        const readings = Object.fromEntries(
          plan.commissioning
            .filter(({ expected }) => expected.value >= 0)
            .map(({ code, expected }) => [code, expected.value]),
        );
        const record = asBuiltRecord({ plan, readings });
        expect(new Set(record.readings.map(({ verdict }) => verdict)).has("fail")).toBe(false);
        expect(readRecord(JSON.parse(JSON.stringify(record)))).toStrictEqual(record);
        expect(recordReport(record)).toContain(plan.name);
        const answer = diagnoseRecord({ job, record });
        if (answer.state === "diagnosed") expect(answer.diagnosis.state).toBe("as planned");
        else expect(plan.stages.pump.chosen === null || answer.reason.includes("curve")).toBe(true);
      }),
      RUNS,
    );
  },
  TIME_LIMIT,
);

test(
  "any reading of a job passes, fails or is refused, and what was recorded can be diagnosed",
  () => {
    fc.assert(
      fc.property(
        randomJobs,
        fc.array(fc.double({ min: 0, max: 3, noNaN: true }), { minLength: 60, maxLength: 60 }),
        ({ metric }, shares) => {
          const job = readJob(metric);
          const plan = planSystem(job);
          const readings = Object.fromEntries(
            plan.commissioning.flatMap(({ code, expected }, i) => {
              const value = Math.abs(expected.value * (shares[i] ?? 1));
              return expected.kind === "shortTime" && value < 0.01 ? [] : [[code, value]];
            }),
          );
          const record = asBuiltRecord({ plan, readings });
          for (const { measured, low, high, verdict } of record.readings)
            expect(verdict).toBe(
              measured === null ? "not tested" : measured >= low.value && measured <= high.value ? "pass" : "fail",
            );
          const answer = diagnoseRecord({ job, record });
          const codes = [
            ...(answer.state === "diagnosed" ? answer.used : []).map(({ code }) => code),
            ...answer.leftOut.map(({ code }) => code),
          ];
          expect(codes.sort()).toEqual(Object.keys(readings).sort());
        },
      ),
      RUNS,
    );
  },
  TIME_LIMIT,
);
