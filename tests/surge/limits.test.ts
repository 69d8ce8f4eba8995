/** Both sides of every limit in the docstrings: at the limit accepted, just beyond refused, the field named. */
import {
  checkValveSlam,
  closureSurge,
  compositeLine,
  criticalTime,
  joukowsky,
  plasticWaveSpeed,
  pumpStopSurge,
  rigidColumnSurge,
  simulateSurge,
  surgeAllowance,
  waveSpeed,
} from "risingmain/surge";
import { expect, test } from "vitest";
import { refused } from "../refused.ts";

/** A part of a call, as plain values. */
type Part = Readonly<Record<string, unknown>>;
/** Calls with some fields replaced. */
type Call = (more: Part) => unknown;

const given =
  (call: (input: never) => unknown, input: Part): Call =>
  (more) =>
    call({ ...input, ...more } as never);

const wall = {
  insideDiameter: 0.05,
  thickness: 0.003,
  elasticModulus: 3e9,
  poissonRatio: 0.4,
  support: "anchored throughout",
  theory: "thin",
};
const speed = given(waveSpeed, { bulkModulus: 2.1e9, density: 1000 });
const walled: Call = (more) => speed({ wall: { ...wall, ...more } });
const plastic = given(plasticWaveSpeed, { dimensionRatio: 21, elasticModulus: 2.8e9 });
const sudden = given(joukowsky, { velocityChange: 1, waveSpeed: 1000, density: 1000 });
const critical: Call = ({ length = 100, waveSpeed = 1000 }) => criticalTime(length as never, waveSpeed as never);
const closed = given(closureSurge, { length: 100, waveSpeed: 1000, velocityChange: 1, closureTime: 1, density: 1000 });
const rigid = given(rigidColumnSurge, { length: 100, velocityChange: 1, time: 1, density: 1000 });
const piece: Call = (more) => compositeLine([{ length: 10, insideDiameter: 0.05, waveSpeed: 400, ...more } as never]);
const stopped = given(pumpStopSurge, {
  velocity: 1,
  waveSpeed: 1000,
  staticHead: 50,
  frictionHead: 5,
  vapourHead: -10,
});
const slam = given(checkValveSlam, { staticHead: 50, length: 100, closingDelay: 0.1, waveSpeed: 1000, density: 1000 });
const allowed = given(surgeAllowance, {
  material: "pvc",
  pressureClass: 1e6,
  workingPressure: 5e5,
  recurringSurge: 1e5,
  occasionalSurge: 2e5,
});

/** A level line of 100 m with nothing moving: a tank at one end, the other shut; ten steps of it. */
const line = {
  pipes: [{ length: 100, insideDiameter: 0.05, waveSpeed: 1000, frictionFactor: 0.02, endElevation: 0 }],
  startElevation: 0,
  start: { kind: "fixed head", head: 50 },
  end: { kind: "closed" },
  density: 1000,
  vapourPressure: 1228,
  atmosphere: 101_325,
  duration: 0.1,
  reaches: 10,
};
const simulated = given(simulateSurge, line);
const pipe: Call = (more) => simulated({ pipes: [{ ...line.pipes[0], ...more }] });
const start: Call = (more) => simulated({ start: { ...line.start, ...more } });
const end: Call = (more) => simulated({ end: more });
const valve: Call = (more) =>
  end({
    kind: "valve",
    outletHead: 40,
    ratedFlow: 0.001,
    ratedHeadLoss: 5,
    openings: [{ time: 0, opening: 1 }],
    ...more,
  });
const opening: Call = (more) =>
  valve({
    openings: [
      { time: 0, opening: 1 },
      { time: 1, opening: 0, ...more },
    ],
  });
const drawn: Call = (more) => end({ kind: "flow", flows: [{ time: 0, flow: 0.001, ...more }] });
const pump: Call = (more) =>
  simulated({
    start: {
      kind: "pump",
      sourceHead: 0,
      shutoffHead: 60,
      ratedFlow: 0.001,
      ratedHead: 40,
      stopTime: 0,
      halfSpeedTime: 0,
      checkValveDelay: 0,
      ...more,
    },
    end: { kind: "fixed head", head: 30 },
  });
const tank: Call = (more) =>
  end({
    kind: "closed",
    airTank: { volume: 0.1, precharge: 1e5, exponent: 1.2, connectionDiameter: 0.02, connectionLoss: 1, ...more },
  });

test.each<[field: string, call: Call, accepted: readonly Part[], refused: readonly Part[]]>([
  ["input", () => waveSpeed(1 as never), [], [{}]],
  [
    "bulkModulus",
    speed,
    [{ bulkModulus: 1e5 }, { bulkModulus: 1e12 }],
    [{ bulkModulus: 9e4 }, { bulkModulus: 1.1e12 }],
  ],
  ["density", speed, [{ density: 1 }, { density: 25_000 }], [{ density: 0.9 }, { density: 25_001 }]],
  ["wall", speed, [{ wall: undefined }], [{ wall: 1 }]],
  [
    "wall.insideDiameter",
    walled,
    [{ insideDiameter: 1e-4 }, { insideDiameter: 100 }],
    [{ insideDiameter: 0.9e-4 }, { insideDiameter: 101 }],
  ],
  ["wall.thickness", walled, [{ thickness: 1e-9 }, { thickness: 10 }], [{ thickness: 0 }, { thickness: 10.1 }]],
  [
    "wall.elasticModulus",
    walled,
    [{ elasticModulus: 1e5 }, { elasticModulus: 1e13 }],
    [{ elasticModulus: 9e4 }, { elasticModulus: 1.1e13 }],
  ],
  [
    "wall.poissonRatio",
    walled,
    [{ poissonRatio: 0 }, { poissonRatio: 0.5 }],
    [{ poissonRatio: -0.01 }, { poissonRatio: 0.51 }],
  ],
  ["wall.support", walled, [], [{ support: "free" }]],
  ["wall.theory", walled, [], [{ theory: "thickish" }]],
  ["input", () => plasticWaveSpeed(1 as never), [], [{}]],
  [
    "dimensionRatio",
    plastic,
    [{ dimensionRatio: 2 }, { dimensionRatio: 200 }],
    [{ dimensionRatio: 1.9 }, { dimensionRatio: 201 }],
  ],
  [
    "elasticModulus",
    plastic,
    [{ elasticModulus: 1e5 }, { elasticModulus: 1e13 }],
    [{ elasticModulus: 9e4 }, { elasticModulus: 1.1e13 }],
  ],
  ["input", () => joukowsky(1 as never), [], [{}]],
  [
    "velocityChange",
    sudden,
    [{ velocityChange: -1000 }, { velocityChange: 1000 }],
    [{ velocityChange: -1001 }, { velocityChange: 1001 }],
  ],
  ["waveSpeed", sudden, [{ waveSpeed: 1 }, { waveSpeed: 1e4 }], [{ waveSpeed: 0.9 }, { waveSpeed: 10_001 }]],
  ["density", sudden, [{ density: 1 }, { density: 25_000 }], [{ density: 0.9 }, { density: 25_001 }]],
  ["length", critical, [{ length: 0 }, { length: 1e6 }], [{ length: -1 }, { length: 1.1e6 }]],
  ["waveSpeed", critical, [{ waveSpeed: 1 }, { waveSpeed: 1e4 }], [{ waveSpeed: 0.9 }, { waveSpeed: 10_001 }]],
  ["input", () => closureSurge(1 as never), [], [{}]],
  ["length", closed, [{ length: 1e-3 }, { length: 1e6 }], [{ length: 0.9e-3 }, { length: 1.1e6 }]],
  ["waveSpeed", closed, [{ waveSpeed: 1 }, { waveSpeed: 1e4 }], [{ waveSpeed: 0.9 }, { waveSpeed: 10_001 }]],
  [
    "velocityChange",
    closed,
    [{ velocityChange: 0 }, { velocityChange: 1000 }],
    [{ velocityChange: -1 }, { velocityChange: 1001 }],
  ],
  ["closureTime", closed, [{ closureTime: 0 }, { closureTime: 1e6 }], [{ closureTime: -1 }, { closureTime: 1.1e6 }]],
  ["density", closed, [{ density: 1 }, { density: 25_000 }], [{ density: 0.9 }, { density: 25_001 }]],
  ["input", () => rigidColumnSurge(1 as never), [], [{}]],
  ["length", rigid, [{ length: 0 }, { length: 1e6 }], [{ length: -1 }, { length: 1.1e6 }]],
  [
    "velocityChange",
    rigid,
    [{ velocityChange: -1000 }, { velocityChange: 1000 }],
    [{ velocityChange: -1001 }, { velocityChange: 1001 }],
  ],
  ["time", rigid, [{ time: 1e-6 }, { time: 1e6 }], [{ time: 0.9e-6 }, { time: 1.1e6 }]],
  ["density", rigid, [{ density: 1 }, { density: 25_000 }], [{ density: 0.9 }, { density: 25_001 }]],
  [
    "pieces",
    (more) => compositeLine(more["pieces"] as never),
    [],
    [{ pieces: [] }, { pieces: 1 }, { pieces: new Array(1001) }],
  ],
  ["pieces[0]", (more) => compositeLine(more["pieces"] as never), [], [{ pieces: [1] }, { pieces: new Array(1) }]],
  ["pieces[0].length", piece, [{ length: 1e-3 }, { length: 1e6 }], [{ length: 0.9e-3 }, { length: 1.1e6 }]],
  [
    "pieces[0].insideDiameter",
    piece,
    [{ insideDiameter: 1e-4 }, { insideDiameter: 100 }],
    [{ insideDiameter: 0.9e-4 }, { insideDiameter: 101 }],
  ],
  ["pieces[0].waveSpeed", piece, [{ waveSpeed: 1 }, { waveSpeed: 1e4 }], [{ waveSpeed: 0.9 }, { waveSpeed: 10_001 }]],
  ["input", () => pumpStopSurge(1 as never), [], [{}]],
  ["velocity", stopped, [{ velocity: 0 }, { velocity: 1000 }], [{ velocity: -1 }, { velocity: 1001 }]],
  ["waveSpeed", stopped, [{ waveSpeed: 1 }, { waveSpeed: 1e4 }], [{ waveSpeed: 0.9 }, { waveSpeed: 10_001 }]],
  ["staticHead", stopped, [{ staticHead: -1e6 }, { staticHead: 1e6 }], [{ staticHead: -1.1e6 }, { staticHead: 1.1e6 }]],
  [
    "frictionHead",
    stopped,
    [{ frictionHead: 0 }, { frictionHead: 1e6 }],
    [{ frictionHead: -1 }, { frictionHead: 1.1e6 }],
  ],
  ["vapourHead", stopped, [{ vapourHead: -100 }, { vapourHead: 0 }], [{ vapourHead: -101 }, { vapourHead: 1 }]],
  ["input", () => checkValveSlam(1 as never), [], [{}]],
  ["staticHead", slam, [{ staticHead: 0 }, { staticHead: 1e6 }], [{ staticHead: -1 }, { staticHead: 1.1e6 }]],
  ["length", slam, [{ length: 1e-3 }, { length: 1e6 }], [{ length: 0.9e-3 }, { length: 1.1e6 }]],
  ["closingDelay", slam, [{ closingDelay: 0 }, { closingDelay: 1000 }], [{ closingDelay: -1 }, { closingDelay: 1001 }]],
  ["waveSpeed", slam, [{ waveSpeed: 1 }, { waveSpeed: 1e4 }], [{ waveSpeed: 0.9 }, { waveSpeed: 10_001 }]],
  ["density", slam, [{ density: 1 }, { density: 25_000 }], [{ density: 0.9 }, { density: 25_001 }]],
  ["input", () => surgeAllowance(1 as never), [], [{}]],
  ["material", allowed, [{ material: "pe" }], [{ material: "steel" }]],
  [
    "pressureClass",
    allowed,
    [{ pressureClass: 0 }, { pressureClass: 1e9 }],
    [{ pressureClass: -1 }, { pressureClass: 1.1e9 }],
  ],
  [
    "workingPressure",
    allowed,
    [{ workingPressure: 0 }, { workingPressure: 1e9 }],
    [{ workingPressure: -1 }, { workingPressure: 1.1e9 }],
  ],
  [
    "recurringSurge",
    allowed,
    [{ recurringSurge: 0 }, { recurringSurge: 1e9 }],
    [{ recurringSurge: -1 }, { recurringSurge: 1.1e9 }],
  ],
  [
    "occasionalSurge",
    allowed,
    [{ occasionalSurge: 0 }, { occasionalSurge: 1e9 }],
    [{ occasionalSurge: -1 }, { occasionalSurge: 1.1e9 }],
  ],

  ["input", () => simulateSurge(1 as never), [], [{}]],
  ["pipes", simulated, [], [{ pipes: [] }, { pipes: 1 }, { pipes: new Array(101) }]],
  ["pipes[0]", simulated, [], [{ pipes: new Array(1) }]],
  [
    "pipes[0].length",
    pipe,
    [{ length: 0.01, duration: 1e-5 }, { length: 1e5 }],
    [{ length: 0.009 }, { length: 1.01e5 }],
  ],
  [
    "pipes[0].insideDiameter",
    pipe,
    [{ insideDiameter: 1e-3 }, { insideDiameter: 10 }],
    [{ insideDiameter: 0.9e-3 }, { insideDiameter: 10.1 }],
  ],
  ["pipes[0].waveSpeed", pipe, [{ waveSpeed: 10 }, { waveSpeed: 3000 }], [{ waveSpeed: 9.9 }, { waveSpeed: 3001 }]],
  [
    "pipes[0].frictionFactor",
    pipe,
    [{ frictionFactor: 0 }, { frictionFactor: 1 }],
    [{ frictionFactor: -0.01 }, { frictionFactor: 1.01 }],
  ],
  [
    "pipes[0].endElevation",
    pipe,
    [{ endElevation: -1e4 }, { endElevation: 1e4 }],
    [{ endElevation: -10_001 }, { endElevation: 10_001 }],
  ],
  [
    "startElevation",
    simulated,
    [{ startElevation: -1e4 }, { startElevation: 1e4 }],
    [{ startElevation: -10_001 }, { startElevation: 10_001 }],
  ],
  ["density", simulated, [{ density: 500 }, { density: 2000 }], [{ density: 499 }, { density: 2001 }]],
  [
    "vapourPressure",
    simulated,
    [{ vapourPressure: 0 }, { vapourPressure: 1e5 }],
    [{ vapourPressure: -1 }, { vapourPressure: 100_001 }],
  ],
  [
    "atmosphere",
    simulated,
    [{ atmosphere: 2e5 }, { atmosphere: 1229 }],
    [{ atmosphere: 200_001 }, { atmosphere: 1228 }, { atmosphere: -1, vapourPressure: 0 }],
  ],
  ["duration", simulated, [{ duration: 1e-9 }], [{ duration: 0 }, { duration: 1.01e5 }, { duration: -1 }]],
  [
    "reaches",
    simulated,
    [{ reaches: 1 }, { reaches: 2000, duration: 1e-3 }],
    [{ reaches: 0 }, { reaches: 2001 }, { reaches: 1.5 }, { pipes: [line.pipes[0], line.pipes[0]], reaches: 1 }],
  ],
  [
    "probes",
    simulated,
    [{ probes: [] }, { probes: new Array(50).fill(0) }],
    [{ probes: 1 }, { probes: new Array(51).fill(0) }],
  ],
  ["probes[0]", simulated, [{ probes: [0] }, { probes: [100] }], [{ probes: [-1] }, { probes: [101] }]],
  ["start", simulated, [], [{ start: 1 }]],
  ["start.kind", start, [], [{ kind: "tank" }]],
  ["start.head", start, [{ head: 1e4 }], [{ head: -10_001 }, { head: 10_001 }]],
  ["end.kind", end, [], [{ kind: "pump" }]],
  ["end.outletHead", valve, [{ outletHead: 60 }], [{ outletHead: -10_001 }, { outletHead: 10_001 }]],
  ["end.ratedFlow", valve, [{ ratedFlow: 1e-9 }, { ratedFlow: 100 }], [{ ratedFlow: 0.9e-9 }, { ratedFlow: 101 }]],
  [
    "end.ratedHeadLoss",
    valve,
    [{ ratedHeadLoss: 1e-6 }, { ratedHeadLoss: 1e4 }],
    [{ ratedHeadLoss: 0.9e-6 }, { ratedHeadLoss: 10_001 }],
  ],
  ["end.openings", valve, [], [{ openings: [] }, { openings: 1 }, { openings: new Array(1001) }]],
  ["end.openings[0]", valve, [], [{ openings: new Array(1) }]],
  ["end.openings[1].time", opening, [{ time: 0 }, { time: 1e6 }], [{ time: -1 }, { time: 1.1e6 }]],
  ["end.openings[1].opening", opening, [{ opening: 0 }, { opening: 1 }], [{ opening: -0.1 }, { opening: 1.1 }]],
  [
    "end.openings[2].time",
    (more) =>
      valve({
        openings: [
          { time: 0, opening: 1 },
          { time: 1, opening: 1 },
          { opening: 1, ...more },
        ],
      }),
    [{ time: 1 }],
    [{ time: 0.9 }],
  ],
  ["end.flows[0].flow", drawn, [{ flow: 0.1 }], [{ flow: -101 }, { flow: 101 }]],
  // 100 m/s at most.
  ["end.flows", drawn, [{ flow: 99.9 * (Math.PI / 4) * 0.05 ** 2 }], [{ flow: 100.1 * (Math.PI / 4) * 0.05 ** 2 }]],
  ["start.sourceHead", pump, [{ sourceHead: 10 }], [{ sourceHead: -10_001 }, { sourceHead: 10_001 }]],
  [
    "start.shutoffHead",
    pump,
    [{ shutoffHead: 1e4 }, { shutoffHead: 0.01, ratedHead: 0 }],
    [{ shutoffHead: 0.009 }, { shutoffHead: 10_001 }],
  ],
  ["start.ratedFlow", pump, [{ ratedFlow: 1e-9 }, { ratedFlow: 100 }], [{ ratedFlow: 0.9e-9 }, { ratedFlow: 101 }]],
  [
    "start.ratedHead",
    pump,
    [{ ratedHead: 0 }, { ratedHead: 59.9 }],
    [{ ratedHead: -1 }, { ratedHead: 60 }, { ratedHead: 61 }],
  ],
  ["start.stopTime", pump, [{ stopTime: 1e6 }], [{ stopTime: -1 }, { stopTime: 1.1e6 }]],
  ["start.halfSpeedTime", pump, [{ halfSpeedTime: 1e6 }], [{ halfSpeedTime: -1 }, { halfSpeedTime: 1.1e6 }]],
  ["start.checkValveDelay", pump, [{ checkValveDelay: 1000 }], [{ checkValveDelay: -1 }, { checkValveDelay: 1001 }]],
  ["end.airTank", end, [{ kind: "closed", airTank: undefined }], [{ kind: "closed", airTank: 1 }]],
  ["end.airTank.volume", tank, [{ volume: 1e-6 }, { volume: 1e4 }], [{ volume: 0.9e-6 }, { volume: 10_001 }]],
  [
    "end.airTank.precharge",
    tank,
    [{ precharge: -5e4 }, { precharge: 1e8 }],
    [{ precharge: -50_001 }, { precharge: 1.1e8 }],
  ],
  ["end.airTank.exponent", tank, [{ exponent: 1 }, { exponent: 1.4 }], [{ exponent: 0.99 }, { exponent: 1.41 }]],
  [
    "end.airTank.connectionDiameter",
    tank,
    [{ connectionDiameter: 1e-3 }, { connectionDiameter: 10 }],
    [{ connectionDiameter: 0.9e-3 }, { connectionDiameter: 10.1 }],
  ],
  [
    "end.airTank.connectionLoss",
    tank,
    [{ connectionLoss: 0 }, { connectionLoss: 1e4 }],
    [{ connectionLoss: -1 }, { connectionLoss: 10_001 }],
  ],
])("%s is accepted up to its limits and refused past them", (field, call, within, beyond) => {
  for (const more of within) expect(refused(() => call(more))).toBeUndefined();
  for (const more of beyond) expect(refused(() => call(more))).toBe(field);
});
