/** The pump: its setting, the pumps tried and why they fail, the one taken, and what is said of it. */
import { acceptanceTolerance, hydraulicPower, operatingBand, pumpEfficiencyAt, pumpHeadAt } from "risingmain/pump";
import {
  feet,
  feetPerSecond,
  gpm,
  horsepower,
  inches,
  inFeet,
  inGpm,
  type Length,
  psi,
  type VolumeFlow,
} from "risingmain/units";
import { motorCooling, pumpSetting } from "risingmain/well";
import { describe, expect, test } from "vitest";
import { headTaken, pressureAtRunout } from "../../src/plan/lift.ts";
import { dutyPressure, greatestShaftPower, leastUsedFlow, pointAt } from "../../src/plan/pump-stage.ts";
import { type Changes, cabin, having, planOf, ranch, workOf } from "./jobs.ts";

/** m/s², exact by definition (CGPM 1901). */
const STANDARD_GRAVITY = 9.80665;

const A = "A, 11 stages";
const B = "B, 14 stages";
const C = "C, 19 stages";

describe("the setting", () => {
  /** The depth the plan sets a pump at, ft; the well's water falls to 60 ft whatever is taken. */
  const depth = (changes: Changes): number =>
    inFeet(
      workOf(
        cabin({
          "well.staticLevel": "59.999 ft",
          "well.test": [{ flow: "12 gpm", pumpingLevel: "60 ft" }],
          "pump.candidates[0].lengthBelowIntake": "2 ft",
          ...changes,
        }),
      ).work.stage.setting,
    );

  test("keeps ten feet over the intake and twenty in reserve, where the hole has room", () => {
    expect(depth({})).toBeCloseTo(60 + 10 + 20, 2);
    // The lowest part hangs in the casing, above the screen, ten feet off the bottom.
    expect(depth({ "well.casingDepth": "85 ft" })).toBeCloseTo(85 - 2, 2);
    expect(depth({ "well.screenTop": "80 ft" })).toBeCloseTo(80 - 2, 2);
    expect(depth({ "well.depth": "95 ft" })).toBeCloseTo(95 - 10 - 2, 2);
    // Half of the length hangs below the intake where no more is said; half a metre where nothing is.
    const cased = { "well.casingDepth": "85 ft", "pump.candidates[0].lengthBelowIntake": undefined };
    expect(depth({ ...cased, "pump.candidates[0].length": "6 ft" })).toBeCloseTo(85 - 3, 2);
    expect(depth(cased)).toBeCloseTo(85 - 0.5 / 0.3048, 2);
  });

  test("goes below the casing only where no depth in it serves", () => {
    const stage = (casingDepth: string) =>
      workOf(
        cabin({
          "well.staticLevel": "59.999 ft",
          "well.test": [{ flow: "12 gpm", pumpingLevel: "60 ft" }],
          "pump.candidates[0].lengthBelowIntake": "2 ft",
          "well.casingDepth": casingDepth,
        }),
      ).work.stage;
    // 72 ft: ten feet over the intake and two of motor fit just.
    const [fits, short] = [stage("72.01 ft"), stage("71.99 ft")];
    expect([fits.casingServes, short.casingServes]).toEqual([true, false]);
    expect(inFeet(fits.setting)).toBeCloseTo(70.01, 2);
    expect(inFeet(short.setting)).toBeCloseTo(90, 2);
    expect(short.settingChecks.insideCasing.met).toBe(false);
  });

  test("the job's is kept, and checked by the well module", () => {
    const { stage } = workOf(cabin({ "pump.setting": "80 ft", "pump.candidates[0].length": "30 in" })).work;
    expect([stage.setting, stage.settingBy]).toEqual([feet(80), "job"]);
    const input = { wellDepth: feet(180), casingDepth: feet(180), pumpingLevel: stage.lowestLevel };
    expect(stage.settingChecks).toEqual(
      pumpSetting({ ...input, pumpSetting: feet(80), lengthBelowIntake: inches(15) }),
    );
    const planned = workOf(cabin()).work.stage;
    expect(planned.settingBy).toBe("plan");
    expect(planned.settingChecks).toEqual(
      pumpSetting({
        ...input,
        pumpingLevel: planned.lowestLevel,
        pumpSetting: planned.setting,
        lengthBelowIntake: 0.5 as Length,
      }),
    );
  });

  test("is for the water at the most flow: at cut-in, or the duty's where that is more", () => {
    const { stage } = workOf(cabin()).work;
    // 36 ft at 12 gpm from 40 ft.
    const flow = stage.chosen?.atCutIn?.flow ?? expect.unreachable("no flow");
    // The setting moves with the water, and so by an inch or two the flow: the water is that of the first of them.
    expect(Math.abs(inFeet(stage.lowestLevel) - (40 + 3 * inGpm(flow)))).toBeLessThan(0.2);
    expect(inGpm(flow)).toBeGreaterThan(8);
    const thirsty = workOf(cabin({ "outlets[0].flow": "11 gpm" })).work.stage;
    expect(inFeet(thirsty.lowestLevel)).toBeCloseTo(40 + 3 * 14, 6);
    // Without pumps, the duty's.
    const bare = workOf(cabin({ pump: undefined })).work.stage;
    expect(inFeet(bare.lowestLevel)).toBeCloseTo(40 + 3 * 8, 6);
    expect(inFeet(bare.setting)).toBeCloseTo(64 + 30, 6);
    // Water cannot fall below the bottom, whatever the law says.
    const sunk = workOf(cabin({ "well.test": [{ flow: "1 gpm", pumpingLevel: "76 ft" }], pump: undefined })).work.stage;
    expect(sunk.lowestLevel).toBe(feet(180));
  });
});

describe("the duty", () => {
  test("is reckoned at cut-out; behind a valve at what it holds", () => {
    const at = (changes: Changes) => dutyPressure(workOf(cabin(changes)).job);
    expect(at({})).toBe(psi(50));
    expect(at({ "controls.regulatingValve": { setPressure: "40 psi", minimumFlow: "1 gpm" } })).toBe(psi(40));
    expect(at({ "controls.regulatingValve": { setPressure: "50 psi", minimumFlow: "1 gpm" } })).toBe(psi(30));
    const { work } = workOf(cabin());
    expect(work.stage.duty).toEqual(headTaken(work.lift, gpm(8), psi(50)));
    expect(inGpm(work.stage.dutyFlow)).toBeCloseTo(8, 9);
    expect(work.stage.duty.losses.map(({ name }) => name)).toEqual([
      "drop pipe",
      "fittings and check valves",
      "regulating valve",
    ]);
  });
});

describe("the pumps tried", () => {
  const tried = (document: unknown) => workOf(document).work.stage;
  const reasons = (document: unknown, name: string) =>
    tried(document).candidates.find((each) => each.name === name)?.faults ?? expect.unreachable(name);

  test("suit where nothing stands against them; of those that do the least power for its water is taken", () => {
    const stage = tried(ranch());
    expect(stage.candidates.map(({ name, suits }) => [name, suits])).toEqual([
      [B, true],
      [C, true],
      [A, false],
    ]);
    expect(stage.chosen?.name).toBe(B);
    for (const { suits, faults } of stage.candidates) expect(suits).toBe(faults.length === 0);
    // The same whichever way the list stands.
    const list = (ranch() as { pump: { candidates: unknown[] } }).pump.candidates;
    expect(tried(ranch({ "pump.candidates": [...list].reverse() })).candidates).toEqual(stage.candidates);
    // Without efficiencies the water power ranks: the lower head for the flow held.
    const bare = list.map((each) => {
      const { curve, ...rest } = each as { curve: { flow: string; head: string }[] };
      return { ...rest, curve: curve.map(({ flow, head }) => ({ flow, head })) };
    });
    expect(tried(ranch({ "pump.candidates": [...bare].reverse() })).chosen?.name).toBe(B);
  });

  test("rank by the power each volume of water takes, not by the power", () => {
    // Half as much water again at the same heads, and less of the power lost: more power, less for each gallon.
    const [base] = (cabin() as { pump: { candidates: { curve: object[] }[] } }).pump.candidates;
    const wide = [0, 6, 12, 18].map((q, i) => ({
      flow: `${q} gpm`,
      head: `${[250, 238, 196, 118][i]} ft`,
      efficiency: `${[0, 55, 72, 69][i]} %`,
    }));
    const motor = { power: "1.5 hp", voltage: "230 V", phase: "single-phase" };
    const stage = tried(cabin({ "pump.candidates": [base, { ...base, name: "wide", curve: wide, motor }] }));
    expect(stage.candidates.map(({ name, suits }) => [name, suits])).toEqual([
      ["wide", true],
      ["half-horse, 8 stages", true],
    ]);
  });

  test("of several that do not suit none is taken; of one alone, that one", () => {
    const [a, b] = (ranch() as { pump: { candidates: object[] } }).pump.candidates;
    const twins = tried(ranch({ "pump.candidates": [a, { ...a, name: "twin" }] }));
    expect(twins.chosen).toBeNull();
    expect(twins.candidates).toHaveLength(2);
    const { work } = workOf(ranch({ "pump.candidates": [a, { ...a, name: "twin" }] }));
    expect(work.pump).toBeNull();
    // Set for the duty alone.
    expect(inFeet(work.stage.lowestLevel)).toBeCloseTo(94 + 30, 6);
    expect(tried(ranch({ "pump.candidates": [a] })).chosen?.name).toBe(A);
    expect(tried(ranch({ "pump.candidates": [a, b] })).chosen?.name).toBe(B);
  });

  test("too weak for the largest use, at what the valve holds or at cut-in", () => {
    const [few] = reasons(ranch(), A);
    expect(few).toMatchObject({
      reason: "gives less than the largest use at the pressure the valve holds",
      value: { kind: "flow" },
    });
    expect(few?.limit.value).toBeCloseTo(gpm(15), 9);
    const at = tried(ranch({ "controls.cutIn": "62 psi" })).candidates.find(({ name }) => name === A)?.atCutIn;
    expect(Math.abs((few?.value.value ?? 0) / (at?.flow ?? 1) - 1)).toBeLessThan(0.01);
    const [plain] = reasons(ranch({ "controls.regulatingValve": undefined }), A);
    expect(plain?.reason).toBe("gives less than the largest use at cut-in");
    expect(plain?.value.value).toBe(
      tried(ranch({ "controls.regulatingValve": undefined })).candidates.find(({ name }) => name === A)?.atCutIn?.flow,
    );
  });

  test("too weak for the cut-out", () => {
    const document = cabin({ "controls.cutOut": "95 psi" });
    const [low] = reasons(document, "half-horse, 8 stages");
    expect(low).toMatchObject({
      reason: "cannot reach the cut-out pressure",
      value: { kind: "pressure" },
      limit: { value: psi(95) },
    });
    // 250 ft of shutoff less 40 to the water.
    const { lift } = workOf(document).work;
    expect(low?.value.value).toBeCloseTo(lift.water.density * STANDARD_GRAVITY * feet(210), 3);
    expect(tried(document).chosen?.atCutOut).toBeNull();
  });

  test("run out past the end of its curve", () => {
    const document = cabin({ "controls.cutIn": "5 psi", "controls.cutOut": "30 psi", "tank.elevation": "-20 ft" });
    const { lift, pump } = workOf(document).work;
    const [over] = reasons(document, "half-horse, 8 stages");
    expect(over).toMatchObject({
      reason: "runs out past the end of its curve at cut-in",
      value: { kind: "pressure" },
      limit: { value: psi(5) },
    });
    const curve = pump?.curve ?? expect.unreachable("no pump");
    // At the last point of its curve, 12 gpm and 118 ft, the pump makes more pressure than the switch lets stand.
    const { totalDynamicHead } = headTaken(lift, gpm(12), psi(0));
    const there = (feet(118) - totalDynamicHead) * lift.water.density * STANDARD_GRAVITY;
    expect(over?.value.value).toBeCloseTo(there, 3);
    expect(pressureAtRunout(lift, curve)).toBeCloseTo(there, 3);
    expect(there).toBeGreaterThan(psi(5));
    expect(inGpm(tried(document).chosen?.atCutIn?.flow ?? (0 as never))).toBeCloseTo(12, 9);
  });

  test("loads its motor above the plate, or has phases no source has", () => {
    const weak = cabin({ "pump.candidates[0].motor.power": "0.4 hp", "pump.candidates[0].motor.serviceFactor": "1.1" });
    const [heavy] = reasons(weak, "half-horse, 8 stages");
    expect(heavy).toMatchObject({ reason: "loads its motor above the plate", value: { kind: "motorPower" } });
    expect(heavy?.limit.value).toBeCloseTo(0.4 * 1.1 * horsepower(1), 9);
    expect(heavy?.value.value).toBeGreaterThan(heavy?.limit.value ?? 0);
    const three = { power: "0.75 hp", voltage: "230 V", phase: "three-phase" };
    expect(reasons(cabin({ "pump.candidates[0].motor": three }), "half-horse, 8 stages")).toEqual([
      {
        reason: "has a motor of other phases than any source",
        value: { kind: "count", value: 3 },
        limit: { kind: "count", value: 1 },
      },
    ]);
    const shop = { name: "shop", kind: "utility", voltage: "240 V", phase: "three-phase" };
    expect(
      reasons(cabin({ "pump.candidates[0].motor": three, "power.sources[1]": shop }), "half-horse, 8 stages"),
    ).toEqual([]);
    // One hair of service factor is enough, and no service factor is one.
    const most = heavy?.value.value ?? 0;
    const plate = (share: number) =>
      reasons(
        cabin({
          "pump.candidates[0].motor": {
            power: `${most * share} W`,
            voltage: "230 V",
            phase: "single-phase",
            fullLoadCurrent: "6 A",
          },
        }),
        "half-horse, 8 stages",
      );
    expect(plate(1.0001)).toEqual([]);
    expect(plate(0.9999)).toHaveLength(1);
  });
});

describe("a pump at a pressure", () => {
  test("has its curve's head and efficiency at its flow, and the power they make", () => {
    const { lift, pump } = workOf(ranch()).work;
    const curve = pump?.curve ?? expect.unreachable("no pump");
    const point = pointAt(lift, curve, psi(60)) ?? expect.unreachable("no flow");
    const { totalDynamicHead } = headTaken(lift, point.flow, psi(60));
    expect(point.head).toBeCloseTo(totalDynamicHead, 6);
    expect(point.head).toBe(pumpHeadAt(curve, point.flow));
    expect(point.efficiency).toBe(pumpEfficiencyAt(curve, point.flow));
    const { density } = lift.water;
    expect(point.shaftPower).toBeCloseTo(
      (density * STANDARD_GRAVITY * point.flow * point.head) / (point.efficiency ?? 0),
      6,
    );
    expect(point.pressure).toBe(psi(60));
    expect(pointAt(lift, curve, psi(1000))).toBeNull();
    const plain = workOf(
      cabin({
        "pump.candidates[0].curve": [0, 4, 8, 12].map((q, i) => ({
          flow: `${q} gpm`,
          head: `${[250, 238, 196, 118][i]} ft`,
        })),
      }),
    );
    expect(plain.work.stage.chosen?.atCutIn).toMatchObject({ efficiency: null, shaftPower: null });
    // An efficiency of nothing says nothing of the power.
    const nil = [0, 4, 8, 12].map((q, i) => ({
      flow: `${q} gpm`,
      head: `${[250, 238, 196, 118][i]} ft`,
      efficiency: "0 %",
    }));
    const useless = workOf(cabin({ "pump.candidates[0].curve": nil })).work;
    expect(useless.stage.chosen?.atCutIn).toMatchObject({ efficiency: 0, shaftPower: null });
    const dead = useless.pump?.curve ?? expect.unreachable("no pump");
    expect(greatestShaftPower(useless.lift, dead, gpm(12))).toBeNull();
  });

  test("asks the most of its motor anywhere from a tenth of its flow up", () => {
    const { lift, pump } = workOf(ranch()).work;
    const curve = pump?.curve ?? expect.unreachable("no pump");
    for (const to of [8, 16, 25]) {
      const powers = Array.from({ length: 900 }, (_, i) => {
        const flow = gpm(to * (0.1 + i / 999));
        const efficiency = pumpEfficiencyAt(curve, flow) ?? 1;
        return hydraulicPower({ flow, head: pumpHeadAt(curve, flow), density: lift.water.density }) / efficiency;
      });
      const most = greatestShaftPower(lift, curve, gpm(to)) ?? 0;
      expect(Math.abs(most / Math.max(...powers) - 1)).toBeLessThan(2e-3);
    }
    expect(greatestShaftPower(lift, curve, 0)).toBeNull();
    // What a curve says of less than a tenth of the flow is left out: there the efficiency may be anything.
    const odd = [0, 0.5, 4, 8, 12].map((q, i) => ({
      flow: `${q} gpm`,
      head: `${[250, 249, 238, 196, 118][i]} ft`,
      efficiency: `${[0, 0.1, 40, 57, 54][i]} %`,
    }));
    const strange = workOf(cabin({ "pump.candidates[0].curve": odd })).work;
    const low = strange.pump?.curve ?? expect.unreachable("no pump");
    const there = hydraulicPower({ flow: gpm(0.5), head: feet(249), density: strange.lift.water.density }) / 0.001;
    expect(greatestShaftPower(strange.lift, low, gpm(12)) ?? 0).toBeLessThan(there / 2);
  });
});

describe("the one taken", () => {
  test("has the acceptance grade's band of flow, its shutoff pressures and its cooling", () => {
    const { work, job } = workOf(ranch());
    const { lift, pump, stage } = work;
    const curve = pump?.curve ?? expect.unreachable("no pump");
    const chosen = stage.chosen ?? expect.unreachable("none");
    const { low, high } = operatingBand({
      curve,
      systemHead: (flow: VolumeFlow) => headTaken(lift, flow, psi(52)).totalDynamicHead,
      tolerance: acceptanceTolerance({ grade: "small pump" }),
    });
    if (low.state !== "running" || high.state !== "running") return expect.unreachable("no band");
    expect(chosen.flowBand).toEqual({ low: low.flow, high: high.flow });
    const weight = lift.water.density * STANDARD_GRAVITY;
    // 412 ft of the pump, the tank 2 ft up, the water at 81 or at 94 ft.
    expect(chosen.shutoffPressure).toBeCloseTo(weight * feet(412 - 83), 2);
    expect(chosen.usualShutoff).toBeCloseTo(weight * feet(412 - 96), 2);
    expect(chosen.cooling).toEqual(
      motorCooling({ flow: gpm(1), casingInsideDiameter: inches(6.065), motorDiameter: inches(3.88) }),
    );
    expect([chosen.atCutIn?.pressure, chosen.atCutOut?.pressure]).toEqual([psi(52), psi(72)]);
    expect(inGpm(leastUsedFlow(job, chosen))).toBeCloseTo(4, 9);
  });

  test("without a valve is cooled, at the least, by its flow at cut-out", () => {
    const cooling = (changes: Changes) => {
      const { stage } = workOf(cabin(changes)).work;
      return stage.chosen ?? expect.unreachable("none");
    };
    const by = (flow: VolumeFlow) =>
      motorCooling({ flow, casingInsideDiameter: inches(5), motorDiameter: inches(3.8) });
    const usual = cooling({});
    expect(usual.cooling).toEqual(by(usual.atCutOut?.flow ?? gpm(0)));
    // Where it does not reach cut-out, by that at cut-in; where it gives nothing, by none.
    const high = cooling({ "controls.cutOut": "95 psi" });
    expect(high.cooling).toEqual(by(high.atCutIn?.flow ?? gpm(0)));
    const dead = cooling({ "controls.cutIn": "100 psi", "controls.cutOut": "120 psi" });
    expect(dead.cooling).toEqual(by(gpm(0)));
    expect([dead.atCutIn, dead.atCutOut, dead.flowBand]).toEqual([null, null, null]);
    expect(cooling({ "pump.candidates[0].motor.coolingVelocity": "0.6 ft/s" }).cooling.leastVelocity).toBe(
      feetPerSecond(0.6),
    );
    // The usual level where no highest is given.
    expect(usual.shutoffPressure).toBe(usual.usualShutoff);
    const least = (at: object) => leastUsedFlow(workOf(cabin()).job, having(usual, at));
    expect(least({})).toBe(usual.atCutOut?.flow);
    expect(least({ atCutOut: null })).toBe(usual.atCutIn?.flow);
    expect(least({ atCutOut: null, atCutIn: null })).toBe(0);
  });

  test("a band needs both ends: a pump so weak that the weakest of its kind gives nothing has none", () => {
    // Just under the shutoff pressure of 210 ft less: the best pump gives a trickle, the worst none.
    const { lift } = workOf(cabin()).work;
    const shutoff = lift.water.density * STANDARD_GRAVITY * feet(210);
    const { stage } = workOf(
      cabin({ "controls.cutIn": `${0.995 * shutoff} Pa`, "controls.cutOut": `${shutoff + 1} Pa` }),
    ).work;
    expect(stage.chosen?.atCutIn?.flow).toBeGreaterThan(0);
    expect(stage.chosen?.flowBand).toBeNull();
    // One that runs out has the end of its curve for its most.
    const out = workOf(cabin({ "controls.cutIn": "5 psi", "controls.cutOut": "30 psi", "tank.elevation": "-20 ft" }))
      .work.stage;
    expect(inGpm(out.chosen?.flowBand?.high ?? gpm(0))).toBeGreaterThanOrEqual(12);
  });
});

test("the plan is of the pump taken", () => {
  const { stages } = planOf(ranch());
  const { work } = workOf(ranch());
  expect(stages.pump).toEqual(work.stage);
});
