/**
 * Colours that readers with any common colour vision tell apart, and dashes for those who see none.
 *
 * @module
 */

/**
 * The palette of Okabe and Ito, by their names.
 *
 * @source okabe-ito-2008
 */
export const PALETTE = {
  black: "#000000",
  orange: "#E69F00",
  "sky blue": "#56B4E9",
  "bluish green": "#009E73",
  yellow: "#F0E442",
  blue: "#0072B2",
  vermillion: "#D55E00",
  "reddish purple": "#CC79A7",
} as const;

/**
 * The colours lines are drawn in, in turn: those of the palette that stand out from the paper and lie furthest from each
 * other for readers without red or green cones. White stands for black on dark paper.
 */
export const LINE_COLOURS: Readonly<Record<"light" | "dark", readonly string[]>> = {
  light: [PALETTE.blue, PALETTE.vermillion, PALETTE["bluish green"], PALETTE.black],
  dark: [PALETTE["sky blue"], PALETTE.orange, PALETTE["bluish green"], "#FFFFFF"],
};

/** Dashes beside the colours, in turn; a print without colour tells the lines apart by them. */
export const DASHES: readonly (readonly number[])[] = [
  [1, 0],
  [8, 3],
  [2, 2],
  [10, 3, 2, 3],
  [5, 2, 1, 2, 1, 2],
  [14, 5],
  [6, 3, 6, 3, 1, 3],
  [16, 3, 2, 3, 2, 3],
  [4, 6],
  [20, 3, 5, 3],
];
