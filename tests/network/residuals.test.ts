/** How far an answer says it is from balance, where one was put out of balance by hand. */
import type { Network, OutletCoefficient, Run } from "risingmain/network";
import { expect, test } from "vitest";
import { type Balance, prepareNetwork } from "../../src/network/balance.ts";
import { solvePrepared } from "../../src/network/solve-network.ts";
import { flow, m, water } from "./layouts.ts";

const run = (id: string, from: string, to: string, more: object = {}): Run =>
  ({ id, from, to, law: "power", resistance: 1e4, exponent: 1, ...more }) as Run;
const network: Network = {
  water,
  junctions: ["a", "b", "c", "d", "e", "x"].map((id) => ({ id, elevation: m(0) })),
  runs: [
    run("ab", "a", "b"),
    run("bc", "b", "c", { valve: { kind: "reducing", setPressure: 2e5 } }),
    run("cd", "c", "d"),
    run("eb", "e", "b"),
    run("bx", "b", "x", { valve: { kind: "shut" } }),
  ],
  outlets: [
    { id: "tap", junction: "d", kind: "fixed demand", flow: flow(1e-3) },
    { id: "hose", junction: "b", kind: "pressure-dependent", coefficient: 1e-4 as OutletCoefficient },
  ],
  sources: [
    { id: "tank", junction: "a", kind: "fixed head", head: m(60) },
    { id: "pump", junction: "e", kind: "curve", headAtFlow: (q) => m(70 - 1e4 * q), largestFlow: flow(0.01) },
  ],
};
/** Links in order: the five runs, the hose, the pump. */
const [AB, BC, CD, EB, , HOSE, PUMP] = [0, 1, 2, 3, 4, 5, 6] as const;

function residuals(spoil: (balance: Balance) => void, settled = true) {
  const prepared = prepareNetwork(network);
  const balance = { ...prepared.balance(Uint8Array.of(1, 1)), settled };
  expect(balance.reducing[BC]).toBe(1);
  spoil(balance);
  const result = solvePrepared({ ...prepared, balance: () => balance }, Uint8Array.of(1, 1));
  expect(result.state).toBe(settled ? "solved" : "not settled");
  return (result as { residuals: { mass: number; energy: number } }).residuals;
}

test("in balance, next to nothing", () => {
  const { mass, energy } = residuals(() => {});
  expect(mass).toBeLessThan(1e-17);
  expect(energy).toBeLessThan(1e-12);
});

test.each<[string, number, junctionsOff: number, slope: number]>([
  ["a run to a tank", AB, 1, 1e4],
  ["a run between junctions", CD, 1, 1e4],
  ["a run from a pump", EB, 1, 1e4],
  ["a pump", PUMP, 1, 1e4],
  ["a reducing valve", BC, 1, 0],
])("%s with 1e-5 m³/s too much: so much at a junction, and its slope times as much along it", (_, link, off, slope) => {
  const { mass, energy } = residuals(({ flow }) => {
    flow[link] = (flow[link] as number) + 1e-5;
  });
  expect(mass).toBeCloseTo(off * 1e-5, 15);
  expect(Math.abs(energy - slope * 1e-5)).toBeLessThan(1e-9);
});

test("a hose with too much: at its junction, and by the square law", () => {
  let head = Number.NaN;
  let given = Number.NaN;
  const { mass, energy } = residuals(({ flow, head: heads }) => {
    head = heads[1] as number;
    flow[HOSE] = (flow[HOSE] as number) - 1e-5;
    given = flow[HOSE] as number;
  });
  expect(mass).toBeCloseTo(1e-5, 15);
  expect(energy).toBeCloseTo(head - (given / 1e-4) ** 2, 9);
});

test("a head too low or too high: the links that meet there are off by it, the flows are not", () => {
  for (const by of [-0.25, 0.25]) {
    const { mass, energy } = residuals(({ head }) => {
      head[3] = (head[3] as number) + by;
    });
    expect(mass).toBeLessThan(1e-17);
    expect(energy).toBeCloseTo(0.25, 9);
  }
});

test("a demand too high is missing at its junction; at one that is cut off nothing counts", () => {
  const at = (junction: number) =>
    residuals(({ demand }) => {
      demand[junction] = (demand[junction] as number) + 1e-4;
    }).mass;
  expect(at(3)).toBeCloseTo(1e-4, 15);
  expect(at(5)).toBeLessThan(1e-17);
  // A tank gives what its junction takes, whatever that is.
  expect(at(0)).toBeLessThan(1e-17);
});

test("said of an answer that did not settle as well", () => {
  const { mass } = residuals(({ flow }) => {
    flow[CD] = (flow[CD] as number) - 2e-5;
  }, false);
  expect(mass).toBeCloseTo(2e-5, 15);
});
