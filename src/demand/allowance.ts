/**
 * The peak of a small house by allowances: a quarter of each fixture's flow.
 *
 * @module
 */
import { requireList, requireObject, requireOneOf, requireWhole } from "../numeric/index.ts";
import { gpm, type VolumeFlow } from "../units/index.ts";

/** Fixtures with a published allowance. */
export type AllowanceFixture =
  | "tub or tub with shower"
  | "shower"
  | "lavatory"
  | "toilet, flush tank"
  | "kitchen sink"
  | "dishwasher"
  | "laundry sink"
  | "clothes washer";

/**
 * Fixture flows, US gpm: US EPA, private water systems library, *Household Uses* (`epa-seahome`). The tub's row is inferred
 * from a printed total. They predate 2.5 gpm showers.
 */
const FIXTURE_FLOW: Readonly<Record<AllowanceFixture, number>> = {
  "tub or tub with shower": 8,
  shower: 4,
  lavatory: 2,
  "toilet, flush tank": 3,
  "kitchen sink": 4,
  dishwasher: 2,
  "laundry sink": 6,
  "clothes washer": 8,
};
/** The allowance is this share of the fixture's flow (`epa-seahome`). */
const SHARE = 0.25;

/** Some fixtures of one kind. */
export interface AllowanceCount {
  /** Kind of fixture. */
  readonly fixture: AllowanceFixture;
  /** Number of them. 0 to 100 000. */
  readonly count: number;
}

/** The peak by allowances. */
export interface AllowanceDemand {
  /** Sum of the allowances, m³/s: what the pump should give. */
  readonly peak: VolumeFlow;
  /** Flow of the largest single fixture, m³/s; a peak under it starves that fixture. */
  readonly largestFixture: VolumeFlow;
  /** Source id. */
  readonly method: "epa-seahome";
}

/**
 * Peak demand of a house by the peak demand allowances of its fixtures.
 *
 * @remarks
 * Σ count × flow / 4. For one house. A second house on the same well: its sum halved (same source). Gives about 7 gpm where
 * the code's fixture units give 17 for a similar house.
 *
 * @param fixtures - kinds and counts; up to 100 entries
 * @returns the peak and the largest single fixture
 * @throws {@link units.InputError} naming the first entry that cannot be used
 *
 * @example
 * ```ts
 * import { allowanceDemand } from "risingmain/demand";
 * import { inGpm } from "risingmain/units";
 *
 * inGpm(allowanceDemand([{ fixture: "shower", count: 1 }, { fixture: "lavatory", count: 2 }]).peak); // ≈ 2.00
 * ```
 *
 * @source epa-seahome, Household Uses
 */
export function allowanceDemand(fixtures: readonly AllowanceCount[]): AllowanceDemand {
  requireList("fixtures", fixtures, 0, 100);
  let sum = 0;
  let largest = 0;
  fixtures.forEach((entry, i) => {
    requireObject(`fixtures[${i}]`, entry);
    requireOneOf(`fixtures[${i}].fixture`, entry.fixture, Object.keys(FIXTURE_FLOW));
    requireWhole(`fixtures[${i}].count`, entry.count, 0, 1e5);
    sum += entry.count * SHARE * FIXTURE_FLOW[entry.fixture];
    if (entry.count > 0) largest = Math.max(largest, FIXTURE_FLOW[entry.fixture]);
  });
  return { peak: gpm(sum), largestFixture: gpm(largest), method: "epa-seahome" };
}

/**
 * The drillers' rule: as many gallons a minute as there are fixtures.
 *
 * @remarks
 * 1 US gpm a fixture, never less than the largest single fixture. Gives 10 gpm for a house where allowances give 7 and the
 * code's fixture units 17.
 *
 * @param fixtures - number of fixtures and outside taps; a whole number from 0 to 1 000 000
 * @returns the peak, m³/s
 * @throws {@link units.InputError} where the number is not in its range
 *
 * @example
 * ```ts
 * import { fixtureCountDemand } from "risingmain/demand";
 * import { inGpm } from "risingmain/units";
 *
 * inGpm(fixtureCountDemand(10)); // ≈ 10.00
 * ```
 *
 * @source driller-tech-topics, determining peak demand
 */
export function fixtureCountDemand(fixtures: number): VolumeFlow {
  requireWhole("fixtures", fixtures, 0, 1e6);
  return gpm(fixtures);
}
