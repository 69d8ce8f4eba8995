/** Each stage against its modules asked directly, and against sums done by hand: well, demand, drop pipe, tank, day, bleach. */
import { dailyDemand } from "risingmain/demand";
import { bleachDose, treatedVolume } from "risingmain/disinfection";
import { pipeGradeProperties, pipeMass } from "risingmain/pipe";
import { type Plan, readJob } from "risingmain/plan";
import { simulate } from "risingmain/system";
import { tankDrawdown, tankFillTime, tankSizeForRunTime, worstDemandOnCurve } from "risingmain/tank";
import {
  days,
  feet,
  gpm,
  horsepower,
  inFeet,
  inGpm,
  inGpmPerFoot,
  inUsGallons,
  psi,
  usGallons,
} from "risingmain/units";
import { atmosphereAt, waterAt } from "risingmain/water";
import { dropPipeFixings, hangingLoad } from "risingmain/well";
import { describe, expect, test } from "vitest";
import { dayStage, runningSystem } from "../../src/plan/day-stage.ts";
import { demandStage } from "../../src/plan/demand-stage.ts";
import { chooseDropPipe, dropPipeStage } from "../../src/plan/drop-pipe-stage.ts";
import { dropPipeLoss, flowAt, valveLossAt } from "../../src/plan/lift.ts";
import { familySizes, runLoss } from "../../src/plan/pipes.ts";
import { tankStage } from "../../src/plan/tank-stage.ts";
import { wellStage } from "../../src/plan/well-stage.ts";
import { type Changes, cabin, having, planOf, ranch, workOf } from "./jobs.ts";

/** m/s², exact by definition (CGPM 1901). */
const STANDARD_GRAVITY = 9.80665;

describe("the well", () => {
  const well = (changes: Changes, flow = 15) => wellStage(readJob(ranch(changes)), gpm(flow));
  const steps = (...levels: readonly (readonly [gpm: number, feet: number])[]) => ({
    "well.test": levels.map(([q, level]) => ({ flow: `${q} gpm`, pumpingLevel: `${level} ft` })),
  });

  test("one test: drawdown in proportion to the flow", () => {
    const stage = well({});
    expect(stage.lawBasis).toBe("single test");
    // 40 ft at 20 gpm.
    expect(inFeet(stage.drawdown)).toBeCloseTo((40 * 15) / 20, 9);
    expect(inFeet(stage.pumpingLevel)).toBeCloseTo(94 + 30, 9);
    expect(inGpmPerFoot(stage.specificCapacity)).toBeCloseTo(20 / 40, 9);
    expect(inFeet(stage.waterColumn)).toBeCloseTo(312 - 94, 9);
  });

  test("steps: s = B Q + C Q² through them", () => {
    // B 1.75 ft/gpm and C 0.01 ft/gpm²: 9, 18.5 and 39 ft at 5, 10 and 20 gpm.
    const stage = well(steps([5, 94 + 9], [10, 94 + 18.5], [20, 94 + 39]));
    expect(stage.lawBasis).toBe("step test");
    expect(inFeet(stage.drawdown)).toBeCloseTo(1.75 * 15 + 0.01 * 15 ** 2, 6);
  });

  test("steps at one flow are averaged", () => {
    const stage = well(steps([20, 130], [20, 138]));
    expect(stage.lawBasis).toBe("single test");
    expect(inFeet(stage.drawdown)).toBeCloseTo((((130 + 138) / 2 - 94) * 15) / 20, 9);
  });

  test("steps that fit no law: the largest alone, wherever it stands", () => {
    // Less drawdown for each gallon the more is pumped.
    for (const test of [steps([5, 120], [20, 134], [10, 128]), steps([20, 134], [5, 120], [10, 128])]) {
      const stage = well(test);
      expect(stage.lawBasis).toBe("largest step alone");
      expect(inFeet(stage.drawdown)).toBeCloseTo((40 * 15) / 20, 9);
    }
  });

  test("the water standing in casing and open hole", () => {
    const gallons = (changes: Changes) => inUsGallons(well(changes).standingWater);
    const cylinder = (inches: number, feet: number) => ((Math.PI / 4) * inches ** 2 * 12 * feet) / 231;
    expect(gallons({})).toBeCloseTo(cylinder(6.065, 260 - 94) + cylinder(6, 312 - 260), 6);
    // An open hole of no diameter given has the casing's; a hole of no casing given is cased to the bottom.
    expect(gallons({ "well.openHoleDiameter": undefined })).toBeCloseTo(cylinder(6.065, 312 - 94), 6);
    expect(gallons({ "well.casingDepth": undefined })).toBeCloseTo(cylinder(6.065, 312 - 94), 6);
    // Water that stands below the casing stands in the hole alone; where it flows out, from the ground down.
    const low = { "well.casingDepth": "50 ft" };
    expect(gallons(low)).toBeCloseTo(cylinder(6, 312 - 94), 6);
    const flowing = { "well.staticLevel": "-20 ft", "well.highestStaticLevel": undefined };
    expect(gallons(flowing)).toBeCloseTo(cylinder(6.065, 260) + cylinder(6, 312 - 260), 6);
  });
});

describe("site and demand", () => {
  test("water by its temperature, air by its elevation", () => {
    const { site } = planOf(ranch()).stages;
    const job = readJob(ranch());
    expect(site).toEqual({
      water: waterAt({ temperature: job.site.waterTemperature }),
      atmosphere: atmosphereAt(feet(4860)),
    });
  });

  test("the day's water, the well's day, and the use that takes most, wherever it stands", () => {
    const stage = demandStage(readJob(ranch()));
    expect(stage.daily).toEqual(
      dailyDemand({
        people: 4,
        livestock: [
          { kind: "beef cow", head: 55 },
          { kind: "horse", head: 5 },
        ],
        other: [{ name: "kitchen garden", volume: usGallons(250) }],
      }),
    );
    // 22 gpm for 1440 minutes.
    expect(inUsGallons(stage.yieldPerDay)).toBeCloseTo(22 * 1440, 6);
    expect([stage.governingUse, inGpm(stage.designFlow)]).toEqual(["both hydrants", expect.closeTo(15, 9)]);
    // Of two that take the same the first is named.
    const same = demandStage(
      readJob(
        ranch({
          uses: [
            { name: "first", outlets: ["house"] },
            { name: "second", outlets: ["ridge hydrant"] },
          ],
        }),
      ),
    );
    expect(same.governingUse).toBe("first");
    expect(demandStage(readJob(ranch({ demand: undefined }))).daily).toBeNull();
    expect(demandStage(readJob(ranch({ demand: { livestock: [{ kind: "horse", head: 5 }] } }))).daily).toEqual(
      dailyDemand({ livestock: [{ kind: "horse", head: 5 }], other: [] }),
    );
    expect(demandStage(readJob(ranch({ demand: { people: 3 } }))).daily).toEqual(
      dailyDemand({ people: 3, livestock: [], other: [] }),
    );
  });
});

describe("the drop pipe", () => {
  test("of no size given is the thinnest that keeps the velocity, or the widest there is", () => {
    const { work, job } = workOf(cabin());
    const { water } = work.lift;
    const sizes = familySizes("PVC SCH 80");
    const velocity = (bore: number, flow: number) => flow / ((Math.PI / 4) * bore ** 2);
    for (const flow of [gpm(3), gpm(8), gpm(30)]) {
      const pipe = chooseDropPipe(job, water, flow);
      const at = sizes.findIndex(({ name }) => name === pipe.name);
      expect(velocity(pipe.insideDiameter, flow)).toBeLessThanOrEqual(feet(5));
      expect(velocity(sizes[at - 1]?.insideDiameter ?? 0, flow)).toBeGreaterThan(feet(5));
    }
    expect(chooseDropPipe(job, water, gpm(1e5))).toEqual(sizes.at(-1));
    const slow = readJob(cabin({ pipeChoice: { highestVelocity: "1 ft/s" } }));
    const wide = chooseDropPipe(slow, water, gpm(8)).insideDiameter;
    expect(wide).toBeGreaterThan(chooseDropPipe(job, water, gpm(8)).insideDiameter);
    expect(chooseDropPipe(readJob(cabin({ "dropPipe.pipe": "1 in PE SIDR 15" })), water, gpm(8)).name).toMatch(
      /SIDR 15/,
    );
  });

  test("at the duty flow, against a closed valve and on the hoist", () => {
    const { work } = workOf(ranch());
    const { lift, pump, stage } = work;
    const { water, dropPipe, setting } = lift;
    const lowest = feet(132);
    const at = dropPipeStage(lift, gpm(15), pump, lowest);
    const { insideDiameter, outsideDiameter, grade } = dropPipe;
    expect(at.velocity).toBeCloseTo(gpm(15) / ((Math.PI / 4) * insideDiameter ** 2), 12);
    expect(at.length).toBeCloseTo(stage.setting + feet(2), 12);
    // The valve of the job and the pump's own.
    const loss = runLoss(
      { pipe: dropPipe, length: at.length, fittings: [{ kind: "swing check valve", count: 2 }] },
      gpm(15),
      water.kinematicViscosity,
    );
    expect(at.headLoss).toBeCloseTo(loss.pipe + loss.fittings, 12);
    expect(at.highestPressure).toBeCloseTo(water.density * STANDARD_GRAVITY * feet(412), 3);
    expect(at.hangingLoad).toBe(
      hangingLoad({
        pumpMass: (56 * 0.45359237) as never,
        insideDiameter,
        outsideDiameter,
        pipeMass: pipeMass({ outsideDiameter, insideDiameter, density: pipeGradeProperties(grade).density }),
        pumpSetting: setting,
        density: water.density,
      }).lifting,
    );
    expect(at.fixings).toEqual(dropPipeFixings({ pumpSetting: setting, pumpingLevel: lowest }));
    expect(at.pipeBy).toBe("job");
    // Without a pump there is neither pressure nor load; a flowing well has its water at the ground.
    const none = dropPipeStage(lift, gpm(15), null, feet(-3));
    expect([none.highestPressure, none.hangingLoad]).toEqual([0, null]);
    expect(none.fixings).toEqual(dropPipeFixings({ pumpSetting: setting, pumpingLevel: feet(0) }));
    const light = workOf(cabin()).work;
    const cabinPipe = dropPipeStage(light.lift, gpm(8), light.pump, lowest);
    expect(cabinPipe.hangingLoad).toBeNull();
    expect(cabinPipe.pipeBy).toBe("plan");
    // A tank below the wellhead adds no pipe.
    expect(cabinPipe.length).toBe(light.stage.setting);
    const cellar = workOf(cabin({ "tank.elevation": "-10 ft", "pump.setting": "100 ft" })).work;
    expect(dropPipeStage(cellar.lift, gpm(8), null, lowest).length).toBe(feet(100));
  });

  test("its fittings count, with the pump's own check valve", () => {
    const loss = (dropPipe: object) => {
      const { work } = workOf(cabin({ dropPipe: { pipe: "1 in PVC SCH 80", ...dropPipe }, "pump.setting": "100 ft" }));
      return dropPipeStage(work.lift, gpm(8), null, feet(60)).headLoss;
    };
    const { work } = workOf(cabin({ dropPipe: { pipe: "1 in PVC SCH 80" }, "pump.setting": "100 ft" }));
    const elbow = runLoss(
      { pipe: work.lift.dropPipe, length: feet(100), fittings: [{ kind: "elbow 90", count: 2 }] },
      gpm(8),
      work.lift.water.kinematicViscosity,
    ).fittings;
    expect(loss({ fittings: [{ kind: "elbow 90", count: 2 }] }) - loss({})).toBeCloseTo(elbow, 9);
    const [none, one, two] = [loss({ checkValves: 0 }), loss({ checkValves: 1 }), loss({ checkValves: 2 })];
    expect(none).toBe(loss({}));
    expect(one - none).toBeGreaterThan(0);
    expect(two - one).toBeCloseTo(one - none, 9);
  });

  test("the open valve loses as the square of the flow", () => {
    const job = readJob(ranch());
    const { water } = workOf(ranch()).work.lift;
    // 4 psi at 16 gpm.
    const head = (flow: number) => valveLossAt(job, gpm(flow), water.density);
    expect(head(16)).toBeCloseTo(psi(4) / (water.density * STANDARD_GRAVITY), 9);
    expect(head(8) / head(16)).toBeCloseTo(0.25, 12);
    // A valve far too small takes more than any pump makes, and no more than that; so does a pipe.
    expect(head(1e9)).toBeCloseTo(3e7 / (water.density * STANDARD_GRAVITY), 6);
    const { lift } = workOf(ranch()).work;
    expect(dropPipeLoss(lift, gpm(1e6))).toEqual({ pipe: 3000, fittings: 3000 });
    for (const bare of [
      cabin(),
      ranch({ "controls.regulatingValve.loss": undefined, "controls.regulatingValve.ratedFlow": undefined }),
    ])
      expect(valveLossAt(readJob(bare), gpm(16), water.density)).toBe(0);
  });
});

describe("the tank", () => {
  const at = (document: unknown) => {
    const { work, job } = workOf(document);
    const { lift, pump } = work;
    const curve = pump?.curve ?? expect.unreachable("no pump");
    const atmosphere = atmosphereAt(job.site.elevation);
    return { lift, curve, atmosphere, job, stage: tankStage(lift, curve, atmosphere, horsepower(0.5)) };
  };
  const near = (a: number | null, b: number, share = 1e-4) => expect(Math.abs((a ?? 0) / b - 1)).toBeLessThan(share);

  test("of no volume given is the one the least run asks for", () => {
    for (const [leastRunTime, seconds] of [
      [undefined, 60],
      ["90 s", 90],
    ] as const) {
      const { stage, lift, curve, atmosphere } = at(cabin({ "tank.leastRunTime": leastRunTime }));
      const size = tankSizeForRunTime({
        pumpFlow: flowAt(lift, curve, psi(30)),
        cutIn: psi(30),
        cutOut: psi(50),
        // Two pounds below cut-in, common practice.
        precharge: psi(28),
        atmosphere,
        runTime: seconds as never,
      });
      expect(size.state === "sized" && size.volume).toBeCloseTo(stage.volume, 12);
      expect(stage.precharge).toBeCloseTo(psi(28), 6);
      expect(stage.volumeBy).toBe("plan");
      // 15 an hour for a motor of half a horsepower.
      expect(stage.mostStarts).toBeCloseTo(15 / 3600, 12);
    }
  });

  test("fills and cycles as the tank module says with the pump's own flow", () => {
    const { stage, lift, curve, atmosphere } = at(cabin({ "tank.volume": "40 gal", "tank.precharge": "27 psi" }));
    const charge = { volume: usGallons(40), precharge: psi(27), atmosphere, cutIn: psi(30), cutOut: psi(50) };
    const pumpFlowAt = (pressure: number) => flowAt(lift, curve, pressure as never);
    expect(stage.drawdown).toEqual(tankDrawdown(charge));
    expect([stage.volume, stage.precharge, stage.volumeBy, stage.maximumPressure]).toEqual([
      usGallons(40),
      psi(27),
      "job",
      psi(100),
    ]);
    const fill = tankFillTime({ ...charge, pumpFlowAt, demand: gpm(0) });
    near(stage.fillTime, fill.state === "fills" ? fill.time : 0);
    const worst = worstDemandOnCurve({ ...charge, pumpFlowAt });
    if (worst.state !== "cycles") return expect.unreachable("no cycle");
    near(stage.worst?.starts ?? 0, worst.starts, 1e-3);
  });

  test("behind a valve fills at its minimum flow from its set pressure on", () => {
    const valve = (setPressure: string) =>
      at(
        cabin({
          "controls.regulatingValve": { setPressure, minimumFlow: "1 gpm" },
          "tank.volume": "40 gal",
          "tank.precharge": "28 psi",
        }),
      );
    const stored = (tank: ReturnType<typeof at>, cutIn: number, cutOut: number) =>
      tankDrawdown({
        volume: usGallons(40),
        precharge: psi(28),
        atmosphere: tank.atmosphere,
        cutIn: psi(cutIn),
        cutOut: psi(cutOut),
      }).usable;
    const filled = (tank: ReturnType<typeof at>, cutOut: number) => {
      const { lift, curve, atmosphere } = tank;
      const fill = tankFillTime({
        volume: usGallons(40),
        precharge: psi(28),
        atmosphere,
        cutIn: psi(30),
        cutOut: psi(cutOut),
        pumpFlowAt: (pressure) => flowAt(lift, curve, pressure),
        demand: gpm(0),
      });
      return fill.state === "fills" ? fill.time : Number.NaN;
    };
    const middle = valve("40 psi");
    near(middle.stage.fillTime, filled(middle, 40) + stored(middle, 40, 50) / gpm(1));
    // Set below cut-in it throttles all the while; set above cut-out never.
    const low = valve("20 psi");
    near(low.stage.fillTime, stored(low, 30, 50) / gpm(1));
    const high = valve("60 psi");
    near(high.stage.fillTime, filled(high, 50));
    // A trickle runs the pump at the valve's minimum: the worst use is one of the least.
    expect(middle.stage.worst?.demand).toBeLessThan(gpm(1));
    expect(high.stage.worst?.demand).toBeGreaterThan(gpm(1));
    // A valve whose minimum is more than the pump gives throttles nothing.
    const wide = at(
      cabin({
        "controls.regulatingValve": { setPressure: "40 psi", minimumFlow: "30 gpm" },
        "tank.volume": "40 gal",
        "tank.precharge": "28 psi",
      }),
    );
    near(wide.stage.fillTime, filled(wide, 50));
  });

  test("without a pump, or with one that does not reach cut-out, says no times", () => {
    const { lift, atmosphere, curve, job } = at(cabin());
    const bare = tankStage(lift, null, atmosphere, null);
    expect(bare).toMatchObject({ worst: null, fillTime: null, mostStarts: null, volume: 0.075, volumeBy: "plan" });
    const high = having(job, { controls: having(job.controls, { cutOut: psi(200) }) });
    const never = tankStage({ ...lift, job: high }, curve, atmosphere, horsepower(0.5));
    expect([never.worst, never.fillTime]).toEqual([null, null]);
    // Nor is a tank sized that no run can fill: the precharge stands above cut-out.
    const tight = having(job, { tank: { precharge: psi(60) } });
    expect(tankStage({ ...lift, job: tight }, curve, atmosphere, null).volume).toBe(0.075);
    // Where no water enters there is no cycle.
    const full = having(job, { tank: { precharge: psi(60), volume: usGallons(40) } });
    expect(tankStage({ ...lift, job: full }, curve, atmosphere, null).worst).toBeNull();
    const unrated = having(job, { tank: undefined });
    expect(tankStage({ ...lift, job: unrated }, curve, atmosphere, null).maximumPressure).toBeNull();
    // A pump out of breath at cut-in: no flow, no size.
    const dead = having(job, { controls: having(job.controls, { cutIn: psi(150), cutOut: psi(200) }) });
    expect(tankStage({ ...lift, job: dead }, curve, atmosphere, null).volume).toBe(0.075);
  });
});

describe("the day", () => {
  const dayOf = (document: unknown) => {
    const plan = planOf(document);
    return {
      plan,
      day: plan.stages.day ?? expect.unreachable("no day"),
      running: plan.running ?? expect.unreachable("none"),
    };
  };

  test("is the system of the plan run for a day on its own draws", () => {
    const { day, running } = dayOf(cabin());
    const run = simulate({ system: running, demand: day.demand, duration: days(1), keepEvents: 0 });
    const { state, starts, mostStartsInAnHour, runTime, shortestRun, delivered, refused, energy } = run;
    expect(day).toMatchObject({ state, starts, mostStartsInAnHour, runTime, shortestRun, delivered, refused, energy });
    expect(day.energyPerVolume).toBeCloseTo((energy ?? 0) / delivered, 3);
    expect(day.servedShare).toBeCloseTo(delivered / (delivered + refused), 12);
    expect(day.draws).toBe(24);
  });

  test("draws the day's water in 24 parts, an hour each, the uses in turn", () => {
    const { day, plan } = dayOf(cabin());
    const { daily } = plan.stages.demand;
    const share = (daily?.volume ?? 0) / 24;
    const hours = Array.from({ length: 24 }, (_, i) => [5, 3, 8][i % 3] as number);
    expect(day.demand).toHaveLength(48);
    hours.forEach((flow, i) => {
      const [open, shut] = day.demand.slice(2 * i, 2 * i + 2);
      expect(inGpm(open?.flow ?? (0 as never))).toBeCloseTo(flow, 9);
      expect(open?.duration).toBeCloseTo(share / gpm(flow), 6);
      expect(shut?.flow).toBe(0);
      expect((open?.duration ?? 0) + (shut?.duration ?? 0)).toBeCloseTo(3600, 6);
    });
  });

  test("a use that cannot take its share in the hour takes it all the hour", () => {
    // 3 gpm for an hour is 180 gallons; of 4800 a day each hour's share is 200.
    const { day } = dayOf(
      cabin({
        demand: { other: [{ name: "washing", volume: "4800 gal" }] },
        uses: [{ name: "garden", outlets: ["garden tap"] }],
        "well.yield": "12 gpm",
      }),
    );
    expect(day.demand).toHaveLength(24);
    for (const { duration, flow } of day.demand) {
      expect(duration).toBe(3600);
      expect(inGpm(flow)).toBeCloseTo(200 / 60, 9);
    }
  });

  test("is none without a day's water, a pump or water over the intake", () => {
    expect(planOf(cabin({ demand: undefined })).stages.day).toBeNull();
    expect(planOf(cabin({ demand: { people: 0 } })).stages.day).toBeNull();
    const bare = planOf(cabin({ pump: undefined }));
    expect([bare.stages.day, bare.running]).toEqual([null, null]);
    const dry = planOf(cabin({ "pump.setting": "40 ft" }));
    expect([dry.stages.day, dry.running]).toEqual([null, null]);
    expect(planOf(cabin({ "pump.setting": "41 ft" })).running).not.toBeNull();
    const { plan, running } = dayOf(cabin());
    const basis = { lift: { job: readJob(cabin()) }, demand: plan.stages.demand } as never;
    expect(dayStage(basis, null)).toBeNull();
    expect(dayStage(basis, running)).toEqual(plan.stages.day);
  });

  test("serves the share of the water asked for that comes", () => {
    const big = { "outlets[0].flow": "30 gpm", "runs[0].pipe": "4 in PVC SCH 40" };
    const { day } = dayOf(cabin({ ...big, uses: [{ name: "flood", outlets: ["cabin"] }], "demand.people": 200 }));
    expect(day.refused).toBeGreaterThan(0);
    expect(day.servedShare).toBeCloseTo(day.delivered / (day.delivered + day.refused), 12);
    expect(day.servedShare).toBeLessThan(1);
  });

  test("without efficiencies has no energy", () => {
    const curve = [0, 4, 8, 12].map((q, i) => ({ flow: `${q} gpm`, head: `${[250, 238, 196, 118][i]} ft` }));
    const { day } = dayOf(cabin({ "pump.candidates[0].curve": curve }));
    expect([day.energy, day.energyPerVolume]).toEqual([null, null]);
  });

  test("the running system is the plan's own", () => {
    const { plan, running } = dayOf(ranch());
    const { stages } = plan;
    const { lift } = workOf(ranch()).work;
    expect(running).toMatchObject({
      motorEfficiency: stages.power?.motorEfficiency,
      well: { staticLevel: feet(94), law: stages.well.law, intake: stages.pump.setting },
      rise: feet(2),
      tanks: [{ volume: usGallons(44), precharge: psi(50) }],
      atmosphere: stages.site.atmosphere,
      density: stages.site.water.density,
    });
    const valve = { setPressure: psi(62), minimumFlow: gpm(1) };
    const control = { kind: "switch", cutIn: psi(52), cutOut: psi(72) };
    expect(running.control).toEqual({ ...control, valve: { ...valve, maximumInlet: psi(300) } });
    const unsaid = dayOf(ranch({ "controls.regulatingValve.maximumInletPressure": undefined })).running;
    expect(unsaid.control).toEqual({ ...control, valve });
    // The loss from pump to tank at flows up to the end of the curve, 25 gpm.
    expect(running.mainLoss).toHaveLength(24);
    running.mainLoss.forEach(({ flow, headLoss }, i) => {
      expect(inGpm(flow)).toBeCloseTo((25 * (i + 1)) / 24, 9);
      const loss = runLoss(
        {
          pipe: lift.dropPipe,
          length: (stages.pump.setting + feet(2)) as never,
          fittings: [{ kind: "swing check valve", count: 2 }],
        },
        flow,
        lift.water.kinematicViscosity,
      );
      const open = (psi(4) / (lift.water.density * STANDARD_GRAVITY)) * (inGpm(flow) / 16) ** 2;
      expect(headLoss).toBeCloseTo(loss.pipe + loss.fittings + open, 9);
    });
    expect(dayOf(cabin()).running.control).toEqual({ kind: "switch", cutIn: psi(30), cutOut: psi(50) });
  });

  test("a flowing well's head is part of the rise, its depths from the ground", () => {
    const flowing = { "well.staticLevel": "-10 ft", "well.test": [{ flow: "12 gpm", pumpingLevel: "20 ft" }] };
    const { running } = dayOf(cabin({ ...flowing, "pump.setting": "60 ft", "tank.elevation": "4 ft" }));
    expect(running.well.staticLevel).toBe(0);
    expect(inFeet(running.well.intake as never)).toBeCloseTo(60 + 10, 9);
    expect(inFeet(running.rise)).toBeCloseTo(4 - 10, 9);
  });

  test("a curve that rises in part runs no day", () => {
    const { plan } = dayOf(cabin());
    const { work } = workOf(cabin());
    const curve = work.pump?.curve ?? expect.unreachable("no pump");
    const basis = {
      lift: work.lift,
      curve,
      tank: plan.stages.tank,
      atmosphere: plan.stages.site.atmosphere,
      motorEfficiency: plan.stages.power?.motorEfficiency ?? 0,
    } as never as Parameters<typeof runningSystem>[0];
    expect(runningSystem(basis)).toEqual(plan.running);
    expect(runningSystem({ ...basis, curve: { ...curve, shape: "rising in part" } })).toBeNull();
  });
});

describe("the bleach", () => {
  const bleached = (document: unknown): Plan["stages"] => planOf(document).stages;

  test("treats the water of hole, pipes and tank, and is pumped out at the duty flow", () => {
    const { disinfection, layout, tank, dropPipe } = bleached(ranch());
    const treated = treatedVolume({
      staticLevel: feet(94),
      bore: [
        { insideDiameter: (6.065 * 0.0254) as never, top: feet(0), bottom: feet(260) },
        { insideDiameter: (6 * 0.0254) as never, top: feet(260), bottom: feet(312) },
      ],
      dropPipe: dropPipe.pipe.insideDiameter,
      pipes: layout.runs.map(({ pipe, length }) => ({ insideDiameter: pipe.insideDiameter, length })),
      tank: tank.drawdown.storedAtCutOut,
    });
    for (const part of ["total", "well", "dropPipe", "pipes", "tank"] as const)
      expect(disinfection.treated[part]).toBeCloseTo(treated[part], 9);
    expect(disinfection.flushTime).toBeCloseTo(treated.total / gpm(15), 6);
  });

  test("of 6 % for 100 mg/L where the job names neither", () => {
    const { disinfection } = bleached(ranch({ disinfection: undefined }));
    const dose = (target: number, strength: number) =>
      bleachDose({ volume: disinfection.treated.total, target: target as never, strength: strength as never });
    expect(disinfection.dose).toEqual(dose(0.1, 0.06));
    expect(bleached(ranch({ disinfection: { target: "50 mg/L" } })).disinfection.dose).toEqual(dose(0.05, 0.06));
    expect(bleached(ranch({ disinfection: { bleachStrength: "10 %" } })).disinfection.dose).toEqual(dose(0.1, 0.1));
  });

  test("a flowing well is full to the ground", () => {
    const full = bleached(
      cabin({ "well.staticLevel": "-5 ft", "well.test": [{ flow: "12 gpm", pumpingLevel: "30 ft" }] }),
    );
    expect(inUsGallons(full.disinfection.treated.well)).toBeCloseTo(((Math.PI / 4) * 5 ** 2 * 12 * 180) / 231, 6);
  });
});
