/**
 * Temperature factors of PVC pipe (PVC 1120). Read: 73 and 80 °F in a trade bulletin, 90 to 140 °F in a reprint of a maker's
 * table; other reprints have 0.51 for 0.50 and 0.31 for 0.30.
 *
 * @module
 */
import type { DeratingTable } from "./derating-table.ts";

/**
 * Temperature factors of PVC 1120.
 *
 * @source ppfa-ub3, and a reprint: 90 °F and above
 */
export const pvcDerating: DeratingTable = {
  source: "ppfa-ub3",
  unit: "°F",
  between: "line",
  rows: [
    [73, 1],
    [80, 0.88],
    [90, 0.75],
    [100, 0.62],
    [110, 0.5],
    [120, 0.4],
    [130, 0.3],
    [140, 0.22],
  ],
};
