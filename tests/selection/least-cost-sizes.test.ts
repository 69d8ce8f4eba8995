/** The chosen sizes are the cheapest there are, and the layout they make works. */
import fc from "fast-check";
import { type Network, type OutletCoefficient, type Run, solveNetwork } from "risingmain/network";
import { leastCostSizes, type SizeChoice } from "risingmain/selection";
import type { GaugePressure, Velocity } from "risingmain/units";
import { expect, test } from "vitest";
import { flow, lossOf, m, solved, water } from "../network/layouts.ts";
import { type Layout, PER_HEAD, small } from "./layouts.ts";

/** Every combination of sizes, solved by hand in a tree; the least cost that serves all uses. */
function exhaustive({ network, sizes, scenarios }: Layout): number {
  const count = network.runs.length;
  const source = network.sources[0];
  const head0 = source?.kind === "fixed head" ? source.head : 0;
  let best = Infinity;
  for (let code = 0; code < sizes.length ** count; code++) {
    const pick = network.runs.map((_, i) => Math.floor(code / sizes.length ** i) % sizes.length);
    const runs = network.runs.map(
      (run, i) => ({ ...run, insideDiameter: sizes[pick[i] as number]?.insideDiameter }) as Run,
    );
    const cost = runs.reduce(
      (sum, run, i) =>
        sum + (run.law === "power" ? 0 : run.length * (sizes[pick[i] as number]?.costPerMetre as number)),
      0,
    );
    if (cost >= best) continue;
    const works = scenarios.every(({ open }) => {
      const taken = [
        0,
        ...network.outlets.map(({ id }, i) => (open.includes(id) ? (network.outlets[i] as { flow: number }).flow : 0)),
      ];
      for (let i = count; i > 0; i--)
        taken[Number(runs[i - 1]?.from)] = (taken[Number(runs[i - 1]?.from)] as number) + (taken[i] as number);
      const head = [head0 as number];
      for (let i = 1; i <= count; i++) {
        head[i] = (head[Number(runs[i - 1]?.from)] as number) - lossOf(runs[i - 1] as Run, taken[i] as number);
        const outlet = network.outlets[i - 1];
        const asked = open.includes(outlet?.id as string) ? (outlet?.leastPressure as number) : 0;
        if ((head[i] as number) < (network.junctions[i]?.elevation as number) + asked / PER_HEAD - 1e-9) return false;
      }
      return true;
    });
    if (works) best = cost;
  }
  return best;
}

test("on 200 random small layouts the cost is that of the exhaustive search, and proven", () => {
  fc.assert(
    fc.property(small, (layout) => {
      const { network, sizes, scenarios } = layout;
      const best = exhaustive(layout);
      const found = leastCostSizes({ network, choices: network.runs.map(({ id }) => ({ run: id, sizes })), scenarios });
      if (best === Infinity) {
        expect(found.state).toBe("no sizes meet");
        return;
      }
      if (found.state !== "found") throw new Error(`${found.state}, though ${best} is possible`);
      expect(Math.abs(found.cost - best)).toBeLessThan(1e-9 * best);
      expect(found.proven).toBe(true);
    }),
    { numRuns: 200 },
  );
});

test("the solver agrees that the layout found serves every use", () => {
  fc.assert(
    fc.property(small, ({ network, sizes, scenarios }) => {
      const found = leastCostSizes({ network, choices: network.runs.map(({ id }) => ({ run: id, sizes })), scenarios });
      if (found.state !== "found") return;
      for (const { open } of scenarios) {
        const result = solved(solveNetwork({ ...found.network, open }));
        result.outlets.forEach(({ state, pressure }, i) => {
          if (state !== "not open")
            expect(pressure as number).toBeGreaterThanOrEqual((network.outlets[i]?.leastPressure as number) - 1e-3);
        });
      }
    }),
  );
});

test("a limit on speed or pressure rules sizes out, and says so when none is left", () => {
  const network: Network = {
    water,
    junctions: [
      { id: "0", elevation: m(0) },
      { id: "1", elevation: m(-20) },
    ],
    runs: [
      { id: "r", from: "0", to: "1", law: "darcy-weisbach", insideDiameter: m(0.02), length: m(10), roughness: m(0) },
    ],
    outlets: [{ id: "o", junction: "1", kind: "fixed demand", flow: flow(0.0006) }],
    sources: [{ id: "tank", junction: "0", kind: "fixed head", head: m(30) }],
  };
  const sizes = [
    { name: "small", insideDiameter: m(0.0209), costPerMetre: 1 },
    { name: "weak", insideDiameter: m(0.0351), costPerMetre: 2, pressureRating: 4e5 as GaugePressure },
    { name: "strong", insideDiameter: m(0.0351), costPerMetre: 3, pressureRating: 6e5 as GaugePressure },
  ];
  const scenarios = [{ name: "use", open: ["o"] }];
  const at = (choice: readonly SizeChoice[], v: number) =>
    leastCostSizes({ network, choices: [{ run: "r", sizes: choice }], scenarios, greatestVelocity: v as Velocity });
  expect(at(sizes, 10)).toMatchObject({ state: "found", runs: [{ size: "small" }] });
  expect(at(sizes, 1.5)).toMatchObject({ state: "found", runs: [{ size: "strong" }] });
  expect(at(sizes.slice(0, 2), 1.5)).toEqual({
    state: "no size for a run",
    run: "r",
    ruledOut: [
      { size: "small", because: "velocity" },
      { size: "weak", because: "pressure rating" },
    ],
  });
});

test("a loop, a second source and a pressure-dependent outlet are refused by name", () => {
  const junctions = ["a", "b", "c"].map((id) => ({ id, elevation: m(0) }));
  const run = (id: string, from: string, to: string): Run => ({
    id,
    from,
    to,
    law: "darcy-weisbach",
    insideDiameter: m(0.02),
    length: m(10),
    roughness: m(0),
  });
  const tree: Network = {
    water,
    junctions,
    runs: [run("1", "a", "b"), run("2", "b", "c")],
    outlets: [],
    sources: [{ id: "tank", junction: "a", kind: "fixed head", head: m(30) }],
  };
  const size = (network: Network) => () =>
    leastCostSizes({
      network,
      choices: [{ run: "1", sizes: [{ name: "x", insideDiameter: m(0.03), costPerMetre: 1 }] }],
      scenarios: [{ name: "u", open: [] }],
    });
  expect(size(tree)()).toMatchObject({ state: "found" });
  expect(size({ ...tree, runs: [...tree.runs, run("3", "a", "c")] })).toThrow(/loop/);
  expect(
    size({ ...tree, sources: [...tree.sources, { id: "t2", junction: "c", kind: "fixed head", head: m(20) }] }),
  ).toThrow(/one source/);
  const open = { id: "o", junction: "c", kind: "pressure-dependent" as const, coefficient: 1e-4 as OutletCoefficient };
  expect(size({ ...tree, outlets: [open] })).toThrow(/outlets\[0\]\.kind/);
});
