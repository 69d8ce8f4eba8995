/**
 * The one pipe that would lose what a run of pipes loses.
 *
 * @module
 */
import { requireObject, requireOneOf } from "../numeric/index.ts";
import type { KinematicViscosity, Length, VolumeFlow } from "../units/index.ts";
import { type DiameterForHeadLoss, diameterForHeadLoss } from "./diameter-for-head-loss.ts";
import { parallelLoss } from "./parallel.ts";
import type { PipeOfRun } from "./pipe-run.ts";
import { seriesLoss } from "./series.ts";

/** A run of pipes, and the length and wall of the one pipe to replace it. */
export interface EquivalentPipeInput {
  /** How the pipes are laid: end to end, or side by side. */
  readonly arrangement: "series" | "parallel";
  /** The pipes. 1 to 1000 of them. */
  readonly pipes: readonly PipeOfRun[];
  /** Flow at which both shall lose the same; another flow gives a slightly different bore. 1e-9 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Kinematic viscosity of the liquid. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
  /** Length of the one pipe. 0.001 to 1 000 000 m. */
  readonly length: Length;
  /** Equivalent sand-grain height of its wall, 0 for smooth. 0 to 0.1 m. */
  readonly roughness: Length;
}

/**
 * Inside diameter of the one pipe that loses the same head as a run of pipes, at a given flow.
 *
 * @remarks
 * The loss by `seriesLoss` or `parallelLoss`, then the bore by `diameterForHeadLoss`.
 *
 * @param input - the run, the flow, and the length and wall of the one pipe
 * @returns the bore, or that the wall is too rough for it
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example Two 1 in lines side by side are one of 1.36 in
 * ```ts
 * import { equivalentPipe } from "risingmain/pipe";
 * import { celsius, feet, gpm, inches, inInches } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * const wall = { length: feet(400), roughness: feet(0.000005) };
 * const line = { ...wall, insideDiameter: inches(1.049) };
 * const one = equivalentPipe({
 *   arrangement: "parallel", pipes: [line, line], flow: gpm(16), ...wall,
 *   viscosity: waterKinematicViscosity(celsius(10)),
 * });
 * one.state === "found" && inInches(one.insideDiameter); // ≈ 1.355
 * ```
 *
 * @source derived: equal loss at equal flow; friction by colebrook-1939
 */
export function equivalentPipe(input: EquivalentPipeInput): DiameterForHeadLoss {
  requireObject("input", input);
  const { arrangement, pipes, flow, viscosity, length, roughness } = input;
  requireOneOf("arrangement", arrangement, ["series", "parallel"]);
  const run = arrangement === "series" ? seriesLoss : parallelLoss;
  const { headLoss } = run({ pipes, flow, viscosity });
  return diameterForHeadLoss({ flow, headLoss, length, roughness, viscosity });
}
