/**
 * Solves A x = b for the matrix of a network of conductances: multifrontal LDLᵀ (`duff-1983`).
 *
 * A joins nodes by conductances, and each node to the ground by a conductance of its own, which may be nothing. Each pivot
 * is summed from the conductances left at its node, never found by subtraction (`grassmann-1985`): a short main beside a
 * thin tube costs no digits.
 *
 * The pattern is analysed once per network; each Newton step only refills the numbers. Columns with the same pattern below
 * the diagonal are factored together as one dense panel, which is where the speed comes from.
 * Private to the network solver.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: indices into typed arrays, bounded by construction.
import { bucket, panels, postordered } from "./column-panels.ts";

/** The pattern of a matrix, ready to be filled, factored and solved any number of times. */
export interface SparseSystem {
  /** Sets A: the conductance of each node to the ground, and of each edge; none below 0. */
  readonly factor: (ground: Float64Array, edges: Float64Array) => void;
  /** Overwrites b, in the order of the nodes, with x. */
  readonly solve: (b: Float64Array) => void;
}

/**
 * Analyses the pattern.
 *
 * @param n - number of nodes
 * @param ends - both ends of each edge, one after the other
 */
export function sparseSystem(n: number, ends: Int32Array): SparseSystem {
  const { order, parent } = postordered(n, ends);
  const place = new Int32Array(n);
  for (let k = 0; k < n; k++) place[order[k]!] = k;

  // Upper neighbours of each column, then the pattern of each column of L: its own and what its children hand up.
  const low = new Int32Array(ends.length / 2);
  const high = new Int32Array(ends.length / 2);
  for (let e = 0; e < low.length; e++) {
    const a = place[ends[2 * e]!]!;
    const b = place[ends[2 * e + 1]!]!;
    low[e] = Math.min(a, b);
    high[e] = Math.max(a, b);
  }
  const { panelOf, first, rowStart, rows } = panels(n, low, high, parent);
  const count = first.length - 1;

  const panelAt = new Int32Array(count + 1); // panels lie one after the other
  for (let s = 0; s < count; s++) {
    const k = first[s + 1]! - first[s]!;
    const r = rowStart[s + 1]! - rowStart[s]!;
    panelAt[s + 1] = panelAt[s]! + k * (k + r);
  }
  const local = new Int32Array(n);
  const relative = new Int32Array(rows.length); // of each row handed up, its place in the parent's front
  const edgeAt = new Int32Array(low.length);
  const edgeStart = new Int32Array(count + 1);
  const edgeList = bucket(low, panelOf, edgeStart);
  const childStart = new Int32Array(count + 1);
  const up = new Int32Array(count);
  for (let s = 0; s < count; s++) up[s] = rowStart[s + 1]! > rowStart[s]! ? panelOf[rows[rowStart[s]!]!]! : -1;
  const childList = bucket(up, undefined, childStart);
  // What a panel hands up lies on a stack: its parent takes it off, and puts its own where the lowest of them lay.
  const updateAt = new Int32Array(count);
  const formedAt = new Int32Array(count); // where it is formed, above those it is formed from
  let top = 0;
  let highest = 0;
  for (let s = 0; s < count; s++) {
    const r = rowStart[s + 1]! - rowStart[s]!;
    formedAt[s] = top;
    highest = Math.max(highest, top + r * r);
    updateAt[s] = childStart[s]! < childStart[s + 1]! ? updateAt[childList[childStart[s]!]!]! : top;
    top = updateAt[s]! + r * r;
  }
  for (let s = 0; s < count; s++) {
    const f = first[s]!;
    const k = first[s + 1]! - f;
    const m = k + rowStart[s + 1]! - rowStart[s]!;
    for (let j = 0; j < k; j++) local[f + j] = j;
    for (let i = rowStart[s]!; i < rowStart[s + 1]!; i++) local[rows[i]!] = k + i - rowStart[s]!;
    for (let x = edgeStart[s]!; x < edgeStart[s + 1]!; x++) {
      const e = edgeList[x]!;
      edgeAt[e] = panelAt[s]! + (low[e]! - f) * m + local[high[e]!]!;
    }
    for (let x = childStart[s]!; x < childStart[s + 1]!; x++) {
      const c = childList[x]!;
      for (let i = rowStart[c]!; i < rowStart[c + 1]!; i++) relative[i] = local[rows[i]!]!;
    }
  }

  const L = new Float64Array(panelAt[count]!);
  const U = new Float64Array(highest);
  const D = new Float64Array(n);
  const E = new Float64Array(n); // conductance to the ground, with what eliminated nodes handed on
  const x = new Float64Array(n);

  const factor = (ground: Float64Array, edges: Float64Array): void => {
    for (let i = 0; i < n; i++) E[i] = ground[order[i]!]!;
    L.fill(0);
    for (let e = 0; e < edgeAt.length; e++) L[edgeAt[e]!]! -= edges[e]!;
    for (let s = 0; s < count; s++) {
      const f = first[s]!;
      const k = first[s + 1]! - f;
      const r = rowStart[s + 1]! - rowStart[s]!;
      const m = k + r;
      const p = panelAt[s]!;
      const u = formedAt[s]!;
      U.fill(0, u, u + r * r);
      for (let c = childStart[s]!; c < childStart[s + 1]!; c++) {
        const child = childList[c]!;
        const start = rowStart[child]!;
        const size = rowStart[child + 1]! - start;
        const from = updateAt[child]!;
        for (let j = 0; j < size; j++) {
          const column = relative[start + j]!;
          const at = from + j * size;
          if (column < k) {
            const to = p + column * m;
            for (let i = j; i < size; i++) L[to + relative[start + i]!]! += U[at + i]!;
          } else {
            const to = u + (column - k) * r - k;
            for (let i = j; i < size; i++) U[to + relative[start + i]!]! += U[at + i]!;
          }
        }
      }
      factorPanel(L, p, m, k, D, f, E, rows, rowStart[s]!);
      if (r === 0) continue;
      rankUpdate(U, u, r, L, p, m, k, D, f);
      if (updateAt[s] !== u) U.copyWithin(updateAt[s]!, u, u + r * r);
    }
  };

  const solve = (b: Float64Array): void => {
    for (let i = 0; i < n; i++) x[i] = b[order[i]!]!;
    for (let s = 0; s < count; s++) {
      const f = first[s]!;
      const k = first[s + 1]! - f;
      const start = rowStart[s]!;
      const m = k + rowStart[s + 1]! - start;
      for (let j = 0; j < k; j++) {
        const at = panelAt[s]! + j * m;
        const value = x[f + j]!;
        for (let i = j + 1; i < k; i++) x[f + i]! -= L[at + i]! * value;
        for (let i = k; i < m; i++) x[rows[start + i - k]!]! -= L[at + i]! * value;
        x[f + j] = value / D[f + j]!;
      }
    }
    for (let s = count - 1; s >= 0; s--) {
      const f = first[s]!;
      const k = first[s + 1]! - f;
      const start = rowStart[s]!;
      const m = k + rowStart[s + 1]! - start;
      for (let j = k - 1; j >= 0; j--) {
        const at = panelAt[s]! + j * m;
        let value = x[f + j]!;
        for (let i = j + 1; i < k; i++) value -= L[at + i]! * x[f + i]!;
        for (let i = k; i < m; i++) value -= L[at + i]! * x[rows[start + i - k]!]!;
        x[f + j] = value;
      }
    }
    for (let i = 0; i < n; i++) b[order[i]!] = x[i]!;
  };
  return { factor, solve };
}

/**
 * Factors the k columns of a panel in place: unit lower L below the diagonal, D apart. Diagonals stay unused: a pivot is
 * the sum of its column and its ground.
 */
function factorPanel(
  L: Float64Array,
  p: number,
  m: number,
  k: number,
  D: Float64Array,
  f: number,
  E: Float64Array,
  rows: Int32Array,
  start: number,
): void {
  for (let j = 0; j < k; j++) {
    const at = p + j * m;
    const ground = E[f + j]!;
    let d = ground;
    for (let i = j + 1; i < m; i++) d -= L[at + i]!;
    if (d === 0) d = 1; // a node that nothing joins
    D[f + j] = d;
    const inverse = 1 / d;
    for (let c = j + 1; c < k; c++) {
      const ratio = L[at + c]! * inverse;
      const to = p + c * m;
      for (let i = c + 1; i < m; i++) L[to + i]! -= L[at + i]! * ratio;
    }
    for (let i = j + 1; i < m; i++) L[at + i]! *= inverse;
    for (let i = j + 1; i < k; i++) E[f + i]! -= L[at + i]! * ground;
    for (let i = k; i < m; i++) E[rows[start + i - k]!]! -= L[at + i]! * ground;
  }
}

/**
 * U −= L₂ D L₂ᵀ, lower half: the one loop in which large networks spend their time. Two columns of U and four of L at a
 * time, so that each number fetched is used more than once.
 */
function rankUpdate(
  U: Float64Array,
  u: number,
  r: number,
  L: Float64Array,
  p: number,
  m: number,
  k: number,
  D: Float64Array,
  f: number,
): void {
  const below = p + k;
  const fours = k - (k % 4);
  for (let c = 0; c < r; c += 2) {
    const pair = c + 1 < r;
    const to = u + c * r;
    const next = to + r;
    for (let j = 0; j < fours; j += 4) {
      const l0 = below + j * m;
      const l1 = l0 + m;
      const l2 = l1 + m;
      const l3 = l2 + m;
      const d0 = D[f + j]!;
      const d1 = D[f + j + 1]!;
      const d2 = D[f + j + 2]!;
      const d3 = D[f + j + 3]!;
      const a0 = L[l0 + c]! * d0;
      const a1 = L[l1 + c]! * d1;
      const a2 = L[l2 + c]! * d2;
      const a3 = L[l3 + c]! * d3;
      if (!pair) {
        for (let i = c; i < r; i++) U[to + i]! -= L[l0 + i]! * a0 + L[l1 + i]! * a1 + L[l2 + i]! * a2 + L[l3 + i]! * a3;
        continue;
      }
      const b0 = L[l0 + c + 1]! * d0;
      const b1 = L[l1 + c + 1]! * d1;
      const b2 = L[l2 + c + 1]! * d2;
      const b3 = L[l3 + c + 1]! * d3;
      // The pair's upper corner is written too; nobody reads above a diagonal.
      for (let i = c; i < r; i++) {
        const x0 = L[l0 + i]!;
        const x1 = L[l1 + i]!;
        const x2 = L[l2 + i]!;
        const x3 = L[l3 + i]!;
        U[to + i]! -= x0 * a0 + x1 * a1 + x2 * a2 + x3 * a3;
        U[next + i]! -= x0 * b0 + x1 * b1 + x2 * b2 + x3 * b3;
      }
    }
    for (let j = fours; j < k; j++) {
      const l0 = below + j * m;
      const a0 = L[l0 + c]! * D[f + j]!;
      if (!pair) {
        for (let i = c; i < r; i++) U[to + i]! -= L[l0 + i]! * a0;
        continue;
      }
      const b0 = L[l0 + c + 1]! * D[f + j]!;
      for (let i = c; i < r; i++) {
        const x0 = L[l0 + i]!;
        U[to + i]! -= x0 * a0;
        U[next + i]! -= x0 * b0;
      }
    }
  }
}
