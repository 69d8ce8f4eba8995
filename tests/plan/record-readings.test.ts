/**
 * How the readings of a record pass to the diagnosis: which are used and which are not, their uncertainties, and the flow
 * that a pressure read at an outlet stands for.
 */
import {
  type AsBuiltRecord,
  asBuiltRecord,
  diagnoseRecord,
  type Job,
  type Plan,
  planSystem,
  readJob,
} from "risingmain/plan";
import { pumpCurve } from "risingmain/pump";
import { feet, gpm, psi } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { diagnosisPlantOf } from "../../src/plan/diagnosis-plant.ts";
import { sortReadings } from "../../src/plan/record-readings.ts";
import { cabin, having, ranch, workOf } from "./jobs.ts";

/** m/s², exact by definition (CGPM 1901). */
const STANDARD_GRAVITY = 9.80665;

interface Known {
  readonly job: Job;
  readonly plan: Plan;
  readonly sorted: (
    readings: Readonly<Record<string, number>>,
    record?: (record: AsBuiltRecord) => AsBuiltRecord,
  ) => ReturnType<typeof sortReadings>;
}

function known(document: unknown): Known {
  const job = readJob(document);
  const plan = planSystem(job);
  return {
    job,
    plan,
    sorted: (readings, change = (record) => record) =>
      sortReadings({ job, stages: plan.stages, record: change(asBuiltRecord({ plan, readings })) }),
  };
}

const expectedOf = ({ plan }: Known, code: string) =>
  plan.commissioning.find((reading) => reading.code === code) ?? expect.unreachable(code);

describe("a reading", () => {
  test("that the diagnosis has by another name passes as it is, its band two uncertainties to the narrower side", () => {
    const at = known(cabin());
    const names = {
      "static-level": "static level",
      precharge: "precharge",
      "flow-at-cut-in": "flow",
      "pumping-level": "pumping level",
      "cut-in": "cut-in",
      "cut-out": "cut-out",
      "pressure-fall": "pressure fall",
      "tank-fill": "fill time",
    };
    const readings = Object.fromEntries(Object.keys(names).map((code) => [code, expectedOf(at, code).expected.value]));
    const { used, leftOut } = at.sorted(readings);
    expect(leftOut).toEqual([]);
    expect(Object.fromEntries(used.map(({ code, kind }) => [code, kind]))).toEqual(names);
    for (const { code, value, standardUncertainty } of used) {
      const { expected, low, high } = expectedOf(at, code);
      expect(value).toBe(expected.value);
      const side = Math.min(high.value - expected.value, expected.value - low.value);
      expect(standardUncertainty).toBeCloseTo(side / 2, 12);
    }
    expect(at.sorted({}).used).toEqual([]);
    // The narrower side counts, whichever it is.
    const high = (record: AsBuiltRecord) => ({
      ...record,
      readings: record.readings.map((each) =>
        each.code === "cut-in" ? having(each, { high: { kind: "pressure", value: each.expected.value + 600 } }) : each,
      ),
    });
    expect(at.sorted({ "cut-in": psi(30) }, high).used[0]?.standardUncertainty).toBeCloseTo(300, 6);
  });

  test("with no band to a side has a thousandth for its uncertainty", () => {
    const at = known(cabin());
    const pinch = (value: number) => (record: AsBuiltRecord) => ({
      ...record,
      readings: record.readings.map((reading) =>
        reading.code === "static-level"
          ? having(reading, { expected: { kind: "length", value }, low: { kind: "length", value } })
          : reading,
      ),
    });
    const u = (value: number) => at.sorted({ "static-level": 12 }, pinch(value)).used[0]?.standardUncertainty;
    expect(u(12)).toBeCloseTo(0.012, 12);
    expect(u(-12)).toBeCloseTo(0.012, 12);
    expect(u(0.5)).toBe(0.001);
  });

  test("of the bucket's time is the flow that filled it, unless the flow itself was read", () => {
    const at = known(cabin());
    const [bucket, flow] = ["bucket-time", "flow-at-cut-in"].map((code) => expectedOf(at, code).expected.value) as [
      number,
      number,
    ];
    const twice = at.sorted({ "bucket-time": 2 * bucket }).used;
    expect(twice.map(({ code, kind }) => [code, kind])).toEqual([["bucket-time", "flow"]]);
    // Twice the time, half the flow.
    expect(twice[0]?.value).toBeCloseTo(flow / 2, 12);
    const { expected, low } = expectedOf(at, "bucket-time");
    const u = (expected.value - low.value) / 2;
    // du/dt of q t₀ / t is q t₀ / t².
    expect(twice[0]?.standardUncertainty).toBeCloseTo(((flow / 2) * u) / (2 * bucket), 12);
    // A bucket that takes for ever has next to no flow, and a thousandth of the planned one for its uncertainty.
    expect(at.sorted({ "bucket-time": 5e3 * bucket }).used[0]?.standardUncertainty).toBeCloseTo(flow / 1000, 12);
    const both = at.sorted({ "bucket-time": bucket, "flow-at-cut-in": flow });
    expect(both.used.map(({ code }) => code)).toEqual(["flow-at-cut-in"]);
    expect(both.leftOut).toEqual([{ code: "bucket-time", reason: "The same test as the flow at cut-in." }]);
    const unplanned = (record: AsBuiltRecord) => ({
      ...record,
      readings: record.readings.filter(({ code }) => code !== "flow-at-cut-in"),
    });
    expect(at.sorted({ "bucket-time": bucket }, unplanned).used).toEqual([]);
  });

  test("of the current counts above full load alone", () => {
    const at = known(cabin());
    const { value } = expectedOf(at, "running-current").expected;
    expect(at.sorted({ "running-current": value * 1.01 }).used.map(({ kind }) => kind)).toEqual(["current"]);
    for (const amperes of [value, value * 0.5]) {
      const { used, leftOut } = at.sorted({ "running-current": amperes });
      expect(used).toEqual([]);
      expect(leftOut[0]?.reason).toMatch(/lightly loaded/);
    }
  });

  test("of the voltage is the first source's, or another's share of it", () => {
    const at = known(ranch({ "power.sources[1].voltage": "230 V", "power.sources[1].name": "line" }));
    const first = at.sorted({ "running-voltage-generator": 235, "running-voltage-line": 220 });
    expect(first.used.map(({ code, value }) => [code, value])).toEqual([["running-voltage-generator", 235]]);
    expect(first.leftOut[0]?.reason).toMatch(/^Another source/);
    const [second] = at.sorted({ "running-voltage-line": 220 }).used;
    expect(second?.value).toBeCloseTo((220 / 230) * 240, 9);
    // 5 % of 230 V, carried along: two uncertainties.
    expect(second?.standardUncertainty).toBeCloseTo((0.05 * 240) / 2, 9);
  });

  test("of the filling is throttled behind a valve that holds, and left out", () => {
    const valve = (setPressure: string) =>
      known(cabin({ "controls.regulatingValve": { setPressure, minimumFlow: "1 gpm" } }));
    const holds = valve("40 psi").sorted({ "tank-fill": 100 });
    expect(holds.used).toEqual([]);
    expect(holds.leftOut[0]?.reason).toMatch(/valve throttles the filling/);
    expect(
      valve("50 psi")
        .sorted({ "tank-fill": 100 })
        .used.map(({ kind }) => kind),
    ).toEqual(["fill time"]);
  });

  test("of what the valve holds is taken once, in the use of least flow in which it throttles", () => {
    const at = known(ranch());
    const uses = ["house and trough", "both hydrants", "ridge hydrant alone", "trough alone"];
    const all = Object.fromEntries(uses.map((use) => [`held-${use}`, psi(61)]));
    const { used, leftOut } = at.sorted(all);
    expect(used.map(({ code, kind }) => [code, kind])).toEqual([["held-trough alone", "regulated pressure"]]);
    expect(leftOut.map(({ code }) => code)).toEqual(uses.slice(0, 3).map((use) => `held-${use}`));
    for (const { reason } of leftOut) expect(reason).toMatch(/least flow/);
    const { "held-trough alone": _, ...rest } = all;
    expect(at.sorted(rest).used.map(({ code }) => code)).toEqual(["held-ridge hydrant alone"]);
    // Wide open, or with the switch open, it holds nothing of its own.
    for (const held of [
      { state: "holds", pressure: psi(60), mode: "open" },
      { state: "switch opens", fillFlow: 1 },
    ]) {
      const controls = having(at.plan.stages.controls, {
        held: at.plan.stages.controls.held.map((each) => having(each, { held })),
      });
      const record = asBuiltRecord({ plan: at.plan, readings: all });
      expect(sortReadings({ job: at.job, stages: { ...at.plan.stages, controls }, record }).used).toEqual([]);
    }
  });

  test("that has no like is left out and says why", () => {
    const at = known(cabin());
    const reasonOf = (code: string) => at.sorted({ [code]: expectedOf(at, code).expected.value }).leftOut[0]?.reason;
    expect(reasonOf("tank-draw")).toMatch(/precharge and switch points say the same/);
    const strange = (record: AsBuiltRecord) => ({
      ...record,
      readings: record.readings.map((reading) =>
        reading.code === "tank-draw" ? { ...reading, code: "taste" } : reading,
      ),
    });
    expect(at.sorted({ "tank-draw": 0.04 }, strange).leftOut).toEqual([
      { code: "taste", reason: "The diagnosis has no reading of its kind." },
    ]);
  });
});

describe("a pressure read at an outlet", () => {
  /** Head of a pressure, m. */
  const headIn = ({ plan }: Known) => {
    const { density } = plan.stages.site.water;
    return (pressure: number): number => pressure / (density * STANDARD_GRAVITY);
  };

  test("is the flow that the outlet, as wide open as planned, takes through the line as it is", () => {
    const at = known(cabin());
    const head = headIn(at);
    const outlet = at.plan.stages.layout.uses[0]?.outlets[0] ?? expect.unreachable("no outlet");
    const rise = feet(8);
    for (const read of [psi(20), psi(10), psi(30)]) {
      const { used, yard } = at.sorted({ "outlet-cabin-cabin": read });
      const [far] = used;
      expect(far).toMatchObject({ code: "outlet-cabin-cabin", kind: "far flow" });
      // Without a valve the tank stood anywhere between 30 and 50 psi: at the middle, ± the width over √12.
      const tank = psi(40);
      expect(far?.at).toBeCloseTo(tank, 6);
      const open = head(outlet.pressureHeld);
      const over = head(tank) - rise;
      const lost = over - head(read);
      const flow = gpm(5) * Math.sqrt(over / (lost + open));
      expect(far?.value).toBeCloseTo(flow, 12);
      // By the first derivative: half the relative change of lost + open.
      const { expected, low } = expectedOf(at, "outlet-cabin-cabin");
      const u = head(Math.hypot((expected.value - low.value) / 2, psi(20) / Math.sqrt(12)));
      expect(far?.standardUncertainty).toBeCloseTo((0.5 * flow * u) / (lost + open), 12);
      expect(yard).toEqual({
        rise,
        loss: { flow: gpm(5), headLoss: expect.closeTo(head(psi(30)) - rise - open, 9) },
        outlet: { flow: gpm(5), headLoss: open },
      });
    }
  });

  test("as planned is the planned flow, behind a valve with the pressure read at the tank", () => {
    const at = known(ranch());
    const trough = expectedOf(at, "outlet-trough alone-north trough").expected.value;
    const { used } = at.sorted({ "held-trough alone": psi(62), "outlet-trough alone-north trough": trough });
    const far = used.find(({ kind }) => kind === "far flow");
    expect(far?.value).toBeCloseTo(gpm(4), 9);
    expect(far?.at).toBe(psi(62));
    // Held and outlet each 5 %: two uncertainties.
    const head = headIn(at);
    const u = head(Math.hypot((psi(62) * 0.05) / 2, (trough * 0.05) / 2));
    const over = head(psi(62)) - feet(27 - 2);
    expect(far?.standardUncertainty).toBeCloseTo((0.5 * gpm(4) * u) / over, 9);
    // The same pressure at the outlet is the same flow through it, whatever was held at the tank; less of it is less.
    const less = at.sorted({ "held-trough alone": psi(55), "outlet-trough alone-north trough": trough }).used;
    expect(less.find(({ kind }) => kind === "far flow")?.value).toBeCloseTo(gpm(4), 9);
    const weak = at.sorted({ "held-trough alone": psi(62), "outlet-trough alone-north trough": trough / 2 }).used;
    expect(weak.find(({ kind }) => kind === "far flow")?.value).toBeLessThan(gpm(4));
    // With next to nothing at the tank no water rises to the trough, and no flow can be told.
    expect(at.sorted({ "held-trough alone": psi(1), "outlet-trough alone-north trough": 0 }).yard).toBeNull();
    // What the tank was at is not known: nothing said.
    const alone = at.sorted({ "outlet-trough alone-north trough": trough });
    expect([alone.used, alone.yard]).toEqual([[], null]);
    expect(alone.leftOut[0]?.reason).toMatch(/pressure at the tank known/);
  });

  test("is taken of one outlet: alone in its use, then with the most lost on the way", () => {
    const at = known(cabin());
    const read = (code: string) => expectedOf(at, code).expected.value;
    const codes = [
      "outlet-cabin-cabin",
      "outlet-garden tap-garden tap",
      "outlet-all outlets-cabin",
      "outlet-all outlets-garden tap",
    ];
    const all = Object.fromEntries(codes.map((code) => [code, read(code)]));
    const { used, leftOut } = at.sorted(all);
    expect(used.map(({ code }) => code)).toEqual(["outlet-cabin-cabin"]);
    expect(leftOut.map(({ code }) => code)).toEqual(codes.slice(1));
    for (const { reason } of leftOut) expect(reason).toMatch(/^One outlet speaks for the yard/);
    const { "outlet-cabin-cabin": _, ...rest } = all;
    expect(at.sorted(rest).used.map(({ code }) => code)).toEqual(["outlet-garden tap-garden tap"]);
    const { "outlet-garden tap-garden tap": __, ...shared } = rest;
    expect(at.sorted(shared).used.map(({ code }) => code)).toEqual(["outlet-all outlets-cabin"]);
  });

  test("says nothing where the line has no loss, or nothing can have flowed", () => {
    const at = known(cabin());
    const { stages } = at.plan;
    const record = (readings: Readonly<Record<string, number>>) => asBuiltRecord({ plan: at.plan, readings });
    const code = "outlet-cabin-cabin";
    /** The plan with the cabin's pressure as given, the record as read. */
    const farWith = (pressureHeld: number, read: number) => {
      const uses = stages.layout.uses.map((use) => ({
        ...use,
        outlets: use.outlets.map((outlet) => having(outlet, { pressureHeld })),
      }));
      const changed = { ...stages, layout: { ...stages.layout, uses } };
      return sortReadings({ job: at.job, stages: changed, record: record({ [code]: read }) }).yard;
    };
    const head = headIn(at);
    const still = (psi(30) / head(psi(30))) * (head(psi(30)) - feet(8));
    expect(farWith(still - 1000, psi(20))).not.toBeNull();
    // Less than a millimetre lost; no pressure planned at all.
    expect(farWith(still - 5, psi(20))).toBeNull();
    expect(farWith(still - 20, psi(20))).not.toBeNull();
    expect(farWith(0, psi(20))).toBeNull();
    expect(farWith(-100, psi(20))).toBeNull();
    // A pressure above what the tank has over the place, and the outlet as wide as planned: no line could do it.
    expect(farWith(psi(1), psi(60))).toBeNull();
    // An outlet the job no longer has stands nowhere.
    const moved = { ...at.job, outlets: at.job.outlets.map((outlet) => ({ ...outlet, name: `${outlet.name} 2` })) };
    expect(sortReadings({ job: moved, stages, record: record({ [code]: psi(20) }) }).yard).toBeNull();
    // The tank stood below the place: nothing flowed.
    const high = { ...at.job, places: at.job.places.map((place) => having(place, { elevation: feet(100) })) };
    const uses = stages.layout.uses.map((use) => ({
      ...use,
      outlets: use.outlets.map((outlet) => having(outlet, { pressureHeld: 1 })),
    }));
    expect(
      sortReadings({
        job: high,
        stages: { ...stages, layout: { ...stages.layout, uses } },
        record: record({ [code]: 1 }),
      }).yard,
    ).toBeNull();
  });
});

describe("the plant that is diagnosed", () => {
  test("is the plan's, its loss that of the pump's flow at cut-in", () => {
    const { job, plan } = known(ranch());
    const { stages } = plan;
    const { lift } = workOf(ranch()).work;
    const plant = diagnosisPlantOf(job, stages) ?? expect.unreachable("no plant");
    const curve = pumpCurve({ points: job.pump?.candidates?.[1]?.curve ?? [] });
    expect(plant).toMatchObject({
      pump: curve,
      well: { staticLevel: feet(94), law: stages.well.law },
      rise: feet(2),
      cutIn: psi(52),
      cutOut: psi(72),
      tank: { volume: stages.tank.volume, precharge: psi(50), atmosphere: stages.site.atmosphere },
      density: lift.water.density,
      voltage: 240,
      current: 12,
      threePhase: false,
      regulatedPressure: psi(62),
    });
    const at = stages.pump.chosen?.atCutIn ?? expect.unreachable("no flow");
    expect(plant.mainLoss.flow).toBe(at.flow);
    // What is left of the pump's head over water, drawdown, rise and pressure.
    const head = psi(52) / (lift.water.density * STANDARD_GRAVITY);
    const drawdown = feet(2) * (at.flow / gpm(1));
    expect(plant.mainLoss.headLoss).toBeCloseTo(at.head - feet(94 + 2) - drawdown - head, 5);
  });

  test("of a pump that gives nothing at cut-in has the duty flow's; of no pipe at all, next to none", () => {
    const { job, plan } = known(cabin());
    const { chosen } = plan.stages.pump;
    if (chosen === null) return expect.unreachable("no pump");
    const stages = { ...plan.stages, pump: { ...plan.stages.pump, chosen: { ...chosen, atCutIn: null } } };
    expect(diagnosisPlantOf(job, stages)?.mainLoss.flow).toBe(plan.stages.pump.dutyFlow);
    const still = { ...stages, pump: { ...stages.pump, dutyFlow: 0 as never } };
    expect(diagnosisPlantOf(job, still)?.mainLoss.headLoss).toBe(1e-6);
    expect(diagnosisPlantOf(job, plan.stages)).not.toHaveProperty("regulatedPressure");
    const three = having(job, {
      pump: {
        candidates: job.pump?.candidates?.map((each) =>
          having(each, { motor: having(each.motor, { phase: "three-phase" }) }),
        ),
      },
    });
    expect(diagnosisPlantOf(three, plan.stages)?.threePhase).toBe(true);
  });

  test("is none without a pump of the job, a plan of its power or a source", () => {
    const { job, plan } = known(cabin());
    const { stages } = plan;
    const { power } = stages;
    if (power === null) return expect.unreachable("no power");
    expect(diagnosisPlantOf(job, { ...stages, power: null })).toBeNull();
    expect(diagnosisPlantOf(job, { ...stages, power: { ...power, sources: [] } })).toBeNull();
    expect(diagnosisPlantOf({ ...job, pump: {} }, stages)).toBeNull();
    const { pump: _, ...bare } = job;
    expect(diagnosisPlantOf(bare, stages)).toBeNull();
    expect(diagnosisPlantOf(job, { ...stages, pump: { ...stages.pump, chosen: null } })).toBeNull();
    // A valve that never holds is none.
    const valve = known(cabin({ "controls.regulatingValve": { setPressure: "50 psi", minimumFlow: "1 gpm" } }));
    expect(diagnosisPlantOf(valve.job, valve.plan.stages)).not.toHaveProperty("regulatedPressure");
  });
});

test("a pump whose curve does not fall from no flow on runs no day and is not diagnosed", () => {
  // The first points all but level: carried back to no flow, the head rises no further.
  const curve = [
    [4, 250],
    [8, 249],
    [12, 200],
  ].map(([flow, head]) => ({ flow: `${flow} gpm`, head: `${head} ft` }));
  const job = readJob(cabin({ "pump.candidates[0].curve": curve }));
  const plan = planSystem(job);
  expect([plan.running, plan.stages.day]).toEqual([null, null]);
  const record = asBuiltRecord({ plan, readings: { "static-level": feet(40) } });
  expect(diagnoseRecord({ job, record })).toEqual({
    state: "cannot be diagnosed",
    reason: "The pump's curve does not fall all the way.",
    leftOut: [{ code: "static-level", reason: "The pump's curve does not fall all the way." }],
  });
});
