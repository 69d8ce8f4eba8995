/**
 * Temperature factors of PE3408 pipe (read): steps, none printed above 100 °F, where the material decides.
 *
 * @module
 */
import type { DeratingTable } from "./derating-table.ts";

/**
 * Temperature factors of PE3408.
 *
 * @source awwa-m55, table 4-6
 */
export const pe3408Derating: DeratingTable = {
  source: "awwa-m55",
  unit: "°F",
  between: "steps",
  rows: [
    [80, 1],
    [90, 0.9],
    [100, 0.8],
  ],
};
