/**
 * The yard: pressure and flow everywhere, for a layout of runs and whoever is drawing water.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: lists of one length, walked together.
import { requireList, requireObject, STANDARD_GRAVITY } from "../numeric/index.ts";
import { type GaugePressure, InputError, type Length, type Velocity, type VolumeFlow } from "../units/index.ts";
import { type Balance, largestOf, type PreparedNetwork, prepareNetwork } from "./balance.ts";
import type { LinkLoss } from "./link-laws.ts";
import type { Network, Run } from "./network-parts.ts";
import type {
  JunctionResult,
  NetworkResult,
  OutletResult,
  Residuals,
  RunResult,
  SourceResult,
} from "./network-solution.ts";

/** A layout, and who draws water. */
export interface SolveNetworkInput extends Network {
  /** Names of the outlets that are open; all of them if left out. */
  readonly open?: readonly string[];
}

/** A source asked for this share more than its largest flow has nothing left to give. */
const BEYOND = 0.01;
/** Flows below this share of the largest are rounding. */
const AT_REST = 1e-12;

/**
 * Steady flow and pressure in a layout of junctions, runs, outlets and sources, branched or looped.
 *
 * @remarks
 * At each junction: what enters leaves. Along each run: H_from − H_to = h(Q). At each pressure-dependent outlet:
 * H − z = (Q/c)². Solved by Newton's method on the content of the network, which is convex because every loss rises with
 * flow: the answer is unique, and a line search lets no step go astray. Heads balance to 1e-12 of the largest. In a tree
 * the flows are plain sums of what is drawn beyond each run.
 *
 * As accurate as the losses: about 10 % of the friction head in clean new pipe. Velocity head is left out of the grade
 * line (0.05 m at 1 m/s), as are losses at junctions unless a run's `lossCoefficient` counts them.
 *
 * @param input - the layout, and who is open; each field says its unit and the values it takes
 * @returns results for each junction, run, outlet and source with the residuals; or that the sources cannot give the
 *   fixed demands
 * @throws {@link units.InputError} naming the first part that cannot be used
 *
 * @example A tank on the hill, a trough and a hydrant below
 * ```ts
 * import { outletOfRating, solveNetwork } from "risingmain/network";
 * import { celsius, feet, gpm, inches, inGpm, inPsi, psi } from "risingmain/units";
 * import { waterAt } from "risingmain/water";
 *
 * const water = waterAt({ temperature: celsius(10) });
 * const hydrant = outletOfRating({ flow: gpm(10), pressure: psi(30), density: water.density });
 * const pipe = { law: "darcy-weisbach", insideDiameter: inches(1.38), roughness: feet(0.000005) } as const;
 * const result = solveNetwork({
 *   water,
 *   junctions: [
 *     { id: "tank", elevation: feet(100) },
 *     { id: "tee", elevation: feet(20) },
 *     { id: "barn", elevation: feet(0) },
 *   ],
 *   runs: [
 *     { id: "main", from: "tank", to: "tee", length: feet(600), ...pipe },
 *     { id: "barn line", from: "tee", to: "barn", length: feet(300), ...pipe },
 *   ],
 *   outlets: [
 *     { id: "trough", junction: "tee", kind: "fixed demand", flow: gpm(4) },
 *     { id: "hydrant", junction: "barn", kind: "pressure-dependent", coefficient: hydrant },
 *   ],
 *   sources: [{ id: "hill tank", junction: "tank", kind: "fixed head", head: feet(105) }],
 * });
 * if (result.state !== "solved") throw new Error(result.state);
 * result.everyOutletServed; // => true
 * result.outlets.map(({ flow }) => inGpm(flow).toFixed(2)); // => ["4.00", "10.72"]
 * result.outlets.map(({ pressure }) => inPsi(pressure).toFixed(1)); // => ["28.3", "34.5"]
 * ```
 *
 * @source todini-1988: the linear system of each step
 * @source cherry-1951: the content whose least value is the steady flow
 */
export function solveNetwork(input: SolveNetworkInput): NetworkResult {
  requireObject("input", input);
  const prepared = prepareNetwork(input);
  return solvePrepared(prepared, openOutlets(prepared, "open", input.open));
}

/** 1 for each outlet that is open. */
export function openOutlets(
  { network, numbered }: PreparedNetwork,
  path: string,
  names?: readonly string[],
): Uint8Array {
  const open = new Uint8Array(network.outlets.length);
  if (names === undefined) return open.fill(1);
  requireList(path, names, 0, network.outlets.length);
  // Array.from: a hole in a list must not be passed over.
  Array.from(names).forEach((name, i) => {
    const index = numbered.outletIndex.get(name);
    if (index === undefined) throw new InputError(`${path}[${i}]`, name, "the id of an outlet");
    if (open[index]) throw new InputError(`${path}[${i}]`, name, "each outlet once");
    open[index] = 1;
  });
  return open;
}

/** Solves a prepared layout with some outlets open. */
export function solvePrepared(prepared: PreparedNetwork, open: Uint8Array, sourceHeads?: Float64Array): NetworkResult {
  const { network, numbered, sourceLink } = prepared;
  const balance = prepared.balance(open, sourceHeads);
  const { flow, iterations, settled } = balance;
  const overdrawn = network.sources.flatMap((source, i) => {
    if (source.kind !== "curve") return [];
    const excess = flow[sourceLink[i]!]! - source.largestFlow;
    return excess > BEYOND * source.largestFlow ? [{ id: source.id, excess }] : [];
  });
  if (overdrawn.length > 0) {
    const short = overdrawn.reduce((sum, { excess }) => sum + excess, 0);
    return { state: "cannot supply", short: short as VolumeFlow, sources: overdrawn.map(({ id }) => id) };
  }
  const sourceFlow = sourceFlows(prepared, balance);
  const residuals = residualsOf(prepared, balance, sourceFlow);
  if (!settled) return { state: "not settled", residuals };

  const atRest = AT_REST * largestOf(flow);
  const perHead = network.water.density * STANDARD_GRAVITY;
  const junctions = network.junctions.map(({ id, elevation }, i): JunctionResult => {
    const pressure = (balance.head[i]! - elevation) * perHead;
    const state = balance.cutOff[i] ? "cut off" : pressure < 0 ? "negative pressure" : "under pressure";
    return { id, head: balance.head[i] as Length, pressure: pressure as GaugePressure, state };
  });
  const runs = network.runs.map((run, l) => runResult(run, prepared, balance, l, atRest));
  const outlets = network.outlets.map((outlet, i): OutletResult => {
    const at = numbered.outletJunction[i]!;
    const { pressure, state: reached } = junctions[at]!;
    if (!open[i]) return { id: outlet.id, flow: 0 as VolumeFlow, pressure, state: "not open" };
    const link = prepared.outletLink[i]!;
    const taken = outlet.kind === "fixed demand" ? outlet.flow : Math.max(0, flow[link]!);
    const given = reached === "cut off" ? 0 : taken;
    const starving = reached === "cut off" || pressure < (outlet.leastPressure ?? 0) || (link >= 0 && given <= atRest);
    return { id: outlet.id, flow: given as VolumeFlow, pressure, state: starving ? "starving" : "running" };
  });
  const sources = network.sources.map((source, i): SourceResult => {
    const given = sourceFlow[i]!;
    const state = balance.holding[sourceLink[i]!] // a fixed head has no link, and holds none shut
      ? "held shut"
      : source.kind === "curve" && given >= source.largestFlow
        ? "at its limit"
        : given > atRest
          ? "supplying"
          : given < -atRest
            ? "filling"
            : "idle";
    return { id: source.id, flow: given as VolumeFlow, head: junctions[numbered.sourceJunction[i]!]!.head, state };
  });
  return {
    state: "solved",
    everyOutletServed: outlets.every(({ state }) => state !== "starving"),
    junctions,
    runs,
    outlets,
    sources,
    residuals,
    iterations,
    method: "todini-1988",
    insideRange: runs.every(({ insideRange }) => insideRange),
  };
}

function runResult(
  run: Run,
  { laws, ends }: PreparedNetwork,
  { flow, head, shut, holding, reducing }: Balance,
  l: number,
  atRest: number,
): RunResult {
  const q = flow[l]!;
  const state = reducing[l]
    ? "reducing"
    : holding[l]
      ? "closed"
      : shut[l]
        ? "shut"
        : q > atRest
          ? "forward"
          : q < -atRest
            ? "reversed"
            : "at rest";
  const carries = !shut[l] || reducing[l];
  const headLoss = carries ? head[ends[2 * l]!]! - head[ends[2 * l + 1]!]! : 0;
  // D · D, not D ** 2: a power need not be the same to the last bit in every engine.
  const velocity =
    run.law === "power" ? null : ((q / ((Math.PI / 4) * run.insideDiameter * run.insideDiameter)) as Velocity);
  return {
    id: run.id,
    flow: q as VolumeFlow,
    velocity,
    headLoss: headLoss as Length,
    state,
    insideRange: laws[l]!.covers(q),
  };
}

/** Flow of each source: of its link, or for a fixed head what leaves its junction. */
function sourceFlows(
  { network, numbered, ends, sourceLink }: PreparedNetwork,
  { flow, demand, shut }: Balance,
): Float64Array {
  const leaving = demand.slice();
  const n = leaving.length;
  for (let l = 0; l < flow.length; l++) {
    if (shut[l]) continue;
    if (ends[2 * l]! < n) leaving[ends[2 * l]!]! += flow[l]!;
    if (ends[2 * l + 1]! < n) leaving[ends[2 * l + 1]!]! -= flow[l]!;
  }
  return Float64Array.from(network.sources, (_, i) => {
    const link = sourceLink[i]!;
    if (link < 0) return leaving[numbered.sourceJunction[i]!]!;
    return flow[link]!;
  });
}

function residualsOf(prepared: PreparedNetwork, balance: Balance, sourceFlow: Float64Array): Residuals {
  const { network, numbered, laws, ends, sourceLink } = prepared;
  const { flow, head, demand, shut, cutOff, reducing } = balance;
  const n = network.junctions.length;
  const mass = demand.slice();
  const value: LinkLoss = { loss: 0, slope: 0 };
  let energy = 0;
  for (let l = 0; l < laws.length; l++) {
    if (reducing[l]) mass[ends[2 * l + 1]!]! -= flow[l]!;
    if (shut[l]) continue;
    const i = ends[2 * l]!;
    const j = ends[2 * l + 1]!;
    if (i < n) mass[i]! += flow[l]!;
    if (j < n) mass[j]! -= flow[l]!;
    laws[l]!.at(flow[l]!, value);
    energy = Math.max(energy, Math.abs(head[i]! - head[j]! - value.loss));
  }
  network.sources.forEach((_, i) => {
    if (sourceLink[i]! < 0) mass[numbered.sourceJunction[i]!]! -= sourceFlow[i]!;
  });
  let worst = 0;
  for (let i = 0; i < n; i++) if (!cutOff[i]) worst = Math.max(worst, Math.abs(mass[i]!));
  return { mass: worst as VolumeFlow, energy: energy as Length };
}
