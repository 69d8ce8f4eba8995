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
 * An eliminated node becomes an element: the set of those it would have joined. Of each node two kinds of neighbours are
 * kept: elements, and nodes still joined to it directly. The degree is the usual upper bound: no set is ever formed only
 * to be counted. Both kinds share the node's stretch of the adjacency: an element takes the place of a neighbour at least.
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
  const near = list.slice(); // of node i from start[i]: its elements, then its direct neighbours
  const elements = new Int32Array(n); // how many of the one
  const direct = new Int32Array(n); // and of the other
  let members = new Int32Array(4 * list.length + n); // of element e from memberStart[e]: the nodes it joins
  const memberStart = new Int32Array(n);
  const memberCount = new Int32Array(n).fill(-1); // −1 for what is no element, or was absorbed by another
  let free = 0;
  const queue = degreeQueue(n, degree);
  for (let i = n - 1; i >= 0; i--) {
    if (gone[i]) continue;
    let to = start[i]!;
    for (let k = to; k < start[i + 1]!; k++) if (!gone[near[k]!]) near[to++] = near[k]!;
    direct[i] = to - start[i]!;
    queue.insert(i, direct[i]!);
  }
  const inPivot = new Int32Array(n).fill(-1);
  const outside = new Int32Array(n); // of each element, how many members lie outside the pivot's
  const counted = new Int32Array(n).fill(-1);
  while (done < n) {
    const pivot = queue.takeLeast();
    gone[pivot] = 1;
    order[done++] = pivot;
    inPivot[pivot] = pivot;
    // The new element: all that the pivot is joined to, directly and through its elements, which it absorbs.
    let most = direct[pivot]!;
    const from = start[pivot]!;
    for (let k = from; k < from + elements[pivot]!; k++) most += Math.max(0, memberCount[near[k]!]!);
    if (free + most > members.length) {
      const larger = new Int32Array(2 * members.length + most);
      larger.set(members.subarray(0, free));
      members = larger;
    }
    const first = free;
    for (let k = from; k < from + elements[pivot]!; k++) {
      const e = near[k]!;
      for (let x = memberStart[e]!, end = x + memberCount[e]!; x < end; x++) {
        const j = members[x]!;
        if (gone[j] || inPivot[j] === pivot) continue;
        inPivot[j] = pivot;
        members[free++] = j;
      }
      memberCount[e] = -1;
    }
    for (let k = from + elements[pivot]!, end = k + direct[pivot]!; k < end; k++) {
      const j = near[k]!;
      if (gone[j] || inPivot[j] === pivot) continue;
      inPivot[j] = pivot;
      members[free++] = j;
    }
    const size = free - first;
    memberStart[pivot] = first;
    memberCount[pivot] = size;
    for (let x = first; x < free; x++) {
      const i = members[x]!;
      for (let k = start[i]!, end = k + elements[i]!; k < end; k++) {
        const e = near[k]!;
        if (memberCount[e]! < 0) continue;
        if (counted[e] !== pivot) {
          counted[e] = pivot;
          outside[e] = living(members, memberStart[e]!, memberCount, e, gone);
        }
        outside[e]!--;
      }
    }
    for (let x = first; x < free; x++) {
      const i = members[x]!;
      const begin = start[i]!;
      let bound = size - 1;
      let to = begin;
      for (let k = begin, end = begin + elements[i]!; k < end; k++) {
        const e = near[k]!;
        // An element wholly inside the new one is absorbed by it.
        if (memberCount[e]! < 0 || outside[e] === 0) continue;
        near[to++] = e;
        bound += outside[e]!;
      }
      const kept = to - begin;
      // Direct neighbours that stay move up past the place of the new element.
      let last = to;
      let held = -1;
      for (let k = begin + elements[i]!, end = k + direct[i]!; k < end; k++) {
        const j = near[k]!;
        if (inPivot[j] === pivot || gone[j]) continue;
        bound++;
        if (held >= 0) near[++last] = held;
        held = j;
      }
      if (held >= 0) near[++last] = held;
      near[to] = pivot;
      elements[i] = kept + 1;
      direct[i] = last - to;
      queue.remove(i);
      queue.insert(i, Math.min(bound, n - done, degree[i]! + size - 1));
    }
  }
}

/** Drops the members that are gone, in place, and counts the rest. */
function living(members: Int32Array, start: number, memberCount: Int32Array, e: number, gone: Uint8Array): number {
  let to = start;
  for (let x = start, end = start + memberCount[e]!; x < end; x++) if (!gone[members[x]!]) members[to++] = members[x]!;
  memberCount[e] = to - start;
  return to - start;
}

interface DegreeQueue {
  readonly insert: (node: number, degree: number) => void;
  readonly remove: (node: number) => void;
  /** Takes out a node of least degree, the latest to come. */
  readonly takeLeast: () => number;
}

/** Nodes by degree, as doubly linked lists; writes the degree of each. */
function degreeQueue(n: number, degree: Int32Array): DegreeQueue {
  const head = new Int32Array(n + 1).fill(-1);
  const next = new Int32Array(n).fill(-1);
  const previous = new Int32Array(n).fill(-1);
  let least = 0;
  const remove = (i: number): void => {
    const before = previous[i]!;
    const after = next[i]!;
    if (before >= 0) next[before] = after;
    else head[degree[i]!] = after;
    if (after >= 0) previous[after] = before;
  };
  const insert = (i: number, d: number): void => {
    degree[i] = d;
    if (d < least) least = d;
    const first = head[d]!;
    next[i] = first;
    previous[i] = -1;
    if (first >= 0) previous[first] = i;
    head[d] = i;
  };
  const takeLeast = (): number => {
    while (head[least]! < 0) least++;
    const node = head[least]!;
    remove(node);
    return node;
  };
  return { insert, remove, takeLeast };
}
