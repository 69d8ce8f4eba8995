/**
 * Water through a hole under a head, and the coefficients of its jet from what can be measured.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Length, Velocity, VolumeFlow } from "../units/index.ts";

/** A hole and the head on it. */
export interface OrificeFlowInput {
  /** Diameter of the hole. 0.0001 to 10 m. */
  readonly diameter: Length;
  /** Head on the middle of the hole. 0 to 100 000 m. */
  readonly head: Length;
  /** Discharge coefficient: about 0.61 with a sharp edge, 0.8 for a short tube, 0.98 rounded. 0.01 to 1. */
  readonly dischargeCoefficient: number;
}

/**
 * Flow through a hole into the open.
 *
 * @remarks
 * Q = C_d A √(2 g H)
 *
 * with C_d `dischargeCoefficient`, H `head`, A the area of the hole. The head must be several diameters.
 *
 * @param input - hole, head and coefficient; each field says its unit and the values it takes
 * @returns the flow, m³/s
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A leak of 1/16 in under 60 psi (about 139 ft)
 * ```ts
 * import { orificeFlow } from "risingmain/fittings";
 * import { feet, inches, inUsGallonsPerDay } from "risingmain/units";
 *
 * inUsGallonsPerDay(orificeFlow({ diameter: inches(1 / 16), head: feet(139), dischargeCoefficient: 0.61 })); // ≈ 794
 * ```
 *
 * @source derived: energy of a jet, less its contraction
 */
export function orificeFlow(input: OrificeFlowInput): VolumeFlow {
  requireObject("input", input);
  const { diameter, head, dischargeCoefficient } = input;
  requireWithin("diameter", diameter, 1e-4, 10, "m");
  requireWithin("head", head, 0, 1e5, "m");
  requireWithin("dischargeCoefficient", dischargeCoefficient, 0.01, 1, "");
  return (dischargeCoefficient * idealFlow(diameter, head)) as VolumeFlow;
}

/** A hole whose flow was measured. */
export interface DischargeCoefficientInput {
  /** Flow measured. 0 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Diameter of the hole. 0.0001 to 10 m. */
  readonly diameter: Length;
  /** Head on the middle of the hole. 0.001 to 100 000 m. */
  readonly head: Length;
}

/**
 * Discharge coefficient of a hole, from a measured flow; undoes {@link orificeFlow}.
 *
 * @remarks
 * C_d = Q / (A √(2 g H)). Over 1 means a wrong measurement.
 *
 * @param input - flow, hole and head; each field says its unit and the values it takes
 * @returns the discharge coefficient
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { dischargeCoefficient } from "risingmain/fittings";
 * import { litresPerSecond, metres, millimetres } from "risingmain/units";
 *
 * dischargeCoefficient({ flow: litresPerSecond(3), diameter: millimetres(25), head: metres(5.5) }); // ≈ 0.588
 * ```
 *
 * @source derived: energy of a jet, less its contraction
 */
export function dischargeCoefficient(input: DischargeCoefficientInput): number {
  requireObject("input", input);
  const { flow, diameter, head } = input;
  requireWithin("flow", flow, 0, 1e3, "m³/s");
  requireWithin("diameter", diameter, 1e-4, 10, "m");
  requireWithin("head", head, 1e-3, 1e5, "m");
  return flow / idealFlow(diameter, head);
}

/** How far a level jet flies while it falls. */
export interface TrajectoryInput {
  /** Level distance from the mouth. 0 to 1000 m. */
  readonly distance: Length;
  /** Fall over that distance. 0.001 to 1000 m. */
  readonly drop: Length;
}

/**
 * Velocity of a jet that leaves level, from where it falls.
 *
 * @remarks
 * V = x √(g / (2 y))
 *
 * with x `distance`, y `drop`; air drag left out. Measured on the stream of a full horizontal pipe, its velocity times the bore's
 * area is the flow, within about 10 %.
 *
 * @param input - distance and drop; each field says its unit and the values it takes
 * @returns the velocity at the mouth, m/s
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { trajectoryVelocity } from "risingmain/fittings";
 * import { inches, inFeetPerSecond } from "risingmain/units";
 *
 * inFeetPerSecond(trajectoryVelocity({ distance: inches(12), drop: inches(4) })); // ≈ 6.95
 * ```
 *
 * @source derived: a free fall
 */
export function trajectoryVelocity(input: TrajectoryInput): Velocity {
  requireObject("input", input);
  const { distance, drop } = input;
  requireWithin("distance", distance, 0, 1e3, "m");
  requireWithin("drop", drop, 1e-3, 1e3, "m");
  return (distance * Math.sqrt(STANDARD_GRAVITY / (2 * drop))) as Velocity;
}

/** A jet's flight and the head behind it. */
export interface VelocityCoefficientInput extends TrajectoryInput {
  /** Head behind the jet. 0.001 to 100 000 m. */
  readonly head: Length;
}

/**
 * Velocity coefficient of a jet: its velocity over that of a jet without loss.
 *
 * @remarks
 * C_v = V / √(2 g H) = x / (2 √(y H))
 *
 * @param input - flight and head; each field says its unit and the values it takes
 * @returns the velocity coefficient
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { velocityCoefficient } from "risingmain/fittings";
 * import { metres } from "risingmain/units";
 *
 * velocityCoefficient({ distance: metres(1.5), drop: metres(0.12), head: metres(5.5) }); // ≈ 0.923
 * ```
 *
 * @source derived: a free fall
 */
export function velocityCoefficient(input: VelocityCoefficientInput): number {
  const velocity = trajectoryVelocity(input);
  requireWithin("head", input.head, 1e-3, 1e5, "m");
  return velocity / Math.sqrt(2 * STANDARD_GRAVITY * input.head);
}

function idealFlow(diameter: number, head: number): number {
  return (Math.PI / 4) * diameter ** 2 * Math.sqrt(2 * STANDARD_GRAVITY * head);
}
