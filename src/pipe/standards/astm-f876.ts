/**
 * ASTM F876 and F877, crosslinked polyethylene (PEX) tubing of copper tube size, SDR 9: dimensions and ratings.
 *
 * All recalled. Walls agree with outside diameter over 9, not under 0.070 in. Rated 160 psi at 73 °F, 100 psi at 180 °F and
 * 80 psi at 200 °F. Inside diameter is the outside diameter less two minimum walls; bores as made are about 2 % narrower.
 *
 * @module
 */
import type { PipeProvenance, PipeTable } from "../pipe-table.ts";

/** Outside diameter, wall and rating recalled; inside diameter from them. */
const recalled: PipeProvenance = {
  outsideDiameter: "memory",
  wall: "memory",
  insideDiameter: "computed",
  pressureRating: "memory",
};

/**
 * Crosslinked polyethylene tubing, SDR 9; F877 is the same tubing as part of a hot and cold water system.
 *
 * @source astm-f876
 * @source astm-f877
 */
export const astmF876: PipeTable = {
  standard: "ASTM F876",
  source: "astm-f876",
  material: "PEX",
  unit: "in",
  ratingTemperature: 73,
  wallBasis: "minimum",
  insideDiameterBasis: "outside less two minimum walls",
  smallestWall: 0.07,
  grades: [{ grade: "PEX", designStress: 630 }],
  // series, nominal size, outside diameter, wall, inside diameter, rating of each grade, how each figure was obtained
  rows: [
    ["SDR 9", "3/8 in", 0.5, 0.07, 0.36, [160], recalled],
    ["SDR 9", "1/2 in", 0.625, 0.07, 0.485, [160], recalled],
    ["SDR 9", "5/8 in", 0.75, 0.083, 0.584, [160], recalled],
    ["SDR 9", "3/4 in", 0.875, 0.097, 0.681, [160], recalled],
    ["SDR 9", "1 in", 1.125, 0.125, 0.875, [160], recalled],
    ["SDR 9", "1-1/4 in", 1.375, 0.153, 1.069, [160], recalled],
    ["SDR 9", "1-1/2 in", 1.625, 0.181, 1.263, [160], recalled],
    ["SDR 9", "2 in", 2.125, 0.236, 1.653, [160], recalled],
    ["SDR 9", "2-1/2 in", 2.625, 0.292, 2.041, [160], recalled],
    ["SDR 9", "3 in", 3.125, 0.347, 2.431, [160], recalled],
  ],
};
