/**
 * The form of a table of equivalent lengths by nominal size.
 *
 * @module
 */

/** A table of equivalent lengths. */
export interface EquivalentLengthTable {
  /** Id of its source in the bibliography. */
  readonly source: string;
  /** Hazen–Williams coefficient the lengths go with; null where the source does not say. */
  readonly hazenWilliamsC: number | null;
  /** Nominal sizes of the columns: "1-1/4 in". */
  readonly sizes: readonly string[];
  /** Feet of pipe for each fitting, one for each size; null where the source prints none. */
  readonly feet: Readonly<Record<string, readonly (number | null)[]>>;
}
