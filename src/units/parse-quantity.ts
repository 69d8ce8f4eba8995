/**
 * A number and a unit read from text: the scanner shared by all quantities.
 *
 * One pass over the characters, with no backtracking, so the time grows with the length of the text and no faster.
 *
 * @module
 */
import { InputError } from "./input-error.ts";
import { isDigit, readNumber } from "./read-number.ts";

/** A unit as people write it. */
export interface UnitText<Q extends number> {
  /** How it is printed. */
  readonly symbol: string;
  /** How it may be written, without spaces. */
  readonly words: readonly string[];
  /** The quantity of a number of these units. */
  readonly make: (value: number) => Q;
  /** The number of these units in a quantity. */
  readonly read: (quantity: Q) => number;
}

/** Longer texts are no quantity, and are refused before they are looked at. */
const LONGEST_TEXT = 100;

/**
 * Reads one quantity, whole. With `compound`, parts may follow each other from the larger unit to the smaller:
 * "6 ft 2-1/2 in", "1 h 30 min".
 *
 * @internal
 */
export function parseQuantity<Q extends number>(
  noun: string,
  units: readonly UnitText<Q>[],
  sample: string,
  text: string,
  compound = false,
): Q {
  const refuse = (why: string): InputError => new InputError("text", text, `${noun} such as "${sample}"${why}`);
  if (typeof text !== "string" || text.length > LONGEST_TEXT) throw refuse("");
  let at = 0;
  let sum: number | undefined;
  let size = Number.POSITIVE_INFINITY;
  while (at < text.length) {
    const number = readNumber(text, at);
    if (number === undefined) throw refuse("");
    let end = number.end;
    while (end < text.length && !(compound && startsPart(text, end))) end++;
    const word = text.slice(number.end, end).trim();
    const unit = findUnit(units, word);
    if (unit === undefined) {
      throw refuse(
        word === ""
          ? ": the unit is missing"
          : `: "${word}" is not one of ${units.map(({ symbol }) => (symbol === "1" ? "a plain number" : symbol)).join(", ")}`,
      );
    }
    const part = unit.make(number.value);
    const one = unit.make(1);
    if (!(one < size)) throw refuse(": parts run from the larger unit to the smaller, without signs");
    // The sign before the first part is that of all, of a −0 too.
    sum = sum === undefined ? part : 1 / sum < 0 ? sum - part : sum + part;
    size = one;
    at = end;
  }
  if (!Number.isFinite(sum)) throw refuse("");
  return sum as Q;
}

/** In a compound text a digit that follows a unit and a space, or a foot mark, begins the next part. */
function startsPart(text: string, at: number): boolean {
  return isDigit(text, at) && " '’′".includes(text.charAt(at - 1));
}

function findUnit<Q extends number>(units: readonly UnitText<Q>[], word: string): UnitText<Q> | undefined {
  const wanted = canonical(word);
  const exact = units.find(({ words }) => words.some((w) => canonical(w) === wanted));
  if (exact !== undefined) return exact;
  // Letter case tells mW from MW, so it is forgiven only where that leaves one unit.
  const loose = units.filter(({ words }) => words.some((w) => canonical(w).toLowerCase() === wanted.toLowerCase()));
  return loose.length === 1 ? loose[0] : undefined;
}

/** One spelling for the several of a unit: compatibility characters folded (² to 2, Ω to Ω), spaces, dots and carets dropped. */
function canonical(word: string): string {
  return word
    .normalize("NFKC")
    .replace(/[\s.·^°]/g, "")
    .replace(/[’′]/g, "'")
    .replace(/”|''/g, '"');
}
