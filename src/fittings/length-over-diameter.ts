/**
 * Fittings as a length in diameters: K = (L/D) f_T.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Length } from "../units/index.ts";
import { fullyTurbulentFactor } from "./turbulent-factor.ts";

/** A fitting as a length in diameters, and its bore. */
export interface LengthOverDiameterInput {
  /** Equivalent length in diameters, such as `lengthsOverDiameter["foot valve poppet"]`. 0 to 100 000. */
  readonly lengthOverDiameter: number;
  /** Inside diameter of the pipe of the fitting's size. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
}

/**
 * Resistance coefficient of a fitting given as a length in diameters.
 *
 * @remarks
 * K = (L/D) · f_T, f_T the fully turbulent factor of clean commercial steel of that bore ({@link fullyTurbulentFactor}).
 * K so found is the same at every flow; below a Reynolds number of about 10 000 the true loss is higher.
 *
 * @param input - length in diameters and bore; each field says its unit and the values it takes
 * @returns K on the velocity head in the pipe, 0 or more
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A gate valve in 2 in schedule 40 steel
 * ```ts
 * import { lengthOverDiameterCoefficient, lengthsOverDiameter } from "risingmain/fittings";
 * import { inches } from "risingmain/units";
 *
 * lengthOverDiameterCoefficient({ lengthOverDiameter: lengthsOverDiameter["gate valve"], insideDiameter: inches(2.067) }); // ≈ 0.15
 * ```
 *
 * @source crane-410
 */
export function lengthOverDiameterCoefficient(input: LengthOverDiameterInput): number {
  requireObject("input", input);
  const { lengthOverDiameter, insideDiameter } = input;
  requireWithin("lengthOverDiameter", lengthOverDiameter, 0, 1e5, "diameters");
  return lengthOverDiameter * fullyTurbulentFactor({ insideDiameter });
}
