/**
 * How a kinematic viscosity is written.
 *
 * @module
 */
import {
  centistokes,
  inCentistokes,
  inSquareFeetPerSecond,
  inSquareMetresPerSecond,
  inSquareMillimetresPerSecond,
  type KinematicViscosity,
  squareFeetPerSecond,
  squareMetresPerSecond,
  squareMillimetresPerSecond,
} from "../kinematic-viscosity.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which a kinematic viscosity is read and written. */
export const kinematicViscosityUnits: readonly UnitText<KinematicViscosity>[] = [
  { symbol: "m²/s", words: ["m²/s", "m^2/s"], make: squareMetresPerSecond, read: inSquareMetresPerSecond },
  { symbol: "mm²/s", words: ["mm²/s", "mm^2/s"], make: squareMillimetresPerSecond, read: inSquareMillimetresPerSecond },
  { symbol: "cSt", words: ["cSt"], make: centistokes, read: inCentistokes },
  { symbol: "ft²/s", words: ["ft²/s", "ft^2/s"], make: squareFeetPerSecond, read: inSquareFeetPerSecond },
];

/**
 * Reads a kinematic viscosity from text, with its unit.
 *
 * @param text - a number and a unit, such as `1.3 cSt`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseKinematicViscosity } from "risingmain/units";
 *
 * parseKinematicViscosity("1.3 cSt"); // ≈ 0.0000013
 * ```
 */
export function parseKinematicViscosity(text: string): KinematicViscosity {
  return parseQuantity("a kinematic viscosity", kinematicViscosityUnits, "1.3 cSt", text);
}
