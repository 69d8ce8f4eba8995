/**
 * Temperature factors of PE4710 pipe, as replaced by the handbook's errata sheet (read): steps by average yearly water
 * temperature, no credit for cold water. The table of 2008 that it replaces was steeper and gave 1.25 at 40 °F.
 *
 * @module
 */
import type { DeratingTable } from "./derating-table.ts";

/**
 * Temperature factors of PE4710.
 *
 * @source ppi-pe-handbook, errata of 2018 and 2020, table A.2
 */
export const pe4710Derating: DeratingTable = {
  source: "ppi-pe-handbook",
  unit: "°F",
  between: "steps",
  rows: [
    [80, 1],
    [90, 0.9],
    [100, 0.8],
    [110, 0.8],
    [120, 0.7],
    [130, 0.7],
    [140, 0.6],
  ],
};
