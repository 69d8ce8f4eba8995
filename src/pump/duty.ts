/**
 * Where on its curve a pump works: best efficiency, the side of upthrust, the least flow that keeps it cool.
 *
 * @module
 */
import { cubicValue, findRoot, requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Length, Ratio, TemperatureDifference, VolumeFlow } from "../units/index.ts";
import type { FlowLine, PumpCurve } from "./curve.ts";
import { LEAST_EFFICIENCY, requireEfficiency } from "./power.ts";
import { requireCurve } from "./read-curve.ts";

/** The best point of a curve. */
export interface BestEfficiencyPoint {
  /** Flow of best efficiency, m³/s. */
  readonly flow: VolumeFlow;
  /** Head there, m. */
  readonly head: Length;
  /** The best efficiency. */
  readonly efficiency: Ratio;
}

/**
 * The point of best efficiency.
 *
 * @remarks
 * The vertex of the parabola through the best of the given points and its two neighbours; the point itself where it is
 * the last. As good as the points are near the top: three within a few per cent of each other fix the flow to about 5 %.
 *
 * @param curve - a curve from {@link pumpCurve}
 * @returns flow, head and efficiency; null where the points gave no efficiency
 * @throws {@link units.InputError} where the curve is not one
 *
 * @example
 * ```ts
 * import { bestEfficiencyPoint, pumpCurve } from "risingmain/pump";
 * import { feet, gpm, inGpm, percent } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: gpm(0), head: feet(365) },
 *     { flow: gpm(8), head: feet(322), efficiency: percent(54) },
 *     { flow: gpm(12), head: feet(275), efficiency: percent(62) },
 *     { flow: gpm(16), head: feet(206), efficiency: percent(58) },
 *   ],
 * });
 * const best = bestEfficiencyPoint(curve);
 * best === null ? 0 : inGpm(best.flow); // ≈ 12.67
 * ```
 *
 * @source derived: the vertex of a parabola
 */
export function bestEfficiencyPoint(curve: PumpCurve): BestEfficiencyPoint | null {
  requireCurve(curve);
  const line = curve.efficiency;
  if (line === undefined) return null;
  const top = vertex(line);
  if (!(top.y > 0) || top.x > curve.runoutFlow) return null;
  return {
    flow: top.x as VolumeFlow,
    head: cubicValue(curve.head, top.x) as Length,
    efficiency: Math.min(1, top.y) as Ratio,
  };
}

/** The top of the parabola through the highest point and its neighbours. */
function vertex({ x, y }: FlowLine): { readonly x: number; readonly y: number } {
  const i = y.indexOf(Math.max(...y));
  const x1 = x[i] as number;
  const y1 = y[i] as number;
  const [x0, x2, y0, y2] = [x[i - 1], x[i + 1], y[i - 1], y[i + 1]];
  if (x0 === undefined || x2 === undefined || y0 === undefined || y2 === undefined) return { x: x1, y: y1 };
  const before = (y1 - y0) / (x1 - x0);
  const after = (y2 - y1) / (x2 - x1);
  const bend = (after - before) / (x2 - x0);
  if (!(bend < 0)) return { x: x1, y: y1 };
  const slope = before + bend * (x1 - x0);
  const shift = -slope / (2 * bend);
  return { x: x1 + shift, y: y1 + (slope * shift) / 2 };
}

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
const LOW_FROM = 0.7;
const UPTHRUST_FROM = 1.2;

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
  const stable = !curve.rising.some(({ fromFlow, toFlow }) => flow >= fromFlow && flow < toFlow);
  if (best === null || !(best.flow > 0))
    return { bestFraction: null, region: "unknown", stable, method: "ansi-hi-9.6.3" };
  const fraction = flow / best.flow;
  const region = fraction < lowFrom ? "low" : fraction > upthrustFrom ? "upthrust side" : "preferred";
  return { bestFraction: fraction as Ratio, region, stable, method: "ansi-hi-9.6.3" };
}

/** Specific heat of water from 5 to 60 °C within 0.3 %, J/(kg·K) (`iapws-sr6-08`). */
const SPECIFIC_HEAT = 4186;

/** A head made at an efficiency. */
export interface TemperatureRiseInput {
  /** Head of the pump. 0 to 10 000 m. */
  readonly head: Length;
  /** Pump efficiency there. 1e-6 to 1. */
  readonly efficiency: Ratio;
}

/**
 * How much warmer the water leaves a pump: all power that is not lift becomes heat in it.
 *
 * @remarks
 * ΔT = g H (1/η − 1) / c, with c = 4186 J/(kg·K). The motor's own loss, which also warms the water that cools it, is
 * not counted; nor is heat lost through the casing.
 *
 * @param input - head, m, and efficiency
 * @returns rise of temperature from inlet to outlet, K
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { pumpTemperatureRise } from "risingmain/pump";
 * import { feet, inFahrenheitDegrees, percent } from "risingmain/units";
 *
 * inFahrenheitDegrees(pumpTemperatureRise({ head: feet(300), efficiency: percent(10) })); // ≈ 3.47
 * ```
 *
 * @source derived: conservation of energy
 */
export function pumpTemperatureRise(input: TemperatureRiseInput): TemperatureDifference {
  requireObject("input", input);
  const { head, efficiency } = input;
  requireWithin("head", head, 0, 10_000, "m");
  requireEfficiency("efficiency", efficiency);
  return rise(head, efficiency) as TemperatureDifference;
}

function rise(head: number, efficiency: number): number {
  return (STANDARD_GRAVITY * head * (1 / efficiency - 1)) / SPECIFIC_HEAT;
}

/** A pump and how much warmer its water may get. */
export interface MinimumFlowInput {
  /** The pump, with efficiency, from {@link pumpCurve}. */
  readonly curve: PumpCurve;
  /** Rise allowed through the pump. 0.01 to 100 K. */
  readonly riseAllowed: TemperatureDifference;
}

/** The least flow that keeps a pump's water cool enough. */
export type MinimumFlow =
  | {
      /** From this flow to the best flow the rise stays within what is allowed. */
      readonly state: "known";
      /** Least flow, m³/s. */
      readonly flow: VolumeFlow;
    }
  | {
      /** Even at best efficiency the water gets warmer than allowed. */
      readonly state: "too warm at any flow";
      /** The rise there, K. */
      readonly rise: TemperatureDifference;
    }
  | {
      /** The curve has no efficiency. */
      readonly state: "unknown";
    };

/**
 * The least continuous flow of a pump, by the rise of temperature it may give the water.
 *
 * @remarks
 * Solves g H(Q) (1/η(Q) − 1) = c ΔT between no flow, where the rise has no bound, and the point of best efficiency.
 * One bound of several: the motor's cooling and the maker's minimum flow come before it.
 *
 * @param input - the pump and the allowed rise, K
 * @returns the flow, or why there is none
 * @throws {@link units.InputError} where the curve is not one or the rise is out of its range
 *
 * @example
 * ```ts
 * import { minimumFlow, pumpCurve } from "risingmain/pump";
 * import { celsiusDegrees, feet, gpm, inGpm, percent } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: gpm(0), head: feet(365) },
 *     { flow: gpm(8), head: feet(322), efficiency: percent(54) },
 *     { flow: gpm(12), head: feet(275), efficiency: percent(62) },
 *   ],
 * });
 * const least = minimumFlow({ curve, riseAllowed: celsiusDegrees(3) });
 * least.state === "known" ? inGpm(least.flow) : 0; // ≈ 0.8
 * ```
 *
 * @source derived: conservation of energy
 */
export function minimumFlow(input: MinimumFlowInput): MinimumFlow {
  requireObject("input", input);
  const { curve, riseAllowed } = input;
  requireCurve(curve);
  requireWithin("riseAllowed", riseAllowed, 0.01, 100, "K");
  const { efficiency } = curve;
  if (efficiency === undefined) return { state: "unknown" };
  const best = efficiency.x[efficiency.y.indexOf(Math.max(...efficiency.y))] as number;
  const first = efficiency.x[0] as number;
  if (best > curve.runoutFlow || first > 0 || !(cubicValue(efficiency, best) >= LEAST_EFFICIENCY))
    return { state: "unknown" };
  // Multiplied out, so that no flow (η = 0) gives a number and not infinity.
  const tooWarm = (flow: number): number => {
    const eta = cubicValue(efficiency, flow);
    return STANDARD_GRAVITY * cubicValue(curve.head, flow) * (1 - eta) - SPECIFIC_HEAT * riseAllowed * eta;
  };
  if (tooWarm(best) > 0) {
    const atBest = rise(cubicValue(curve.head, best), cubicValue(efficiency, best));
    return { state: "too warm at any flow", rise: atBest as TemperatureDifference };
  }
  if (!(tooWarm(0) > 0)) return { state: "known", flow: 0 as VolumeFlow };
  return { state: "known", flow: findRoot(tooWarm, 0, best).x as VolumeFlow };
}
