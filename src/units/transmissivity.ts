/**
 * A transmissivity of an aquifer or a specific capacity of a well: flow per metre, held as a number in m²/s.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A transmissivity of an aquifer or a specific capacity of a well: flow per metre; a number in m²/s, told apart from other quantities by its type alone. */
export type Transmissivity = Quantity<"Transmissivity">;

/**
 * A transmissivity of an aquifer or a specific capacity of a well given in square metres per second.
 *
 * @param value - the number of square metres per second; any finite number
 * @returns the quantity in m²/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { squareMetresPerSecondTransmissivity } from "risingmain/units";
 *
 * squareMetresPerSecondTransmissivity(12); // ≈ 12.000
 * ```
 */
export function squareMetresPerSecondTransmissivity(value: number): Transmissivity {
  return scaled("squareMetresPerSecondTransmissivity", value) as Transmissivity;
}

/**
 * Reads a transmissivity of an aquifer or a specific capacity of a well in square metres per second; undoes {@link squareMetresPerSecondTransmissivity}.
 *
 * @param transmissivity - the quantity, in m²/s
 * @returns the number of square metres per second
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inSquareMetresPerSecondTransmissivity, squareMetresPerSecondTransmissivity } from "risingmain/units";
 *
 * inSquareMetresPerSecondTransmissivity(squareMetresPerSecondTransmissivity(12)); // ≈ 12.0000000000
 * ```
 */
export function inSquareMetresPerSecondTransmissivity(transmissivity: Transmissivity): number {
  return read("inSquareMetresPerSecondTransmissivity", transmissivity);
}

/**
 * A transmissivity of an aquifer or a specific capacity of a well given in square metres per day. 1 m²/d = 1/86400 m²/s (exact: 1/86 400 m²/s).
 *
 * @param value - the number of square metres per day; any finite number
 * @returns the quantity in m²/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { squareMetresPerDay } from "risingmain/units";
 *
 * squareMetresPerDay(12); // ≈ 0.000138889
 * ```
 */
export function squareMetresPerDay(value: number): Transmissivity {
  return scaled("squareMetresPerDay", value, 1, 86400) as Transmissivity;
}

/**
 * Reads a transmissivity of an aquifer or a specific capacity of a well in square metres per day; undoes {@link squareMetresPerDay}.
 *
 * @param transmissivity - the quantity, in m²/s
 * @returns the number of square metres per day
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inSquareMetresPerDay, squareMetresPerDay } from "risingmain/units";
 *
 * inSquareMetresPerDay(squareMetresPerDay(12)); // ≈ 12.0000000000
 * ```
 */
export function inSquareMetresPerDay(transmissivity: Transmissivity): number {
  return read("inSquareMetresPerDay", transmissivity, 1, 86400);
}

/**
 * A transmissivity of an aquifer or a specific capacity of a well given in square feet per day. 1 ft²/d = 1.0752666666666667e-6 m²/s (0.09290304 m² / 86 400 s, to the nearest double).
 *
 * @param value - the number of square feet per day; any finite number
 * @returns the quantity in m²/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { squareFeetPerDay } from "risingmain/units";
 *
 * squareFeetPerDay(12); // ≈ 0.0000129032
 * ```
 */
export function squareFeetPerDay(value: number): Transmissivity {
  return scaled("squareFeetPerDay", value, 1.0752666666666667e-6) as Transmissivity;
}

/**
 * Reads a transmissivity of an aquifer or a specific capacity of a well in square feet per day; undoes {@link squareFeetPerDay}.
 *
 * @param transmissivity - the quantity, in m²/s
 * @returns the number of square feet per day
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inSquareFeetPerDay, squareFeetPerDay } from "risingmain/units";
 *
 * inSquareFeetPerDay(squareFeetPerDay(12)); // ≈ 12.0000000000
 * ```
 */
export function inSquareFeetPerDay(transmissivity: Transmissivity): number {
  return read("inSquareFeetPerDay", transmissivity, 1.0752666666666667e-6);
}

/**
 * A transmissivity of an aquifer or a specific capacity of a well given in US gallons per minute per foot. 1 gpm/ft = 0.00020698883333333335 m²/s (6.30901964e-5 m³/s / 0.3048 m, to the nearest double).
 *
 * @param value - the number of US gallons per minute per foot; any finite number
 * @returns the quantity in m²/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { gpmPerFoot } from "risingmain/units";
 *
 * gpmPerFoot(12); // ≈ 0.00248387
 * ```
 */
export function gpmPerFoot(value: number): Transmissivity {
  return scaled("gpmPerFoot", value, 0.00020698883333333335) as Transmissivity;
}

/**
 * Reads a transmissivity of an aquifer or a specific capacity of a well in US gallons per minute per foot; undoes {@link gpmPerFoot}.
 *
 * @param transmissivity - the quantity, in m²/s
 * @returns the number of US gallons per minute per foot
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { gpmPerFoot, inGpmPerFoot } from "risingmain/units";
 *
 * inGpmPerFoot(gpmPerFoot(12)); // ≈ 12.0000000000
 * ```
 */
export function inGpmPerFoot(transmissivity: Transmissivity): number {
  return read("inGpmPerFoot", transmissivity, 0.00020698883333333335);
}

/**
 * A transmissivity of an aquifer or a specific capacity of a well given in US gallons per day per foot. 1 gpd/ft = 1.4374224537037037e-7 m²/s (4.381263638888889e-8 m³/s / 0.3048 m, to the nearest double).
 *
 * @param value - the number of US gallons per day per foot; any finite number
 * @returns the quantity in m²/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { usGallonsPerDayPerFoot } from "risingmain/units";
 *
 * usGallonsPerDayPerFoot(12); // ≈ 0.00000172491
 * ```
 */
export function usGallonsPerDayPerFoot(value: number): Transmissivity {
  return scaled("usGallonsPerDayPerFoot", value, 1.4374224537037037e-7) as Transmissivity;
}

/**
 * Reads a transmissivity of an aquifer or a specific capacity of a well in US gallons per day per foot; undoes {@link usGallonsPerDayPerFoot}.
 *
 * @param transmissivity - the quantity, in m²/s
 * @returns the number of US gallons per day per foot
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inUsGallonsPerDayPerFoot, usGallonsPerDayPerFoot } from "risingmain/units";
 *
 * inUsGallonsPerDayPerFoot(usGallonsPerDayPerFoot(12)); // ≈ 12.0000000000
 * ```
 */
export function inUsGallonsPerDayPerFoot(transmissivity: Transmissivity): number {
  return read("inUsGallonsPerDayPerFoot", transmissivity, 1.4374224537037037e-7);
}

/**
 * A transmissivity of an aquifer or a specific capacity of a well given in litres per second per metre. 1 L/s/m = 1e-3 m²/s (exact).
 *
 * @param value - the number of litres per second per metre; any finite number
 * @returns the quantity in m²/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { litresPerSecondPerMetre } from "risingmain/units";
 *
 * litresPerSecondPerMetre(12); // ≈ 0.012
 * ```
 */
export function litresPerSecondPerMetre(value: number): Transmissivity {
  return scaled("litresPerSecondPerMetre", value, 1e-3) as Transmissivity;
}

/**
 * Reads a transmissivity of an aquifer or a specific capacity of a well in litres per second per metre; undoes {@link litresPerSecondPerMetre}.
 *
 * @param transmissivity - the quantity, in m²/s
 * @returns the number of litres per second per metre
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inLitresPerSecondPerMetre, litresPerSecondPerMetre } from "risingmain/units";
 *
 * inLitresPerSecondPerMetre(litresPerSecondPerMetre(12)); // ≈ 12.0000000000
 * ```
 */
export function inLitresPerSecondPerMetre(transmissivity: Transmissivity): number {
  return read("inLitresPerSecondPerMetre", transmissivity, 1e-3);
}
