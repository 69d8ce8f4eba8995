/**
 * Which outlets, open together, leave one of them worst off.
 *
 * @module
 */
import { requireObject, requireWhole } from "../numeric/index.ts";
import { type GaugePressure, InputError } from "../units/index.ts";
import { type PreparedNetwork, prepareNetwork } from "./balance.ts";
import type { Network } from "./network-parts.ts";
import type { NetworkResult } from "./network-solution.ts";
import { openOutlets, solvePrepared } from "./solve-network.ts";

/** A layout and how many outlets are open at once. */
export interface WorstCombinationInput {
  /** The layout. */
  readonly network: Network;
  /** Number of outlets open at once. 1 to the number of candidates. */
  readonly openAtOnce: number;
  /** Names of the outlets to choose among; all if left out. */
  readonly candidates?: readonly string[];
  /** Names of outlets that are open besides, in every combination; none if left out. */
  readonly alwaysOpen?: readonly string[];
}

/** The worst combination. */
export interface WorstCombination {
  /** Names of the outlets open, those always open included. */
  readonly open: readonly string[];
  /** Name of the outlet worst off; null where the sources cannot supply the combination. */
  readonly outlet: string | null;
  /** Its gauge pressure less what it needs (`leastPressure`), Pa; null likewise. */
  readonly margin: GaugePressure | null;
  /** The balance with these outlets open. */
  readonly result: NetworkResult;
  /** Combinations solved. */
  readonly tried: number;
  /** True where every combination was tried; false where the search went by exchange, and a worse one may exist. */
  readonly proven: boolean;
}

/** Combinations that are all tried: a second or so for an ordinary yard. */
const MOST_TRIED = 20_000;

/**
 * The combination of outlets, a given number open at once, that leaves one of them with the least pressure to spare.
 *
 * @remarks
 * Up to 20 000 combinations are all solved, and the answer is proven. Beyond, the search starts from the outlets that
 * fare worst alone and exchanges one at a time while that makes things worse: `proven` is then false.
 *
 * @param input - the layout, the number open at once, and who may be among them
 * @returns the combination, the outlet worst off and by how much
 * @throws {@link units.InputError} naming the first part that cannot be used
 *
 * @example Which two of three taps
 * ```ts
 * import { worstCombination } from "risingmain/network";
 * import { celsius, feet, gpm, inches } from "risingmain/units";
 * import { waterAt } from "risingmain/water";
 *
 * const pipe = { law: "darcy-weisbach", insideDiameter: inches(1.049), roughness: feet(0.000005) } as const;
 * const worst = worstCombination({
 *   network: {
 *     water: waterAt({ temperature: celsius(10) }),
 *     junctions: ["tank", "house", "barn", "field"].map((id) => ({ id, elevation: feet(0) })),
 *     runs: [
 *       { id: "1", from: "tank", to: "house", length: feet(50), ...pipe },
 *       { id: "2", from: "tank", to: "barn", length: feet(300), ...pipe },
 *       { id: "3", from: "barn", to: "field", length: feet(400), ...pipe },
 *     ],
 *     outlets: ["house", "barn", "field"].map((id) => ({ id, junction: id, kind: "fixed demand" as const, flow: gpm(6) })),
 *     sources: [{ id: "tank", junction: "tank", kind: "fixed head", head: feet(115) }],
 *   },
 *   openAtOnce: 2,
 * });
 * worst.open; // => ["barn", "field"]
 * worst.outlet; // => "field"
 * ```
 *
 * @source derived: every combination is solved
 */
export function worstCombination(input: WorstCombinationInput): WorstCombination {
  requireObject("input", input);
  const { network, openAtOnce, candidates, alwaysOpen } = input;
  const prepared = prepareNetwork(network);
  const among = openOutlets(prepared, "candidates", candidates);
  const always = openOutlets(prepared, "alwaysOpen", alwaysOpen ?? []);
  const choices: number[] = [];
  for (let i = 0; i < among.length; i++) if (among[i] && !always[i]) choices.push(i);
  if (choices.length === 0)
    throw new InputError("candidates", candidates, "at least one outlet that is not always open");
  requireWhole("openAtOnce", openAtOnce, 1, choices.length);

  let tried = 0;
  const judge = (chosen: readonly number[]): Judged => {
    tried++;
    const open = always.slice();
    for (const i of chosen) open[i] = 1;
    return { chosen, ...judged(prepared, open) };
  };
  const proven = combinations(choices.length, openAtOnce) <= MOST_TRIED;
  const worst = proven ? worstOfAll(choices, openAtOnce, judge) : worstByExchange(choices, openAtOnce, judge);
  const names = network.outlets.flatMap(({ id }, i) => (always[i] || worst.chosen.includes(i) ? [id] : []));
  return {
    open: names,
    outlet: worst.outlet,
    margin: worst.outlet === null ? null : (worst.margin as GaugePressure),
    result: worst.result,
    tried,
    proven,
  };
}

interface Judged {
  readonly chosen: readonly number[];
  readonly outlet: string | null;
  /** Pascal; −Infinity where the sources cannot supply. */
  readonly margin: number;
  readonly result: NetworkResult;
}

function judged(prepared: PreparedNetwork, open: Uint8Array): Omit<Judged, "chosen"> {
  const result = solvePrepared(prepared, open);
  if (result.state !== "solved") return { outlet: null, margin: -Infinity, result };
  let outlet: string | null = null;
  let margin = Infinity;
  const { outlets } = prepared.network;
  result.outlets.forEach(({ id, pressure, state }, i) => {
    const spare = pressure - (outlets[i]?.leastPressure ?? 0);
    if (state !== "not open" && spare < margin) {
      margin = spare;
      outlet = id;
    }
  });
  return { outlet, margin, result };
}

function worstOfAll(choices: readonly number[], size: number, judge: (chosen: readonly number[]) => Judged): Judged {
  const at = Array.from({ length: size }, (_, k) => k);
  const chosen = (): number[] => at.map((k) => choices[k] as number);
  let worst = judge(chosen());
  for (;;) {
    // The next combination in order: the last place that can move on does, those after it follow close.
    let k = size - 1;
    while (k >= 0 && at[k] === choices.length - size + k) k--;
    if (k < 0) return worst;
    const next = (at[k] as number) + 1;
    for (let m = k; m < size; m++) at[m] = next + m - k;
    const found = judge(chosen());
    if (found.margin < worst.margin) worst = found;
  }
}

function worstByExchange(
  choices: readonly number[],
  size: number,
  judge: (chosen: readonly number[]) => Judged,
): Judged {
  const alone = choices.map((i) => ({ i, margin: judge([i]).margin })).sort((a, b) => a.margin - b.margin);
  let worst = judge(alone.slice(0, size).map(({ i }) => i));
  let solved = 0;
  for (let better = true; better; ) {
    better = false;
    for (const out of worst.chosen) {
      for (const into of choices) {
        if (worst.chosen.includes(into)) continue;
        if (++solved > MOST_TRIED) return worst;
        const found = judge(worst.chosen.map((i) => (i === out ? into : i)));
        if (found.margin < worst.margin) {
          worst = found;
          better = true;
          break;
        }
      }
      if (better) break;
    }
  }
  return worst;
}

/** n over k, as far as doubles go. */
function combinations(n: number, k: number): number {
  let count = 1;
  for (let i = 1; i <= k; i++) count = (count * (n - k + i)) / i;
  return count;
}
