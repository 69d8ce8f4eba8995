/**
 * The cheapest pipe sizes for a branched layout that serve every use.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: lists of one length, walked together.
import type { Network } from "../network/index.ts";
import type { GaugePressure, Length, Velocity } from "../units/index.ts";
import { cheapestSizes } from "./size-fronts.ts";
import { sized } from "./sized-layout.ts";
import { headsOf, leastToSpare, readSizing, shortAtWidest } from "./sizing.ts";

/** One size that a run may have. */
export interface SizeChoice {
  /** What it is called: "1-1/4 in SDR 9". 1 to 200 characters. */
  readonly name: string;
  /** Inside diameter. 0.001 to 20 m. */
  readonly insideDiameter: Length;
  /** Cost of one metre laid, in any currency. 0 to 1e9. */
  readonly costPerMetre: number;
  /** Wall roughness where it differs from the run's (law "darcy-weisbach"). 0 to half the diameter, m. */
  readonly roughness?: Length;
  /** Hazen–Williams coefficient where it differs from the run's. 10 to 200. */
  readonly coefficient?: number;
  /** Gauge pressure it is rated for; any if left out. Above 0 to 1e8 Pa. */
  readonly pressureRating?: GaugePressure;
}

/** The sizes that one run may have. */
export interface RunChoices {
  /** Name of the run. */
  readonly run: string;
  /** 1 to 50 sizes. */
  readonly sizes: readonly SizeChoice[];
}

/** One use of the layout: who draws at once. */
export interface SizingScenario {
  /** What it is called. 1 to 200 characters. */
  readonly name: string;
  /** Names of the outlets that are open. */
  readonly open: readonly string[];
}

/** A branched layout, the sizes to choose among, and what must hold. */
export interface LeastCostSizesInput {
  /** The layout: a tree with one source and fixed demands. Runs without choices keep their own bore at no cost. */
  readonly network: Network;
  /** Sizes for 1 to 1000 of its runs. */
  readonly choices: readonly RunChoices[];
  /** 1 to 100 uses; every one must be served. */
  readonly scenarios: readonly SizingScenario[];
  /** Gauge pressure that every junction keeps in every use; 0 if left out. 0 to 1e8 Pa. Outlets may ask for more. */
  readonly leastPressure?: GaugePressure;
  /** Greatest speed in a run that is to be sized; any if left out. Above 0 to 100 m/s. */
  readonly greatestVelocity?: Velocity;
}

/** The size of one run. */
export interface SizedRun {
  /** Name of the run. */
  readonly run: string;
  /** Name of the size. */
  readonly size: string;
  /** Inside diameter, m. */
  readonly insideDiameter: Length;
  /** Cost of the run laid, in the currency of the choices. */
  readonly cost: number;
  /** Greatest head it loses in any use, m. */
  readonly headLoss: Length;
}

/** The junction with the least pressure to spare. */
export interface TightestJunction {
  /** Name of the junction. */
  readonly junction: string;
  /** Name of the use. */
  readonly scenario: string;
  /** Pressure to spare there, Pa. */
  readonly margin: GaugePressure;
}

/** A size that a run cannot have. */
export interface RuledOutSize {
  /** Name of the size. */
  readonly size: string;
  /** What rules it out. */
  readonly because: "velocity" | "pressure rating";
}

/** The cheapest sizes. */
export interface SizesFound {
  /** Sizes that serve every use were found. */
  readonly state: "found";
  /** Cost of all runs laid. */
  readonly cost: number;
  /** The size of each run that had a choice. */
  readonly runs: readonly SizedRun[];
  /** The layout with these sizes, to be solved or drawn. */
  readonly network: Network;
  /** The junction and use with the least pressure to spare, and how much, Pa. */
  readonly tightest: TightestJunction;
  /** True where no other choice of sizes costs less; false where too many had to be compared, and one may. */
  readonly proven: boolean;
  /** Partial layouts compared. */
  readonly compared: number;
}

/** A run for which no size may be used. */
export interface NoSizeForRun {
  /** No size of a run is allowed. */
  readonly state: "no size for a run";
  /** Name of the run. */
  readonly run: string;
  /** Why each of its sizes is ruled out. */
  readonly ruledOut: readonly RuledOutSize[];
}

/** Not even the widest sizes bring enough head. */
export interface NoSizesMeet {
  /** Even with the least losses some junction lacks pressure. */
  readonly state: "no sizes meet";
  /** The junction that lacks most. */
  readonly junction: string;
  /** The use in which it does. */
  readonly scenario: string;
  /** Head that is missing there with the widest sizes, m. */
  readonly short: Length;
}

/** The outcome of {@link leastCostSizes}. */
export type LeastCostSizes = SizesFound | NoSizeForRun | NoSizesMeet;

/**
 * The cheapest standard sizes for a branched layout, such that every use has its pressures, speeds and pressure classes.
 *
 * @remarks
 * With fixed demands in a tree the flow of each run is known, so its loss at each size is. All combinations that could
 * still be cheapest are followed from the far ends to the source: the answer is the proven optimum over the sizes given,
 * or says `proven: false`. A size is ruled out for a run where its speed passes `greatestVelocity` in some use, or where
 * the pressure at the run's lower end with no flow (the source's full head, a pump's shutoff head) passes its rating.
 * Surge is not in this: keep the margin that `surge` asks for out of the ratings given.
 *
 * @param input - the layout, the sizes of each run, the uses and the limits
 * @returns the sizes with their cost and proof; or which run or junction stands in the way
 * @throws {@link units.InputError} naming the first part that cannot be used: loops, several sources,
 *   pressure-dependent outlets and reducing valves are refused
 *
 * @example
 * ```ts
 * import { leastCostSizes } from "risingmain/selection";
 * import { celsius, feet, gpm, inches, psi } from "risingmain/units";
 * import { waterAt } from "risingmain/water";
 *
 * const pipe = { law: "darcy-weisbach", insideDiameter: inches(1), roughness: feet(0.000005) } as const;
 * const sizes = [
 *   { name: "3/4 in", insideDiameter: inches(0.824), costPerMetre: 1.2 },
 *   { name: "1 in", insideDiameter: inches(1.049), costPerMetre: 1.9 },
 *   { name: "1-1/4 in", insideDiameter: inches(1.38), costPerMetre: 3.1 },
 * ];
 * const best = leastCostSizes({
 *   network: {
 *     water: waterAt({ temperature: celsius(10) }),
 *     junctions: [{ id: "tank", elevation: feet(0) }, { id: "barn", elevation: feet(10) }, { id: "field", elevation: feet(20) }],
 *     runs: [
 *       { id: "main", from: "tank", to: "barn", length: feet(400), ...pipe },
 *       { id: "field line", from: "barn", to: "field", length: feet(600), ...pipe },
 *     ],
 *     outlets: [
 *       { id: "barn", junction: "barn", kind: "fixed demand", flow: gpm(8), leastPressure: psi(20) },
 *       { id: "trough", junction: "field", kind: "fixed demand", flow: gpm(5), leastPressure: psi(10) },
 *     ],
 *     sources: [{ id: "tank", junction: "tank", kind: "fixed head", head: feet(92) }],
 *   },
 *   choices: [{ run: "main", sizes }, { run: "field line", sizes }],
 *   scenarios: [{ name: "both", open: ["barn", "trough"] }],
 * });
 * if (best.state !== "found") throw new Error(best.state);
 * best.runs.map(({ size }) => size); // => ["1-1/4 in", "3/4 in"]
 * best.proven; // => true
 * ```
 *
 * @source derived: dynamic programming over the tree with dominance and an exact bound (`bellman-1957`)
 */
export function leastCostSizes(input: LeastCostSizesInput): LeastCostSizes {
  const sizing = readSizing(input);
  if ("state" in sizing) return sizing;
  const { network, scenarios, order, runOf, options, allowed, least, choiceOf, perHead } = sizing;
  const found = cheapestSizes(sizing);
  if (found === undefined) return shortAtWidest(sizing);

  const runs = network.runs.slice();
  const report: SizedRun[] = [];
  const picked = options.map((list, i) => list[found.chosen[i]!]);
  for (let i = 1; i < order.length; i++) {
    const size = allowed[i]![found.chosen[i]!];
    if (size === undefined) continue;
    const run = network.runs[runOf[i]!]!;
    runs[runOf[i]!] = sized(run, size);
    report.push({
      run: run.id,
      size: size.name,
      insideDiameter: size.insideDiameter,
      cost: picked[i]!.cost,
      headLoss: Math.max(...picked[i]!.losses) as Length,
    });
  }
  const losses = picked.map((option) => option?.losses ?? []);
  const { place, use, spare } = leastToSpare(headsOf(sizing, losses), least);
  // Of the water only what was looked at: the rest of what a caller hands in is not the library's to pass on.
  const { density, kinematicViscosity } = network.water;
  return {
    state: "found",
    cost: found.cost,
    runs: report.sort((a, b) => choiceOf.get(a.run)! - choiceOf.get(b.run)!),
    network: { ...network, water: { density, kinematicViscosity }, runs },
    tightest: {
      junction: network.junctions[order[place]!]!.id,
      scenario: scenarios[use]!.name,
      margin: (spare * perHead) as GaugePressure,
    },
    proven: found.proven,
    compared: found.states,
  };
}
