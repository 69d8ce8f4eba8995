/** How each published network is solved with the library. */
import {
  type Junction,
  type NetworkWater,
  type Outlet,
  type Run,
  type SolvedNetwork,
  solveNetwork,
} from "risingmain/network";
import { frictionFactor } from "risingmain/pipe";
import type { Density, KinematicViscosity, Length, VolumeFlow } from "risingmain/units";
import records from "./network.records.json" with { type: "json" };
import type { CheckRecord, Computation, Computed, Given } from "./register.ts";

/** A record that carries its network, in the units of its source. */
export interface NetworkRecord extends CheckRecord {
  readonly network?: {
    readonly headLossLaw: { readonly type: string; readonly g?: number; readonly equation?: string };
    readonly nodes: readonly {
      readonly id: string;
      readonly fixedHead?: number;
      readonly demand?: number;
      readonly elevation?: number;
    }[];
    readonly pipes: readonly {
      readonly id: string;
      readonly from: string;
      readonly to: string;
      readonly length: number;
      readonly diameter: number;
      readonly C?: number;
      readonly darcyFrictionFactor?: number;
      readonly resistance?: number;
    }[];
  };
}

const FOOT = 0.3048;
const INCH = 0.0254;
const WATER: NetworkWater = { density: 1000 as Density, kinematicViscosity: 1e-6 as KinematicViscosity };

/** A run whose law is a power of the flow, which is how the books have it. */
export function power(id: string, from: string, to: string, resistance: number, exponent = 2): Run {
  return { id, from, to, law: "power", resistance, exponent };
}

/** Resistance of a full pipe with a fixed friction factor: h = (f L/D + K) V²/(2 g). */
export function fixedFactor(f: number, length: number, diameter: number, g: number, minor = 0): number {
  return ((f * length) / diameter + minor) / (2 * g * ((Math.PI / 4) * diameter ** 2) ** 2);
}

/** Solves a layout given by heads held, flows taken and runs, in any one system of units. */
export function solve(
  heads: Readonly<Record<string, number>>,
  taken: Readonly<Record<string, number>>,
  runs: readonly Run[],
  elevations: Readonly<Record<string, number>> = {},
): SolvedNetwork {
  const names = [...new Set(runs.flatMap(({ from, to }) => [from, to]))];
  const result = solveNetwork({
    water: WATER,
    junctions: names.map((id): Junction => ({ id, elevation: (elevations[id] ?? 0) as Length })),
    runs,
    outlets: Object.entries(taken).map(
      ([id, flow]): Outlet => ({ id, junction: id, kind: "fixed demand", flow: flow as VolumeFlow }),
    ),
    sources: Object.entries(heads).map(([id, head]) => ({
      id,
      junction: id,
      kind: "fixed head",
      head: head as Length,
    })),
  });
  if (result.state !== "solved") throw new Error(result.state);
  return result;
}

/** A list as printed, in the units of its source. */
function printedList<T>(given: Given, name: string): readonly T[] {
  return (given.record.inputs[name]?.value ?? []) as unknown as readonly T[];
}

/** Flows by name with a prefix. */
function flows(result: SolvedNetwork, prefix: string, scale = 1): Computed {
  return Object.fromEntries(result.runs.map(({ id, flow }) => [`${prefix}${id}`, flow * scale]));
}

function heads(result: SolvedNetwork, prefix: string, scale = 1): Computed {
  return Object.fromEntries(result.junctions.map(({ id, head }) => [`${prefix}${id}`, head * scale]));
}

/** The law of a record's pipe, in the units of its source. */
export function lawOf(
  network: NonNullable<NetworkRecord["network"]>,
  pipe: (typeof network.pipes)[number],
  diameter = pipe.diameter,
): Run {
  const { id, from, to, length, C, darcyFrictionFactor, resistance } = pipe;
  if (resistance !== undefined) return power(id, from, to, resistance);
  if (darcyFrictionFactor !== undefined) {
    return power(id, from, to, fixedFactor(darcyFrictionFactor, length, diameter, network.headLossLaw.g as number));
  }
  const constant = Number(/h = ([\d.]+) L/.exec(network.headLossLaw.equation as string)?.[1]);
  return power(id, from, to, (constant * length) / ((C as number) ** 1.852 * diameter ** 4.871), 1.852);
}

/** The network that a record carries, or that the record named carries. */
export function networkOf(id: string): NonNullable<NetworkRecord["network"]> {
  const record = (records as unknown as readonly NetworkRecord[]).find((r) => r.id === id);
  if (record?.network === undefined) throw new Error(`${id} has no network`);
  return record.network;
}

function solveRecord(
  network: NonNullable<NetworkRecord["network"]>,
  extra: readonly Run[] = [],
  diameters?: readonly number[],
): SolvedNetwork {
  const held = network.nodes.filter(({ fixedHead }) => fixedHead !== undefined);
  return solve(
    Object.fromEntries(held.map(({ id, fixedHead }) => [id, fixedHead as number])),
    Object.fromEntries(network.nodes.filter(({ demand }) => demand).map(({ id, demand }) => [id, demand as number])),
    [...network.pipes.map((pipe, k) => lawOf(network, pipe, diameters?.[k])), ...extra],
    Object.fromEntries(network.nodes.map(({ id, elevation }) => [id, elevation ?? 0])),
  );
}

/** Head at each junction above its elevation, m: the "pressure" of the two-loop network. */
function pressures(result: SolvedNetwork): Computed {
  return Object.fromEntries(
    result.junctions.map(({ id, pressure }) => [`pressure_${id}`, pressure / (1000 * 9.80665)]),
  );
}

export const computations: readonly Computation[] = [
  {
    ids: /net-maurer-5-pipe-converged/,
    compute: (given) => {
      // Loop 1 runs A-B-C-A by pipes 1, 2, 3; loop 2 runs C-B-D-C by pipes 2 (against), 4, 5.
      const [k1, k2, k3, k4, k5] = printedList<number>(given, "K");
      const [q1, , q3] = printedList<number>(given, "initialFlows");
      const through = (q1 as number) - (q3 as number);
      const runs = [
        ["1", "A", "B", k1],
        ["2", "B", "C", k2],
        ["3", "C", "A", k3],
        ["4", "B", "D", k4],
        ["5", "D", "C", k5],
      ] as const;
      return flows(
        solve(
          { A: 0 },
          { D: through },
          runs.map(([id, from, to, k]) => power(id, from, to, k as number)),
        ),
        "Q",
      );
    },
  },
  {
    ids: /net-maurer-10-pipe-converged/,
    compute: (given) => {
      // Loops A-B-C-D-E-A (1 to 5), E-D-G-F-E (4, 6, 7, 8) and D-C-H-G-D (3, 9, 10, 6), deduced from the flows at each junction.
      const D = given.list("diameters");
      const L = given.list("lengths");
      const f = given.list("frictionFactors");
      const g = given.si("g");
      const ends = ["AB", "BC", "CD", "DE", "EA", "DG", "GF", "FE", "CH", "HG"];
      const runs = ends.map((pair, i) =>
        power(
          `${i + 1}`,
          pair[0] as string,
          pair[1] as string,
          fixedFactor(f[i] as number, L[i] as number, D[i] as number, g),
        ),
      );
      return flows(solve({ A: 0 }, { D: 0.04, F: 0.02, H: 0.02 }, runs), "Q");
    },
  },
  {
    ids: /net-two-loop-419000-design/,
    compute: ({ record }) => pressures(solveRecord((record as NetworkRecord).network as never)),
  },
  {
    ids: /net-two-loop-flows/,
    compute: () => {
      const network = networkOf("net-two-loop-419000-design");
      const result = solveRecord(network);
      const named = Object.fromEntries(
        result.runs.map(({ flow }, k) => [`Q_${network.pipes[k]?.from}_${network.pipes[k]?.to}`, flow]),
      );
      return { ...named, ...heads(result, "H_") };
    },
  },
  {
    ids: /net-hanoi-6p081-design/,
    compute: ({ record }) => {
      const { junctions } = solveRecord((record as NetworkRecord).network as never);
      return { minimumHead: Math.min(...junctions.map(({ head }) => head)) };
    },
  },
  {
    ids: /net-hanoi-heads/,
    compute: () => {
      const result = solveRecord(networkOf("net-hanoi-6p081-design"));
      return { ...flows(result, "Q_"), ...heads(result, "H_") };
    },
  },
  {
    ids: /net-new-york-existing/,
    compute: ({ record }) => {
      const result = solveRecord((record as NetworkRecord).network as never);
      return { ...flows(result, "Q_", FOOT ** 3), ...heads(result, "H_", FOOT) };
    },
  },
  {
    ids: /net-new-york-38p64-design/,
    compute: (given) => {
      const network = networkOf("net-new-york-existing");
      const twins = printedList<readonly [number, number]>(given, "duplicates").map(([pipe, inches]) => {
        const beside = network.pipes.find(({ id }) => id === `${pipe}`);
        return lawOf(
          network,
          { ...(beside as (typeof network.pipes)[number]), id: `twin ${pipe}` },
          (inches * INCH) / FOOT,
        );
      });
      return heads(solveRecord(network, twins), "H_", FOOT);
    },
  },
  {
    ids: /net-(daugherty-ex-8-9|munson-ex-8-14)/,
    compute: ({ record }) => flows(solveRecord((record as NetworkRecord).network as never), "Q_", FOOT ** 3),
  },
  {
    ids: /net-natarajan-ex-7-20/,
    compute: ({ record }) => {
      const result = solveRecord((record as NetworkRecord).network as never);
      return { ...flows(result, "Q_"), ...heads(result, "H_") };
    },
  },
  {
    ids: /net-natarajan-ex-7-19/,
    compute: (given) => {
      const g = given.si("g");
      const run = (id: string, from: string, to: string, n: number): Run =>
        power(
          id,
          from,
          to,
          fixedFactor(given.si("darcyFrictionFactor"), given.si(`length${n}`), given.si(`diameter${n}`), g),
        );
      // From the known flow of branch 3 back to the fork, from the fork to reservoir 2 and to the pump.
      const q3 = given.si("flowBranch3");
      const fork = solve({ R3: given.si("level3") }, { fork: -q3 }, [run("3", "fork", "R3", 3)]).junctions[0]
        ?.head as number;
      const q2 = solve({ fork, R2: given.si("level2") }, {}, [run("2", "fork", "R2", 2)]).runs[0]?.flow as number;
      const pump = solve({ fork }, { pump: -(q2 + q3) }, [run("1", "pump", "fork", 1)]).junctions[0]?.head as number;
      return { flowBranch2: q2, pumpPressure: (pump - given.si("pumpLevel")) * 1000 * g };
    },
  },
  {
    ids: /net-lal-ex-5-17/,
    compute: (given) => {
      // The source's coefficients, in velocity heads: 4 f L/D, and one head more or less at the junction.
      const coefficients = [29, 55, 41];
      const D = given.list("diameters");
      const [a, b, c] = given.list("levels");
      const area = (i: number): number => (Math.PI / 4) * (D[i] as number) ** 2;
      const runs = [
        ["1", "A", "J"],
        ["2", "J", "B"],
        ["3", "J", "C"],
      ].map(([id, from, to], i) =>
        power(
          id as string,
          from as string,
          to as string,
          (coefficients[i] as number) / (2 * given.si("g") * area(i) ** 2),
        ),
      );
      const { runs: found } = solve({ A: a as number, B: b as number, C: c as number }, {}, runs);
      const velocities = Object.fromEntries(found.map(({ flow }, i) => [`velocity${i + 1}`, flow / area(i)]));
      return { ...velocities, flow3: found[2]?.flow as number };
    },
  },
  {
    ids: /net-(douglas-ex-14-3|choudhary-ex-7-17)/,
    compute: (given) => {
      const f = given.si("fanningFrictionFactor");
      const runs = [1, 2].map((n) => {
        const D = given.si(`diameter${n}`);
        // The second book rounds π²·g/(…) to 3.0257.
        const resistance = given.has("g")
          ? fixedFactor(4 * f, given.si("length"), D, given.si("g"), given.si("minorK"))
          : (f * given.si("length")) / (3.0257 * D ** 5);
        return power(`${n}`, "upper", "lower", resistance);
      });
      const result = solve({ upper: given.si("head"), lower: 0 }, {}, runs);
      return { ...flows(result, "flow"), total: result.sources[0]?.flow as number };
    },
  },
  {
    ids: /net-sarkar-ex-6-18/,
    compute: (given) => {
      // One factor for both pipes drops out of the split.
      const runs = [1, 2].map((n) =>
        power(`${n}`, "A", "B", fixedFactor(0.02, given.si("length"), given.si(`diameter${n}`), 9.81)),
      );
      return flows(solve({ A: 0 }, { B: given.si("flow") }, runs), "flow");
    },
  },
  {
    ids: /net-maurer-ex-4-6-parallel/,
    compute: (given) => {
      const kinematicViscosity = given.si<KinematicViscosity>("kinematicViscosity");
      const result = solveNetwork({
        water: { ...WATER, kinematicViscosity },
        junctions: ["A", "B"].map((id) => ({ id, elevation: 0 as Length })),
        runs: [1, 2].map((n) => ({
          id: `${n}`,
          from: "A",
          to: "B",
          law: "darcy-weisbach" as const,
          insideDiameter: given.si<Length>(`diameter${n}`),
          length: given.si<Length>(`length${n}`),
          roughness: given.si<Length>("roughness"),
        })),
        outlets: [{ id: "B", junction: "B", kind: "fixed demand", flow: given.si<VolumeFlow>("totalFlow") }],
        sources: [{ id: "A", junction: "A", kind: "fixed head", head: 0 as Length }],
      });
      if (result.state !== "solved") throw new Error(result.state);
      const [one, two] = result.runs;
      const factor = (velocity: number, n: number): number => {
        const D = given.si(`diameter${n}`);
        return frictionFactor({
          reynolds: (velocity * D) / kinematicViscosity,
          relativeRoughness: given.si("roughness") / D,
        }).value;
      };
      const [v1, v2] = [one?.velocity as number, two?.velocity as number];
      return {
        ...flows(result, "flow"),
        velocity1: v1,
        velocity2: v2,
        headLoss: one?.headLoss as number,
        friction1: factor(v1, 1),
        friction2: factor(v2, 2),
      };
    },
  },
  {
    ids: /net-schaschke-ex-8-12/,
    compute: ({ record }) => {
      // In the source's own units, pascals for heads and litres a second for flows: a power law has no others.
      const network = (record as NetworkRecord).network as NonNullable<NetworkRecord["network"]>;
      const taken = Object.fromEntries(network.nodes.slice(1).map(({ id, demand }) => [id, demand as number]));
      const result = solve(
        { A: 0 },
        taken,
        network.pipes.map((pipe) => lawOf(network, pipe)),
      );
      const losses = Object.fromEntries(result.runs.map(({ id, headLoss }) => [`dp${id}`, headLoss]));
      return { ...flows(result, "flow", 1e-3), ...losses };
    },
  },
];
