/** Scenarios, combinations, sources and outlets of layouts small enough to work by hand. */
import {
  gradeLine,
  type Network,
  type Outlet,
  outletOfNozzle,
  outletOfRating,
  pumpSource,
  type Run,
  solveNetwork,
  solveScenarios,
  tankSource,
  worstCombination,
} from "risingmain/network";
import { pumpCurve, pumpHeadAt } from "risingmain/pump";
import { describe, expect, test } from "vitest";
import { flow, m, solved, water } from "./layouts.ts";

const METRE = 9806.65;
const LITRE = 1e-3;

/** Loses so many metres at 1 litre a second, four times as many at two. */
const run = (to: string, metres: number, from = "tank"): Run => ({
  id: to,
  from,
  to,
  law: "power",
  resistance: metres * 1e6,
  exponent: 2,
});
const tap = (id: string, junction = id, more: object = {}): Outlet => ({
  id,
  junction,
  kind: "fixed demand",
  flow: flow(LITRE),
  ...more,
});
const tank = { id: "tank", junction: "tank", kind: "fixed head", head: m(100) } as const;
/** 2 litres a second at most. */
const pump = {
  id: "pump",
  junction: "tank",
  kind: "curve",
  headAtFlow: () => m(100),
  largestFlow: flow(2 * LITRE),
} as const;
const yard = (runs: readonly Run[], outlets: readonly Outlet[], sources: Network["sources"] = [tank]): Network => ({
  water: { ...water, density: 1000 as never },
  junctions: ["tank", ...runs.map(({ to }) => to)].map((id) => ({ id, elevation: m(0) })),
  runs,
  outlets,
  sources,
});

describe("scenarios", () => {
  const line: Run = {
    id: "line",
    from: "end",
    to: "b",
    law: "darcy-weisbach",
    insideDiameter: m(0.05),
    length: m(10),
    roughness: m(0),
  };
  const layout = (sources: Network["sources"]): Network => {
    const network = yard(
      [run("a", 1), run("b", 2)],
      [tap("a"), tap("b"), tap("b2", "b"), tap("never", "a"), tap("end")],
      sources,
    );
    return {
      ...network,
      junctions: [...network.junctions, { id: "end", elevation: m(0) }],
      runs: [...network.runs, line],
    };
  };
  const uses = (...open: readonly (readonly string[])[]) =>
    open.map((ids) => ({ name: ids.join("+") || "none", open: ids }));

  test("the least pressure of each outlet that was ever open, and the scenario that was the first to bring it", () => {
    const scenarios = uses(["b"], ["a", "b", "b2"], ["a"], ["b", "b2"], []);
    const { leastPressures, failing } = solveScenarios({ network: layout([tank]), scenarios });
    expect(leastPressures.map(({ outlet, scenario, pressure }) => [outlet, scenario, Math.round(pressure)])).toEqual([
      ["a", "a+b+b2", Math.round(99 * METRE)],
      ["b", "a+b+b2", Math.round((100 - 2 * 4) * METRE)],
      ["b2", "a+b+b2", Math.round((100 - 2 * 4) * METRE)],
    ]);
    expect(failing).toEqual([]);
  });

  test("the greatest speed in each run with a bore, whichever way it flows", () => {
    const scenarios = uses([], ["end"], ["a"], ["end", "b"]);
    const { greatestVelocities } = solveScenarios({ network: layout([tank]), scenarios });
    expect(greatestVelocities.length).toBe(1);
    expect(greatestVelocities[0]).toMatchObject({ run: "line", scenario: "end" });
    expect(greatestVelocities[0]?.velocity).toBeCloseTo(0.001 / ((Math.PI / 4) * 0.05 ** 2), 12);
  });

  test("a later one that is worse takes the place of an earlier one", () => {
    const double = tap("end2", "end", { flow: flow(2 * LITRE) });
    const two = { ...layout([tank]), outlets: [tap("end"), double] };
    const { leastPressures, greatestVelocities } = solveScenarios({
      network: two,
      scenarios: uses(["end"], ["end", "end2"], ["end2"]),
    });
    expect(leastPressures.map(({ scenario }) => scenario)).toEqual(["end+end2", "end+end2"]);
    expect(greatestVelocities.map(({ scenario }) => scenario)).toEqual(["end+end2"]);
  });

  test("fail where an outlet starves or the sources cannot supply; the latter counts for nothing else", () => {
    const thirsty = {
      ...layout([pump]),
      outlets: [tap("a"), tap("b"), tap("end"), tap("x", "a", { leastPressure: 1e7 })],
    };
    const scenarios = uses(["a"], ["x"], ["a", "b"], ["a", "b", "end"]);
    const { failing, leastPressures, results } = solveScenarios({ network: thirsty, scenarios });
    expect(failing).toEqual(["x", "a+b+end"]);
    expect(results.map(({ name, result }) => `${name} ${result.state}`)).toEqual([
      "a solved",
      "x solved",
      "a+b solved",
      "a+b+end cannot supply",
    ]);
    expect(leastPressures.map(({ outlet }) => outlet)).toEqual(["a", "b", "x"]);
  });

  test("only a fixed head can be given another", () => {
    const scenarios = [{ name: "u", open: [], sourceHeads: { pump: m(90) } }];
    expect(() => solveScenarios({ network: layout([pump]), scenarios })).toThrow(/fixed-head sources/);
  });
});

describe("the worst combination", () => {
  test("of two lines, two on the one that loses more; the margin counts what each needs", () => {
    const layout = (more: object) =>
      yard([run("a", 1), run("b", 2)], [tap("a1", "a", more), tap("a2", "a"), tap("b1", "b"), tap("b2", "b")]);
    const worst = worstCombination({ network: layout({}), openAtOnce: 2 });
    expect(worst).toMatchObject({ open: ["b1", "b2"], outlet: "b1", tried: 6, proven: true });
    expect(worst.margin).toBeCloseTo((100 - 2 * 4) * METRE, 3);
    const needy = worstCombination({ network: layout({ leastPressure: 20 * METRE }), openAtOnce: 2 });
    expect(needy).toMatchObject({ open: ["a1", "a2"], outlet: "a1", tried: 6 });
    expect(needy.margin).toBeCloseTo((100 - 4 - 20) * METRE, 3);
  });

  test("among candidates, with others open besides", () => {
    const network = yard([run("a", 1), run("b", 2)], [tap("a1", "a"), tap("a2", "a"), tap("b1", "b"), tap("b2", "b")]);
    const among = worstCombination({ network, openAtOnce: 1, candidates: ["a1", "a2"], alwaysOpen: ["b2"] });
    expect(among).toMatchObject({ open: ["a1", "b2"], outlet: "b2", tried: 2 });
    // One that is always open is no choice.
    const rest = worstCombination({ network, openAtOnce: 2, alwaysOpen: ["b2", "a1"] });
    expect(rest).toMatchObject({ open: ["a1", "a2", "b1", "b2"], outlet: "b1", tried: 1 });
    expect(worstCombination({ network, openAtOnce: 4 })).toMatchObject({ open: ["a1", "a2", "b1", "b2"], tried: 1 });
  });

  test("is one that the sources cannot supply, if there is one", () => {
    const network = yard(
      [run("a", 1)],
      [tap("x", "a"), tap("y", "a"), tap("z", "a", { flow: flow(2 * LITRE) })],
      [pump],
    );
    const worst = worstCombination({ network, openAtOnce: 2 });
    expect(worst).toMatchObject({ open: ["x", "z"], outlet: null, margin: null, tried: 3, proven: true });
    expect(worst.result.state).toBe("cannot supply");
  });

  test("is proven up to 20 000 of them: 7 of 11 are 330", () => {
    const outlets = Array.from({ length: 11 }, (_, i) => tap(`t${i}`, i < 8 ? "a" : "b"));
    const network = yard([run("a", 1), run("b", 1)], outlets);
    const worst = worstCombination({ network, openAtOnce: 7 });
    expect(worst).toMatchObject({ tried: 330, proven: true, open: ["t0", "t1", "t2", "t3", "t4", "t5", "t6"] });
    expect(worst.margin).toBeCloseTo((100 - 49) * METRE, 3);
  });

  test("beyond, the search goes from the worst alone by exchange: 5 of 22 are 26 334", () => {
    // Alone a hard tap loses 1.5 m, one of the cluster 1 m, an easy one 0.5 m; k of the cluster together k².
    const hard = ["h0", "h1", "h2"];
    const cluster = ["c0", "c1", "c2", "c3", "c4"];
    const easy = Array.from({ length: 14 }, (_, i) => `e${i}`);
    const network = yard(
      [...hard.map((id) => run(id, 1.5)), run("c", 1), ...easy.map((id) => run(id, 0.5))],
      [...easy.map((id) => tap(id)), ...hard.map((id) => tap(id)), ...cluster.map((id) => tap(id, "c"))],
    );
    const worst = worstCombination({ network, openAtOnce: 5 });
    expect(worst).toMatchObject({ open: cluster, outlet: "c0", proven: false });
    expect(worst.margin).toBeCloseTo((100 - 25) * METRE, 3);
    // Each alone, then h0 h1 h2 c0 c1. In their order the easy ones come first: c2 for h0 after 14 of them; 17 for c2 in
    // vain and c3 for h1 after 14 and h0; twice 17 in vain and c4 for h2 after 14, h0 and h1; and at last 5 times 17.
    expect(worst.tried).toBe(22 + 1 + 15 + (17 + 16) + (2 * 17 + 17) + 5 * 17);
  });
});

describe("sources and outlets in numbers", () => {
  test("a tank holds its gauge's elevation and its pressure in metres", () => {
    const part = { id: "t", junction: "j", elevation: 3, pressure: 196_133, density: 1000 };
    expect(tankSource(part as never)).toEqual({ id: "t", junction: "j", kind: "fixed head", head: 3 + 20 });
    expect(tankSource({ ...part, density: 500 } as never).head).toBeCloseTo(3 + 40, 12);
  });

  test("a nozzle gives C A √(2 g h), a rated outlet its flow at its pressure", () => {
    const nozzle = outletOfNozzle({ diameter: m(0.01), dischargeCoefficient: 0.61 });
    // At 20 m: √(2 · 9.80665 · 20) m/s through 61 % of a 10 mm hole.
    const given = 0.61 * (Math.PI / 4) * 0.01 ** 2 * Math.sqrt(2 * 9.80665 * 20);
    expect(nozzle * Math.sqrt(20)).toBeCloseTo(given, 15);
    const rated = outletOfRating({ flow: flow(0.002), pressure: 156_906.4 as never, density: 1000 as never });
    expect(rated).toBeCloseTo(0.002 / Math.sqrt(16), 15);
  });

  test("a pump behind a valve: less the valve's own loss wide open, or the set pressure less its droop", () => {
    const curve = pumpCurve({
      points: [
        { flow: flow(0), head: m(100) },
        { flow: flow(0.002), head: m(40) },
      ],
    });
    const valve = {
      setPressure: 25 * METRE,
      minimumFlow: 0.0002,
      droop: 4 * METRE,
      droopFlow: 0.0012,
      openLoss: 3 * METRE,
      openLossFlow: 0.001,
    };
    const at = (q: number, more: object = {}, level = -20) =>
      pumpSource({
        id: "p",
        junction: "j",
        curve,
        waterLevelAt: () => m(level),
        lossAt: () => m(5),
        regulated: { valve: { ...valve, ...more }, elevation: m(2), density: 1000 as never } as never,
      }).headAtFlow(flow(q));
    // Throttling: 2 + 25 m, and 4 m less at 0.0012.
    expect(at(0)).toBeCloseTo(27, 9);
    expect(at(0.0002)).toBeCloseTo(27, 9);
    expect(at(0.0007)).toBeCloseTo(27 - 2, 9);
    expect(at(0.0012)).toBeCloseTo(27 - 4, 9);
    expect(at(0.0012, { droop: 0 })).toBeCloseTo(27, 9);
    expect(at(0.0012, { droop: undefined, droopFlow: undefined })).toBeCloseTo(27, 9);
    // Wide open, from a deep well: 3 m at 0.001, four times as much at twice the flow.
    const open = (q: number) => -80 + pumpHeadAt(curve, flow(q)) - 5;
    for (const q of [0.001, 0.002]) expect(at(q, {}, -80)).toBeCloseTo(open(q) - 3 * (q / 0.001) ** 2, 9);
    expect(at(0.001, { openLoss: 0 }, -80)).toBeCloseTo(open(0.001), 9);
    expect(at(0.001, { openLoss: undefined, openLossFlow: undefined }, -80)).toBeCloseTo(open(0.001), 9);
  });
});

describe("a grade line", () => {
  const network = yard([run("a", 1), run("b", 2)], [tap("b")]);
  const solution = () => solved(solveNetwork(network));

  test("counts no length of a run that has none", () => {
    const points = gradeLine({ network, solution: solution(), from: "a", runs: ["a", "b"] });
    expect(points.map(({ junction, distance, head }) => [junction, distance, head])).toEqual([
      ["a", 0, 100],
      ["tank", 0, 100],
      ["b", 0, 98],
    ]);
  });

  test("refuses a name that no run has, wherever it stands", () => {
    expect(() => gradeLine({ network, solution: solution(), from: "tank", runs: ["x"] })).toThrow(/runs\[0\]/);
  });
});
