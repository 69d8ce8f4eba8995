/**
 * Resistance coefficient of a fitting by the three-K method, which holds over the sizes better than the two-K method.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Length } from "../units/index.ts";
import { INCH } from "./inch.ts";
import type { ThreeKConstants } from "./three-k-fittings.ts";

/** A fitting by its three constants, and the flow in it. */
export interface ThreeKInput {
  /** The constants, such as `threeKFittings["elbow 90 threaded standard"]`. */
  readonly constants: ThreeKConstants;
  /** Reynolds number in the pipe. 1e-9 to 1e12. */
  readonly reynolds: number;
  /** Nominal size of the fitting as a length: 1-1/4 in is `inches(1.25)`. 0.0001 to 100 m. */
  readonly nominalSize: Length;
}

/**
 * Resistance coefficient of a fitting by the three-K method.
 *
 * @remarks
 * K = K₁ / Re + Kᵢ (1 + K_d / Dₙ^0.3), Dₙ in inches
 *
 * with K on the velocity head V²/(2g) in the pipe, Re `reynolds`, Dₙ `nominalSize`. Fitted to published data over laminar and
 * turbulent flow and a wide span of sizes; fittings of one name differ by 25 % and more between makers.
 *
 * @param input - constants, Reynolds number and nominal size; each field says its unit and the values it takes
 * @returns K, 0 or more
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { threeKCoefficient, threeKFittings } from "risingmain/fittings";
 * import { inches } from "risingmain/units";
 *
 * threeKCoefficient({ constants: threeKFittings["angle valve 45"], reynolds: 10_000, nominalSize: inches(2) }); // ≈ 1.15725
 * ```
 *
 * @source darby-1999
 */
export function threeKCoefficient(input: ThreeKInput): number {
  requireObject("input", input);
  const { constants, reynolds, nominalSize } = input;
  requireObject("constants", constants);
  requireWithin("constants.K1", constants.K1, 0, 1e5, "");
  requireWithin("constants.Ki", constants.Ki, 0, 1e4, "");
  requireWithin("constants.Kd", constants.Kd, 0, 100, "in^0.3");
  requireWithin("reynolds", reynolds, 1e-9, 1e12, "");
  requireWithin("nominalSize", nominalSize, 1e-4, 100, "m");
  return constants.K1 / reynolds + constants.Ki * (1 + constants.Kd / (nominalSize / INCH) ** 0.3);
}
