/** Uses, the worst of them, pumps as sources, and profiles. */
import fc from "fast-check";
import { gradeLine, pumpSource, solveNetwork, solveScenarios, tankSource, worstCombination } from "risingmain/network";
import { pumpCurve, pumpHeadAt } from "risingmain/pump";
import type { Density, GaugePressure } from "risingmain/units";
import { expect, test } from "vitest";
import { flow, layouts, m, solved, water } from "./layouts.ts";

test("the worst combination is the worst of all, solved one by one", () => {
  fc.assert(
    fc.property(layouts({ loops: 3, pressureDependent: false }), fc.integer({ min: 1, max: 3 }), (network, k) => {
      const outlets = network.outlets.slice(0, 6);
      const openAtOnce = Math.min(k, outlets.length);
      const some = { ...network, outlets };
      let least = Infinity;
      for (let code = 0; code < 2 ** outlets.length; code++) {
        const open = outlets.filter((_, i) => (code >> i) % 2 === 1).map(({ id }) => id);
        if (open.length !== openAtOnce) continue;
        for (const { state, pressure } of solved(solveNetwork({ ...some, open })).outlets) {
          if (state !== "not open") least = Math.min(least, pressure);
        }
      }
      const worst = worstCombination({ network: some, openAtOnce });
      expect(worst.proven).toBe(true);
      expect(worst.open.length).toBe(openAtOnce);
      expect(Math.abs((worst.margin as number) - least)).toBeLessThan(1e-3);
    }),
    { numRuns: 40 },
  );
});

test("scenarios are the single solutions, and the least pressure is the least of them", () => {
  fc.assert(
    fc.property(layouts({ loops: 3, pressureDependent: true }), (network) => {
      const scenarios = network.outlets.map(({ id }) => ({ name: `only ${id}`, open: [id] }));
      const { results, leastPressures } = solveScenarios({ network, scenarios });
      results.forEach(({ result }, s) => {
        expect(result).toEqual(solveNetwork({ ...network, open: scenarios[s]?.open ?? [] }));
      });
      expect(leastPressures.map(({ scenario }) => scenario)).toEqual(scenarios.map(({ name }) => name));
    }),
    { numRuns: 30 },
  );
});

test("a pump's head is level plus pump less loss, and no more than its regulating valve holds", () => {
  const curve = pumpCurve({
    points: [
      { flow: flow(0), head: m(100) },
      { flow: flow(0.001), head: m(70) },
      { flow: flow(0.0015), head: m(40) },
    ],
  });
  const place = {
    id: "p",
    junction: "j",
    curve,
    waterLevelAt: (q: number) => m(-30 - 2000 * q),
    lossAt: (q: number) => m(3e6 * q * q),
  };
  const valve = { setPressure: 4e5 as GaugePressure, minimumFlow: flow(6e-5) };
  const free = pumpSource(place);
  const held = pumpSource({ ...place, regulated: { valve, elevation: m(2), density: 1000 as Density } });
  const holds = 2 + 4e5 / 9806.65;
  for (let q = 0; q <= 0.0015; q += 0.0001) {
    const open = -30 - 2000 * q + pumpHeadAt(curve, flow(q)) - 3e6 * q * q;
    expect(free.headAtFlow(flow(q))).toBeCloseTo(open, 9);
    expect(held.headAtFlow(flow(q))).toBeCloseTo(Math.min(open, holds), 9);
  }
  const result = solved(
    solveNetwork({
      water,
      junctions: [{ id: "j", elevation: m(2) }],
      runs: [],
      outlets: [{ id: "tap", junction: "j", kind: "fixed demand", flow: flow(0.0004) }],
      sources: [held],
    }),
  );
  expect(result.junctions[0]?.pressure).toBeCloseTo(4e5 * 0.9997, 3);
});

test("Newton's slopes are right: a looped layout with outlets balances within 25 linear systems", () => {
  fc.assert(
    fc.property(layouts({ loops: 5, pressureDependent: true }), (network) => {
      const runs = network.runs.filter(({ law }) => law !== "power");
      fc.pre(runs.length === network.runs.length);
      expect(solved(solveNetwork(network)).iterations).toBeLessThan(25);
    }),
  );
});

test("a grade line walks its runs either way and adds their lengths", () => {
  const pipe = { law: "darcy-weisbach", insideDiameter: m(0.03), length: m(40), roughness: m(1e-6) } as const;
  const network = {
    water,
    junctions: ["a", "b", "c"].map((id) => ({ id, elevation: m(1) })),
    runs: [
      { id: "1", from: "b", to: "a", ...pipe },
      { id: "2", from: "b", to: "c", ...pipe },
    ],
    outlets: [{ id: "tap", junction: "c", kind: "fixed demand" as const, flow: flow(0.0005) }],
    sources: [
      tankSource({ id: "t", junction: "a", elevation: m(1), pressure: 3e5 as GaugePressure, density: water.density }),
    ],
  };
  const solution = solved(solveNetwork(network));
  const points = gradeLine({ network, solution, from: "a", runs: ["1", "2"] });
  expect(points.map(({ junction, distance }) => `${junction} ${distance}`)).toEqual(["a 0", "b 40", "c 80"]);
  expect(points.map(({ head }) => head)).toEqual(solution.junctions.map(({ head }) => head));
  expect(() => gradeLine({ network, solution, from: "c", runs: ["1"] })).toThrow(/starts or ends/);
});
