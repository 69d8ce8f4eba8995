/** What each part is said to do, in layouts small enough to work by hand. */
import {
  type Junction,
  type NetworkSource,
  type Outlet,
  type OutletCoefficient,
  type Run,
  type SolvedNetwork,
  solveNetwork,
  solveScenarios,
} from "risingmain/network";
import type { Density, GaugePressure } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { flow, m, solved, water } from "./layouts.ts";

/** Pascal a metre of head, in water of 1000 kg/m³. */
const METRE = 9806.65;
const pressure = (head: number) => (head * METRE) as GaugePressure;
const coefficient = (value: number) => value as OutletCoefficient;
type Valve = NonNullable<Run["valve"]>;
const CHECK: Valve = { kind: "check" };
const SHUT: Valve = { kind: "shut" };
const reducing = (head: number): Valve => ({ kind: "reducing", setPressure: pressure(head) });

/** A run that loses 1 m at 1 litre a second, 4 m at two and so on. */
const run = (from: string, to: string, valve?: Valve): Run => ({
  id: `${from}${to}`,
  from,
  to,
  law: "power",
  resistance: 1e6,
  exponent: 2,
  ...(valve && { valve }),
});
const LITRE = 1e-3;
const draws = (junction: string, litres: number, more: object = {}): Outlet => ({
  id: junction,
  junction,
  kind: "fixed demand",
  flow: flow(litres * LITRE),
  ...more,
});
const hose = (junction: string, c: number, more: object = {}): Outlet => ({
  id: `${junction} hose`,
  junction,
  kind: "pressure-dependent",
  coefficient: coefficient(c),
  ...more,
});
const tank = (junction: string, head: number): NetworkSource => ({
  id: junction,
  junction,
  kind: "fixed head",
  head: m(head),
});
/** 50 m at rest down to 30 m at 2 litres a second, in a straight line. */
const pump = (junction: string, id = junction, shutoff = 50): NetworkSource => ({
  id,
  junction,
  kind: "curve",
  headAtFlow: (q) => m(shutoff - 1e4 * q),
  largestFlow: flow(2 * LITRE),
});
const yard = (
  runs: readonly Run[],
  outlets: readonly Outlet[],
  sources: readonly NetworkSource[],
  up: Record<string, number> = {},
) => {
  const ids = new Set([...runs.flatMap(({ from, to }) => [from, to]), ...sources.map(({ junction }) => junction)]);
  const junctions = [...ids].map((id): Junction => ({ id, elevation: m(up[id] ?? 0) }));
  return { water: { ...water, density: 1000 as Density }, junctions, runs, outlets, sources };
};
const solve = (...parts: Parameters<typeof yard>) => solved(solveNetwork(yard(...parts)));

/** Heads to 1 nm and flows in litres, with the states, as short texts. */
const short = (value: number) => `${Number(value.toFixed(9))}`;
const heads = ({ junctions }: SolvedNetwork) =>
  junctions.map(({ id, head, state }) => `${id} ${state === "cut off" ? "" : short(head)} ${state}`);
const runs = ({ runs }: SolvedNetwork) =>
  runs.map(({ id, flow, headLoss, state }) => `${id} ${short(flow / LITRE)} ${short(headLoss)} ${state}`);
const outlets = ({ outlets }: SolvedNetwork) =>
  outlets.map(({ id, flow, state }) => `${id} ${short(flow / LITRE)} ${state}`);
const sources = ({ sources }: SolvedNetwork) =>
  sources.map(({ id, flow, state }) => `${id} ${short(flow / LITRE)} ${state}`);

describe("runs", () => {
  test("forward, reversed and at rest, by which end is higher", () => {
    const between = (a: number, b: number) => solve([run("a", "b")], [], [tank("a", a), tank("b", b)]);
    expect(runs(between(54, 50))).toEqual(["ab 2 4 forward"]);
    expect(runs(between(50, 54))).toEqual(["ab -2 -4 reversed"]);
    expect(runs(between(50, 50))).toEqual(["ab 0 0 at rest"]);
    expect(sources(between(54, 50))).toEqual(["a 2 supplying", "b -2 filling"]);
    expect(sources(between(50, 50))).toEqual(["a 0 idle", "b 0 idle"]);
  });

  test("to a dead end are at rest while others flow", () => {
    const result = solve([run("a", "b"), run("b", "c"), run("d", "b")], [draws("b", 2)], [tank("a", 50)]);
    expect(runs(result)).toEqual(["ab 2 4 forward", "bc 0 0 at rest", "db 0 0 at rest"]);
  });

  test("across a bridge in balance are at rest, but for rounding", () => {
    const one = (from: string, to: string, times: number) => ({ ...run(from, to), resistance: times * 1e6 }) as Run;
    const bridge = [one("a", "l", 1), one("l", "e", 2), one("a", "r", 3), one("r", "e", 6), one("l", "r", 1)];
    const { runs: all } = solve(bridge, [draws("e", 2)], [tank("a", 50)]);
    expect(all.map(({ state }) => state)).toEqual(["forward", "forward", "forward", "forward", "at rest"]);
  });

  test("a shut one carries nothing and cuts off what hangs on it alone", () => {
    const result = solve(
      [run("a", "b"), run("b", "c", SHUT), run("c", "d")],
      [draws("b", 1), draws("d", 1), hose("d", 1e-4)],
      [tank("a", 50)],
    );
    expect(heads(result)).toEqual(["a 50 under pressure", "b 49 under pressure", "c  cut off", "d  cut off"]);
    expect(runs(result)).toEqual(["ab 1 1 forward", "bc 0 0 shut", "cd 0 0 shut"]);
    expect(outlets(result)).toEqual(["b 1 running", "d 0 starving", "d hose 0 starving"]);
    expect(sources(result)).toEqual(["a 1 supplying"]);
    expect(result.everyOutletServed).toBe(false);
    expect(result.residuals).toEqual({ mass: 0, energy: 0 });
  });

  test("a shut one beside an open one leaves all to that", () => {
    const around = { ...run("a", "b", SHUT), id: "around" };
    const result = solve([around, run("a", "b")], [draws("b", 2)], [tank("a", 50)]);
    expect(runs(result)).toEqual(["around 0 0 shut", "ab 2 4 forward"]);
    expect(heads(result)).toEqual(["a 50 under pressure", "b 46 under pressure"]);
  });

  test("by a tree's count of linear systems: two", () => {
    expect(solve([run("a", "b"), run("b", "c")], [draws("b", 1), draws("c", 1)], [tank("a", 50)]).iterations).toBe(2);
  });

  test("a velocity where there is a bore, with the sign of the flow", () => {
    const pipe = {
      id: "p",
      from: "b",
      to: "a",
      law: "darcy-weisbach",
      insideDiameter: m(0.05),
      length: m(10),
      roughness: m(0),
    } as const;
    const {
      runs: [first, second],
    } = solve([pipe, run("b", "c")], [draws("b", 1), draws("c", 1)], [tank("a", 50)]);
    expect((first?.velocity as number) / (-0.002 / ((Math.PI / 4) * 0.05 ** 2))).toBeCloseTo(1, 14);
    expect(second?.velocity).toBe(null);
  });

  test("one law out of its range puts the whole layout out of it", () => {
    const pipe = (lit: number) => {
      const line = {
        id: "p",
        from: "a",
        to: "b",
        law: "darcy-weisbach",
        insideDiameter: m(0.05),
        length: m(10),
        roughness: m(0),
      } as const;
      const { insideRange, runs } = solve([line, run("b", "c")], [draws("c", lit)], [tank("a", 50)]);
      return [insideRange, ...runs.map((each) => each.insideRange)];
    };
    // Re = 4 Q / (π D ν): 3000 is in transition.
    expect(pipe(((3000 * Math.PI * 0.05 * 1.307e-6) / 4) * 1000)).toEqual([false, false, true]);
    expect(pipe(1)).toEqual([true, true, true]);
  });
});

describe("check valves", () => {
  test("pass one way and hold the other", () => {
    const between = (a: number, b: number) => solve([run("a", "b", CHECK)], [], [tank("a", a), tank("b", b)]);
    expect(runs(between(54, 50))).toEqual(["ab 2 4 forward"]);
    expect(runs(between(50, 54))).toEqual(["ab 0 0 closed"]);
    expect(sources(between(50, 54))).toEqual(["a 0 idle", "b 0 idle"]);
    expect(runs(between(50, 50))).toEqual(["ab 0 0 at rest"]);
  });

  test("turned the wrong way cut off what is beyond them", () => {
    const result = solve([run("b", "a", CHECK), run("b", "c")], [draws("c", 1)], [tank("a", 50)]);
    expect(heads(result)).toEqual(["b  cut off", "a 50 under pressure", "c  cut off"]);
    expect(outlets(result)).toEqual(["c 0 starving"]);
    expect(runs(result)).toEqual(["ba 0 0 shut", "bc 0 0 shut"]);
  });

  test("two in a ring: the one against the flow closes, and the other carries all", () => {
    const result = solve(
      [run("a", "b", CHECK), run("a", "c"), run("b", "c", CHECK), run("c", "d")],
      [draws("b", 1), draws("d", 1)],
      [tank("a", 50), tank("c", 52)],
    );
    expect(runs(result)).toEqual(["ab 1 1 forward", "ac -1.414213562 -2 reversed", "bc 0 0 closed", "cd 1 1 forward"]);
    expect(sources(result)).toEqual(["a -0.414213562 filling", "c 2.414213562 supplying"]);
  });

  test("three side by side: the one that its tank cannot lift stays closed", () => {
    const result = solve(
      [run("a", "m", CHECK), run("b", "m", CHECK), run("c", "m", CHECK)],
      [draws("m", 3)],
      [tank("a", 40), tank("b", 49), tank("c", 51)],
    );
    // b and c share 3: with 49 − h = x² and 51 − h = (3 − x)² it is x = 7/6, and h is over 40 by far.
    const x = 7 / 6;
    expect(runs(result)).toEqual([
      "am 0 0 closed",
      `bm ${short(x)} ${short(x * x)} forward`,
      `cm ${short(3 - x)} ${short((3 - x) ** 2)} forward`,
    ]);
    expect(sources(result)[0]).toBe("a 0 idle");
  });

  test("that one push closed together do not starve what lies between: one opens again", () => {
    // At first the tank at c, 10 m higher, leaks back through both, which is more than the drop that m takes.
    const result = solve(
      [run("a", "m", CHECK), run("m", "c", CHECK)],
      [draws("m", 1e-6)],
      [tank("a", 50), tank("c", 60)],
    );
    expect(heads(result)).toEqual(["a 50 under pressure", "m 50 under pressure", "c 60 under pressure"]);
    expect(runs(result)).toEqual(["am 0.000001 0 forward", "mc 0 0 closed"]);
    expect(result.everyOutletServed).toBe(true);
  });

  test("water put in behind one, where nothing takes it, has no steady flow", () => {
    const put = (valve: Valve) => solveNetwork(yard([run("a", "b", valve)], [draws("b", -1)], [tank("a", 50)])).state;
    expect([put(CHECK), put(reducing(20))]).toEqual(["not settled", "not settled"]);
    expect(solveNetwork(yard([run("a", "b")], [draws("b", -1)], [pump("a")])).state).toBe("not settled");
    expect(runs(solve([run("a", "b")], [draws("b", -1)], [tank("a", 50)]))).toEqual(["ab -1 -1 reversed"]);
    // Where some is taken beside it, the valve passes the rest.
    expect(runs(solve([run("a", "b", CHECK)], [draws("b", -1), draws("b", 3, { id: "c" })], [tank("a", 50)]))).toEqual([
      "ab 2 4 forward",
    ]);
  });
});

describe("reducing valves", () => {
  test("hold their set pressure above their own elevation, and pass what is drawn beyond", () => {
    const result = solve(
      [run("a", "b", reducing(20)), run("b", "c")],
      [draws("b", 1), draws("c", 2)],
      [tank("a", 50)],
      {
        b: 7,
      },
    );
    expect(heads(result)).toEqual(["a 50 under pressure", "b 27 under pressure", "c 23 under pressure"]);
    expect(runs(result)).toEqual(["ab 3 23 reducing", "bc 2 4 forward"]);
    expect(sources(result)).toEqual(["a 3 supplying"]);
    expect(result.residuals.mass).toBeLessThan(1e-18);
    expect(result.residuals.energy).toBeLessThan(1e-13);
    // Two systems with the valve open, two with it throttling, and one to see that nothing changes.
    expect(result.iterations).toBeGreaterThanOrEqual(4);
    expect(result.iterations).toBeLessThanOrEqual(6);
  });

  test("stand open below it, and on the edge; throttle just above it", () => {
    // At 3 litres the run loses 9 m of 50: 41 is left.
    const set = (head: number) => runs(solve([run("a", "b", reducing(head))], [draws("b", 3)], [tank("a", 50)]));
    expect(set(42)).toEqual(["ab 3 9 forward"]);
    expect(set(41 + 1e-6)).toEqual(["ab 3 9 forward"]);
    expect(set(41 - 1e-6)).toEqual(["ab 3 9.000001 reducing"]);
    expect(set(40)).toEqual(["ab 3 10 reducing"]);
  });

  test("open, cost no more systems than a plain run: a tree's two", () => {
    expect(solve([run("a", "b", reducing(42))], [draws("b", 3)], [tank("a", 50)]).iterations).toBe(2);
  });

  test("pass what is drawn beyond whichever way the runs are drawn, and wherever they stand in the list", () => {
    const line = [run("a", "b", reducing(40)), run("c", "b"), run("c", "d", reducing(20)), run("e", "d")];
    const taps = [draws("b", 1), draws("c", 0.5), draws("d", 0.25), draws("e", 0.25)];
    const expected = ["ab 2 10 reducing", "cb -1 -1 reversed", "cd 0.5 19 reducing", "ed -0.25 -0.0625 reversed"];
    expect(runs(solve(line, taps, [tank("a", 50)]))).toEqual(expected);
    const back = solve([...line].reverse(), taps, [tank("a", 50)]);
    expect(runs(back)).toEqual([...expected].reverse());
    expect(sources(back)).toEqual(["a 2 supplying"]);
    expect(back.residuals.mass).toBeLessThan(1e-17);
  });

  test("throttle at rest, shut against the tank's head", () => {
    const result = solve([run("a", "b", reducing(20))], [], [tank("a", 50)]);
    expect(runs(result)).toEqual(["ab 0 30 reducing"]);
    expect(sources(result)).toEqual(["a 0 idle"]);
    expect(runs(solve([run("a", "b", reducing(60))], [], [tank("a", 50)]))).toEqual(["ab 0 0 at rest"]);
  });

  test("feed outlets that answer to pressure at the set pressure", () => {
    // c √20 with c = 1 l/s at 1 m.
    const result = solve([run("a", "b", reducing(20))], [hose("b", LITRE)], [tank("a", 50)]);
    expect(runs(result)).toEqual([`ab ${short(Math.sqrt(20))} 30 reducing`]);
    // Opened 4 m up: √16.
    expect(
      outlets(solve([run("a", "b", reducing(20))], [hose("b", LITRE, { height: m(4) })], [tank("a", 50)])),
    ).toEqual(["b hose 4 running"]);
  });

  test("in a row throttle one after the other, each passing what all beyond it draw", () => {
    const stops = Array.from({ length: 11 }, (_, i) => `j${i}`);
    const chain = (count: number) =>
      stops.slice(1, count + 1).map((to, i) => run(stops[i] as string, to, reducing(100 - 5 * (i + 1))));
    const taps = stops.slice(1).map((id) => draws(id, 0.1));
    const result = solve(chain(10), taps, [tank("j0", 100)]);
    expect(heads(result)).toEqual(stops.map((id, i) => `${id} ${100 - 5 * i} under pressure`));
    expect(runs(result)).toEqual(chain(10).map(({ id }, i) => `${id} ${short(1 - 0.1 * i)} 5 reducing`));
    expect(sources(result)).toEqual(["j0 1 supplying"]);
    expect(result.residuals.mass).toBeLessThan(1e-17);
    const eleven = [...chain(10), run("j10", "end", reducing(20))];
    expect(() => solve(eleven, taps, [tank("j0", 100)])).toThrow(/at most 10 reducing valves/);
  });

  test("in a row pass no flow twice where the list begins at the far end", () => {
    const line = [run("b", "c", reducing(20)), run("a", "b", reducing(30))];
    const result = solve(line, [draws("b", 1), draws("c", 2)], [tank("a", 50)]);
    expect(runs(result)).toEqual(["bc 2 10 reducing", "ab 3 20 reducing"]);
    expect(sources(result)).toEqual(["a 3 supplying"]);
  });

  test("below a lower one stand open; side by side each decides for itself", () => {
    const row = solve([run("a", "b", reducing(15)), run("b", "c", reducing(20))], [draws("c", 2)], [tank("a", 50)]);
    expect(runs(row)).toEqual(["ab 2 35 reducing", "bc 2 4 forward"]);
    const fork = solve(
      [run("a", "b"), run("b", "c", reducing(30)), run("b", "d", reducing(60))],
      [draws("c", 1), draws("d", 1)],
      [tank("a", 50)],
    );
    expect(runs(fork)).toEqual(["ab 2 4 forward", "bc 1 16 reducing", "bd 1 1 forward"]);
  });

  test("that another would have lifted over its set pressure are found in the end", () => {
    // Wide open the hose pulls b below 35: 50 m drive q² (1 + 1 + 1/4), so q² = 22.2. Throttled at c to 2 √3, b rises over it.
    const result = solve(
      [run("a", "b", reducing(35)), run("b", "c", reducing(3))],
      [hose("c", 2 * LITRE)],
      [tank("a", 50)],
    );
    const [b, c] = [result.junctions[1], result.junctions[2]];
    expect(c?.head).toBeCloseTo(3, 9);
    // 2 √3 litres a second: 12 m of the 50 in the first run, so b would stand at 38.
    expect(b?.head).toBeCloseTo(35, 9);
    expect(runs(result)).toEqual([
      `ab ${short(2 * Math.sqrt(3))} 15 reducing`,
      `bc ${short(2 * Math.sqrt(3))} 32 reducing`,
    ]);
  });

  test("behind a shut valve are shut", () => {
    const result = solve([run("a", "b", SHUT), run("b", "c", reducing(20))], [draws("c", 1)], [tank("a", 50)]);
    expect(runs(result)).toEqual(["ab 0 0 shut", "bc 0 0 shut"]);
    expect(outlets(result)).toEqual(["c 0 starving"]);
  });

  test("are refused where the part below has another way in, or a source of its own", () => {
    const valved = run("b", "c", reducing(20));
    expect(() => solve([run("a", "b"), valved, run("a", "c")], [], [tank("a", 50)])).toThrow(
      /runs\[1\].valve: .*only way/,
    );
    expect(() => solve([run("a", "b"), valved], [], [tank("a", 50), tank("c", 30)])).toThrow(
      /runs\[1\].valve: .*only way/,
    );
    expect(() => solve([run("b", "a", reducing(20))], [], [tank("a", 50)])).toThrow(/runs\[0\].valve: .*only way/);
  });
});

describe("outlets", () => {
  test("that are not open take nothing and do not starve", () => {
    const layout = yard([run("a", "b")], [draws("b", 1), hose("b", LITRE)], [tank("a", 50)]);
    const result = solved(solveNetwork({ ...layout, open: ["b"] }));
    expect(outlets(result)).toEqual(["b 1 running", "b hose 0 not open"]);
    expect(sources(result)).toEqual(["a 1 supplying"]);
    expect(heads(result)).toEqual(["a 50 under pressure", "b 49 under pressure"]);
    expect(result.everyOutletServed).toBe(true);
    expect(outlets(solved(solveNetwork({ ...layout, open: [] })))).toEqual(["b 0 not open", "b hose 0 not open"]);
    // q = √h and 50 − h = q²: half the head and 5 l/s.
    expect(outlets(solved(solveNetwork({ ...layout, open: ["b hose"] })))).toEqual([
      "b 0 not open",
      "b hose 5 running",
    ]);
    expect(sources(solved(solveNetwork({ ...layout, open: ["b hose"] })))).toEqual(["a 5 supplying"]);
  });

  test("of a fixed demand run at nothing and below, where water is put in; a hose that gives nothing starves", () => {
    const result = solve(
      [run("a", "b")],
      [draws("b", 0), draws("b", -1, { id: "in" }), draws("b", 3, { id: "out" })],
      [tank("a", 50)],
    );
    expect(outlets(result)).toEqual(["b 0 running", "in -1 running", "out 3 running"]);
    expect(outlets(solve([], [hose("a", LITRE)], [tank("a", 0)]))).toEqual(["a hose 0 starving"]);
  });

  test("open above or below their junction: √(H − z − height)", () => {
    const open = (more: object, up = 0) => outlets(solve([], [hose("a", LITRE, more)], [tank("a", 50)], { a: up }));
    expect(open({ height: m(14) })).toEqual(["a hose 6 running"]);
    expect(open({ height: m(-14) })).toEqual(["a hose 8 running"]);
    expect(open({}, 1)).toEqual(["a hose 7 running"]);
    expect(open({ height: m(50) })).toEqual(["a hose 0 starving"]);
    expect(open({ height: m(60) })).toEqual(["a hose 0 starving"]);
  });

  test("starve below the pressure they need, and not at it", () => {
    const needs = (outlet: (more: object) => Outlet, least: number) =>
      solve([], [outlet({ leastPressure: least })], [tank("a", 50)]).outlets[0]?.state;
    for (const outlet of [(more: object) => draws("a", 1, more), (more: object) => hose("a", LITRE, more)]) {
      expect(needs(outlet, 50 * 1000 * 9.80665)).toBe("running");
      expect(needs(outlet, 50 * 1000 * 9.80665 + 1)).toBe("starving");
    }
    // Without a pressure of its own an outlet starves under negative pressure.
    expect(solve([], [draws("a", 1)], [tank("a", -1)]).outlets[0]?.state).toBe("starving");
    expect(solve([], [draws("a", 1)], [tank("a", 0)]).outlets[0]?.state).toBe("running");
  });

  test("stand at a junction whose pressure is its head above its elevation", () => {
    const { junctions, outlets } = solve([], [draws("a", 1)], [tank("a", 50)], { a: 20 });
    expect(junctions[0]?.pressure).toBeCloseTo(30 * METRE, 6);
    expect(outlets[0]?.pressure).toBe(junctions[0]?.pressure);
    expect(heads(solve([], [], [tank("a", 50)], { a: 50 }))).toEqual(["a 50 under pressure"]);
    expect(heads(solve([], [], [tank("a", 50)], { a: 50.1 }))).toEqual(["a 50 negative pressure"]);
  });
});

describe("pumps", () => {
  test("give what is asked, to their largest flow and a hundredth over it", () => {
    const asked = (litres: number) => solveNetwork(yard([], [draws("a", litres)], [pump("a")]));
    expect(sources(solved(asked(0)))).toEqual(["a 0 idle"]);
    expect(sources(solved(asked(1)))).toEqual(["a 1 supplying"]);
    expect(solved(asked(1)).sources[0]?.head).toBeCloseTo(40, 9);
    expect(sources(solved(asked(1.99)))).toEqual(["a 1.99 supplying"]);
    expect(sources(solved(asked(2)))).toEqual(["a 2 at its limit"]);
    expect(sources(solved(asked(2.01)))).toEqual(["a 2.01 at its limit"]);
    expect(asked(2.03)).toMatchObject({ state: "cannot supply", sources: ["a"] });
    expect((asked(2.5) as { short: number }).short).toBeCloseTo(0.5 * LITRE, 12);
  });

  test("two short together are both named, and what is missing is added up", () => {
    const result = solveNetwork(yard([], [draws("a", 3), draws("b", 2.5)], [pump("a"), tank("c", 40), pump("b")]));
    expect(result).toMatchObject({ state: "cannot supply", sources: ["a", "b"] });
    expect((result as { short: number }).short).toBeCloseTo(1.5 * LITRE, 12);
  });

  test("side by side share by their curves; the weaker is held shut and opens again as the head falls", () => {
    const both = (litres: number) => solve([], [draws("a", litres)], [pump("a", "strong"), pump("a", "weak", 45)]);
    // Alone to 45 m at half a litre; beyond it each takes half of the rest.
    expect(sources(both(0.4))).toEqual(["strong 0.4 supplying", "weak 0 held shut"]);
    expect(both(0.4).sources[1]?.head).toBeCloseTo(46, 9);
    expect(sources(both(1.5))).toEqual(["strong 1 supplying", "weak 0.5 supplying"]);
  });

  test("are held shut by a tank above their shutoff head, and fill one below it", () => {
    const against = (head: number) => solve([run("a", "b")], [], [pump("a"), tank("b", head)]);
    expect(sources(against(51))).toEqual(["a 0 held shut", "b 0 idle"]);
    expect(against(51).junctions[0]?.head).toBeCloseTo(51, 9);
    // 50 − 10 q = 39 + q² at q = 1 l/s.
    expect(sources(against(39))).toEqual(["a 1 supplying", "b -1 filling"]);
  });
});

test("a scenario's head stands in for the layout's own, for that source alone", () => {
  const network = yard([run("a", "b"), run("c", "b")], [draws("b", 3)], [tank("a", 50), tank("c", 50)]);
  const heads = [{}, { a: m(53) }, { c: m(53) }];
  const { results } = solveScenarios({
    network,
    scenarios: heads.map((sourceHeads, i) => ({ name: `${i}`, open: ["b"], sourceHeads })),
  });
  // 50 − h = x² and 53 − h = (3 − x)² at x = 1.
  expect(results.map(({ result }) => sources(solved(result)))).toEqual([
    ["a 1.5 supplying", "c 1.5 supplying"],
    ["a 2 supplying", "c 1 supplying"],
    ["a 1 supplying", "c 2 supplying"],
  ]);
});
