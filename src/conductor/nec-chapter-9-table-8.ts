/**
 * Direct-current resistance of conductors at 75 °C: National Electrical Code, Chapter 9, Table 8.
 *
 * Source: `nfpa-70`, 2014 edition. Provenance: read in public reproductions, every row from 6 AWG up and every solid row
 * from 14 to 8 AWG in two of them. Figures as printed there: circular mils and ohms per 1000 ft.
 *
 * @module
 */
import type { ConductorSize } from "./size.ts";

/** One row of the table: a size in one stranding. */
export interface NecTable8Row {
  /** Trade size. */
  readonly size: ConductorSize;
  /** Area as the code prints it, circular mils. */
  readonly circularMils: number;
  /** Number of strands; 1 for a solid conductor. */
  readonly strands: number;
  /** Resistance of uncoated copper, ohms per 1000 ft at 75 °C. */
  readonly copper: number;
  /** Resistance of coated (tinned) copper, ohms per 1000 ft at 75 °C. */
  readonly coatedCopper: number;
  /** Resistance of aluminium, ohms per 1000 ft at 75 °C. */
  readonly aluminium: number;
}

/**
 * The rows, thin to thick; the solid row of a size comes before its stranded one.
 *
 * @source nfpa-70, Chapter 9 Table 8
 */
export const necChapter9Table8: readonly NecTable8Row[] = [
  { size: "18 AWG", circularMils: 1620, strands: 1, copper: 7.77, coatedCopper: 8.08, aluminium: 12.8 },
  { size: "18 AWG", circularMils: 1620, strands: 7, copper: 7.95, coatedCopper: 8.45, aluminium: 13.1 },
  { size: "16 AWG", circularMils: 2580, strands: 1, copper: 4.89, coatedCopper: 5.08, aluminium: 8.05 },
  { size: "16 AWG", circularMils: 2580, strands: 7, copper: 4.99, coatedCopper: 5.29, aluminium: 8.21 },
  { size: "14 AWG", circularMils: 4110, strands: 1, copper: 3.07, coatedCopper: 3.19, aluminium: 5.06 },
  { size: "14 AWG", circularMils: 4110, strands: 7, copper: 3.14, coatedCopper: 3.26, aluminium: 5.17 },
  { size: "12 AWG", circularMils: 6530, strands: 1, copper: 1.93, coatedCopper: 2.01, aluminium: 3.18 },
  { size: "12 AWG", circularMils: 6530, strands: 7, copper: 1.98, coatedCopper: 2.05, aluminium: 3.25 },
  { size: "10 AWG", circularMils: 10380, strands: 1, copper: 1.21, coatedCopper: 1.26, aluminium: 2 },
  { size: "10 AWG", circularMils: 10380, strands: 7, copper: 1.24, coatedCopper: 1.29, aluminium: 2.04 },
  { size: "8 AWG", circularMils: 16510, strands: 1, copper: 0.764, coatedCopper: 0.786, aluminium: 1.26 },
  { size: "8 AWG", circularMils: 16510, strands: 7, copper: 0.778, coatedCopper: 0.809, aluminium: 1.28 },
  { size: "6 AWG", circularMils: 26240, strands: 7, copper: 0.491, coatedCopper: 0.51, aluminium: 0.808 },
  { size: "4 AWG", circularMils: 41740, strands: 7, copper: 0.308, coatedCopper: 0.321, aluminium: 0.508 },
  { size: "3 AWG", circularMils: 52620, strands: 7, copper: 0.245, coatedCopper: 0.254, aluminium: 0.403 },
  { size: "2 AWG", circularMils: 66360, strands: 7, copper: 0.194, coatedCopper: 0.201, aluminium: 0.319 },
  { size: "1 AWG", circularMils: 83690, strands: 19, copper: 0.154, coatedCopper: 0.16, aluminium: 0.253 },
  { size: "1/0 AWG", circularMils: 105600, strands: 19, copper: 0.122, coatedCopper: 0.127, aluminium: 0.201 },
  { size: "2/0 AWG", circularMils: 133100, strands: 19, copper: 0.0967, coatedCopper: 0.101, aluminium: 0.159 },
  { size: "3/0 AWG", circularMils: 167800, strands: 19, copper: 0.0766, coatedCopper: 0.0797, aluminium: 0.126 },
  { size: "4/0 AWG", circularMils: 211600, strands: 19, copper: 0.0608, coatedCopper: 0.0626, aluminium: 0.1 },
  { size: "250 kcmil", circularMils: 250000, strands: 37, copper: 0.0515, coatedCopper: 0.0535, aluminium: 0.0847 },
  { size: "300 kcmil", circularMils: 300000, strands: 37, copper: 0.0429, coatedCopper: 0.0446, aluminium: 0.0707 },
  { size: "350 kcmil", circularMils: 350000, strands: 37, copper: 0.0367, coatedCopper: 0.0382, aluminium: 0.0605 },
  { size: "400 kcmil", circularMils: 400000, strands: 37, copper: 0.0321, coatedCopper: 0.0331, aluminium: 0.0529 },
  { size: "500 kcmil", circularMils: 500000, strands: 37, copper: 0.0258, coatedCopper: 0.0265, aluminium: 0.0424 },
  { size: "600 kcmil", circularMils: 600000, strands: 61, copper: 0.0214, coatedCopper: 0.0223, aluminium: 0.0353 },
  { size: "700 kcmil", circularMils: 700000, strands: 61, copper: 0.0184, coatedCopper: 0.0189, aluminium: 0.0303 },
  { size: "750 kcmil", circularMils: 750000, strands: 61, copper: 0.0171, coatedCopper: 0.0176, aluminium: 0.0282 },
];
