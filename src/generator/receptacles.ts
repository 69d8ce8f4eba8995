/**
 * Receptacles found on portable generators and inlets, by their standard designation.
 *
 * Source: `nema-wd-6`. Provenance: memory; the 30 A, 125/250 V locking receptacle also read in a note on it.
 *
 * @module
 */

/** Standard designation: L is locking; 5 is 125 V, 6 is 250 V, 14 is 125/250 V with neutral; last the amperes. */
export type Receptacle =
  | "5-15"
  | "5-20"
  | "L5-20"
  | "L5-30"
  | "6-20"
  | "6-50"
  | "L6-20"
  | "L6-30"
  | "L14-20"
  | "L14-30"
  | "14-50";

/** What a receptacle is rated for. */
export interface ReceptacleRating {
  /** Greatest voltage between its poles, V. */
  readonly voltage: number;
  /** Rated current of each pole, A. */
  readonly current: number;
  /** Whether it locks. */
  readonly locking: boolean;
  /** Whether it carries a neutral beside two live poles, so that 120 V and 240 V loads may share it. */
  readonly neutral: boolean;
}

/**
 * The ratings by designation.
 *
 * @source nema-wd-6
 */
export const receptacleRatings: Readonly<Record<Receptacle, ReceptacleRating>> = {
  "5-15": { voltage: 125, current: 15, locking: false, neutral: false },
  "5-20": { voltage: 125, current: 20, locking: false, neutral: false },
  "L5-20": { voltage: 125, current: 20, locking: true, neutral: false },
  "L5-30": { voltage: 125, current: 30, locking: true, neutral: false },
  "6-20": { voltage: 250, current: 20, locking: false, neutral: false },
  "6-50": { voltage: 250, current: 50, locking: false, neutral: false },
  "L6-20": { voltage: 250, current: 20, locking: true, neutral: false },
  "L6-30": { voltage: 250, current: 30, locking: true, neutral: false },
  "L14-20": { voltage: 250, current: 20, locking: true, neutral: true },
  "L14-30": { voltage: 250, current: 30, locking: true, neutral: true },
  "14-50": { voltage: 250, current: 50, locking: false, neutral: true },
};
