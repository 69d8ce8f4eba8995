/** Every volume, energy, event and end of a run against the same system by small steps of time. */
import { type SimulationInput, simulate } from "risingmain/system";
import { describe, expect, test } from "vitest";
import { changed } from "../changed.ts";
import { plainJob, SHAPE } from "./jobs.ts";
import { bySmallSteps } from "./small-steps.ts";

/** One field after another, named by its path, made another. */
const withAll = (changes: Readonly<Record<string, unknown>>): SimulationInput =>
  Object.entries(changes).reduce((job, [path, value]) => changed(job, path, value), plainJob());

const uses = (...list: readonly (readonly [minutes: number, litresASecond: number])[]) =>
  list.map(([minutes, flow]) => ({ duration: 60 * minutes, flow: flow / 1000 }));
const UNEVEN = uses([7, 0.3], [11, 0.05], [9, 0.75], [13, 0], [5, 1.3], [10, 0.15]);

const valve = { setPressure: 345e3, minimumFlow: 6e-5 };
const drooping = {
  setPressure: 360e3,
  minimumFlow: 6e-5,
  droop: 40e3,
  droopFlow: 6e-4,
  openLoss: 20e3,
  openLossFlow: 1e-3,
};
const onSwitch = { kind: "switch", cutIn: 280e3, cutOut: 410e3 };
const onSpeed = {
  kind: "variable speed",
  startPressure: 290e3,
  setPressure: 345e3,
  stopPressure: 385e3,
  minimumFlow: 9e-5,
};
const cutOff = { stopLevel: 36.5, restartLevel: 31, restartDelay: 300 };
/** A well that gives little: 25 m a litre a second and more. */
const weak = { staticLevel: 30, law: { aquiferLoss: 2.5e4, wellLoss: 4e6 } };

const CONTROLS: Readonly<Record<string, object>> = {
  "a switch": onSwitch,
  "a valve": { ...onSwitch, valve },
  "a valve with droop and loss": { ...onSwitch, valve: drooping },
  "a drive": onSpeed,
};

const WELLS: Readonly<Record<string, object>> = {
  "a level that follows": { staticLevel: 30, law: { aquiferLoss: 8e3, wellLoss: 1e6 } },
  "a level that follows, no well loss": { staticLevel: 30, law: { aquiferLoss: 8e3, wellLoss: 0 } },
  "a bore that stores": { staticLevel: 30, law: { aquiferLoss: 8e3, wellLoss: 1e6 }, freeArea: 0.03 },
  "a wide bore that stores, most of it well loss": {
    staticLevel: 30,
    law: { aquiferLoss: 2e3, wellLoss: 5e6 },
    freeArea: 0.06,
  },
};

/** Changes of the plain job, by path. */
const JOBS: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  "begun half way, running": { start: { pressure: 330e3, pumpRunning: true, drawdown: 1 } },
  "begun half way, at rest": { start: { pressure: 330e3, drawdown: 2 } },
  "begun empty": { start: { pressure: 0 }, demand: uses([20, 0.4], [20, 0.9]) },
  "begun over the cut-out": { start: { pressure: 450e3, pumpRunning: true } },
  "two tanks, one up the hill, quick air": {
    "system.tanks": [
      { volume: 0.2, precharge: 265e3 },
      { volume: 0.25, precharge: 260e3, elevation: 8 },
    ],
    "system.polytropicExponent": 1.2,
  },
  "a tank that opens between cut-in and cut-out": {
    "system.tanks": [
      { volume: 0.2, precharge: 265e3 },
      { volume: 0.25, precharge: 340e3 },
    ],
  },
  "precharge over the cut-in": { "system.tanks[0].precharge": 300e3 },
  "precharge at the cut-in": { "system.tanks[0].precharge": 280e3 },
  "a charge under the open air's pressure": {
    "system.tanks[0].precharge": -20e3,
    "system.control": { kind: "switch", cutIn: 20e3, cutOut: 120e3 },
  },
  "more used than the pump gives": { demand: uses([15, 2.5], [10, 0.2], [15, 1.32]) },
  "a flow limit": { "system.flowLimit": 8e-4 },
  "a flow limit and more used": { "system.flowLimit": 5e-4, demand: uses([25, 0.7], [25, 0.2]) },
  "energy at the wire": { "system.motorEfficiency": 0.7 },
  "a cut-off that trips": { "system.well": weak, "system.lowLevel": cutOff, demand: uses([60, 0.5]) },
  "a cut-off that trips with nothing used": {
    "system.well": weak,
    "system.lowLevel": cutOff,
    demand: uses([4, 0.6], [30, 0]),
  },
  "a cut-off that trips with its tanks empty": {
    "system.well": weak,
    "system.lowLevel": cutOff,
    demand: uses([60, 2.5]),
  },
  "a valve wider than the pump": {
    "system.control": { ...onSwitch, valve: { setPressure: 345e3, minimumFlow: 2e-3 } },
  },
  "a stop that the pump does not reach": {
    "system.control": { ...onSwitch, cutOut: 900e3 },
    demand: uses([40, 0], [30, 0.3]),
    start: { pressure: 280e3, drawdown: 4 },
  },
  "quick air": { "system.polytropicExponent": 1.3 },
  "a cut-off reached as the flow grows": {
    "system.well.intake": 43,
    "system.lowLevel": { stopLevel: 39.6, restartLevel: 31, restartDelay: 300 },
    demand: uses([30, 1.4], [30, 0.2]),
    start: { pressure: 400e3, pumpRunning: true, drawdown: 9 },
  },
  "begun at a use that a drive holds, its cut-off under what the pump could give": {
    "system.control": onSpeed,
    "system.lowLevel": { stopLevel: 36, restartLevel: 31, restartDelay: 300 },
    demand: uses([70, 0.5]),
    start: { pressure: 345e3, pumpRunning: true, drawdown: 4.2 },
  },
  "run dry as the flow grows": {
    "system.well.intake": 39.6,
    demand: uses([30, 1.4]),
    start: { pressure: 400e3, pumpRunning: true, drawdown: 9 },
  },
  "run dry": { "system.well": { ...weak, intake: 37 }, demand: uses([60, 0.6]) },
  "run dry with its tanks empty": { "system.well": { ...weak, intake: 37 }, demand: uses([60, 2.5]) },
};

/** The run and its steps side by side. */
function expectSame(job: SimulationInput): void {
  const run = simulate({ ...job, keepEvents: 500 });
  const stepped = bySmallSteps(SHAPE, job);
  expect(run.events.map(({ kind }) => kind)).toEqual(stepped.events.map(({ kind }) => kind));
  const off = (a: number, b: number, scale: number): number => Math.abs(a - b) / Math.max(Math.abs(b), scale);
  run.events.forEach((event, i) => {
    const its = stepped.events[i] as (typeof stepped.events)[number];
    expect([
      i,
      event.kind,
      off(event.time, its.time, 1) < 1e-7,
      off(event.pressure, its.pressure, 1e5) < 1e-7,
      off(event.depth, its.depth, 1) < 1e-7,
    ]).toEqual([i, its.kind, true, true, true]);
  });
  const pairs = [
    ["pumped", run.pumped, stepped.pumped, 0.01],
    ["refused", run.refused, stepped.refused, 0.01],
    ["energy", run.energy, stepped.energy, 1e4],
    ["runTime", run.runTime, stepped.runTime, 10],
    ["pressure", run.end.pressure, stepped.pressure, 1e5],
    ["water", run.end.water, stepped.water, 0.01],
    ["depth", run.end.depth, stepped.depth, 1],
  ] as const;
  expect(pairs.map(([name, a, b, scale]) => [name, a, b, off(a as number, b, scale) < 1e-7])).toEqual(
    pairs.map(([name, a, b]) => [name, a, b, true]),
  );
  expect(Math.abs(run.balanceError)).toBeLessThan(1e-9);
}

describe.each(Object.entries(WELLS))("%s", (_, well) => {
  test.each(Object.entries(CONTROLS))("%s through an uneven hour and again", (_, control) => {
    expectSame(withAll({ "system.well": well, "system.control": control, demand: UNEVEN, duration: 4000 }));
  });

  if ((well as { law: { wellLoss: number } }).law.wellLoss !== 1e6) return;

  test.each(Object.entries(JOBS))("%s", (_, changes) => {
    const bored =
      "freeArea" in well && "system.well" in changes
        ? { "system.well": { ...(changes["system.well"] as object), freeArea: well.freeArea } }
        : {};
    expectSame(withAll({ demand: UNEVEN, duration: 4000, "system.well": well, ...changes, ...bored }));
  });
});
