/**
 * A faucet, hydrant, waterer or sprinkler as an outlet whose flow goes with the square root of pressure.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { GaugePressure, VolumeFlow } from "../units/index.ts";

/** One point that is known of an outlet. */
export interface RatedOutlet {
  /** Flow, wide open. 1e-9 to 1000 m³/s. */
  readonly ratedFlow: VolumeFlow;
  /** Gauge pressure at the outlet's inlet while that flows. 1 to 1e8 Pa. */
  readonly ratedPressure: GaugePressure;
}

/** A rated outlet at another pressure. */
export interface OutletFlowInput extends RatedOutlet {
  /** Gauge pressure at the outlet's inlet while it runs. 0 to 1e8 Pa. */
  readonly pressure: GaugePressure;
}

/**
 * Outlet coefficient from one rated point.
 *
 * @remarks
 * c = Q_r / √p_r, so that Q = c √p. In m³/s/√Pa.
 *
 * @param outlet - the rated point; each field says its unit and the values it takes
 * @returns the outlet coefficient, m³/s/√Pa
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { outletCoefficient } from "risingmain/fittings";
 * import { litresPerMinute, kilopascals } from "risingmain/units";
 *
 * outletCoefficient({ ratedFlow: litresPerMinute(12), ratedPressure: kilopascals(100) }); // ≈ 6.32e-7
 * ```
 *
 * @source derived: turbulent flow through an outlet of fixed opening
 */
export function outletCoefficient(outlet: RatedOutlet): number {
  requireObject("outlet", outlet);
  requireWithin("ratedFlow", outlet.ratedFlow, 1e-9, 1e3, "m³/s");
  requireWithin("ratedPressure", outlet.ratedPressure, 1, 1e8, "Pa");
  return outlet.ratedFlow / Math.sqrt(outlet.ratedPressure);
}

/**
 * Flow of an outlet at another pressure than its rated one.
 *
 * @remarks
 * Q = Q_r √(p / p_r)
 *
 * For an opening that does not change: not for outlets with a flow regulator, nor for drip emitters that compensate.
 *
 * @param input - the rated point and the pressure; each field says its unit and the values it takes
 * @returns the flow, m³/s
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A hydrant that gives 15 gpm at 40 psi, at 20 psi
 * ```ts
 * import { outletFlow } from "risingmain/fittings";
 * import { gpm, inGpm, psi } from "risingmain/units";
 *
 * inGpm(outletFlow({ ratedFlow: gpm(15), ratedPressure: psi(40), pressure: psi(20) })); // ≈ 10.6
 * ```
 *
 * @source derived: turbulent flow through an outlet of fixed opening
 */
export function outletFlow(input: OutletFlowInput): VolumeFlow {
  const coefficient = outletCoefficient(input);
  requireWithin("pressure", input.pressure, 0, 1e8, "Pa");
  return (coefficient * Math.sqrt(input.pressure)) as VolumeFlow;
}

/** A rated outlet at another flow. */
export interface OutletPressureInput extends RatedOutlet {
  /** Flow wanted. 0 to 1000 m³/s. */
  readonly flow: VolumeFlow;
}

/**
 * Pressure an outlet needs for a flow; undoes {@link outletFlow}.
 *
 * @remarks
 * p = p_r (Q / Q_r)²
 *
 * @param input - the rated point and the flow; each field says its unit and the values it takes
 * @returns the gauge pressure at the outlet's inlet, Pa
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { outletPressure } from "risingmain/fittings";
 * import { gpm, inPsi, psi } from "risingmain/units";
 *
 * inPsi(outletPressure({ ratedFlow: gpm(15), ratedPressure: psi(40), flow: gpm(7.5) })); // ≈ 10.0
 * ```
 *
 * @source derived: turbulent flow through an outlet of fixed opening
 */
export function outletPressure(input: OutletPressureInput): GaugePressure {
  requireObject("outlet", input);
  outletCoefficient(input);
  requireWithin("flow", input.flow, 0, 1e3, "m³/s");
  return (input.ratedPressure * (input.flow / input.ratedFlow) ** 2) as GaugePressure;
}
