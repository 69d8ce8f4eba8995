/**
 * What a receptacle passes, and the margin a load leaves.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { type ApparentPower, type Current, InputError, type Ratio, type Voltage } from "../units/index.ts";
import { type Receptacle, receptacleRatings } from "./receptacles.ts";

/** Share of the rating for a load that runs three hours or more (`nfpa-70`, 210.19 to 210.23, 80 %). */
const CONTINUOUS_SHARE = 0.8;

/** A load on a receptacle. */
export interface ReceptacleCheckInput {
  /** Standard designation. */
  readonly receptacle: Receptacle;
  /** Voltage of the supply. 1 to 1000 V. */
  readonly voltage: Voltage;
  /** Current of the load while running. 0 to 10 000 A. */
  readonly current: Current;
  /** Share of the rating for continuous load; 0.8 where left out. 0.1 to 1. */
  readonly continuousShare?: Ratio;
}

/** What the receptacle passes. */
export interface ReceptacleCheck {
  /** Whether the receptacle carries the load for hours. */
  readonly state: "within limit" | "above limit" | "voltage too high";
  /** Rated current, A. */
  readonly rated: Current;
  /** Current it may carry for hours, A. */
  readonly continuous: Current;
  /** Continuous current less the load's, A; negative where the load is above it. */
  readonly margin: Current;
  /** Apparent power at the supply voltage and rated current, VA. */
  readonly ratedApparentPower: ApparentPower;
  /** Apparent power at the supply voltage and continuous current, VA. */
  readonly continuousApparentPower: ApparentPower;
  /** Where the rating is from. */
  readonly method: "nema-wd-6";
}

/**
 * Whether a receptacle carries a load for hours, and with what margin.
 *
 * @remarks
 * Continuous current is 80 % of the rating: 24 A of 30 A, 5760 VA at 240 V. Starting current, a few seconds long, is not
 * held against it. Cord and plug must have the same rating.
 *
 * @param input - receptacle, voltage and load
 * @returns limits and margin
 * @throws InputError naming the first field that is not known or not in its range
 *
 * @example A 10 A pump on the 30 A, 125/250 V locking receptacle
 * ```ts
 * import { receptacleCheck } from "risingmain/generator";
 * import { amperes, volts } from "risingmain/units";
 *
 * const outlet = receptacleCheck({ receptacle: "L14-30", voltage: volts(240), current: amperes(10) });
 * outlet.margin; // => 14
 * outlet.continuousApparentPower; // => 5760
 * ```
 *
 * @source nema-wd-6
 * @source nfpa-70, 80 % for continuous load
 */
export function receptacleCheck(input: ReceptacleCheckInput): ReceptacleCheck {
  requireObject("input", input);
  const { receptacle, voltage, current, continuousShare = CONTINUOUS_SHARE } = input;
  requireOneOf("receptacle", receptacle, Object.keys(receptacleRatings));
  requireWithin("voltage", voltage, 1, 1000, "V");
  requireWithin("current", current, 0, 1e4, "A");
  requireWithin("continuousShare", continuousShare, 0.1, 1, "as a ratio");
  const rating = receptacleRatings[receptacle];
  // A 240 V load cannot be plugged into a 125 V receptacle; a 120 V load finds 120 V only where there is a neutral.
  if (rating.voltage === 250 && voltage < 150 && !rating.neutral) {
    throw new InputError("voltage", voltage, `200 to 250 V: a ${receptacle} has no neutral`);
  }
  const continuous = rating.current * continuousShare;
  const margin = continuous - current;
  return {
    state: voltage > rating.voltage ? "voltage too high" : margin >= 0 ? "within limit" : "above limit",
    rated: rating.current as Current,
    continuous: continuous as Current,
    margin: margin as Current,
    ratedApparentPower: (voltage * rating.current) as ApparentPower,
    continuousApparentPower: (voltage * continuous) as ApparentPower,
    method: "nema-wd-6",
  };
}
