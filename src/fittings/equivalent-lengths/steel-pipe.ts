/**
 * Equivalent lengths of fittings and valves in schedule 40 steel pipe, feet, for a Hazen–Williams C of 120, as the standard for
 * sprinkler systems prints them.
 *
 * Read in a reprint.
 *
 * @module
 */
import type { EquivalentLengthTable } from "./equivalent-length-table.ts";

/**
 * Equivalent lengths in schedule 40 steel pipe at C = 120.
 *
 * @source nfpa-13, table of equivalent pipe lengths
 */
export const steelPipeLengths: EquivalentLengthTable = {
  source: "nfpa-13",
  hazenWilliamsC: 120,
  sizes: ["1/2 in", "3/4 in", "1 in", "1-1/4 in", "1-1/2 in", "2 in", "2-1/2 in", "3 in", "3-1/2 in", "4 in"],
  feet: {
    "elbow 45": [null, 1, 1, 1, 2, 2, 3, 3, 3, 4],
    "elbow 90": [1, 2, 2, 3, 4, 5, 6, 7, 8, 10],
    "elbow 90 long radius": [0.5, 1, 2, 2, 2, 3, 4, 5, 5, 6],
    "butterfly valve": [null, null, null, null, null, 6, 7, 10, null, 12],
    "gate valve": [null, null, null, null, null, 1, 1, 1, 1, 2],
    "swing check valve": [null, null, 5, 7, 9, 11, 14, 16, 19, 22],
  },
};
