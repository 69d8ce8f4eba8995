/** Both sides of every limit of a description and of a run, and what is refused. */
import type { PumpCurve } from "risingmain/pump";
import { pipeMainLoss, type SimulationInput, simulate } from "risingmain/system";
import { describe, expect, test } from "vitest";
import { changed, type Limit } from "../changed.ts";
import { refused } from "../refused.ts";
import { curveOf, plainJob, SHAPE } from "./jobs.ts";

const onSpeed = {
  kind: "variable speed",
  startPressure: 280e3,
  setPressure: 350e3,
  stopPressure: 410e3,
  minimumFlow: 1e-4,
};
const cutOff = { stopLevel: 60, restartLevel: 40, restartDelay: 600 };

const LIMITS: readonly Limit[] = [
  ["system.motorEfficiency", [0.01, 1], [0.0099, 1.01]],
  ["system.well.staticLevel", [0, 1e4], [-1e-9, 10_001]],
  ["system.well.law.aquiferLoss", [0], [-1]],
  ["system.well.freeArea", [0, 1e-6, 1e6], [9e-7, 1.01e6, -1]],
  ["system.well.intake", [30.001, 1e4], [30, 10_001]],
  ["system.rise", [-1e4, 1e4], [-10_001, 10_001]],
  ["system.flowLimit", [1e-12, 100], [0, 101]],
  ["system.lowLevel.restartDelay", [1, 2_592_000], [0.99, 2_592_001]],
  ["system.control.kind", ["switch"], ["by hand", undefined]],
  ["system.density", [900, 1100], [899, 1101]],
  ["system.mainLoss[0].flow", [1e-3, 100], [0, 101]],
  ["system.mainLoss[0].headLoss", [0, 1e4], [-1e-9, 10_001]],
  ["duration", [1e-3, 3.16224e9], [9.9e-4, 3.16225e9]],
  ["demand[0].duration", [1e-3, 3.16224e8], [9.9e-4, 3.16225e8]],
  ["demand[0].flow", [0, 100], [-1e-12, 101]],
  ["keepEvents", [0, 1e7], [-1, 10_000_001, 0.5]],
  ["keepDays", [0, 40_000], [-1, 40_001, 0.5]],
  ["mostSteps", [1, 1e9], [0, 1_000_000_001, 1.5]],
  // 7200 s in ten million samples.
  ["sampleEvery", [7.2e-4, 1e11], [7.1e-4, 1.01e11]],
  ["start.pressure", [0, 1e8], [-1, 1.01e8]],
  ["start.drawdown", [0, 1e4], [-1e-9, 10_001]],
  ["start.pumpRunning", [true, false], [1, "yes"]],
];

/** The plain job, its work bounded: what is accepted need not run to its end. */
const job: SimulationInput = { ...plainJob(), start: {}, mostSteps: 50 };
const refusedRun = (changes: SimulationInput) => refused(() => simulate(changes));

test.each(LIMITS)("%s: accepted at its limits, refused beyond", (path, accepted, beyond) => {
  const whole = path.includes("lowLevel") ? changed(job, "system.lowLevel", cutOff) : job;
  const answer = (value: unknown) => [value, refusedRun(changed(whole, path, value))];
  expect(accepted.map(answer)).toEqual(accepted.map((value) => [value, undefined]));
  expect(beyond.map(answer)).toEqual(beyond.map((value) => [value, path]));
});

test.each<Limit>([
  ["system.control.setPressure", [0, 1e8], [-1, 1.01e8]],
  ["system.control.minimumFlow", [1e-12, 100], [0, 101]],
  ["startPressure", [0, 409_999], [-1, 1.01e8]],
  ["stopPressure", [280_001, 1e8], [280e3, 1.01e8]],
])("a drive's %s", (named, accepted, beyond) => {
  const field = named.split(".").at(-1) as string;
  const answer = (value: unknown) => [
    value,
    refusedRun(changed(job, "system.control", { ...onSpeed, [field]: value })),
  ];
  expect(accepted.map(answer)).toEqual(accepted.map((value) => [value, undefined]));
  expect(beyond.map(answer)).toEqual(beyond.map((value) => [value, named]));
});

test("what is no object or no list is refused by its name", () => {
  const cases: readonly (readonly [path: string, value: unknown, named?: string])[] = [
    ["system", undefined],
    ["system.pump", null],
    ["system.well", 3],
    ["system.well.law", undefined],
    ["system.control", null],
    ["system.control", { kind: "switch", cutIn: 410e3, cutOut: 410e3 }, "cutOut"],
    ["system.control.valve", 5, "valve"],
    ["system.lowLevel", { ...cutOff, restartLevel: 60 }, "system.lowLevel.restartLevel"],
    ["system.tanks", [], "system.tanks"],
    ["system.mainLoss", []],
    ["system.mainLoss", [undefined], "system.mainLoss[0]"],
    ["demand", []],
    ["demand", [undefined], "demand[0]"],
    ["start", null],
  ];
  for (const [path, value, named = path] of cases) expect(refusedRun(changed(job, path, value))).toBe(named);
  expect(refusedRun(undefined as never)).toBe("input");
});

test("a pump whose head does not fall all the way, at the pump or at the tank", () => {
  const line = (y: readonly number[]) => ({ x: [0, 1e-3, 2e-3], y, slope: [0, 0, 0] });
  const pump = (y: readonly number[]) =>
    ({
      ...curveOf(SHAPE),
      head: line(y),
      shutoffHead: y[0],
      runoutFlow: 2e-3,
      shape: "rising in part",
    }) as unknown as PumpCurve;
  expect(refusedRun(changed(job, "system.pump", pump([50, 60, 20])))).toBe("system.pump");
  // Also where the drawdown would make it fall at the tank.
  const deep = changed(changed(job, "system.pump", pump([50, 50.1, 20])), "system.well.law.aquiferLoss", 1e5);
  expect(refusedRun(deep)).toBe("system.pump");
  // Points that fall, and a slope between them that climbs: 50 m and 49.9 m with 1 m a litre a second uphill.
  const bulging = { ...curveOf(SHAPE), head: { x: [0, 2e-3], y: [50, 49.9], slope: [1000, 0] }, runoutFlow: 2e-3 };
  const level = { ...bulging, shutoffHead: 50, shape: "falling" } as unknown as PumpCurve;
  const bare = changed(changed(job, "system.pump", level), "system.mainLoss[0].headLoss", 0);
  const noDrawdown = changed(bare, "system.well.law", { aquiferLoss: 0, wellLoss: 0 });
  expect(refusedRun(noDrawdown)).toBe("system.pump");
  // A drawdown makes it fall at the tank, but where the bore stores it comes too late.
  expect(refusedRun(changed(bare, "system.well.law.aquiferLoss", 2e3))).toBeUndefined();
  const storing = changed(bare, "system.well", {
    staticLevel: 30,
    law: { aquiferLoss: 2e3, wellLoss: 0 },
    freeArea: 1,
  });
  expect(refusedRun(storing)).toBe("system.pump");
});

describe("the loss in the main", () => {
  const at = (points: readonly (readonly [flow: number, headLoss: number])[]) =>
    refusedRun(
      changed(
        job,
        "system.mainLoss",
        points.map(([flow, headLoss]) => ({ flow, headLoss })),
      ),
    );

  test("flows rise by more than a millionth, losses do not fall, and both reach the end of the curve", () => {
    expect(
      at([
        [1e-3, 2],
        [1.6e-3, 2],
      ]),
    ).toBeUndefined();
    expect(
      at([
        [1e-3, 2],
        [1e-3 * (1 + 2e-6), 2],
        [2e-3, 2],
      ]),
    ).toBeUndefined();
    expect(
      at([
        [1e-3, 2],
        [1e-3 * (1 + 5e-7), 2],
        [2e-3, 2],
      ]),
    ).toBe("system.mainLoss[1].flow");
    expect(
      at([
        [1e-3, 2],
        [2e-3, 1.99],
      ]),
    ).toBe("system.mainLoss[1].headLoss");
    expect(
      at([
        [1e-3, 2],
        [1.5e-3, 3],
      ]),
    ).toBeUndefined();
    expect(
      at([
        [1e-3, 2],
        [1.49e-3, 3],
      ]),
    ).toBe("system.mainLoss");
  });

  test("at most a thousand points", () => {
    const many = (count: number) =>
      Array.from({ length: count }, (_, i) => [(2e-3 * (i + 1)) / count, i * 1e-3] as const);
    expect(at(many(1000))).toBeUndefined();
    expect(at(many(1001))).toBe("system.mainLoss");
  });

  test("a flow that can be squared", () => {
    expect(at([[1e-200, 1]])).toBe("system.mainLoss[0].flow");
    // Its head over its square, 1e-300/(1e-150)², is 1.
    expect(at([[1e-150, 1e-300]])).toBeUndefined();
  });
});

test("a run of more than twenty million segments is a slip in the units", () => {
  const demand = [{ duration: 1e-3, flow: 1e-4 }] as unknown as SimulationInput["demand"];
  expect(refusedRun({ ...job, demand, duration: 20_000 as never })).toBeUndefined();
  expect(refusedRun({ ...job, demand, duration: 20_001 as never })).toBe("duration");
  expect(refusedRun({ ...job, demand: [...demand, ...demand], duration: 20_001 as never })).toBe("duration");
});

test("a tank at 1 kPa under the cut-out stores, one at it does not", () => {
  const state = (precharge: number) => simulate(changed(job, "system.tanks[0].precharge", precharge)).state;
  expect(state(409e3)).not.toBe("no storage");
  expect(state(410e3)).toBe("no storage");
});

describe("a pipe for the main", () => {
  const pipe = { insideDiameter: 0.04, length: 100, roughness: 1e-5, viscosity: 1.3e-6, resistance: 4, upTo: 2e-3 };
  const made = (changes: object) => refused(() => pipeMainLoss({ ...pipe, ...changes } as never));

  test("both sides of its limits", () => {
    expect(
      [{ upTo: 1e-9 }, { upTo: 100, insideDiameter: 10 }, { resistance: 0 }, { resistance: 1e6, upTo: 1e-4 }].map(made),
    ).toEqual([undefined, undefined, undefined, undefined]);
    expect([{ upTo: 9e-10 }, { upTo: 0 }, { upTo: 101 }, { resistance: -1 }, { resistance: 1.01e6 }].map(made)).toEqual(
      ["upTo", "upTo", "upTo", "resistance", "resistance"],
    );
    expect(refused(() => pipeMainLoss(undefined as never))).toBe("input");
    expect(made({ length: 1e6 })).toBe("headLoss");
  });

  test("its last point is Hagen and Poiseuille's 128 ν L Q/(π g D⁴) and K V²/2g where the flow is laminar", () => {
    const upTo = 2e-5;
    const points = pipeMainLoss({ ...pipe, upTo } as never);
    const velocity = (4 * upTo) / (Math.PI * 0.04 ** 2);
    const friction = (128 * 1.3e-6 * 100 * upTo) / (Math.PI * 9.80665 * 0.04 ** 4);
    expect(points.at(-1)?.flow).toBe(upTo);
    expect((points.at(-1)?.headLoss ?? 0) / (friction + (4 * velocity ** 2) / (2 * 9.80665))).toBeCloseTo(1, 12);
    // Half of the points, counted from the smallest, lie in the first quarter.
    expect((points[19]?.flow ?? 0) / upTo).toBeCloseTo(0.25, 12);
  });
});
