/** Laws that hold for every job: the parts of a plan agree with each other and with the modules behind them. */
import fc from "fast-check";
import { bleachDose } from "risingmain/disinfection";
import { headOfPressure } from "risingmain/head";
import { darcyWeisbachLoss, wallRoughness } from "risingmain/pipe";
import { citationsOf, type Job, type Plan, planSystem, type RunPlan, readJob, reportOf } from "risingmain/plan";
import { pumpCurve, pumpHeadAt } from "risingmain/pump";
import { tankDrawdown } from "risingmain/tank";
import { feet, type Length, type VolumeFlow } from "risingmain/units";
import type { Water } from "risingmain/water";
import { describe, expect, test } from "vitest";
import { randomJobs } from "./random-jobs.ts";

/** m/s², exact by definition (CGPM 1901). */
const STANDARD_GRAVITY = 9.80665;
/** A plan runs in tens of milliseconds; the whole-job laws take fewer cases than those of one formula. */
const RUNS = { numRuns: 40 };
/** More than a mutation run waits for: there whole jobs by the dozen would be planned again for each mutant. */
const TIME_LIMIT = 180_000;

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

describe("stages equal what their modules say when asked directly", () => {
  /** Head lost in a run by the pipe module alone; only for runs without fittings. */
  const friction = (run: RunPlan, flow: VolumeFlow, { kinematicViscosity }: Water): number =>
    darcyWeisbachLoss({
      flow,
      length: run.length,
      insideDiameter: run.pipe.insideDiameter,
      roughness: wallRoughness(run.pipe.material).roughness,
      viscosity: kinematicViscosity,
    }).headLoss;

  law("a run's loss is the pipe's friction at its flow; with fittings it is more", ({ stages }, job) => {
    stages.layout.runs.forEach((run, i) => {
      const alone = friction(run, run.flow, stages.site.water);
      if (job.runs[i]?.fittings === undefined) expect(close(run.headLoss, alone, 1e-8)).toBe(true);
      else if (run.flow > 0) expect(run.headLoss).toBeGreaterThan(alone);
    });
  });

  law(
    "pressures in a branched yard are those summed run by run from the tank, without the network solver",
    (plan, job) => {
      const { runs, uses } = plan.stages.layout;
      const { water } = plan.stages.site;
      // A loop divides the flow by balance and not by sum; fittings change their coefficient with the flow.
      if (runs.length > job.places.length || job.runs.some(({ fittings }) => fittings !== undefined)) return;
      for (const use of uses) {
        const demandAt = (place: string): number =>
          use.outlets
            .filter(({ name }) => job.outlets.find((outlet) => outlet.name === name)?.at === place)
            .reduce((sum, { flow }) => sum + flow, 0) +
          runs.filter(({ from }) => from === place).reduce((sum, { to }) => sum + demandAt(to), 0);
        const lossTo = (place: string): number => {
          const run = runs.find(({ to }) => to === place);
          return run === undefined ? 0 : lossTo(run.from) + friction(run, demandAt(place) as VolumeFlow, water);
        };
        for (const outlet of use.outlets) {
          const place = job.outlets.find(({ name }) => name === outlet.name)?.at ?? "";
          const rise = (job.places.find(({ name }) => name === place)?.elevation ?? 0) - (job.tank?.elevation ?? 0);
          const head = headOfPressure({ pressure: job.controls.cutIn, density: water.density }) - rise - lossTo(place);
          expect(close(outlet.pressureAtCutIn, head * water.density * STANDARD_GRAVITY, 1e-8)).toBe(true);
        }
      }
    },
  );

  law("volts lost add up along the circuit, and the share is of the source's", ({ stages }, job) => {
    const { power } = stages;
    if (power === null) return;
    expect(
      close(
        power.cables.reduce((sum, { drop }) => sum + drop, 0),
        power.drop,
        1e-6,
      ),
    ).toBe(true);
    expect(job.power.sources.some(({ voltage }) => close(power.drop / voltage, power.dropShare, 1e-6))).toBe(true);
  });

  law("the bleach holds the chlorine wanted in the water treated", ({ stages }, job) => {
    const { treated, dose } = stages.disinfection;
    const { target, bleachStrength } = job.disinfection ?? {};
    if (target === undefined || bleachStrength === undefined) return;
    expect(dose).toEqual(bleachDose({ volume: treated.total, target, strength: bleachStrength }));
  });

  law("the day's energy is what each volume of water took", ({ stages: { day } }) => {
    if (day === null || day.energy === null || day.energyPerVolume === null) return;
    expect(close(day.energyPerVolume * day.delivered, day.energy, 1e-6)).toBe(true);
    expect(day.runTime).toBeLessThanOrEqual(86_400 * (1 + 1e-9));
  });
});

describe("a finding appears exactly when its limit is crossed", () => {
  /** For how many things of the plan the limit is crossed, by the stages and the job alone. */
  const CROSSED: Readonly<Record<string, (plan: Plan, job: Job) => number>> = {
    "outlet-short-of-pressure": ({ stages }) =>
      stages.layout.uses.flatMap(({ outlets }) => outlets).filter(({ pressureHeld, wanted }) => pressureHeld < wanted)
        .length,
    "outlet-short-at-cut-in": ({ stages }) =>
      stages.layout.uses
        .flatMap(({ outlets }) => outlets)
        .filter(({ pressureHeld, pressureAtCutIn, wanted }) => pressureHeld >= wanted && pressureAtCutIn < wanted)
        .length,
    "velocity-high": ({ stages, findings }, { pipeChoice: { highestVelocity } = {} }) =>
      highestVelocity === undefined
        ? findings.filter(({ code }) => code === "velocity-high").length
        : stages.layout.runs.filter(({ velocity }) => velocity > highestVelocity).length,
    "pipe-rating-exceeded": ({ stages }) =>
      stages.layout.runs.filter(({ pressureRating, highestPressure }) => highestPressure > (pressureRating ?? Infinity))
        .length,
    "drop-pipe-rating-exceeded": ({ stages: { dropPipe } }) =>
      Number(dropPipe.highestPressure > (dropPipe.pressureRating ?? Infinity)),
    // Said once, of the largest use.
    "use-above-yield": ({ stages }, { well }) => Number(stages.demand.designFlow > well.yield),
    "tank-rating-exceeded": (_, { tank, controls }) => Number(controls.cutOut > (tank?.maximumPressure ?? Infinity)),
    "voltage-drop": ({ stages: { power } }, { power: { mostVoltageDrop = 0.05 } }) =>
      Number((power?.dropShare ?? 0) > mostVoltageDrop),
    "breaker-too-large": ({ stages: { power } }, { power: { breaker = 0 } }) =>
      Number(power !== null && breaker > power.highestBreaker),
    "no-dry-run-cut-off": (_, { controls }) => Number(controls.dryRunCutOff !== true),
  };

  law("by the numbers of the plan", (plan, job) => {
    for (const [code, crossed] of Object.entries(CROSSED))
      expect([code, plan.findings.filter((finding) => finding.code === code).length]).toEqual([
        code,
        crossed(plan, job),
      ]);
  });

  law("and says a value that is not the limit, in the same kind of number", ({ findings }) => {
    for (const { value, limit, severity, code } of findings) {
      expect(value.kind).toBe(limit.kind);
      expect(Number.isFinite(value.value) && Number.isFinite(limit.value)).toBe(true);
      if (severity === "stop" || severity === "fix") expect([code, value.value]).not.toEqual([code, limit.value]);
    }
  });

  law("a published limit names a source of the bibliography", ({ findings }) => {
    for (const finding of findings)
      expect(citationsOf(finding)).toHaveLength(finding.basis.kind === "published" ? 1 : 0);
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
