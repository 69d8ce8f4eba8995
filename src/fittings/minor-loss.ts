/**
 * Head lost in a fitting from its resistance coefficient, and the way back from a measured loss.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Length, VolumeFlow } from "../units/index.ts";

/** A creeping flow has a vast coefficient, K₁/Re: 1500 at a Reynolds number of 1e-9 gives 1.5e12. */
const MOST_COEFFICIENT = 1e13;

/** A fitting by its coefficient, and the flow in it. */
export interface MinorLossInput {
  /** Resistance coefficient K on the velocity head at the inside diameter given. 0 to 1e13. */
  readonly coefficient: number;
  /** Flow; a negative flow runs backwards. −1000 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Inside diameter that the coefficient refers to. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
}

/**
 * Head lost in a fitting, from its resistance coefficient.
 *
 * @remarks
 * h = K · V² / (2 g),  V = 4 Q / (π D²)
 *
 * with h the result, K `coefficient`, Q `flow`, D `insideDiameter`. As accurate as K.
 *
 * @param input - coefficient, flow and bore; each field says its unit and the values it takes
 * @returns the head lost, m; negative when the flow is
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { minorLoss } from "risingmain/fittings";
 * import { gpm, inches, inFeet } from "risingmain/units";
 *
 * inFeet(minorLoss({ coefficient: 10, flow: gpm(10), insideDiameter: inches(1.049) })); // ≈ 2.142
 * ```
 *
 * @source derived: definition of the resistance coefficient
 */
export function minorLoss(input: MinorLossInput): Length {
  requireObject("input", input);
  const { coefficient, flow, insideDiameter } = input;
  requireWithin("coefficient", coefficient, 0, MOST_COEFFICIENT, "");
  requireWithin("flow", flow, -1e3, 1e3, "m³/s");
  requireWithin("insideDiameter", insideDiameter, 1e-4, 100, "m");
  return headLossOf(coefficient, flow, insideDiameter) as Length;
}

/**
 * The same without its gate, for coefficients that laminar flow makes as large as it likes.
 *
 * @internal
 */
export function headLossOf(coefficient: number, flow: number, insideDiameter: number): number {
  const V = (4 * flow) / (Math.PI * insideDiameter * insideDiameter);
  return (coefficient * V * Math.abs(V)) / (2 * STANDARD_GRAVITY);
}

/** A loss measured across a fitting. */
export interface MeasuredLoss {
  /** Head lost across the fitting. 0 to 1e6 m. */
  readonly headLoss: Length;
  /** Flow at which it was measured. 1e-9 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Inside diameter that the coefficient shall refer to. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
}

/**
 * Resistance coefficient of a fitting, from a measured loss; undoes {@link minorLoss}.
 *
 * @remarks
 * K = 2 g h / V²,  V = 4 Q / (π D²)
 *
 * @param input - loss, flow and bore; each field says its unit and the values it takes
 * @returns K on the velocity head at the inside diameter, 0 or more
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { coefficientOfLoss } from "risingmain/fittings";
 * import { feet, gpm, inches } from "risingmain/units";
 *
 * coefficientOfLoss({ headLoss: feet(2.142), flow: gpm(10), insideDiameter: inches(1.049) }); // ≈ 10.0
 * ```
 *
 * @source derived: definition of the resistance coefficient
 */
export function coefficientOfLoss(input: MeasuredLoss): number {
  requireObject("input", input);
  const { headLoss, flow, insideDiameter } = input;
  requireWithin("headLoss", headLoss, 0, 1e6, "m");
  requireWithin("flow", flow, 1e-9, 1e3, "m³/s");
  requireWithin("insideDiameter", insideDiameter, 1e-4, 100, "m");
  const V = (4 * flow) / (Math.PI * insideDiameter * insideDiameter);
  return (2 * STANDARD_GRAVITY * headLoss) / (V * V);
}
