/**
 * Equivalent lengths of fittings and valves in copper tube, feet, as a plumbing code prints them.
 *
 * Read in a copy of the code; the columns of short lines were inferred from their order. The 1.5 ft of the cast tee run at
 * 1-1/4 in stands as printed and looks like a misprint for 0.5 or 1. Hazen–Williams C is not stated.
 *
 * @module
 */
import type { EquivalentLengthTable } from "./equivalent-length-table.ts";

/**
 * Equivalent lengths in copper tube, wrought and cast fittings.
 *
 * @source illinois-plumbing-code, appendix A, table Q
 */
export const copperTubeLengths: EquivalentLengthTable = {
  source: "illinois-plumbing-code",
  hazenWilliamsC: null,
  sizes: ["1/2 in", "3/4 in", "1 in", "1-1/4 in", "1-1/2 in", "2 in", "2-1/2 in", "3 in", "3-1/2 in", "4 in"],
  feet: {
    "elbow 45 wrought": [0.5, 0.5, 1, 1, 2, 2, 3, 4, null, null],
    "elbow 90 wrought": [0.5, 1, 2, 2, 2, 2, 2, 3, null, null],
    "tee run wrought": [0.5, 0.5, 0.5, 0.5, 1, 1, 2, null, null, null],
    "tee branch wrought": [1, 2, 3, 4, 5, 7, 9, null, null, null],
    "elbow 45 cast": [0.5, 1, 2, 2, 3, 5, 8, 11, null, null],
    "elbow 90 cast": [1, 2, 4, 5, 8, 11, 14, 18, null, null],
    "tee run cast": [0.5, 0.5, 0.5, 1.5, 1, 2, 2, 2, null, null],
    "tee branch cast": [2, 3, 5, 7, 9, 12, 16, 20, null, null],
    "compression stop": [13, 21, 30, null, null, null, null, null, null, null],
    "globe valve": [null, null, null, 53, 66, 90, null, null, null, null],
    "gate valve": [null, null, 1, 1, 2, 2, 2, 2, null, null],
  },
};
