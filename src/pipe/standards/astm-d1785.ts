/**
 * ASTM D1785, PVC pipe of schedules 40, 80 and 120: dimensions and pressure ratings for water at 73 °F.
 *
 * 1/2 to 4 in were read in a reprint of the tables; 5 and 6 in are recalled. Inside diameters are the averages the
 * tables print, about the outside diameter less 2.12 minimum walls. Edition of the reprint not stated.
 *
 * @module
 */
import type { PipeProvenance, PipeTable } from "../pipe-table.ts";

/** Every figure read in a reprint of the table. */
const readInReprint: PipeProvenance = {
  outsideDiameter: "read",
  wall: "read",
  insideDiameter: "read",
  pressureRating: "read",
};
/** Every figure recalled. */
const recalled: PipeProvenance = {
  outsideDiameter: "memory",
  wall: "memory",
  insideDiameter: "memory",
  pressureRating: "memory",
};

/**
 * PVC pipe of schedules 40, 80 and 120, plain ends (threading schedule 80 halves the rating).
 *
 * @source astm-d1785
 */
export const astmD1785: PipeTable = {
  standard: "ASTM D1785",
  source: "astm-d1785",
  material: "PVC",
  unit: "in",
  ratingTemperature: 73,
  wallBasis: "minimum",
  insideDiameterBasis: "average",
  smallestWall: 0,
  grades: [{ grade: "PVC 1120", designStress: 2000 }],
  // series, nominal size, outside diameter, wall, inside diameter, rating of each grade, how each figure was obtained
  rows: [
    ["SCH 40", "1/2 in", 0.84, 0.109, 0.608, [600], readInReprint],
    ["SCH 40", "3/4 in", 1.05, 0.113, 0.81, [480], readInReprint],
    ["SCH 40", "1 in", 1.315, 0.133, 1.033, [450], readInReprint],
    ["SCH 40", "1-1/4 in", 1.66, 0.14, 1.364, [370], readInReprint],
    ["SCH 40", "1-1/2 in", 1.9, 0.145, 1.592, [330], readInReprint],
    ["SCH 40", "2 in", 2.375, 0.154, 2.049, [280], readInReprint],
    ["SCH 40", "2-1/2 in", 2.875, 0.203, 2.445, [300], readInReprint],
    ["SCH 40", "3 in", 3.5, 0.216, 3.042, [260], readInReprint],
    ["SCH 40", "3-1/2 in", 4, 0.226, 3.52, [240], readInReprint],
    ["SCH 40", "4 in", 4.5, 0.237, 3.998, [220], readInReprint],
    ["SCH 40", "5 in", 5.563, 0.258, 5.016, [190], recalled],
    ["SCH 40", "6 in", 6.625, 0.28, 6.031, [180], recalled],
    ["SCH 80", "1/2 in", 0.84, 0.147, 0.528, [850], readInReprint],
    ["SCH 80", "3/4 in", 1.05, 0.154, 0.724, [690], readInReprint],
    ["SCH 80", "1 in", 1.315, 0.179, 0.935, [630], readInReprint],
    ["SCH 80", "1-1/4 in", 1.66, 0.191, 1.256, [520], readInReprint],
    ["SCH 80", "1-1/2 in", 1.9, 0.2, 1.476, [470], readInReprint],
    ["SCH 80", "2 in", 2.375, 0.218, 1.913, [400], readInReprint],
    ["SCH 80", "2-1/2 in", 2.875, 0.276, 2.289, [420], readInReprint],
    ["SCH 80", "3 in", 3.5, 0.3, 2.864, [370], readInReprint],
    ["SCH 80", "3-1/2 in", 4, 0.318, 3.326, [350], readInReprint],
    ["SCH 80", "4 in", 4.5, 0.337, 3.786, [320], readInReprint],
    ["SCH 80", "5 in", 5.563, 0.375, 4.768, [290], recalled],
    ["SCH 80", "6 in", 6.625, 0.432, 5.709, [280], recalled],
    ["SCH 120", "1/2 in", 0.84, 0.17, 0.48, [1010], readInReprint],
    ["SCH 120", "3/4 in", 1.05, 0.17, 0.69, [770], readInReprint],
    ["SCH 120", "1 in", 1.315, 0.2, 0.891, [720], readInReprint],
    ["SCH 120", "1-1/4 in", 1.66, 0.215, 1.204, [600], readInReprint],
    ["SCH 120", "1-1/2 in", 1.9, 0.225, 1.423, [540], readInReprint],
    ["SCH 120", "2 in", 2.375, 0.25, 1.845, [470], readInReprint],
    ["SCH 120", "2-1/2 in", 2.875, 0.3, 2.239, [470], readInReprint],
    ["SCH 120", "3 in", 3.5, 0.35, 2.758, [440], readInReprint],
    ["SCH 120", "4 in", 4.5, 0.437, 3.572, [430], readInReprint],
  ],
};
