/**
 * Least equipment grounding conductor by the rating of the overcurrent device: National Electrical Code, Table 250.122.
 *
 * Source: `nfpa-70`, 2014 edition; the copper column to 1200 A also in a commentary on the 2017 edition. Provenance: read in
 * public reproductions; aluminium at 5000 and 6000 A restored to the 1200 kcmil that the reproduction says the code prints.
 *
 * @module
 */
import type { ConductorSize } from "./size.ts";

/** One step of the table. */
export interface GroundingRow {
  /** Rating of the overcurrent device, not exceeding, amperes. */
  readonly rating: number;
  /** Least copper grounding conductor. */
  readonly copper: ConductorSize;
  /** Least aluminium grounding conductor. */
  readonly aluminium: ConductorSize;
}

/**
 * The rows, small to large.
 *
 * @source nfpa-70, Table 250.122
 */
export const necTable250_122: readonly GroundingRow[] = [
  { rating: 15, copper: "14 AWG", aluminium: "12 AWG" },
  { rating: 20, copper: "12 AWG", aluminium: "10 AWG" },
  { rating: 60, copper: "10 AWG", aluminium: "8 AWG" },
  { rating: 100, copper: "8 AWG", aluminium: "6 AWG" },
  { rating: 200, copper: "6 AWG", aluminium: "4 AWG" },
  { rating: 300, copper: "4 AWG", aluminium: "2 AWG" },
  { rating: 400, copper: "3 AWG", aluminium: "1 AWG" },
  { rating: 500, copper: "2 AWG", aluminium: "1/0 AWG" },
  { rating: 600, copper: "1 AWG", aluminium: "2/0 AWG" },
  { rating: 800, copper: "1/0 AWG", aluminium: "3/0 AWG" },
  { rating: 1000, copper: "2/0 AWG", aluminium: "4/0 AWG" },
  { rating: 1200, copper: "3/0 AWG", aluminium: "250 kcmil" },
  { rating: 1600, copper: "4/0 AWG", aluminium: "350 kcmil" },
  { rating: 2000, copper: "250 kcmil", aluminium: "400 kcmil" },
  { rating: 2500, copper: "350 kcmil", aluminium: "600 kcmil" },
  { rating: 3000, copper: "400 kcmil", aluminium: "600 kcmil" },
  { rating: 4000, copper: "500 kcmil", aluminium: "750 kcmil" },
  { rating: 5000, copper: "700 kcmil", aluminium: "1200 kcmil" },
  { rating: 6000, copper: "800 kcmil", aluminium: "1200 kcmil" },
];
