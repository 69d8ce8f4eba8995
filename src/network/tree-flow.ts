/**
 * In a tree the flow of a run is what is taken beyond it, and heads follow by going down: no iteration, no rounding but
 * that of the sums. Tidies a balance whose open runs form trees, each with one source. Private to the network solver.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: indices into typed arrays, bounded by construction.
import type { Balance, PreparedNetwork } from "./balance.ts";
import type { LinkLoss } from "./link-laws.ts";

/** Rewrites flows and heads of the runs by summation, unless two ways lead to a junction. */
export function tidyTrees(prepared: PreparedNetwork, balance: Balance): void {
  const { network, numbered, laws, ends, outletLink, sourceLink } = prepared;
  const { flow, head, demand, shut } = balance;
  const n = network.junctions.length;
  const runs = network.runs.length;
  const start = new Int32Array(n + 1);
  for (let l = 0; l < runs; l++) {
    if (shut[l]) continue;
    start[ends[2 * l]! + 1]!++;
    start[ends[2 * l + 1]! + 1]!++;
  }
  for (let i = 0; i < n; i++) start[i + 1]! += start[i]!;
  const next = start.slice(0, n);
  const at = new Int32Array(start[n]!);
  for (let l = 0; l < runs; l++) {
    if (shut[l]) continue;
    at[next[ends[2 * l]!]!++] = l;
    at[next[ends[2 * l + 1]!]!++] = l;
  }
  const parent = new Int32Array(n).fill(-2); // −2 not reached, −1 a root
  const order = new Int32Array(n);
  let length = 0;
  const root = (i: number): boolean => {
    if (parent[i] !== -2) return false;
    parent[i] = -1;
    order[length++] = i;
    return true;
  };
  for (let i = 0; i < network.sources.length; i++) {
    const link = sourceLink[i]!;
    if (link >= 0 && shut[link]) continue;
    if (!root(numbered.sourceJunction[i]!)) return;
  }
  for (let l = 0; l < runs; l++) if (balance.reducing[l] && !root(ends[2 * l + 1]!)) return;
  for (let q = 0; q < length; q++) {
    const i = order[q]!;
    for (let k = start[i]!; k < start[i + 1]!; k++) {
      const l = at[k]!;
      if (l === parent[i]) continue;
      const j = ends[2 * l]! === i ? ends[2 * l + 1]! : ends[2 * l]!;
      if (parent[j] !== -2) return; // a second way
      parent[j] = l;
      order[length++] = j;
    }
  }
  const taken = demand.slice();
  network.outlets.forEach((_, i) => {
    const link = outletLink[i]!;
    if (link >= 0 && !shut[link]) taken[ends[2 * link]!]! += flow[link]!;
  });
  for (let q = length - 1; q >= 0; q--) {
    const i = order[q]!;
    const l = parent[i]!;
    if (l < 0) continue;
    const forward = ends[2 * l + 1] === i;
    flow[l] = forward ? taken[i]! : 0 - taken[i]!;
    taken[forward ? ends[2 * l]! : ends[2 * l + 1]!]! += taken[i]!;
  }
  const value: LinkLoss = { loss: 0, slope: 0 };
  network.sources.forEach((_, i) => {
    const link = sourceLink[i]!;
    if (link < 0 || shut[link]) return;
    const junction = numbered.sourceJunction[i]!;
    flow[link] = taken[junction]!;
    laws[link]!.at(flow[link]!, value);
    head[junction] = 0 - value.loss;
  });
  for (let q = 0; q < length; q++) {
    const i = order[q]!;
    const l = parent[i]!;
    if (l < 0) continue;
    laws[l]!.at(flow[l]!, value);
    head[i] = ends[2 * l + 1] === i ? head[ends[2 * l]!]! - value.loss : head[ends[2 * l + 1]!]! + value.loss;
  }
}
