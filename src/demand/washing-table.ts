/**
 * Water for washing, US gallons each time.
 *
 * Dairy: University of New Hampshire Cooperative Extension, dairy washing table (`unh-livestock-water`). Household: University
 * of Missouri Extension G1801, table 1 (`broz-g1801`). Vehicle: printed example of a conservation page, 7 gpm for 15 min
 * (`h2ouse-outdoor`).
 *
 * @module
 */

/** Things that are washed, or wash. */
export type Washing =
  | "bulk tank, automatic"
  | "bulk tank, manual"
  | "milk pipeline"
  | "bucket milkers"
  | "milk house floor"
  | "parlour hose-down"
  | "clothes washer load"
  | "dishwasher load"
  | "softener regeneration"
  | "filter backwash"
  | "vehicle";

/** A row. */
export interface WashingUse {
  /** Printed low end, US gal. */
  readonly low: number;
  /** Printed high end, US gal. */
  readonly high: number;
  /** Source id. */
  readonly source: string;
}

/** Printed ranges, US gal each time. */
export const WASHING: Readonly<Record<Washing, WashingUse>> = {
  "bulk tank, automatic": { low: 50, high: 60, source: "unh-livestock-water" },
  "bulk tank, manual": { low: 30, high: 40, source: "unh-livestock-water" },
  "milk pipeline": { low: 75, high: 125, source: "unh-livestock-water" },
  "bucket milkers": { low: 30, high: 40, source: "unh-livestock-water" },
  "milk house floor": { low: 10, high: 20, source: "unh-livestock-water" },
  "parlour hose-down": { low: 50, high: 100, source: "unh-livestock-water" },
  "clothes washer load": { low: 30, high: 50, source: "broz-g1801" },
  "dishwasher load": { low: 7, high: 15, source: "broz-g1801" },
  "softener regeneration": { low: 50, high: 100, source: "broz-g1801" },
  "filter backwash": { low: 100, high: 200, source: "broz-g1801" },
  vehicle: { low: 105, high: 105, source: "h2ouse-outdoor" },
};
