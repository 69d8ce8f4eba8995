/**
 * Solves A x = b for the matrix of a network of conductances: LDLᵀ by dense panels (`ng-1993`).
 *
 * A joins nodes by conductances, and each node to the ground by a conductance of its own, which may be nothing. To
 * eliminate a node is to put a mesh between its neighbours in place of its star. The numbers kept are the conductances
 * left at that moment; each pivot is their sum, never found by subtraction (`grassmann-1985`), so that a short main beside
 * a thin tube costs no digits.
 *
 * The pattern is analysed once per network; each Newton step only refills the numbers. Columns with the same pattern below
 * the diagonal are eliminated together as one dense panel, which is where the speed comes from. What a panel hands on goes
 * straight to the columns it belongs to.
 * Private to the network solver.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: indices into typed arrays, bounded by construction.
import { eliminationOf } from "./elimination-order.ts";
import { panelPlaces } from "./panel-places.ts";

/** The pattern of a matrix, ready to be filled and solved any number of times. */
export interface SparseSystem {
  /**
   * Overwrites b with x.
   *
   * @param ground - conductance of each node to the ground, none below 0; Infinity where x is held at b
   * @param edges - conductance of each edge, none below 0
   * @param b - right side, in the order of the nodes
   */
  readonly solve: (ground: Float64Array, edges: Float64Array, b: Float64Array) => void;
}

/**
 * Analyses the pattern.
 *
 * @param n - number of nodes
 * @param ends - both ends of each edge, one after the other
 */
export function sparseSystem(n: number, ends: Int32Array): SparseSystem {
  const pattern = eliminationOf(n, ends);
  const { order, first, rowStart } = pattern;
  const { panelAt, rows, edgeAt, columnAt, placesAt, places } = panelPlaces(ends, pattern);
  const count = first.length - 1;

  const C = new Float64Array(panelAt[count]!); // conductances from each node to those eliminated after it
  const V = new Float64Array(n); // inverse pivots
  const G = new Float64Array(n); // conductances to the ground, with what eliminated nodes handed on
  const x = new Float64Array(n);
  const asIs = Int32Array.from({ length: n }, (_, i) => i); // places within the panel itself

  /** Column j of a panel: its pivot, and what it hands on to the ground and the right side of its neighbours. */
  const eliminate = (
    b: Float64Array,
    at: number,
    f: number,
    j: number,
    k: number,
    start: number,
    end: number,
  ): void => {
    const ground = G[f + j]!;
    const below = at + k - start;
    let y: number;
    let g: number;
    if (ground === Infinity) {
      V[f + j] = 0;
      y = b[order[f + j]!]!;
      g = 1;
    } else {
      let d = ground;
      for (let i = j + 1; i < k; i++) d += C[at + i]!;
      for (let i = start; i < end; i++) d += C[below + i]!;
      const inverse = d === 0 ? 1 : 1 / d; // nothing joins a node without pivot
      V[f + j] = inverse;
      y = x[f + j]! * inverse;
      g = ground * inverse;
    }
    for (let i = j + 1; i < k; i++) x[f + i]! += C[at + i]! * y;
    for (let i = start; i < end; i++) x[rows[i]!]! += C[below + i]! * y;
    if (g === 0) return;
    for (let i = j + 1; i < k; i++) G[f + i]! += C[at + i]! * g;
    for (let i = start; i < end; i++) G[rows[i]!]! += C[below + i]! * g;
  };

  const solve = (ground: Float64Array, edges: Float64Array, b: Float64Array): void => {
    for (let i = 0; i < n; i++) {
      G[i] = ground[order[i]!]!;
      x[i] = b[order[i]!]!;
    }
    C.fill(0);
    for (let e = 0; e < edgeAt.length; e++) C[edgeAt[e]!]! += edges[e]!;
    for (let s = 0; s < count; s++) {
      const f = first[s]!;
      const k = first[s + 1]! - f;
      const start = rowStart[s]!;
      const end = rowStart[s + 1]!;
      const width = k + end - start;
      const p = panelAt[s]!;
      if (k === 1) {
        // By far the most panels have one column; apart, they take a seventh off the linear solution of a small network.
        eliminate(b, p, f, 0, 1, start, end);
        const v = V[f]!;
        const below = p + 1 - start;
        for (let j = start; j < end - 1; j++) {
          const a = C[below + j]! * v;
          const to = columnAt[j]!;
          const at = placesAt[j]!;
          for (let i = j + 1; i < end; i++) C[to + places[at + i]!]! += C[below + i]! * a;
        }
        continue;
      }
      // Columns two by two; where their number is odd the first goes alone, for nothing is handed on to it.
      let j = k % 2;
      if (j === 1) eliminate(b, p, f, 0, k, start, end);
      for (; j < k; j += 2) {
        const at = p + j * width;
        if (j > 0) handOnTwo(C, at, at + width, asIs, 0, p, width, j, width, j, V, f);
        eliminate(b, at, f, j, k, start, end);
        const ratio = C[at + j + 1]! * V[f + j]!;
        for (let i = at + j + 2; i < at + width; i++) C[i + width]! += C[i]! * ratio;
        eliminate(b, at + width, f, j + 1, k, start, end);
      }
      const below = p + k - start;
      for (let i = start; i < end - 1; i++) {
        const at = placesAt[i]!;
        if (at === placesAt[i + 1]) {
          handOnTwo(C, columnAt[i]!, columnAt[i + 1]!, places, at, below, width, i, end, k, V, f);
          i++;
        } else handOnOne(C, columnAt[i]!, places, at, below, width, i, end, k, V, f);
      }
    }
    for (let s = count - 1; s >= 0; s--) {
      const f = first[s]!;
      const k = first[s + 1]! - f;
      const start = rowStart[s]!;
      const end = rowStart[s + 1]!;
      const width = k + end - start;
      for (let j = k - 1; j >= 0; j--) {
        const at = panelAt[s]! + j * width;
        const below = at + k - start;
        if (V[f + j] === 0) {
          x[f + j] = b[order[f + j]!]!;
          continue;
        }
        let value = x[f + j]!;
        for (let i = j + 1; i < k; i++) value += C[at + i]! * x[f + i]!;
        for (let i = start; i < end; i++) value += C[below + i]! * x[rows[i]!]!;
        x[f + j] = value * V[f + j]!;
      }
    }
    for (let i = 0; i < n; i++) b[order[i]!] = x[i]!;
  };
  return { solve };
}

/**
 * Adds what the first k columns of a panel hand on to two columns: those of its rows i and i + 1. The one loop in which
 * large networks spend their time: four columns for two, so that each number fetched is used more than once.
 */
function handOnTwo(
  C: Float64Array,
  to: number,
  next: number,
  places: Int32Array,
  at: number,
  panel: number,
  width: number,
  i: number,
  end: number,
  k: number,
  V: Float64Array,
  f: number,
): void {
  const fours = k - (k % 4);
  for (let j = 0; j < fours; j += 4) {
    const c0 = panel + j * width;
    const c1 = c0 + width;
    const c2 = c1 + width;
    const c3 = c2 + width;
    const v0 = V[f + j]!;
    const v1 = V[f + j + 1]!;
    const v2 = V[f + j + 2]!;
    const v3 = V[f + j + 3]!;
    const a0 = C[c0 + i]! * v0;
    const a1 = C[c1 + i]! * v1;
    const a2 = C[c2 + i]! * v2;
    const a3 = C[c3 + i]! * v3;
    const b0 = C[c0 + i + 1]! * v0;
    const b1 = C[c1 + i + 1]! * v1;
    const b2 = C[c2 + i + 1]! * v2;
    const b3 = C[c3 + i + 1]! * v3;
    // The second column's diagonal is written too; nobody reads it.
    for (let h = i + 1; h < end; h++) {
      const x0 = C[c0 + h]!;
      const x1 = C[c1 + h]!;
      const x2 = C[c2 + h]!;
      const x3 = C[c3 + h]!;
      const place = places[at + h]!;
      C[to + place]! += x0 * a0 + x1 * a1 + x2 * a2 + x3 * a3;
      C[next + place]! += x0 * b0 + x1 * b1 + x2 * b2 + x3 * b3;
    }
  }
  for (let j = fours; j < k; j++) {
    const c0 = panel + j * width;
    const a0 = C[c0 + i]! * V[f + j]!;
    const b0 = C[c0 + i + 1]! * V[f + j]!;
    for (let h = i + 1; h < end; h++) {
      const x0 = C[c0 + h]!;
      const place = places[at + h]!;
      C[to + place]! += x0 * a0;
      C[next + place]! += x0 * b0;
    }
  }
}

/** The same for the one column of row i. */
function handOnOne(
  C: Float64Array,
  to: number,
  places: Int32Array,
  at: number,
  panel: number,
  width: number,
  i: number,
  end: number,
  k: number,
  V: Float64Array,
  f: number,
): void {
  for (let j = 0; j < k; j++) {
    const c0 = panel + j * width;
    const a0 = C[c0 + i]! * V[f + j]!;
    for (let h = i + 1; h < end; h++) C[to + places[at + h]!]! += C[c0 + h]! * a0;
  }
}
