/**
 * The cheapest sizes for a branched layout whose runs may change size part-way: a solver's answer, proved and laid.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: lists of one length, walked together.
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import type { Length } from "../units/index.ts";
import type { NoSizeForRun, NoSizesMeet } from "./least-cost-sizes.ts";
import { byLoss, layoutOf, lengthOf, lossesOf, type Part, type PartWayLayout } from "./part-way-layout.ts";
import {
  firstVariables,
  headRows,
  type PartWayInput,
  type PartWaySize,
  type RuledOutSizes,
  readPartWay,
} from "./part-way-programme.ts";
import { headsOf, leastToSpare, type Sizing } from "./sizing.ts";
import { layInPieces, SHORTEST_PART } from "./whole-pieces.ts";

/** What a solver answered to {@link partWayProgramme}. */
export interface ProgrammeAnswer {
  /** The value of each variable, in the programme's order. */
  readonly values: readonly number[];
  /**
   * The dual value ("shadow price") of each row, in the programme's order; their signs do not matter. Left out, nothing
   * is proven. −1e30 to 1e30.
   */
  readonly duals?: readonly number[];
}

/** A layout whose runs may change size part-way, and a solver's answer. */
export interface PartWaySizesInput extends PartWayInput {
  /** The answer to the programme of this same layout. */
  readonly answer: ProgrammeAnswer;
}

/** The cheapest way to lay the layout. */
export interface PartWayFound {
  /** The answer serves every use. */
  readonly state: "found";
  /** The layout as the programme would have it: parts of any length, no loss at a change of size. */
  readonly least: PartWayLayout;
  /** No way to lay this layout in these sizes costs less: not in parts, not in whole pieces, not in whole runs. */
  readonly bound: number;
  /** True where `least` costs no more than the bound, to a millionth. */
  readonly proven: boolean;
  /** Where proven, the most that one more metre of head at the source in every use can save, in the currency a metre. */
  readonly worthOfHead: number;
  /** The layout in whole pieces and with the loss of each change; null where neither was asked for. */
  readonly laid: LaidLayout | CannotBeLaid | null;
  /** Sizes that some runs cannot have. */
  readonly ruledOut: readonly RuledOutSizes[];
}

/** The layout in whole pieces, and with the loss of each change of size: checked again, every use is served. */
export interface LaidLayout extends PartWayLayout {
  /** It can be laid. */
  readonly state: "laid";
}

/**
 * The loss of the changes of size leaves a junction short, and no other size loses less in every use. Where one does, there
 * is always a way: whole runs of it.
 */
export interface CannotBeLaid {
  /** It cannot be laid so. */
  readonly state: "cannot be laid";
  /** The junction that lacks most. */
  readonly junction: string;
  /** The use in which it does. */
  readonly scenario: string;
  /** Head that is missing there, m. */
  readonly short: Length;
}

/** The shares that a solver gave a run are not shares. */
export interface SharesFail {
  /** The answer is wrong. */
  readonly state: "answer fails";
  /** What is wrong with it. */
  readonly because: "shares";
  /** Name of the run. */
  readonly run: string;
  /** How far its shares are from adding up to one, or the worst of them from being one, as a share. */
  readonly off: number;
}

/** The layout that a solver gave leaves a junction short of head. */
export interface PressureFails {
  /** The answer is wrong. */
  readonly state: "answer fails";
  /** What is wrong with it. */
  readonly because: "pressure";
  /** The junction that lacks most. */
  readonly junction: string;
  /** The use in which it does. */
  readonly scenario: string;
  /** Head that is missing there, m. */
  readonly short: Length;
}

/** The outcome of {@link partWaySizes}. */
export type PartWaySizes = PartWayFound | SharesFail | PressureFails | NoSizeForRun | NoSizesMeet;

/** Shares and cost that a sound answer may be off by, as a share: solvers stop at 1e-7 of numbers near one. */
const ANSWER_SHARE = 1e-6;
/** Head that a sound answer may lack, m: the same, in metres of head. A hundredth of a pascal. */
const ANSWER_HEAD = 1e-6;
/** Shares below this are a solver's rounding of nought. */
const NOUGHT = 1e-9;

/**
 * Turns a solver's answer to {@link partWayProgramme} into sizes and lengths, and proves them without trusting the solver.
 *
 * @remarks
 * That it works: the head at each junction in each use is summed again from the parts by the network's own laws.
 *
 * That nothing is cheaper: the dual values of the head rows, taken as prices $p \ge 0$ of a metre of head, give
 * $B = \sum_i \min_k \left(C_{ik} + \sum_s P_{is} h_{iks}\right) - \sum_{js} p_{js} (H_s - H_{js})$, with $P_{is}$ the
 * prices of all junctions beyond run $i$. Whatever the prices, no layout that serves costs less than $B$: a layout pays
 * at least the least of each run, and what it saves on head it must have. A wrong answer cannot pass for proven.
 *
 * With one use, an answer has at most two sizes in a run, neighbours on the lower hull of cost against loss; with many, a
 * solver's corner answer has no more changes in all than rows of head that bind. By the Hazen–Williams rule, where all
 * runs have the same sizes to choose among and each junction draws water, no size grows away from the source.
 *
 * Where a size has a `pieceLength`, or changes a `changeCoefficient`, `laid` has every part that ends within a run in
 * whole pieces and the loss of each change, checked again; its cost lies above `bound` by at most what it could be
 * bettered. Surge is not in this: keep the margin that `surge` asks for out of the ratings given.
 *
 * @param input - the layout, sizes, uses and limits as given to {@link partWayProgramme}, and the solver's answer
 * @returns the sizes and lengths with their cost and bound; or what is wrong with the answer; or what stands in the way
 * @throws {@link units.InputError} as {@link partWayProgramme}, and for an answer that is not a finite number for each
 *   variable and row
 *
 * @example
 * ```ts
 * import { partWaySizes } from "risingmain/selection";
 * import { celsius, feet, gpm, inches, inFeet, psi } from "risingmain/units";
 * import { waterAt } from "risingmain/water";
 *
 * const input = {
 *   network: {
 *     water: waterAt({ temperature: celsius(10) }),
 *     junctions: [{ id: "tank", elevation: feet(0) }, { id: "field", elevation: feet(20) }],
 *     runs: [{
 *       id: "field line", from: "tank", to: "field", length: feet(1000),
 *       law: "darcy-weisbach", insideDiameter: inches(1), roughness: feet(0.000005),
 *     }],
 *     outlets: [{ id: "trough", junction: "field", kind: "fixed demand", flow: gpm(5), leastPressure: psi(10) }],
 *     sources: [{ id: "tank", junction: "tank", kind: "fixed head", head: feet(80) }],
 *   },
 *   choices: [{
 *     run: "field line",
 *     sizes: [
 *       { name: "3/4 in", insideDiameter: inches(0.824), costPerMetre: 1.2, pieceLength: feet(20) },
 *       { name: "1 in", insideDiameter: inches(1.049), costPerMetre: 1.9, pieceLength: feet(20) },
 *     ],
 *   }],
 *   scenarios: [{ name: "trough", open: ["trough"] }],
 * } as const;
 * // What a solver answered to partWayProgramme(input).
 * const answer = { values: [0.4751882178, 0.5248117822], duals: [678.4559778, -17.8337127] };
 * const best = partWaySizes({ ...input, answer });
 * if (best.state !== "found" || best.laid?.state !== "laid") throw new Error(best.state);
 * best.proven; // => true
 * best.least.cost; // ≈ 477.7338
 * best.laid.runs[0]?.parts.map(({ size, length }) => `${Math.round(inFeet(length))} ft of ${size}`);
 * // => ["540 ft of 1 in", "460 ft of 3/4 in"]
 * ```
 *
 * @source karmeli-1968: the programme of a branched layout
 * @source derived: the bound by weak duality
 */
export function partWaySizes(input: PartWaySizesInput): PartWaySizes {
  const sizing = readPartWay(input);
  const { answer, changeCoefficient = 0 } = input;
  requireObject("answer", answer);
  if ("state" in sizing) return sizing;
  const firstOf = firstVariables(sizing);
  const rows = headRows(sizing);
  const chosen = firstOf.filter((first) => first >= 0).length;
  const values = readNumbers(
    "answer.values",
    answer.values,
    sizing.options.reduce((sum, { length }, i) => (firstOf[i]! < 0 ? sum : sum + length), 0),
  );
  const duals =
    answer.duals === undefined ? [] : readNumbers("answer.duals", answer.duals, chosen + rows.length).slice(chosen);

  const shares = sizing.options.map((options, i) =>
    firstOf[i]! < 0 ? [] : options.map((_, k) => values[firstOf[i]! + k]!),
  );
  const misfit = worstShares(sizing, shares);
  if (misfit !== undefined) return misfit;
  const exact = shares.map((share, i) => partsOf(sizing, i, share));
  const losses = exact.map((own, i) => (i === 0 ? [] : lossesOf(sizing, i, own, 0)));
  const { place, use, spare } = leastToSpare(headsOf(sizing, losses), sizing.least);
  if (spare < -ANSWER_HEAD) {
    return { state: "answer fails", because: "pressure", ...shortAt(sizing, place, use, -spare) };
  }
  const prices = rows.map((row, r) => ({ ...row, price: Math.abs(duals[r] ?? 0) }));
  const least = layoutOf(sizing, exact, losses, 0);
  const bound = Math.max(boundOf(sizing, prices), boundOf(sizing, []));
  // What the answer costs, before parts too short to be laid were evened out.
  const cost = shares.reduce(
    (sum, share, i) => sum + share.reduce((part, t, k) => part + t * sizing.options[i]![k]!.cost, 0),
    0,
  );
  const pieces = sizing.allowed.some((sizes) =>
    sizes.some((size) => (size as PartWaySize | undefined)?.pieceLength !== undefined),
  );
  return {
    state: "found",
    least,
    bound,
    proven: cost - bound <= ANSWER_SHARE * cost,
    worthOfHead: prices.reduce((sum, { price }) => sum + price, 0),
    laid: pieces || changeCoefficient > 0 ? lay(sizing, exact, changeCoefficient) : null,
    ruledOut: sizing.ruledOut,
  };
}

function readNumbers(path: string, list: readonly number[], count: number): number[] {
  requireList(path, list, count, count);
  return Array.from(list, (value, i) => {
    requireWithin(`${path}[${i}]`, value, -1e30, 1e30, "");
    return value;
  });
}

/** The run whose shares are least like shares; undefined where all are. */
function worstShares({ network, runOf }: Sizing, shares: readonly (readonly number[])[]): SharesFail | undefined {
  let worst = { place: 0, off: 0 };
  shares.forEach((share, place) => {
    if (share.length === 0) return;
    const off = Math.max(...share.map((t) => -t), Math.abs(share.reduce((sum, t) => sum + t, 0) - 1));
    if (off > worst.off) worst = { place, off };
  });
  if (worst.off <= ANSWER_SHARE) return undefined;
  return { state: "answer fails", because: "shares", run: network.runs[runOf[worst.place]!]!.id, off: worst.off };
}

/** Lengths for the shares of one run, least loss first; a part shorter than a run may be gives or takes that much. */
function partsOf(sizing: Sizing, place: number, share: readonly number[]): readonly Part[] {
  const laid = byLoss(sizing, place).filter((k) => share[k]! > NOUGHT);
  const total = laid.reduce((sum, k) => sum + share[k]!, 0);
  const length = laid.length === 0 ? 0 : lengthOf(sizing, place);
  const parts = laid.map((option) => ({ option, length: (length * share[option]!) / total }));
  for (let p = parts.length - 1; p > 0; p--) {
    if (parts[p]!.length >= SHORTEST_PART) continue;
    parts[p - 1]!.length += parts[p]!.length;
    parts.splice(p, 1);
  }
  const [first, second] = parts;
  if (first === undefined || second === undefined || first.length >= SHORTEST_PART) return parts;
  second.length -= SHORTEST_PART - first.length;
  first.length = SHORTEST_PART;
  if (second.length >= SHORTEST_PART) return parts;
  return [{ option: first.option, length: first.length + second.length }, ...parts.slice(2)];
}

/** The least that any layout can cost, by the prices of head at the junctions. */
function boundOf(
  { parent, options, available, least }: Sizing,
  prices: readonly { readonly place: number; readonly use: number; readonly price: number }[],
): number {
  const price = parent.map(() => available.map(() => 0));
  let bound = 0;
  for (const { place, use, price: p } of prices) {
    price[place]![use] = p;
    bound -= p * (available[use]! - least[place]![use]!);
  }
  for (let i = parent.length - 1; i > 0; i--) {
    bound += Math.min(
      ...options[i]!.map(({ cost, losses }) => losses.reduce((sum, loss, s) => sum + price[i]![s]! * loss, cost)),
    );
    price[i]!.forEach((p, s) => {
      price[parent[i]!]![s] = price[parent[i]!]![s]! + p;
    });
  }
  return bound;
}

function lay(
  sizing: Sizing,
  exact: readonly (readonly Part[])[],
  changeCoefficient: number,
): LaidLayout | CannotBeLaid {
  const { parts, losses, short } = layInPieces(sizing, exact, changeCoefficient, ANSWER_HEAD);
  if (short !== undefined) {
    return { state: "cannot be laid", ...shortAt(sizing, short.place, short.use, short.head) };
  }
  return { state: "laid", ...layoutOf(sizing, parts, losses, changeCoefficient) };
}

function shortAt({ network, order, scenarios }: Sizing, place: number, use: number, short: number) {
  return {
    junction: network.junctions[order[place]!]!.id,
    scenario: scenarios[use]!.name,
    short: short as Length,
  };
}
