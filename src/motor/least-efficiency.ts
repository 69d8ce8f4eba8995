/**
 * Least full-load efficiency that motors of the United States must reach: 10 CFR 431.
 *
 * Sources: `cfr-10-431-446` for small open motors, `cfr-10-431-25` for enclosed motors in force from 1997. Provenance: read in
 * mirrors of the law. Percent as printed there. Submersible motors are not covered by either and usually lie a few points
 * lower, common practice.
 *
 * @module
 */

/** Efficiency by number of poles: two turn at 3450 to 3500, four at about 1750, six at about 1150 r/min on 60 Hz. */
export interface LeastEfficiencyRow {
  /** Rated power, horsepower. */
  readonly horsepower: number;
  /** Two poles, %; null where the law lists none. */
  readonly twoPole: number | null;
  /** Four poles, %; null where the law lists none. */
  readonly fourPole: number | null;
  /** Six poles, %; null where the law lists none. */
  readonly sixPole: number | null;
}

/**
 * Open single-phase motors, capacitor start, average full-load efficiency.
 *
 * @source cfr-10-431-446, (a)
 */
export const capacitorMotorEfficiency: readonly LeastEfficiencyRow[] = [
  { horsepower: 0.25, twoPole: 66.6, fourPole: 68.5, sixPole: 62.2 },
  { horsepower: 1 / 3, twoPole: 70.5, fourPole: 72.4, sixPole: 66.6 },
  { horsepower: 0.5, twoPole: 72.4, fourPole: 76.2, sixPole: 76.2 },
  { horsepower: 0.75, twoPole: 76.2, fourPole: 81.8, sixPole: 80.2 },
  { horsepower: 1, twoPole: 80.4, fourPole: 82.6, sixPole: 81.1 },
  { horsepower: 1.5, twoPole: 81.5, fourPole: 83.8, sixPole: null },
  { horsepower: 2, twoPole: 82.9, fourPole: 84.5, sixPole: null },
  { horsepower: 3, twoPole: 84.1, fourPole: null, sixPole: null },
];

/**
 * Open small three-phase motors, average full-load efficiency.
 *
 * @source cfr-10-431-446, (a)
 */
export const polyphaseMotorEfficiency: readonly LeastEfficiencyRow[] = [
  { horsepower: 0.25, twoPole: 65.6, fourPole: 69.5, sixPole: 67.5 },
  { horsepower: 1 / 3, twoPole: 69.5, fourPole: 73.4, sixPole: 71.4 },
  { horsepower: 0.5, twoPole: 73.4, fourPole: 78.2, sixPole: 75.3 },
  { horsepower: 0.75, twoPole: 76.8, fourPole: 81.1, sixPole: 81.7 },
  { horsepower: 1, twoPole: 77, fourPole: 83.5, sixPole: 82.5 },
  { horsepower: 1.5, twoPole: 84, fourPole: 86.5, sixPole: 83.8 },
  { horsepower: 2, twoPole: 85.5, fourPole: 86.5, sixPole: null },
  { horsepower: 3, twoPole: 85.5, fourPole: 86.9, sixPole: null },
];

/**
 * Enclosed three-phase motors, nominal full-load efficiency.
 *
 * @source cfr-10-431-25, (a), in force from 1997
 */
export const enclosedMotorEfficiency: readonly LeastEfficiencyRow[] = [
  { horsepower: 1, twoPole: 75.5, fourPole: 82.5, sixPole: 80 },
  { horsepower: 1.5, twoPole: 82.5, fourPole: 84, sixPole: 85.5 },
  { horsepower: 2, twoPole: 84, fourPole: 84, sixPole: 86.5 },
  { horsepower: 3, twoPole: 85.5, fourPole: 87.5, sixPole: 87.5 },
  { horsepower: 5, twoPole: 87.5, fourPole: 87.5, sixPole: 87.5 },
  { horsepower: 7.5, twoPole: 88.5, fourPole: 89.5, sixPole: 89.5 },
  { horsepower: 10, twoPole: 89.5, fourPole: 89.5, sixPole: 89.5 },
  { horsepower: 15, twoPole: 90.2, fourPole: 91, sixPole: 90.2 },
  { horsepower: 20, twoPole: 90.2, fourPole: 91, sixPole: 90.2 },
  { horsepower: 25, twoPole: 91, fourPole: 92.4, sixPole: 91.7 },
  { horsepower: 30, twoPole: 91, fourPole: 92.4, sixPole: 91.7 },
];
