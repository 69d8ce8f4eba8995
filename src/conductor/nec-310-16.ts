/**
 * Ampacity of not more than three current-carrying conductors in raceway, cable or earth, at 30 °C ambient: National
 * Electrical Code, Table 310.16 (310.15(B)(16) from 2011 to 2017).
 *
 * Source: `nfpa-70`, 2014 edition. Provenance: read in a public transcription, but 18 and 16 AWG from memory. Editions
 * before 2011 differ in a few small sizes.
 *
 * @module
 */
import type { ConductorSize } from "./size.ts";

/** Amperes for insulation rated 60, 75 and 90 °C; null where the code lists none. */
export type AmpacityByRating = readonly [at60: number | null, at75: number | null, at90: number | null];

/** One size of an ampacity table. */
export interface AmpacityRow {
  /** Trade size. */
  readonly size: ConductorSize;
  /** Copper, amperes. */
  readonly copper: AmpacityByRating;
  /** Aluminium or copper-clad aluminium, amperes. */
  readonly aluminium: AmpacityByRating;
}

/**
 * The rows, thin to thick.
 *
 * @source nfpa-70, Table 310.16
 */
export const necTable310_16: readonly AmpacityRow[] = [
  { size: "18 AWG", copper: [null, null, 14], aluminium: [null, null, null] },
  { size: "16 AWG", copper: [null, null, 18], aluminium: [null, null, null] },
  { size: "14 AWG", copper: [15, 20, 25], aluminium: [null, null, null] },
  { size: "12 AWG", copper: [20, 25, 30], aluminium: [15, 20, 25] },
  { size: "10 AWG", copper: [30, 35, 40], aluminium: [25, 30, 35] },
  { size: "8 AWG", copper: [40, 50, 55], aluminium: [35, 40, 45] },
  { size: "6 AWG", copper: [55, 65, 75], aluminium: [40, 50, 55] },
  { size: "4 AWG", copper: [70, 85, 95], aluminium: [55, 65, 75] },
  { size: "3 AWG", copper: [85, 100, 115], aluminium: [65, 75, 85] },
  { size: "2 AWG", copper: [95, 115, 130], aluminium: [75, 90, 100] },
  { size: "1 AWG", copper: [110, 130, 145], aluminium: [85, 100, 115] },
  { size: "1/0 AWG", copper: [125, 150, 170], aluminium: [100, 120, 135] },
  { size: "2/0 AWG", copper: [145, 175, 195], aluminium: [115, 135, 150] },
  { size: "3/0 AWG", copper: [165, 200, 225], aluminium: [130, 155, 175] },
  { size: "4/0 AWG", copper: [195, 230, 260], aluminium: [150, 180, 205] },
  { size: "250 kcmil", copper: [215, 255, 290], aluminium: [170, 205, 230] },
  { size: "300 kcmil", copper: [240, 285, 320], aluminium: [195, 230, 260] },
  { size: "350 kcmil", copper: [260, 310, 350], aluminium: [210, 250, 280] },
  { size: "400 kcmil", copper: [280, 335, 380], aluminium: [225, 270, 305] },
  { size: "500 kcmil", copper: [320, 380, 430], aluminium: [260, 310, 350] },
  { size: "600 kcmil", copper: [350, 420, 475], aluminium: [285, 340, 385] },
  { size: "700 kcmil", copper: [385, 460, 520], aluminium: [315, 375, 425] },
  { size: "750 kcmil", copper: [400, 475, 535], aluminium: [320, 385, 435] },
];
