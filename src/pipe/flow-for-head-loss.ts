/**
 * Flow that a given head loss drives through a pipe: `darcyWeisbachLoss` turned around, in closed form.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { KinematicViscosity, Length, Velocity, VolumeFlow } from "../units/index.ts";
import { reynoldsForLoss } from "./reynolds-for-loss.ts";

/** A pipe and the head spent in it. */
export interface FlowForHeadLossInput {
  /** Head lost from inlet to outlet; negative for a flow that runs backwards. −100 000 to 100 000 m. */
  readonly headLoss: Length;
  /** Inside diameter, not the trade size. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Length of straight pipe. 0.001 to 1 000 000 m. */
  readonly length: Length;
  /** Equivalent sand-grain height of the wall, 0 for smooth. 0 to half the diameter, m. */
  readonly roughness: Length;
  /** Kinematic viscosity of the liquid. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
}

/** The flow, and the numbers behind it. */
export interface FlowForHeadLoss {
  /** Flow, m³/s, with the sign of the head loss. */
  readonly flow: VolumeFlow;
  /** Mean velocity, m/s, with the same sign. */
  readonly velocity: Velocity;
  /** Reynolds number; 0 at rest. */
  readonly reynolds: number;
}

/**
 * Flow that a given head loss drives through a straight, full, round pipe.
 *
 * @remarks
 * Re √f = D √(2 g D h / L) / ν holds no flow, so Colebrook's equation gives 1/√f, and Re, at once:
 * Re = −2 Re√f log₁₀(k/3.7 + 2.51/(Re√f)). Laminar flow is Re = (Re√f)²/64; the bridge between is a cubic. It undoes
 * `darcyWeisbachLoss` in every regime, to some 1e-15.
 *
 * @param input - the pipe and the head loss; each field says its unit and the values it takes
 * @returns the flow, velocity and Reynolds number
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example What 20 ft of head drives through 300 ft of 1 in copper
 * ```ts
 * import { flowForHeadLoss } from "risingmain/pipe";
 * import { celsius, feet, inches, inGpm } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * const { flow } = flowForHeadLoss({
 *   headLoss: feet(20), insideDiameter: inches(1.025), length: feet(300),
 *   roughness: feet(0.000005), viscosity: waterKinematicViscosity(celsius(10)),
 * });
 * inGpm(flow); // ≈ 9.827
 * ```
 *
 * @source colebrook-1939: the closed form is the paper's own equation, read for Re √f
 * @source derived: the laminar law and the bridge of `frictionFactor`
 */
export function flowForHeadLoss(input: FlowForHeadLossInput): FlowForHeadLoss {
  requireObject("input", input);
  const { headLoss, insideDiameter: D, length: L, roughness, viscosity } = input;
  requireWithin("headLoss", headLoss, -1e5, 1e5, "m");
  requireWithin("insideDiameter", D, 1e-4, 100, "m");
  requireWithin("length", L, 1e-3, 1e6, "m");
  requireWithin("roughness", roughness, 0, D / 2, "m (half the inside diameter)");
  requireWithin("viscosity", viscosity, 1e-9, 1, "m²/s");
  const size = D / viscosity;
  const G = 2 * STANDARD_GRAVITY * D * (Math.abs(headLoss) / L) * size * size;
  const reynolds = reynoldsForLoss(G, roughness / D);
  const velocity = headLoss < 0 ? -reynolds / size : reynolds / size;
  return {
    flow: ((Math.PI / 4) * D * D * velocity) as VolumeFlow,
    velocity: velocity as Velocity,
    reynolds,
  };
}
