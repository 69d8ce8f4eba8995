/**
 * Steady flow in any layout: Newton's method on the content of the network.
 *
 * Flows that keep continuity and minimise the content Σ ∫ loss dQ are the steady ones (`cherry-1951`); the content is
 * strictly convex because every loss rises with flow, so there is one answer. Each step solves the linear system of the
 * gradient method (`todini-1988`); a line search on the content lets no step raise it, so the method cannot fail to
 * converge from any start.
 * Private to the network solver.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: indices into typed arrays, bounded by construction.
import type { LinkLaw, LinkLoss } from "./link-laws.ts";
import { type SparseSystem, sparseSystem } from "./sparse-ldlt.ts";
import { stepLength } from "./step-length.ts";

/** A layout as the solver sees it: nodes 0 to n − 1 have a head to find, nodes from n on are held. */
export interface Layout {
  /** Number of nodes whose head is to find. */
  readonly free: number;
  /** Heads of the held nodes, m, the first of them being node `free`. */
  readonly held: Float64Array;
  /** Both ends of each link, one after the other. */
  readonly ends: Int32Array;
  /** The law of each link. */
  readonly laws: readonly LinkLaw[];
}

/** What may change from one solution to the next. */
export interface Condition {
  /** Flow taken at each free node, m³/s. */
  readonly demand: Float64Array;
  /** Head at which a free node is held for now; NaN where it is free. */
  readonly forced: Float64Array;
  /** 1 where a link is shut for now. */
  readonly shut: Uint8Array;
}

/** Flows and heads, and how well they balance. */
export interface SteadyFlow {
  /** Flow of each link, m³/s. */
  readonly flow: Float64Array;
  /** Head of each node, held ones included, m. */
  readonly head: Float64Array;
  /** Linear systems solved. */
  readonly iterations: number;
  /** False where rounding stopped the search before the balance was reached. */
  readonly settled: boolean;
}

/** Heads balance when no link is off by more than this share of the largest head. */
const BALANCE = 1e-12;
/** Where steps no longer improve the balance, rounding has been reached; up to this many times the aim it is accepted. */
const ROUNDING = 1e4;
/** The content falls at each step; a network that needs this many is at the end of what doubles can tell apart. */
const MOST_ITERATIONS = 300;

/** Makes a solver for one layout; its pattern is analysed once. */
export function flowSolver(layout: Layout): (condition: Condition, start?: Float64Array) => SteadyFlow {
  const { free: n, held, ends, laws } = layout;
  const links = laws.length;
  const nodes = n + held.length;
  // Links with a held end only touch the ground.
  const inner: number[] = [];
  for (let l = 0; l < links; l++) if (ends[2 * l]! < n && ends[2 * l + 1]! < n) inner.push(l);
  const innerEnds = new Int32Array(inner.length * 2);
  inner.forEach((l, e) => {
    innerEnds[2 * e] = ends[2 * l]!;
    innerEnds[2 * e + 1] = ends[2 * l + 1]!;
  });
  const system: SparseSystem = sparseSystem(n, innerEnds);
  const edges = new Float64Array(inner.length);
  const ground = new Float64Array(nodes);
  const right = new Float64Array(nodes);
  const step = new Float64Array(links);
  const value: LinkLoss = { loss: 0, slope: 0 };
  let now = linkState(links);
  let next = linkState(links);

  return ({ demand, forced, shut }, start) => {
    const head = new Float64Array(nodes);
    // Heads are reckoned from the first one held: what is at rest then differs from it by nothing, not by rounding.
    const base = forced.find((h) => !Number.isNaN(h)) ?? 0;
    for (let i = 0; i < held.length; i++) head[n + i] = held[i]! - base;

    /** Sets the heads to those that the linearised laws ask for. */
    const solveHeads = (): void => {
      const { flow, loss, conductance } = now;
      for (let i = 0; i < n; i++) {
        ground[i] = Number.isNaN(forced[i]) ? 0 : Infinity;
        right[i] = -demand[i]!;
      }
      for (let l = 0; l < links; l++) {
        if (shut[l]) continue;
        const i = ends[2 * l]!;
        const j = ends[2 * l + 1]!;
        const w = conductance[l]!;
        const constant = flow[l]! - w * loss[l]!;
        right[i]! -= constant;
        right[j]! += constant;
        if (i >= n) {
          ground[j]! += w;
          right[j]! += w * head[i]!;
        } else if (j >= n) {
          ground[i]! += w;
          right[i]! += w * head[j]!;
        }
      }
      for (let i = 0; i < n; i++) if (ground[i] === Infinity) right[i] = forced[i]! - base;
      for (let e = 0; e < edges.length; e++) edges[e] = shut[inner[e]!] ? 0 : conductance[inner[e]!]!;
      system.solve(ground, edges, right);
      for (let i = 0; i < n; i++) head[i] = right[i]!;
    };
    /** The change of flow that follows from the heads, into `step`; gives how steeply the content falls along it. */
    const findStep = (): number => {
      const { loss, conductance } = now;
      let downhill = 0;
      for (let l = 0; l < links; l++) {
        if (shut[l]) continue;
        const excess = head[ends[2 * l]!]! - head[ends[2 * l + 1]!]! - loss[l]!;
        step[l] = excess * conductance[l]!;
        downhill -= excess * step[l]!;
      }
      return downhill;
    };
    /** Evaluates the laws a share of the step on, into `next`; gives how steeply the content changes there along the step. */
    const goOn = (t: number): number => {
      const { flow, loss, conductance } = next;
      let slope = 0;
      for (let l = 0; l < links; l++) {
        if (shut[l]) continue;
        const q = now.flow[l]! + t * step[l]!;
        laws[l]!.at(q, value);
        flow[l] = q;
        loss[l] = value.loss;
        conductance[l] = 1 / value.slope;
        slope += step[l]! * (value.loss - head[ends[2 * l]!]! + head[ends[2 * l + 1]!]!);
      }
      return slope;
    };
    /** The same slope alone, leaving the trial as it is. */
    const slopeBetween = (t: number): number => {
      let slope = 0;
      for (let l = 0; l < links; l++) {
        if (shut[l]) continue;
        laws[l]!.at(now.flow[l]! + t * step[l]!, value);
        slope += step[l]! * (value.loss - head[ends[2 * l]!]! + head[ends[2 * l + 1]!]!);
      }
      return slope;
    };
    /** Largest head by which a link is off. */
    const imbalance = (): number => {
      let worst = 0;
      for (let l = 0; l < links; l++) {
        if (shut[l]) continue;
        const off = Math.abs(now.loss[l]! - head[ends[2 * l]!]! + head[ends[2 * l + 1]!]!);
        if (off > worst) worst = off;
      }
      return worst;
    };

    now.flow.fill(0); // the solver may have been used before
    next.flow.fill(0);
    if (start === undefined) {
      // A straight line from rest to the usual flow knows no direction: the first step finds it.
      now.loss.fill(0);
      for (let l = 0; l < links; l++) now.conductance[l] = 1 / laws[l]!.usualSlope;
    } else {
      now.flow.set(start);
      step.fill(0);
      goOn(0);
      [now, next] = [next, now];
      next.flow.fill(0);
    }
    const result = (iterations: number, settled: boolean): SteadyFlow => {
      for (let i = 0; i < nodes; i++) head[i]! += base;
      return { flow: now.flow.slice(), head, iterations, settled };
    };
    let best = Infinity;
    let stalled = 0;
    for (let iteration = 1; iteration <= MOST_ITERATIONS; iteration++) {
      solveHeads();
      const downhill = findStep();
      const atEnd = goOn(1);
      // The first step brings flows that keep continuity; the content can be compared from then on.
      if (iteration > 1 && downhill < 0 && atEnd > 0) {
        const t = stepLength(slopeBetween, downhill, atEnd);
        if (t !== 1) goOn(t);
      }
      [now, next] = [next, now];
      const off = imbalance();
      let largest = 1;
      for (let i = 0; i < nodes; i++) largest = Math.max(largest, Math.abs(head[i]! + base));
      const aim = BALANCE * largest;
      if (off <= aim) return result(iteration, true);
      stalled = off < best / 2 ? 0 : stalled + 1;
      best = Math.min(best, off);
      if (stalled >= 3 && off <= ROUNDING * aim) return result(iteration, true);
    }
    return result(MOST_ITERATIONS, false);
  };
}

/** Flow, loss and 1/slope of every link. */
interface LinkState {
  readonly flow: Float64Array;
  readonly loss: Float64Array;
  readonly conductance: Float64Array;
}

function linkState(links: number): LinkState {
  return {
    flow: new Float64Array(links),
    loss: new Float64Array(links),
    conductance: new Float64Array(links),
  };
}
