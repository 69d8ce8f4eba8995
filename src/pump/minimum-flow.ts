/**
 * How a pump warms its water, and the least flow that keeps it cool.
 *
 * @module
 */
import { cubicValue, findRoot, requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Length, Ratio, TemperatureDifference, VolumeFlow } from "../units/index.ts";
import type { PumpCurve } from "./curve.ts";
import { LEAST_EFFICIENCY, requireEfficiency } from "./power.ts";
import { requireCurve } from "./read-curve.ts";

/** Specific heat of water from 5 to 60 °C within 0.5 %, J/(kg·K) (`iapws-sr6-08`). */
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
