/** One step of an end by hand, and what a result says against the history it was made of. */
import type { PumpEnd } from "risingmain/surge";
import type { Duration, Length, VolumeFlow } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { settledEnd, stepEnd, tankSwing } from "../../src/surge/end-node.ts";
import { BOILING, flows, follow, held, nodes, only, pipe, STANDARD_GRAVITY, stopAtOnce } from "./lines.ts";

const site = { elevation: 2, weight: 1000 * STANDARD_GRAVITY, atmosphere: 101_325 };
const place = (end: object, at: "start" | "end" = "start") => ({ end: end as never, at, site, boilingHead: -8 });
const pump: PumpEnd = {
  kind: "pump",
  sourceHead: 0 as Length,
  shutoffHead: 60 as Length,
  ratedFlow: 0.002 as VolumeFlow,
  ratedHead: 40 as Length,
  stopTime: 1 as Duration,
  halfSpeedTime: 0 as Duration,
  checkValveDelay: 0 as Duration,
};

describe("one step of an end, beside a line with H = C + B q", () => {
  test("of a tank of fixed head: its head, and what that drives", () => {
    const node = settledEnd(place(held(30)), { head: 30, into: 0.001 });
    expect(stepEnd(node, 1, 0.1, 25, 5000)).toEqual({ head: 30, into: 5 / 5000 });
  });

  test("of a pump: 60 − k q² meets C + B q", () => {
    const node = settledEnd(place(pump), { head: 40, into: 0.002 });
    // k = 20/0.002² = 5e6: 60 − 5e6 q² = 30 + 5000 q at q = 0.002.
    const { head, into } = stepEnd(node, 0.5, 0.1, 30, 5000);
    expect(into).toBeCloseTo(0.002, 15);
    expect(head).toBeCloseTo(40, 10);
    expect(node).toMatchObject({ open: true, turned: undefined, shut: undefined });
  });

  test("of an ideal check valve: shut with the first step that would turn, noted once and only after the stop", () => {
    const node = settledEnd(place(pump), { head: 40, into: 0.002 });
    // While the pump runs the line may press it shut, which is not what is asked.
    expect(stepEnd(node, 0.9, 0.1, 70, 5000)).toEqual({ head: 70, into: 0 });
    expect(node).toMatchObject({ open: false, shut: undefined });
    stepEnd(node, 1, 0.1, 30, 5000);
    expect(node.open).toBe(true);
    expect(stepEnd(node, 1.1, 0.1, 70, 5000)).toEqual({ head: 70, into: 0 });
    expect(node.shut).toEqual({ time: 1.1, flow: 0 });
    stepEnd(node, 1.2, 0.1, -5, 5000);
    expect(node.open).toBe(true);
    stepEnd(node, 1.3, 0.1, 70, 5000);
    expect(node.shut).toEqual({ time: 1.1, flow: 0 });
  });

  test("of a late check valve: what turned runs back for its delay, and the last of it is told", () => {
    const node = settledEnd(place({ ...pump, checkValveDelay: 0.25 }), { head: 40, into: 0.002 });
    const back = (drive: number) => (-2 * drive) / (5000 + Math.sqrt(5000 ** 2 + 4 * 5e6 * drive));
    // Turned at 1.1; at 1.2 and 1.3 it is late, at 1.4 the 0.25 s are over.
    for (const [time, C] of [
      [1.1, 10],
      [1.2, 20],
      [1.3, 30],
    ] as const) {
      expect(stepEnd(node, time, 0.1, C, 5000).into).toBeCloseTo(back(C), 15);
      expect(node).toMatchObject({ open: true, turned: 1.1, shut: undefined });
    }
    expect(stepEnd(node, 1.4, 0.1, 40, 5000).into).toBe(0);
    expect(node.open).toBe(false);
    expect(node.shut?.time).toBe(1.4);
    expect(node.shut?.flow).toBeCloseTo(back(30), 15);
    // Once shut it is not late again.
    expect(stepEnd(node, 1.5, 0.1, 40, 5000).into).toBe(0);
    // Forward flow begins the count anew.
    const again = settledEnd(place({ ...pump, checkValveDelay: 0.25 }), { head: 40, into: 0.002 });
    stepEnd(again, 1.1, 0.1, 10, 5000);
    stepEnd(again, 1.2, 0.1, -5, 5000);
    expect(again.turned).toBeUndefined();
    stepEnd(again, 1.3, 0.1, 10, 5000);
    expect(again.turned).toBe(1.3);
  });

  test("that would boil: held there while a cavity makes up the difference, until it is used up", () => {
    const node = settledEnd(place({ kind: "closed" }), { head: 20, into: 0 });
    // (−8 − (−18)) / 5000 = 0.002 leaves into the line, for a tenth of a second.
    expect(stepEnd(node, 0.1, 0.1, -18, 5000)).toEqual({ head: -8, into: 0.002 });
    expect(node.cavity).toBeCloseTo(0.0002, 15);
    expect(stepEnd(node, 0.2, 0.1, -3, 5000)).toEqual({ head: -8, into: -0.001 });
    expect(node.cavity).toBeCloseTo(0.0001, 15);
    expect(stepEnd(node, 0.3, 0.1, 12, 5000)).toEqual({ head: 12, into: 0 });
    expect(node.cavity).toBe(0);
  });

  test("that draws: what it takes makes the cavity the larger", () => {
    const node = settledEnd(place(flows([0, 0.001]), "end"), { head: 20, into: -0.001 });
    expect(stepEnd(node, 0.1, 0.1, -18, 5000)).toEqual({ head: -8, into: 0.002 });
    expect(node.cavity).toBeCloseTo(0.1 * (0.002 + 0.001), 15);
  });

  test("with a tank: what comes through the end goes into line and tank", () => {
    const airTank = { volume: 0.1, precharge: 1e5, exponent: 1.2, connectionDiameter: 0.02, connectionLoss: 1 };
    const node = settledEnd(place({ kind: "flow", flows: [{ time: 0, flow: 0.001 }], airTank }), {
      head: 40,
      into: 0.001,
    });
    const before = node.tank?.state.air as number;
    expect(node.tank).toMatchObject({ mostAir: before, leastAir: before });
    const { head, into } = stepEnd(node, 0.1, 0.1, 50, 5000);
    expect(head).toBeCloseTo(50 + 5000 * into, 10);
    const taken = 0.001 - into;
    expect(node.tank?.state.air).toBeCloseTo(before - (0.1 * taken) / 2, 12);
    expect(node.tank?.leastAir).toBe(node.tank?.state.air);
    expect(node.tank?.mostAir).toBe(before);
    const [swing] = tankSwing(node);
    const absolute = (air: number) => (site.weight * 38 + 101_325) * (before / air) ** 1.2;
    expect(swing?.at).toBe("start");
    expect(swing?.lowestPressure).toBeCloseTo(absolute(before) - 101_325, 4);
    expect(swing?.highestPressure).toBeCloseTo(absolute(node.tank?.leastAir as number) - 101_325, 4);
    expect(swing?.leastWater).toBeCloseTo(0.1 - before, 14);
    expect(swing?.mostWater).toBeCloseTo(0.1 - (node.tank?.leastAir as number), 14);
    expect(tankSwing(settledEnd(place({ kind: "closed" }), { head: 1, into: 0 }))).toEqual([]);
    expect(tankSwing(settledEnd(place(held(1)), { head: 1, into: 0 }))).toEqual([]);
  });
});

describe("a result", () => {
  const sloping = [
    { ...pipe(100, 0.05, 1000, 0.02), endElevation: 5 as Length },
    { ...pipe(100, 0.05, 1000, 0.02), endElevation: -5 as Length },
  ];
  const parted = () =>
    follow({
      pipes: sloping,
      startElevation: 3 as Length,
      start: stopAtOnce(0.002),
      end: held(20),
      duration: 2 as Duration,
      reaches: 20,
      probes: nodes(200, 20),
    });

  test("has an envelope that is the highest and lowest of the histories, in metres and in pascal", () => {
    const { envelope, histories, steps, timeStep, highestPressure, lowestPressure } = parted();
    expect(timeStep).toBeCloseTo(0.01, 12);
    expect(steps).toBe(200);
    expect(envelope.length).toBe(21);
    const weight = 1000 * STANDARD_GRAVITY;
    envelope.forEach((point, i) => {
      const { heads, pressures, flows, distance } = histories[i] as (typeof histories)[number];
      expect(heads.length).toBe(201);
      expect(flows.length).toBe(201);
      expect(distance).toBe(point.distance);
      expect(point.distance).toBeCloseTo(10 * i, 9);
      expect(point.elevation).toBeCloseTo(i <= 10 ? 3 + 0.2 * i : 5 - (i - 10), 9);
      expect([point.startHead, point.highestHead, point.lowestHead]).toEqual([
        heads[0],
        Math.max(...heads),
        Math.min(...heads),
      ]);
      expect(point.highestPressure).toBeCloseTo(weight * (point.highestHead - point.elevation), 6);
      expect(point.lowestPressure).toBeCloseTo(weight * (point.lowestHead - point.elevation), 6);
      heads.forEach((head, step) => {
        expect(pressures[step]).toBeCloseTo(weight * (head - point.elevation), 6);
      });
    });
    expect(highestPressure).toBe(Math.max(...envelope.map((point) => point.highestPressure)));
    expect(lowestPressure).toBe(Math.min(...envelope.map((point) => point.lowestPressure)));
  });

  test("dates the first cavity by the first head that boils, where it does", () => {
    const { columnSeparation, envelope, histories, timeStep } = parted();
    let first: readonly [step: number, node: number] | undefined;
    for (let step = 0; step <= 200 && first === undefined; step++) {
      const node = histories.findIndex(
        ({ heads }, i) => Math.abs((heads[step] as number) - BOILING - (envelope[i]?.elevation as number)) < 1e-9,
      );
      if (node >= 0) first = [step, node];
    }
    const [step, node] = first as readonly [number, number];
    expect(columnSeparation?.time).toBeCloseTo(step * timeStep, 12);
    expect(columnSeparation?.distance).toBe(envelope[node]?.distance);
    expect(columnSeparation?.largestCavity).toBeGreaterThan(0);
  });

  test("is out of range where a cavity is large against its reach, or a wave speed was moved by more than 15 %", () => {
    const stopped = (reaches: number) =>
      follow({
        pipes: [pipe(200, 0.05, 1000)],
        start: stopAtOnce(0.002),
        end: held(20),
        duration: 0.6 as Duration,
        reaches,
      });
    // Of 1.02 m/s the fall of 30 m takes off 0.29; the rest runs on for 2 L/a = 0.4 s: 0.29 m of a reach of 100 or 2 m.
    expect([2, 100].map((reaches) => stopped(reaches).insideRange)).toEqual([true, false]);
    const uneven = (reaches: number) =>
      follow({
        pipes: [pipe(100, 0.05, 1000), pipe(60, 0.05, 500)],
        start: held(20),
        end: { kind: "closed" },
        duration: 0.1 as Duration,
        reaches,
      });
    // Of 0.22 s in 5 steps, 0.1 s is moved by 0.1/(2 · 0.044) − 1 = 13.6 %; in 3 steps by 36 %.
    expect([5, 3].map((reaches) => uneven(reaches).insideRange)).toEqual([true, false]);
    expect(uneven(3).waveSpeedShift).toBeCloseTo(0.1 / (0.22 / 3) - 1, 12);
  });

  test("tells the reverse velocity at a late check valve by the first pipe's bore", () => {
    const surge = follow({
      pipes: [pipe(100, 0.05, 1000, 0.02), pipe(100, 0.1, 1000, 0.02)],
      start: { ...pump, checkValveDelay: 0.3 as Duration },
      end: held(35),
      duration: 4 as Duration,
      probes: [0 as Length],
    });
    const { flows } = only(surge);
    const shut = Math.round((surge.checkValve?.time as number) / surge.timeStep);
    expect(flows[shut]).toBe(0);
    expect(surge.checkValve?.reverseVelocity).toBeCloseTo(
      -(flows[shut - 1] as number) / ((Math.PI / 4) * 0.05 ** 2),
      12,
    );
    expect(surge.checkValve?.reverseVelocity as number).toBeGreaterThan(0);
  });

  test("of a line that goes on as it was has no separation and no check valve", () => {
    const still = follow({
      pipes: [pipe(100, 0.05, 1000, 0.02)],
      start: held(30),
      end: held(29),
      duration: 1 as Duration,
    });
    expect(still).not.toHaveProperty("columnSeparation");
    expect(still).not.toHaveProperty("checkValve");
    expect(still.airTanks).toEqual([]);
    expect(still.histories).toEqual([]);
    expect(still.steps).toBe(Math.ceil(1 / still.timeStep));
    expect(still.envelope.length).toBe(51);
  });
});
