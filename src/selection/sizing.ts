/**
 * A layout, its sizes and its uses, read and counted: what each run may be, costs and loses. Private to the selection.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: lists of one length, walked together.
import type { DarcyRun, Network } from "../network/index.ts";
import { readNetwork } from "../network/read-network.ts";
import { requireList, requireObject, requirePositive, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import { InputError, type Length, type VolumeFlow } from "../units/index.ts";
import type {
  LeastCostSizesInput,
  NoSizeForRun,
  NoSizesMeet,
  RuledOutSize,
  SizeChoice,
  SizingScenario,
} from "./least-cost-sizes.ts";
import { leastLossy, type SizeOption, type SizeTree } from "./size-fronts.ts";
import { demands, lossOf, outwards, readChoices, ruledOut, sized } from "./sized-layout.ts";

/** A layout to be sized. Places are counted from the source outwards; place i hangs on `parent[i]` by run `runOf[i]`. */
export interface Sizing extends SizeTree {
  readonly network: Network;
  readonly scenarios: readonly SizingScenario[];
  /** Junction of each place, as an index into those of the network. */
  readonly order: readonly number[];
  /** Run above each place, as an index into those of the network; −1 at the source. */
  readonly runOf: readonly number[];
  /** Flow of the run above each place in each use, m³/s; of the source at place 0. */
  readonly flows: readonly (readonly number[])[];
  /** The sizes left to each place's run, in the order of its options; one `undefined` where it keeps its own bore. */
  readonly allowed: readonly (readonly (SizeChoice | undefined)[])[];
  /** What each run may not have. */
  readonly ruledOut: readonly { readonly run: string; readonly sizes: readonly RuledOutSize[] }[];
  /** Place of each run in the caller's list of choices. */
  readonly choiceOf: ReadonlyMap<string, number>;
  /** Pressure of one metre of head, Pa. */
  readonly perHead: number;
}

/** Reads and counts; or says for which run no size may be used. */
export function readSizing(input: LeastCostSizesInput): Sizing | NoSizeForRun {
  requireObject("input", input);
  const { network, leastPressure = 0, greatestVelocity = Infinity } = input;
  const numbered = readNetwork(network);
  requireList("choices", input.choices, 1, 1000);
  requireList("scenarios", input.scenarios, 1, 100);
  const choices = Array.from(input.choices); // a hole in a list must not be passed over
  const scenarios = Array.from(input.scenarios);
  requireWithin("leastPressure", leastPressure, 0, 1e8, "Pa gauge");
  if (greatestVelocity !== Infinity) requirePositive("greatestVelocity", greatestVelocity, 100, "m/s");
  const sizesOf = readChoices(network, numbered.runIndex, choices);
  const { order, parent, runOf } = outwards(network, numbered);
  const demand = scenarios.map((scenario, s) => demands(network, numbered, scenario, `scenarios[${s}]`));
  const perHead = network.water.density * STANDARD_GRAVITY;

  // Flows by summing what is drawn beyond each run, scenario by scenario.
  const through = demand.map(({ taken }) => {
    const sums = order.map((junction) => taken[junction]!);
    for (let i = order.length - 1; i > 0; i--) sums[parent[i]!] = sums[parent[i]!]! + sums[i]!;
    return sums;
  });
  const flows = order.map((_, i) => through.map((sums) => sums[i]!));
  const headAt = sourceHead(network, scenarios);
  const available = flows[0]!.map(headAt);
  const staticHead = Math.max(...available, headAt(0));
  const elevation = (i: number): number => network.junctions[order[i]!]!.elevation;
  const least = order.map((junction, i) =>
    demand.map(({ asked }) => elevation(i) + Math.max(leastPressure, asked[junction]!) / perHead),
  );

  const options: SizeOption[][] = [[]];
  const allowed: (SizeChoice | undefined)[][] = [[]];
  const refused: { run: string; sizes: RuledOutSize[] }[] = [];
  for (let i = 1; i < order.length; i++) {
    const run = network.runs[runOf[i]!]!;
    if (run.valve !== undefined && flows[i]!.some((flow) => flow < 0)) {
      throw new InputError(
        "scenarios",
        scenarios,
        `uses that drive no water back through the check valve of "${run.id}"`,
      );
    }
    const sizes = sizesOf.get(runOf[i]!);
    const fits = sizes?.map((size) =>
      ruledOut(size, flows[i]!, greatestVelocity, staticHead, elevation(i), elevation(parent[i]!), perHead),
    );
    const out =
      fits?.flatMap((because, k) => (because === undefined ? [] : [{ size: sizes![k]!.name, because }])) ?? [];
    if (sizes !== undefined && out.length === sizes.length) {
      return { state: "no size for a run", run: run.id, ruledOut: out };
    }
    if (out.length > 0) refused.push({ run: run.id, sizes: out });
    allowed[i] = sizes?.filter((_, k) => fits![k] === undefined) ?? [undefined];
    options[i] = allowed[i]!.map((size) => ({
      cost: size === undefined ? 0 : size.costPerMetre * (run as DarcyRun).length,
      losses: flows[i]!.map((flow) => lossOf(sized(run, size), flow, network)),
    }));
  }
  return {
    network,
    scenarios,
    order,
    parent,
    runOf,
    flows,
    available,
    least,
    options,
    allowed,
    ruledOut: refused,
    choiceOf: new Map(choices.map(({ run }, c) => [run, c])),
    perHead,
  };
}

/** Head of the source against the flow it gives. */
function sourceHead(network: Network, scenarios: readonly SizingScenario[]): (flow: number) => number {
  const source = network.sources[0]!;
  return (flow) => {
    if (source.kind === "fixed head") return source.head;
    if (!(flow >= 0 && flow <= source.largestFlow)) {
      throw new InputError(
        "scenarios",
        scenarios,
        `uses that draw 0 to ${source.largestFlow} m³/s, what the source can give`,
      );
    }
    const head: unknown = source.headAtFlow(flow as VolumeFlow);
    requireWithin(`sources[0].headAtFlow(${flow})`, head, -1e6, 1e6, "m");
    return head as number;
  };
}

/** The place and use with the least head to spare, and how much. */
export function leastToSpare(
  head: readonly (readonly number[])[],
  least: readonly (readonly number[])[],
): { readonly place: number; readonly use: number; readonly spare: number } {
  let tightest = { place: 0, use: 0, spare: Infinity };
  head.forEach((heads, place) => {
    heads.forEach((h, use) => {
      const spare = h - least[place]![use]!;
      if (spare < tightest.spare) tightest = { place, use, spare };
    });
  });
  return tightest;
}

/** Head of each place in each use, m, where the run above each place loses so much. */
export function headsOf(
  { parent, available }: Pick<SizeTree, "parent" | "available">,
  losses: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  const head: (readonly number[])[] = [available];
  for (let i = 1; i < parent.length; i++) head[i] = head[parent[i]!]!.map((h, s) => h - losses[i]![s]!);
  return head;
}

/** The junction that lacks most head when every run loses its least in each use. */
export function shortAtLeast(sizing: Sizing): NoSizesMeet {
  const { options, available } = sizing;
  return shortWith(
    sizing,
    options.map((list) => available.map((_, s) => Math.min(...list.map(({ losses }) => losses[s]!)))),
  );
}

/** The junction that lacks most head when every run has the size that loses least, all uses together. */
export function shortAtWidest(sizing: Sizing): NoSizesMeet {
  return shortWith(
    sizing,
    sizing.options.map((list) => list[leastLossy(list)]?.losses ?? []),
  );
}

function shortWith(sizing: Sizing, losses: readonly (readonly number[])[]): NoSizesMeet {
  const { network, order, scenarios } = sizing;
  const { place, use, spare } = leastToSpare(headsOf(sizing, losses), sizing.least);
  return {
    state: "no sizes meet",
    junction: network.junctions[order[place]!]!.id,
    scenario: scenarios[use]!.name,
    short: -spare as Length,
  };
}
