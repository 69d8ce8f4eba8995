/**
 * Loss of a filter, strainer or softener from the one point its maker gives: so much pressure at so much flow.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { PressureDifference, VolumeFlow } from "../units/index.ts";

/** A rated point and the flow in question. */
export interface RatedLossInput {
  /** Flow of the rated point. 1e-9 to 1000 m³/s. */
  readonly ratedFlow: VolumeFlow;
  /** Pressure lost at that flow. 0 to 1e8 Pa. */
  readonly ratedLoss: PressureDifference;
  /** Flow in question; a negative flow runs backwards. −1000 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** How the loss goes with flow: 2 for strainers and screens (the default), nearer 1 for fine media. 1 to 2. */
  readonly exponent?: number;
}

/** A loss carried from a rated point to another flow. */
export interface RatedLoss {
  /** Pressure lost, Pa; negative when the flow is. */
  readonly pressureLoss: PressureDifference;
  /** False above the rated flow or under a quarter of it, where the power law is a guess. */
  readonly insideRange: boolean;
}

/**
 * Pressure lost in a filter or strainer, carried from its rated point to another flow.
 *
 * @remarks
 * ΔP = ΔP_r (Q / Q_r)ⁿ
 *
 * with n the `exponent`: 2 where the flow is turbulent, as in screens; 1 where it seeps, as in fine media. The rated point is
 * of a clean element: a filter is changed when it has lost several times as much.
 *
 * @param input - the rated point and the flow; each field says its unit and the values it takes
 * @returns the loss, and whether the flow is near the rated one
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A strainer rated 3 psi at 20 gpm, at 10 gpm
 * ```ts
 * import { ratedLoss } from "risingmain/fittings";
 * import { gpm, inPsiDifference, psiDifference } from "risingmain/units";
 *
 * inPsiDifference(ratedLoss({ ratedFlow: gpm(20), ratedLoss: psiDifference(3), flow: gpm(10) }).pressureLoss); // ≈ 0.75
 * ```
 *
 * @source derived: turbulent loss goes with the square of flow, laminar loss with flow
 */
export function ratedLoss(input: RatedLossInput): RatedLoss {
  requireObject("input", input);
  const { ratedFlow, ratedLoss: rated, flow, exponent = 2 } = input;
  requireWithin("ratedFlow", ratedFlow, 1e-9, 1e3, "m³/s");
  requireWithin("ratedLoss", rated, 0, 1e8, "Pa");
  requireWithin("flow", flow, -1e3, 1e3, "m³/s");
  requireWithin("exponent", exponent, 1, 2, "");
  const share = Math.abs(flow) / ratedFlow;
  const loss = rated * share ** exponent;
  return {
    pressureLoss: (flow < 0 ? -loss : loss) as PressureDifference,
    insideRange: share >= 0.25 && share <= 1,
  };
}
