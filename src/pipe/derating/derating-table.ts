/**
 * The form of a table of temperature factors for pressure ratings.
 *
 * @module
 */

/** A temperature and the factor there. */
export type DeratingRow = readonly [temperature: number, factor: number];

/** A table of temperature factors. */
export interface DeratingTable {
  /** Id of its source in the bibliography. */
  readonly source: string;
  /** Unit of its temperatures. */
  readonly unit: "°F" | "°C";
  /** "steps": a factor holds from the temperature before up to its own. "line": in line between the printed temperatures. */
  readonly between: "steps" | "line";
  /** Temperature and factor, rising; the first holds for all that is colder, nothing is rated above the last. */
  readonly rows: readonly [DeratingRow, ...DeratingRow[]];
}
