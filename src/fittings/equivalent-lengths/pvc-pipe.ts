/**
 * Equivalent lengths of solvent-welded fittings in PVC pipe, feet, as a trade table prints them.
 *
 * Read. Hazen–Williams C is not stated; such tables go with 150.
 *
 * @module
 */
import type { EquivalentLengthTable } from "./equivalent-length-table.ts";

/**
 * Equivalent lengths in PVC pipe.
 *
 * @source pvc-fittings-table
 */
export const pvcPipeLengths: EquivalentLengthTable = {
  source: "pvc-fittings-table",
  hazenWilliamsC: null,
  sizes: ["1/2 in", "3/4 in", "1 in", "1-1/4 in", "1-1/2 in", "2 in", "2-1/2 in", "3 in", "3-1/2 in", "4 in"],
  feet: {
    "elbow 45": [0.8, 1, 1.4, 1.8, 2, 2.5, 3, 4, 4.5, 5],
    "elbow 90": [1.5, 2, 2.3, 4, 4, 6, 8, 8, 10, 12],
    "tee run": [1, 1.4, 1.7, 2.3, 2.7, 4.3, 5.1, 6.3, 7.3, 8.3],
    "tee branch": [4, 5, 6, 7, 8, 12, 15, 16, 19, 22],
  },
};
