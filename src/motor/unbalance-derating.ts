/**
 * Derating of three-phase motors by voltage unbalance: readings of the curve of NEMA MG 1.
 *
 * Source: `nema-mg-1`, as tabulated by an engineering reference. Provenance: read there; 1.0 % is not printed and stands here
 * as the end of the flat part. Other readings of the curve give 0.88 at 3 % and 0.75 at 5 %.
 *
 * @module
 */

/** One reading of the curve. */
export interface UnbalanceDeratingRow {
  /** Voltage unbalance, %. */
  readonly percent: number;
  /** Share of rated power. */
  readonly factor: number;
}

/**
 * The readings, small to large.
 *
 * @source nema-mg-1, derating curve for unbalanced voltages
 */
export const unbalanceDerating: readonly UnbalanceDeratingRow[] = [
  { percent: 0, factor: 1 },
  { percent: 0.5, factor: 1 },
  { percent: 1, factor: 1 },
  { percent: 1.5, factor: 0.97 },
  { percent: 2, factor: 0.95 },
  { percent: 2.5, factor: 0.93 },
  { percent: 3, factor: 0.89 },
  { percent: 3.5, factor: 0.85 },
  { percent: 4, factor: 0.82 },
  { percent: 4.5, factor: 0.78 },
  { percent: 5, factor: 0.76 },
];
