/**
 * Named uses of one layout: who draws at once, and what the worst of it is for each outlet and run.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: lists of one length, walked together.
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import { type GaugePressure, InputError, type Length, type Velocity } from "../units/index.ts";
import { prepareNetwork } from "./balance.ts";
import type { Network } from "./network-parts.ts";
import type { NetworkResult } from "./network-solution.ts";
import { openOutlets, solvePrepared } from "./solve-network.ts";

/** One use of the layout. */
export interface Scenario {
  /** What it is called: "all three hydrants". 1 to 200 characters. */
  readonly name: string;
  /** Names of the outlets that are open. */
  readonly open: readonly string[];
  /** Heads of fixed-head sources where they differ from the layout's, by source: a tank level or pressure of the hour. */
  readonly sourceHeads?: Readonly<Record<string, Length>>;
}

/** A layout and its uses. */
export interface SolveScenariosInput {
  /** The layout. */
  readonly network: Network;
  /** 1 to 100 000 uses. */
  readonly scenarios: readonly Scenario[];
}

/** The least pressure an outlet sees while it is open. */
export interface LeastPressure {
  /** Name of the outlet. */
  readonly outlet: string;
  /** Gauge pressure at its junction, Pa. */
  readonly pressure: GaugePressure;
  /** Name of the scenario. */
  readonly scenario: string;
}

/** The greatest speed in a run, either way. */
export interface GreatestVelocity {
  /** Name of the run. */
  readonly run: string;
  /** Speed, m/s. */
  readonly velocity: Velocity;
  /** Name of the scenario. */
  readonly scenario: string;
}

/** What one use came to. */
export interface ScenarioResult {
  /** What the use is called. */
  readonly name: string;
  /** The layout solved in it. */
  readonly result: NetworkResult;
}

/** What came of the scenarios. */
export interface ScenarioResults {
  /** One result for each scenario, in their order. */
  readonly results: readonly ScenarioResult[];
  /** Least pressure of each outlet that was open in a solved scenario. */
  readonly leastPressures: readonly LeastPressure[];
  /** Greatest speed in each run with a bore. */
  readonly greatestVelocities: readonly GreatestVelocity[];
  /** Names of the scenarios in which some outlet starves or the sources cannot supply. */
  readonly failing: readonly string[];
}

/**
 * Solves a layout for named uses and finds the least pressure of each outlet and the greatest speed in each run.
 *
 * @remarks
 * The layout is read once. With `sourceHeads` the uses may be the hours of a day: heads of the tank from a simulation
 * of the running system, one scenario for each moment.
 *
 * @param input - the layout and 1 to 100 000 uses of it
 * @returns the results in order, and the worst of them
 * @throws {@link units.InputError} naming the first part that cannot be used
 *
 * @example
 * ```ts
 * import { solveScenarios } from "risingmain/network";
 * import { celsius, feet, gpm, inches, inPsi } from "risingmain/units";
 * import { waterAt } from "risingmain/water";
 *
 * const pipe = { law: "darcy-weisbach", insideDiameter: inches(1.38), roughness: feet(0.000005) } as const;
 * const { leastPressures } = solveScenarios({
 *   network: {
 *     water: waterAt({ temperature: celsius(10) }),
 *     junctions: [{ id: "tank", elevation: feet(0) }, { id: "barn", elevation: feet(-40) }, { id: "field", elevation: feet(-10) }],
 *     runs: [
 *       { id: "main", from: "tank", to: "barn", length: feet(500), ...pipe },
 *       { id: "field line", from: "barn", to: "field", length: feet(800), ...pipe },
 *     ],
 *     outlets: [
 *       { id: "barn tap", junction: "barn", kind: "fixed demand", flow: gpm(6) },
 *       { id: "far trough", junction: "field", kind: "fixed demand", flow: gpm(8) },
 *     ],
 *     sources: [{ id: "tank", junction: "tank", kind: "fixed head", head: feet(92) }],
 *   },
 *   scenarios: [{ name: "trough alone", open: ["far trough"] }, { name: "both", open: ["far trough", "barn tap"] }],
 * });
 * leastPressures.map(({ outlet, scenario }) => `${outlet}: ${scenario}`); // => ["barn tap: both", "far trough: both"]
 * ```
 *
 * @source derived: one steady balance for each use
 */
export function solveScenarios(input: SolveScenariosInput): ScenarioResults {
  requireObject("input", input);
  const { network, scenarios } = input;
  const prepared = prepareNetwork(network);
  requireList("scenarios", scenarios, 1, 100_000);
  const leastPressures = new Map<string, LeastPressure>();
  const greatestVelocities = new Map<string, GreatestVelocity>();
  const failing: string[] = [];
  const results = Array.from(scenarios, (scenario, i) => {
    const path = `scenarios[${i}]`;
    requireObject(path, scenario);
    const { name, open } = scenario;
    if (!(typeof name === "string" && name.length >= 1 && name.length <= 200)) {
      throw new InputError(`${path}.name`, name, "a name of 1 to 200 characters");
    }
    requireList(`${path}.open`, open, 0, network.outlets.length);
    const heads = readHeads(network, `${path}.sourceHeads`, scenario.sourceHeads);
    const result = solvePrepared(prepared, openOutlets(prepared, `${path}.open`, open), heads);
    if (result.state !== "solved" || !result.everyOutletServed) failing.push(name);
    if (result.state === "solved") {
      for (const { id, pressure, state } of result.outlets) {
        if (state !== "not open" && !(leastPressures.get(id) && leastPressures.get(id)!.pressure <= pressure)) {
          leastPressures.set(id, { outlet: id, pressure, scenario: name });
        }
      }
      for (const { id, velocity } of result.runs) {
        if (velocity === null) continue;
        const speed = Math.abs(velocity) as Velocity;
        if (!(greatestVelocities.get(id) && greatestVelocities.get(id)!.velocity >= speed)) {
          greatestVelocities.set(id, { run: id, velocity: speed, scenario: name });
        }
      }
    }
    return { name, result };
  });
  return {
    results,
    leastPressures: network.outlets.flatMap(({ id }) => leastPressures.get(id) ?? []),
    greatestVelocities: network.runs.flatMap(({ id }) => greatestVelocities.get(id) ?? []),
    failing,
  };
}

/** Heads of the sources in a scenario, NaN where the layout's own holds. */
function readHeads(network: Network, path: string, heads: Scenario["sourceHeads"]): Float64Array | undefined {
  if (heads === undefined) return undefined;
  requireObject(path, heads);
  const read = new Float64Array(network.sources.length).fill(Number.NaN);
  for (const [id, head] of Object.entries(heads)) {
    const index = network.sources.findIndex((source) => source.id === id && source.kind === "fixed head");
    if (index < 0) throw new InputError(path, id, "the ids of fixed-head sources");
    requireWithin(`${path}.${id}`, head, -1e4, 2e4, "m");
    read[index] = head;
  }
  return read;
}
