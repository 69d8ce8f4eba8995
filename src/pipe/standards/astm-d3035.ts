/**
 * ASTM D3035, polyethylene pipe of iron pipe size held to its outside diameter (DR-PR): dimensions and ratings for water
 * at 73 °F.
 *
 * Walls were read in a reprint for DR 7 to DR 13.5 up to 3 in; the others are outside diameter over DR, to the nearest
 * 0.001 in as in the rows read. PE4710 ratings were read; PE3408 ratings are 2 S / (DR − 1) with S = 800 psi. Inside
 * diameter is the outside diameter less two minimum walls.
 *
 * @module
 */
import type { PipeProvenance, PipeTable } from "../pipe-table.ts";

/** Diameter and wall read in a reprint; inside diameter and the PE3408 rating from them. */
const readInReprint: PipeProvenance = {
  outsideDiameter: "read",
  wall: "read",
  insideDiameter: "computed",
  pressureRating: "computed",
};
/** Outside diameter recalled; the rest from it and the DR. */
const wallComputed: PipeProvenance = {
  outsideDiameter: "memory",
  wall: "computed",
  insideDiameter: "computed",
  pressureRating: "computed",
};

/**
 * Polyethylene pipe of iron pipe size, DR 7 to DR 21.
 *
 * @source astm-d3035
 */
export const astmD3035: PipeTable = {
  standard: "ASTM D3035",
  source: "astm-d3035",
  material: "PE",
  unit: "in",
  ratingTemperature: 73,
  wallBasis: "minimum",
  insideDiameterBasis: "outside less two minimum walls",
  smallestWall: 0.062,
  grades: [
    { grade: "PE3408", designStress: 800 },
    { grade: "PE4710", designStress: 1000 },
  ],
  // series, nominal size, outside diameter, wall, inside diameter, rating of each grade, how each figure was obtained
  rows: [
    ["DR 7", "1/2 in", 0.84, 0.12, 0.6, [267, 333], wallComputed],
    ["DR 7", "3/4 in", 1.05, 0.15, 0.75, [267, 333], readInReprint],
    ["DR 7", "1 in", 1.315, 0.188, 0.939, [267, 333], readInReprint],
    ["DR 7", "1-1/4 in", 1.66, 0.237, 1.186, [267, 333], readInReprint],
    ["DR 7", "1-1/2 in", 1.9, 0.271, 1.358, [267, 333], readInReprint],
    ["DR 7", "2 in", 2.375, 0.339, 1.697, [267, 333], readInReprint],
    ["DR 7", "3 in", 3.5, 0.5, 2.5, [267, 333], wallComputed],
    ["DR 7", "4 in", 4.5, 0.643, 3.214, [267, 333], wallComputed],
    ["DR 7", "6 in", 6.625, 0.946, 4.733, [267, 333], wallComputed],
    ["DR 9", "1/2 in", 0.84, 0.093, 0.654, [200, 250], wallComputed],
    ["DR 9", "3/4 in", 1.05, 0.117, 0.816, [200, 250], readInReprint],
    ["DR 9", "1 in", 1.315, 0.146, 1.023, [200, 250], readInReprint],
    ["DR 9", "1-1/4 in", 1.66, 0.184, 1.292, [200, 250], readInReprint],
    ["DR 9", "1-1/2 in", 1.9, 0.211, 1.478, [200, 250], readInReprint],
    ["DR 9", "2 in", 2.375, 0.264, 1.847, [200, 250], readInReprint],
    ["DR 9", "3 in", 3.5, 0.389, 2.722, [200, 250], readInReprint],
    ["DR 9", "4 in", 4.5, 0.5, 3.5, [200, 250], wallComputed],
    ["DR 9", "6 in", 6.625, 0.736, 5.153, [200, 250], wallComputed],
    ["DR 11", "1/2 in", 0.84, 0.076, 0.688, [160, 200], wallComputed],
    ["DR 11", "3/4 in", 1.05, 0.095, 0.86, [160, 200], readInReprint],
    ["DR 11", "1 in", 1.315, 0.12, 1.075, [160, 200], readInReprint],
    ["DR 11", "1-1/4 in", 1.66, 0.151, 1.358, [160, 200], readInReprint],
    ["DR 11", "1-1/2 in", 1.9, 0.173, 1.554, [160, 200], readInReprint],
    ["DR 11", "2 in", 2.375, 0.216, 1.943, [160, 200], readInReprint],
    ["DR 11", "3 in", 3.5, 0.318, 2.864, [160, 200], readInReprint],
    ["DR 11", "4 in", 4.5, 0.409, 3.682, [160, 200], wallComputed],
    ["DR 11", "6 in", 6.625, 0.602, 5.421, [160, 200], wallComputed],
    ["DR 13.5", "1/2 in", 0.84, 0.062, 0.716, [128, 160], wallComputed],
    ["DR 13.5", "3/4 in", 1.05, 0.078, 0.894, [128, 160], readInReprint],
    ["DR 13.5", "1 in", 1.315, 0.097, 1.121, [128, 160], readInReprint],
    ["DR 13.5", "1-1/4 in", 1.66, 0.123, 1.414, [128, 160], readInReprint],
    ["DR 13.5", "1-1/2 in", 1.9, 0.141, 1.618, [128, 160], readInReprint],
    ["DR 13.5", "2 in", 2.375, 0.176, 2.023, [128, 160], readInReprint],
    ["DR 13.5", "3 in", 3.5, 0.259, 2.982, [128, 160], readInReprint],
    ["DR 13.5", "4 in", 4.5, 0.333, 3.834, [128, 160], wallComputed],
    ["DR 13.5", "6 in", 6.625, 0.491, 5.643, [128, 160], wallComputed],
    ["DR 17", "3/4 in", 1.05, 0.062, 0.926, [100, 125], wallComputed],
    ["DR 17", "1 in", 1.315, 0.077, 1.161, [100, 125], wallComputed],
    ["DR 17", "1-1/4 in", 1.66, 0.098, 1.464, [100, 125], wallComputed],
    ["DR 17", "1-1/2 in", 1.9, 0.112, 1.676, [100, 125], wallComputed],
    ["DR 17", "2 in", 2.375, 0.14, 2.095, [100, 125], wallComputed],
    ["DR 17", "3 in", 3.5, 0.206, 3.088, [100, 125], wallComputed],
    ["DR 17", "4 in", 4.5, 0.265, 3.97, [100, 125], wallComputed],
    ["DR 17", "6 in", 6.625, 0.39, 5.845, [100, 125], wallComputed],
    ["DR 21", "1 in", 1.315, 0.063, 1.189, [80, 100], wallComputed],
    ["DR 21", "1-1/4 in", 1.66, 0.079, 1.502, [80, 100], wallComputed],
    ["DR 21", "1-1/2 in", 1.9, 0.09, 1.72, [80, 100], wallComputed],
    ["DR 21", "2 in", 2.375, 0.113, 2.149, [80, 100], wallComputed],
    ["DR 21", "3 in", 3.5, 0.167, 3.166, [80, 100], wallComputed],
    ["DR 21", "4 in", 4.5, 0.214, 4.072, [80, 100], wallComputed],
    ["DR 21", "6 in", 6.625, 0.315, 5.995, [80, 100], wallComputed],
  ],
};
