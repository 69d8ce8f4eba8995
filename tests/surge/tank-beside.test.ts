/** An air tank beside an end that answers to the head, and one that runs empty while it gives. */
import { simulateSurge } from "risingmain/surge";
import { expect, test } from "vitest";
import { fillTank, settledTank, tankFlow } from "../../src/surge/air-tank.ts";
import { settledEnd, stepEnd } from "../../src/surge/end-node.ts";
import { held, pipe, STANDARD_GRAVITY, water } from "./lines.ts";

const site = { elevation: 2, weight: 1000 * STANDARD_GRAVITY, atmosphere: 101_325 };
const airTank = { volume: 0.1, precharge: 1e5, exponent: 1.2, connectionDiameter: 0.02, connectionLoss: 1 } as never;

test("a pump gives what its curve says at the head that line and tank then have", () => {
  const pump = {
    kind: "pump",
    sourceHead: 0,
    shutoffHead: 60,
    ratedFlow: 0.002,
    ratedHead: 40,
    stopTime: 1,
    halfSpeedTime: 0,
    checkValveDelay: 0,
    airTank,
  };
  const node = settledEnd({ end: pump as never, at: "start", site, boilingHead: -8 }, { head: 40, into: 0.002 });
  const before = node.tank?.state.air as number;
  for (const C of [10, 45]) {
    const air = node.tank?.state.air as number;
    const flow = node.tank?.state.flow as number;
    const { head, into } = stepEnd(node, 0.5, 0.01, C, 5000);
    // 20 m lost at 0.002 m³/s: k = 5e6.
    expect(head).toBeCloseTo(60 - 5e6 * node.passing ** 2, 7);
    expect(head).toBeCloseTo(C + 5000 * into, 9);
    const taken = node.passing - into;
    expect(node.tank?.state.air).toBeCloseTo(air - (0.01 * (flow + taken)) / 2, 14);
  }
  expect(before).toBeGreaterThan(0);
});

test("a tank that is giving as it runs empty gives what it has left, by the mean of the step", () => {
  const state = { ...settledTank(airTank, site, 40), flow: -0.001 };
  const left = 0.1 - state.air;
  // (before + flow) / 2 for 10 s is all that is left.
  const flow = tankFlow(airTank, state, site, 10, () => -1e5);
  expect(flow).toBeCloseTo((-2 * left) / 10 + 0.001, 14);
  fillTank(airTank, state, 10, flow);
  expect([state.air, state.flow]).toEqual([0.1, 0]);
});

test("more pipes than the usual reaches have a reach each", () => {
  const many = simulateSurge({
    ...water,
    pipes: new Array(60).fill(pipe(10, 0.05, 1000)),
    startElevation: 0,
    start: held(20),
    end: { kind: "closed" },
    duration: 0.1,
  } as never);
  expect(many.state === "followed" && many.envelope.length).toBe(61);
});
