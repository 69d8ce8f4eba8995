/**
 * The pressure relief valve: what it must pass, and which part it must protect.
 *
 * @module
 */
import { findRoot, requireList, requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import { type GaugePressure, InputError, type VolumeFlow } from "../units/index.ts";
import { calledFlow, type FlowAtPressure, requireFunction } from "./called-flow.ts";
import type { ControlCondition } from "./condition.ts";

/** A part of the system and the pressure it is made for. */
export interface RatedPart {
  /** What it is: "tank", "drop pipe", "filter housing". Up to 200 characters. */
  readonly name: string;
  /** Highest gauge pressure it is rated for, at the level of the relief valve and the temperature of the water. 0 to 100 MPa. */
  readonly rating: GaugePressure;
}

/**
 * The part with the lowest rating.
 *
 * @param parts - 1 to 10 000 parts
 * @returns the first of the weakest
 * @throws {@link units.InputError} where the list is empty or a part has no rating
 *
 * @example
 * ```ts
 * import { weakestPart } from "risingmain/control";
 * import { psi } from "risingmain/units";
 *
 * weakestPart([{ name: "tank", rating: psi(100) }, { name: "filter housing", rating: psi(90) }]).name; // => "filter housing"
 * ```
 *
 * @source derived: a minimum
 */
export function weakestPart(parts: readonly RatedPart[]): RatedPart {
  requireList("parts", parts, 1, 10_000);
  parts.forEach((part, i) => {
    requireObject(`parts[${i}]`, part);
    const name: unknown = part.name;
    if (typeof name !== "string" || name.length > 200) {
      throw new InputError(`parts[${i}].name`, name, "a text of up to 200 characters");
    }
    requireWithin(`parts[${i}].rating`, part.rating, 0, 1e8, "Pa gauge");
  });
  return parts.reduce((weakest, part) => (part.rating < weakest.rating ? part : weakest));
}

/** A relief valve, the pump behind it and the parts it protects. */
export interface ReliefValveInput {
  /** Gauge pressure at which it opens. 0 to 100 MPa. */
  readonly setPressure: GaugePressure;
  /** Flow it passes at its set pressure by its certificate; left out where unknown. 0 to 100 m³/s. */
  readonly ratedCapacity?: VolumeFlow;
  /** Gauge pressure at which the switch stops the pump, or the highest held. 0 to 100 MPa. */
  readonly cutOut: GaugePressure;
  /** Flow of the pump against the gauge pressure at the valve, the well at its highest level; never rising, 0 above shutoff. */
  readonly pumpFlowAt: FlowAtPressure;
  /** The parts the pressure reaches, with their ratings. 1 to 10 000. */
  readonly parts: readonly RatedPart[];
}

/** What can be wrong with a relief valve. */
export type ReliefValveCode =
  | "set above a rating"
  | "set at or below the cut-out"
  | "capacity too small"
  | "capacity not known";

/** What a relief valve must do. */
export interface ReliefValveCheck {
  /** The pump's flow at the set pressure, m³/s: what the valve must pass with the switch stuck closed. */
  readonly requiredCapacity: VolumeFlow;
  /** The weakest part. */
  readonly weakest: RatedPart;
  /** True where the pump can pass the weakest rating, so that only the valve guards it. */
  readonly pumpCanExceedRating: boolean;
  /** The pressure the pump and a valve of the rated capacity settle at with nothing used, Pa; only with `ratedCapacity`. */
  readonly relievingPressure?: GaugePressure;
  /** What was found; empty where nothing was. */
  readonly conditions: readonly ControlCondition<ReliefValveCode>[];
  /** Warnings to show with the result. */
  readonly cautions: readonly Caution[];
}

/** Warnings of pressure vessels and their relief. */
const RELIEF_CAUTIONS: readonly Caution[] = [
  {
    code: "no-shutoff-at-relief",
    text: "Put no shutoff between the relief valve and the tank, and lead its discharge in full size to where it floods and scalds nothing.",
    basis: "common practice",
  },
  {
    code: "no-air-test",
    text: "Never test a tank or piping with compressed air: the energy stored in air kills when a part lets go.",
    basis: "common practice",
  },
  {
    code: "local-vessel-code",
    text: "The pressure vessel and plumbing codes of the place set size, setting and type. They have the last word.",
    basis: "common practice",
  },
];

/**
 * What a relief valve must pass, and whether its setting suits the switch and the weakest part.
 *
 * @remarks
 * Required capacity = the pump's flow at the set pressure. The setting must lie above the cut-out, so that it stays
 * shut in service, and not above the lowest rating of any part. With a rated capacity the pressure it settles at is
 * found from the pump's curve and a valve that passes in proportion to √p beyond its set pressure.
 *
 * @param input - the valve, the switch, the pump and the rated parts
 * @returns the required capacity, the weakest part, the conditions found and the cautions
 * @throws {@link units.InputError} naming the first field that is not usable, or the curve where it is not a flow
 *
 * @example
 * ```ts
 * import { checkReliefValve } from "risingmain/control";
 * import { type GaugePressure, gpm, inGpm, inPsi, psi } from "risingmain/units";
 *
 * const relief = checkReliefValve({
 *   setPressure: psi(75), ratedCapacity: gpm(20), cutOut: psi(60),
 *   pumpFlowAt: (pressure: GaugePressure) => gpm(Math.max(0, 27 - inPsi(pressure) / 5)),
 *   parts: [{ name: "tank", rating: psi(100) }],
 * });
 * inGpm(relief.requiredCapacity); // ≈ 12.0
 * relief.conditions.length; // => 0
 * ```
 *
 * @source midwest-plan-service-1979, safety devices (from memory): capacity at set pressure not less than the pump's output
 */
export function checkReliefValve(input: ReliefValveInput): ReliefValveCheck {
  requireObject("input", input);
  const { setPressure, ratedCapacity, cutOut, pumpFlowAt, parts } = input;
  requireWithin("setPressure", setPressure, 0, 1e8, "Pa gauge");
  requireWithin("cutOut", cutOut, 0, 1e8, "Pa gauge");
  if (ratedCapacity !== undefined) requireWithin("ratedCapacity", ratedCapacity, 0, 100, "m³/s");
  requireFunction("pumpFlowAt", pumpFlowAt);
  const weakest = weakestPart(parts);
  const flowAt = (pressure: number): number => calledFlow("pumpFlowAt", pumpFlowAt, pressure);
  const requiredCapacity = flowAt(setPressure);
  const pumpCanExceedRating = flowAt(weakest.rating) > 0;

  const conditions: ControlCondition<ReliefValveCode>[] = [];
  const pressureFound = (code: ReliefValveCode, value: number, limit: number): void => {
    conditions.push({ code, severity: "problem", value, limit, unit: "Pa", basis: "midwest-plan-service-1979" });
  };
  if (setPressure > weakest.rating) pressureFound("set above a rating", setPressure, weakest.rating);
  if (setPressure <= cutOut) pressureFound("set at or below the cut-out", setPressure, cutOut);
  if (ratedCapacity === undefined) {
    if (pumpCanExceedRating) {
      conditions.push({ ...capacity("capacity not known", 0, requiredCapacity), severity: "caution" });
    }
    return result();
  }
  if (ratedCapacity < requiredCapacity) {
    conditions.push(capacity("capacity too small", ratedCapacity, requiredCapacity));
  }
  return { ...result(), relievingPressure: relievingPressure(setPressure, ratedCapacity, flowAt) as GaugePressure };

  function result(): ReliefValveCheck {
    return {
      requiredCapacity: requiredCapacity as VolumeFlow,
      weakest,
      pumpCanExceedRating,
      conditions,
      cautions: RELIEF_CAUTIONS,
    };
  }
}

function capacity(code: ReliefValveCode, value: number, limit: number): ControlCondition<ReliefValveCode> {
  return { code, severity: "problem", value, limit, unit: "m³/s", basis: "midwest-plan-service-1979" };
}

/**
 * Where pump and valve settle: at the set pressure while the valve passes all the pump gives there, otherwise above it,
 * the valve fully open and passing in proportion to the root of the pressure.
 */
function relievingPressure(set: number, rated: number, flowAt: (pressure: number) => number): number {
  // A valve that passes nothing leaves the pump at its shutoff; past that the balance would be met everywhere.
  const capacity = Math.max(rated, Number.MIN_VALUE);
  const excess = (pressure: number): number =>
    flowAt(pressure) - capacity * Math.sqrt(pressure / Math.max(set, Number.MIN_VALUE));
  if (!(excess(set) > 0)) return set;
  // The pump's flow falls, so a pressure high enough ends the search; 1 GPa is past any pump.
  let high = Math.max(2 * set, 1e5);
  while (excess(high) > 0) {
    if (high >= 1e9) return high;
    high *= 2;
  }
  return findRoot(excess, set, high).x;
}
