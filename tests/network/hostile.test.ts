/** Whatever is passed in, a finite result or an InputError: valid inputs with one or more parts spoilt. */
import fc from "fast-check";
import * as network from "risingmain/network";
import { pumpCurve } from "risingmain/pump";
import * as selection from "risingmain/selection";
import { InputError } from "risingmain/units";
import { expect, test } from "vitest";
import { flow, m, water } from "./layouts.ts";

const garbage = fc.oneof(
  fc.constantFrom<unknown>(
    undefined,
    null,
    "",
    "12",
    Number.NaN,
    Infinity,
    -Infinity,
    -0,
    0,
    -1,
    5e-324,
    1e308,
    -1e308,
    1e-9,
    1e6,
    true,
    {},
    [],
    [null],
    [undefined],
    new Array(3),
    { id: "0" },
    () => Number.NaN,
    () => 1e308,
    () => undefined,
    (q: number) => q,
  ),
  fc.double(),
  fc.anything(),
);

const pipe = {
  law: "darcy-weisbach",
  insideDiameter: m(0.03),
  length: m(40),
  roughness: m(1e-6),
  lossCoefficient: 1,
} as const;
const layout = {
  water,
  junctions: ["0", "1", "2", "3"].map((id, i) => ({ id, elevation: m(i) })),
  runs: [
    { id: "a", from: "0", to: "1", ...pipe },
    { id: "b", from: "1", to: "2", ...pipe, valve: { kind: "check" } },
    { id: "c", from: "1", to: "3", ...pipe, law: "hazen-williams", coefficient: 130 },
  ],
  outlets: [
    { id: "x", junction: "2", kind: "fixed demand", flow: flow(3e-4), leastPressure: 1e4 },
    { id: "y", junction: "3", kind: "fixed demand", flow: flow(2e-4) },
  ],
  sources: [{ id: "s", junction: "0", kind: "fixed head", head: m(40) }],
};
const rich = {
  ...layout,
  runs: [
    ...layout.runs,
    { id: "d", from: "2", to: "3", law: "power", resistance: 1e6, exponent: 2 },
    { id: "e", from: "3", to: "4", ...pipe, valve: { kind: "reducing", setPressure: 1e5 } },
  ],
  junctions: [...layout.junctions, { id: "4", elevation: m(-3) }],
  outlets: [...layout.outlets, { id: "z", junction: "4", kind: "pressure-dependent", coefficient: 1e-4, height: 1 }],
  sources: [
    ...layout.sources,
    { id: "p", junction: "2", kind: "curve", headAtFlow: (q: number) => 50 - 1e7 * q * q, largestFlow: 0.002 },
  ],
};
const curve = pumpCurve({
  points: [
    { flow: flow(0), head: m(90) },
    { flow: flow(0.001), head: m(60) },
    { flow: flow(0.0015), head: m(30) },
  ],
});
const sizes = [
  { name: "s", insideDiameter: 0.02, costPerMetre: 1, pressureRating: 1e6 },
  { name: "l", insideDiameter: 0.05, costPerMetre: 3 },
];
const solution = network.solveNetwork(layout as never);

const sizing = {
  network: layout,
  choices: [
    { run: "a", sizes },
    { run: "b", sizes },
  ],
  scenarios: [{ name: "u", open: ["x", "y"] }],
  leastPressure: 1e4,
  greatestVelocity: 3,
};
const programme = selection.partWayProgramme(sizing as never);
if (programme.state !== "to be solved") throw new Error(programme.state);

/** A good argument list for every function that the two modules export. */
const good: Readonly<Record<string, readonly unknown[]>> = {
  solveNetwork: [{ ...rich, open: ["x", "z"] }],
  solveScenarios: [
    {
      network: rich,
      scenarios: [
        { name: "all", open: ["x", "y", "z"], sourceHeads: { s: 30 } },
        { name: "none", open: [] },
      ],
    },
  ],
  worstCombination: [{ network: rich, openAtOnce: 1, candidates: ["x", "y"], alwaysOpen: ["z"] }],
  gradeLine: [{ network: layout, solution, from: "0", runs: ["a", "c"] }],
  outletOfRating: [{ flow: 1e-3, pressure: 2e5, density: 1000 }],
  outletOfNozzle: [{ diameter: 0.006, dischargeCoefficient: 0.98 }],
  tankSource: [{ id: "t", junction: "0", elevation: 3, pressure: 3e5, density: 1000 }],
  pumpSource: [
    {
      id: "p",
      junction: "0",
      curve,
      waterLevelAt: () => -20,
      lossAt: (q: number) => 1e6 * q * q,
      regulated: { valve: { setPressure: 3e5, minimumFlow: 6e-5 }, elevation: 0, density: 1000 },
    },
  ],
  leastCostSizes: [sizing],
  partWayProgramme: [{ ...sizing, pieceLength: 6 }],
  programmeText: [programme],
  partWaySizes: [
    {
      ...sizing,
      // Every run in its larger size: it serves, and no solver said so.
      answer: {
        values: programme.variables.map(({ size }) => (size === "l" ? 1 : 0)),
        duals: programme.rows.map(() => 1),
      },
    },
  ],
  choosePump: [
    {
      candidates: [{ name: "one", curve, motorPower: 1500, leastFlow: 1e-5 }],
      network: { ...layout, sources: [] },
      place: { junction: "0", waterLevelAt: () => -20, lossAt: () => 1 },
      scenarios: [{ name: "u", open: ["x"], weight: 2 }],
      wellYield: 0.002,
      greatestShutoffPressure: 1e6,
      leastEfficiency: 0.3,
      rankBy: "margin",
    },
  ],
  sensitivity: [
    { inputs: { a: 2, b: 3 }, evaluate: ({ a = 0, b = 0 }: Record<string, number>) => ({ y: a * b }), step: 0.01 },
  ],
  tornado: [
    {
      inputs: { a: 2, b: 3 },
      ranges: { a: [1, 4] },
      evaluate: ({ a = 0, b = 0 }: Record<string, number>) => ({ y: a * b }),
      output: "y",
    },
  ],
  countVariants: [{ p: ["a", "b"], q: [1, 2, 3] }],
  variantAt: [{ p: ["a", "b"], q: [1, 2, 3] }, 4],
  sweep: [
    { p: ["a", "b"], q: [1, 2, 3] },
    { from: 1, to: 3 },
  ],
  sweepParts: [{ p: ["a", "b"], q: [1, 2, 3] }, 2],
};

/** A copy with the part at a path replaced; deep enough paths only. */
function spoil(value: unknown, path: readonly number[], by: unknown): unknown {
  if (path.length === 0 || typeof value !== "object" || value === null) return by;
  const keys = Object.keys(value);
  if (keys.length === 0) return by;
  const key = keys[(path[0] as number) % keys.length] as string;
  const copy = (Array.isArray(value) ? value.slice() : { ...value }) as Record<string, unknown>;
  copy[key] = spoil(copy[key], path.slice(1), by);
  return copy;
}

/** Every number in a result is finite; functions and generators are let be, generators walked for a while. */
function expectFinite(value: unknown): void {
  if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
  else if (typeof value === "object" && value !== null) {
    if (Symbol.iterator in value && !Array.isArray(value)) {
      let seen = 0;
      for (const item of value as Iterable<unknown>) {
        expect(item).toBeTypeOf("object");
        if (++seen > 20) break;
      }
    } else if (!Array.isArray(value)) {
      for (const [key, part] of Object.entries(value)) if (key !== "network" && key !== "variant") expectFinite(part);
    } else value.forEach(expectFinite);
  }
}

const functions = Object.entries({ ...network, ...selection } as Record<string, unknown>).filter(
  ([, f]) => typeof f === "function",
);

test("every exported function has a good argument list here", () => {
  expect(functions.map(([name]) => name).sort()).toEqual(Object.keys(good).sort());
});

test.each(functions)("%s: the good arguments work", (name, f) => {
  expectFinite((f as (...all: unknown[]) => unknown)(...(good[name] as unknown[])));
});

test.each(functions)("%s: spoilt arguments give a finite result or an InputError", (name, f) => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.array(fc.nat(30), { maxLength: 6 }), garbage), { minLength: 1, maxLength: 3 }),
      (spoils) => {
        const all = spoils.reduce<unknown>((args, [path, by]) => spoil(args, [0, ...path], by), good[name]);
        try {
          expectFinite((f as (...all: unknown[]) => unknown)(...(all as unknown[])));
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
        }
      },
    ),
    { numRuns: 1500 },
  );
});
