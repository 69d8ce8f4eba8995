/**
 * ASTM D2241, pressure-rated PVC pipe of the SDR series: dimensions and pressure ratings for water at 73 °F.
 *
 * Over a third of the walls were read (in an engineering data library, a pipe note and a course table), the others are recalled.
 * The minimum wall is the outside diameter over the SDR, but not under 0.060 in. Inside diameter here is the outside
 * diameter less two minimum walls, the widest the standard allows: an average bore is about 0.02 in (up to 2 in) narrower.
 *
 * @module
 */
import type { PipeProvenance, PipeTable } from "../pipe-table.ts";

/** Dimensions and rating read; inside diameter from them. */
const wallRead: PipeProvenance = {
  outsideDiameter: "read",
  wall: "read",
  insideDiameter: "computed",
  pressureRating: "read",
};
/** Outside diameter and the rating of the SDR read; wall recalled. */
const wallRecalled: PipeProvenance = {
  outsideDiameter: "read",
  wall: "memory",
  insideDiameter: "computed",
  pressureRating: "read",
};
/** Outside diameter and wall recalled; the rating of the SDR read. */
const recalled: PipeProvenance = {
  outsideDiameter: "memory",
  wall: "memory",
  insideDiameter: "computed",
  pressureRating: "read",
};

/**
 * Pressure-rated PVC pipe, SDR 13.5 to SDR 41 (also sold as class 315 to class 100).
 *
 * @source astm-d2241
 */
export const astmD2241: PipeTable = {
  standard: "ASTM D2241",
  source: "astm-d2241",
  material: "PVC",
  unit: "in",
  ratingTemperature: 73,
  wallBasis: "minimum",
  insideDiameterBasis: "outside less two minimum walls",
  smallestWall: 0.06,
  grades: [{ grade: "PVC 1120", designStress: 2000 }],
  // series, nominal size, outside diameter, wall, inside diameter, rating of each grade, how each figure was obtained
  rows: [
    ["SDR 13.5", "1/2 in", 0.84, 0.062, 0.716, [315], wallRecalled],
    ["SDR 13.5", "3/4 in", 1.05, 0.078, 0.894, [315], wallRecalled],
    ["SDR 13.5", "1 in", 1.315, 0.097, 1.121, [315], wallRecalled],
    ["SDR 13.5", "1-1/4 in", 1.66, 0.123, 1.414, [315], wallRecalled],
    ["SDR 13.5", "1-1/2 in", 1.9, 0.141, 1.618, [315], wallRecalled],
    ["SDR 13.5", "2 in", 2.375, 0.176, 2.023, [315], wallRead],
    ["SDR 13.5", "2-1/2 in", 2.875, 0.213, 2.449, [315], wallRecalled],
    ["SDR 13.5", "3 in", 3.5, 0.259, 2.982, [315], wallRead],
    ["SDR 13.5", "4 in", 4.5, 0.333, 3.834, [315], wallRead],
    ["SDR 13.5", "5 in", 5.563, 0.412, 4.739, [315], recalled],
    ["SDR 13.5", "6 in", 6.625, 0.491, 5.643, [315], recalled],
    ["SDR 17", "3/4 in", 1.05, 0.062, 0.926, [250], wallRecalled],
    ["SDR 17", "1 in", 1.315, 0.077, 1.161, [250], wallRecalled],
    ["SDR 17", "1-1/4 in", 1.66, 0.098, 1.464, [250], wallRecalled],
    ["SDR 17", "1-1/2 in", 1.9, 0.112, 1.676, [250], wallRecalled],
    ["SDR 17", "2 in", 2.375, 0.14, 2.095, [250], wallRead],
    ["SDR 17", "2-1/2 in", 2.875, 0.169, 2.537, [250], wallRecalled],
    ["SDR 17", "3 in", 3.5, 0.206, 3.088, [250], wallRead],
    ["SDR 17", "4 in", 4.5, 0.265, 3.97, [250], wallRead],
    ["SDR 17", "5 in", 5.563, 0.327, 4.909, [250], recalled],
    ["SDR 17", "6 in", 6.625, 0.39, 5.845, [250], recalled],
    ["SDR 21", "3/4 in", 1.05, 0.06, 0.93, [200], wallRead],
    ["SDR 21", "1 in", 1.315, 0.063, 1.189, [200], wallRecalled],
    ["SDR 21", "1-1/4 in", 1.66, 0.079, 1.502, [200], wallRecalled],
    ["SDR 21", "1-1/2 in", 1.9, 0.09, 1.72, [200], wallRecalled],
    ["SDR 21", "2 in", 2.375, 0.113, 2.149, [200], wallRead],
    ["SDR 21", "2-1/2 in", 2.875, 0.137, 2.601, [200], wallRecalled],
    ["SDR 21", "3 in", 3.5, 0.167, 3.166, [200], wallRead],
    ["SDR 21", "4 in", 4.5, 0.214, 4.072, [200], wallRead],
    ["SDR 21", "5 in", 5.563, 0.265, 5.033, [200], recalled],
    ["SDR 21", "6 in", 6.625, 0.316, 5.993, [200], recalled],
    ["SDR 26", "1 in", 1.315, 0.06, 1.195, [160], wallRead],
    ["SDR 26", "1-1/4 in", 1.66, 0.064, 1.532, [160], wallRecalled],
    ["SDR 26", "1-1/2 in", 1.9, 0.073, 1.754, [160], wallRecalled],
    ["SDR 26", "2 in", 2.375, 0.091, 2.193, [160], wallRead],
    ["SDR 26", "2-1/2 in", 2.875, 0.11, 2.655, [160], wallRecalled],
    ["SDR 26", "3 in", 3.5, 0.135, 3.23, [160], wallRead],
    ["SDR 26", "4 in", 4.5, 0.173, 4.154, [160], wallRead],
    ["SDR 26", "5 in", 5.563, 0.214, 5.135, [160], recalled],
    ["SDR 26", "6 in", 6.625, 0.255, 6.115, [160], recalled],
    ["SDR 32.5", "1-1/4 in", 1.66, 0.06, 1.54, [125], wallRecalled],
    ["SDR 32.5", "1-1/2 in", 1.9, 0.06, 1.78, [125], wallRecalled],
    ["SDR 32.5", "2 in", 2.375, 0.073, 2.229, [125], wallRead],
    ["SDR 32.5", "2-1/2 in", 2.875, 0.088, 2.699, [125], wallRecalled],
    ["SDR 32.5", "3 in", 3.5, 0.108, 3.284, [125], wallRead],
    ["SDR 32.5", "4 in", 4.5, 0.138, 4.224, [125], wallRead],
    ["SDR 32.5", "5 in", 5.563, 0.171, 5.221, [125], recalled],
    ["SDR 32.5", "6 in", 6.625, 0.204, 6.217, [125], recalled],
    ["SDR 41", "3 in", 3.5, 0.085, 3.33, [100], wallRead],
    ["SDR 41", "4 in", 4.5, 0.11, 4.28, [100], wallRead],
    ["SDR 41", "5 in", 5.563, 0.136, 5.291, [100], recalled],
    ["SDR 41", "6 in", 6.625, 0.162, 6.301, [100], recalled],
  ],
};
