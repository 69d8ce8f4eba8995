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
  const [source] = network.sources;
  const head0 = source?.kind === "fixed head" ? source.head : 0;
  const up = network.runs.map(({ from }) => Number(from));
  // Of each use: the head that each junction is asked for, and what each run loses in each size.
  const uses = scenarios.map(({ open }) => {
    const isOpen = network.outlets.map(({ id }) => open.includes(id));
    const taken = [0, ...network.outlets.map((outlet, i) => (isOpen[i] ? (outlet as { flow: number }).flow : 0))];
    for (let i = count; i > 0; i--) (taken[up[i - 1] as number] as number) += taken[i] as number;
    return {
      asked: network.outlets.map(
        ({ leastPressure = 0 }, i) =>
          (network.junctions[i + 1]?.elevation as number) + (isOpen[i] ? leastPressure / PER_HEAD : 0),
      ),
      lost: network.runs.map((run, i) =>
        sizes.map(({ insideDiameter }) => lossOf({ ...run, insideDiameter } as Run, taken[i + 1] as number)),
      ),
    };
  });
  let best = Infinity;
  for (let code = 0; code < sizes.length ** count; code++) {
    const pick = network.runs.map((_, i) => Math.floor(code / sizes.length ** i) % sizes.length);
    const cost = network.runs.reduce(
      (sum, run, i) => sum + (run as { length: number }).length * (sizes[pick[i] as number]?.costPerMetre as number),
      0,
    );
    if (cost >= best) continue;
    const works = uses.every(({ asked, lost }) => {
      const head: number[] = [head0];
      return asked.every((least, i) => {
        const left = (head[up[i] as number] as number) - (lost[i]?.[pick[i] as number] as number);
        head.push(left);
        return left >= least - 1e-9;
      });
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

test("a run drawn the other way round changes neither sizes nor pressures, and is handed back as drawn", () => {
  fc.assert(
    fc.property(small, fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }), (layout, turned) => {
      const { network, sizes, scenarios } = layout;
      const runs = network.runs.map((run, i) => (turned[i] ? { ...run, from: run.to, to: run.from } : run));
      const choices = runs.map(({ id }) => ({ run: id, sizes }));
      const there = leastCostSizes({ network, choices, scenarios });
      const back = leastCostSizes({ network: { ...network, runs }, choices, scenarios });
      if (there.state !== "found" || back.state !== "found") {
        expect(back).toEqual(there);
        return;
      }
      const { network: drawn, ...rest } = back;
      expect(there).toMatchObject(rest);
      expect(drawn.runs.map(({ from }) => from)).toEqual(runs.map(({ from }) => from));
    }),
  );
});

test("the solver agrees that the layout found serves every use", () => {
  fc.assert(
    fc.property(small, ({ network, sizes, scenarios }) => {
      const found = leastCostSizes({ network, choices: network.runs.map(({ id }) => ({ run: id, sizes })), scenarios });
      if (found.state !== "found") return;
      let least = Infinity;
      for (const { name, open } of scenarios) {
        const result = solved(solveNetwork({ ...found.network, open }));
        result.junctions.forEach(({ id, pressure }, i) => {
          const asked = i > 0 && open.includes(`o${i - 1}`) ? (network.outlets[i - 1]?.leastPressure as number) : 0;
          least = Math.min(least, pressure - asked);
          if (id === found.tightest.junction && name === found.tightest.scenario) {
            expect(Math.abs(pressure - asked - found.tightest.margin)).toBeLessThan(1e-6 * PER_HEAD);
          }
        });
        result.outlets.forEach(({ state, pressure }, i) => {
          if (state !== "not open")
            expect(pressure as number).toBeGreaterThanOrEqual((network.outlets[i]?.leastPressure as number) - 1e-3);
        });
      }
      expect(Math.abs(found.tightest.margin - least)).toBeLessThan(1e-6 * PER_HEAD);
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

test("sizes of which each loses least in one use: where no one of them serves both, the widest is said to be short", () => {
  const line: Run = {
    id: "r",
    from: "0",
    to: "1",
    law: "darcy-weisbach",
    insideDiameter: m(0.02),
    length: m(100),
    roughness: m(0),
  };
  // A rough wide bore loses less when water creeps, a smooth narrow one when it runs; by more, and so counts as widest.
  const rough = { name: "rough", insideDiameter: m(0.0266), roughness: m(1e-3), costPerMetre: 1 };
  const smooth = { name: "smooth", insideDiameter: m(0.025), roughness: m(0), costPerMetre: 2 };
  const lost = (size: SizeChoice, q: number) => lossOf({ ...line, ...size } as Run, q);
  const sizedFor = (creep: number, rush: number) =>
    leastCostSizes({
      network: {
        water,
        junctions: ["0", "1"].map((id) => ({ id, elevation: m(0) })),
        runs: [line],
        outlets: [
          {
            id: "creep",
            junction: "1",
            kind: "fixed demand",
            flow: flow(2e-5),
            leastPressure: (creep * PER_HEAD) as GaugePressure,
          },
          {
            id: "rush",
            junction: "1",
            kind: "fixed demand",
            flow: flow(4e-4),
            leastPressure: (rush * PER_HEAD) as GaugePressure,
          },
        ],
        sources: [{ id: "tank", junction: "0", kind: "fixed head", head: m(10) }],
      },
      choices: [{ run: "r", sizes: [rough, smooth] }],
      scenarios: ["creep", "rush"].map((id) => ({ name: id, open: [id] })),
    });
  const bySmooth = [10 - lost(smooth, 2e-5), 10 - lost(smooth, 4e-4)] as const;
  const creepByRough = 10 - lost(rough, 2e-5);
  expect(sizedFor(bySmooth[0], bySmooth[1])).toMatchObject({ state: "found", cost: 200 });
  const none = sizedFor(creepByRough, bySmooth[1]);
  expect(none).toMatchObject({ state: "no sizes meet", junction: "1", scenario: "creep" });
  if (none.state === "no sizes meet") expect(none.short).toBeCloseTo(lost(smooth, 2e-5) - lost(rough, 2e-5), 9);
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
