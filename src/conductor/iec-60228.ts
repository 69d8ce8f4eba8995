/**
 * Greatest direct-current resistance of metric conductors at 20 °C: IEC 60228, Tables 1 to 3.
 *
 * Source: `iec-60228`, 2004 edition. Provenance: read in three reproductions, compared; 630 mm² tinned class 2 is 0.0286 in
 * two of them and 0.0289 in one. Figures as printed there: ohms per kilometre.
 *
 * @module
 */

/** One nominal area in one class. */
export interface Iec60228Row {
  /** Nominal area, mm². */
  readonly area: number;
  /** Plain copper, ohms per kilometre at 20 °C; null where the standard lists none. */
  readonly copper: number | null;
  /** Metal-coated (tinned) copper, ohms per kilometre at 20 °C; null where the standard lists none. */
  readonly coatedCopper: number | null;
  /** Aluminium, ohms per kilometre at 20 °C; null where the standard lists none. */
  readonly aluminium: number | null;
}

/**
 * Class 1: solid conductors.
 *
 * @source iec-60228, class 1
 */
export const iec60228Class1: readonly Iec60228Row[] = [
  { area: 0.5, copper: 36, coatedCopper: 36.7, aluminium: null },
  { area: 0.75, copper: 24.5, coatedCopper: 24.8, aluminium: null },
  { area: 1, copper: 18.1, coatedCopper: 18.2, aluminium: null },
  { area: 1.5, copper: 12.1, coatedCopper: 12.2, aluminium: null },
  { area: 2.5, copper: 7.41, coatedCopper: 7.56, aluminium: null },
  { area: 4, copper: 4.61, coatedCopper: 4.7, aluminium: null },
  { area: 6, copper: 3.08, coatedCopper: 3.11, aluminium: null },
  { area: 10, copper: 1.83, coatedCopper: 1.84, aluminium: 3.08 },
  { area: 16, copper: 1.15, coatedCopper: 1.16, aluminium: 1.91 },
  { area: 25, copper: 0.727, coatedCopper: null, aluminium: 1.2 },
  { area: 35, copper: 0.524, coatedCopper: null, aluminium: 0.868 },
  { area: 50, copper: 0.387, coatedCopper: null, aluminium: 0.641 },
  { area: 70, copper: 0.268, coatedCopper: null, aluminium: 0.443 },
  { area: 95, copper: 0.193, coatedCopper: null, aluminium: 0.32 },
  { area: 120, copper: 0.153, coatedCopper: null, aluminium: 0.253 },
  { area: 150, copper: 0.124, coatedCopper: null, aluminium: 0.206 },
  { area: 185, copper: 0.101, coatedCopper: null, aluminium: 0.164 },
  { area: 240, copper: 0.0775, coatedCopper: null, aluminium: 0.125 },
  { area: 300, copper: 0.062, coatedCopper: null, aluminium: 0.1 },
  { area: 400, copper: 0.0465, coatedCopper: null, aluminium: 0.0778 },
];

/**
 * Class 2: stranded conductors.
 *
 * @source iec-60228, class 2
 */
export const iec60228Class2: readonly Iec60228Row[] = [
  { area: 0.5, copper: 36, coatedCopper: 36.7, aluminium: null },
  { area: 0.75, copper: 24.5, coatedCopper: 24.8, aluminium: null },
  { area: 1, copper: 18.1, coatedCopper: 18.2, aluminium: null },
  { area: 1.5, copper: 12.1, coatedCopper: 12.2, aluminium: null },
  { area: 2.5, copper: 7.41, coatedCopper: 7.56, aluminium: null },
  { area: 4, copper: 4.61, coatedCopper: 4.7, aluminium: null },
  { area: 6, copper: 3.08, coatedCopper: 3.11, aluminium: null },
  { area: 10, copper: 1.83, coatedCopper: 1.84, aluminium: 3.08 },
  { area: 16, copper: 1.15, coatedCopper: 1.16, aluminium: 1.91 },
  { area: 25, copper: 0.727, coatedCopper: 0.734, aluminium: 1.2 },
  { area: 35, copper: 0.524, coatedCopper: 0.529, aluminium: 0.868 },
  { area: 50, copper: 0.387, coatedCopper: 0.391, aluminium: 0.641 },
  { area: 70, copper: 0.268, coatedCopper: 0.27, aluminium: 0.443 },
  { area: 95, copper: 0.193, coatedCopper: 0.195, aluminium: 0.32 },
  { area: 120, copper: 0.153, coatedCopper: 0.154, aluminium: 0.253 },
  { area: 150, copper: 0.124, coatedCopper: 0.126, aluminium: 0.206 },
  { area: 185, copper: 0.0991, coatedCopper: 0.1, aluminium: 0.164 },
  { area: 240, copper: 0.0754, coatedCopper: 0.0762, aluminium: 0.125 },
  { area: 300, copper: 0.0601, coatedCopper: 0.0607, aluminium: 0.1 },
  { area: 400, copper: 0.047, coatedCopper: 0.0475, aluminium: 0.0778 },
  { area: 500, copper: 0.0366, coatedCopper: 0.0369, aluminium: 0.0605 },
  { area: 630, copper: 0.0283, coatedCopper: 0.0286, aluminium: 0.0469 },
];

/**
 * Class 5: flexible conductors; class 6 has the same limits.
 *
 * @source iec-60228, class 5
 */
export const iec60228Class5: readonly Iec60228Row[] = [
  { area: 0.5, copper: 39, coatedCopper: 40.1, aluminium: null },
  { area: 0.75, copper: 26, coatedCopper: 26.7, aluminium: null },
  { area: 1, copper: 19.5, coatedCopper: 20, aluminium: null },
  { area: 1.5, copper: 13.3, coatedCopper: 13.7, aluminium: null },
  { area: 2.5, copper: 7.98, coatedCopper: 8.21, aluminium: null },
  { area: 4, copper: 4.95, coatedCopper: 5.09, aluminium: null },
  { area: 6, copper: 3.3, coatedCopper: 3.39, aluminium: null },
  { area: 10, copper: 1.91, coatedCopper: 1.95, aluminium: null },
  { area: 16, copper: 1.21, coatedCopper: 1.24, aluminium: null },
  { area: 25, copper: 0.78, coatedCopper: 0.795, aluminium: null },
  { area: 35, copper: 0.554, coatedCopper: 0.565, aluminium: null },
  { area: 50, copper: 0.386, coatedCopper: 0.393, aluminium: null },
  { area: 70, copper: 0.272, coatedCopper: 0.277, aluminium: null },
  { area: 95, copper: 0.206, coatedCopper: 0.21, aluminium: null },
  { area: 120, copper: 0.161, coatedCopper: 0.164, aluminium: null },
  { area: 150, copper: 0.129, coatedCopper: 0.132, aluminium: null },
  { area: 185, copper: 0.106, coatedCopper: 0.108, aluminium: null },
  { area: 240, copper: 0.0801, coatedCopper: 0.0817, aluminium: null },
  { area: 300, copper: 0.0641, coatedCopper: 0.0654, aluminium: null },
  { area: 400, copper: 0.0486, coatedCopper: 0.0495, aluminium: null },
  { area: 500, copper: 0.0384, coatedCopper: 0.0391, aluminium: null },
  { area: 630, copper: 0.0287, coatedCopper: 0.0292, aluminium: null },
];
