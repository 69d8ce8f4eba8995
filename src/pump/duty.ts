/**
 * Where on its curve a pump works: near its best flow, too far left, or on the side of upthrust.
 *
 * @module
 */
import { cubicSlope, requireObject, requireWithin } from "../numeric/index.ts";
import type { Ratio, VolumeFlow } from "../units/index.ts";
import { bestEfficiencyPoint } from "./best-efficiency.ts";
import type { PumpCurve } from "./curve.ts";
import { requireCurve } from "./read-curve.ts";

/** A pump at work. */
export interface DutyInput {
  /** The pump, with efficiency, from {@link pumpCurve}. */
  readonly curve: PumpCurve;
  /** Flow it delivers. 0 to the curve's `runoutFlow`, m³/s. */
  readonly flow: VolumeFlow;
  /** Share of the best flow below which it is called low. 0 to 1; 0.7 where left out. */
  readonly lowFrom?: Ratio;
  /** Share of the best flow above which upthrust is to be looked at. 1 to 3; 1.2 where left out. */
  readonly upthrustFrom?: Ratio;
}

/** Where on the curve the pump works. */
export interface Duty {
  /** Flow over the flow of best efficiency; null where the curve has no efficiency. */
  readonly bestFraction: Ratio | null;
  /**
   * "low" wastes power and heats the water; "upthrust side" lifts the shaft of a vertical multistage pump off its thrust
   * bearing; "unknown" where the curve has no efficiency.
   */
  readonly region: "low" | "preferred" | "upthrust side" | "unknown";
  /** False on a part of the curve where the head does not fall with flow. */
  readonly stable: boolean;
  /** Basis of the limits: the preferred region as usually drawn, recalled. */
  readonly method: "ansi-hi-9.6.3";
}

/** Preferred operating region, 70 to 120 % of the best flow (`ansi-hi-9.6.3`, from memory). */
export const LOW_FROM = 0.7;
export const UPTHRUST_FROM = 1.2;

/**
 * Where on its curve a pump works: fraction of the best flow, and on which side.
 *
 * @remarks
 * 70 to 120 % of the flow of best efficiency is usually preferred. Right of it a submersible multistage pump may run in
 * upthrust, most often with an open discharge; the maker's greatest flow comes before this rule.
 *
 * @param input - the pump and its flow; limits where the maker gives others
 * @returns fraction of the best flow, region, and whether the curve falls there
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { pumpCurve, pumpDuty } from "risingmain/pump";
 * import { feet, gpm, percent } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: gpm(0), head: feet(365) },
 *     { flow: gpm(8), head: feet(322), efficiency: percent(54) },
 *     { flow: gpm(12), head: feet(275), efficiency: percent(62) },
 *     { flow: gpm(16), head: feet(206), efficiency: percent(58) },
 *   ],
 * });
 * pumpDuty({ curve, flow: gpm(16) }).region; // => "upthrust side"
 * ```
 *
 * @source ansi-hi-9.6.3, preferred operating region, from memory
 */
export function pumpDuty(input: DutyInput): Duty {
  requireObject("input", input);
  const { curve, flow, lowFrom = LOW_FROM, upthrustFrom = UPTHRUST_FROM } = input;
  requireCurve(curve);
  requireWithin("flow", flow, 0, curve.runoutFlow, "m³/s, the end of the curve");
  requireWithin("lowFrom", lowFrom, 0, 1, "as a ratio");
  requireWithin("upthrustFrom", upthrustFrom, 1, 3, "as a ratio");
  const best = bestEfficiencyPoint(curve);
  const stable = cubicSlope(curve.head, flow) <= 0;
  if (best === null || !(best.flow > 0))
    return { bestFraction: null, region: "unknown", stable, method: "ansi-hi-9.6.3" };
  const fraction = flow / best.flow;
  const region = fraction < lowFrom ? "low" : fraction > upthrustFrom ? "upthrust side" : "preferred";
  return { bestFraction: fraction as Ratio, region, stable, method: "ansi-hi-9.6.3" };
}
