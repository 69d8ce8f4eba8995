/**
 * Pipes laid side by side between the same two points: one head loss, flows added.
 *
 * @module
 */
import { findRoot, requireWithin } from "../numeric/index.ts";
import { InputError, type Length, type VolumeFlow } from "../units/index.ts";
import { darcyWeisbachLoss } from "./darcy-weisbach.ts";
import { type FlowForHeadLoss, flowForHeadLoss } from "./flow-for-head-loss.ts";
import { type RunFlowInput, type RunLossInput, requireRun, type SolvedRun, sum } from "./pipe-run.ts";

/** Flow through pipes side by side. */
export interface ParallelFlow {
  /** Flow through all together, m³/s: the sum of the parts. */
  readonly flow: VolumeFlow;
  /** Each pipe's flow, in the order given. */
  readonly parts: readonly FlowForHeadLoss[];
}

/**
 * Flow that a head loss drives through pipes laid side by side between the same two points.
 *
 * @remarks
 * Q = Σ Qᵢ(h), each by `flowForHeadLoss`, in closed form.
 *
 * @param input - the pipes, the head loss and the viscosity
 * @returns the flow, and each pipe's part
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { parallelFlow } from "risingmain/pipe";
 * import { celsius, feet, inches, inGpm } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * const pipe = { insideDiameter: inches(1.049), length: feet(400), roughness: feet(0.000005) };
 * const viscosity = waterKinematicViscosity(celsius(10));
 * inGpm(parallelFlow({ pipes: [pipe, pipe], headLoss: feet(20), viscosity }).flow); // ≈ 17.77
 * ```
 *
 * @source derived: one head at each junction; friction by colebrook-1939
 */
export function parallelFlow(input: RunLossInput): ParallelFlow {
  requireRun(input);
  const { pipes, headLoss, viscosity } = input;
  const parts = pipes.map((pipe) => flowForHeadLoss({ ...pipe, headLoss, viscosity }));
  return { flow: sum(parts.map((part) => part.flow)) as VolumeFlow, parts };
}

/**
 * How a flow divides among pipes laid side by side, and the head it loses.
 *
 * @remarks
 * All the flow through the pipe that would lose least, and no loss, bracket the answer; the flow of the set rises
 * strictly with the head between them.
 *
 * @param input - the pipes, the flow and the viscosity
 * @returns the head loss, and each pipe's flow
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A second line beside an old one
 * ```ts
 * import { parallelLoss } from "risingmain/pipe";
 * import { celsius, feet, gpm, inches, inFeet, inGpm } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * const smooth = { length: feet(400), roughness: feet(0.000005) };
 * const run = parallelLoss({
 *   pipes: [{ ...smooth, insideDiameter: inches(1.049) }, { ...smooth, insideDiameter: inches(1.38) }],
 *   flow: gpm(20), viscosity: waterKinematicViscosity(celsius(10)),
 * });
 * inFeet(run.headLoss); // ≈ 11.39
 * run.flows.map((flow) => Math.round(inGpm(flow))); // => [6, 14]
 * ```
 *
 * @source derived: one head at each junction; friction by colebrook-1939
 */
export function parallelLoss(input: RunFlowInput): SolvedRun {
  requireRun(input);
  const { pipes, flow, viscosity } = input;
  requireWithin("flow", flow, -1e3, 1e3, "m³/s");
  const target = Math.abs(flow);
  const most = Math.min(
    ...pipes.map((pipe) => darcyWeisbachLoss({ ...pipe, flow: target as VolumeFlow, viscosity }).headLoss),
  );
  if (most > 1e5) throw new InputError("flow", flow, "a flow that loses at most 100000 m of head in these pipes");
  const excess = (head: number): number => parallelFlow({ pipes, headLoss: head as Length, viscosity }).flow - target;
  const size = excess(most) <= 0 ? most : findRoot(excess, 0, most).x;
  const headLoss = (flow < 0 ? -size : size) as Length;
  const flows = parallelFlow({ pipes, headLoss, viscosity }).parts.map((part) => part.flow);
  return { flow, headLoss, flows, losses: pipes.map(() => headLoss) };
}
