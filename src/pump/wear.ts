/**
 * A worn pump: the curve after part of its head or flow is gone.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Ratio } from "../units/index.ts";
import type { PumpCurve } from "./curve.ts";
import { requireCurve } from "./read-curve.ts";
import { scaleCurve } from "./scale-curve.ts";

/** How much of a curve wear has taken. */
export interface Wear {
  /** Share of the head lost at every flow: worn vanes. 0 to 0.9; 0 where left out. */
  readonly headLost?: Ratio;
  /** Share of the flow lost at every head: worn rings, which let water back. 0 to 0.9; 0 where left out. */
  readonly flowLost?: Ratio;
}

/**
 * The curve of a pump that wear has taken head or flow from.
 *
 * @remarks
 * Head by (1 − `headLost`) at each flow, and flow by (1 − `flowLost`) at each head. Sand opens the rings of a
 * submersible pump: its shutoff head falls little and its flow at a head much. Shaft power is left as it was, and
 * efficiency falls by both shares.
 *
 * @param curve - the pump when new, from {@link pumpCurve}
 * @param wear - shares of head and flow lost
 * @returns the curve now
 * @throws {@link units.InputError} where the curve is not one or a share is out of its range
 *
 * @example
 * ```ts
 * import { pumpCurve, wornCurve } from "risingmain/pump";
 * import { feet, gpm, inFeet, percent } from "risingmain/units";
 *
 * const curve = pumpCurve({ points: [{ flow: gpm(0), head: feet(400) }, { flow: gpm(20), head: feet(100) }] });
 * inFeet(wornCurve(curve, { headLost: percent(10) }).shutoffHead); // ≈ 360.0
 * ```
 *
 * @source common practice
 */
export function wornCurve(curve: PumpCurve, wear: Wear): PumpCurve {
  requireCurve(curve);
  requireObject("wear", wear);
  const { headLost = 0, flowLost = 0 } = wear;
  requireWithin("headLost", headLost, 0, 0.9, "as a ratio: 0.10 for 10 %");
  requireWithin("flowLost", flowLost, 0, 0.9, "as a ratio: 0.10 for 10 %");
  return scaleCurve(curve, { head: 1 - headLost, flow: 1 - flowLost, efficiency: (1 - headLost) * (1 - flowLost) });
}
