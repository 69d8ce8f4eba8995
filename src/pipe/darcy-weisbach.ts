/**
 * Head lost to friction in a straight, full, round pipe: the Darcy–Weisbach equation.
 *
 * The equation is bookkeeping; the physics sits in the friction factor (`friction-factor.ts`).
 * The empirical rule for cold water is `hazen-williams.ts`; bends and valves are `fittings`.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { KinematicViscosity, Length, Velocity, VolumeFlow } from "../units/index.ts";
import { type FrictionRegime, frictionOf } from "./friction-factor.ts";

/** Below this Reynolds number nothing moves that could be measured, and 64/Re would overflow. */
const AT_REST = 1e-9;

/** A full pipe with liquid moving in it. */
export interface DarcyWeisbachInput {
  /** Flow; a negative flow runs backwards. −1000 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Inside diameter, not the trade size. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Length of straight pipe. 0 to 1 000 000 m. */
  readonly length: Length;
  /** Equivalent sand-grain height of the wall, 0 for smooth. 0 to half the diameter, m. */
  readonly roughness: Length;
  /** Kinematic viscosity of the liquid. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
}

/** The loss, and the numbers it was made from. */
export interface DarcyWeisbachLoss {
  /** Head lost from inlet to outlet, m; negative when the flow is. */
  readonly headLoss: Length;
  /** Slope of the head loss with flow, s/m²: what a solver of a network steps by. Never negative. */
  readonly headLossSlope: number;
  /** Mean velocity, m/s, with the sign of the flow. */
  readonly velocity: Velocity;
  /** Reynolds number; 0 at rest. */
  readonly reynolds: number;
  /** Darcy friction factor, four times the Fanning factor; 0 at rest, where it has no value. */
  readonly frictionFactor: number;
  /** The law that gave the friction factor. */
  readonly regime: FrictionRegime | "at rest";
  /** Id of the source of that law, or "derived" for the bridge between the two. */
  readonly method: "poiseuille-1840" | "colebrook-1939" | "derived";
  /** False where no law is published, or where it is used beyond the range its source gives. */
  readonly insideRange: boolean;
}

/**
 * Head lost to friction in a straight, full, round pipe.
 *
 * @remarks
 * h = f · (L / D) · V² / (2 g),  V = 4 Q / (π D²)
 *
 * with h `headLoss`, f `frictionFactor`, L `length`, D `insideDiameter`, Q `flow`, V `velocity`; all SI.
 * Holds for steady flow of a Newtonian liquid in a full round pipe, away from the entrance.
 * As accurate as its friction factor: about 10 % in clean new pipe, less in old.
 *
 * @param input - the pipe and the flow; each field says its unit and the values it takes
 * @returns the loss, with the velocity, Reynolds number and friction factor behind it
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example 18 gpm through 1,000 ft of smooth pipe
 * ```ts
 * import { darcyWeisbachLoss } from "risingmain/pipe";
 * import { celsius, feet, gpm, inches, inFeet, millimetres } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * const loss = darcyWeisbachLoss({
 *   flow: gpm(18), insideDiameter: inches(1.38), length: feet(1000),
 *   roughness: millimetres(0.0015), viscosity: waterKinematicViscosity(celsius(10)),
 * });
 * inFeet(loss.headLoss); // ≈ 46.98
 * loss.regime; // => "turbulent"
 * ```
 *
 * @source colebrook-1939: the friction factor of turbulent flow
 * @source moody-1944: the 10 %
 */
export function darcyWeisbachLoss(input: DarcyWeisbachInput): DarcyWeisbachLoss {
  requireObject("input", input);
  const { flow, insideDiameter: D, length: L, roughness, viscosity } = input;
  requireWithin("flow", flow, -1e3, 1e3, "m³/s");
  requireWithin("insideDiameter", D, 1e-4, 100, "m");
  requireWithin("length", L, 0, 1e6, "m");
  requireWithin("roughness", roughness, 0, D / 2, "m");
  requireWithin("viscosity", viscosity, 1e-9, 1, "m²/s");

  const velocityPerFlow = 4 / (Math.PI * D * D);
  const V = velocityPerFlow * flow;
  const reynolds = (Math.abs(V) * D) / viscosity;
  const moving = Math.max(reynolds, AT_REST);
  const f = frictionOf(moving, roughness / D);
  // f Re stands for f |V|, so that flow near rest has its laminar loss and slope, and 0 · ∞ never comes up.
  const lossPerVelocity = (f.value * moving * viscosity * L) / (2 * STANDARD_GRAVITY * D * D);
  const rests = reynolds < AT_REST;
  return {
    headLoss: (lossPerVelocity * V) as Length,
    headLossSlope: lossPerVelocity * velocityPerFlow * (2 + f.slope),
    velocity: V as Velocity,
    reynolds,
    frictionFactor: rests ? 0 : f.value,
    regime: rests ? "at rest" : f.regime,
    method: f.method,
    insideRange: f.insideRange,
  };
}
