/**
 * Bores of insert (barb) fittings for polyethylene pipe held to its inside diameter.
 *
 * Common practice, no source: usual bores of moulded fittings, about 0.16 to 0.27 in under the pipe's own bore. They differ by
 * maker and material, metal ones being wider. Measure one with a calliper where the loss matters.
 *
 * @module
 */

/** One size: inches. */
export type InsertBoreRow = readonly [nominal: string, pipeBore: number, insertBore: number];

/**
 * Nominal size, inside diameter of the pipe, bore of the insert, in inches.
 *
 * @source common practice: bores of moulded fittings
 */
export const insertBores: readonly InsertBoreRow[] = [
  ["1/2 in", 0.622, 0.46],
  ["3/4 in", 0.824, 0.65],
  ["1 in", 1.049, 0.86],
  ["1-1/4 in", 1.38, 1.15],
  ["1-1/2 in", 1.61, 1.37],
  ["2 in", 2.067, 1.8],
];
