/**
 * ISO 4427-2 and EN 12201-2, polyethylene pipe for water by outside diameter: dimensions and nominal pressure at 20 °C.
 *
 * All recalled. Walls agree with outside diameter over (2 S + 1), S the exact R10 series number, and are not under 2.0 mm;
 * nominal pressures with 20 MRS / (1.25 (SDR − 1)) bar, rounded to a preferred number. Inside diameter is the outside
 * diameter less two minimum walls.
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
 * Polyethylene water pipe of PE80 and PE100, SDR 7.4 to SDR 26, 20 to 160 mm.
 *
 * @source iso-4427-2
 * @source en-12201-2
 */
export const iso4427: PipeTable = {
  standard: "ISO 4427",
  source: "iso-4427-2",
  material: "PE",
  unit: "mm",
  ratingTemperature: 20,
  wallBasis: "minimum",
  insideDiameterBasis: "outside less two minimum walls",
  smallestWall: 2,
  grades: [
    { grade: "PE80", designStress: 6.4 },
    { grade: "PE100", designStress: 8 },
  ],
  // series, nominal size, outside diameter, wall, inside diameter, rating of each grade, how each figure was obtained
  rows: [
    ["SDR 7.4", "20 mm", 20, 3, 14, [20, 25], recalled],
    ["SDR 7.4", "25 mm", 25, 3.5, 18, [20, 25], recalled],
    ["SDR 7.4", "32 mm", 32, 4.4, 23.2, [20, 25], recalled],
    ["SDR 7.4", "40 mm", 40, 5.5, 29, [20, 25], recalled],
    ["SDR 7.4", "50 mm", 50, 6.9, 36.2, [20, 25], recalled],
    ["SDR 7.4", "63 mm", 63, 8.6, 45.8, [20, 25], recalled],
    ["SDR 7.4", "75 mm", 75, 10.3, 54.4, [20, 25], recalled],
    ["SDR 7.4", "90 mm", 90, 12.3, 65.4, [20, 25], recalled],
    ["SDR 7.4", "110 mm", 110, 15.1, 79.8, [20, 25], recalled],
    ["SDR 7.4", "125 mm", 125, 17.1, 90.8, [20, 25], recalled],
    ["SDR 7.4", "140 mm", 140, 19.2, 101.6, [20, 25], recalled],
    ["SDR 7.4", "160 mm", 160, 21.9, 116.2, [20, 25], recalled],
    ["SDR 9", "20 mm", 20, 2.3, 15.4, [16, 20], recalled],
    ["SDR 9", "25 mm", 25, 3, 19, [16, 20], recalled],
    ["SDR 9", "32 mm", 32, 3.6, 24.8, [16, 20], recalled],
    ["SDR 9", "40 mm", 40, 4.5, 31, [16, 20], recalled],
    ["SDR 9", "50 mm", 50, 5.6, 38.8, [16, 20], recalled],
    ["SDR 9", "63 mm", 63, 7.1, 48.8, [16, 20], recalled],
    ["SDR 9", "75 mm", 75, 8.4, 58.2, [16, 20], recalled],
    ["SDR 9", "90 mm", 90, 10.1, 69.8, [16, 20], recalled],
    ["SDR 9", "110 mm", 110, 12.3, 85.4, [16, 20], recalled],
    ["SDR 9", "125 mm", 125, 14, 97, [16, 20], recalled],
    ["SDR 9", "140 mm", 140, 15.7, 108.6, [16, 20], recalled],
    ["SDR 9", "160 mm", 160, 17.9, 124.2, [16, 20], recalled],
    ["SDR 11", "20 mm", 20, 2, 16, [12.5, 16], recalled],
    ["SDR 11", "25 mm", 25, 2.3, 20.4, [12.5, 16], recalled],
    ["SDR 11", "32 mm", 32, 3, 26, [12.5, 16], recalled],
    ["SDR 11", "40 mm", 40, 3.7, 32.6, [12.5, 16], recalled],
    ["SDR 11", "50 mm", 50, 4.6, 40.8, [12.5, 16], recalled],
    ["SDR 11", "63 mm", 63, 5.8, 51.4, [12.5, 16], recalled],
    ["SDR 11", "75 mm", 75, 6.8, 61.4, [12.5, 16], recalled],
    ["SDR 11", "90 mm", 90, 8.2, 73.6, [12.5, 16], recalled],
    ["SDR 11", "110 mm", 110, 10, 90, [12.5, 16], recalled],
    ["SDR 11", "125 mm", 125, 11.4, 102.2, [12.5, 16], recalled],
    ["SDR 11", "140 mm", 140, 12.7, 114.6, [12.5, 16], recalled],
    ["SDR 11", "160 mm", 160, 14.6, 130.8, [12.5, 16], recalled],
    ["SDR 13.6", "25 mm", 25, 2, 21, [10, 12.5], recalled],
    ["SDR 13.6", "32 mm", 32, 2.4, 27.2, [10, 12.5], recalled],
    ["SDR 13.6", "40 mm", 40, 3, 34, [10, 12.5], recalled],
    ["SDR 13.6", "50 mm", 50, 3.7, 42.6, [10, 12.5], recalled],
    ["SDR 13.6", "63 mm", 63, 4.7, 53.6, [10, 12.5], recalled],
    ["SDR 13.6", "75 mm", 75, 5.6, 63.8, [10, 12.5], recalled],
    ["SDR 13.6", "90 mm", 90, 6.7, 76.6, [10, 12.5], recalled],
    ["SDR 13.6", "110 mm", 110, 8.1, 93.8, [10, 12.5], recalled],
    ["SDR 13.6", "125 mm", 125, 9.2, 106.6, [10, 12.5], recalled],
    ["SDR 13.6", "140 mm", 140, 10.3, 119.4, [10, 12.5], recalled],
    ["SDR 13.6", "160 mm", 160, 11.8, 136.4, [10, 12.5], recalled],
    ["SDR 17", "32 mm", 32, 2, 28, [8, 10], recalled],
    ["SDR 17", "40 mm", 40, 2.4, 35.2, [8, 10], recalled],
    ["SDR 17", "50 mm", 50, 3, 44, [8, 10], recalled],
    ["SDR 17", "63 mm", 63, 3.8, 55.4, [8, 10], recalled],
    ["SDR 17", "75 mm", 75, 4.5, 66, [8, 10], recalled],
    ["SDR 17", "90 mm", 90, 5.4, 79.2, [8, 10], recalled],
    ["SDR 17", "110 mm", 110, 6.6, 96.8, [8, 10], recalled],
    ["SDR 17", "125 mm", 125, 7.4, 110.2, [8, 10], recalled],
    ["SDR 17", "140 mm", 140, 8.3, 123.4, [8, 10], recalled],
    ["SDR 17", "160 mm", 160, 9.5, 141, [8, 10], recalled],
    ["SDR 21", "40 mm", 40, 2, 36, [6, 8], recalled],
    ["SDR 21", "50 mm", 50, 2.4, 45.2, [6, 8], recalled],
    ["SDR 21", "63 mm", 63, 3, 57, [6, 8], recalled],
    ["SDR 21", "75 mm", 75, 3.6, 67.8, [6, 8], recalled],
    ["SDR 21", "90 mm", 90, 4.3, 81.4, [6, 8], recalled],
    ["SDR 21", "110 mm", 110, 5.3, 99.4, [6, 8], recalled],
    ["SDR 21", "125 mm", 125, 6, 113, [6, 8], recalled],
    ["SDR 21", "140 mm", 140, 6.7, 126.6, [6, 8], recalled],
    ["SDR 21", "160 mm", 160, 7.7, 144.6, [6, 8], recalled],
    ["SDR 26", "50 mm", 50, 2, 46, [5, 6], recalled],
    ["SDR 26", "63 mm", 63, 2.5, 58, [5, 6], recalled],
    ["SDR 26", "75 mm", 75, 2.9, 69.2, [5, 6], recalled],
    ["SDR 26", "90 mm", 90, 3.5, 83, [5, 6], recalled],
    ["SDR 26", "110 mm", 110, 4.2, 101.6, [5, 6], recalled],
    ["SDR 26", "125 mm", 125, 4.8, 115.4, [5, 6], recalled],
    ["SDR 26", "140 mm", 140, 5.4, 129.2, [5, 6], recalled],
    ["SDR 26", "160 mm", 160, 6.2, 147.6, [5, 6], recalled],
  ],
};
