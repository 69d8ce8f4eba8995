/**
 * Doses, stand times and volumes that authorities have published for wells. They disagree by two orders of magnitude: the
 * local one wins, and a plan that uses another must say which.
 *
 * Each row names its source; all were read, in stored copies. Concentrations in mg/L, times in hours.
 *
 * @module
 */

/** One authority's figures; a field is left out where the authority gives none. */
export interface PublishedDose {
  /** Source id. */
  readonly source: string;
  /** What the figures are for. */
  readonly use: string;
  /** Dose, or the least of a band, mg/L. */
  readonly dose: number;
  /** Most of the band, mg/L. */
  readonly mostDose?: number;
  /** Stand time, or the least of it, h. */
  readonly standHours?: number;
  /** Preferred stand time, h. */
  readonly preferredHours?: number;
  /** How many times the bore's volume is treated; 1 where left out. */
  readonly boreVolumes?: number;
}

/**
 * Published doses and stand times for the disinfection of wells.
 *
 * @source navfac-mil-hdbk-1164, p. 26
 * @source davis-2010, p. 4-13
 * @source alberta-agdex-716-a10, table 1
 * @source state-disinfecting-fact-sheet
 * @source maryland-well-disinfection, D
 * @source san-bernardino-13-24
 * @source water-systems-council-disinfection
 */
export const publishedDoses: readonly PublishedDose[] = [
  { source: "navfac-mil-hdbk-1164", use: "well", dose: 100, standHours: 24 },
  { source: "davis-2010", use: "well", dose: 100, standHours: 4, preferredHours: 24 },
  { source: "alberta-agdex-716-a10", use: "drilled well", dose: 200, boreVolumes: 2 },
  { source: "alberta-agdex-716-a10", use: "bored well", dose: 200, boreVolumes: 1 },
  { source: "state-disinfecting-fact-sheet", use: "routine", dose: 5, standHours: 4 },
  { source: "state-disinfecting-fact-sheet", use: "contaminated well", dose: 50, standHours: 4 },
  { source: "maryland-well-disinfection", use: "well", dose: 100, mostDose: 500 },
  { source: "san-bernardino-13-24", use: "well and gravel pack", dose: 50, standHours: 24 },
  { source: "water-systems-council-disinfection", use: "new well, Oklahoma", dose: 100, standHours: 2 },
  { source: "water-systems-council-disinfection", use: "repaired well, Oklahoma", dose: 200, standHours: 2 },
];
