/** Both sides of every limit in the docstrings: at the limit accepted, just beyond refused, the field named. */
import {
  gradeLine,
  outletOfNozzle,
  outletOfRating,
  pumpSource,
  solveNetwork,
  solveScenarios,
  tankSource,
  worstCombination,
} from "risingmain/network";
import { pumpCurve } from "risingmain/pump";
import { expect, test } from "vitest";
import { refused } from "../refused.ts";
import { flow, m } from "./layouts.ts";

/** A part of a call, as plain values. */
type Part = Readonly<Record<string, unknown>>;
/** Calls with some fields replaced. */
type Call = (more: Part) => unknown;

const darcy = { id: "r", from: "a", to: "b", law: "darcy-weisbach", insideDiameter: 0.03, length: 40, roughness: 1e-6 };
const rule = { ...darcy, law: "hazen-williams", coefficient: 130 };
const power = { id: "r", from: "a", to: "b", law: "power", resistance: 1e5, exponent: 2 };
const demand = { id: "d", junction: "b", kind: "fixed demand", flow: 1e-4 };
const hose = { id: "o", junction: "b", kind: "pressure-dependent", coefficient: 1e-4 };
const tank = { id: "t", junction: "a", kind: "fixed head", head: 30 };
const pump = { id: "p", junction: "a", kind: "curve", headAtFlow: (q: number) => 50 - 1e6 * q, largestFlow: 0.002 };
const yard = {
  water: { density: 1000, kinematicViscosity: 1e-6 },
  junctions: [
    { id: "a", elevation: 0 },
    { id: "b", elevation: 0 },
  ],
  runs: [darcy],
  outlets: [demand],
  sources: [tank],
};
const curve = () =>
  pumpCurve({
    points: [
      { flow: flow(0), head: m(60) },
      { flow: flow(0.001), head: m(30) },
    ],
  });
const tankPart = { id: "t", junction: "a", elevation: 0, pressure: 3e5, density: 1000 };
const rating = { flow: 1e-3, pressure: 2e5, density: 1000 };
const nozzle = { diameter: 0.006, dischargeCoefficient: 0.98 };
const longest = "x".repeat(200);
const tooLong = "x".repeat(201);
const none = undefined;

const layout: Call = (more) => solveNetwork({ ...yard, ...more } as never);
const water: Call = (more) => layout({ water: { ...yard.water, ...more } });
const junction: Call = (more) => layout({ junctions: [{ ...yard.junctions[0], ...more }, yard.junctions[1]] });
const run =
  (one: Part): Call =>
  (more) =>
    layout({ runs: [{ ...one, ...more }] });
const outlet =
  (one: Part): Call =>
  (more) =>
    layout({ outlets: [{ ...one, ...more }] });
const source =
  (one: Part): Call =>
  (more) =>
    layout({ sources: [{ ...one, ...more }] });
const valve: Call = (more) => run(darcy)({ valve: more });
const tanked: Call = (more) => tankSource({ ...tankPart, ...more } as never);
const pumped: Call = (more) =>
  pumpSource({ id: "p", junction: "a", curve: curve(), waterLevelAt: () => -20, lossAt: () => 1, ...more } as never);
const regulated: Call = (more) => {
  const valve = { setPressure: 3e5, minimumFlow: 6e-5 };
  return pumped({ regulated: { valve, elevation: 0, density: 1000, ...more } });
};
const asked: Call = (more) => (pumped(more) as ReturnType<typeof pumpSource>).headAtFlow(flow(0.0005));
const uses: Call = (more) => solveScenarios({ network: yard, scenarios: [{ name: "u", open: [] }], ...more } as never);
const use: Call = (more) => uses({ scenarios: [{ name: "u", open: [], ...more }] });
const worst: Call = (more) => worstCombination({ network: yard, openAtOnce: 1, ...more } as never);
const walked: Call = (more) =>
  gradeLine({ network: yard, solution: layout({}), from: "a", runs: ["r"], ...more } as never);
const walkedTo: Call = (more) => {
  const good = { id: "a", head: 30, pressure: 3e5 };
  return walked({
    solution: {
      junctions: [
        { ...good, ...more },
        { ...good, id: "b" },
      ],
    },
  });
};

test.each<[field: string, call: Call, accepted: readonly Part[], refused: readonly Part[]]>([
  ["network", () => solveScenarios({ scenarios: [] } as never), [], [{}]],
  ["input", () => solveNetwork(undefined as never), [], [{}]],
  ["water", layout, [], [{ water: none }]],
  ["water.density", water, [{ density: 100 }, { density: 1e4 }], [{ density: 99.9 }, { density: 10_001 }]],
  [
    "water.kinematicViscosity",
    water,
    [{ kinematicViscosity: 1e-8 }, { kinematicViscosity: 1e-2 }],
    [{ kinematicViscosity: 0.9e-8 }, { kinematicViscosity: 1.1e-2 }],
  ],
  ["junctions", layout, [], [{ junctions: [] }, { junctions: {} }]],
  ["runs", layout, [{ runs: [] }], [{ runs: none }]],
  ["outlets", layout, [{ outlets: [] }], [{ outlets: none }]],
  ["sources", layout, [], [{ sources: [] }]],
  ["open", layout, [{ open: [] }, { open: ["d"] }], [{ open: "d" }, { open: ["d", "d"] }]],
  ["open[0]", layout, [], [{ open: ["x"] }]],
  [
    "open[1]",
    (more) => layout({ outlets: [demand, hose], ...more }),
    [{ open: ["o", "d"] }],
    [{ open: ["d", "d"] }, { open: ["d", "x"] }],
  ],
  ["junctions[0]", layout, [], [{ junctions: [none] }]],
  ["junctions[0].id", junction, [], [{ id: "" }, { id: 1 }, { id: none }]],
  ["runs[0].id", run(darcy), [{ id: "r" }, { id: longest }], [{ id: "" }, { id: tooLong }, { id: 5 }, { id: [1] }]],
  ["runs[1].id", layout, [{ runs: [darcy, { ...darcy, id: "s" }] }], [{ runs: [darcy, darcy] }]],
  [
    "junctions[0].elevation",
    junction,
    [{ elevation: 1e4 }, { elevation: -1e4 }],
    [{ elevation: 10_001 }, { elevation: -10_001 }],
  ],
  ["runs[0].law", run(darcy), [{}, rule, power], [{ law: "darcy" }]],
  ["runs[0].from", run(darcy), [], [{ from: "x" }]],
  ["runs[0].to", run(darcy), [], [{ to: "x" }, { to: "a" }]],
  ["runs[0].valve", run(darcy), [{ valve: none }], [{ valve: "check" }, { valve: null }]],
  ["runs[0].valve.kind", valve, [{ kind: "check" }, { kind: "shut" }], [{ kind: "gate" }, {}]],
  [
    "runs[0].valve.setPressure",
    (more) => valve({ kind: "reducing", ...more }),
    [{ setPressure: 0 }, { setPressure: 1e8 }],
    [{}, { setPressure: -1 }, { setPressure: 1.01e8 }],
  ],
  [
    "runs[0].resistance",
    run(power),
    [{ resistance: 1e-6 }, { resistance: 1e18 }],
    [{ resistance: 0.9e-6 }, { resistance: 1.1e18 }],
  ],
  ["runs[0].exponent", run(power), [{ exponent: 1 }, { exponent: 3 }], [{ exponent: 0.99 }, { exponent: 3.01 }]],
  [
    "runs[0].insideDiameter",
    run(darcy),
    [{ insideDiameter: 1e-3 }, { insideDiameter: 20 }],
    [{ insideDiameter: 0.9e-3 }, { insideDiameter: 20.1 }],
  ],
  ["runs[0].length", run(rule), [{ length: 1e-3 }, { length: 1e6 }], [{ length: 0.9e-3 }, { length: 1.1e6 }]],
  [
    "runs[0].lossCoefficient",
    run(darcy),
    [{ lossCoefficient: 0 }, { lossCoefficient: 1e6 }],
    [{ lossCoefficient: -1 }, { lossCoefficient: 1.1e6 }],
  ],
  [
    "runs[0].coefficient",
    run(rule),
    [{ coefficient: 10 }, { coefficient: 200 }],
    [{ coefficient: 9.9 }, { coefficient: 201 }],
  ],
  [
    "runs[0].roughness",
    run(darcy),
    [{ roughness: 0 }, { roughness: 0.015 }],
    [{ roughness: -1e-9 }, { roughness: 0.0151 }],
  ],
  ["outlets[0].kind", outlet(demand), [], [{ kind: "open" }]],
  ["outlets[0].junction", outlet(demand), [{ junction: "a" }], [{ junction: "x" }]],
  [
    "outlets[0].leastPressure",
    outlet(demand),
    [{ leastPressure: 0 }, { leastPressure: 1e8 }],
    [{ leastPressure: -1 }, { leastPressure: 1.1e8 }],
  ],
  ["outlets[0].flow", outlet(demand), [{ flow: 1000 }, { flow: -1000 }], [{ flow: 1001 }, { flow: -1001 }]],
  [
    "outlets[0].coefficient",
    outlet(hose),
    [{ coefficient: 1e-9 }, { coefficient: 1e3 }],
    [{ coefficient: 0.9e-9 }, { coefficient: 1.1e3 }],
  ],
  ["outlets[0].height", outlet(hose), [{ height: 1000 }, { height: -1000 }], [{ height: 1001 }, { height: -1001 }]],
  ["sources[0].kind", source(tank), [], [{ kind: "tank" }]],
  ["sources[0].junction", source(tank), [], [{ junction: "x" }]],
  ["sources[0].head", source(tank), [{ head: -1e4 }, { head: 2e4 }], [{ head: -10_001 }, { head: 20_001 }]],
  [
    "sources[0].headAtFlow",
    source(pump),
    [{ headAtFlow: () => 1 }],
    [{ headAtFlow: 1 }, { headAtFlow: (q: number) => 50 + q }],
  ],
  [
    "sources[0].headAtFlow(0)",
    source(pump),
    [{ headAtFlow: () => 1e6 }, { headAtFlow: () => -1e6 }],
    [{ headAtFlow: () => 1.01e6 }, { headAtFlow: () => -1.01e6 }, { headAtFlow: () => "1" }],
  ],
  [
    "sources[0].largestFlow",
    source({ ...pump, headAtFlow: () => 50 }),
    [{ largestFlow: 1e-9 }, { largestFlow: 1000 }],
    [{ largestFlow: 0.9e-9 }, { largestFlow: 0 }, { largestFlow: 1001 }],
  ],
  [
    "sources[1].junction",
    layout,
    [{ sources: [pump, { ...pump, id: "q" }] }, { sources: [tank, { ...tank, id: "u", junction: "b" }] }],
    [{ sources: [tank, { ...tank, id: "u" }] }, { sources: [tank, pump] }, { sources: [pump, tank] }],
  ],
  ["id", tanked, [{}], [{ id: 1 }]],
  ["junction", tanked, [{}], [{ junction: 1 }]],
  ["elevation", tanked, [{ elevation: 1e4 }, { elevation: -1e4 }], [{ elevation: 10_001 }, { elevation: -10_001 }]],
  [
    "pressure",
    tanked,
    [{ pressure: 0 }, { pressure: 98_066_500 }, { pressure: 1e8, density: 1e4 }],
    [{ pressure: -1 }, { pressure: 98_066_501 }, { pressure: 1.01e8, density: 1e4 }],
  ],
  ["density", tanked, [{ density: 100 }, { density: 1e4 }], [{ density: 99 }, { density: 10_001 }]],
  ["flow", (more) => outletOfRating({ ...rating, ...more } as never), [{ flow: 1000 }], [{ flow: 0 }, { flow: 1001 }]],
  [
    "pressure",
    (more) => outletOfRating({ ...rating, ...more } as never),
    [{ pressure: 1e8 }],
    [{ pressure: 0 }, { pressure: 1.1e8 }],
  ],
  [
    "density",
    (more) => outletOfRating({ ...rating, ...more } as never),
    [{ density: 100 }, { density: 1e4 }],
    [{ density: 99 }, { density: 10_001 }],
  ],
  // One metre of head in water of 1000 kg/m³ is 9806.65 Pa: the flow is then the coefficient.
  [
    "flow",
    (more) => outletOfRating({ ...rating, pressure: 9806.65, ...more } as never),
    [{ flow: 1e-9 }, { flow: 1000 }],
    [{ flow: 0.99e-9 }, { flow: 1000, pressure: 9000 }],
  ],
  [
    "diameter",
    (more) => outletOfNozzle({ ...nozzle, ...more } as never),
    [{ diameter: 1e-4 }, { diameter: 1 }],
    [{ diameter: 0.9e-4 }, { diameter: 1.1 }],
  ],
  // (π/4) (0.1 mm)² √(2 g) = 3.5e-8 m^2.5/s at a coefficient of 1.
  [
    "dischargeCoefficient",
    (more) => outletOfNozzle({ ...nozzle, ...more } as never),
    [{ dischargeCoefficient: 1 }],
    [{ dischargeCoefficient: 0 }, { dischargeCoefficient: 1.01 }, { diameter: 1e-4, dischargeCoefficient: 0.02 }],
  ],
  ["id", pumped, [{}], [{ id: 1 }]],
  ["junction", pumped, [{}], [{ junction: 1 }]],
  ["waterLevelAt", pumped, [{}], [{ waterLevelAt: -20 }]],
  ["lossAt", pumped, [{}], [{ lossAt: 1 }]],
  ["regulated", pumped, [{ regulated: none }], [{ regulated: 1 }]],
  ["regulated.valve", regulated, [{}], [{ valve: 1 }]],
  [
    "regulated.elevation",
    regulated,
    [{ elevation: 1e4 }, { elevation: -1e4 }],
    [{ elevation: 10_001 }, { elevation: -10_001 }],
  ],
  ["regulated.density", regulated, [{ density: 100 }, { density: 1e4 }], [{ density: 99 }, { density: 10_001 }]],
  ["valve.minimumFlow", regulated, [], [{ valve: { setPressure: 3e5, minimumFlow: "1" } }]],
  [
    "waterLevelAt(0.0005)",
    asked,
    [{ waterLevelAt: () => -1e4 }, { waterLevelAt: () => 1e4 }],
    [{ waterLevelAt: () => -10_001 }, { waterLevelAt: () => 10_001 }],
  ],
  [
    "lossAt(0.0005)",
    asked,
    [{ lossAt: () => 0 }, { lossAt: () => 1e5 }],
    [{ lossAt: () => -0.1 }, { lossAt: () => 100_001 }],
  ],
  ["input", () => solveScenarios(1 as never), [], [{}]],
  ["scenarios", uses, [], [{ scenarios: [] }, { scenarios: new Array(100_001) }]],
  ["scenarios[0]", uses, [], [{ scenarios: [none] }]],
  [
    "scenarios[0].name",
    use,
    [{ name: "x" }, { name: longest }],
    [{ name: "" }, { name: tooLong }, { name: 1 }, { name: [1] }],
  ],
  ["scenarios[0].open", use, [{ open: ["d"] }], [{ open: none }, { open: ["d", "d"] }]],
  ["scenarios[0].open[0]", use, [], [{ open: ["x"] }]],
  [
    "scenarios[0].sourceHeads",
    use,
    [{ sourceHeads: none }, { sourceHeads: {} }],
    [{ sourceHeads: 1 }, { sourceHeads: { x: 30 } }],
  ],
  [
    "scenarios[0].sourceHeads.t",
    use,
    [{ sourceHeads: { t: -1e4 } }, { sourceHeads: { t: 2e4 } }],
    [{ sourceHeads: { t: -10_001 } }, { sourceHeads: { t: 20_001 } }],
  ],
  ["scenarios[0].sourceHeads", (more) => use({ ...more }), [], [{ sourceHeads: { p: 30 } }]],
  ["input", () => worstCombination(1 as never), [], [{}]],
  ["openAtOnce", worst, [{ openAtOnce: 1 }], [{ openAtOnce: 0 }, { openAtOnce: 2 }, { openAtOnce: 0.5 }]],
  ["candidates", worst, [{ candidates: ["d"] }], [{ candidates: [] }, { alwaysOpen: ["d"] }]],
  ["candidates[0]", worst, [], [{ candidates: ["x"] }]],
  ["alwaysOpen[0]", worst, [], [{ alwaysOpen: ["x"] }]],
  ["input", () => gradeLine(1 as never), [], [{}]],
  [
    "solution",
    walked,
    [],
    [
      { solution: 1 },
      {
        solution: {
          junctions: [
            { id: "b", head: 1, pressure: 1 },
            { id: "a", head: 1, pressure: 1 },
          ],
        },
      },
    ],
  ],
  [
    "solution.junctions",
    walked,
    [],
    [
      { solution: {} },
      { solution: { junctions: [{ id: "a", head: 1, pressure: 1 }] } },
      { solution: { junctions: [1, 2, 3] } },
    ],
  ],
  ["solution.junctions[0]", walked, [], [{ solution: { junctions: [none, none] } }]],
  ["solution.junctions[0].head", walkedTo, [{ head: -1e9 }, { head: 1e9 }], [{ head: -1.1e9 }, { head: 1.1e9 }]],
  [
    "solution.junctions[0].pressure",
    walkedTo,
    [{ pressure: -1e13 }, { pressure: 1e13 }],
    [{ pressure: -1.1e13 }, { pressure: 1.1e13 }],
  ],
  ["from", walked, [{ from: "b" }], [{ from: "x" }]],
  ["runs", walked, [{ runs: [] }, { runs: ["r", "r"] }], [{ runs: none }, { runs: new Array(1_000_001) }]],
  ["runs[0]", walked, [], [{ runs: ["x"] }, { runs: new Array(1) }]],
])("%s is accepted up to its limits and refused past them", (field, call, within, beyond) => {
  for (const more of within) expect(refused(() => call(more))).toBeUndefined();
  for (const more of beyond) expect(refused(() => call(more))).toBe(field);
});

test("as many as 200 characters name a junction, and one is enough", () => {
  for (const id of ["y", longest]) {
    const junctions = [{ id, elevation: 0 }, yard.junctions[1]];
    expect(
      refused(() => layout({ junctions, runs: [{ ...darcy, from: id }], sources: [{ ...tank, junction: id }] })),
    ).toBe(undefined);
  }
});
