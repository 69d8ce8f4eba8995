/**
 * ISO 1452-2, unplasticised PVC (PVC-U) pipe for water: dimensions and nominal pressure at 20 °C.
 *
 * All recalled. Walls agree with outside diameter over (2 S + 1), S the exact R10 series number, and are not under 1.5 mm.
 * Design stress is 10 MPa up to 90 mm and 12.5 MPa from 110 mm, so one SDR has two nominal pressures. Inside diameter is
 * the outside diameter less two minimum walls.
 *
 * @module
 */
import type { PipeProvenance, PipeTable } from "../pipe-table.ts";

/** Outside diameter, wall and nominal pressure recalled; inside diameter from them. */
const recalled: PipeProvenance = {
  outsideDiameter: "memory",
  wall: "memory",
  insideDiameter: "computed",
  pressureRating: "memory",
};

/**
 * PVC-U water pipe, SDR 13.6 to SDR 26, 20 to 160 mm.
 *
 * @source iso-1452-2
 */
export const iso1452: PipeTable = {
  standard: "ISO 1452",
  source: "iso-1452-2",
  material: "PVC",
  unit: "mm",
  ratingTemperature: 20,
  wallBasis: "minimum",
  insideDiameterBasis: "outside less two minimum walls",
  smallestWall: 1.5,
  grades: [{ grade: "PVC-U", designStress: null }],
  // series, nominal size, outside diameter, wall, inside diameter, rating of each grade, how each figure was obtained
  rows: [
    ["SDR 13.6", "20 mm", 20, 1.5, 17, [16], recalled],
    ["SDR 13.6", "25 mm", 25, 1.9, 21.2, [16], recalled],
    ["SDR 13.6", "32 mm", 32, 2.4, 27.2, [16], recalled],
    ["SDR 13.6", "40 mm", 40, 3, 34, [16], recalled],
    ["SDR 13.6", "50 mm", 50, 3.7, 42.6, [16], recalled],
    ["SDR 13.6", "63 mm", 63, 4.7, 53.6, [16], recalled],
    ["SDR 13.6", "75 mm", 75, 5.6, 63.8, [16], recalled],
    ["SDR 13.6", "90 mm", 90, 6.7, 76.6, [16], recalled],
    ["SDR 13.6", "110 mm", 110, 8.1, 93.8, [20], recalled],
    ["SDR 13.6", "125 mm", 125, 9.2, 106.6, [20], recalled],
    ["SDR 13.6", "140 mm", 140, 10.3, 119.4, [20], recalled],
    ["SDR 13.6", "160 mm", 160, 11.8, 136.4, [20], recalled],
    ["SDR 17", "25 mm", 25, 1.5, 22, [12.5], recalled],
    ["SDR 17", "32 mm", 32, 1.9, 28.2, [12.5], recalled],
    ["SDR 17", "40 mm", 40, 2.4, 35.2, [12.5], recalled],
    ["SDR 17", "50 mm", 50, 3, 44, [12.5], recalled],
    ["SDR 17", "63 mm", 63, 3.8, 55.4, [12.5], recalled],
    ["SDR 17", "75 mm", 75, 4.5, 66, [12.5], recalled],
    ["SDR 17", "90 mm", 90, 5.4, 79.2, [12.5], recalled],
    ["SDR 17", "110 mm", 110, 6.6, 96.8, [16], recalled],
    ["SDR 17", "125 mm", 125, 7.4, 110.2, [16], recalled],
    ["SDR 17", "140 mm", 140, 8.3, 123.4, [16], recalled],
    ["SDR 17", "160 mm", 160, 9.5, 141, [16], recalled],
    ["SDR 21", "32 mm", 32, 1.6, 28.8, [10], recalled],
    ["SDR 21", "40 mm", 40, 1.9, 36.2, [10], recalled],
    ["SDR 21", "50 mm", 50, 2.4, 45.2, [10], recalled],
    ["SDR 21", "63 mm", 63, 3, 57, [10], recalled],
    ["SDR 21", "75 mm", 75, 3.6, 67.8, [10], recalled],
    ["SDR 21", "90 mm", 90, 4.3, 81.4, [10], recalled],
    ["SDR 21", "110 mm", 110, 5.3, 99.4, [12.5], recalled],
    ["SDR 21", "125 mm", 125, 6, 113, [12.5], recalled],
    ["SDR 21", "140 mm", 140, 6.7, 126.6, [12.5], recalled],
    ["SDR 21", "160 mm", 160, 7.7, 144.6, [12.5], recalled],
    ["SDR 26", "40 mm", 40, 1.6, 36.8, [8], recalled],
    ["SDR 26", "50 mm", 50, 2, 46, [8], recalled],
    ["SDR 26", "63 mm", 63, 2.5, 58, [8], recalled],
    ["SDR 26", "75 mm", 75, 2.9, 69.2, [8], recalled],
    ["SDR 26", "90 mm", 90, 3.5, 83, [8], recalled],
    ["SDR 26", "110 mm", 110, 4.2, 101.6, [10], recalled],
    ["SDR 26", "125 mm", 125, 4.8, 115.4, [10], recalled],
    ["SDR 26", "140 mm", 140, 5.4, 129.2, [10], recalled],
    ["SDR 26", "160 mm", 160, 6.2, 147.6, [10], recalled],
  ],
};
