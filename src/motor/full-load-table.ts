/**
 * The shape of a table of full-load currents, the code's or an app's own.
 *
 * @module
 */

/** Full-load currents of motors by power and rated voltage. */
export interface FullLoadTable {
  /** Rated motor voltages, V, in the order of the columns. */
  readonly voltages: readonly number[];
  /** One row for each rated power, small to large. */
  readonly rows: readonly {
    /** Rated power, horsepower. */
    readonly horsepower: number;
    /** Full-load current at each voltage, A; null where the table has none. */
    readonly amperes: readonly (number | null)[];
  }[];
}
