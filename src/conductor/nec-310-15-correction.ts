/**
 * Corrections of tabulated ampacity: for ambient temperature and for conductors bundled together. National Electrical
 * Code, Tables 310.15(B)(2)(a) and 310.15(B)(3)(a) (310.15(B)(1) and 310.15(C)(1) from 2020).
 *
 * Source: `nfpa-70`, 2014 edition. Provenance: read in public reproductions.
 *
 * @module
 */
import type { AmpacityByRating } from "./nec-310-16.ts";

/** A band of ambient temperature and its factors. */
export interface AmbientBand {
  /** Upper end of the band, °C; it begins where the band before it ends. */
  readonly upTo: number;
  /** Factors for insulation rated 60, 75 and 90 °C; null where the code permits no use. */
  readonly factors: AmpacityByRating;
}

/**
 * Factors by ambient temperature for ampacities tabulated at 30 °C.
 *
 * @source nfpa-70, Table 310.15(B)(2)(a)
 */
export const necAmbientCorrection: readonly AmbientBand[] = [
  { upTo: 10, factors: [1.29, 1.2, 1.15] },
  { upTo: 15, factors: [1.22, 1.15, 1.12] },
  { upTo: 20, factors: [1.15, 1.11, 1.08] },
  { upTo: 25, factors: [1.08, 1.05, 1.04] },
  { upTo: 30, factors: [1, 1, 1] },
  { upTo: 35, factors: [0.91, 0.94, 0.96] },
  { upTo: 40, factors: [0.82, 0.88, 0.91] },
  { upTo: 45, factors: [0.71, 0.82, 0.87] },
  { upTo: 50, factors: [0.58, 0.75, 0.82] },
  { upTo: 55, factors: [0.41, 0.67, 0.76] },
  { upTo: 60, factors: [null, 0.58, 0.71] },
  { upTo: 65, factors: [null, 0.47, 0.65] },
  { upTo: 70, factors: [null, 0.33, 0.58] },
  { upTo: 75, factors: [null, null, 0.5] },
  { upTo: 80, factors: [null, null, 0.41] },
  { upTo: 85, factors: [null, null, 0.29] },
];

/** A count of conductors and its factor. */
export interface BundlingBand {
  /** Largest number of current-carrying conductors in the band; null for no end. */
  readonly upTo: number | null;
  /** Factor on the ampacity. */
  readonly factor: number;
}

/**
 * Factors for more than three current-carrying conductors together for more than 24 in.
 *
 * @source nfpa-70, Table 310.15(B)(3)(a)
 */
export const necBundlingAdjustment: readonly BundlingBand[] = [
  { upTo: 3, factor: 1 },
  { upTo: 6, factor: 0.8 },
  { upTo: 9, factor: 0.7 },
  { upTo: 20, factor: 0.5 },
  { upTo: 30, factor: 0.45 },
  { upTo: 40, factor: 0.4 },
  { upTo: null, factor: 0.35 },
];
