/**
 * Locked-rotor code letters: apparent power per horsepower of a motor standing still at rated voltage.
 *
 * Source: `nema-mg-1`, as tabulated by an engineering reference; the same bands are NEC Table 430.7(B). Provenance: read; B
 * ends at 3.54 in the code and 3.55 in that reference. The reference's middle of the band is kept up to R; beyond it the
 * middle is the mean of the ends.
 *
 * @module
 */

/** A code letter; I, O and Q are not used. */
export type CodeLetter =
  | "A"
  | "B"
  | "C"
  | "D"
  | "E"
  | "F"
  | "G"
  | "H"
  | "J"
  | "K"
  | "L"
  | "M"
  | "N"
  | "P"
  | "R"
  | "S"
  | "T"
  | "U"
  | "V";

/** A band of locked-rotor kVA per horsepower. */
export interface CodeLetterRange {
  /** Lower end, kVA/hp. */
  readonly low: number;
  /** Middle, kVA/hp. */
  readonly middle: number;
  /** Upper end, kVA/hp; null where the band has none. */
  readonly high: number | null;
}

/**
 * The bands by letter.
 *
 * @source nema-mg-1, locked-rotor code letters
 */
export const codeLetterRanges: Readonly<Record<CodeLetter, CodeLetterRange>> = {
  A: { low: 0, middle: 1.6, high: 3.14 },
  B: { low: 3.15, middle: 3.3, high: 3.54 },
  C: { low: 3.55, middle: 3.8, high: 3.99 },
  D: { low: 4, middle: 4.3, high: 4.49 },
  E: { low: 4.5, middle: 4.7, high: 4.99 },
  F: { low: 5, middle: 5.3, high: 5.59 },
  G: { low: 5.6, middle: 5.9, high: 6.29 },
  H: { low: 6.3, middle: 6.7, high: 7.09 },
  J: { low: 7.1, middle: 7.5, high: 7.99 },
  K: { low: 8, middle: 8.5, high: 8.99 },
  L: { low: 9, middle: 9.5, high: 9.99 },
  M: { low: 10, middle: 10.6, high: 11.19 },
  N: { low: 11.2, middle: 11.8, high: 12.49 },
  P: { low: 12.5, middle: 13.2, high: 13.99 },
  R: { low: 14, middle: 15, high: 15.99 },
  S: { low: 16, middle: 17, high: 17.99 },
  T: { low: 18, middle: 19, high: 19.99 },
  U: { low: 20, middle: 21.2, high: 22.39 },
  V: { low: 22.4, middle: 22.4, high: null },
};

/** The letters, for checks of input. */
export const CODE_LETTERS: readonly CodeLetter[] = [
  "A",
  "B",
  "C",
  "D",
  "E",
  "F",
  "G",
  "H",
  "J",
  "K",
  "L",
  "M",
  "N",
  "P",
  "R",
  "S",
  "T",
  "U",
  "V",
];
