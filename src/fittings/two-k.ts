/**
 * Resistance coefficient of a fitting by the two-K method: one constant for slow flow, one for fast, and the size.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Length } from "../units/index.ts";
import { INCH } from "./inch.ts";
import type { TwoKConstants } from "./two-k-fittings.ts";

/** A fitting by its two constants, and the flow in it. */
export interface TwoKInput {
  /** The constants, such as `twoKFittings["globe valve"]`. */
  readonly constants: TwoKConstants;
  /** Reynolds number in the pipe. 1e-9 to 1e12. */
  readonly reynolds: number;
  /** Inside diameter of the pipe. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
}

/**
 * Resistance coefficient of a fitting by the two-K method.
 *
 * @remarks
 * K = K₁ / Re + K∞ (1 + 1 in / D)
 *
 * with K on the velocity head V²/(2g) in the pipe, Re `reynolds`, D `insideDiameter`. Made from chemical-plant fittings over
 * laminar and turbulent flow; the size term is an estimate below 1 in, where the three-K method was made to do better.
 * Fittings of one name differ by 25 % and more between makers.
 *
 * @param input - constants, Reynolds number and bore; each field says its unit and the values it takes
 * @returns K, 0 or more
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { twoKCoefficient, twoKFittings } from "risingmain/fittings";
 * import { inches } from "risingmain/units";
 *
 * twoKCoefficient({ constants: twoKFittings["globe valve"], reynolds: 10_000, insideDiameter: inches(2) }); // ≈ 6.15
 * ```
 *
 * @source hooper-1981
 */
export function twoKCoefficient(input: TwoKInput): number {
  requireObject("input", input);
  const { constants, reynolds, insideDiameter } = input;
  requireObject("constants", constants);
  requireWithin("constants.K1", constants.K1, 0, 1e5, "");
  requireWithin("constants.Kinf", constants.Kinf, 0, 1e4, "");
  requireWithin("reynolds", reynolds, 1e-9, 1e12, "");
  requireWithin("insideDiameter", insideDiameter, 1e-4, 100, "m");
  return constants.K1 / reynolds + constants.Kinf * (1 + INCH / insideDiameter);
}
