/**
 * ASTM D2239, polyethylene pipe held to its inside diameter (SIDR-PR): dimensions and ratings for water at 73 °F.
 *
 * The coil pipe of insert (barb) fittings. Inside diameters (those of schedule 40 steel) were read; walls are recalled and
 * agree with inside diameter over SIDR, not under 0.060 in. The standard sets no outside diameter: here it is the inside
 * diameter plus two minimum walls.
 *
 * @module
 */
import type { PipeProvenance, PipeTable } from "../pipe-table.ts";

/** Inside diameter read, wall and rating recalled, outside diameter from them. */
const wallRecalled: PipeProvenance = {
  outsideDiameter: "computed",
  wall: "memory",
  insideDiameter: "read",
  pressureRating: "memory",
};
/** Inside diameter, wall and rating recalled, outside diameter from them. */
const recalled: PipeProvenance = {
  outsideDiameter: "computed",
  wall: "memory",
  insideDiameter: "memory",
  pressureRating: "memory",
};

/**
 * Polyethylene pipe by inside diameter, SIDR 7 to SIDR 19.
 *
 * @source astm-d2239
 */
export const astmD2239: PipeTable = {
  standard: "ASTM D2239",
  source: "astm-d2239",
  material: "PE",
  unit: "in",
  ratingTemperature: 73,
  wallBasis: "minimum",
  insideDiameterBasis: "controlled",
  smallestWall: 0.06,
  grades: [
    { grade: "PE3408", designStress: 800 },
    { grade: "PE4710", designStress: 1000 },
  ],
  // series, nominal size, outside diameter, wall, inside diameter, rating of each grade, how each figure was obtained
  rows: [
    ["SIDR 7", "1/2 in", 0.8, 0.089, 0.622, [200, 250], wallRecalled],
    ["SIDR 7", "3/4 in", 1.06, 0.118, 0.824, [200, 250], wallRecalled],
    ["SIDR 7", "1 in", 1.349, 0.15, 1.049, [200, 250], wallRecalled],
    ["SIDR 7", "1-1/4 in", 1.774, 0.197, 1.38, [200, 250], wallRecalled],
    ["SIDR 7", "1-1/2 in", 2.07, 0.23, 1.61, [200, 250], wallRecalled],
    ["SIDR 7", "2 in", 2.657, 0.295, 2.067, [200, 250], wallRecalled],
    ["SIDR 9", "1/2 in", 0.76, 0.069, 0.622, [160, 200], wallRecalled],
    ["SIDR 9", "3/4 in", 1.008, 0.092, 0.824, [160, 200], wallRecalled],
    ["SIDR 9", "1 in", 1.283, 0.117, 1.049, [160, 200], wallRecalled],
    ["SIDR 9", "1-1/4 in", 1.686, 0.153, 1.38, [160, 200], wallRecalled],
    ["SIDR 9", "1-1/2 in", 1.968, 0.179, 1.61, [160, 200], wallRecalled],
    ["SIDR 9", "2 in", 2.527, 0.23, 2.067, [160, 200], wallRecalled],
    ["SIDR 11.5", "1/2 in", 0.742, 0.06, 0.622, [125, 160], wallRecalled],
    ["SIDR 11.5", "3/4 in", 0.968, 0.072, 0.824, [125, 160], wallRecalled],
    ["SIDR 11.5", "1 in", 1.231, 0.091, 1.049, [125, 160], wallRecalled],
    ["SIDR 11.5", "1-1/4 in", 1.62, 0.12, 1.38, [125, 160], wallRecalled],
    ["SIDR 11.5", "1-1/2 in", 1.89, 0.14, 1.61, [125, 160], wallRecalled],
    ["SIDR 11.5", "2 in", 2.427, 0.18, 2.067, [125, 160], wallRecalled],
    ["SIDR 11.5", "2-1/2 in", 2.899, 0.215, 2.469, [125, 160], recalled],
    ["SIDR 11.5", "3 in", 3.602, 0.267, 3.068, [125, 160], recalled],
    ["SIDR 11.5", "4 in", 4.726, 0.35, 4.026, [125, 160], recalled],
    ["SIDR 11.5", "6 in", 7.119, 0.527, 6.065, [125, 160], recalled],
    ["SIDR 15", "1/2 in", 0.742, 0.06, 0.622, [100, 125], wallRecalled],
    ["SIDR 15", "3/4 in", 0.944, 0.06, 0.824, [100, 125], wallRecalled],
    ["SIDR 15", "1 in", 1.189, 0.07, 1.049, [100, 125], wallRecalled],
    ["SIDR 15", "1-1/4 in", 1.564, 0.092, 1.38, [100, 125], wallRecalled],
    ["SIDR 15", "1-1/2 in", 1.824, 0.107, 1.61, [100, 125], wallRecalled],
    ["SIDR 15", "2 in", 2.343, 0.138, 2.067, [100, 125], wallRecalled],
    ["SIDR 15", "2-1/2 in", 2.799, 0.165, 2.469, [100, 125], recalled],
    ["SIDR 15", "3 in", 3.478, 0.205, 3.068, [100, 125], recalled],
    ["SIDR 15", "4 in", 4.562, 0.268, 4.026, [100, 125], recalled],
    ["SIDR 15", "6 in", 6.873, 0.404, 6.065, [100, 125], recalled],
    ["SIDR 19", "1/2 in", 0.742, 0.06, 0.622, [80, 100], wallRecalled],
    ["SIDR 19", "3/4 in", 0.944, 0.06, 0.824, [80, 100], wallRecalled],
    ["SIDR 19", "1 in", 1.169, 0.06, 1.049, [80, 100], wallRecalled],
    ["SIDR 19", "1-1/4 in", 1.526, 0.073, 1.38, [80, 100], wallRecalled],
    ["SIDR 19", "1-1/2 in", 1.78, 0.085, 1.61, [80, 100], wallRecalled],
    ["SIDR 19", "2 in", 2.285, 0.109, 2.067, [80, 100], wallRecalled],
    ["SIDR 19", "2-1/2 in", 2.729, 0.13, 2.469, [80, 100], recalled],
    ["SIDR 19", "3 in", 3.39, 0.161, 3.068, [80, 100], recalled],
    ["SIDR 19", "4 in", 4.45, 0.212, 4.026, [80, 100], recalled],
    ["SIDR 19", "6 in", 6.703, 0.319, 6.065, [80, 100], recalled],
  ],
};
