/**
 * A layout whose runs are laid in parts: its heads, its cost, and the network it makes. Private to the selection.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: lists of one length, walked together.
import type { DarcyRun, HazenWilliamsRun, Junction, Network, Run } from "../network/index.ts";
import type { GaugePressure, Length } from "../units/index.ts";
import type { TightestJunction } from "./least-cost-sizes.ts";
import { lossOf, sized } from "./sized-layout.ts";
import { headsOf, leastToSpare, type Sizing } from "./sizing.ts";

/** Part of a run, laid in one size. */
export interface RunPart {
  /** Name of the run that this part is in the network returned. */
  readonly id: string;
  /** Name of the size. */
  readonly size: string;
  /** Inside diameter, m. */
  readonly insideDiameter: Length;
  /** Length, m. */
  readonly length: Length;
  /** Cost of the part laid, in the currency of the choices. */
  readonly cost: number;
}

/** A run laid in one size or more. */
export interface RunInParts {
  /** Name of the run. */
  readonly run: string;
  /** Its parts from the source outwards, the one that loses least a metre first: it keeps the pressure highest on the way. */
  readonly parts: readonly RunPart[];
  /** Cost of the run laid. */
  readonly cost: number;
  /** Greatest head it loses in any use, m. */
  readonly headLoss: Length;
}

/** The pressure left at an open outlet. */
export interface ResidualPressure {
  /** Name of the outlet. */
  readonly outlet: string;
  /** Name of the use. */
  readonly scenario: string;
  /** Gauge pressure at its junction, Pa. */
  readonly pressure: GaugePressure;
  /** How much of it is to spare, Pa. */
  readonly margin: GaugePressure;
}

/** A layout in parts, with what it costs and what pressure it leaves. */
export interface PartWayLayout {
  /** Cost of all runs laid. */
  readonly cost: number;
  /** Each run that had a choice, in the order of the choices. */
  readonly runs: readonly RunInParts[];
  /** The layout with a junction at each change of size, to be solved or drawn. Its elevation there lies on a straight grade. */
  readonly network: Network;
  /** Every open outlet in every use. */
  readonly outlets: readonly ResidualPressure[];
  /** The junction and use with the least pressure to spare, and how much, Pa. */
  readonly tightest: TightestJunction;
}

/** Part of a place's run: which of its options, and how long. */
export interface Part {
  readonly option: number;
  readonly length: number;
}

/** The parts of each place's run, least loss first; none where it keeps its own bore. */
export type Parts = readonly (readonly Part[])[];

/** Places of a run's options, the one that loses least first. */
export function byLoss({ options }: Sizing, place: number): number[] {
  const total = options[place]!.map(({ losses }) => losses.reduce((sum, loss) => sum + Math.abs(loss), 0));
  return total.map((_, k) => k).sort((a, b) => total[a]! - total[b]!);
}

/** A place's run, one of pipe: others have no sizes to choose among. */
function pipeOf({ network, runOf }: Sizing, place: number): DarcyRun | HazenWilliamsRun {
  return network.runs[runOf[place]!] as DarcyRun | HazenWilliamsRun;
}

/** Length of a place's run, m. */
export function lengthOf(sizing: Sizing, place: number): number {
  return pipeOf(sizing, place).length;
}

export function costOf(sizing: Sizing, place: number, parts: readonly Part[]): number {
  return parts.reduce((sum, { option, length }) => sum + sizing.allowed[place]![option]!.costPerMetre * length, 0);
}

/** The runs that the parts of a place's run are, by the network's own rules; ends and names are still those of the whole. */
function runsOf(sizing: Sizing, place: number, parts: readonly Part[], changeCoefficient: number): Run[] {
  const whole = pipeOf(sizing, place);
  if (parts.length === 0) return [whole];
  const bore = (part: number): number => sizing.allowed[place]![parts[part]!.option]!.insideDiameter;
  return parts.map(({ option, length }, p) => {
    // Fittings are spread along the run; a change belongs to the narrower of the two parts that it joins.
    const changes = [p - 1, p + 1].filter(
      (q) => q >= 0 && q < parts.length && (bore(p) < bore(q) || (bore(p) === bore(q) && q < p)),
    );
    const lossCoefficient = ((whole.lossCoefficient ?? 0) * length) / whole.length + changeCoefficient * changes.length;
    const run = { ...sized(whole, sizing.allowed[place]![option]), length: length as Length } as Run;
    return lossCoefficient > 0 ? ({ ...run, lossCoefficient } as Run) : run;
  });
}

/** Head that a place's run loses in each use, m. */
export function lossesOf(sizing: Sizing, place: number, parts: readonly Part[], changeCoefficient: number): number[] {
  const runs = runsOf(sizing, place, parts, changeCoefficient);
  return sizing.flows[place]!.map((flow) => runs.reduce((sum, run) => sum + lossOf(run, flow, sizing.network), 0));
}

/** The whole layout, as it is reported. */
export function layoutOf(
  sizing: Sizing,
  parts: Parts,
  losses: readonly (readonly number[])[],
  changeCoefficient: number,
): PartWayLayout {
  const { network, order, runOf, parent, scenarios, least, perHead, choiceOf } = sizing;
  const head = headsOf(sizing, losses);
  const junctions = network.junctions.slice();
  const runs: Run[] = [];
  const report: RunInParts[] = [];
  const names = new Set([...network.junctions, ...network.runs].map(({ id }) => id));
  const named = (id: string): string => {
    let name = id;
    for (let n = 2; names.has(name); n++) name = `${id} (${n})`;
    names.add(name);
    return name;
  };
  const placeOf = new Map(runOf.map((run, i) => [run, i]));
  network.runs.forEach((whole, l) => {
    const i = placeOf.get(l)!;
    const own = parts[i]!;
    if (own.length === 0) {
      runs.push(whole);
      return;
    }
    const outward = whole.from === network.junctions[order[parent[i]!]!]!.id;
    const short = whole.id.slice(0, LONGEST_STEM);
    const upper = network.junctions[order[parent[i]!]!]!;
    const lower = network.junctions[order[i]!]!;
    let from = upper.id;
    let laid = 0;
    const laidParts = runsOf(sizing, i, own, changeCoefficient).map((run, p): RunPart => {
      const { option, length } = own[p]!;
      const size = sizing.allowed[i]![option]!;
      laid += length;
      const last = p === own.length - 1;
      const id = own.length === 1 ? whole.id : named(`${short}, part ${p + 1}`);
      const to = last ? lower.id : named(`${short}, change ${p + 1}`);
      if (!last) junctions.push({ id: to, elevation: between(upper, lower, laid / lengthOf(sizing, i)) });
      const { valve, ...rest } = run;
      const ends = outward ? { from, to } : { from: to, to: from };
      // A check valve stays at the upper end.
      runs.push({ ...rest, ...ends, id, ...(p === 0 && valve !== undefined ? { valve } : {}) } as Run);
      from = to;
      return {
        id,
        size: size.name,
        insideDiameter: size.insideDiameter,
        length: length as Length,
        cost: size.costPerMetre * length,
      };
    });
    report.push({
      run: whole.id,
      parts: laidParts,
      cost: costOf(sizing, i, own),
      headLoss: Math.max(...losses[i]!) as Length,
    });
  });
  const { place, use, spare } = leastToSpare(head, least);
  // Of the water only what was looked at: the rest of what a caller hands in is not the library's to pass on.
  const { density, kinematicViscosity } = network.water;
  return {
    cost: report.reduce((sum, { cost }) => sum + cost, 0),
    runs: report.sort((a, b) => choiceOf.get(a.run)! - choiceOf.get(b.run)!),
    network: { ...network, water: { density, kinematicViscosity }, junctions, runs },
    outlets: residualPressures(sizing, head),
    tightest: {
      junction: network.junctions[order[place]!]!.id,
      scenario: scenarios[use]!.name,
      margin: (spare * perHead) as GaugePressure,
    },
  };
}

/** Names of parts stay inside the 200 characters of a name. */
const LONGEST_STEM = 170;

function between(upper: Junction, lower: Junction, share: number): Length {
  return (upper.elevation + (lower.elevation - upper.elevation) * share) as Length;
}

function residualPressures(sizing: Sizing, head: readonly (readonly number[])[]): ResidualPressure[] {
  const { network, order, scenarios, least, perHead } = sizing;
  const placeOf = new Map(order.map((junction, i) => [network.junctions[junction]!.id, i]));
  const outletOf = new Map(network.outlets.map((outlet) => [outlet.id, outlet]));
  return scenarios.flatMap(({ name, open }, s) =>
    open.map((outlet) => {
      const i = placeOf.get(outletOf.get(outlet)!.junction)!;
      const above = head[i]![s]! - network.junctions[order[i]!]!.elevation;
      return {
        outlet,
        scenario: name,
        pressure: (above * perHead) as GaugePressure,
        margin: ((head[i]![s]! - least[i]![s]!) * perHead) as GaugePressure,
      };
    }),
  );
}
