/** The parts a simulation is put together from, each against its own equation. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { airPressure, fillTank, settledTank, tankFlow } from "../../src/surge/air-tank.ts";
import { keepHistory } from "../../src/surge/history.ts";
import { endLaw, flowAtHead, flowInto } from "../../src/surge/line-end.ts";
import { lineGrid } from "../../src/surge/line-grid.ts";
import { stepsWithin } from "../../src/surge/simulation-input.ts";
import { steadyStart } from "../../src/surge/steady-start.ts";
import { refused } from "../refused.ts";
import { area, flows, held, pipe, STANDARD_GRAVITY } from "./lines.ts";

const g = STANDARD_GRAVITY;
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("the law of an end", () => {
  const law = (end: object, time: number, at: "start" | "end" = "start") => endLaw(end as never, at, time);

  test("of a tank and of a dead end", () => {
    expect(law(held(30), 5)).toEqual({ head: 30, k: 0 });
    expect(law({ kind: "closed" }, 5)).toEqual({ flow: 0 });
  });

  test("follows its schedule: the first row until it, straight lines between, a jump, and the last row after", () => {
    const rows = flows([1, 2], [3, 6], [3, 10], [4, 0]);
    const at = [-1, 0, 0.5, 1, 1.5, 2, 2.999, 3, 3.25, 3.75, 4, 9].map((t) => (law(rows, t) as { flow: number }).flow);
    const expected = [2, 2, 2, 2, 3, 4, 5.998, 10, 7.5, 2.5, 0, 0];
    at.forEach((flow, i) => {
      expect(flow).toBeCloseTo(expected[i] as number, 12);
    });
    // Rows of time 0 are a jump at the start: the line begins in the first.
    expect([0, 1e-9, 1].map((t) => law(flows([0, 2], [0, 1]), t))).toEqual([{ flow: 2 }, { flow: 1 }, { flow: 1 }]);
  });

  test("counts a flow along the line as into it at the start, and out of it at the end", () => {
    expect(law(flows([0, 2]), 1, "start")).toEqual({ flow: 2 });
    expect(law(flows([0, 2]), 1, "end")).toEqual({ flow: -2 });
    expect(law(flows([0, 0]), 1, "end")).toEqual({ flow: 0 });
  });

  test("of a valve: the rated loss at the rated flow, four times as much half open, and shut at nothing", () => {
    const valve = { kind: "valve", outletHead: 3, ratedFlow: 0.002, ratedHeadLoss: 5 };
    const open = (opening: number) => law({ ...valve, openings: [{ time: 0, opening }] }, 1);
    expect(open(1)).toEqual({ head: 3, k: 5 / 0.002 ** 2 });
    expect((open(0.5) as { k: number }).k).toBeCloseTo((4 * 5) / 0.002 ** 2, 3);
    expect(open(0)).toEqual({ flow: 0 });
    expect(open(1e-160)).toEqual({ flow: 0 });
  });

  test("of a pump: H = shutoff − k Q², the shutoff head with the square of the speed, which halves in its time", () => {
    const pump = {
      kind: "pump",
      sourceHead: 10,
      shutoffHead: 60,
      ratedFlow: 0.002,
      ratedHead: 40,
      stopTime: 2,
      halfSpeedTime: 4,
    };
    const k = 20 / 0.002 ** 2;
    for (const [time, speed] of [
      [0, 1],
      [2, 1],
      [3, 4 / 5],
      [6, 1 / 2],
      [14, 1 / 4],
    ] as const) {
      const { head, k: found } = law(pump, time) as { head: number; k: number };
      expect(head).toBeCloseTo(10 + speed ** 2 * 60, 12);
      expect(found).toBeCloseTo(k, 6);
    }
    // One without inertia is at rest at once.
    expect((law({ ...pump, halfSpeedTime: 0 }, 2.001) as { head: number }).head).toBe(10);
  });

  test("meets the line where k q |q| + B q = head − C; held at a head, where k q |q| is all of it", () => {
    fc.assert(
      fc.property(number(-100, 100), number(0, 1e7), number(-100, 100), number(1, 1e5), (head, k, C, B) => {
        const q = flowInto({ head, k }, C, B);
        const scale = 1 + Math.abs(head) + Math.abs(C);
        expect(Math.abs(k * q * Math.abs(q) + B * q - (head - C))).toBeLessThanOrEqual(1e-14 * scale);
        expect(flowInto({ flow: 3 }, C, B)).toBe(3);
        const still = flowAtHead({ head, k: k + 1 }, C);
        expect(Math.abs((k + 1) * still * Math.abs(still) - (head - C))).toBeLessThanOrEqual(1e-14 * scale);
        expect(flowAtHead({ flow: 3 }, C)).toBe(3);
      }),
    );
  });
});

describe("an air tank", () => {
  const given = {
    volume: 0.1,
    precharge: 1e5,
    exponent: 1.3,
    connectionDiameter: 0.02,
    connectionLoss: 4,
  } as never as Parameters<typeof settledTank>[0];
  const site = { elevation: 5, weight: 9806.65, atmosphere: 1e5 };

  test("settles at the pressure of its head, slowly filled: p V stays what it was empty", () => {
    // 35 m above it are 343 kPa gauge; empty it holds 0.1 m³ at 200 kPa.
    const { air, flow, k, gasConstant } = settledTank(given, site, 40);
    const pressure = 35 * 9806.65 + 1e5;
    expect(air).toBeCloseTo((0.1 * 2e5) / pressure, 15);
    expect(flow).toBe(0);
    expect(k).toBeCloseTo(4 / (2 * g * area(0.02) ** 2), 3);
    expect(gasConstant / (pressure * air ** 1.3)).toBeCloseTo(1, 14);
    expect(airPressure(given, { air, flow, k, gasConstant }, air) / pressure).toBeCloseTo(1, 14);
    expect(airPressure(given, { air, flow, k, gasConstant }, air / 2) / (2 ** 1.3 * pressure)).toBeCloseTo(1, 14);
  });

  test("under its precharge is empty", () => {
    expect(settledTank(given, site, 5).air).toBe(0.1);
    expect(settledTank(given, site, 5 + 1e5 / 9806.65).air).toBeCloseTo(0.1, 15);
  });

  test("takes what brings its head and the line's together at the end of the step, by the mean flow of the step", () => {
    fc.assert(
      fc.property(number(20, 80), number(1e2, 1e5), number(-1e-3, 1e-3), (lineHead, B, before) => {
        const state = { ...settledTank(given, site, 40), flow: before };
        const headAt = (flow: number) => lineHead - B * flow;
        const flow = tankFlow(given, state, site, 0.01, headAt);
        const air = state.air - 0.01 * ((before + flow) / 2);
        const head = 5 + (airPressure(given, state, air) - 1e5) / 9806.65 + state.k * flow * Math.abs(flow);
        expect(Math.abs(head - headAt(flow))).toBeLessThan(1e-7);
        fillTank(given, state, 0.01, flow);
        expect(state.air).toBeCloseTo(air, 15);
        expect(state.flow).toBe(flow);
      }),
    );
  });

  test("gives no more than it holds, and then begins again from rest", () => {
    const state = settledTank(given, site, 40);
    // A line that takes whatever it is given.
    const flow = tankFlow(given, state, site, 10, () => -1e5);
    expect(flow).toBeCloseTo((-2 * (0.1 - state.air)) / 10, 14);
    fillTank(given, state, 10, flow);
    expect([state.air, state.flow]).toEqual([0.1, 0]);
    const full = settledTank(given, site, 40);
    expect(tankFlow(given, full, site, 10, () => 1e30)).toBeCloseTo((2 * full.air) / 10, 9);
  });
});

describe("the grid", () => {
  const pipes = [
    { ...pipe(100, 0.05, 1000, 0.02), endElevation: 10 },
    { ...pipe(60, 0.04, 500, 0.03), endElevation: 4 },
  ] as never as Parameters<typeof lineGrid>[0];

  test("cuts each pipe in steps of one time, evenly along its length and its slope", () => {
    // 0.1 s and 0.12 s: 22 reaches are 10 and 12 of 0.01 s, and no wave speed is moved.
    const grid = lineGrid(pipes, -5, 22);
    expect(grid.timeStep).toBeCloseTo(0.01, 15);
    expect(grid.distance.length).toBe(23);
    expect(grid.waveSpeedShift).toBeLessThan(1e-12);
    for (const [i, x, z] of [
      [0, 0, -5],
      [5, 50, 2.5],
      [10, 100, 10],
      [16, 130, 7],
      [22, 160, 4],
    ] as const) {
      expect(grid.distance[i]).toBeCloseTo(x, 10);
      expect(grid.elevation[i]).toBeCloseTo(z, 10);
    }
    const reach = (i: number) => [grid.impedance[i], grid.resistance[i], grid.water[i]] as const;
    const expected = (a: number, D: number, f: number, dx: number) =>
      [a / (g * area(D)), (f * dx) / (2 * g * D * area(D) ** 2), area(D) * dx] as const;
    for (const [i, values] of [
      [9, expected(1000, 0.05, 0.02, 10)],
      [10, expected(500, 0.04, 0.03, 5)],
    ] as const) {
      reach(i).forEach((value, j) => {
        expect((value as number) / (values[j] as number)).toBeCloseTo(1, 12);
      });
    }
    expect(grid.firstArea).toBeCloseTo(area(0.05), 15);
    expect(grid.smallestArea).toBeCloseTo(area(0.04), 15);
  });

  test("moves wave speeds to whole steps, and says how far; a short pipe keeps one reach", () => {
    // Of 0.22 s in 5 steps of 0.044 s: 0.1 s is 2.27, taken as 2; 0.12 s is 2.73, taken as 3.
    const { waveSpeedShift, timeStep } = lineGrid(pipes, 0, 5);
    expect(timeStep).toBeCloseTo(0.044, 15);
    expect(waveSpeedShift).toBeCloseTo(0.1 / (2 * 0.044) - 1, 12);
    const short = lineGrid([...pipes, { ...pipe(0.1, 0.05, 1000) }] as never, 0, 22);
    expect(short.distance.length).toBe(24);
    expect(short.distance[23]).toBeCloseTo(160.1, 10);
  });

  test("keeps the history of the node nearest to a probe, the first of two as near", () => {
    const grid = lineGrid(pipes.slice(0, 1), 0, 4);
    const at = (distance: number) => keepHistory(grid, distance, 9806.65).history.distance;
    expect([0, 12.4, 12.5, 12.6, 25, 99, 100].map(at)).toEqual([0, 0, 0, 25, 25, 100, 100]);
  });

  test("pays for 200 000 steps, 20 million nodes and 2 million kept values", () => {
    const refusedAt = (steps: number, nodes: number, probes: number) =>
      refused(() => stepsWithin(steps * 0.01, 0.01, nodes, probes));
    for (const [steps, nodes, probes] of [
      [200_000, 100, 0],
      [20_000, 1000, 0],
      [40_000, 100, 50],
    ] as const) {
      expect(refusedAt(steps - 0.5, nodes, probes)).toBeUndefined();
      expect(refusedAt(steps + 0.5, nodes, probes)).toBe("duration");
    }
    expect(stepsWithin(1, 0.3, 10, 0)).toBe(4);
    expect(stepsWithin(1, 0.25, 10, 0)).toBe(4);
    expect(() => stepsWithin(4000, 0.01, 100, 7)).toThrow(/at most 200000 time steps/);
    expect(() => stepsWithin(4000, 0.01, 100, 11)).toThrow(/at most 181818 time steps/);
  });
});

describe("the steady start", () => {
  const pipes = [pipe(100, 0.05, 1000, 0.02), pipe(50, 0.05, 1000, 0.02)];
  const grid = () => lineGrid(pipes, 0, 6);
  const R = (0.02 * 150) / (2 * g * 0.05 * area(0.05) ** 2);
  const start = (from: object, to: object) => steadyStart({ pipes, start: from, end: to } as never, grid());
  const valve = (outletHead: number) => ({
    kind: "valve",
    outletHead,
    ratedFlow: 0.002,
    ratedHeadLoss: 5,
    openings: [{ time: 0, opening: 1 }],
  });
  const k = 5 / 0.002 ** 2;
  const pump = {
    kind: "pump",
    sourceHead: 0,
    shutoffHead: 60,
    ratedFlow: 0.002,
    ratedHead: 55,
    stopTime: 1,
    halfSpeedTime: 0,
  };

  test.each<[string, object, object, flow: () => number, first: (q: number) => number, last: (q: number) => number]>([
    ["two tanks", held(30), held(20), () => Math.sqrt(10 / R), () => 30, () => 20],
    ["two tanks, backwards", held(20), held(30), () => -Math.sqrt(10 / R), () => 20, () => 30],
    ["two tanks of one head", held(20), held(20), () => 0, () => 20, () => 20],
    ["a tank and a valve", held(30), valve(10), () => Math.sqrt(20 / (R + k)), () => 30, (q) => 10 + k * q * q],
    ["a valve and a tank", valve(10), held(30), () => -Math.sqrt(20 / (R + k)), (q) => 10 + k * q * q, () => 30],
    [
      "a valve and a valve",
      valve(30),
      valve(10),
      () => Math.sqrt(20 / (R + 2 * k)),
      (q) => 30 - k * q * q,
      (q) => 10 + k * q * q,
    ],
    ["a pump and a tank", pump, held(40), () => Math.sqrt(20 / (R + k)), (q) => 60 - k * q * q, () => 40],
    ["a pump too weak for the tank", pump, held(61), () => 0, () => 61, () => 61],
    ["a pump just too weak for it", pump, held(60), () => 0, () => 60, () => 60],
    ["a pump and a dead end", pump, { kind: "closed" }, () => 0, () => 60, () => 60],
    ["a pump and a flow", pump, flows([0, 0.001]), () => 0.001, (q) => 60 - k * q * q, (q) => 60 - (k + R) * q * q],
    ["a tank and a flow", held(30), flows([0, 0.001]), () => 0.001, () => 30, (q) => 30 - R * q * q],
    ["a tank and a flow put in", held(30), flows([0, -0.001]), () => -0.001, () => 30, (q) => 30 + R * q * q],
    ["a flow and a tank", flows([0, 0.001]), held(30), () => 0.001, (q) => 30 + R * q * q, () => 30],
    ["a dead end and a tank", { kind: "closed" }, held(30), () => 0, () => 30, () => 30],
  ])("%s", (_, from, to, flow, first, last) => {
    const found = start(from, to);
    expect(found.flow).toBeCloseTo(flow(), 14);
    expect(found.heads[0]).toBeCloseTo(first(found.flow), 9);
    expect(found.heads.at(-1)).toBeCloseTo(last(found.flow), 9);
    // Friction goes evenly along the one bore.
    const [a, b] = [found.heads[0] as number, found.heads.at(-1) as number];
    found.heads.forEach((head, i) => {
      expect(head).toBeCloseTo(a + ((b - a) * i) / 6, 9);
    });
  });

  test("between tanks of one head is at rest even where nothing holds the flow", () => {
    const smooth = [pipe(100, 0.05, 1000, 0)];
    const found = steadyStart({ pipes: smooth, start: held(20), end: held(20) } as never, lineGrid(smooth, 0, 2));
    expect([found.flow, ...found.heads]).toEqual([0, 20, 20, 20]);
  });

  test("is refused where the ends do not go together, by name", () => {
    expect(() => start(flows([0, 0.001]), flows([0, 0.001]))).toThrow(/an end that sets a head/);
    expect(() => start(flows([0, 0.001]), flows([0, -0.001]))).toThrow(/the flow that the start of the line lays down/);
    const bore = area(0.05);
    expect(refused(() => start(flows([0, 0.001]), flows([0, 0.001])))).toBe("end");
    expect(refused(() => start(flows([0, 0.001]), flows([0, 0.0011])))).toBe("end");
    expect(refused(() => start({ kind: "closed" }, { kind: "closed" }))).toBe("end");
    expect(refused(() => start(pump, flows([0, -0.001])))).toBe("end");
    expect(refused(() => start(held(30), flows([0, 0], [1, 100.1 * bore])))).toBe("end.flows");
    expect(refused(() => start(flows([0, 0], [1, -100.1 * bore]), held(30)))).toBe("start.flows");
    expect(refused(() => start(held(30), flows([0, 0], [1, 99.9 * bore])))).toBeUndefined();
    // 100 m/s through 150 m of this pipe takes 60 v²/(2 g) = 30 592 m.
    const lost = (0.02 * 150 * 100 ** 2) / (0.05 * 2 * g);
    expect(refused(() => start(held(lost * 1.001), held(0)))).toBe("pipes");
    expect(refused(() => start(held(lost * 0.999), held(0)))).toBeUndefined();
    // A flow forced through a valve all but shut, where 100 km of head is the most.
    const narrow = { ...valve(0), ratedFlow: 0.0002 };
    const through = (q: number) => refused(() => start(flows([0, q]), narrow));
    const most = Math.sqrt(1e5 / (R + 5 / 0.0002 ** 2));
    expect([through(most * 0.999), through(most * 1.001)]).toEqual([undefined, "end"]);
  });
});
