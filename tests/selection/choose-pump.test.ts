/** The choice of a pump: reasons that hold, an order that holds. */
import { type Network, pumpSource, solveNetwork } from "risingmain/network";
import { pumpCurve } from "risingmain/pump";
import { type ChoosePumpInput, choosePump } from "risingmain/selection";
import type { GaugePressure, Power, Ratio } from "risingmain/units";
import { expect, test } from "vitest";
import { flow, m, solved, water } from "../network/layouts.ts";

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
    { id: "tee", elevation: m(0) },
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
    { code: "cannot supply", scenario: "both", limit: 0.0007 },
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
  expect(shutoff?.value as number).toBeCloseTo((118 - 40) * PER_HEAD, 6);
});
