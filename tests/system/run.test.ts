/** What a run keeps and counts: samples, stretches, cycles by division, and its ends. */
import { type Simulation, type SimulationInput, simulate } from "risingmain/system";
import { describe, expect, test } from "vitest";
import { changed } from "../changed.ts";
import { plainJob } from "./jobs.ts";

const withAll = (changes: Readonly<Record<string, unknown>>): SimulationInput =>
  Object.entries(changes).reduce((job, [path, value]) => changed(job, path, value), plainJob());
const run = (changes: Readonly<Record<string, unknown>>): Simulation => simulate(withAll(changes));
const uses = (...list: readonly (readonly [minutes: number, litresASecond: number])[]) =>
  list.map(([minutes, flow]) => ({ duration: 60 * minutes, flow: flow / 1000 }));

const STEADY = { staticLevel: 30, law: { aquiferLoss: 8e3, wellLoss: 1e6 } };
const STORING = { ...STEADY, freeArea: 0.03 };
const WELLS = [
  ["a level that follows", STEADY],
  ["a bore that stores", STORING],
] as const;
const valve = { setPressure: 345e3, minimumFlow: 6e-5 };
const HELD = { kind: "switch", cutIn: 280e3, cutOut: 410e3, valve };

describe.each(WELLS)("%s", (_, well) => {
  test("a sample is how a run that ends there ends", () => {
    const job = { "system.well": well, demand: uses([7, 0.3], [4, 1.3], [3, 0]) };
    const { samples, end, time } = run({ ...job, duration: 1000, sampleEvery: 170 });
    // The first as it begins, the last before its end.
    expect(samples.map((sample) => sample.time)).toEqual([0, 170, 340, 510, 680, 850]);
    expect([end.time, time]).toEqual([1000, 1000]);
    for (const sample of samples.slice(1)) {
      const alone = run({ ...job, duration: sample.time }).end;
      expect(sample.pumpRunning).toBe(alone.pumpRunning);
      for (const field of ["pressure", "water", "depth", "flow"] as const) {
        expect(Math.abs(sample[field] - alone[field])).toBeLessThanOrEqual(1e-7 * Math.abs(alone[field]));
      }
    }
    expect(run({ ...job, duration: 1000 }).samples).toEqual([]);
    expect(run({ ...job, duration: 340, sampleEvery: 170 }).samples.length).toBe(2);
    // A job of a few seconds, sampled more slowly than it lasts.
    expect(run({ ...job, duration: 5, sampleEvery: 60 }).samples.map((sample) => sample.time)).toEqual([0]);
  });

  test("cycles alike, counted by division, leave what working through each leaves", () => {
    for (const demand of [uses([600, 0.3]), uses([47, 0.3], [5, 0], [90, 0.1]), uses([300, 0.5], [300, 1.4])]) {
      const job = { "system.well": well, demand, duration: 8 * 3600, keepDays: 1 };
      const each = run({ ...job, keepEvents: 10_000 });
      const divided = run({ ...job, keepEvents: 0 });
      expect(divided.events).toEqual([]);
      expect(each.events.length).toBe(each.eventCount);
      for (const count of ["starts", "eventCount", "mostStartsInAnHour", "mostStartsInADay"] as const) {
        expect([count, divided[count]]).toEqual([count, each[count]]);
      }
      expect(divided.startsByDay).toEqual(each.startsByDay);
      expect(divided.end.pumpRunning).toBe(each.end.pumpRunning);
      const near = (a: number | null, b: number | null) =>
        expect(Math.abs((a ?? 0) - (b ?? 0))).toBeLessThanOrEqual(1e-6 * Math.abs(b ?? 0) + 1e-12);
      for (const sum of [
        "time",
        "runTime",
        "energy",
        "pumped",
        "delivered",
        "refused",
        "storedChange",
        "shortestCycle",
        "shortestRun",
        "startRate",
      ] as const) {
        near(divided[sum], each[sum]);
      }
      near(divided.end.pressure, each.end.pressure);
    }
  });

  test("trips of the cut-off are not taken for cycles alike", () => {
    const job = {
      "system.well": { ...well, law: { aquiferLoss: 2.5e4, wellLoss: 4e6 } },
      "system.lowLevel": { stopLevel: 36.5, restartLevel: 31, restartDelay: 120 },
      demand: uses([600, 0.5]),
      duration: 6 * 3600,
    };
    const [each, divided] = [run({ ...job, keepEvents: 10_000 }), run({ ...job, keepEvents: 0 })];
    expect(each.events.some(({ kind }) => kind === "low level")).toBe(true);
    expect([divided.starts, divided.eventCount]).toEqual([each.starts, each.eventCount]);
    expect(divided.pumped).toBeCloseTo(each.pumped, 6);
  });

  test("cycles by division need few stretches, but not where samples are asked for", () => {
    const job = {
      "system.well": well,
      demand: uses([1440, 0.3]),
      duration: 30 * 86_400,
      keepEvents: 0,
      mostSteps: 3000,
    };
    expect(run(job).state).toBe("completed");
    expect(run({ ...job, keepEvents: 1e6 }).state).toBe("too many steps");
    expect(run({ ...job, duration: 86_400, mostSteps: 1e6, sampleEvery: 43_200 })).toMatchObject({
      state: "completed",
      starts: run({ ...job, duration: 86_400 }).starts,
    });
    expect(run({ ...job, duration: 36_000, mostSteps: 1e6, sampleEvery: 900 }).samples.length).toBe(40);
  });

  test("runs and cycles are the shortest between the events", () => {
    const { events, shortestRun, shortestCycle, starts, startRate, time } = run({
      "system.well": well,
      demand: uses([9, 0.3], [4, 0.8], [20, 0.1]),
    });
    const at = (...kinds: readonly string[]) =>
      events.filter(({ kind }) => kinds.includes(kind)).map((event) => event.time);
    const begun = at("pump starts");
    const cycles = begun.slice(1).map((start, i) => start - (begun[i] as number));
    const runs = at("pump stops", "low level").map(
      (stop) => stop - Math.max(...begun.filter((start) => start <= stop)),
    );
    expect([shortestCycle, shortestRun]).toEqual([Math.min(...cycles), Math.min(...runs)]);
    expect([starts, startRate]).toEqual([begun.length, begun.length / time]);
  });

  test("a use held by a valve for a month is one flow, one power, and hardly a step", () => {
    const held = run({
      "system.well": well,
      "system.control": HELD,
      demand: uses([1440, 0.5]),
      duration: 30 * 86_400,
      start: { pressure: 345e3, pumpRunning: true, drawdown: 8e3 * 5e-4 + 1e6 * 25e-8 },
      mostSteps: 300,
    });
    expect(held).toMatchObject({ state: "completed", starts: 0, startRate: 0, shortestRun: null, shortestCycle: null });
    expect(held.pumped / (5e-4 * 30 * 86_400)).toBeCloseTo(1, 9);
    // 700 W and 400 W more a litre a second.
    expect((held.energy ?? 0) / (900 * 30 * 86_400)).toBeCloseTo(1, 9);
    expect(held.end).toMatchObject({
      pressure: 345e3,
      flow: expect.closeTo(5e-4, 9),
      depth: expect.closeTo(34.25, 6),
      pumpRunning: true,
    });
    expect(held.runTime).toBeCloseTo(30 * 86_400, 3);
  });

  test("stretches are counted against what is allowed", () => {
    // At rest under no use: one stretch for each segment.
    const still = { "system.well": well, demand: uses([10, 0], [20, 0], [30, 0]), duration: 3600 };
    expect(run({ ...still, mostSteps: 3 })).toMatchObject({ state: "completed", time: 3600 });
    expect(run({ ...still, mostSteps: 2 })).toMatchObject({ state: "too many steps", time: 1800 });
  });

  test("a use of minus nought is none", () => {
    const of = (flow: number) => run({ "system.well": well, demand: [{ duration: 600, flow }] });
    expect(of(-0)).toEqual(of(0));
    expect(of(0)).toMatchObject({ delivered: 0, refused: 0, pumped: 0, starts: 0, balanceError: 0 });
  });

  test("where energy is counted, and where it is not", () => {
    const told = ({ energy, energyAt }: Simulation) => [energy === null, energyAt];
    expect(told(run({ "system.well": well }))).toEqual([false, "shaft"]);
    expect(told(run({ "system.well": well, "system.motorEfficiency": 0.7 }))).toEqual([false, "wire"]);
    expect(run({ "system.well": well, "system.pump.inputPower": undefined }).energy).toBeNull();
  });

  test("past the end of the curve is said, a valve that limits the flow is not", () => {
    const inside = (changes: object) => run({ "system.well": well, demand: uses([60, 3]), ...changes }).insideRange;
    // At the pressure of the open air the pump would give more than its curve has: 30 m at its end lift 32.
    const shallow = { ...well, staticLevel: 1 };
    expect(inside({ "system.well": shallow })).toBe(false);
    expect(inside({})).toBe(true);
    expect(inside({ "system.well": shallow, "system.flowLimit": 1e-3 })).toBe(true);
    expect(inside({ "system.well": shallow, "system.flowLimit": 2e-3 })).toBe(false);
    expect(inside({ "system.well": shallow, "system.flowLimit": 1.5e-3 })).toBe(false);
    // Over it from the very start.
    expect(
      run({ "system.well": shallow, demand: uses([60, 3]), duration: 1e-3, start: { pressure: 0 } }).insideRange,
    ).toBe(false);
  });

  test("volumes add up: pumped is delivered and stored, wanted is delivered and refused", () => {
    const all = run({ "system.well": well, demand: uses([20, 0.3], [20, 2.5], [20, 0.1]), start: { pressure: 300e3 } });
    expect(all.pumped - all.delivered - all.storedChange).toBeCloseTo(0, 9);
    expect(all.delivered + all.refused).toBeCloseTo(2 * 1200 * (0.3e-3 + 2.5e-3 + 0.1e-3), 9);
    expect(all.refused).toBeGreaterThan(0);
    expect(all.balanceError).toBe(
      (all.pumped - all.delivered - all.storedChange) / Math.max(all.pumped, all.delivered),
    );
    // Boyle's law at the start: 366.325 of 401.325 kPa of air.
    expect(all.end.water - all.storedChange).toBeCloseTo(0.3 * (1 - 366_325 / 401_325), 12);
  });
});

test("a bore rises by its closed forms: an exponential of B A, a straight line of inflow by C alone", () => {
  const risen = (law: object, seconds: number) =>
    run({
      "system.well": { staticLevel: 30, law, freeArea: 0.05 },
      demand: uses([60, 0]),
      duration: seconds,
      start: { drawdown: 6 },
    }).end.depth - 30;
  for (const t of [10, 100, 900]) {
    expect(risen({ aquiferLoss: 8e3, wellLoss: 0 }, t)).toBeCloseTo(6 * Math.exp(-t / (8e3 * 0.05)), 12);
    // s = C Q², 2 C A dQ/dt = −1: Q₀ = √(6/5e6) = 1.0954e-3, to nothing in 548 s.
    const q = Math.max(0, Math.sqrt(6 / 5e6) - t / (2 * 5e6 * 0.05));
    expect(risen({ aquiferLoss: 0, wellLoss: 5e6 }, t)).toBeCloseTo(5e6 * q * q, 9);
    // Both: B ln(Q₀/Q) + 2 C (Q₀ − Q) = t/A.
    const [B, C] = [4e3, 3e6];
    const flow = (s: number) => (Math.sqrt(B * B + 4 * C * s) - B) / (2 * C);
    const [before, now] = [flow(6), flow(risen({ aquiferLoss: B, wellLoss: C }, t))];
    expect(B * Math.log(before / now) + 2 * C * (before - now)).toBeCloseTo(t / 0.05, 5);
  }
  // At rest at the static level it stays there.
  expect(run({ "system.well": STORING, demand: uses([60, 0]) }).end.depth).toBe(30);
});

test("held off till the bore has risen to the restart, if that is later than the delay", () => {
  const law = { aquiferLoss: 2.5e4, wellLoss: 0 };
  const next = (restartLevel: number, restartDelay: number): number => {
    const { events } = run({
      "system.well": { staticLevel: 30, law, freeArea: 0.05 },
      "system.lowLevel": { stopLevel: 36, restartLevel, restartDelay },
      demand: uses([90, 1]),
      duration: 5400,
    });
    const trip = events.findIndex(({ kind }) => kind === "low level");
    const again = events.slice(trip).find(({ kind }) => kind === "pump starts");
    return (again?.time ?? Infinity) - (events[trip]?.time ?? 0);
  };
  // From 6 m to 1 m by an exponential of 1250 s: 1250 ln 6 = 2240 s.
  expect(next(31, 60)).toBeCloseTo(1250 * Math.log(6), 6);
  expect(next(31, 2500)).toBeCloseTo(2500, 9);
  // The static level is never quite reached again.
  expect(next(30, 60)).toBe(Infinity);
  // A level that follows is back at once where the restart lies under it, and never where it lies at it.
  const following = (restartLevel: number) =>
    run({
      "system.well": { staticLevel: 30, law },
      "system.lowLevel": { stopLevel: 36, restartLevel, restartDelay: 60 },
      demand: uses([90, 1]),
      duration: 1200,
    }).starts;
  expect([following(30) === 1, following(30.001) > 1]).toEqual([true, true]);
});

test("the pressure over a range of flows that a regulator holds is met at the flow used", () => {
  const at = (flow: number) =>
    run({
      "system.control": HELD,
      demand: uses([60, flow]),
      duration: 1,
      sampleEvery: 0.5,
      start: { pressure: 345e3, pumpRunning: true },
    }).samples.map((sample) => Number(sample.flow.toPrecision(9)));
  expect(at(0.5)).toEqual([5e-4, 5e-4]);
  expect(at(0.06)).toEqual([6e-5, 6e-5]);
  // Less than its least flow is not given, nor more than the pump has at that pressure.
  expect(at(0.01)).toEqual([6e-5, 6e-5]);
  expect(at(2)[0]).toBeLessThan(1.2e-3);
});

test("a stop above the static level trips at every start", () => {
  const { events } = run({
    "system.lowLevel": { stopLevel: 10, restartLevel: 5, restartDelay: 60 },
    demand: uses([60, 0.2]),
    start: { pressure: 3e5 },
  });
  expect(events.slice(0, 2).map(({ kind }) => kind)).toEqual(["pump starts", "low level"]);
});

test("a pump at its stop does not run, whatever is said of it", () => {
  const { events, starts } = run({ demand: uses([60, 0.2]), duration: 3600, start: { pumpRunning: true } });
  expect([events[0]?.kind, starts]).toEqual(["pump starts", run({ demand: uses([60, 0.2]), duration: 3600 }).starts]);
});

test("a tank so high that it never takes water changes nothing", () => {
  const one = { volume: 0.3, precharge: 265e3 };
  // 60 m up, its air at 100 kPa: it opens at 688 kPa, and its pressure is none at all at 487.
  const two = run({ "system.tanks": [one, { volume: 0.2, precharge: 100e3, elevation: 60 }], demand: uses([60, 0.3]) });
  const alone = run({ demand: uses([60, 0.3]) });
  expect(two.events.map(({ kind }) => kind)).toEqual(alone.events.map(({ kind }) => kind));
  two.events.forEach(({ time }, i) => {
    expect(time / (alone.events[i]?.time ?? 0)).toBeCloseTo(1, 9);
  });
});

test("nothing is stored between start and stop: a charge at the stop, or a start over it", () => {
  const state = (changes: Readonly<Record<string, unknown>>) => run({ duration: 60, ...changes }).state;
  expect(state({ "system.tanks[0].precharge": 409e3 })).toBe("completed");
  expect(state({ "system.tanks[0].precharge": 410e3 })).toBe("no storage");
  expect(state({ "system.tanks[0].precharge": 420e3 })).toBe("no storage");
  // 20 m up the hill a charge of 215 kPa opens at 411 kPa.
  expect(state({ "system.tanks[0]": { volume: 0.3, precharge: 215e3, elevation: 20 } })).toBe("no storage");
  const started = run({ "system.tanks[0].precharge": 410e3, start: { pressure: 3e5, pumpRunning: true } });
  expect(started.end.pumpRunning).toBe(false);
  expect(run({ "system.tanks[0].precharge": 410e3 })).toMatchObject({
    time: 0,
    starts: 0,
    startRate: 0,
    eventCount: 0,
  });
});

test("a bore that fills within a second follows the flow: B A and 2 C Q A of it", () => {
  // 5e3 s/m² of 2e-4 m² are a second.
  const depth = (freeArea: number, law: object = { aquiferLoss: 5e3, wellLoss: 0 }) =>
    run({
      "system.well": { staticLevel: 30, law, freeArea },
      demand: uses([10, 1]),
      duration: 0.5,
      start: { pressure: 250e3, drawdown: 3 },
    }).end.depth;
  expect(depth(1.99e-4) - 30).toBeCloseTo(depth(0) - 30, 12);
  expect(Math.abs(depth(2.01e-4) - depth(0))).toBeGreaterThan(0.1);
  // 2 × 1e6 × 1.5e-3 = 3e3 s/m².
  const bent = { aquiferLoss: 2e3, wellLoss: 1e6 };
  expect(depth(1.99e-4, bent)).toBeCloseTo(depth(0, bent), 12);
  expect(Math.abs(depth(2.01e-4, bent) - depth(0, bent))).toBeGreaterThan(0.1);
});

test("a storing well is worked through in a bounded number of steps", () => {
  const steps = (changes: Readonly<Record<string, unknown>>) => {
    const job = {
      "system.well": STORING,
      demand: uses([7, 0.3], [11, 0.05], [9, 0.75], [13, 0], [5, 1.3], [10, 0.15]),
      duration: 3300,
      ...changes,
    };
    return (mostSteps: number) => run({ ...job, mostSteps }).state;
  };
  // Some ten steps of the fifth order for each event and use, twice that where a valve comes to its pressure and leaves it.
  expect(steps({})(105)).toBe("completed");
  expect(steps({ "system.control": HELD })(200)).toBe("completed");
  expect(steps({})(20)).toBe("too many steps");
});
