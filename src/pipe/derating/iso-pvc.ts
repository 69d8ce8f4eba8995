/**
 * Temperature factors of PVC-U pipe (recalled): steps.
 *
 * @module
 */
import type { DeratingTable } from "./derating-table.ts";

/**
 * Temperature factors of PVC-U.
 *
 * @source iso-1452-2, recalled
 */
export const isoPvcDerating: DeratingTable = {
  source: "iso-1452-2",
  unit: "°C",
  between: "steps",
  rows: [
    [25, 1],
    [35, 0.8],
    [45, 0.63],
  ],
};
