/**
 * Voltage drop per ampere and metre of armoured copper cable with 90 °C insulation: BS 7671, Table 4E4B.
 *
 * Source: `bs-7671`, edition not stated by the reproduction. Provenance: read in a distributor's reproduction. Figures as
 * printed there, millivolts per ampere and metre, conductors at 90 °C, go and return or line to line included.
 *
 * @module
 */

/** One nominal area. */
export interface TabulatedDropRow {
  /** Nominal area, mm². */
  readonly area: number;
  /** Two-core cable, direct current, mV/(A·m). */
  readonly directCurrent: number;
  /** Two-core cable, single-phase, mV/(A·m). */
  readonly singlePhase: number;
  /** Three- or four-core cable, three-phase, mV/(A·m). */
  readonly threePhase: number;
}

/**
 * The rows, thin to thick.
 *
 * @source bs-7671, Table 4E4B
 */
export const bs7671Table4E4B: readonly TabulatedDropRow[] = [
  { area: 1.5, directCurrent: 31, singlePhase: 31, threePhase: 27 },
  { area: 2.5, directCurrent: 19, singlePhase: 19, threePhase: 16 },
  { area: 4, directCurrent: 12, singlePhase: 12, threePhase: 10 },
  { area: 6, directCurrent: 7.9, singlePhase: 7.9, threePhase: 6.8 },
  { area: 10, directCurrent: 4.7, singlePhase: 4.7, threePhase: 4 },
  { area: 16, directCurrent: 2.9, singlePhase: 2.9, threePhase: 2.5 },
  { area: 25, directCurrent: 1.85, singlePhase: 1.9, threePhase: 1.65 },
  { area: 35, directCurrent: 1.35, singlePhase: 1.35, threePhase: 1.15 },
  { area: 50, directCurrent: 0.98, singlePhase: 1, threePhase: 0.87 },
  { area: 70, directCurrent: 0.67, singlePhase: 0.69, threePhase: 0.6 },
  { area: 95, directCurrent: 0.49, singlePhase: 0.52, threePhase: 0.45 },
  { area: 120, directCurrent: 0.39, singlePhase: 0.42, threePhase: 0.37 },
  { area: 150, directCurrent: 0.31, singlePhase: 0.35, threePhase: 0.3 },
];
