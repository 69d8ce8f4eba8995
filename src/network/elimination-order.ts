/**
 * The order in which junctions are eliminated, least neighbours first so that the factor stays sparse, and the pattern
 * that follows from it.
 *
 * Leaves go first, which leaves a tree with no fill at all (one pass from the far ends to the source); what remains is
 * ordered by approximate minimum degree on the quotient graph (`amestoy-1996`). The sets that graph is made of are the
 * pattern of the factor. Private to the network solver.
 *
 * @module
 */

// biome-ignore-all lint/style/noNonNullAssertion: indices into typed arrays, bounded by construction.

/** The columns of the factor: nodes in the order of elimination, those of one pattern together as a panel. */
export interface Elimination {
  /** The node of each column. */
  readonly order: Int32Array;
  /** First column of each panel, and n at the end. */
  readonly first: Int32Array;
  /** The nodes left beside those of a panel: `rows[rowStart[s]]` up to `rows[rowStart[s + 1]]`, in no order. */
  readonly rowStart: Int32Array;
  readonly rows: Int32Array;
}

/** Neighbours of every node, as one list: those of node i are `list[start[i]]` up to `list[start[i + 1]]`. */
interface Adjacency {
  readonly start: Int32Array;
  readonly list: Int32Array;
}

/** The adjacency of `n` nodes from edge ends; repeated edges and loops on one node are left out. */
function adjacencyOf(n: number, ends: Int32Array): Adjacency {
  const start = new Int32Array(n + 1);
  for (let i = 0; i < ends.length; i++) start[ends[i]! + 1]!++;
  for (let i = 0; i < n; i++) start[i + 1]! += start[i]!;
  const next = start.slice(0, n);
  const all = new Int32Array(ends.length);
  for (let i = 0; i < ends.length; i += 2) {
    const a = ends[i]!;
    const b = ends[i + 1]!;
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
  return { start, list };
}

/** Eliminates `n` nodes joined by edges. */
export function eliminationOf(n: number, ends: Int32Array): Elimination {
  const { start, list } = adjacencyOf(n, ends);
  const order = new Int32Array(n);
  const degree = new Int32Array(n);
  const gone = new Uint8Array(n);
  const first = new Int32Array(n + 1);
  const rowStart = new Int32Array(n + 1);
  let rows = new Int32Array(list.length);
  let done = 0;
  let length = 0;
  for (let i = 0; i < n; i++) {
    degree[i] = start[i + 1]! - start[i]!;
    if (degree[i]! <= 1) order[done++] = i;
  }
  // The order is its own queue: removing a leaf may make its neighbour one.
  for (let k = 0; k < done; k++) {
    const leaf = order[k]!;
    gone[leaf] = 1;
    first[k] = k;
    for (let e = start[leaf]!; e < start[leaf + 1]!; e++) {
      const j = list[e]!;
      if (gone[j]) continue;
      rows[length++] = j;
      if (--degree[j]! === 1) order[done++] = j;
    }
    rowStart[k + 1] = length;
  }
  let count = done;

  // Approximate minimum degree on what the leaves left. An eliminated node becomes an element: the set of those it would
  // have joined, which are the rows of its panel. Of each node two kinds of neighbours are kept: elements, and nodes still
  // joined to it directly. The degree is the usual upper bound: no set is ever formed only to be counted. Both kinds share
  // the node's stretch of the adjacency: an element takes the place of a neighbour at least.
  const near = list; // of node i from start[i]: its elements, then its direct neighbours
  const elements = new Int32Array(n); // how many of the one
  const direct = new Int32Array(n); // and of the other
  const size = new Int32Array(n); // of each element, named by its panel; −1 once another absorbed it
  const queue = degreeQueue(n, degree);
  for (let i = 0; i < n; i++) {
    if (gone[i]) continue;
    let to = start[i]!;
    for (let k = to; k < start[i + 1]!; k++) if (!gone[near[k]!]) near[to++] = near[k]!;
    direct[i] = to - start[i]!;
    queue.insert(i, direct[i]!);
  }
  const inPanel = new Int32Array(n).fill(-1);
  const outside = new Int32Array(n); // of each element, how many members lie outside the panel's
  const counted = new Int32Array(n).fill(-1);
  while (done < n) {
    const pivot = queue.takeLeast();
    const s = count++;
    gone[pivot] = 1;
    first[s] = done;
    order[done++] = pivot;
    // The new element: all that the pivot is joined to, directly and through its elements, which it absorbs.
    const own = start[pivot]!;
    const firstDirect = own + elements[pivot]!;
    const lastDirect = firstDirect + direct[pivot]!;
    let most = direct[pivot]!;
    for (let k = own; k < firstDirect; k++) most += Math.max(0, size[near[k]!]!);
    if (length + most > rows.length) {
      const larger = new Int32Array(2 * rows.length + most);
      larger.set(rows.subarray(0, length));
      rows = larger;
    }
    const begin = length;
    const take = (j: number): void => {
      if (gone[j] || inPanel[j] === s) return;
      inPanel[j] = s;
      rows[length++] = j;
    };
    for (let k = own; k < firstDirect; k++) {
      const e = near[k]!;
      if (size[e]! < 0) continue;
      for (let x = rowStart[e]!; x < rowStart[e + 1]!; x++) take(rows[x]!);
      size[e] = -1;
    }
    for (let k = firstDirect; k < lastDirect; k++) take(near[k]!);
    const reach = length - begin;
    for (let x = begin; x < length; x++) {
      const i = rows[x]!;
      for (let k = start[i]!, end = k + elements[i]!; k < end; k++) {
        const e = near[k]!;
        if (size[e]! < 0) continue;
        if (counted[e] !== s) {
          counted[e] = s;
          outside[e] = size[e]!;
        }
        outside[e]!--;
      }
    }
    let kept = begin;
    for (let x = begin; x < length; x++) {
      const i = rows[x]!;
      const from = start[i]!;
      let bound = reach - 1;
      let to = from;
      for (let k = from, end = from + elements[i]!; k < end; k++) {
        const e = near[k]!;
        // An element wholly inside the new one is absorbed by it.
        if (size[e]! < 0 || outside[e] === 0) continue;
        near[to++] = e;
        bound += outside[e]!;
      }
      const others = to - from;
      // Direct neighbours that stay move up past the place of the new element.
      let last = to;
      let held = -1;
      for (let k = from + elements[i]!, end = k + direct[i]!; k < end; k++) {
        const j = near[k]!;
        if (inPanel[j] === s || gone[j]) continue;
        bound++;
        if (held >= 0) near[++last] = held;
        held = j;
      }
      queue.remove(i);
      if (others === 0 && held < 0) {
        // Joined to nothing else: it goes with the pivot, and fills nothing in.
        gone[i] = 1;
        order[done++] = i;
        continue;
      }
      if (held >= 0) near[++last] = held;
      near[to] = s;
      elements[i] = others + 1;
      direct[i] = last - to;
      degree[i] = Math.min(bound, degree[i]! + reach - 1);
      rows[kept++] = i;
    }
    const went = length - kept;
    for (let x = begin; x < kept; x++) queue.insert(rows[x]!, Math.min(degree[rows[x]!]! - went, n - done - 1));
    length = kept;
    size[s] = length - begin;
    rowStart[s + 1] = length;
  }
  first[count] = n;
  return {
    order,
    first: first.subarray(0, count + 1),
    rowStart: rowStart.subarray(0, count + 1),
    rows: rows.subarray(0, length),
  };
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
  const next = new Int32Array(n);
  const previous = new Int32Array(n);
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
