/**
 * Temperature factors of PEX tubing from its three ratings of 160, 100 and 80 psi at 73, 180 and 200 °F (recalled); in line
 * between them, which lies on the safe side of the bent curve.
 *
 * @module
 */
import type { DeratingTable } from "./derating-table.ts";

/**
 * Temperature factors of PEX.
 *
 * @source astm-f876: the ratings
 */
export const pexDerating: DeratingTable = {
  source: "astm-f876",
  unit: "°F",
  between: "line",
  rows: [
    [73, 1],
    [180, 0.625],
    [200, 0.5],
  ],
};
