/** Laws that hold for every job: the parts of a plan agree with each other and with the modules behind them. */
import fc from "fast-check";
import { headOfPressure } from "risingmain/head";
import { type Plan, planSystem, readJob, reportOf } from "risingmain/plan";
import { pumpCurve, pumpHeadAt } from "risingmain/pump";
import { tankDrawdown } from "risingmain/tank";
import { feet, type Length } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { randomJobs } from "./random-jobs.ts";

/** A plan runs in tens of milliseconds; the whole-job laws take fewer cases than those of one formula. */
const RUNS = { numRuns: 40 };
const TIME_LIMIT = 120_000;

const close = (a: number, b: number, share = 1e-9): boolean =>
  Math.abs(a - b) <= share * Math.max(Math.abs(a), Math.abs(b), 1e-9);

function law(name: string, check: (plan: Plan, job: ReturnType<typeof readJob>) => void): void {
  test(
    name,
    () => {
      fc.assert(
        fc.property(randomJobs, ({ metric }) => {
          const job = readJob(metric);
          check(planSystem(job), job);
        }),
        RUNS,
      );
    },
    TIME_LIMIT,
  );
}

describe("the parts of every plan agree", () => {
  law("the parts of the total dynamic head add up to it, and to the stages they came from", ({ stages }) => {
    const { parts, totalDynamicHead, losses } = stages.pump.duty;
    expect(
      close(
        Object.values(parts).reduce((sum, part) => sum + part, 0),
        totalDynamicHead,
      ),
    ).toBe(true);
    expect(close(parts.drawdown, stages.well.drawdown)).toBe(true);
    const pipe = losses
      .filter(({ name }) => name !== "regulating valve")
      .reduce((sum, { headLoss }) => sum + headLoss, 0);
    expect(close(pipe, stages.dropPipe.headLoss)).toBe(true);
  });

  law("the chosen pump's head is its curve's at its flow, and covers the lift", ({ stages }, job) => {
    const { chosen } = stages.pump;
    if (chosen === null) return;
    const candidate = job.pump?.candidates?.find(({ name }) => name === chosen.name);
    const curve = pumpCurve({ points: candidate?.curve ?? [] });
    for (const point of [chosen.atCutIn, chosen.atCutOut]) {
      if (point === null) continue;
      expect(close(point.head, pumpHeadAt(curve, point.flow))).toBe(true);
      const { density } = stages.site.water;
      const needed =
        stages.well.staticLevel + (job.tank?.elevation ?? 0) + headOfPressure({ pressure: point.pressure, density });
      expect(point.head).toBeGreaterThan(needed * (1 - 1e-9));
    }
    // More pressure, less flow.
    if (chosen.atCutIn !== null && chosen.atCutOut !== null)
      expect(chosen.atCutOut.flow).toBeLessThanOrEqual(chosen.atCutIn.flow);
  });

  law("the tank stage is the tank module's answer", ({ stages }, job) => {
    const { volume, precharge, drawdown } = stages.tank;
    const { cutIn, cutOut } = job.controls;
    expect(tankDrawdown({ volume, precharge, cutIn, cutOut, atmosphere: stages.site.atmosphere })).toEqual(drawdown);
  });

  law("flows divide: a run from the wellhead carries no more than the largest use", ({ stages }) => {
    for (const run of stages.layout.runs) expect(run.flow).toBeLessThanOrEqual(stages.demand.designFlow * (1 + 1e-9));
    for (const use of stages.layout.uses) {
      expect(
        close(
          use.outlets.reduce((sum, { flow }) => sum + flow, 0),
          use.flow,
        ),
      ).toBe(true);
      for (const outlet of use.outlets)
        expect(outlet.pressureHeld).toBeGreaterThanOrEqual(outlet.pressureAtCutIn - 1e-6);
    }
  });

  law("the water to treat is the sum of its parts, and the day's water balances", ({ stages }) => {
    const { treated } = stages.disinfection;
    expect(close(treated.well + treated.dropPipe + treated.pipes + treated.tank, treated.total)).toBe(true);
    const { day, demand } = stages;
    if (day === null || day.state !== "completed" || demand.daily === null) return;
    expect(close(day.delivered + day.refused, demand.daily.volume, 1e-6)).toBe(true);
  });

  law("findings are sorted gravest first, and a plan is plain data", (plan) => {
    const ranks = plan.findings.map(({ severity }) => ["stop", "fix", "look", "good"].indexOf(severity));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
    expect(structuredClone(plan)).toEqual(plan);
    expect(reportOf(plan)).not.toMatch(/NaN|undefined|Infinity|\[object/);
  });
});

describe("a plan changes as physics says", () => {
  test(
    "the same job in other units gives the same plan",
    () => {
      fc.assert(
        fc.property(randomJobs, ({ metric, us }) => {
          const [a, b] = [planSystem(readJob(metric)), planSystem(readJob(us))];
          expect(numbersApart(a.stages, b.stages)).toBeLessThan(1e-6);
        }),
        RUNS,
      );
    },
    TIME_LIMIT,
  );

  test(
    "the same job planned twice gives the same bits",
    () => {
      fc.assert(
        fc.property(randomJobs, ({ us }) => {
          expect(planSystem(readJob(us))).toEqual(planSystem(readJob(us)));
        }),
        { numRuns: 10 },
      );
    },
    TIME_LIMIT,
  );

  law("deeper water never raises a pump's flow", (plan, job) => {
    const deeper = {
      ...job,
      well: {
        ...job.well,
        staticLevel: (job.well.staticLevel + feet(5)) as Length,
        test: job.well.test.map((step) => ({ ...step, pumpingLevel: (step.pumpingLevel + feet(5)) as Length })),
      },
    };
    if (deeper.well.test.some(({ pumpingLevel }) => pumpingLevel > job.well.depth)) return;
    // The setting is held in both, so that only the lift changes.
    const held = { ...job.pump, setting: plan.stages.pump.setting };
    const after = planSystem({ ...deeper, pump: held }).stages.pump.candidates;
    for (const before of planSystem({ ...job, pump: held }).stages.pump.candidates) {
      const same = after.find(({ name }) => name === before.name);
      expect(same?.atCutIn?.flow ?? 0).toBeLessThanOrEqual((before.atCutIn?.flow ?? 0) * (1 + 1e-9));
    }
  });
});

/** Largest relative difference of the numbers of two trees of the same form; 1 where the forms differ. */
function numbersApart(a: unknown, b: unknown): number {
  if (typeof a === "number" && typeof b === "number")
    return a === b ? 0 : Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), 1e-6);
  if (typeof a !== "object" || a === null || typeof b !== "object" || b === null) return Object.is(a, b) ? 0 : 1;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return Math.max(
    0,
    ...[...keys].map((key) => numbersApart((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key])),
  );
}
