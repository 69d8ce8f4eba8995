/**
 * The pattern of a sparse factor: its columns in an order in which each follows its children, gathered into panels.
 * Private to the network solver.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: indices into typed arrays, bounded by construction.
import { adjacencyOf, eliminationOrder } from "./elimination-order.ts";

/** A panel takes in its child's columns while the zeros stored for it stay below this share: fewer, larger panels. */
const MOST_ZEROS = 0.2;

/** Indices grouped by key: those of key s are `result[start[s]]` up to `result[start[s + 1]]`. Keys below 0 are left out. */
export function bucket(keys: Int32Array, through: Int32Array | undefined, start: Int32Array): Int32Array {
  const key = (i: number): number => (through === undefined ? keys[i]! : through[keys[i]!]!);
  for (let i = 0; i < keys.length; i++) if (key(i) >= 0) start[key(i) + 1]!++;
  for (let s = 1; s < start.length; s++) start[s]! += start[s - 1]!;
  const next = start.slice();
  const result = new Int32Array(start[start.length - 1]!);
  for (let i = 0; i < keys.length; i++) if (key(i) >= 0) result[next[key(i)]!++] = i;
  return result;
}

/** The fill-reducing order, rearranged so that every column follows its children, and each column's parent (`liu-1990`). */
export function postordered(n: number, ends: Int32Array): { order: Int32Array; parent: Int32Array } {
  const adjacency = adjacencyOf(n, ends);
  const order = eliminationOrder(adjacency);
  const place = new Int32Array(n);
  for (let k = 0; k < n; k++) place[order[k]!] = k;
  const parent = new Int32Array(n).fill(-1);
  const ancestor = new Int32Array(n).fill(-1);
  for (let k = 0; k < n; k++) {
    const node = order[k]!;
    for (let e = adjacency.start[node]!; e < adjacency.start[node + 1]!; e++) {
      let i = place[adjacency.list[e]!]!;
      while (i < k && i !== -1) {
        const following = ancestor[i]!;
        ancestor[i] = k;
        if (following === -1) parent[i] = k;
        i = following;
      }
    }
  }
  // Depth first from each root; a column is numbered when its children are.
  const childStart = new Int32Array(n + 1);
  const children = bucket(parent, undefined, childStart);
  const sorted = new Int32Array(n);
  const rank = new Int32Array(n);
  const stack = new Int32Array(n);
  const at = childStart.slice(0, n);
  let done = 0;
  for (let root = 0; root < n; root++) {
    if (parent[root] !== -1) continue;
    let depth = 0;
    stack[0] = root;
    while (depth >= 0) {
      const k = stack[depth]!;
      if (at[k]! < childStart[k + 1]!) stack[++depth] = children[at[k]!++]!;
      else {
        rank[k] = done;
        sorted[done++] = order[k]!;
        depth--;
      }
    }
  }
  const parents = new Int32Array(n).fill(-1);
  for (let k = 0; k < n; k++) if (parent[k] !== -1) parents[rank[k]!] = rank[parent[k]!]!;
  return { order: sorted, parent: parents };
}

/** Neighbouring columns of L, factored together as one dense block. */
export interface Panels {
  /** The panel of each column. */
  readonly panelOf: Int32Array;
  /** First column of each panel, and n at the end. */
  readonly first: Int32Array;
  /** The rows below each panel: `rows[rowStart[s]]` up to `rows[rowStart[s + 1]]`, ascending. */
  readonly rowStart: Int32Array;
  readonly rows: Int32Array;
}

/** Patterns of the columns of L, gathered into panels of neighbouring columns with (nearly) the same rows. */
export function panels(n: number, low: Int32Array, high: Int32Array, parent: Int32Array): Panels {
  const edgeStart = new Int32Array(n + 1);
  const edgeList = bucket(low, undefined, edgeStart);
  const childStart = new Int32Array(n + 1);
  const children = bucket(parent, undefined, childStart);
  const seen = new Int32Array(n).fill(-1);
  let found = new Int32Array(8 * low.length + n); // patterns of all columns, one after the other
  const at = new Int32Array(n + 1);
  let to = 0;
  // A panel grows downwards: `begin[j]` is the first column of the panel that ends at column j, zeros counted.
  const begin = new Int32Array(n);
  const zeros = new Float64Array(n);
  const ended = new Uint8Array(n).fill(1);
  for (let j = 0; j < n; j++) {
    if (to + n > found.length) {
      const larger = new Int32Array(2 * found.length + n);
      larger.set(found.subarray(0, to));
      found = larger;
    }
    seen[j] = j;
    for (let x = edgeStart[j]!; x < edgeStart[j + 1]!; x++) {
      const i = high[edgeList[x]!]!;
      if (seen[i] === j) continue;
      seen[i] = j;
      found[to++] = i;
    }
    for (let x = childStart[j]!; x < childStart[j + 1]!; x++) {
      const child = children[x]!;
      for (let y = at[child]!; y < at[child + 1]!; y++) {
        const i = found[y]!;
        if (seen[i] === j) continue;
        seen[i] = j;
        found[to++] = i;
      }
    }
    at[j + 1] = to;
    begin[j] = j;
    // The column before is the last child: take its panel in where that stores few zeros.
    if (j > 0 && parent[j - 1] === j) {
      const columns = j - begin[j - 1]!;
      const below = to - at[j]!;
      const missing = below + 1 - (at[j]! - at[j - 1]!);
      const total = zeros[j - 1]! + columns * missing;
      if (missing === 0 || total < MOST_ZEROS * (columns + 1) * (columns + 1 + below)) {
        begin[j] = begin[j - 1]!;
        zeros[j] = total;
        ended[j - 1] = 0;
      }
    }
  }
  let count = 0;
  let length = 0;
  for (let j = 0; j < n; j++) {
    if (!ended[j]) continue;
    count++;
    length += at[j + 1]! - at[j]!;
  }
  const panelOf = new Int32Array(n);
  const first = new Int32Array(count + 1);
  const rowStart = new Int32Array(count + 1);
  const rows = new Int32Array(length);
  let s = 0;
  for (let j = 0; j < n; j++) {
    if (!ended[j]) continue;
    first[s] = begin[j]!;
    panelOf.fill(s, begin[j]!, j + 1);
    rows.set(found.subarray(at[j], at[j + 1]).sort(), rowStart[s]!);
    rowStart[s + 1] = rowStart[s]! + at[j + 1]! - at[j]!;
    s++;
  }
  first[count] = n;
  return { panelOf, first, rowStart, rows };
}
