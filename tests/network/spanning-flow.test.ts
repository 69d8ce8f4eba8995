/** What a balance is rewritten from: what each outlet takes, the heads held, and in a loop the flow of its worst run. */
import type { Network, NetworkSource, Outlet, OutletCoefficient, Run } from "risingmain/network";
import { describe, expect, test } from "vitest";
import { prepareNetwork } from "../../src/network/balance.ts";
import { spanningFlow } from "../../src/network/spanning-flow.ts";
import { flow, m, water } from "./layouts.ts";

/** A straight law, so that what a run resists does not depend on its flow. */
const run = (id: string, from: string, to: string, resistance = 1e4, more: object = {}): Run =>
  ({ id, from, to, law: "power", resistance, exponent: 1, ...more }) as Run;
const draws = (junction: string, q: number): Outlet => ({
  id: junction,
  junction,
  kind: "fixed demand",
  flow: flow(q),
});
const tank = (junction: string, head: number): NetworkSource => ({
  id: junction,
  junction,
  kind: "fixed head",
  head: m(head),
});
const pump = (junction: string): NetworkSource => ({
  id: `pump ${junction}`,
  junction,
  kind: "curve",
  headAtFlow: (q) => m(60 - 1e4 * q),
  largestFlow: flow(0.01),
});
const hose = (junction: string): Outlet => ({
  id: `${junction} hose`,
  junction,
  kind: "pressure-dependent",
  coefficient: 1e-4 as OutletCoefficient,
});
const yard = (runs: readonly Run[], outlets: readonly Outlet[], sources: readonly NetworkSource[]): Network => ({
  water,
  junctions: [...new Set(runs.flatMap(({ from, to }) => [from, to]))].map((id) => ({ id, elevation: m(0) })),
  runs,
  outlets,
  sources,
});

/** Spoils flows and the heads not held of a balance, has it rewritten, and compares. */
function expectRewritten(network: Network, keeps: (id: string) => boolean = () => false): void {
  const prepared = prepareNetwork(network);
  const good = prepared.balance(new Uint8Array(network.outlets.length).fill(1));
  expect(good.settled).toBe(true);
  const held = new Set([
    ...network.sources.flatMap(({ kind, junction }) => (kind === "fixed head" ? [junction] : [])),
    ...network.runs.flatMap(({ to }, l) => (good.reducing[l] ? [to] : [])),
  ]);
  const hoses = new Set(prepared.outletLink);
  const spoilt = {
    ...good,
    flow: good.flow.map((q, l) => {
      const kept = good.shut[l] || hoses.has(l) || keeps(network.runs[l]?.id ?? "");
      return kept ? q : 0.003;
    }),
    head: good.head.map((h, i) => {
      const junction = network.junctions[i];
      return junction === undefined || held.has(junction.id) || good.cutOff[i] ? h : 777;
    }),
  };
  spanningFlow(prepared, spoilt);
  good.flow.forEach((q, l) => {
    expect(Math.abs((spoilt.flow[l] as number) - q)).toBeLessThan(1e-15);
  });
  good.head.forEach((h, i) => {
    expect(Math.abs((spoilt.head[i] as number) - h)).toBeLessThan(1e-11);
  });
}

describe("a tree is rewritten whole", () => {
  const branches = [run("1", "a", "b"), run("2", "c", "b"), run("3", "b", "d"), run("4", "e", "d")];
  const taps = [draws("b", 1e-3), draws("c", 2e-3), draws("d", 4e-3), draws("e", 5e-4)];
  test.each<[string, Network]>([
    ["from a tank", yard(branches, taps, [tank("a", 80)])],
    ["from a tank in the middle", yard(branches, taps, [tank("d", 80)])],
    ["from a pump", yard(branches, taps, [pump("a")])],
    ["from a pump at the far end", yard(branches, taps, [pump("e")])],
    ["with hoses, whose flow stands", yard(branches, [...taps, hose("a"), hose("e"), hose("c")], [tank("a", 80)])],
    ["with hoses from a pump", yard(branches, [...taps, hose("a"), hose("e")], [pump("b")])],
    [
      "with reducing valves wherever they stand in the list",
      yard(
        [
          run("1", "a", "b", 1e4, { valve: { kind: "reducing", setPressure: 3e5 } }),
          run("2", "b", "c"),
          run("3", "a", "d", 1e4, { valve: { kind: "reducing", setPressure: 2e5 } }),
          run("4", "d", "e"),
          run("5", "e", "f", 1e4, { valve: { kind: "reducing", setPressure: 1e5 } }),
          run("6", "f", "g"),
        ],
        [draws("c", 1e-3), draws("d", 2e-4), draws("e", 1e-4), draws("g", 5e-4)],
        [tank("a", 80)],
      ),
    ],
    [
      "and what is cut off is left alone",
      yard(
        [...branches, run("5", "e", "x", 1e4, { valve: { kind: "shut" } }), run("6", "x", "y")],
        [...taps, draws("y", 1)],
        [tank("a", 80)],
      ),
    ],
    [
      "in two parts, each from its own",
      yard([...branches, run("5", "p", "q")], [...taps, draws("q", 1e-3)], [tank("a", 80), pump("p")]),
    ],
  ])("%s", (_, network) => {
    expectRewritten(network);
  });
});

describe("in a loop the run that resists most keeps its flow", () => {
  const ring = [
    run("mild", "a", "b"),
    run("worst", "b", "c", 1e6),
    run("slight", "c", "a", 1e2),
    run("some", "c", "d", 1e5),
  ];
  const taps = [draws("b", 2e-3), draws("c", 1e-3), draws("d", 1e-3)];

  test.each([0, 1, 2, 3])("wherever it stands in the list: turned by %d", (turn) => {
    const runs = [...ring.slice(turn), ...ring.slice(0, turn)];
    expectRewritten(yard(runs, taps, [tank("a", 80)]), (id) => id === "worst");
    expectRewritten(yard([...runs].reverse(), taps, [tank("a", 80)]), (id) => id === "worst");
    expectRewritten(yard(runs, taps, [pump("a")]), (id) => id === "worst");
  });

  test("between two tanks too, which are one loop", () => {
    for (const runs of [ring.slice(0, 2), ring.slice(0, 2).reverse()]) {
      expectRewritten(yard(runs, [draws("b", 1e-3)], [tank("a", 80), tank("c", 70)]), (id) => id === "worst");
    }
  });
});
