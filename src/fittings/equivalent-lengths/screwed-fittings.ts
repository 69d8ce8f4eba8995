/**
 * Equivalent lengths of screwed fittings, feet, as the appendix of a residential code prints them: a length in diameters times the
 * bore of schedule 40 pipe.
 *
 * Read in a copy. The tee is taken through its branch. Hazen–Williams C is not stated; the table goes with a Darcy factor of
 * 0.030.
 *
 * @module
 */
import type { EquivalentLengthTable } from "./equivalent-length-table.ts";

/**
 * Equivalent lengths of screwed fittings.
 *
 * @source irc-appendix, table of equivalent lengths
 */
export const screwedFittingLengths: EquivalentLengthTable = {
  source: "irc-appendix",
  hazenWilliamsC: null,
  sizes: ["1/2 in", "3/4 in", "1 in", "1-1/4 in", "1-1/2 in", "2 in", "2-1/2 in", "3 in", "3-1/2 in", "4 in"],
  feet: {
    "elbow 45": [0.73, 0.96, 1.22, 1.61, 1.88, 2.41, 2.88, 3.58, null, 4.7],
    "elbow 90": [1.55, 2.06, 2.62, 3.45, 4.02, 5.17, 6.16, 7.67, null, 10.1],
    "tee branch": [3.47, 4.6, 5.82, 7.66, 8.95, 11.5, 13.7, 17.1, null, 22.4],
    "return bend": [3.1, 4.12, 5.24, 6.9, 8.04, 10.3, 12.3, 15.3, null, 20.2],
  },
};
