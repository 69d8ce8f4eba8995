/** One step of a line of two reaches, by hand; and closed forms whose value no other test states. */
import type { SurgePipe } from "risingmain/surge";
import { compositeLine, surgeAllowance, waveSpeed } from "risingmain/surge";
import type { Length } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { settledEnd } from "../../src/surge/end-node.ts";
import { lineGrid } from "../../src/surge/line-grid.ts";
import { type LineState, settledLine, stepLine } from "../../src/surge/line-state.ts";
import { area, held, pipe, STANDARD_GRAVITY } from "./lines.ts";

describe("a line of two reaches without friction between two tanks at 20 m", () => {
  const B = 1000 / (STANDARD_GRAVITY * area(0.05));
  const boiling = -8;
  /** A line in which the three nodes have these heads, and all a flow. */
  const line = (heads: readonly number[], flow = 0): LineState =>
    settledLine({ heads: Float64Array.from(heads), flow }, new Float64Array(3).fill(boiling));
  /** Puts the nodes at these heads with nothing flowing, whatever cavities there are. */
  const rest = ({ now }: LineState, heads: readonly number[]): void => {
    now.head.set(heads);
    now.leaving.fill(0);
    now.arriving.fill(0);
  };
  const step = (state: LineState, time = 0.1): void => {
    const grid = lineGrid([pipe(200, 0.05, 1000) as SurgePipe], 0, 2);
    const end = (at: "start" | "end") =>
      settledEnd(
        { end: held(20), at, site: { elevation: 0, weight: 9806.65, atmosphere: 101_325 }, boilingHead: boiling },
        { head: 20, into: 0 },
      );
    stepLine(state, grid, [end("start"), end("end")], time);
  };

  test("the middle takes the mean of what arrives from both sides, the ends their tanks' heads", () => {
    const state = line([30, 25, 10], 0.001);
    step(state);
    // CP = 30 + B q and CM = 10 − B q: the head is their mean, and (CP − CM) / 2 B flows.
    expect(state.now.head[1]).toBeCloseTo(20, 10);
    expect(state.now.leaving[1]).toBeCloseTo((30 - 10) / (2 * B) + 0.001, 14);
    expect(state.now.arriving[1]).toBe(state.now.leaving[1]);
    expect([state.now.head[0], state.now.head[2]]).toEqual([20, 20]);
    // At the start 20 − (25 − B q) drives; at the end 25 + B q − 20 does.
    expect(state.now.leaving[0]).toBeCloseTo((20 - 25) / B + 0.001, 14);
    expect(state.now.arriving[2]).toBeCloseTo((25 - 20) / B + 0.001, 14);
    expect([state.now.arriving[0], state.now.leaving[2]]).toEqual([state.now.leaving[0], state.now.arriving[2]]);
    expect([...state.highest]).toEqual([30, 25, 20]);
    expect([...state.lowest]).toEqual([20, state.now.head[1], 10]);
    expect(state.firstCavity).toBeUndefined();
  });

  test("where it would boil it is held there; the cavity takes what leaves and does not arrive", () => {
    const state = line([-18, 0, -28]);
    step(state);
    const [arriving, leaving] = [(-18 - boiling) / B, (boiling + 28) / B];
    expect(state.now.head[1]).toBe(boiling);
    expect(state.now.arriving[1]).toBeCloseTo(arriving, 14);
    expect(state.now.leaving[1]).toBeCloseTo(leaving, 14);
    const hollow = 0.1 * (leaving - arriving);
    expect(state.cavity[1]).toBeCloseTo(hollow, 14);
    expect(state.firstCavity).toEqual({ node: 1, time: 0.1 });
    expect(state.largestCavity).toBe(state.cavity[1]);
    expect(state.largestShare).toBeCloseTo(hollow / (100 * area(0.05)), 12);

    // A little above boiling it shrinks, and the node is still held; much above, it is used up and the water meets.
    rest(state, [-6, boiling, -6]);
    step(state, 0.2);
    expect(state.now.head[1]).toBe(boiling);
    const left = hollow - 0.1 * ((2 * (-6 - boiling)) / B);
    expect(state.cavity[1]).toBeCloseTo(left, 14);
    rest(state, [40, boiling, 20]);
    step(state, 0.3);
    expect(state.cavity[1]).toBe(0);
    expect(state.now.head[1]).toBeCloseTo(30, 10);
    expect(state.now.arriving[1]).toBeCloseTo((40 - 20) / (2 * B), 14);
    // The record keeps the first and the largest.
    expect(state.firstCavity).toEqual({ node: 1, time: 0.1 });
    expect(state.largestCavity).toBeCloseTo(hollow, 14);
  });

  test("at boiling itself nothing parts", () => {
    const state = line([boiling, 0, boiling]);
    step(state);
    expect(state.now.head[1]).toBeCloseTo(boiling, 12);
    expect(state.cavity[1]).toBe(0);
    expect(state.firstCavity).toBeUndefined();
  });
});

test("a composite line has the inertia of its pieces: L / A is the sum of theirs", () => {
  const line = compositeLine([
    { length: 100, insideDiameter: 0.05, waveSpeed: 400 },
    { length: 50, insideDiameter: 0.1, waveSpeed: 1000 },
  ] as never);
  // A quarter of the inertia a metre in twice the bore: 150 / (100 + 50/4) of the narrow one's area.
  expect(line.area / area(0.05)).toBeCloseTo(150 / 112.5, 12);
  expect(line.insideDiameter).toBeCloseTo(0.05 * Math.sqrt(150 / 112.5), 12);
  expect(line.criticalTime).toBeCloseTo(2 * (100 / 400 + 50 / 1000), 12);
  expect(line.waveSpeed).toBeCloseTo(150 / 0.3, 9);
  expect(line.length).toBe(150 as Length);
});

test("an allowance names the manual of its material; a rigid pipe is always in range", () => {
  const of = (material: "pvc" | "pe") =>
    surgeAllowance({ material, pressureClass: 1, workingPressure: 1, recurringSurge: 0, occasionalSurge: 0 } as never)
      .method;
  expect([of("pvc"), of("pe")]).toEqual(["awwa-m23", "awwa-m55"]);
  expect(waveSpeed({ bulkModulus: 2.1e9, density: 1000 } as never)).toMatchObject({
    insideRange: true,
    supportFactor: 0,
  });
});
