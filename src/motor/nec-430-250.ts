/**
 * Full-load current of three-phase squirrel-cage and wound-rotor motors by rated power and voltage: National Electrical Code, Table 430.250.
 *
 * Source: `nfpa-70`, 2008 edition. Provenance: read in a public reproduction; the 230 V and 575 V columns equal the 2014 edition.
 * These currents size conductors and short-circuit protection (430.6); overloads go by the nameplate.
 *
 * @module
 */
import type { FullLoadTable } from "./full-load-table.ts";

/**
 * Rated motor voltages, and amperes at each by horsepower; null where the code lists none.
 *
 * @source nfpa-70, Table 430.250
 */
export const necTable430_250: FullLoadTable = {
  voltages: [115, 200, 208, 230, 460, 575],
  rows: [
    { horsepower: 0.5, amperes: [4.4, 2.5, 2.4, 2.2, 1.1, 0.9] },
    { horsepower: 0.75, amperes: [6.4, 3.7, 3.5, 3.2, 1.6, 1.3] },
    { horsepower: 1, amperes: [8.4, 4.8, 4.6, 4.2, 2.1, 1.7] },
    { horsepower: 1.5, amperes: [12, 6.9, 6.6, 6, 3, 2.4] },
    { horsepower: 2, amperes: [13.6, 7.8, 7.5, 6.8, 3.4, 2.7] },
    { horsepower: 3, amperes: [null, 11, 10.6, 9.6, 4.8, 3.9] },
    { horsepower: 5, amperes: [null, 17.5, 16.7, 15.2, 7.6, 6.1] },
    { horsepower: 7.5, amperes: [null, 25.3, 24.2, 22, 11, 9] },
    { horsepower: 10, amperes: [null, 32.2, 30.8, 28, 14, 11] },
    { horsepower: 15, amperes: [null, 48.3, 46.2, 42, 21, 17] },
    { horsepower: 20, amperes: [null, 62.1, 59.4, 54, 27, 22] },
    { horsepower: 25, amperes: [null, 78.2, 74.8, 68, 34, 27] },
    { horsepower: 30, amperes: [null, 92, 88, 80, 40, 32] },
    { horsepower: 40, amperes: [null, 120, 114, 104, 52, 41] },
    { horsepower: 50, amperes: [null, 150, 143, 130, 65, 52] },
    { horsepower: 60, amperes: [null, 177, 169, 154, 77, 62] },
    { horsepower: 75, amperes: [null, 221, 211, 192, 96, 77] },
    { horsepower: 100, amperes: [null, 285, 273, 248, 124, 99] },
    { horsepower: 125, amperes: [null, 359, 343, 312, 156, 125] },
    { horsepower: 150, amperes: [null, 414, 396, 360, 180, 144] },
    { horsepower: 200, amperes: [null, 552, 528, 480, 240, 192] },
  ],
};
