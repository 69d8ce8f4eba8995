/**
 * Published daily uses and flows, side by side, for a reader to choose from. They disagree; the local authority's wins.
 *
 * @module
 */

/** A published daily use. */
export interface PublishedDailyUse {
  /** Who or what uses it. */
  readonly use: string;
  /** Low end, US gal a day. */
  readonly low: number;
  /** High end, US gal a day. */
  readonly high: number;
  /** Source id. */
  readonly source: string;
}

/**
 * Daily uses that published tables and rules give, US gallons a day.
 *
 * @source penn-state-water-planning
 * @source renewable-energy-2017, table 1
 * @source broz-g1801, table 1
 * @source tm-5-813-7, 1-4
 * @source new-york-fact-sheet-2
 * @source wac-246-290-221, (4)
 * @source unh-livestock-water
 */
export const publishedDailyUses: readonly PublishedDailyUse[] = [
  { use: "person", low: 50, high: 100, source: "penn-state-water-planning" },
  { use: "person", low: 50, high: 50, source: "renewable-energy-2017" },
  { use: "person", low: 50, high: 100, source: "broz-g1801" },
  { use: "person, small station, average", low: 150, high: 150, source: "tm-5-813-7" },
  { use: "bedroom", low: 110, high: 110, source: "new-york-fact-sheet-2" },
  { use: "dwelling, maximum day, least", low: 350, high: 350, source: "wac-246-290-221" },
  { use: "milking cow", low: 20, high: 30, source: "renewable-energy-2017" },
  { use: "horse or cattle", low: 10, high: 15, source: "renewable-energy-2017" },
  { use: "sheep or goat", low: 2, high: 2, source: "renewable-energy-2017" },
  { use: "100 chickens", low: 6, high: 12, source: "renewable-energy-2017" },
  { use: "100 layers, second edition of the table", low: 9, high: 9, source: "unh-livestock-water" },
  { use: "100 broilers, second edition of the table", low: 8, high: 8, source: "unh-livestock-water" },
];

/** A published flow. */
export interface PublishedFlow {
  /** At what. */
  readonly use: string;
  /** Low end, US gpm. */
  readonly low: number;
  /** High end, US gpm. */
  readonly high: number;
  /** Source id. */
  readonly source: string;
}

/**
 * Flows that published tables and rules give, US gpm.
 *
 * @source broz-g1801, first page and table 1
 * @source h2ouse-outdoor
 * @source mwps-14-1979; recalled
 * @source tm-5-813-7, 1-3
 * @source new-york-fact-sheet-2
 * @source texas-290-45, (b)(1)(D)
 */
export const publishedFlows: readonly PublishedFlow[] = [
  { use: "outside hose faucet", low: 5, high: 5, source: "broz-g1801" },
  { use: "garden hose", low: 5, high: 8, source: "h2ouse-outdoor" },
  { use: "yard hydrant, 3/4 in hose outlet", low: 8, high: 15, source: "mwps-14-1979" },
  { use: "farm fire control at 60 psi", low: 20, high: 20, source: "broz-g1801" },
  { use: "farm fire, least, for 2 h", low: 10, high: 10, source: "broz-g1801" },
  { use: "small wooden building, fire, for 2 h", low: 1000, high: 1000, source: "tm-5-813-7" },
  { use: "two fixtures at once in a house", low: 5, high: 5, source: "new-york-fact-sheet-2" },
  { use: "public system, service pump, each connection", low: 2, high: 2, source: "texas-290-45" },
];
