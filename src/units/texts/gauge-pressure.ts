/**
 * How a gauge pressure is written.
 *
 * @module
 */
import {
  bar,
  type GaugePressure,
  inBar,
  inKilopascals,
  inMegapascals,
  inPascals,
  inPsi,
  kilopascals,
  megapascals,
  pascals,
  psi,
} from "../gauge-pressure.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which a gauge pressure is read and written. */
export const gaugePressureUnits: readonly UnitText<GaugePressure>[] = [
  { symbol: "Pa", words: ["Pa"], make: pascals, read: inPascals },
  { symbol: "kPa", words: ["kPa"], make: kilopascals, read: inKilopascals },
  { symbol: "MPa", words: ["MPa"], make: megapascals, read: inMegapascals },
  { symbol: "bar", words: ["bar", "barg"], make: bar, read: inBar },
  { symbol: "psi", words: ["psi", "psig", "lbf/in²"], make: psi, read: inPsi },
];

/**
 * Reads a gauge pressure from text, with its unit.
 *
 * @param text - a number and a unit, such as `85 psi`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parsePressure } from "risingmain/units";
 *
 * parsePressure("85 psi"); // ≈ 586054
 * ```
 */
export function parsePressure(text: string): GaugePressure {
  return parseQuantity("a gauge pressure", gaugePressureUnits, "85 psi", text);
}
