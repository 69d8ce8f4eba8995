/**
 * Full-load current of single-phase alternating-current motors by rated power and voltage: National Electrical Code, Table 430.248.
 *
 * Source: `nfpa-70`, 2014 edition. Provenance: read in a public transcription; a reproduction of the 1999 edition prints the same 48 values.
 * These currents size conductors and short-circuit protection (430.6); overloads go by the nameplate.
 *
 * @module
 */
import type { FullLoadTable } from "./full-load-table.ts";

/**
 * Rated motor voltages, and amperes at each by horsepower; null where the code lists none.
 *
 * @source nfpa-70, Table 430.248
 */
export const necTable430_248: FullLoadTable = {
  voltages: [115, 200, 208, 230],
  rows: [
    { horsepower: 1 / 6, amperes: [4.4, 2.5, 2.4, 2.2] },
    { horsepower: 0.25, amperes: [5.8, 3.3, 3.2, 2.9] },
    { horsepower: 1 / 3, amperes: [7.2, 4.1, 4, 3.6] },
    { horsepower: 0.5, amperes: [9.8, 5.6, 5.4, 4.9] },
    { horsepower: 0.75, amperes: [13.8, 7.9, 7.6, 6.9] },
    { horsepower: 1, amperes: [16, 9.2, 8.8, 8] },
    { horsepower: 1.5, amperes: [20, 11.5, 11, 10] },
    { horsepower: 2, amperes: [24, 13.8, 13.2, 12] },
    { horsepower: 3, amperes: [34, 19.6, 18.7, 17] },
    { horsepower: 5, amperes: [56, 32.2, 30.8, 28] },
    { horsepower: 7.5, amperes: [80, 46, 44, 40] },
    { horsepower: 10, amperes: [100, 57.5, 55, 50] },
  ],
};
