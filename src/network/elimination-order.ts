/**
 * The order in which junctions are eliminated: least neighbours first, so that the factor stays sparse.
 *
 * Leaves go first, which leaves a tree with no fill at all (one pass from the far ends to the source); what remains is
 * ordered by approximate minimum degree on the quotient graph (`amestoy-1996`). Private to the network solver.
 *
 * @module
 */

// biome-ignore-all lint/style/noNonNullAssertion: indices into typed arrays, bounded by construction.

/** Neighbours of every node, as one list: those of node i are `list[start[i]]` up to `list[start[i + 1]]`. */
export interface Adjacency {
  readonly start: Int32Array;
  readonly list: Int32Array;
}

/** The adjacency of `n` nodes from edge ends; repeated edges and loops on one node are left out. */
export function adjacencyOf(n: number, ends: ArrayLike<number>): Adjacency {
  const start = new Int32Array(n + 1);
  for (let i = 0; i < ends.length; i++) start[(ends[i] as number) + 1]!++;
  for (let i = 0; i < n; i++) start[i + 1]! += start[i]!;
  const next = start.slice(0, n);
  const all = new Int32Array(ends.length);
  for (let i = 0; i < ends.length; i += 2) {
    const a = ends[i] as number;
    const b = ends[i + 1] as number;
    all[next[a]!++] = b;
    all[next[b]!++] = a;
  }
  const seen = new Int32Array(n).fill(-1);
  const list = new Int32Array(ends.length);
  let length = 0;
  let from = 0;
  for (let i = 0; i < n; i++) {
    const to = start[i + 1]!;
    start[i] = length;
    seen[i] = i;
    for (let k = from; k < to; k++) {
      const j = all[k]!;
      if (seen[j] !== i) {
        seen[j] = i;
        list[length++] = j;
      }
    }
    from = to;
  }
  start[n] = length;
  return { start, list: list.slice(0, length) };
}

/** The nodes in the order of elimination. */
export function eliminationOrder({ start, list }: Adjacency): Int32Array {
  const n = start.length - 1;
  const order = new Int32Array(n);
  const degree = new Int32Array(n);
  const gone = new Uint8Array(n);
  let done = 0;
  for (let i = 0; i < n; i++) {
    degree[i] = start[i + 1]! - start[i]!;
    if (degree[i]! <= 1) order[done++] = i;
  }
  // The order is its own queue: removing a leaf may make its neighbour one.
  for (let k = 0; k < done; k++) {
    const leaf = order[k]!;
    gone[leaf] = 1;
    for (let e = start[leaf]!; e < start[leaf + 1]!; e++) {
      const j = list[e]!;
      if (!gone[j] && --degree[j]! === 1) order[done++] = j;
    }
  }
  if (done < n) minimumDegree(start, list, degree, gone, order, done);
  return order;
}

/**
 * Approximate minimum degree on what the leaves left.
 *
 * An eliminated node becomes an element: the set of those it would have joined. `variables[i]` and `elements[i]` are the
 * neighbours of node i that are still joined directly, and through an element. The degree is the usual upper bound: no
 * set is ever formed only to be counted.
 */
function minimumDegree(
  start: Int32Array,
  list: Int32Array,
  degree: Int32Array,
  gone: Uint8Array,
  order: Int32Array,
  done: number,
): void {
  const n = start.length - 1;
  const variables: number[][] = [];
  const elements: number[][] = [];
  const members: (number[] | undefined)[] = [];
  // Nodes of equal degree, as doubly linked lists.
  const head = new Int32Array(n + 1).fill(-1);
  const next = new Int32Array(n).fill(-1);
  const previous = new Int32Array(n).fill(-1);
  const insert = (i: number, d: number): void => {
    degree[i] = d;
    const first = head[d]!;
    next[i] = first;
    previous[i] = -1;
    if (first >= 0) previous[first] = i;
    head[d] = i;
  };
  const remove = (i: number): void => {
    const before = previous[i]!;
    const after = next[i]!;
    if (before >= 0) next[before] = after;
    else head[degree[i]!] = after;
    if (after >= 0) previous[after] = before;
  };
  for (let i = n - 1; i >= 0; i--) {
    variables[i] = [];
    elements[i] = [];
    if (gone[i]) continue;
    for (let e = start[i]!; e < start[i + 1]!; e++) if (!gone[list[e]!]) variables[i]!.push(list[e]!);
    insert(i, variables[i]!.length);
  }
  const inPivot = new Int32Array(n).fill(-1);
  const outside = new Int32Array(n); // of each element, how many members lie outside the pivot's
  const counted = new Int32Array(n).fill(-1);
  let least = 0;
  while (done < n) {
    while (head[least]! < 0) least++;
    const pivot = head[least]!;
    remove(pivot);
    gone[pivot] = 1;
    inPivot[pivot] = pivot;
    const joined: number[] = [];
    const join = (j: number): void => {
      if (!gone[j] && inPivot[j] !== pivot) {
        inPivot[j] = pivot;
        joined.push(j);
      }
    };
    for (const j of variables[pivot]!) join(j);
    for (const e of elements[pivot]!) {
      for (const j of members[e] ?? []) join(j);
      members[e] = undefined;
    }
    members[pivot] = joined;
    order[done++] = pivot;
    for (const i of joined) {
      for (const e of elements[i]!) {
        const set = members[e];
        if (set === undefined) continue;
        if (counted[e] !== pivot) {
          counted[e] = pivot;
          let alive = 0;
          for (let k = 0; k < set.length; k++) if (!gone[set[k]!]) set[alive++] = set[k]!;
          set.length = alive;
          outside[e] = alive;
        }
        outside[e]!--;
      }
    }
    for (const i of joined) {
      let bound = joined.length - 1;
      const keptElements: number[] = [];
      for (const e of elements[i]!) {
        if (members[e] === undefined) continue;
        if (outside[e] === 0) continue; // wholly inside the new element: absorbed
        keptElements.push(e);
        bound += outside[e]!;
      }
      keptElements.push(pivot);
      elements[i] = keptElements;
      const keptVariables = variables[i]!.filter((j) => inPivot[j] !== pivot && !gone[j]);
      variables[i] = keptVariables;
      bound += keptVariables.length;
      remove(i);
      insert(i, Math.min(bound, n - done, degree[i]! + joined.length - 1));
      if (degree[i]! < least) least = degree[i]!;
    }
  }
}
