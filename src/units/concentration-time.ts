/**
 * A concentration held for a time (the CT of disinfection), held as a number in kg·s/m³.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A concentration held for a time (the CT of disinfection); a number in kg·s/m³, told apart from other quantities by its type alone. */
export type ConcentrationTime = Quantity<"ConcentrationTime">;

/**
 * A concentration held for a time (the CT of disinfection) given in milligram-minutes per litre. 1 mg·min/L = 0.06 kg·s/m³ (exact).
 *
 * @param value - the number of milligram-minutes per litre; any finite number
 * @returns the quantity in kg·s/m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { mgMinutesPerLitre } from "risingmain/units";
 *
 * mgMinutesPerLitre(12); // ≈ 0.72
 * ```
 */
export function mgMinutesPerLitre(value: number): ConcentrationTime {
  return scaled("mgMinutesPerLitre", value, 60, 1000) as ConcentrationTime;
}

/**
 * Reads a concentration held for a time (the CT of disinfection) in milligram-minutes per litre; undoes {@link mgMinutesPerLitre}.
 *
 * @param concentrationTime - the quantity, in kg·s/m³
 * @returns the number of milligram-minutes per litre
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMgMinutesPerLitre, mgMinutesPerLitre } from "risingmain/units";
 *
 * inMgMinutesPerLitre(mgMinutesPerLitre(12)); // ≈ 12.0000000000
 * ```
 */
export function inMgMinutesPerLitre(concentrationTime: ConcentrationTime): number {
  return read("inMgMinutesPerLitre", concentrationTime, 60, 1000);
}
