/**
 * One layout, ready to be balanced for any set of open outlets. Private to the network solver.
 *
 * Around the steady flow stand the decisions that are yes or no: which check valve holds, which part no source reaches,
 * which reducing valve throttles.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: indices into typed arrays, bounded by construction.
import { STANDARD_GRAVITY } from "../numeric/index.ts";
import { InputError } from "../units/index.ts";
import { curveLaw, type LinkLaw, type LinkLoss, outletLaw, runLaw } from "./link-laws.ts";
import type { Network } from "./network-parts.ts";
import { type NumberedNetwork, readNetwork } from "./read-network.ts";
import { spanningFlow } from "./spanning-flow.ts";
import { type Condition, flowSolver } from "./steady-flow.ts";

/** Most reducing valves in one layout: their states are tried until one set agrees with itself. */
const MOST_REDUCING = 10;
/** Passes of shutting and reopening one-way links before the layout is given up; each pass after the first is rare. */
const MOST_PASSES = 100;
/** Heads closer than this share of the largest are taken as equal when a valve decides. */
const SAME_HEAD = 1e-9;
/** Flows closer than this share of the largest, or than a drop a day (m³/s), are the same but for rounding. */
const SAME_FLOW = 1e-11;
const DROP = 1e-12;

/** A balance as the solver leaves it. Links: the runs, then the pressure-dependent outlets, then the curve sources. */
export interface Balance {
  readonly flow: Float64Array; // 0 in what is shut, but for a reducing valve
  readonly head: Float64Array;
  /** Flow taken at each junction by the fixed demands that water reaches, and by reducing valves. */
  readonly demand: Float64Array;
  /** 1 where a link carries nothing. */
  readonly shut: Uint8Array;
  /** 1 where a one-way link holds against water that would come back. */
  readonly holding: Uint8Array;
  /** 1 where a run's reducing valve throttles; its flow is then in `flow`, its `shut` is 1. */
  readonly reducing: Uint8Array;
  /** 1 at a junction that no source reaches. */
  readonly cutOff: Uint8Array;
  readonly iterations: number;
  readonly settled: boolean;
}

/** A layout with its solver. */
export interface PreparedNetwork {
  readonly network: Network;
  readonly numbered: NumberedNetwork;
  readonly laws: readonly LinkLaw[];
  readonly ends: Int32Array;
  /** Link of each outlet; −1 for a fixed demand. */
  readonly outletLink: Int32Array;
  /** Link of each source; −1 for a fixed head. */
  readonly sourceLink: Int32Array;
  /** Balance with the outlets open that have a 1, and other heads of the fixed-head sources where they are numbers. */
  readonly balance: (open: Uint8Array, sourceHeads?: Float64Array) => Balance;
}

/** Checks a layout and prepares its solver. */
export function prepareNetwork(network: Network): PreparedNetwork {
  const numbered = readNetwork(network);
  const { water, junctions, runs, outlets, sources } = network;
  const { runEnds, outletJunction, sourceJunction } = numbered;
  const n = junctions.length;

  const laws: LinkLaw[] = runs.map((run) => runLaw(run, water));
  const ends: number[] = Array.from(runEnds);
  const held: number[] = [0]; // node n is the datum that curve sources draw from
  const curves = sources.map((source, i) => (source.kind === "curve" ? curveLaw(source, `sources[${i}]`) : undefined));
  const value: LinkLoss = { loss: 0, slope: 0 };
  let highest = -Infinity;
  sources.forEach((source, i) => {
    curves[i]?.at(0, value);
    highest = Math.max(highest, source.kind === "fixed head" ? source.head : -value.loss);
  });
  const outletLink = new Int32Array(outlets.length).fill(-1);
  outlets.forEach((outlet, i) => {
    if (outlet.kind !== "pressure-dependent") return;
    const opening = junctions[outletJunction[i]!]!.elevation + (outlet.height ?? 0);
    outletLink[i] = laws.length;
    ends.push(outletJunction[i]!, n + held.length);
    held.push(opening);
    laws.push(outletLaw(outlet.coefficient, Math.max(1, highest - opening)));
  });
  const sourceLink = new Int32Array(sources.length).fill(-1);
  curves.forEach((law, i) => {
    if (law === undefined) return;
    sourceLink[i] = laws.length;
    ends.push(n, sourceJunction[i]!);
    laws.push(law);
  });
  const linkEnds = Int32Array.from(ends);
  const solver = flowSolver({ free: n, held: Float64Array.from(held), ends: linkEnds, laws });
  const reach = reachable(n, runs.length, runEnds);

  const supplied: number[] = Array.from(sourceJunction);
  const reducers = runs.flatMap(({ valve }, l) =>
    valve?.kind === "reducing" ? [[l, valve.setPressure] as const] : [],
  );
  const reducingRuns = reducers.map(([l]) => l);
  if (reducingRuns.length > MOST_REDUCING) {
    throw new InputError("runs", runs, `at most ${MOST_REDUCING} reducing valves`);
  }
  for (const l of reducingRuns) {
    const without = reach(supplied, (run) => (run === l ? "none" : "both"));
    if (without[runEnds[2 * l + 1]!]) {
      throw new InputError(
        `runs[${l}].valve`,
        runs[l]!.valve,
        "a reducing valve that is the only way into the part below it",
      );
    }
  }
  const setHead = reducers.map(
    ([l, pressure]) => junctions[runEnds[2 * l + 1]!]!.elevation + pressure / (water.density * STANDARD_GRAVITY),
  );

  /** Balance with given states of the reducing valves; one-way links decided. */
  const withReducing = (
    open: Uint8Array,
    throttling: readonly boolean[],
    sourceHeads: Float64Array | undefined,
  ): Balance => {
    const reducing = new Uint8Array(laws.length);
    reducingRuns.forEach((l, k) => {
      if (throttling[k]) reducing[l] = 1;
    });
    const holding = new Uint8Array(laws.length);
    const passed = new Float64Array(laws.length); // flow of each throttling valve, as its upper side sees it
    let start: Float64Array | undefined;
    let iterations = 0;
    let quiet = 0;
    for (let pass = 0; ; pass++) {
      const cutOff = reach(supplied, (l) => {
        const valve = runs[l]!.valve;
        if (valve === undefined) return "both";
        return valve.kind === "shut" || (holding[l] && !reducing[l]) ? "none" : "onward";
      }).map((reached) => 1 - reached);
      const condition = conditionOf(open, sourceHeads, cutOff, holding, reducing, passed);
      const { flow, head, ...end } = solver(condition, start);
      iterations += end.iterations;
      start = flow.slice();
      const found = { flow, head, demand: condition.demand, shut: condition.shut, holding, reducing, cutOff };
      spanningFlow({ network, numbered, laws, ends: linkEnds, sourceLink }, found);
      const same = SAME_HEAD * Math.max(1, largestOf(head));
      // Ends first: an outlet that would draw air in for now must not make the valve before it look pressed back.
      const decide = (from: number, to: number): boolean => {
        let changed = false;
        for (let l = from; l < to; l++) {
          if (!laws[l]!.oneWay) continue;
          if (holding[l] && head[linkEnds[2 * l]!]! + driving(l) > head[linkEnds[2 * l + 1]!]! + same) holding[l] = 0;
          else if (flow[l]! < 0 && isBacked(l, flow[l]!, same)) holding[l] = 1;
          else continue;
          changed = true;
        }
        return changed;
      };
      const decided = !decide(runs.length, laws.length) && !decide(0, runs.length);
      let passedChanged = false;
      for (const l of reducingRuns) {
        if (!reducing[l]) continue;
        const taken = takenAt(runEnds[2 * l + 1]!, flow, condition);
        if (Math.abs(taken - passed[l]!) > sameFlow(flow)) passedChanged = true;
        passed[l] = taken;
        flow[l] = taken;
      }
      // What a throttling valve passes is settled from the far end up, one valve a pass; beyond that it is rounding.
      quiet = decided ? quiet + 1 : 0;
      if ((decided && (!passedChanged || quiet > reducingRuns.length + 1)) || pass >= MOST_PASSES) {
        return { ...found, iterations, settled: end.settled && decided };
      }
    }
  };
  /** Head that a link adds at rest: a curve source's shutoff head, 0 for the rest. */
  const driving = (l: number): number => {
    laws[l]!.at(0, value);
    return -value.loss;
  };
  /** Whether water pressing back is more than rounding. */
  const isBacked = (l: number, flow: number, same: number): boolean => {
    laws[l]!.at(flow, value);
    return -value.loss - driving(l) > same;
  };
  /** What leaves a junction by its demand and its links. */
  const takenAt = (junction: number, flow: Float64Array, { demand, shut }: Condition): number => {
    let sum = demand[junction]!;
    for (const l of linkLists.get(junction)!) if (!shut[l]) sum += linkEnds[2 * l] === junction ? flow[l]! : -flow[l]!;
    return sum;
  };
  const linkLists = new Map<number, number[]>(reducingRuns.map((l) => [runEnds[2 * l + 1]!, []]));
  for (let at = 0; at < linkEnds.length; at++) linkLists.get(linkEnds[at]!)?.push(at >> 1);

  const conditionOf = (
    open: Uint8Array,
    sourceHeads: Float64Array | undefined,
    cutOff: Uint8Array,
    holding: Uint8Array,
    reducing: Uint8Array,
    passed: Float64Array,
  ): Condition => {
    const demand = new Float64Array(n);
    const forced = new Float64Array(n).fill(Number.NaN);
    const shut = new Uint8Array(laws.length);
    sources.forEach((source, i) => {
      if (source.kind !== "fixed head") return;
      const head = sourceHeads?.[i] ?? Number.NaN;
      forced[sourceJunction[i]!] = Number.isNaN(head) ? source.head : head;
    });
    outlets.forEach((outlet, i) => {
      const at = outletJunction[i]!;
      if (outlet.kind === "fixed demand") {
        if (open[i] && !cutOff[at]) demand[at]! += outlet.flow;
      } else if (!open[i] || cutOff[at]) shut[outletLink[i]!] = 1;
    });
    for (let l = 0; l < runs.length; l++) {
      const a = runEnds[2 * l]!;
      const b = runEnds[2 * l + 1]!;
      if (runs[l]!.valve?.kind === "shut" || cutOff[a] || cutOff[b]) shut[l] = 1;
    }
    for (let l = 0; l < laws.length; l++) if (holding[l]) shut[l] = 1;
    reducingRuns.forEach((l, k) => {
      const below = runEnds[2 * l + 1]!;
      if (!reducing[l] || cutOff[below]) return;
      shut[l] = 1;
      forced[below] = setHead[k]!;
      demand[runEnds[2 * l]!]! += passed[l]!;
    });
    for (let i = 0; i < n; i++) if (cutOff[i]) forced[i] = junctions[i]!.elevation;
    return { demand, forced, shut };
  };

  const balance = (open: Uint8Array, sourceHeads?: Float64Array): Balance => {
    const tried = new Set<string>();
    let states: readonly boolean[] = reducingRuns.map(() => false);
    let iterations = 0;
    for (;;) {
      tried.add(states.join());
      const found = withReducing(open, states, sourceHeads);
      iterations += found.iterations;
      const wanted = reducingRuns.map((l, k) => wantsToThrottle(found, l, setHead[k]!));
      const agrees = wanted.every((wish, k) => wish === states[k]);
      if (agrees) return { ...found, iterations };
      // Each set of states is tried once, so this ends. Only water put in behind a valve, with no way out, comes round again.
      if (tried.has(wanted.join())) return { ...found, iterations, settled: false };
      states = wanted;
    }
  };
  const wantsToThrottle = ({ flow, head, reducing, cutOff }: Balance, l: number, set: number): boolean => {
    const below = runEnds[2 * l + 1]!;
    if (cutOff[below]) return false;
    const same = SAME_HEAD * Math.max(1, Math.abs(set));
    if (!reducing[l]) return head[below]! > set + same;
    if (flow[l]! < -sameFlow(flow)) return false;
    laws[l]!.at(flow[l]!, value);
    return head[runEnds[2 * l]!]! - value.loss >= set - same;
  };

  return { network, numbered, laws, ends: linkEnds, outletLink, sourceLink, balance };
}

function sameFlow(flow: Float64Array): number {
  return Math.max(DROP, SAME_FLOW * largestOf(flow));
}

/** Largest magnitude in a list. */
export function largestOf(list: Float64Array): number {
  let largest = 0;
  for (let i = 0; i < list.length; i++) largest = Math.max(largest, Math.abs(list[i]!));
  return largest;
}

/** How water may pass a run. */
type Passage = "both" | "onward" | "none";

/** Which junctions water reaches from some, when each run lets it pass as told. */
function reachable(
  n: number,
  runs: number,
  runEnds: Int32Array,
): (from: readonly number[], passage: (run: number) => Passage) => Uint8Array {
  const start = new Int32Array(n + 1);
  for (let k = 0; k < 2 * runs; k++) start[runEnds[k]! + 1]!++;
  for (let i = 0; i < n; i++) start[i + 1]! += start[i]!;
  const next = start.slice(0, n);
  const at = new Int32Array(2 * runs); // each end: run · 2 + side
  for (let k = 0; k < 2 * runs; k++) at[next[runEnds[k]!]!++] = k;
  return (from, passage) => {
    const reached = new Uint8Array(n);
    const queue = new Int32Array(n);
    let length = 0;
    const visit = (i: number): void => {
      if (reached[i]) return;
      reached[i] = 1;
      queue[length++] = i;
    };
    from.forEach(visit);
    for (let q = 0; q < length; q++) {
      const i = queue[q]!;
      for (let k = start[i]!; k < start[i + 1]!; k++) {
        const end = at[k]!;
        const way = passage(end >> 1);
        if (way === "both" || (way === "onward" && end % 2 === 0)) visit(runEnds[end ^ 1]!);
      }
    }
    return reached;
  };
}
