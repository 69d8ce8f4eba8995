/** The choice of a pump: reasons that hold, an order that holds. */
import { type Network, pumpSource, solveNetwork } from "risingmain/network";
import { pumpCurve } from "risingmain/pump";
import { type ChoosePumpInput, choosePump, type PumpCandidate } from "risingmain/selection";
import type { GaugePressure, Power, Ratio } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { flow, m, solved, water } from "../network/layouts.ts";
import { refused } from "../refused.ts";

const PER_HEAD = 999.7 * 9.80665;
/** A pump with a parabola for its head and an efficiency that is best in the middle of its curve. */
const pump = (name: string, shutoff: number, runout: number, best = 0.65) => ({
  name,
  curve: pumpCurve({
    points: [0, 0.25, 0.5, 0.75, 1].map((t) => ({
      flow: flow(runout * t),
      head: m(shutoff * (1 - 0.8 * t * t)),
      efficiency: (best * 4 * t * (1 - t * 0.98)) as Ratio,
    })),
  }),
});
const network = {
  water,
  junctions: [
    { id: "tee", elevation: m(-1) },
    { id: "near", elevation: m(3) },
    { id: "far", elevation: m(12) },
  ],
  runs: [
    {
      id: "1",
      from: "tee",
      to: "near",
      law: "darcy-weisbach",
      insideDiameter: m(0.04),
      length: m(100),
      roughness: m(1.5e-6),
    },
    {
      id: "2",
      from: "near",
      to: "far",
      law: "darcy-weisbach",
      insideDiameter: m(0.03),
      length: m(200),
      roughness: m(1.5e-6),
    },
  ],
  outlets: [
    { id: "tap", junction: "near", kind: "fixed demand", flow: flow(4e-4), leastPressure: 1e5 as GaugePressure },
    { id: "hydrant", junction: "far", kind: "fixed demand", flow: flow(5e-4), leastPressure: 2e5 as GaugePressure },
  ],
} satisfies Omit<Network, "sources">;
const place = {
  junction: "tee",
  waterLevelAt: (q: number) => m(-40 - 4000 * q),
  lossAt: (q: number) => m(2e6 * q * q),
};
const scenarios = [
  { name: "tap", open: ["tap"], weight: 3 },
  { name: "both", open: ["tap", "hydrant"] },
];
const base: ChoosePumpInput = {
  candidates: [
    pump("weak", 70, 0.0012),
    pump("good", 118, 0.0016),
    pump("large", 140, 0.004),
    pump("short", 130, 0.0007),
  ],
  network,
  place,
  scenarios,
};

test("those that starve an outlet or cannot supply are rejected by name; the margin of the rest is the solver's", () => {
  const { suitable, rejected } = choosePump(base);
  expect(suitable.map(({ name }) => name).sort()).toEqual(["good", "large"]);
  const weak = rejected.find(({ name }) => name === "weak")?.reasons ?? [];
  expect(weak.map(({ code, scenario }) => `${code}: ${scenario}`)).toContain("outlet starves: both");
  expect(rejected.find(({ name }) => name === "short")?.reasons).toMatchObject([
    { code: "cannot supply", scenario: "both", value: 4e-4 + 5e-4, limit: 0.0007 },
  ]);
  for (const { name, margin, duties } of suitable) {
    const curve = (base.candidates.find((candidate) => candidate.name === name) as (typeof base.candidates)[number])
      .curve;
    let least = Infinity;
    scenarios.forEach(({ open }, s) => {
      const result = solved(solveNetwork({ ...network, open, sources: [pumpSource({ ...place, id: "p", curve })] }));
      result.outlets.forEach(({ state, pressure }, i) => {
        if (state !== "not open") least = Math.min(least, pressure - (network.outlets[i]?.leastPressure as number));
      });
      expect(duties[s]?.flow).toBe(result.sources[0]?.flow);
    });
    expect(margin).toBe(least);
  }
});

test("energy is shaft power over flow in the pattern of use, and orders the list; so do the other two", () => {
  const byEnergy = choosePump(base).suitable;
  for (const { duties, energyPerVolume } of byEnergy) {
    const [tap, both] = duties;
    const power = (duty: typeof tap): number =>
      (999.7 * 9.80665 * (duty?.flow as number) * (duty?.head as number)) / (duty?.efficiency as number);
    const expected = (3 * power(tap) + power(both)) / (3 * (tap?.flow as number) + (both?.flow as number));
    expect(Math.abs((energyPerVolume as number) / expected - 1)).toBeLessThan(1e-12);
  }
  expect(byEnergy[0]?.energyPerVolume as number).toBeLessThan(byEnergy[1]?.energyPerVolume as number);
  const byMargin = choosePump({ ...base, rankBy: "margin" }).suitable;
  expect(byMargin[0]?.margin as number).toBeGreaterThan(byMargin[1]?.margin as number);
  const byBest = choosePump({ ...base, rankBy: "best efficiency" }).suitable;
  expect(byBest[0]?.offBestEfficiency as number).toBeLessThan(byBest[1]?.offBestEfficiency as number);
});

test("each limit rejects with what was found and what was allowed", () => {
  const only = (extra: Partial<ChoosePumpInput>, candidate = base.candidates[1] as (typeof base.candidates)[number]) =>
    choosePump({ ...base, candidates: [candidate], ...extra }).rejected[0]?.reasons ?? [];
  expect(only({})).toEqual([]);
  expect(only({ wellYield: flow(0.0008) })).toMatchObject([
    { code: "more than the well yields", scenario: "both", limit: 0.0008 },
  ]);
  expect(only({ leastEfficiency: 0.99 as Ratio }).map(({ code }) => code)).toEqual([
    "efficiency too low",
    "efficiency too low",
  ]);
  const good = base.candidates[1] as (typeof base.candidates)[number];
  expect(only({}, { ...good, motorPower: 100 as Power }).map(({ code }) => code)).toEqual([
    "motor overloaded",
    "motor overloaded",
  ]);
  expect(only({}, { ...good, leastFlow: flow(0.0006) })).toMatchObject([
    { code: "below its least flow", scenario: "tap" },
  ]);
  const [shutoff] = only({ greatestShutoffPressure: 6e5 as GaugePressure });
  expect(shutoff).toMatchObject({ code: "shutoff pressure too high", scenario: null, limit: 6e5 });
  expect(shutoff?.value as number).toBeCloseTo((118 - 40 + 1) * PER_HEAD, 6);
});

const [good, large] = [base.candidates[1], base.candidates[2]] as [PumpCandidate, PumpCandidate];

describe("a limit is met by what was found to be just at it", () => {
  // The change that sets a limit, one that nothing meets, and whether more than the limit is refused, or less.
  const limits: Record<
    string,
    readonly [none: number, more: boolean, set: (limit: number) => Partial<ChoosePumpInput>]
  > = {
    "more than the well yields": [1e-9, true, (limit) => ({ wellYield: flow(limit) })],
    "shutoff pressure too high": [1, true, (limit) => ({ greatestShutoffPressure: limit as GaugePressure })],
    "efficiency too low": [1, false, (limit) => ({ leastEfficiency: limit as Ratio })],
    "motor overloaded": [1, true, (limit) => ({ candidates: [{ ...good, motorPower: limit as Power }] })],
    "below its least flow": [100, false, (limit) => ({ candidates: [{ ...good, leastFlow: flow(limit) }] })],
  };
  test.each(Object.entries(limits))("%s", (code, [none, more, set]) => {
    const reasons = (limit: number) =>
      choosePump({ ...base, candidates: [good], ...set(limit) }).rejected.flatMap((pump) => pump.reasons);
    const values = reasons(none).map(({ value }) => value);
    const worst = more ? Math.max(...values) : Math.min(...values);
    expect(reasons(worst)).toEqual([]);
    expect(reasons(worst * (more ? 1 - 1e-12 : 1 + 1e-12))).toMatchObject([{ code, value: worst }]);
  });
});

test("a curve that rises is not taken, with its rise", () => {
  const curve = pumpCurve({
    points: [80, 83, 60].map((head, k) => ({ flow: flow(0.001 * k), head: m(head) })),
  });
  const rejected = (rising: typeof curve.rising) =>
    choosePump({ ...base, candidates: [{ name: "unsteady", curve: { ...curve, rising } }] }).rejected;
  const reason = { code: "curve rises", scenario: null, value: 83 - 80, limit: 0 };
  expect(rejected(curve.rising)).toEqual([{ name: "unsteady", reasons: [reason] }]);
  // Carried as JSON without its rising parts: still refused.
  expect(rejected([])[0]?.reasons).toEqual([{ ...reason, value: 0 }]);
});

test("what no use asks for is not judged: an outlet never opened, and a margin where nothing is open", () => {
  const shut = {
    id: "mast",
    junction: "far",
    kind: "fixed demand",
    flow: flow(0),
    leastPressure: 9e5 as GaugePressure,
  } as const;
  const { suitable } = choosePump({ ...base, network: { ...network, outlets: [shut, ...network.outlets] } });
  expect(suitable).toEqual(choosePump(base).suitable);
  const idle = choosePump({ ...base, candidates: [good], scenarios: [{ name: "night", open: [] }] });
  expect(idle.suitable).toMatchObject([{ margin: 0, energyPerVolume: null }]);
});

describe("what the curve says of power", () => {
  const heads = { ...good.curve, efficiency: undefined } as unknown as PumpCandidate["curve"];
  const bare: PumpCandidate = {
    name: "bare",
    curve: pumpCurve({ points: heads.head.x.map((x, k) => ({ flow: flow(x), head: m(heads.head.y[k] as number) })) }),
  };
  const metered = (...watts: readonly number[]): PumpCandidate => ({
    name: "metered",
    curve: pumpCurve({
      points: bare.curve.head.x.map((x, k) => ({
        flow: flow(x),
        head: m(bare.curve.head.y[k] as number),
        inputPower: watts[k] as Power,
      })),
    }),
  });

  test("nothing: power and efficiency are null and not judged", () => {
    const candidates = [{ ...bare, motorPower: 1 as Power }];
    const { suitable } = choosePump({ ...base, candidates, leastEfficiency: 1 as Ratio });
    expect(suitable).toMatchObject([{ energyPerVolume: null, offBestEfficiency: null }]);
    expect(suitable[0]?.duties).toMatchObject([
      { efficiency: null, shaftPower: null },
      { efficiency: null, shaftPower: null },
    ]);
  });

  test("its input power alone: energy is that, and efficiency is the water's power over it", () => {
    const [pump] = choosePump({ ...base, candidates: [metered(800, 800, 800, 800, 800)] }).suitable;
    const [tap, both] = pump?.duties ?? [];
    for (const duty of [tap, both]) {
      expect(duty?.shaftPower).toBe(800);
      expect(duty?.efficiency).toBeCloseTo((PER_HEAD * (duty?.flow as number) * (duty?.head as number)) / 800, 12);
    }
    // Weights 3 and 1: 3 × 0.4 and 0.9 L/s.
    expect(pump?.energyPerVolume as number).toBeCloseTo((3 * 800 + 800) / (3 * 4e-4 + 9e-4), 3);
    // Water power Q (1 − 0.8 t²), t = Q / runout, is greatest at t² = 1 / 2.4; the curve is searched to half a per cent.
    const best = 0.0016 / Math.sqrt(2.4);
    const off = (3 * Math.abs(4e-4 / best - 1) + Math.abs(9e-4 / best - 1)) / 4;
    expect(Math.abs((pump?.offBestEfficiency as number) - off)).toBeLessThan(0.005);
  });

  test("in part of its flows: no energy where one use is not known", () => {
    const points = [0, 1, 2, 3, 4].map((k) => ({
      flow: flow(bare.curve.head.x[k] as number),
      head: m(bare.curve.head.y[k] as number),
      // Known from 0.8 L/s on: "both" draws 0.9, "tap" 0.4.
      ...(k >= 2 && { inputPower: 800 as Power }),
    }));
    const [pump] = choosePump({ ...base, candidates: [{ name: "part", curve: pumpCurve({ points }) }] }).suitable;
    expect(pump?.duties.map(({ shaftPower }) => shaftPower)).toEqual([null, 800]);
    expect(pump?.energyPerVolume).toBeNull();
    expect(pump?.offBestEfficiency).toBeGreaterThan(0);
  });

  test("the flow of best efficiency may be the last", () => {
    const points = [0, 1, 2].map((k) => ({
      flow: flow((9e-4 * k) / 2),
      head: m(110 - 10 * k),
      efficiency: (0.3 * k) as Ratio,
    }));
    const [pump] = choosePump({ ...base, candidates: [{ name: "end", curve: pumpCurve({ points }) }] }).suitable;
    // The curve ends at 0.9 L/s, where "both" is; "tap" draws 0.4.
    expect(pump?.offBestEfficiency).toBeCloseTo((3 * (1 - 4 / 9)) / 4, 12);
  });

  test("a pump that another source keeps at rest has no energy a cubic metre, and no efficiency of nothing", () => {
    const at = (candidate: PumpCandidate) => {
      const sources = [{ id: "tank", junction: "near", kind: "fixed head", head: m(200) } as const];
      const [pump] = choosePump({ ...base, network: { ...network, sources }, candidates: [candidate] }).suitable;
      return [pump?.energyPerVolume, pump?.duties[0]?.flow, pump?.duties[0]?.shaftPower, pump?.duties[0]?.efficiency];
    };
    expect(at(good)).toEqual([null, 0, null, 0]);
    expect(at(bare)).toEqual([null, 0, null, null]);
    expect(at(metered(500, 600, 700, 800, 900))).toEqual([null, 0, 500, 0]);
    expect(at(metered(0, 600, 700, 800, 900))).toEqual([null, 0, 0, null]);
  });
});

test("each criterion has its own order: what is not known last, then the greater margin, then the name", () => {
  const named = (name: string, candidate: PumpCandidate) => ({ ...candidate, name });
  const unknown = (name: string, { curve }: PumpCandidate) => {
    const { efficiency, ...heads } = curve;
    return { name, curve: heads };
  };
  // "over" is far from its best and yet efficient; "near" is at its best and poor.
  const candidates = [
    unknown("b", large),
    unknown("y", good),
    unknown("x", good),
    unknown("a", large),
    pump("near", 130, 0.0014, 0.3),
    pump("over", 125, 0.0022, 0.95),
    named("good", good),
  ];
  const names = (list: readonly PumpCandidate[], rankBy?: ChoosePumpInput["rankBy"]) =>
    choosePump({ ...base, candidates: list, ...(rankBy && { rankBy }) }).suitable.map(({ name }) => name);
  const orders = {
    energy: ["over", "good", "near", "a", "b", "x", "y"],
    margin: ["a", "b", "over", "good", "x", "y", "near"],
    "best efficiency": ["near", "good", "over", "a", "b", "x", "y"],
  } as const;
  for (const [rankBy, order] of Object.entries(orders)) {
    expect(names(candidates, rankBy as keyof typeof orders)).toEqual(order);
    expect(names([...candidates].reverse(), rankBy as keyof typeof orders)).toEqual(order);
  }
  expect(names(candidates)).toEqual(orders.energy);
});

test("other sources may have any name", () => {
  const sources = ["pump", "pump'"].map((id, k) => ({
    id,
    junction: ["near", "far"][k] as string,
    kind: "fixed head" as const,
    head: m(50),
  }));
  expect(choosePump({ ...base, network: { ...network, sources } }).suitable.length).toBeGreaterThan(0);
});

describe("what is refused, by the path of the field", () => {
  const of = (change: object): ChoosePumpInput => ({ ...base, candidates: [good], ...change });
  const candidate = (change: object) => of({ candidates: [{ ...good, ...change }] });
  const use = (change: object) => of({ scenarios: [{ ...scenarios[0], ...change }] });
  test.each<
    [path: string, at: (value: never) => ChoosePumpInput, accepted: readonly unknown[], refused: readonly unknown[]]
  >([
    ["candidates[0].name", (name) => candidate({ name }), ["n", "n".repeat(200)], ["", "n".repeat(201), ["n"]]],
    ["candidates[0].motorPower", (motorPower) => candidate({ motorPower }), [1e7], [0, 1e7 + 1]],
    ["candidates[0].leastFlow", (leastFlow) => candidate({ leastFlow }), [0, 100], [-1e-9, 100.1]],
    ["scenarios[0].weight", (weight) => use({ weight }), [1e6], [0, 1e6 + 1]],
    ["wellYield", (wellYield) => of({ wellYield }), [100], [0, 100.1]],
    ["greatestShutoffPressure", (greatestShutoffPressure) => of({ greatestShutoffPressure }), [1e8], [0, 1e8 + 1]],
    ["leastEfficiency", (leastEfficiency) => of({ leastEfficiency }), [1], [0, 1.001]],
    ["rankBy", (rankBy) => of({ rankBy }), ["energy", "margin", "best efficiency"], ["price"]],
    ["candidates", (candidates) => of({ candidates }), [], [[], {}]],
    ["candidates[1].name", (candidates) => of({ candidates }), [], [[good, good]]],
    ["network.sources", (sources) => of({ network: { ...network, sources } }), [[]], [{}]],
    ["sources[1]", (sources) => of({ network: { ...network, sources } }), [], [[null]]],
  ])("%s", (path, at, accepted, wrong) => {
    for (const value of accepted) expect(refused(() => choosePump(at(value as never)))).toBeUndefined();
    for (const value of wrong) expect(refused(() => choosePump(at(value as never)))).toBe(path);
  });
});
