/**
 * ASTM B88, seamless copper water tube, types K, L and M: dimensions.
 *
 * Outside diameter is the nominal size plus 1/8 in. Walls are nominal and were read in reprints, but for the sizes marked
 * recalled. The reprint prints 0.114 in for 4 in type L; 0.110 in stands here, which agrees with the published 5.38 lb/ft.
 * The standard gives no pressure rating: that depends on temper, joint and temperature (`metalPipeWorkingPressure`).
 *
 * @module
 */
import type { PipeProvenance, PipeTable } from "../pipe-table.ts";

/** Diameter and wall read in reprints; inside diameter from them. */
const readInReprint: PipeProvenance = {
  outsideDiameter: "read",
  wall: "read",
  insideDiameter: "computed",
  pressureRating: null,
};
/** Diameter and wall recalled; inside diameter from them. */
const recalled: PipeProvenance = {
  outsideDiameter: "memory",
  wall: "memory",
  insideDiameter: "computed",
  pressureRating: null,
};

/**
 * Copper water tube, types K, L and M.
 *
 * @source astm-b88
 */
export const astmB88: PipeTable = {
  standard: "ASTM B88",
  source: "astm-b88",
  material: "copper",
  unit: "in",
  ratingTemperature: null,
  wallBasis: "nominal",
  insideDiameterBasis: "outside less two nominal walls",
  smallestWall: 0,
  grades: [{ grade: "copper", designStress: null }],
  // series, nominal size, outside diameter, wall, inside diameter, rating of each grade, how each figure was obtained
  rows: [
    ["type K", "3/8 in", 0.5, 0.049, 0.402, [], recalled],
    ["type K", "1/2 in", 0.625, 0.049, 0.527, [], readInReprint],
    ["type K", "5/8 in", 0.75, 0.049, 0.652, [], recalled],
    ["type K", "3/4 in", 0.875, 0.065, 0.745, [], readInReprint],
    ["type K", "1 in", 1.125, 0.065, 0.995, [], readInReprint],
    ["type K", "1-1/4 in", 1.375, 0.065, 1.245, [], readInReprint],
    ["type K", "1-1/2 in", 1.625, 0.072, 1.481, [], readInReprint],
    ["type K", "2 in", 2.125, 0.083, 1.959, [], readInReprint],
    ["type K", "2-1/2 in", 2.625, 0.095, 2.435, [], readInReprint],
    ["type K", "3 in", 3.125, 0.109, 2.907, [], readInReprint],
    ["type K", "3-1/2 in", 3.625, 0.12, 3.385, [], recalled],
    ["type K", "4 in", 4.125, 0.134, 3.857, [], readInReprint],
    ["type K", "5 in", 5.125, 0.16, 4.805, [], recalled],
    ["type K", "6 in", 6.125, 0.192, 5.741, [], recalled],
    ["type L", "3/8 in", 0.5, 0.035, 0.43, [], recalled],
    ["type L", "1/2 in", 0.625, 0.04, 0.545, [], readInReprint],
    ["type L", "5/8 in", 0.75, 0.042, 0.666, [], recalled],
    ["type L", "3/4 in", 0.875, 0.045, 0.785, [], readInReprint],
    ["type L", "1 in", 1.125, 0.05, 1.025, [], readInReprint],
    ["type L", "1-1/4 in", 1.375, 0.055, 1.265, [], readInReprint],
    ["type L", "1-1/2 in", 1.625, 0.06, 1.505, [], readInReprint],
    ["type L", "2 in", 2.125, 0.07, 1.985, [], readInReprint],
    ["type L", "2-1/2 in", 2.625, 0.08, 2.465, [], readInReprint],
    ["type L", "3 in", 3.125, 0.09, 2.945, [], readInReprint],
    ["type L", "3-1/2 in", 3.625, 0.1, 3.425, [], recalled],
    ["type L", "4 in", 4.125, 0.11, 3.905, [], recalled],
    ["type L", "5 in", 5.125, 0.125, 4.875, [], recalled],
    ["type L", "6 in", 6.125, 0.14, 5.845, [], recalled],
    ["type M", "3/8 in", 0.5, 0.025, 0.45, [], recalled],
    ["type M", "1/2 in", 0.625, 0.028, 0.569, [], readInReprint],
    ["type M", "3/4 in", 0.875, 0.032, 0.811, [], readInReprint],
    ["type M", "1 in", 1.125, 0.035, 1.055, [], readInReprint],
    ["type M", "1-1/4 in", 1.375, 0.042, 1.291, [], readInReprint],
    ["type M", "1-1/2 in", 1.625, 0.049, 1.527, [], readInReprint],
    ["type M", "2 in", 2.125, 0.058, 2.009, [], readInReprint],
    ["type M", "2-1/2 in", 2.625, 0.065, 2.495, [], readInReprint],
    ["type M", "3 in", 3.125, 0.072, 2.981, [], readInReprint],
    ["type M", "3-1/2 in", 3.625, 0.083, 3.459, [], recalled],
    ["type M", "4 in", 4.125, 0.095, 3.935, [], readInReprint],
    ["type M", "5 in", 5.125, 0.109, 4.907, [], recalled],
    ["type M", "6 in", 6.125, 0.122, 5.881, [], recalled],
  ],
};
