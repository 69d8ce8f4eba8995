/**
 * Temperature factors of PE80 and PE100 pipe for 50 years (recalled); in line between, as the standard allows.
 *
 * @module
 */
import type { DeratingTable } from "./derating-table.ts";

/**
 * Temperature factors of PE80 and PE100.
 *
 * @source en-12201-2, annex of part 1, recalled
 */
export const isoPeDerating: DeratingTable = {
  source: "en-12201-2",
  unit: "°C",
  between: "line",
  rows: [
    [20, 1],
    [30, 0.87],
    [40, 0.74],
  ],
};
