/** A layout as it is read to be sized: what is refused, what rules a size out, what a run may be. */
import type { HazenWilliamsRun, Network, NetworkSource, Outlet, Run } from "risingmain/network";
import {
  type LeastCostSizesInput,
  leastCostSizes,
  type PartWaySize,
  partWayProgramme,
  partWaySizes,
} from "risingmain/selection";
import type { GaugePressure, Velocity } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { flow, lossOf, m, water } from "../network/layouts.ts";
import { refused } from "../refused.ts";
import { PER_HEAD } from "./layouts.ts";

const pipe = { law: "darcy-weisbach", insideDiameter: m(0.03), length: m(100), roughness: m(1e-5) } as const;
const old = { law: "hazen-williams", insideDiameter: m(0.03), length: m(200), coefficient: 100 } as const;
const sizes: readonly PartWaySize[] = [
  { name: "narrow", insideDiameter: m(0.02), costPerMetre: 1 },
  { name: "wide", insideDiameter: m(0.03), costPerMetre: 2 },
];
const outlet = (id: string, q: number, head = 0): Outlet => ({
  id,
  junction: id,
  kind: "fixed demand",
  flow: flow(q),
  leastPressure: (head * PER_HEAD) as GaugePressure,
});
const network: Network = {
  water,
  junctions: ["0", "1", "2"].map((id) => ({ id, elevation: m(0) })),
  runs: [
    { ...pipe, id: "main", from: "0", to: "1" },
    { ...old, id: "line", from: "1", to: "2" },
  ],
  outlets: [outlet("1", 2e-4), outlet("2", 3e-4)],
  sources: [{ id: "tank", junction: "0", kind: "fixed head", head: m(30) }],
};
const base: LeastCostSizesInput = {
  network,
  choices: ["main", "line"].map((run) => ({ run, sizes })),
  scenarios: [
    { name: "both", open: ["1", "2"] },
    { name: "far", open: ["2"] },
  ],
};
const [main, line] = network.runs as [Run, HazenWilliamsRun];
const pump = (headAtFlow: (q: number) => number, largestFlow = 1e-3): NetworkSource => ({
  id: "pump",
  junction: "0",
  kind: "curve",
  headAtFlow: (q) => m(headAtFlow(q)),
  largestFlow: flow(largestFlow),
});
const withNetwork = (change: object): LeastCostSizesInput => ({ ...base, network: { ...network, ...change } });

/** What was found, or a failed test. */
function found(input: LeastCostSizesInput) {
  const result = leastCostSizes(input);
  if (result.state !== "found") throw new Error(`not found: ${JSON.stringify(result)}`);
  return result;
}

describe("what is refused, by the path of the field", () => {
  const of = (change: object): LeastCostSizesInput => ({ ...base, ...change });
  const choice = (change: object) => of({ choices: [{ run: "main", sizes, ...change }] });
  const size = (change: object, run = "main") => of({ choices: [{ run, sizes: [{ ...sizes[0], ...change }] }] });
  const use = (change: object) => of({ scenarios: [{ ...base.scenarios[0], ...change }] });
  const power = { id: "main", from: "0", to: "1", law: "power", resistance: 1e6, exponent: 2 };
  const valve = (kind: string) => withNetwork({ runs: [{ ...main, valve: { kind, setPressure: 1e5 } }, line] });
  const name = [
    ["n", "n".repeat(200)],
    ["", "n".repeat(201), ["n"]],
  ] as const;
  type Row = [
    path: string,
    at: (value: never) => LeastCostSizesInput,
    accepted: readonly unknown[],
    refused: readonly unknown[],
  ];
  const rows: readonly Row[] = [
    ["choices", (choices) => of({ choices }), [], [[], {}]],
    ["choices[0].run", (run) => choice({ run }), ["line"], ["none"]],
    [
      "choices[1].run",
      (run) =>
        of({
          choices: [
            { run, sizes },
            { run: "main", sizes },
          ],
        }),
      ["line"],
      ["main"],
    ],
    ["choices[0].run", (first) => ({ ...choice({}), network: { ...network, runs: [first, line] } }), [main], [power]],
    ["choices[0].sizes", (list) => choice({ sizes: list }), [Array(50).fill(sizes[1])], [[], Array(51).fill(sizes[1])]],
    ["choices[0].sizes[0].name", (n) => size({ name: n }), ...name],
    ["choices[0].sizes[0].insideDiameter", (d) => size({ insideDiameter: d }), [20], [9.9e-4, 20.1]],
    ["choices[0].sizes[0].costPerMetre", (cost) => size({ costPerMetre: cost }), [0, 1e9], [-1, 1e9 + 1]],
    ["choices[0].sizes[0].pressureRating", (rating) => size({ pressureRating: rating }), [1e8], [0, 1e8 + 1]],
    ["choices[0].sizes[0].roughness", (e) => size({ roughness: e, insideDiameter: 0.02 }), [0, 0.01], [-1e-9, 0.0101]],
    // The run's own 1e-5 m where the size names none; no roughness by the rule of Hazen and Williams.
    ["choices[0].sizes[0].roughness", (d) => withRough(d, main), [0.02], [0.001]],
    ["choices[0].sizes[0].coefficient", (c) => size({ coefficient: c }, "line"), [10, 200], [9.9, 201]],
    ["choices[0].sizes[0].coefficient", (c) => size({ coefficient: c }), [10, 200], [9.9, 201]],
    ["scenarios", (scenarios) => of({ scenarios }), [], [[], {}]],
    ["scenarios[0].name", (n) => use({ name: n }), ...name],
    ["scenarios[0].open", (open) => use({ open }), [[], ["1"]], [{}, ["1", "2", "1"]]],
    [
      "scenarios[0].open[1]",
      (open) => use({ open }),
      [["2", "1"]],
      [
        ["2", "3"],
        ["2", "2"],
      ],
    ],
    ["leastPressure", (leastPressure) => of({ leastPressure }), [0, 1e8], [-1, 1e8 + 1]],
    ["greatestVelocity", (v) => of({ greatestVelocity: v }), [100, Infinity], [0, 100.1]],
    [
      "network.sources",
      (sources) => withNetwork({ sources }),
      [network.sources],
      [[...network.sources, { ...network.sources[0], id: "b", junction: "2" }]],
    ],
    [
      "network.runs",
      (id) =>
        withNetwork({ junctions: [...network.junctions.slice(0, 2), { id: "2", elevation: 0 }, ...(id as object[])] }),
      [[]],
      [[{ id: "apart", elevation: 0 }]],
    ],
    [
      "network.runs[2]",
      (last) => withNetwork({ runs: [...network.runs, last] }),
      [],
      [{ ...pipe, id: "twin", from: "0", to: "1" }],
    ],
    ["network.runs[0].valve", (kind) => valve(kind), ["check"], ["reducing", "shut"]],
    [
      "network.runs[0].valve",
      (ends) => withNetwork({ runs: [{ ...main, ...(ends as object), valve: { kind: "check" } }, line] }),
      [{ from: "0", to: "1" }],
      [{ from: "1", to: "0" }],
    ],
    // Both draw 0.5 L/s; the pump gives so much, and is asked for no less than nothing.
    ["scenarios", (largest) => withNetwork({ sources: [pump(() => 30, largest)] }), [2e-4 + 3e-4], [4.999e-4]],
    [
      "scenarios",
      (q) => withNetwork({ sources: [pump(() => 30)], outlets: [outlet("1", q), outlet("2", 0)] }),
      [0],
      [-1e-9],
    ],
    [
      "sources[0].headAtFlow(0.0005)",
      (head) => withNetwork({ sources: [pump((q) => (q === 0 ? 30 : head))] }),
      [30, 1e6],
      [Number.NaN, 1.1e6],
    ],
  ];
  test.each(rows)("%s", (path, at, accepted, wrong) => {
    for (const value of accepted) expect(refused(() => leastCostSizes(at(value as never)))).toBeUndefined();
    for (const value of wrong) expect(refused(() => leastCostSizes(at(value as never)))).toBe(path);
  });

  function withRough(insideDiameter: number, run: Run): LeastCostSizesInput {
    const rough = { ...run, roughness: m(6e-4) } as Run;
    return { ...size({ insideDiameter }), network: { ...network, runs: [rough, line] } };
  }

  test("a size's own field that the run's law has no use for is no bar", () => {
    expect(refused(() => leastCostSizes(size({ insideDiameter: m(0.001), costPerMetre: 1 }, "line")))).toBeUndefined();
  });

  test.each<Row>([
    ["changeCoefficient", (changeCoefficient) => of({ changeCoefficient }), [0, 10], [-0.1, 10.1]],
    ["choices[0].sizes[0].pieceLength", (pieceLength) => size({ pieceLength }), [0.1, 1e4], [0.09, 1.1e4]],
  ])("part-way: %s", (path, at, accepted, wrong) => {
    for (const value of accepted) expect(refused(() => partWayProgramme(at(value as never) as never))).toBeUndefined();
    for (const value of wrong) expect(refused(() => partWayProgramme(at(value as never) as never))).toBe(path);
  });
});

describe("what rules a size out", () => {
  const ruledOut = (input: LeastCostSizesInput) => {
    const result = partWayProgramme(input);
    return "ruledOut" in result ? result.ruledOut : undefined;
  };

  test("nothing", () => {
    expect(ruledOut(base)).toEqual([]);
    // A run that keeps its own bore has no sizes to be ruled out.
    expect(ruledOut({ ...base, choices: base.choices.slice(0, 1) })).toEqual([]);
  });

  test("a speed above the limit in one use of several, not one just at it", () => {
    const speed = (2e-4 + 3e-4) / ((Math.PI / 4) * 0.02 ** 2);
    const at = (v: number) => ruledOut({ ...base, greatestVelocity: v as Velocity });
    expect(at(speed)).toEqual([]);
    // Beyond the first junction there are 0.3 L/s.
    expect(at(speed * (1 - 1e-12))).toEqual([{ run: "main", sizes: [{ size: "narrow", because: "velocity" }] }]);
  });

  test("the greatest head its source has in any use or at rest, above the rating, not just at it", () => {
    const rated = (rating: number, source: NetworkSource) =>
      ruledOut({
        ...withNetwork({ sources: [source] }),
        choices: [
          {
            run: "main",
            sizes: [...sizes, { ...(sizes[0] as PartWaySize), name: "rated", pressureRating: rating as GaugePressure }],
          },
        ],
      });
    const out = [{ run: "main", sizes: [{ size: "rated", because: "pressure rating" }] }];
    // 40 m at rest, 35 m at 0.5 L/s.
    const falling = pump((q) => 40 - 1e4 * q);
    expect(rated(40 * PER_HEAD, falling)).toEqual([]);
    expect(rated(40 * PER_HEAD * (1 - 1e-12), falling)).toEqual(out);
    // 40 m at rest, 45 m at 0.3 L/s, 40 m at 0.5 L/s.
    const rising = pump((q) => 40 + (q === 3e-4 ? 5 : 0));
    expect(rated(45 * PER_HEAD, rising)).toEqual([]);
    expect(rated(45 * PER_HEAD * (1 - 1e-12), rising)).toEqual(out);
  });
});

describe("what a run may be", () => {
  test("by the rule of Hazen and Williams, with the run's coefficient or the size's own", () => {
    const smooth = { ...(sizes[0] as PartWaySize), coefficient: 150 };
    const at = (size: PartWaySize) => found({ ...base, choices: [{ run: "line", sizes: [size] }] });
    for (const coefficient of [100, 150]) {
      const { runs, network: made } = at(coefficient === 100 ? (sizes[0] as PartWaySize) : smooth);
      const run = { ...line, insideDiameter: m(0.02), coefficient };
      expect(made.runs[1]).toEqual(run);
      expect(runs[0]?.headLoss as number).toBeCloseTo(lossOf(run, 3e-4), 12);
    }
  });

  test("by a power of the flow, at rest too", () => {
    const filter: Run = { id: "filter", from: "0", to: "1", law: "power", resistance: 1e7, exponent: 2 };
    const at = (open: readonly string[]) =>
      found({
        ...withNetwork({ runs: [filter, line] }),
        choices: [{ run: "line", sizes: sizes.slice(0, 1) }],
        scenarios: [{ name: "use", open }],
      }).tightest.margin / PER_HEAD;
    expect(at([])).toBeCloseTo(30, 9);
    // 1e7 × 0.5² L²/s² in the filter, then the line.
    expect(at(["1", "2"])).toBeCloseTo(30 - 1e7 * 5e-4 ** 2 - lossOf({ ...line, insideDiameter: m(0.02) }, 3e-4), 9);
  });

  test("fed from beyond, where no check valve bars the way; one that carries nothing may have it", () => {
    const at = (q: number, valve: object) =>
      withNetwork({
        runs: [{ ...main, ...valve }, line],
        outlets: [outlet("1", q), outlet("2", 0)],
      });
    const check = { valve: { kind: "check" } };
    expect(refused(() => leastCostSizes(at(-1e-4, {})))).toBeUndefined();
    expect(refused(() => leastCostSizes(at(0, check)))).toBeUndefined();
    // In one use of the two.
    expect(refused(() => leastCostSizes(at(-1e-4, check)))).toBe("scenarios");
  });

  test("the sizes are told in the order of the choices; the layout handed in stays as it was", () => {
    const frozen = { ...base, network: { ...network, runs: Object.freeze([...network.runs]) as Run[] } };
    const there = found(frozen);
    const back = found({ ...frozen, choices: [...base.choices].reverse() });
    expect(there.runs.map(({ run }) => run)).toEqual(["main", "line"]);
    expect(back.runs.map(({ run }) => run)).toEqual(["line", "main"]);
    expect(back.cost).toBe(there.cost);
  });
});

test("what stands in the way of a programme stands in the way of its answer, whatever it is", () => {
  const answer = { values: [] };
  const high = { ...base, leastPressure: (31 * PER_HEAD) as GaugePressure };
  expect(partWaySizes({ ...high, answer })).toMatchObject({ state: "no sizes meet", junction: "2", scenario: "both" });
  const slow = { ...base, greatestVelocity: 0.01 as Velocity };
  expect(partWaySizes({ ...slow, answer })).toMatchObject({ state: "no size for a run", run: "main" });
});
