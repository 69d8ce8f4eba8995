/**
 * A mass concentration in water, held as a number in kg/m³.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A mass concentration in water; a number in kg/m³, told apart from other quantities by its type alone. */
export type Concentration = Quantity<"Concentration">;

/**
 * A mass concentration in water given in kilograms per cubic metre.
 *
 * @param value - the number of kilograms per cubic metre; any finite number
 * @returns the quantity in kg/m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilogramsPerCubicMetreConcentration } from "risingmain/units";
 *
 * kilogramsPerCubicMetreConcentration(12); // ≈ 12.000
 * ```
 */
export function kilogramsPerCubicMetreConcentration(value: number): Concentration {
  return scaled("kilogramsPerCubicMetreConcentration", value) as Concentration;
}

/**
 * Reads a mass concentration in water in kilograms per cubic metre; undoes {@link kilogramsPerCubicMetreConcentration}.
 *
 * @param concentration - the quantity, in kg/m³
 * @returns the number of kilograms per cubic metre
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilogramsPerCubicMetreConcentration, kilogramsPerCubicMetreConcentration } from "risingmain/units";
 *
 * inKilogramsPerCubicMetreConcentration(kilogramsPerCubicMetreConcentration(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilogramsPerCubicMetreConcentration(concentration: Concentration): number {
  return read("inKilogramsPerCubicMetreConcentration", concentration);
}

/**
 * A mass concentration in water given in milligrams per litre. 1 mg/L = 1e-3 kg/m³ (exact).
 *
 * @param value - the number of milligrams per litre; any finite number
 * @returns the quantity in kg/m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { mgPerLitre } from "risingmain/units";
 *
 * mgPerLitre(12); // ≈ 0.012
 * ```
 */
export function mgPerLitre(value: number): Concentration {
  return scaled("mgPerLitre", value, 1e-3) as Concentration;
}

/**
 * Reads a mass concentration in water in milligrams per litre; undoes {@link mgPerLitre}.
 *
 * @param concentration - the quantity, in kg/m³
 * @returns the number of milligrams per litre
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMgPerLitre, mgPerLitre } from "risingmain/units";
 *
 * inMgPerLitre(mgPerLitre(12)); // ≈ 12.0000000000
 * ```
 */
export function inMgPerLitre(concentration: Concentration): number {
  return read("inMgPerLitre", concentration, 1e-3);
}

/**
 * A mass concentration in water given in grams per litre.
 *
 * @param value - the number of grams per litre; any finite number
 * @returns the quantity in kg/m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { gramsPerLitre } from "risingmain/units";
 *
 * gramsPerLitre(12); // ≈ 12.000
 * ```
 */
export function gramsPerLitre(value: number): Concentration {
  return scaled("gramsPerLitre", value) as Concentration;
}

/**
 * Reads a mass concentration in water in grams per litre; undoes {@link gramsPerLitre}.
 *
 * @param concentration - the quantity, in kg/m³
 * @returns the number of grams per litre
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { gramsPerLitre, inGramsPerLitre } from "risingmain/units";
 *
 * inGramsPerLitre(gramsPerLitre(12)); // ≈ 12.0000000000
 * ```
 */
export function inGramsPerLitre(concentration: Concentration): number {
  return read("inGramsPerLitre", concentration);
}

/**
 * A mass concentration in water given in micrograms per litre. 1 µg/L = 1e-6 kg/m³ (exact).
 *
 * @param value - the number of micrograms per litre; any finite number
 * @returns the quantity in kg/m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { microgramsPerLitre } from "risingmain/units";
 *
 * microgramsPerLitre(12); // ≈ 0.000012
 * ```
 */
export function microgramsPerLitre(value: number): Concentration {
  return scaled("microgramsPerLitre", value, 1e-6) as Concentration;
}

/**
 * Reads a mass concentration in water in micrograms per litre; undoes {@link microgramsPerLitre}.
 *
 * @param concentration - the quantity, in kg/m³
 * @returns the number of micrograms per litre
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMicrogramsPerLitre, microgramsPerLitre } from "risingmain/units";
 *
 * inMicrogramsPerLitre(microgramsPerLitre(12)); // ≈ 12.0000000000
 * ```
 */
export function inMicrogramsPerLitre(concentration: Concentration): number {
  return read("inMicrogramsPerLitre", concentration, 1e-6);
}
