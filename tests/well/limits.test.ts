/** Limits that hang on another field, or on the readings together: at the limit accepted, just beyond refused by name. */
import {
  annulus,
  drawdownOfSchedule,
  drawOnStorage,
  fitRecovery,
  fitStepTest,
  fitStraightLine,
  fitTheis,
  hangingLoad,
  intermittentSchedule,
  motorCooling,
  pumpSetting,
  recuperation,
  restTime,
  steadyFlowConfined,
  steadyFlowUnconfined,
  tensileCheck,
  theisDrawdown,
} from "risingmain/well";
import { expect, test } from "vitest";
import { refused } from "../refused.ts";

const beyond = 1 + 1e-9;
const casing = { insideDiameter: 0.15, bodyDiameter: 0.1 };
const well = { area: 0.02, specificCapacity: 1e-5, flow: 1e-3, startDrawdown: 10, lowestDrawdown: 20, endDrawdown: 5 };
const motor = { flow: 1e-3, casingInsideDiameter: 0.15, motorDiameter: 0.1 };
const setting = { pumpSetting: 50, wellDepth: 70, casingDepth: 60, pumpingLevel: 40 };
const rest = { area: 1, firstDrawdown: 3, laterDrawdown: 2, time: 60 };
const confined = { transmissivity: 1e-3, drawdown: 4, wellRadius: 0.1, influenceRadius: 300 };
const open = { conductivity: 1e-4, saturatedThickness: 20, drawdown: 4, wellRadius: 0.1, influenceRadius: 300 };
const pipe = { load: 1, insideDiameter: 0.027, outsideDiameter: 0.033, strength: 48e6, safetyFactor: 5 };
const hanging = { ...pipe, pumpMass: 30, pipeMass: 0.5, pumpSetting: 90, density: 1000 };
const turns = { flow: 1e-3, runTime: 10, cycleTime: 20, cycles: 3 };
const aquifer = { transmissivity: 1e-4, storativity: 1e-4, radius: 0.1 };
const pumped = { ...aquifer, flow: 1e-3, time: 100 };
const at = (time: number, flow = 1e-3) => ({ time, flow });
const schedule = { aquifer, changes: [at(0), at(10, 0)], at: 20 };
const step = (flow: number) => ({ flow, drawdown: 1 });
const reading = (time: number) => ({ time, drawdown: Math.log(time) });
const test3 = { flow: 1e-3, radius: 10, readings: [reading(10), reading(20), reading(40)] };
const left = (sinceStop: number) => ({ sinceStop, residual: 1 });

type Row = [field: string, call: (input: never) => unknown, good: object, accepted: object, refused: object];

test.each<Row>([
  ["bodyDiameter", annulus, casing, { bodyDiameter: 0.15 * (1 - 1e-9) }, { bodyDiameter: 0.15 }],
  ["lowestDrawdown", drawOnStorage, well, { lowestDrawdown: 10 * beyond }, { lowestDrawdown: 10 }],
  ["endDrawdown", restTime, well, { endDrawdown: 10 }, { endDrawdown: 10 * beyond }],
  ["motorDiameter", motorCooling, motor, { motorDiameter: 0.1499 }, { motorDiameter: 0.15 }],
  // A ring of 2e-14 m at this diameter has π/2 · 0.15 · 1e-14 < 1e-9 m².
  ["motorDiameter", motorCooling, motor, {}, { motorDiameter: 0.15 - 2e-14 }],
  ["casingDepth", pumpSetting, setting, { casingDepth: 70 }, { casingDepth: 70 * beyond }],
  ["screenTop", pumpSetting, setting, { screenTop: 70 }, { screenTop: 70 * beyond }],
  ["laterDrawdown", recuperation, rest, { laterDrawdown: 3 * (1 - 1e-9) }, { laterDrawdown: 3 }],
  ["influenceRadius", steadyFlowConfined, confined, { influenceRadius: 0.1 * beyond }, { influenceRadius: 0.1 }],
  ["drawdown", steadyFlowUnconfined, open, { drawdown: 20 }, { drawdown: 20 * beyond }],
  ["outsideDiameter", tensileCheck, pipe, { outsideDiameter: 0.0271 }, { outsideDiameter: 0.027 }],
  ["outsideDiameter", tensileCheck, pipe, {}, { outsideDiameter: 0.02 }],
  ["full", hangingLoad, hanging, { full: false }, { full: 0 }],
  ["runTime", intermittentSchedule, turns, { runTime: 20 * (1 - 1e-9) }, { runTime: 20 }],
  ["transmissivity", theisDrawdown, pumped, { transmissivity: 1e-12 }, { transmissivity: 0 }],
  ["aquifer.storativity", drawdownOfSchedule, schedule, {}, { aquifer: { ...aquifer, storativity: 0 } }],
  ["changes[1].time", drawdownOfSchedule, schedule, { changes: [at(5), at(6)] }, { changes: [at(5), at(5)] }],
  ["steps", fitStepTest, {}, { steps: [step(1e-3), step(2e-3)] }, { steps: [step(1e-3), step(1e-3)] }],
  ["from", fitStraightLine, test3, { from: 20 }, { from: 20 * beyond }],
  ["from", fitTheis, test3, { from: 20 }, { from: 20 * beyond }],
  ["readings", fitStraightLine, test3, {}, { readings: [reading(10), reading(10), reading(10)] }],
  [
    "readings",
    fitRecovery,
    { flow: 1e-3, pumpingTime: 100 },
    { readings: [left(1), left(2)] },
    { readings: [left(1), left(1)] },
  ],
])("%s in %o", (field, call, good, accepted, bad) => {
  const of = (changed: object) => refused(() => call({ ...good, ...changed } as never));
  expect([accepted, bad].map(of)).toEqual([undefined, field]);
});
