/**
 * The probable peak of a house by fixture units: nobody opens every tap at once.
 *
 * @module
 */
import { requireList, requireObject, requireOneOf, requireWhole, requireWithin } from "../numeric/index.ts";
import { gpm, type VolumeFlow } from "../units/index.ts";
import {
  FIXTURE_UNITS,
  type Fixture,
  type FixtureCurve,
  HUNTER_FLUSH_TANK,
  IPC_FLUSH_TANK,
  IPC_FLUSH_VALVE,
  NSPC_FLUSH_TANK,
  NSPC_FLUSH_VALVE,
} from "./fixture-tables.ts";
import { lineThrough } from "./line-through.ts";

/** Whose curve: they differ by half for a small house. */
export type FixtureMethod = "ipc-2021" | "nspc" | "hunter-1940";

/** What most closets have. */
export type FlushKind = "tank" | "valve";

/** Fixture units and the curve to read. */
export interface FixtureDemandInput {
  /** Sum of the fixture units. 0 to 1 000 000. */
  readonly fixtureUnits: number;
  /** Flush tanks, taken where left out, or flushometer valves. */
  readonly flush?: FlushKind;
  /** Whose curve; the International Plumbing Code's where left out. The 1940 curve is for flush tanks only. */
  readonly curve?: FixtureMethod;
}

/** The peak. */
export interface FixtureDemand {
  /** Probable peak demand, m³/s. */
  readonly peak: VolumeFlow;
  /** Source id of the curve. */
  readonly method: FixtureMethod;
  /** False outside the printed rows (below them a line from 0, above them the last value) and in a gap of the copy read. */
  readonly insideRange: boolean;
}

/** The rows of the second code between these units were not visible. */
const GAP_START = 14;
const GAP_END = 120;

/**
 * Probable peak demand for a sum of fixture units.
 *
 * @remarks
 * A straight line between the printed rows (practice, not code text); below the first row a line from zero. At 10 units the
 * International code's table says 14.6 gpm, the other American code and the 1940 curve 8 gpm: state which was used. A flow
 * that runs for long (hose, irrigation) is added beside the curve, not as units.
 *
 * @param input - units, flush and curve; each field says its unit and range
 * @returns the peak, the curve and whether the units lie inside its printed rows
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { fixtureDemand } from "risingmain/demand";
 * import { inGpm } from "risingmain/units";
 *
 * inGpm(fixtureDemand({ fixtureUnits: 10 }).peak); // ≈ 14.60
 * inGpm(fixtureDemand({ fixtureUnits: 10, curve: "hunter-1940" }).peak); // ≈ 8.00
 * ```
 *
 * @source ipc-2021, table E103.3(3)
 * @source nspc, table B.5.4
 * @source hunter-1940, demand curve; recalled
 */
export function fixtureDemand(input: FixtureDemandInput): FixtureDemand {
  requireObject("input", input);
  const { fixtureUnits, flush = "tank", curve: method = "ipc-2021" } = input;
  requireWithin("fixtureUnits", fixtureUnits, 0, 1e6, "");
  requireOneOf("flush", flush, ["tank", "valve"]);
  requireOneOf("curve", method, ["ipc-2021", "nspc", "hunter-1940"]);
  const curve = curveOf(method, flush);
  const { value, inside } = lineThrough([0, ...curve.units], [0, ...curve.gpm], fixtureUnits);
  const inGap = method === "nspc" && fixtureUnits > GAP_START && fixtureUnits < GAP_END;
  return {
    peak: gpm(value),
    method,
    insideRange: inside && fixtureUnits >= (curve.units[0] as number) && !inGap,
  };
}

function curveOf(method: FixtureMethod, flush: FlushKind): FixtureCurve {
  if (method === "hunter-1940") {
    // The valve curve of 1940 was not to be had.
    requireOneOf("flush", flush, ["tank"]);
    return HUNTER_FLUSH_TANK;
  }
  if (method === "nspc") return flush === "tank" ? NSPC_FLUSH_TANK : NSPC_FLUSH_VALVE;
  return flush === "tank" ? IPC_FLUSH_TANK : IPC_FLUSH_VALVE;
}

/** Some fixtures of one kind. */
export interface FixtureCount {
  /** Kind of fixture, in private use. */
  readonly fixture: Fixture;
  /** Number of them. 0 to 100 000. */
  readonly count: number;
}

/**
 * The sum of fixture units of a house, hot and cold together: for the supply main.
 *
 * @remarks
 * Σ count × units. Hot and cold weights of one fixture do not add up to its total; branches use their own.
 *
 * @param fixtures - kinds and counts; up to 100 entries
 * @returns the sum of fixture units
 * @throws {@link units.InputError} naming the first entry that cannot be used
 *
 * @example Two bathrooms, kitchen and laundry
 * ```ts
 * import { fixtureDemand, fixtureUnits } from "risingmain/demand";
 * import { inGpm } from "risingmain/units";
 *
 * const house = fixtureUnits([
 *   { fixture: "bathroom group, flush tank", count: 2 }, { fixture: "kitchen sink", count: 1 },
 *   { fixture: "dishwasher", count: 1 }, { fixture: "washing machine, 8 lb", count: 1 },
 * ]);
 * house; // ≈ 11.4
 * inGpm(fixtureDemand({ fixtureUnits: house }).peak); // ≈ 15.64
 * ```
 *
 * @source ipc-2021, table E103.3(2); recalled
 */
export function fixtureUnits(fixtures: readonly FixtureCount[]): number {
  requireList("fixtures", fixtures, 0, 100);
  return fixtures.reduce((sum, entry, i) => {
    requireObject(`fixtures[${i}]`, entry);
    requireOneOf(`fixtures[${i}].fixture`, entry.fixture, Object.keys(FIXTURE_UNITS));
    requireWhole(`fixtures[${i}].count`, entry.count, 0, 1e5);
    return sum + entry.count * FIXTURE_UNITS[entry.fixture];
  }, 0);
}
