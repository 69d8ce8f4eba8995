/**
 * Lays the parts of runs in whole pieces, with the loss of each change of size, so that no junction is short. Private to
 * the selection.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: lists of one length, walked together.
import { byLoss, costOf, lengthOf, lossesOf, type Part, type Parts } from "./part-way-layout.ts";
import type { PartWaySize } from "./part-way-programme.ts";
import { headsOf, leastToSpare, type Sizing } from "./sizing.ts";

/** Parts laid, what they lose, and the head still missing where nothing wider is left. */
export interface LaidParts {
  readonly parts: Parts;
  readonly losses: readonly (readonly number[])[];
  /** Where and how much head is missing, m; `undefined` where none is. */
  readonly short: { readonly place: number; readonly use: number; readonly head: number } | undefined;
}

/** Lengths this close are equal but for rounding, m. */
const SAME_LENGTH = 1e-9;
/** The network takes no shorter run, m. */
export const SHORTEST_PART = 1e-3;

/**
 * Every wider part is rounded up to whole pieces: the pressures can only gain. Where the changes of size then take too
 * much, the part whose widening costs least for the head it gains is widened, until nothing is short: each step mends one
 * junction for good but for changes it adds, and each size enters a run once, so the steps end. Last, each part that
 * still leaves enough pressure when it is rounded down is rounded down, the greatest saving first.
 */
export function layInPieces(sizing: Sizing, exact: Parts, changeCoefficient: number, missing: number): LaidParts {
  const parts = exact.map((own, i) => roundedUp(sizing, i, own));
  const losses = parts.map((own, i) => (i === 0 ? [] : lossesOf(sizing, i, own, changeCoefficient)));
  const lay = (i: number, own: readonly Part[]): void => {
    parts[i] = own;
    losses[i] = lossesOf(sizing, i, own, changeCoefficient);
  };
  const worst = () => leastToSpare(headsOf(sizing, losses), sizing.least);
  for (let at = worst(); at.spare < -missing; at = worst()) {
    const step = cheapestWidening(sizing, parts, at);
    if (step === undefined) {
      return { parts, losses, short: { place: at.place, use: at.use, head: -at.spare } };
    }
    lay(step.place, step.parts);
  }
  const savings = parts.flatMap((own, i) => {
    const down = roundedDown(sizing, i, own, exact[i]!);
    return down === undefined ? [] : [{ i, down, saved: costOf(sizing, i, own) - costOf(sizing, i, down) }];
  });
  for (const { i, down, saved } of savings.sort((a, b) => b.saved - a.saved)) {
    if (!(saved > 0)) break;
    const before = parts[i]!;
    lay(i, down);
    if (worst().spare < -missing) lay(i, before);
  }
  return { parts, losses, short: undefined };
}

function pieceOf(sizing: Sizing, place: number, option: number): number | undefined {
  return (sizing.allowed[place]![option] as PartWaySize).pieceLength;
}

/** A length in whole pieces, not less; as it is where the size has no pieces. */
function wholePieces(length: number, piece: number | undefined): number {
  return piece === undefined ? length : Math.ceil(length / piece - SAME_LENGTH) * piece;
}

/** Each part but the last in whole pieces; the last takes what is left, and what would be too short goes to the one before. */
function roundedUp(sizing: Sizing, place: number, own: readonly Part[]): readonly Part[] {
  if (own.length === 0) return own; // the source has no run above it, and some runs keep their own bore
  let left = lengthOf(sizing, place);
  const parts: Part[] = [];
  own.forEach(({ option, length }) => {
    if (left <= 0) return;
    let take = wholePieces(length, pieceOf(sizing, place, option));
    if (left - take < SHORTEST_PART) take = left;
    parts.push({ option, length: take });
    left -= take;
  });
  return parts;
}

/** The last change of the exact parts one piece, or less, nearer the source; undefined where there is none to move. */
function roundedDown(
  sizing: Sizing,
  place: number,
  own: readonly Part[],
  exact: readonly Part[],
): readonly Part[] | undefined {
  const [wide, narrow] = [exact.at(-2), exact.at(-1)];
  if (wide === undefined || narrow === undefined) return undefined;
  const at = own.findIndex(({ option }) => option === wide.option);
  const piece = pieceOf(sizing, place, wide.option);
  // Widened since (then another size follows, or has taken its place), or laid in any length: as short as it may be.
  if (piece === undefined || own.slice(at + 1).some(({ option }) => option !== narrow.option)) return undefined;
  const had = own[at]!.length;
  const length = wholePieces(had, piece) - piece;
  const rest = (own[at + 1]?.length ?? 0) + had - length;
  if (rest < SHORTEST_PART) return undefined;
  return [
    ...own.slice(0, at),
    ...(length > SAME_LENGTH ? [{ option: wide.option, length }] : []),
    { option: narrow.option, length: rest },
  ];
}

/** The step that widens the narrow end of one run on the way to a short junction, at the least cost for its head. */
function cheapestWidening(
  sizing: Sizing,
  parts: Parts,
  { place, use, spare }: { readonly place: number; readonly use: number; readonly spare: number },
): { readonly place: number; readonly parts: readonly Part[] } | undefined {
  let best: { place: number; from: Part; to: number; gain: number; price: number } | undefined;
  for (let i = place; i > 0; i = sizing.parent[i]!) {
    const from = parts[i]!.at(-1);
    if (from === undefined) continue;
    const length = lengthOf(sizing, i);
    const options = sizing.options[i]!;
    const old = options[from.option]!;
    options.forEach(({ cost, losses }, to) => {
      const gain = (old.losses[use]! - losses[use]!) / length; // head for each metre widened
      if (!(gain > 0) || losses.some((loss, s) => loss > old.losses[s]!)) return;
      const price = (cost - old.cost) / length / gain;
      if (best === undefined || price < best.price) best = { place: i, from, to, gain, price };
    });
  }
  if (best === undefined) return undefined;
  const { from, to, gain } = best;
  const rest = parts[best.place]!.slice(0, -1);
  const had = rest.find(({ option }) => option === to)?.length ?? 0;
  const target = wholePieces(had + Math.min(-spare / gain, from.length), pieceOf(sizing, best.place, to));
  let widened = Math.max(target - had, SHORTEST_PART);
  if (from.length - widened < SHORTEST_PART) widened = from.length;
  const lengths = new Map(rest.map(({ option, length }) => [option, length]));
  lengths.set(to, had + widened);
  if (widened < from.length) lengths.set(from.option, from.length - widened);
  const order = byLoss(sizing, best.place);
  return {
    place: best.place,
    parts: order.flatMap((option) => {
      const length = lengths.get(option);
      return length === undefined ? [] : [{ option, length }];
    }),
  };
}
