/**
 * One size of pipe as plain data in SI, made from a standard's table.
 *
 * @module
 */
import { requireList, requireObject } from "../numeric/index.ts";
import {
  bar,
  celsius,
  fahrenheit,
  type GaugePressure,
  InputError,
  inches,
  type Length,
  millimetres,
  psi,
  type Temperature,
} from "../units/index.ts";
import type { InsideDiameterBasis, PipeMaterial, PipeProvenance, PipeTable, WallBasis } from "./pipe-table.ts";

/** One size of pipe of one standard, series and grade of material. */
export interface PipeSize {
  /** Trade text that `findPipe` finds it by: "1-1/4 in PE3408 SIDR 15". */
  readonly name: string;
  /** Designation of the standard: "ASTM D2239". */
  readonly standard: string;
  /** What the pipe is made of. */
  readonly material: PipeMaterial;
  /** Grade of the material, which sets the rating: "PE4710". */
  readonly grade: string;
  /** Series of walls: "SCH 40", "SDR 21", "SIDR 15", "type L". */
  readonly series: string;
  /** Nominal size as text: "1-1/4 in", "63 mm". A name, not a diameter. */
  readonly nominal: string;
  /** Outside diameter, m. */
  readonly outsideDiameter: Length;
  /** Wall, m; see `wallBasis`. */
  readonly wall: Length;
  /** Whether the wall is the least allowed or the nominal one. */
  readonly wallBasis: WallBasis;
  /** Inside diameter, m; see `insideDiameterBasis`. */
  readonly insideDiameter: Length;
  /** Whether the inside diameter is an average, held by the standard, or what the outside diameter and wall leave. */
  readonly insideDiameterBasis: InsideDiameterBasis;
  /** Pressure rating for water at the rating temperature, Pa; null where the standard gives none (copper, steel). */
  readonly pressureRating: GaugePressure | null;
  /** Temperature of the rating, K; null where there is no rating. */
  readonly ratingTemperature: Temperature | null;
  /** Id of the standard in the bibliography. */
  readonly source: string;
  /** How each figure was obtained. */
  readonly provenance: PipeProvenance;
}

/**
 * The sizes of one standard's table as plain data in SI, one for each row and grade.
 *
 * @remarks
 * Takes the table as an argument, so an app that needs one standard carries one table.
 *
 * @param table - a table of this module, such as {@link astmD2239}
 * @returns the sizes in the table's order, 0 to 500 of them
 * @throws {@link units.InputError} where the table is not one, or holds a figure that is not finite
 *
 * @example
 * ```ts
 * import { astmB88, pipesOf } from "risingmain/pipe";
 * import { inInches, metres } from "risingmain/units";
 *
 * const inch = pipesOf(astmB88).find(({ series, nominal }) => series === "type M" && nominal === "1 in");
 * inInches(inch?.insideDiameter ?? metres(0)); // ≈ 1.055
 * ```
 *
 * @source derived: unit conversion of the table's own figures
 */
export function pipesOf(table: PipeTable): readonly PipeSize[] {
  requireObject("table", table);
  requireTexts("table", [table.standard, table.source, table.material, table.wallBasis, table.insideDiameterBasis]);
  requireList("table.grades", table.grades, 1, 10);
  requireList("table.rows", table.rows, 0, 1000);
  for (const grade of table.grades) {
    requireObject("table.grades", grade);
    requireTexts("table.grades", [grade.grade]);
  }
  const metric = table.unit === "mm";
  const length = metric ? millimetres : inches;
  const pressure = metric ? bar : psi;
  const ratingTemperature =
    table.ratingTemperature === null ? null : (metric ? celsius : fahrenheit)(table.ratingTemperature);
  return table.rows.flatMap((row) => {
    requireList("table.rows", row, 7, 7);
    const [series, nominal, outsideDiameter, wall, insideDiameter, ratings, provenance] = row;
    requireList("table.rows", ratings, 0, table.grades.length);
    requireTexts("table.rows", [series, nominal]);
    requireObject("table.rows", provenance);
    requireTexts("table.rows", [
      provenance.outsideDiameter,
      provenance.wall,
      provenance.insideDiameter,
      provenance.pressureRating ?? "",
    ]);
    return table.grades.map(({ grade }, i) => {
      const rating = ratings[i];
      return {
        name: `${nominal} ${grade} ${series}`,
        standard: table.standard,
        material: table.material,
        grade,
        series,
        nominal,
        outsideDiameter: length(outsideDiameter),
        wall: length(wall),
        wallBasis: table.wallBasis,
        insideDiameter: length(insideDiameter),
        insideDiameterBasis: table.insideDiameterBasis,
        pressureRating: rating === undefined ? null : pressure(rating),
        ratingTemperature: rating === undefined ? null : ratingTemperature,
        source: table.source,
        provenance,
      };
    });
  });
}

/** Refuses a table whose words are not words: a table may be the caller's own. */
function requireTexts(parameter: string, values: readonly unknown[]): void {
  for (const value of values) if (typeof value !== "string") throw new InputError(parameter, value, "a text");
}
