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
/** Trials for a step length; half of them are bisections, and fifty bisections reach rounding. */
const MOST_HALVINGS = 100;

/** Makes a solver for one layout; its pattern is analysed once. */
export function flowSolver(layout: Layout): (condition: Condition, start?: Float64Array) => SteadyFlow {
  const { free: n, held, ends, laws } = layout;
  const links = laws.length;
  // Links with a held end only touch the diagonal.
  const inner: number[] = [];
  for (let l = 0; l < links; l++) if (ends[2 * l]! < n && ends[2 * l + 1]! < n) inner.push(l);
  const innerEnds = new Int32Array(inner.length * 2);
  inner.forEach((l, e) => {
    innerEnds[2 * e] = ends[2 * l]!;
    innerEnds[2 * e + 1] = ends[2 * l + 1]!;
  });
  const system: SparseSystem = sparseSystem(n, innerEnds);
  const conductance = new Float64Array(inner.length);
  const ground = new Float64Array(n);
  const right = new Float64Array(n);
  const loss = new Float64Array(links);
  const slope = new Float64Array(links);
  const step = new Float64Array(links);
  const trial = new Float64Array(links);
  const value: LinkLoss = { loss: 0, slope: 0 };

  return ({ demand, forced, shut }, start) => {
    const flow = new Float64Array(links);
    const head = new Float64Array(n + held.length);
    // Heads are reckoned from the first one held: what is at rest then differs from it by nothing, not by rounding.
    const base = forced.find((h) => !Number.isNaN(h)) ?? 0;
    for (let i = 0; i < held.length; i++) head[n + i] = held[i]! - base;
    const isHeld = (i: number): boolean => i >= n || !Number.isNaN(forced[i]);
    for (let i = 0; i < n; i++) head[i] = isHeld(i) ? forced[i]! - base : 0;

    const evaluate = (at: Float64Array): void => {
      for (let l = 0; l < links; l++) {
        if (shut[l]) continue;
        laws[l]!.at(at[l]!, value);
        loss[l] = value.loss;
        slope[l] = value.slope;
      }
    };
    /** Heads that the linearised laws ask for, into `head`; the change of flow that follows, into `step`. */
    const linearStep = (): void => {
      for (let i = 0; i < n; i++) {
        ground[i] = 0;
        right[i] = -demand[i]!;
      }
      for (let l = 0; l < links; l++) {
        if (shut[l]) continue;
        const i = ends[2 * l]!;
        const j = ends[2 * l + 1]!;
        const w = 1 / slope[l]!;
        const constant = flow[l]! - w * loss[l]!;
        const fixedI = isHeld(i);
        const fixedJ = isHeld(j);
        if (!fixedI) {
          if (fixedJ) ground[i]! += w;
          right[i]! -= constant - (fixedJ ? w * head[j]! : 0);
        }
        if (!fixedJ) {
          if (fixedI) ground[j]! += w;
          right[j]! += constant + (fixedI ? w * head[i]! : 0);
        }
      }
      for (let e = 0; e < inner.length; e++) {
        const l = inner[e]!;
        const open = !shut[l] && !isHeld(ends[2 * l]!) && !isHeld(ends[2 * l + 1]!);
        conductance[e] = open ? 1 / slope[l]! : 0;
      }
      for (let i = 0; i < n; i++) {
        if (!isHeld(i)) continue;
        ground[i] = 1;
        right[i] = forced[i]! - base;
      }
      system.solve(ground, conductance, right);
      head.set(right);
      for (let l = 0; l < links; l++) {
        step[l] = shut[l] ? 0 : (head[ends[2 * l]!]! - head[ends[2 * l + 1]!]! - loss[l]!) / slope[l]!;
      }
    };
    /** How steeply the content changes along `step`, and the largest unbalanced head, with the losses as they stand. */
    const along = (): number => {
      let sum = 0;
      for (let l = 0; l < links; l++) {
        if (!shut[l]) sum += step[l]! * (loss[l]! - head[ends[2 * l]!]! + head[ends[2 * l + 1]!]!);
      }
      return sum;
    };
    const imbalance = (): number => {
      let worst = 0;
      for (let l = 0; l < links; l++) {
        if (shut[l]) continue;
        const off = Math.abs(loss[l]! - head[ends[2 * l]!]! + head[ends[2 * l + 1]!]!);
        if (off > worst) worst = off;
      }
      return worst;
    };
    const slopeAt = (t: number): number => {
      for (let l = 0; l < links; l++) trial[l] = flow[l]! + t * step[l]!;
      evaluate(trial);
      return along();
    };
    /** The same, leaving flows, losses and slopes of the trial before as they were. */
    const slopeBetween = (t: number): number => {
      let sum = 0;
      for (let l = 0; l < links; l++) {
        if (shut[l]) continue;
        laws[l]!.at(flow[l]! + t * step[l]!, value);
        sum += step[l]! * (value.loss - head[ends[2 * l]!]! + head[ends[2 * l + 1]!]!);
      }
      return sum;
    };

    if (start === undefined) {
      // A straight line from rest to the usual flow knows no direction: the first step finds it.
      loss.fill(0); // the solver may have been used before
      for (let l = 0; l < links; l++) slope[l] = laws[l]!.usualSlope;
    } else {
      flow.set(start);
      for (let l = 0; l < links; l++) if (shut[l]) flow[l] = 0;
      evaluate(flow);
    }
    const result = (iterations: number, settled: boolean): SteadyFlow => {
      for (let i = 0; i < head.length; i++) head[i]! += base;
      return { flow, head, iterations, settled };
    };
    let best = Infinity;
    let stalled = 0;
    for (let iteration = 1; iteration <= MOST_ITERATIONS; iteration++) {
      linearStep();
      // The first step brings flows that keep continuity; the content can be compared from then on.
      const t = iteration > 1 ? stepLength(slopeAt, slopeBetween, along()) : 1;
      if (iteration === 1 || t !== 1) slopeAt(t);
      flow.set(trial);
      const off = imbalance();
      let largest = 1;
      for (let i = 0; i < head.length; i++) largest = Math.max(largest, Math.abs(head[i]! + base));
      const aim = BALANCE * largest;
      if (off <= aim) return result(iteration, true);
      stalled = off < best / 2 ? 0 : stalled + 1;
      best = Math.min(best, off);
      if (stalled >= 3 && off <= ROUNDING * aim) return result(iteration, true);
    }
    return result(MOST_ITERATIONS, false);
  };
}

/**
 * A step along which a convex content surely falls, given its slope along the step, which never falls.
 *
 * The full step is taken where it does not overshoot, or where what it climbs after the middle is less than it fell
 * before; otherwise the bracket is halved until the slope is still downhill but no more than half as steep.
 */
function stepLength(slopeAt: (t: number) => number, slopeBetween: (t: number) => number, downhill: number): number {
  const atEnd = slopeAt(1);
  if (!(downhill < 0) || atEnd <= 0) return 1;
  const atMiddle = slopeBetween(0.5);
  if (atMiddle + atEnd < 0) return 1;
  let low = 0;
  let high = 1;
  let slopeLow = downhill;
  let slopeHigh = atEnd;
  if (atMiddle <= 0) {
    low = 0.5;
    slopeLow = atMiddle;
  } else {
    high = 0.5;
    slopeHigh = atMiddle;
  }
  for (let i = 0; i < MOST_HALVINGS; i++) {
    if (low > 0 && slopeLow >= downhill / 2) return low;
    // Regula falsi and bisection in turn: quick where the slope is straight, safe where it has a kink.
    const t = i % 2 === 0 ? low - (slopeLow * (high - low)) / (slopeHigh - slopeLow) : (low + high) / 2;
    const s = slopeBetween(t);
    if (s <= 0) {
      low = t;
      slopeLow = s;
    } else {
      high = t;
      slopeHigh = s;
    }
  }
  return low > 0 ? low : high;
}
