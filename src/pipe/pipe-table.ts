/**
 * The form of a standard's table of pipe, as it is kept in `standards/`: the figures a standard prints, in its own units.
 *
 * @module
 */

/** What a pipe is made of. */
export type PipeMaterial = "PVC" | "PE" | "PEX" | "copper" | "steel";

/** How a figure was obtained: read in print or a reprint, computed from other figures, or recalled. */
export type FigureOrigin = "read" | "computed" | "memory";

/** How each figure of a pipe was obtained. */
export interface PipeProvenance {
  /** Of the outside diameter. */
  readonly outsideDiameter: FigureOrigin;
  /** Of the wall. */
  readonly wall: FigureOrigin;
  /** Of the inside diameter. */
  readonly insideDiameter: FigureOrigin;
  /** Of the pressure rating; null where the standard gives none. */
  readonly pressureRating: FigureOrigin | null;
}

/** Which wall a table prints: the least allowed, or the middle of a band. */
export type WallBasis = "minimum" | "nominal";

/** What the inside diameter of a table is. */
export type InsideDiameterBasis =
  | "average"
  | "controlled"
  | "outside less two minimum walls"
  | "outside less two nominal walls";

/** A grade of material that a table rates. */
export interface PipeGrade {
  /** Name of the grade: "PE4710". */
  readonly grade: string;
  /** Hydrostatic design stress, psi in a table of inches and MPa in one of millimetres; null where there is not one. */
  readonly designStress: number | null;
}

/** One line of a table: one size of one series, with a rating (psi or bar) for each grade of the table. */
export type PipeRow = readonly [
  series: string,
  nominal: string,
  outsideDiameter: number,
  wall: number,
  insideDiameter: number,
  ratings: readonly number[],
  provenance: PipeProvenance,
];

/** A standard's table of pipe in the units it is printed in. */
export interface PipeTable {
  /** Designation of the standard: "ASTM D2241". */
  readonly standard: string;
  /** Id of the standard in the bibliography. */
  readonly source: string;
  /** What the pipe is made of. */
  readonly material: PipeMaterial;
  /** Unit of the dimensions; ratings are in psi beside inches and in bar beside millimetres. */
  readonly unit: "in" | "mm";
  /** Temperature of the ratings, °F beside inches and °C beside millimetres; null where there are none. */
  readonly ratingTemperature: number | null;
  /** Which wall is printed. */
  readonly wallBasis: WallBasis;
  /** What the inside diameter is. */
  readonly insideDiameterBasis: InsideDiameterBasis;
  /** The wall no size may be thinner than, whatever its ratio, in the table's unit; 0 where there is no such rule. */
  readonly smallestWall: number;
  /** The grades rated, in the order of the ratings of a row. */
  readonly grades: readonly PipeGrade[];
  /** The sizes. */
  readonly rows: readonly PipeRow[];
}
