/**
 * The grade line along a path: the elevation water would stand at in a pipe stood on end at each junction.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import { type GaugePressure, InputError, type Length } from "../units/index.ts";
import type { Network } from "./network-parts.ts";
import type { SolvedNetwork } from "./network-solution.ts";
import { readNetwork } from "./read-network.ts";

/** A solved layout and a path through it. */
export interface GradeLineInput {
  /** The layout. */
  readonly network: Network;
  /** What {@link solveNetwork} made of it. */
  readonly solution: SolvedNetwork;
  /** Junction where the path starts. */
  readonly from: string;
  /** Names of the runs in the order they are walked, with or against the flow; 0 to 1 000 000. */
  readonly runs: readonly string[];
}

/** One stop on the path. */
export interface GradePoint {
  /** Name of the junction. */
  readonly junction: string;
  /** Length of pipe walked so far, m; a run without a length (law "power") adds none. */
  readonly distance: Length;
  /** Elevation of the junction, m. */
  readonly elevation: Length;
  /** Elevation of the grade line there, m. */
  readonly head: Length;
  /** Gauge pressure there, Pa. */
  readonly pressure: GaugePressure;
}

/**
 * Distance, elevation, head and pressure at each junction along a path: what a profile drawing needs.
 *
 * @param input - the layout, its solution, the junction to start from and the runs to walk
 * @returns one point for the start and one for the far end of each run
 * @throws {@link units.InputError} where a run does not go on from where the last one ended
 *
 * @example
 * ```ts
 * import { gradeLine, solveNetwork } from "risingmain/network";
 * import { celsius, feet, gpm, inches, inFeet } from "risingmain/units";
 * import { waterAt } from "risingmain/water";
 *
 * const network = {
 *   water: waterAt({ temperature: celsius(10) }),
 *   junctions: [{ id: "tank", elevation: feet(90) }, { id: "trough", elevation: feet(10) }],
 *   runs: [{
 *     id: "line", from: "tank", to: "trough", law: "darcy-weisbach" as const,
 *     insideDiameter: inches(1.38), length: feet(1000), roughness: feet(0.000005),
 *   }],
 *   outlets: [{ id: "trough", junction: "trough", kind: "fixed demand" as const, flow: gpm(18) }],
 *   sources: [{ id: "hill tank", junction: "tank", kind: "fixed head" as const, head: feet(100) }],
 * };
 * const solution = solveNetwork(network);
 * if (solution.state !== "solved") throw new Error(solution.state);
 * const points = gradeLine({ network, solution, from: "tank", runs: ["line"] });
 * points.map(({ head }) => Math.round(inFeet(head))); // => [100, 53]
 * ```
 *
 * @source derived: head falls along a run by what the run loses
 */
export function gradeLine(input: GradeLineInput): readonly GradePoint[] {
  requireObject("input", input);
  const { network, solution, from, runs } = input;
  const { junctionIndex, runIndex } = readNetwork(network);
  requireObject("solution", solution);
  requireList("solution.junctions", solution.junctions, network.junctions.length, network.junctions.length);
  requireList("runs", runs, 0, 1_000_000);
  let distance = 0;
  const point = (parameter: string, id: string): GradePoint => {
    const index = junctionIndex.get(id) ?? -1;
    const junction = network.junctions[index];
    if (junction === undefined) throw new InputError(parameter, id, "the id of a junction");
    const result = solution.junctions[index];
    requireObject(`solution.junctions[${index}]`, result);
    if (result?.id !== id) throw new InputError("solution", solution, "the solution of this layout");
    requireWithin(`solution.junctions[${index}].head`, result.head, -1e9, 1e9, "m");
    requireWithin(`solution.junctions[${index}].pressure`, result.pressure, -1e13, 1e13, "Pa gauge");
    return {
      junction: id,
      distance: distance as Length,
      elevation: junction.elevation,
      head: result.head,
      pressure: result.pressure,
    };
  };
  const points = [point("from", from)];
  let here = from;
  Array.from(runs).forEach((id, i) => {
    const run = network.runs[runIndex.get(id) ?? -1];
    if (run === undefined || (run.from !== here && run.to !== here)) {
      throw new InputError(`runs[${i}]`, id, `a run that starts or ends at ${JSON.stringify(here)}`);
    }
    here = run.from === here ? run.to : run.from;
    distance += run.law === "power" ? 0 : run.length;
    points.push(point(`runs[${i}]`, here));
  });
  return points;
}
