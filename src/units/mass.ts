/**
 * A mass, held as a number in kg.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A mass; a number in kg, told apart from other quantities by its type alone. */
export type Mass = Quantity<"Mass">;

/**
 * A mass given in kilograms.
 *
 * @param value - the number of kilograms; any finite number
 * @returns the quantity in kg
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilograms } from "risingmain/units";
 *
 * kilograms(12); // ≈ 12.000
 * ```
 */
export function kilograms(value: number): Mass {
  return scaled("kilograms", value) as Mass;
}

/**
 * Reads a mass in kilograms; undoes {@link kilograms}.
 *
 * @param mass - the quantity, in kg
 * @returns the number of kilograms
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilograms, kilograms } from "risingmain/units";
 *
 * inKilograms(kilograms(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilograms(mass: Mass): number {
  return read("inKilograms", mass);
}

/**
 * A mass given in grams. 1 g = 1e-3 kg (SI prefix).
 *
 * @param value - the number of grams; any finite number
 * @returns the quantity in kg
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { grams } from "risingmain/units";
 *
 * grams(12); // ≈ 0.012
 * ```
 */
export function grams(value: number): Mass {
  return scaled("grams", value, 1e-3) as Mass;
}

/**
 * Reads a mass in grams; undoes {@link grams}.
 *
 * @param mass - the quantity, in kg
 * @returns the number of grams
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { grams, inGrams } from "risingmain/units";
 *
 * inGrams(grams(12)); // ≈ 12.0000000000
 * ```
 */
export function inGrams(mass: Mass): number {
  return read("inGrams", mass, 1e-3);
}

/**
 * A mass given in milligrams. 1 mg = 1e-6 kg (SI prefix).
 *
 * @param value - the number of milligrams; any finite number
 * @returns the quantity in kg
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { milligrams } from "risingmain/units";
 *
 * milligrams(12); // ≈ 0.000012
 * ```
 */
export function milligrams(value: number): Mass {
  return scaled("milligrams", value, 1e-6) as Mass;
}

/**
 * Reads a mass in milligrams; undoes {@link milligrams}.
 *
 * @param mass - the quantity, in kg
 * @returns the number of milligrams
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMilligrams, milligrams } from "risingmain/units";
 *
 * inMilligrams(milligrams(12)); // ≈ 12.0000000000
 * ```
 */
export function inMilligrams(mass: Mass): number {
  return read("inMilligrams", mass, 1e-6);
}

/**
 * A mass given in tonnes. 1 t = 1e3 kg (exact: 1000 kg).
 *
 * @param value - the number of tonnes; any finite number
 * @returns the quantity in kg
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { tonnes } from "risingmain/units";
 *
 * tonnes(12); // ≈ 1.2e+4
 * ```
 */
export function tonnes(value: number): Mass {
  return scaled("tonnes", value, 1e3) as Mass;
}

/**
 * Reads a mass in tonnes; undoes {@link tonnes}.
 *
 * @param mass - the quantity, in kg
 * @returns the number of tonnes
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inTonnes, tonnes } from "risingmain/units";
 *
 * inTonnes(tonnes(12)); // ≈ 12.0000000000
 * ```
 */
export function inTonnes(mass: Mass): number {
  return read("inTonnes", mass, 1e3);
}

/**
 * A mass given in avoirdupois pounds. 1 lb = 0.45359237 kg (exact: 0.45359237 kg).
 *
 * @param value - the number of avoirdupois pounds; any finite number
 * @returns the quantity in kg
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { pounds } from "risingmain/units";
 *
 * pounds(12); // ≈ 5.44311
 * ```
 */
export function pounds(value: number): Mass {
  return scaled("pounds", value, 0.45359237) as Mass;
}

/**
 * Reads a mass in avoirdupois pounds; undoes {@link pounds}.
 *
 * @param mass - the quantity, in kg
 * @returns the number of avoirdupois pounds
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPounds, pounds } from "risingmain/units";
 *
 * inPounds(pounds(12)); // ≈ 12.0000000000
 * ```
 */
export function inPounds(mass: Mass): number {
  return read("inPounds", mass, 0.45359237);
}

/**
 * A mass given in avoirdupois ounces. 1 oz = 0.028349523125 kg (exact: 1/16 lb).
 *
 * @param value - the number of avoirdupois ounces; any finite number
 * @returns the quantity in kg
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { ounces } from "risingmain/units";
 *
 * ounces(12); // ≈ 0.340194
 * ```
 */
export function ounces(value: number): Mass {
  return scaled("ounces", value, 0.028349523125) as Mass;
}

/**
 * Reads a mass in avoirdupois ounces; undoes {@link ounces}.
 *
 * @param mass - the quantity, in kg
 * @returns the number of avoirdupois ounces
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inOunces, ounces } from "risingmain/units";
 *
 * inOunces(ounces(12)); // ≈ 12.0000000000
 * ```
 */
export function inOunces(mass: Mass): number {
  return read("inOunces", mass, 0.028349523125);
}
