/**
 * Rewrites a balance so that it adds up: along a tree of the easiest runs, flows by summing what is taken beyond each,
 * heads by going down from the sources. In a branched layout that is the whole answer, as one would reckon it by hand.
 *
 * In a loop the run that resists most stays out of the tree and keeps its flow: there rounding of heads moves the flow
 * least, and there the energy residual of the loop shows. Private to the network solver.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: indices into typed arrays, bounded by construction.
import type { Balance, PreparedNetwork } from "./balance.ts";
import type { LinkLoss } from "./link-laws.ts";

/** Rewrites flows and heads in place. */
export function spanningFlow(
  prepared: Pick<PreparedNetwork, "network" | "numbered" | "laws" | "ends" | "sourceLink">,
  balance: Pick<Balance, "flow" | "head" | "demand" | "shut" | "reducing" | "cutOff">,
): void {
  const { network, numbered, laws, ends, sourceLink } = prepared;
  const { flow, head, demand, shut, reducing, cutOff } = balance;
  const n = network.junctions.length;
  const runs = network.runs.length;

  // Every held junction is one root, node n.
  const node = Int32Array.from({ length: n }, (_, i) => (cutOff[i] ? n : i));
  network.sources.forEach((source, i) => {
    if (source.kind === "fixed head") node[numbered.sourceJunction[i]!] = n;
  });
  for (let l = 0; l < runs; l++) if (reducing[l]) node[ends[2 * l + 1]!] = n;
  const at = (end: number): number => (end < n ? node[end]! : n);

  const value: LinkLoss = { loss: 0, slope: 0 };
  const candidates: number[] = [];
  for (let l = 0; l < runs; l++) if (!shut[l]) candidates.push(l);
  for (const l of sourceLink) if (l >= 0 && !shut[l]) candidates.push(l);
  const inTree = easiestTree(
    candidates,
    n + 1,
    (l) => [at(ends[2 * l]!), at(ends[2 * l + 1]!)],
    (l) => {
      laws[l]!.at(flow[l]!, value);
      return value.slope;
    },
    laws.length,
  );

  // What is taken at each junction besides the tree, then down the tree and up again.
  const taken = new Float64Array(n + 1);
  taken.set(demand);
  for (let l = 0; l < laws.length; l++) {
    if (shut[l] || inTree[l]) continue;
    if (ends[2 * l]! < n) taken[ends[2 * l]!]! += flow[l]!;
    if (ends[2 * l + 1]! < n) taken[ends[2 * l + 1]!]! -= flow[l]!;
  }
  const { order, parent } = breadthFirst(
    candidates.filter((l) => inTree[l]),
    n,
    ends,
    at,
  );
  for (let q = order.length - 1; q >= 0; q--) {
    const i = order[q]!;
    const l = parent[i]!;
    const forward = ends[2 * l + 1] === i;
    flow[l] = forward ? taken[i]! : 0 - taken[i]!;
    const up = forward ? ends[2 * l]! : ends[2 * l + 1]!;
    if (up < n) taken[up]! += taken[i]!;
  }
  for (const i of order) {
    const l = parent[i]!;
    laws[l]!.at(flow[l]!, value);
    head[i] = ends[2 * l + 1] === i ? head[ends[2 * l]!]! - value.loss : head[ends[2 * l + 1]!]! + value.loss;
  }
}

/** Marks the links of a spanning tree, those of least slope first, as near as powers of two tell them apart. */
function easiestTree(
  links: readonly number[],
  nodes: number,
  endsOf: (link: number) => readonly [number, number],
  slopeOf: (link: number) => number,
  count: number,
): Uint8Array {
  const group = Int32Array.from({ length: nodes }, (_, i) => i);
  const find = (i: number): number => {
    let root = i;
    while (group[root] !== root) {
      group[root] = group[group[root]!]!;
      root = group[root]!;
    }
    return root;
  };
  const buckets = new Map<number, number[]>();
  const view = new DataView(new ArrayBuffer(8));
  for (const l of links) {
    // The exponent of the double, as it is stored: a logarithm may round differently in another engine.
    view.setFloat64(0, slopeOf(l));
    const key = view.getUint16(0) >> 4;
    const bucket = buckets.get(key);
    if (bucket === undefined) buckets.set(key, [l]);
    else bucket.push(l);
  }
  const inTree = new Uint8Array(count);
  for (const key of [...buckets.keys()].sort((a, b) => a - b)) {
    for (const l of buckets.get(key)!) {
      const [a, b] = endsOf(l);
      const rootA = find(a);
      const rootB = find(b);
      if (rootA === rootB) continue;
      group[rootA] = rootB;
      inTree[l] = 1;
    }
  }
  return inTree;
}

/** Junctions of a tree from the root node n outwards, and the link by which each is reached. */
function breadthFirst(
  tree: readonly number[],
  n: number,
  ends: Int32Array,
  at: (end: number) => number,
): { readonly order: readonly number[]; readonly parent: Int32Array } {
  const start = new Int32Array(n + 2);
  for (const l of tree) {
    start[at(ends[2 * l]!) + 1]!++;
    start[at(ends[2 * l + 1]!) + 1]!++;
  }
  for (let i = 0; i <= n; i++) start[i + 1]! += start[i]!;
  const next = start.slice();
  const list = new Int32Array(2 * tree.length);
  for (const l of tree) {
    list[next[at(ends[2 * l]!)]!++] = l;
    list[next[at(ends[2 * l + 1]!)]!++] = l;
  }
  const parent = new Int32Array(n + 1).fill(-1);
  const order: number[] = [];
  let here = n;
  for (let q = -1; q < order.length; q++) {
    if (q >= 0) here = order[q]!;
    for (let k = start[here]!; k < start[here + 1]!; k++) {
      const l = list[k]!;
      if (l === parent[here]) continue;
      const a = at(ends[2 * l]!);
      const far = a === here ? at(ends[2 * l + 1]!) : a;
      parent[far] = l;
      order.push(far);
    }
  }
  return { order, parent };
}
