/**
 * Ampacity of single copper conductors in free air at 30 °C ambient: the values of National Electrical Code, Table 310.17.
 *
 * Source: `kuphaldt-lessons`, reference chapter, copper wire ampacity table, which reproduces the code's figures.
 * Provenance: read there; its own estimates (20 to 16 AWG) are left out. No aluminium figures were read.
 *
 * @module
 */
import type { AmpacityRow } from "./nec-310-16.ts";

/**
 * The rows, thin to thick.
 *
 * @source kuphaldt-lessons, reference chapter, copper wire ampacity table
 */
export const necTable310_17: readonly AmpacityRow[] = [
  { size: "14 AWG", copper: [25, 30, 35], aluminium: [null, null, null] },
  { size: "12 AWG", copper: [30, 35, 40], aluminium: [null, null, null] },
  { size: "10 AWG", copper: [40, 50, 55], aluminium: [null, null, null] },
  { size: "8 AWG", copper: [60, 70, 80], aluminium: [null, null, null] },
  { size: "6 AWG", copper: [80, 95, 105], aluminium: [null, null, null] },
  { size: "4 AWG", copper: [105, 125, 140], aluminium: [null, null, null] },
  { size: "2 AWG", copper: [140, 170, 190], aluminium: [null, null, null] },
  { size: "1 AWG", copper: [165, 195, 220], aluminium: [null, null, null] },
  { size: "1/0 AWG", copper: [195, 230, 260], aluminium: [null, null, null] },
  { size: "2/0 AWG", copper: [225, 265, 300], aluminium: [null, null, null] },
  { size: "3/0 AWG", copper: [260, 310, 350], aluminium: [null, null, null] },
  { size: "4/0 AWG", copper: [300, 360, 405], aluminium: [null, null, null] },
];
