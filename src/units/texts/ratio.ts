/**
 * How a plain ratio is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import { inPercent, inRatio, percent, type Ratio, ratio } from "../ratio.ts";

/** The units in which a plain ratio is read and written. */
export const ratioUnits: readonly UnitText<Ratio>[] = [
  { symbol: "1", words: [""], make: ratio, read: inRatio },
  { symbol: "%", words: ["%", "percent", "pct"], make: percent, read: inPercent },
];

/**
 * Reads a plain ratio from text, with its unit.
 *
 * @param text - a number and a unit, such as `85 %`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseRatio } from "risingmain/units";
 *
 * parseRatio("85 %"); // ≈ 0.85000
 * ```
 */
export function parseRatio(text: string): Ratio {
  return parseQuantity("a plain ratio", ratioUnits, "85 %", text);
}
