/**
 * The cheapest sizes of a tree of runs, proven: every choice that could still be best is kept, from the far ends in.
 *
 * A state of a subtree is what it costs and the head it needs at its upper end in each scenario. A state that costs no
 * less and needs no less than another can never be part of a cheaper whole; one that needs more head than the widest
 * pipes could bring, or that with the cheapest rest would cost more than a layout already found, is dropped too.
 * Private to the selection of sizes.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: lists of one length, walked together.

/** One size of one run: what it costs, and the head it loses in each scenario. */
export interface SizeOption {
  readonly cost: number;
  readonly losses: readonly number[];
}

/** A tree of runs. Node 0 is the source; node i > 0 hangs on `parent[i]` < i by a run with `options[i]`. */
export interface SizeTree {
  readonly parent: readonly number[];
  readonly options: readonly (readonly SizeOption[])[];
  /** Least head of each node in each scenario, m; −Infinity where nothing is asked. */
  readonly least: readonly (readonly number[])[];
  /** Head at the source in each scenario, m. */
  readonly available: readonly number[];
}

/** The option chosen for each node's run. */
export interface ChosenSizes {
  readonly cost: number;
  readonly chosen: readonly number[];
  /** False where there were too many states to keep all. */
  readonly proven: boolean;
  /** States kept, all fronts together. */
  readonly states: number;
}

/** States of one front; with one scenario fronts stay small, with many they may not. */
const MOST_STATES = 4000;
/** Heads and costs this close, as a share, are equal but for rounding. */
const SAME = 1e-12;

interface State {
  readonly cost: number;
  readonly need: readonly number[];
  /** The node whose run this state added, and the option; both 0, the source, where it added none. */
  readonly node: number;
  readonly option: number;
  readonly below: State | undefined;
  readonly beside: State | undefined;
}

/** The cheapest options that bring every node its least head; undefined where none do. */
export function cheapestSizes(tree: SizeTree): ChosenSizes | undefined {
  const { parent, options, least, available } = tree;
  const n = parent.length;
  const scenarios = available.map((_, s) => s);
  const slack = available.map((head) => SAME * Math.max(1, Math.abs(head)));

  // The most head each node can have: all runs above it at their least loss.
  const most: number[][] = [available.map((head, s) => head + slack[s]!)];
  for (let i = 1; i < n; i++) {
    most[i] = scenarios.map((s) => most[parent[i]!]![s]! - Math.min(...options[i]!.map(({ losses }) => losses[s]!)));
  }
  if (least.some((heads, i) => heads.some((head, s) => head > most[i]![s]!))) return undefined;

  const bound = greedyCost(tree, slack);
  const within = options.map(() => 0); // cheapest cost of each node's run and all beyond it
  for (let i = n - 1; i > 0; i--) {
    within[i]! += Math.min(...options[i]!.map(({ cost }) => cost));
    within[parent[i]!]! += within[i]!;
  }
  const total = within[0]!;

  let proven = true;
  let states = 0;
  const front = (candidates: State[], limit: readonly number[], rest: number): State[] => {
    const possible = candidates.filter(
      ({ cost, need }) => cost + rest <= bound * (1 + SAME) && need.every((head, s) => head <= limit[s]!),
    );
    const kept = undominated(possible);
    const thinned = kept.length > MOST_STATES ? thin(kept) : kept;
    if (thinned !== kept) proven = false;
    states += thinned.length;
    return thinned;
  };

  const fronts: State[][] = least.map((need) => [
    { cost: 0, need, node: 0, option: 0, below: undefined, beside: undefined },
  ]);
  const done = options.map(() => 0); // cheapest cost of what a node's front already holds
  for (let i = n - 1; i > 0; i--) {
    const up = parent[i]!;
    const lifted: State[] = fronts[i]!.flatMap((state) =>
      options[i]!.map(({ cost, losses }, option) => ({
        cost: state.cost + cost,
        need: state.need.map((head, s) => head + losses[s]!),
        node: i,
        option,
        below: state,
        beside: undefined,
      })),
    );
    const limit = most[up]!;
    const branch = front(lifted, limit, total - within[i]!);
    const joined = fronts[up]!.flatMap((a) =>
      branch.map(
        (b): State => ({
          cost: a.cost + b.cost,
          need: a.need.map((head, s) => Math.max(head, b.need[s]!)),
          node: 0,
          option: 0,
          below: a,
          beside: b,
        }),
      ),
    );
    done[up]! += within[i]!;
    fronts[up] = front(joined, limit, total - done[up]!);
  }
  const [best] = fronts[0]!;
  // Where one option loses least in one scenario and another in the next, what each could bring no choice may bring.
  if (best === undefined) return undefined;
  const chosen: number[] = [];
  const stack: State[] = [best];
  for (let state = stack.pop(); state !== undefined; state = stack.pop()) {
    chosen[state.node] = state.option;
    if (state.below !== undefined) stack.push(state.below);
    if (state.beside !== undefined) stack.push(state.beside);
  }
  const cost = chosen.reduce((sum, option, i) => (i === 0 ? sum : sum + options[i]![option]!.cost), 0);
  return { cost, chosen, proven, states };
}

/** The states that no other betters, the cheapest first: sorted by cost, each is kept unless one kept before it needs nowhere more. */
function undominated(states: State[]): State[] {
  states.sort((a, b) => a.cost - b.cost || compare(a.need, b.need));
  const kept: State[] = [];
  if (states[0]?.need.length === 1) {
    for (const state of states) if (kept.length === 0 || state.need[0]! < kept.at(-1)!.need[0]!) kept.push(state);
    return kept;
  }
  for (const state of states) {
    if (!kept.some(({ need }) => need.every((head, s) => head <= state.need[s]!))) kept.push(state);
  }
  return kept;
}

function compare(a: readonly number[], b: readonly number[]): number {
  for (let s = 0; s < a.length; s++) if (a[s] !== b[s]) return a[s]! < b[s]! ? -1 : 1;
  return 0;
}

/** States picked evenly along the front, the cheapest and the dearest among them. */
function thin(states: readonly State[]): State[] {
  const last = states.length - 1;
  return Array.from({ length: MOST_STATES }, (_, k) => states[Math.round((k * last) / (MOST_STATES - 1))]!);
}

/** Cost of a layout that works: from the least losses, the change that saves most and still works, again and again. */
function greedyCost({ parent, options, least, available }: SizeTree, slack: readonly number[]): number {
  const n = parent.length;
  const chosen = options.map(leastLossy);
  const works = (): boolean => {
    const head: (readonly number[])[] = [available];
    for (let i = 0; i < n; i++) {
      if (i > 0) head[i] = head[parent[i]!]!.map((h, s) => h - options[i]![chosen[i]!]!.losses[s]!);
      if (head[i]!.some((h, s) => h + slack[s]! < least[i]![s]!)) return false;
    }
    return true;
  };
  // Least losses in one scenario may not be least in all; then there is no start, and no bound.
  if (!works()) return Infinity;
  const costOf = (i: number, k: number): number => options[i]![k]!.cost;
  for (;;) {
    const moves: { i: number; k: number; saved: number }[] = [];
    for (let i = 1; i < n; i++) {
      options[i]!.forEach((_, k) => {
        const saved = costOf(i, chosen[i]!) - costOf(i, k);
        if (saved > 0) moves.push({ i, k, saved });
      });
    }
    moves.sort((a, b) => b.saved - a.saved);
    const taken = moves.find(({ i, k }) => {
      const before = chosen[i]!;
      chosen[i] = k;
      if (works()) return true;
      chosen[i] = before;
      return false;
    });
    if (taken === undefined) return chosen.reduce((cost, k, i) => (i === 0 ? cost : cost + costOf(i, k)), 0);
  }
}

/** The option that loses least, all scenarios together; 0 of none. */
export function leastLossy(options: readonly SizeOption[]): number {
  return options.reduce((best, option, k) => (sum(option) < sum(options[best]!) ? k : best), 0);
}

function sum({ losses }: SizeOption): number {
  return losses.reduce((total, loss) => total + loss, 0);
}
