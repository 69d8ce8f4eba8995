/**
 * Probable peak demand against fixture units, US gpm: three published curves that must not be mixed.
 *
 * - `ipc-2021`: International Plumbing Code 2021, table E103.3(3); facts seen in independent copies.
 * - `nspc`: the other American plumbing-code table (B.5.4); rows between 14 and 120 were not visible in the copy read.
 * - `hunter-1940`: points of the 1940 flush-tank curve (NBS BMS65); recalled, but for 10 units (8 gpm), which was read.
 *
 * @module
 */

/** Points of one curve. */
export interface FixtureCurve {
  /** Fixture units, rising. */
  readonly units: readonly number[];
  /** Demand, US gpm. */
  readonly gpm: readonly number[];
}

/** Flush tanks, International Plumbing Code. */
export const IPC_FLUSH_TANK: FixtureCurve = {
  units: [
    1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100,
    120, 140, 160, 180, 200, 225, 250, 275, 300, 400, 500, 750, 1000, 1250, 1500, 1750, 2000, 2500, 3000, 4000, 5000,
  ],
  gpm: [
    3, 5, 6.5, 8, 9.4, 10.7, 11.8, 12.8, 13.7, 14.6, 15.4, 16, 16.5, 17, 17.5, 18, 18.4, 18.8, 19.2, 19.6, 21.5, 23.3,
    24.9, 26.3, 27.7, 29.1, 32, 35, 38, 41, 43.5, 48, 52.5, 57, 61, 65, 70, 75, 80, 85, 105, 124, 170, 208, 239, 269,
    297, 325, 380, 433, 525, 593,
  ],
};

/** Flushometer valves, International Plumbing Code; from 1000 units the columns are one. */
export const IPC_FLUSH_VALVE: FixtureCurve = {
  units: [
    5, 6, 7, 8, 9, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 120, 140, 160, 180, 200, 225, 250, 275, 300,
    400, 500, 1000, 1250, 1500, 1750, 2000, 2500, 3000, 4000, 5000,
  ],
  gpm: [
    15, 17.4, 19.8, 22.2, 24.6, 27, 31, 35, 38, 42, 44, 46, 48, 50, 54, 58, 61.2, 64.3, 67.5, 73, 77, 81, 85.5, 90,
    95.5, 101, 104.5, 108, 127, 143, 208, 239, 269, 297, 325, 380, 433, 525, 593,
  ],
};

/** Flush tanks, the other American code. */
export const NSPC_FLUSH_TANK: FixtureCurve = {
  units: [3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 120, 140, 160, 180, 200, 225, 250, 300, 400, 500, 750, 1000],
  gpm: [3, 4, 4.5, 5, 6, 7, 7.5, 8, 8.5, 9, 10, 10.5, 49, 53, 57, 61, 65, 70, 75, 85, 105, 125, 170, 210],
};

/** Flushometer valves, the other American code. */
export const NSPC_FLUSH_VALVE: FixtureCurve = {
  units: [5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 120, 140, 160, 180, 200, 225, 250, 300, 400, 500, 750, 1000],
  gpm: [22, 23, 24, 25, 26, 27, 28, 29, 29.5, 30, 74, 78, 83, 87, 91, 95, 100, 110, 125, 140, 175, 210],
};

/** Flush tanks, the 1940 curve. */
export const HUNTER_FLUSH_TANK: FixtureCurve = {
  units: [10, 20, 30, 40, 50, 60, 80, 100],
  gpm: [8, 14, 20, 25, 29, 32, 38, 44],
};

/** Fixtures with published weights. */
export type Fixture =
  | "bathroom group, flush tank"
  | "bathroom group, flush valve"
  | "bathtub"
  | "bidet"
  | "combination fixture"
  | "dishwasher"
  | "kitchen sink"
  | "laundry tray"
  | "lavatory"
  | "water closet, flush tank"
  | "water closet, flush valve"
  | "washing machine, 8 lb"
  | "shower head"
  | "hose bibb";

/**
 * Fixture units of private fixtures, hot and cold together: International Plumbing Code 2021, table E103.3(2); recalled. The
 * hose bibb is from the other American code, recalled; a hose that runs for long is better added as flow beside the curve.
 */
export const FIXTURE_UNITS: Readonly<Record<Fixture, number>> = {
  "bathroom group, flush tank": 3.6,
  "bathroom group, flush valve": 8,
  bathtub: 1.4,
  bidet: 2,
  "combination fixture": 3,
  dishwasher: 1.4,
  "kitchen sink": 1.4,
  "laundry tray": 1.4,
  lavatory: 0.7,
  "water closet, flush tank": 2.2,
  "water closet, flush valve": 6,
  "washing machine, 8 lb": 1.4,
  "shower head": 1.4,
  "hose bibb": 2.5,
};
