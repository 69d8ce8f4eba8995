/** Laws of the running system. */
import fc from "fast-check";
import { pumpCurve } from "risingmain/pump";
import { pipeMainLoss, type RunningSystem, type SystemEvent, simulate } from "risingmain/system";
import { bankDrawdown, tankCycle, worstDemandOnCurve } from "risingmain/tank";
import {
  type AbsolutePressure,
  type Area,
  type Density,
  type Duration,
  days,
  feet,
  type GaugePressure,
  gpm,
  hours,
  inches,
  type Length,
  minutes,
  psi,
  squareMetresPerSecond,
  usGallons,
  type VolumeFlow,
  watts,
} from "risingmain/units";
import { singleTestLaw } from "risingmain/well";
import { expect, test } from "vitest";
import { refused } from "../refused.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const density = 999.7 as Density;
const atmosphere = 101325 as AbsolutePressure;
const pump = pumpCurve({
  points: [0, 5, 10, 15, 19].map((q) => ({ flow: gpm(q), head: feet(400 - q * q), inputPower: watts(700 + 40 * q) })),
});
const valve = { setPressure: psi(50), minimumFlow: gpm(1) };
const onSwitch = { kind: "switch", cutIn: psi(40), cutOut: psi(60) } as const;
const speed = {
  kind: "variable speed",
  startPressure: psi(45),
  setPressure: psi(50),
  stopPressure: psi(56),
  minimumFlow: gpm(1.5),
} as const;
const BORE = 0.0168 as Area;
const system = (changes: Partial<RunningSystem> = {}, freeArea = 0 as Area): RunningSystem => ({
  pump,
  well: { staticLevel: feet(100), law: singleTestLaw({ flow: gpm(20), drawdown: feet(40) }), freeArea },
  rise: feet(5),
  mainLoss: [{ flow: gpm(10), headLoss: feet(6) }],
  control: onSwitch,
  tanks: [{ volume: usGallons(44), precharge: psi(38) }],
  atmosphere,
  density,
  ...changes,
});
const patterns = fc.array(fc.record({ duration: between(60, 7200), flow: between(0, 11) }), {
  minLength: 1,
  maxLength: 6,
});
const uses = patterns.map((list) =>
  list.map(({ duration, flow }) => ({ duration: duration as Duration, flow: gpm(flow) })),
);
const controls = fc.constantFrom<RunningSystem["control"]>(onSwitch, { ...onSwitch, valve }, speed);
const areas = fc.constantFrom(0 as Area, BORE);

test("water balance closes to a billionth, for every control and both kinds of well", () => {
  fc.assert(
    fc.property(uses, controls, areas, (demand, control, area) => {
      const run = simulate({ system: system({ control }, area), demand, duration: hours(12) });
      expect(run.state).toBe("completed");
      expect(Math.abs(run.balanceError)).toBeLessThan(1e-9);
    }),
    { numRuns: 40 },
  );
});

test("counting cycles by division gives what working through each gives", () => {
  fc.assert(
    fc.property(uses, areas, (demand, area) => {
      const job = { system: system({}, area), demand, duration: hours(30), keepDays: 3 };
      const each = simulate({ ...job, keepEvents: 100_000 });
      const divided = simulate({ ...job, keepEvents: 0 });
      expect(divided.starts).toBe(each.starts);
      expect(divided.eventCount).toBe(each.eventCount);
      expect(divided.mostStartsInAnHour).toBe(each.mostStartsInAnHour);
      expect(divided.startsByDay).toEqual(each.startsByDay);
      for (const name of ["pumped", "runTime", "energy", "refused"] as const) {
        expect(Math.abs((divided[name] ?? 0) - (each[name] ?? 0))).toBeLessThan(1e-8 * (1 + (each[name] ?? 0)));
      }
    }),
    { numRuns: 30 },
  );
});

test("starts of each hour and day are counted by division as they are one by one", () => {
  fc.assert(
    fc.property(between(0.3, 10), between(3, 60), (use, gallons) => {
      const job = {
        system: system({ tanks: [{ volume: usGallons(gallons), precharge: psi(38) }] }),
        demand: [{ duration: days(9), flow: gpm(use) }],
        duration: days(9),
        keepDays: 9,
      };
      const each = simulate({ ...job, keepEvents: 1_000_000 });
      const divided = simulate({ ...job, keepEvents: 0 });
      expect(divided.startsByDay).toEqual(each.startsByDay);
      expect(divided.mostStartsInAnHour).toBe(each.mostStartsInAnHour);
      expect(divided.mostStartsInADay).toBe(each.mostStartsInADay);
      expect(each.startsByDay.reduce((sum, n) => sum + n, 0)).toBe(each.starts);
    }),
    { numRuns: 20 },
  );
});

test("with a constant flow the cycle is the closed form's, to 1e-12, and half the flow is the worst use", () => {
  const flow = gpm(7);
  const limited = system({ flowLimit: flow });
  const { usable } = bankDrawdown({ ...limited, cutIn: psi(40), cutOut: psi(60) });
  const cycleAt = (share: number): number => {
    const demand = (share * flow) as VolumeFlow;
    const run = simulate({ system: limited, demand: [{ duration: days(1), flow: demand }], duration: hours(3) });
    const [first, off, second] = run.events as readonly [SystemEvent, SystemEvent, SystemEvent];
    const cycle = tankCycle({ usable, pumpFlow: flow, demand });
    if (cycle.state !== "cycling") throw new Error(cycle.state);
    expect(Math.abs((off.time - first.time) / cycle.runTime - 1)).toBeLessThan(1e-12);
    expect(Math.abs((second.time - off.time) / cycle.offTime - 1)).toBeLessThan(1e-12);
    return second.time - first.time;
  };
  const worst = cycleAt(0.5);
  for (const share of [0.1, 0.3, 0.49, 0.51, 0.7, 0.9]) expect(cycleAt(share)).toBeGreaterThan(worst);
});

test("the worst use found from the pump's curve starts the pump most in a run", () => {
  const running = system();
  const k = (feet(106) / gpm(10) ** 2) as number;
  const B = feet(40) / gpm(20);
  const pumpFlowAt = (p: GaugePressure): VolumeFlow => {
    const head = feet(295) - p / (density * 9.80665);
    return ((-B + Math.sqrt(B * B + 4 * k * head)) / (2 * k)) as VolumeFlow;
  };
  const tank = { volume: usGallons(44), precharge: psi(38), atmosphere, cutIn: psi(40), cutOut: psi(60) };
  const worst = worstDemandOnCurve({ ...tank, pumpFlowAt });
  if (worst.state !== "cycles") throw new Error(worst.state);
  const cycleAt = (flow: number): number =>
    simulate({ system: running, demand: [{ duration: days(1), flow: flow as VolumeFlow }], duration: days(1) })
      .shortestCycle ?? Number.POSITIVE_INFINITY;
  expect(Math.abs(cycleAt(worst.demand) / worst.cycleTime - 1)).toBeLessThan(1e-9);
  expect(cycleAt(worst.demand * 0.97)).toBeGreaterThan(worst.cycleTime);
  expect(cycleAt(worst.demand * 1.03)).toBeGreaterThan(worst.cycleTime);
});

test("a bigger tank never gives more starts at a steady use", () => {
  fc.assert(
    fc.property(between(10, 300), between(1, 3), between(0.1, 11), areas, (gallons, factor, use, area) => {
      const starts = (volume: number): number =>
        simulate({
          system: system({ tanks: [{ volume: usGallons(volume), precharge: psi(38) }] }, area),
          demand: [{ duration: days(1), flow: gpm(use) }],
          duration: days(1),
          keepEvents: 0,
        }).starts;
      expect(starts(gallons * factor)).toBeLessThanOrEqual(starts(gallons));
    }),
    { numRuns: 40 },
  );
});

test("starts never come closer than the tank and the flows allow", () => {
  fc.assert(
    fc.property(uses, controls, areas, (demand, control, area) => {
      const job = system({ control }, area);
      const [cutIn, cutOut] =
        control.kind === "switch" ? [control.cutIn, control.cutOut] : [control.startPressure, control.stopPressure];
      const { usable } = bankDrawdown({ ...job, cutIn, cutOut });
      const run = simulate({ system: job, demand, duration: hours(12) });
      // Filled at the pump's most and emptied at the most used, whatever order they come in.
      const most = Math.max(...demand.map(({ flow }) => flow));
      if (run.shortestCycle !== null) {
        expect(run.shortestCycle).toBeGreaterThan(usable / pump.runoutFlow + usable / most - 1e-6);
      }
    }),
    { numRuns: 40 },
  );
});

test("recovery never passes the static level, and the level never lies above it", () => {
  fc.assert(
    fc.property(uses, controls, (demand, control) => {
      const run = simulate({
        system: system({ control }, BORE),
        demand,
        duration: hours(8),
        sampleEvery: minutes(3),
        start: { drawdown: feet(30) },
      });
      for (const { depth } of [...run.samples, ...run.events]) expect(depth).toBeGreaterThanOrEqual(feet(100));
    }),
    { numRuns: 25 },
  );
});

test("a valve or a drive runs on where the bare switch cycles", () => {
  const demand = [{ duration: days(1), flow: gpm(5) }];
  const starts = (control: RunningSystem["control"]): number =>
    simulate({ system: system({ control }), demand, duration: days(1) }).starts;
  expect(starts(onSwitch)).toBeGreaterThan(100);
  expect(starts({ ...onSwitch, valve })).toBe(1);
  expect(starts(speed)).toBe(1);
});

test("the valve holds its set pressure while a hose runs, and the switch opens once it is shut", () => {
  const run = simulate({
    system: system({ control: { ...onSwitch, valve } }),
    demand: [
      { duration: hours(1), flow: gpm(5) },
      { duration: hours(1), flow: gpm(0) },
    ],
    duration: hours(2),
    sampleEvery: minutes(30),
  });
  expect(run.samples[1]?.pressure).toBe(psi(50));
  expect(run.samples[3]?.pressure).toBe(psi(60));
  expect(run.events.map(({ kind }) => kind)).toEqual(["pump starts", "pump stops"]);
});

test("a drive uses less energy than a throttled pump for the same water", () => {
  const demand = [{ duration: days(1), flow: gpm(4) }];
  const energy = (control: RunningSystem["control"]): number =>
    simulate({ system: system({ control }), demand, duration: days(1) }).energy ?? 0;
  expect(energy(speed)).toBeLessThan(energy({ ...onSwitch, valve }));
});

test("a drive's energy follows the affinity laws: power as the cube of the speed that makes the head", () => {
  const use = gpm(4);
  const run = simulate({
    system: system({ control: speed }),
    demand: [{ duration: hours(1), flow: use }],
    duration: hours(1),
    start: { pressure: speed.setPressure, pumpRunning: true },
  });
  // On H = 400 ft − b Q² a speed r makes r² 400 ft − b Q², whatever the flow.
  const b = feet(1) / gpm(1) ** 2;
  const head = speed.setPressure / (density * 9.80665) + feet(105) + use * (feet(40) / gpm(20)) + 0.16 * feet(6);
  const r = Math.sqrt((head + b * use ** 2) / feet(400));
  const power = r ** 3 * (700 + 40 * (use / gpm(1) / r));
  expect(Math.abs((run.energy ?? 0) / (power * 3600) - 1)).toBeLessThan(1e-9);
});

test("a weak well trips the low-level cut-off, rests its delay, and never draws below the stop", () => {
  const lowLevel = { stopLevel: feet(150), restartLevel: feet(115), restartDelay: minutes(15) };
  const weak = system({ lowLevel }, BORE);
  const run = simulate({
    system: { ...weak, well: { ...weak.well, law: singleTestLaw({ flow: gpm(4), drawdown: feet(60) }) } },
    demand: [{ duration: days(1), flow: gpm(6) }],
    duration: days(1),
    sampleEvery: minutes(1),
  });
  const trips = run.events.filter(({ kind }) => kind === "low level");
  expect(trips.length).toBeGreaterThan(5);
  for (const { time } of trips) {
    const next = run.events.find((event) => event.time > time && event.kind === "pump starts");
    if (next !== undefined) expect(next.time - time).toBeGreaterThanOrEqual(minutes(15) - 1e-6);
  }
  for (const { depth } of run.samples) expect(depth).toBeLessThanOrEqual(feet(150) + 1e-9);
  expect(run.refused).toBeGreaterThan(0);
  expect(Math.abs(run.balanceError)).toBeLessThan(1e-9);
});

test("a cut-off that would stop where it starts is refused by its path in the system", () => {
  const lowLevel = { stopLevel: feet(150), restartLevel: feet(150), restartDelay: minutes(15) };
  const running = { demand: [{ duration: days(1), flow: gpm(6) }], duration: days(1) };
  expect(refused(() => simulate({ ...running, system: system({ lowLevel }) }))).toBe("system.lowLevel.restartLevel");
});

test("without a cut-off the run ends where the pump runs dry", () => {
  const weak = system({}, BORE);
  const well = { ...weak.well, law: singleTestLaw({ flow: gpm(4), drawdown: feet(60) }), intake: feet(160) };
  const run = simulate({
    system: { ...weak, well },
    demand: [{ duration: days(1), flow: gpm(6) }],
    duration: days(1),
  });
  expect(run.state).toBe("ran dry");
  expect(run.events.at(-1)?.kind).toBe("ran dry");
  expect(run.time).toBeLessThan(days(1));
});

test("a precharge at the cut-out stores nothing, and it says so", () => {
  const tanks = [{ volume: usGallons(44), precharge: psi(60) }];
  const run = simulate({ system: system({ tanks }), demand: [{ duration: days(1), flow: gpm(3) }], duration: days(1) });
  expect(run.state).toBe("no storage");
});

test("more used than the pump can give is refused, and counted", () => {
  const run = simulate({ system: system(), demand: [{ duration: hours(1), flow: gpm(30) }], duration: hours(2) });
  expect(run.refused).toBeGreaterThan(0);
  expect(Math.abs(run.delivered + run.refused - gpm(30) * hours(2))).toBeLessThan(1e-9);
  expect(run.end.pressure).toBe(0);
});

test("a pump that runs past the end of its curve is said to", () => {
  const short = pumpCurve({ points: [0, 3, 6, 9].map((q) => ({ flow: gpm(q), head: feet(400 - q * q) })) });
  const day = { demand: [{ duration: days(1), flow: gpm(3) }], duration: hours(2) };
  expect(simulate({ system: system({ pump: short }), ...day }).insideRange).toBe(false);
  expect(simulate({ system: system(), ...day }).insideRange).toBe(true);
});

test("with a well that stores, where the use is cut into segments does not move the events", () => {
  fc.assert(
    fc.property(between(0.5, 10), between(7, 900), controls, (use, seconds, control) => {
      const timesIn = (duration: Duration): readonly number[] =>
        simulate({
          system: system({ control }, BORE),
          demand: [{ duration, flow: gpm(use) }],
          duration: hours(4),
        }).events.map(({ time }) => time);
      const whole = timesIn(hours(4));
      const parts = timesIn(seconds as Duration);
      expect(parts).toHaveLength(whole.length);
      for (const [i, time] of whole.entries()) expect(Math.abs((parts[i] as number) - time)).toBeLessThan(1e-6 * time);
    }),
    { numRuns: 40 },
  );
});

test("too few steps allowed is said", () => {
  const demand = [{ duration: days(1), flow: gpm(3) }];
  const run = simulate({ system: system(), demand, duration: days(1), mostSteps: 10, keepEvents: 1000 });
  expect(run.state).toBe("too many steps");
});

test("the line through a main's points keeps within a thousandth of the law between them", () => {
  const pipe = {
    insideDiameter: inches(1.38),
    length: feet(300),
    roughness: feet(0.000005),
    viscosity: squareMetresPerSecond(1.306e-6),
  };
  const points = pipeMainLoss({ ...pipe, upTo: gpm(20) });
  expect(points).toHaveLength(40);
  expect(points.every(({ headLoss }, i) => i === 0 || headLoss > (points[i - 1]?.headLoss as Length))).toBe(true);
  // A coarse main and a fine one, run alike: the events agree to a thousandth.
  const fine = pipeMainLoss({ ...pipe, upTo: gpm(19) });
  const time = (mainLoss: RunningSystem["mainLoss"]): number =>
    simulate({ system: system({ mainLoss }), demand: [{ duration: days(1), flow: gpm(3) }], duration: hours(2) })
      .events[1]?.time ?? 0;
  expect(Math.abs(time(points) / time(fine) - 1)).toBeLessThan(1e-4);
});
