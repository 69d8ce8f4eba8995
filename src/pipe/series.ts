/**
 * Pipes laid end to end: one flow, losses added.
 *
 * @module
 */
import { findRoot, requireWithin } from "../numeric/index.ts";
import type { Length, VolumeFlow } from "../units/index.ts";
import { type DarcyWeisbachLoss, darcyWeisbachLoss } from "./darcy-weisbach.ts";
import { flowForHeadLoss } from "./flow-for-head-loss.ts";
import { type RunFlowInput, type RunLossInput, requireRun, type SolvedRun, sum } from "./pipe-run.ts";

/** Head lost in pipes end to end. */
export interface SeriesLoss {
  /** Head lost from end to end, m: the sum of the parts. */
  readonly headLoss: Length;
  /** Slope of that loss with flow, s/m². */
  readonly headLossSlope: number;
  /** Each pipe's loss, in the order given. */
  readonly parts: readonly DarcyWeisbachLoss[];
}

/**
 * Head that a flow loses in pipes laid end to end.
 *
 * @remarks
 * h = Σ hᵢ(Q), each by `darcyWeisbachLoss`; joints and changes of bore belong to `fittings`.
 *
 * @param input - the pipes, the flow and the viscosity
 * @returns the loss, its slope with flow, and each pipe's part
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { seriesLoss } from "risingmain/pipe";
 * import { celsius, feet, gpm, inches, inFeet } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * const smooth = { roughness: feet(0.000005) };
 * const line = seriesLoss({
 *   pipes: [
 *     { ...smooth, insideDiameter: inches(1.61), length: feet(800) },
 *     { ...smooth, insideDiameter: inches(1.049), length: feet(200) },
 *   ],
 *   flow: gpm(12), viscosity: waterKinematicViscosity(celsius(10)),
 * });
 * inFeet(line.headLoss); // ≈ 25.81
 * ```
 *
 * @source derived: conservation of mass; friction by colebrook-1939
 */
export function seriesLoss(input: RunFlowInput): SeriesLoss {
  requireRun(input);
  const { pipes, flow, viscosity } = input;
  const parts = pipes.map((pipe) => darcyWeisbachLoss({ ...pipe, flow, viscosity }));
  return {
    headLoss: sum(parts.map((part) => part.headLoss)) as Length,
    headLossSlope: sum(parts.map((part) => part.headLossSlope)),
    parts,
  };
}

/**
 * Flow that a head loss drives through pipes laid end to end.
 *
 * @remarks
 * Each pipe alone, given all the head, would carry more; the narrowest such flow, and 0, bracket the answer, and the
 * loss of the series rises strictly between them.
 *
 * @param input - the pipes, the head loss and the viscosity
 * @returns the flow, and each pipe's loss
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { seriesFlow } from "risingmain/pipe";
 * import { celsius, feet, inches, inGpm } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * const smooth = { roughness: feet(0.000005) };
 * const run = seriesFlow({
 *   pipes: [
 *     { ...smooth, insideDiameter: inches(1.61), length: feet(800) },
 *     { ...smooth, insideDiameter: inches(1.049), length: feet(200) },
 *   ],
 *   headLoss: feet(25.81), viscosity: waterKinematicViscosity(celsius(10)),
 * });
 * inGpm(run.flow); // ≈ 12.0
 * ```
 *
 * @source derived: conservation of mass; friction by colebrook-1939
 */
export function seriesFlow(input: RunLossInput): SolvedRun {
  requireRun(input);
  const { pipes, headLoss, viscosity } = input;
  requireWithin("headLoss", headLoss, -1e5, 1e5, "m");
  // The loss is odd in the flow: solve for its size.
  const target = Math.abs(headLoss);
  const most = Math.min(
    ...pipes.map((pipe) => flowForHeadLoss({ ...pipe, headLoss: target as Length, viscosity }).flow),
  );
  const excess = (flow: number): number => seriesLoss({ pipes, flow: flow as VolumeFlow, viscosity }).headLoss - target;
  const size = excess(most) <= 0 ? most : findRoot(excess, 0, most).x;
  const flow = (headLoss < 0 ? -size : size) as VolumeFlow;
  const losses = seriesLoss({ pipes, flow, viscosity }).parts.map((part) => part.headLoss);
  return { flow, headLoss, flows: pipes.map(() => flow), losses };
}
