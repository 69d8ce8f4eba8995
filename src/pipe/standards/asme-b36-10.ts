/**
 * ASME B36.10M, welded and seamless wrought steel pipe, schedules 40 and 80 (standard and extra strong up to 6 in):
 * dimensions. Galvanised pipe has them too.
 *
 * 1/2 to 4 in were read as coded in a general-purpose fluids library (metric figures, rounded inches); 5 and 6 in are
 * recalled. Walls are nominal; the mill may be 12.5 % under. The standard gives no pressure rating
 * (`metalPipeWorkingPressure`).
 *
 * @module
 */
import type { PipeProvenance, PipeTable } from "../pipe-table.ts";

/** Dimensions read in a fluids library. */
const readInLibrary: PipeProvenance = {
  outsideDiameter: "read",
  wall: "read",
  insideDiameter: "read",
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
 * Steel pipe of schedules 40 and 80, black or galvanised.
 *
 * @source asme-b36-10
 */
export const asmeB3610: PipeTable = {
  standard: "ASME B36.10M",
  source: "asme-b36-10",
  material: "steel",
  unit: "in",
  ratingTemperature: null,
  wallBasis: "nominal",
  insideDiameterBasis: "outside less two nominal walls",
  smallestWall: 0,
  grades: [{ grade: "carbon steel", designStress: null }],
  // series, nominal size, outside diameter, wall, inside diameter, rating of each grade, how each figure was obtained
  rows: [
    ["SCH 40", "1/2 in", 0.84, 0.109, 0.622, [], readInLibrary],
    ["SCH 40", "3/4 in", 1.05, 0.113, 0.824, [], readInLibrary],
    ["SCH 40", "1 in", 1.315, 0.133, 1.049, [], readInLibrary],
    ["SCH 40", "1-1/4 in", 1.66, 0.14, 1.38, [], readInLibrary],
    ["SCH 40", "1-1/2 in", 1.9, 0.145, 1.61, [], readInLibrary],
    ["SCH 40", "2 in", 2.375, 0.154, 2.067, [], readInLibrary],
    ["SCH 40", "2-1/2 in", 2.875, 0.203, 2.469, [], readInLibrary],
    ["SCH 40", "3 in", 3.5, 0.216, 3.068, [], readInLibrary],
    ["SCH 40", "3-1/2 in", 4, 0.226, 3.548, [], readInLibrary],
    ["SCH 40", "4 in", 4.5, 0.237, 4.026, [], readInLibrary],
    ["SCH 40", "5 in", 5.563, 0.258, 5.047, [], recalled],
    ["SCH 40", "6 in", 6.625, 0.28, 6.065, [], recalled],
    ["SCH 80", "1/2 in", 0.84, 0.147, 0.546, [], readInLibrary],
    ["SCH 80", "3/4 in", 1.05, 0.154, 0.742, [], readInLibrary],
    ["SCH 80", "1 in", 1.315, 0.179, 0.957, [], readInLibrary],
    ["SCH 80", "1-1/4 in", 1.66, 0.191, 1.278, [], readInLibrary],
    ["SCH 80", "1-1/2 in", 1.9, 0.2, 1.5, [], readInLibrary],
    ["SCH 80", "2 in", 2.375, 0.218, 1.939, [], readInLibrary],
    ["SCH 80", "2-1/2 in", 2.875, 0.276, 2.323, [], readInLibrary],
    ["SCH 80", "3 in", 3.5, 0.3, 2.9, [], readInLibrary],
    ["SCH 80", "3-1/2 in", 4, 0.318, 3.364, [], readInLibrary],
    ["SCH 80", "4 in", 4.5, 0.337, 3.826, [], readInLibrary],
    ["SCH 80", "5 in", 5.563, 0.375, 4.813, [], recalled],
    ["SCH 80", "6 in", 6.625, 0.432, 5.761, [], recalled],
  ],
};
