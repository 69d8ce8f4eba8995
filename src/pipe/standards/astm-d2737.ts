/**
 * ASTM D2737, polyethylene tubing of copper tube size (CTS): dimensions and ratings for water at 73 °F.
 *
 * Outside diameters and ratings were read; walls are recalled and agree with outside diameter over SDR, not under 0.062 in.
 * Inside diameter is the outside diameter less two minimum walls.
 *
 * @module
 */
import type { PipeProvenance, PipeTable } from "../pipe-table.ts";

/** Outside diameter and rating read; wall recalled; inside diameter from them. */
const wallRecalled: PipeProvenance = {
  outsideDiameter: "read",
  wall: "memory",
  insideDiameter: "computed",
  pressureRating: "read",
};

/**
 * Polyethylene tubing of copper tube size, SDR 9 and SDR 11.
 *
 * @source astm-d2737
 */
export const astmD2737: PipeTable = {
  standard: "ASTM D2737",
  source: "astm-d2737",
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
    ["SDR 9 CTS", "1/2 in", 0.625, 0.069, 0.487, [200, 250], wallRecalled],
    ["SDR 9 CTS", "3/4 in", 0.875, 0.097, 0.681, [200, 250], wallRecalled],
    ["SDR 9 CTS", "1 in", 1.125, 0.125, 0.875, [200, 250], wallRecalled],
    ["SDR 9 CTS", "1-1/4 in", 1.375, 0.153, 1.069, [200, 250], wallRecalled],
    ["SDR 9 CTS", "1-1/2 in", 1.625, 0.181, 1.263, [200, 250], wallRecalled],
    ["SDR 9 CTS", "2 in", 2.125, 0.236, 1.653, [200, 250], wallRecalled],
    ["SDR 11 CTS", "1/2 in", 0.625, 0.062, 0.501, [160, 200], wallRecalled],
    ["SDR 11 CTS", "3/4 in", 0.875, 0.08, 0.715, [160, 200], wallRecalled],
    ["SDR 11 CTS", "1 in", 1.125, 0.102, 0.921, [160, 200], wallRecalled],
    ["SDR 11 CTS", "1-1/4 in", 1.375, 0.125, 1.125, [160, 200], wallRecalled],
    ["SDR 11 CTS", "1-1/2 in", 1.625, 0.148, 1.329, [160, 200], wallRecalled],
    ["SDR 11 CTS", "2 in", 2.125, 0.193, 1.739, [160, 200], wallRecalled],
  ],
};
