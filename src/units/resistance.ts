/**
 * An electric resistance, reactance or impedance, held as a number in Ω.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** An electric resistance, reactance or impedance; a number in Ω, told apart from other quantities by its type alone. */
export type Resistance = Quantity<"Resistance">;

/**
 * An electric resistance, reactance or impedance given in ohms.
 *
 * @param value - the number of ohms; any finite number
 * @returns the quantity in Ω
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { ohms } from "risingmain/units";
 *
 * ohms(12); // ≈ 12.000
 * ```
 */
export function ohms(value: number): Resistance {
  return scaled("ohms", value) as Resistance;
}

/**
 * Reads an electric resistance, reactance or impedance in ohms; undoes {@link ohms}.
 *
 * @param resistance - the quantity, in Ω
 * @returns the number of ohms
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inOhms, ohms } from "risingmain/units";
 *
 * inOhms(ohms(12)); // ≈ 12.0000000000
 * ```
 */
export function inOhms(resistance: Resistance): number {
  return read("inOhms", resistance);
}

/**
 * An electric resistance, reactance or impedance given in milliohms. 1 mΩ = 1e-3 Ω (SI prefix).
 *
 * @param value - the number of milliohms; any finite number
 * @returns the quantity in Ω
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { milliohms } from "risingmain/units";
 *
 * milliohms(12); // ≈ 0.012
 * ```
 */
export function milliohms(value: number): Resistance {
  return scaled("milliohms", value, 1e-3) as Resistance;
}

/**
 * Reads an electric resistance, reactance or impedance in milliohms; undoes {@link milliohms}.
 *
 * @param resistance - the quantity, in Ω
 * @returns the number of milliohms
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMilliohms, milliohms } from "risingmain/units";
 *
 * inMilliohms(milliohms(12)); // ≈ 12.0000000000
 * ```
 */
export function inMilliohms(resistance: Resistance): number {
  return read("inMilliohms", resistance, 1e-3);
}

/**
 * An electric resistance, reactance or impedance given in kilohms. 1 kΩ = 1e3 Ω (SI prefix).
 *
 * @param value - the number of kilohms; any finite number
 * @returns the quantity in Ω
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilohms } from "risingmain/units";
 *
 * kilohms(12); // ≈ 1.2e+4
 * ```
 */
export function kilohms(value: number): Resistance {
  return scaled("kilohms", value, 1e3) as Resistance;
}

/**
 * Reads an electric resistance, reactance or impedance in kilohms; undoes {@link kilohms}.
 *
 * @param resistance - the quantity, in Ω
 * @returns the number of kilohms
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilohms, kilohms } from "risingmain/units";
 *
 * inKilohms(kilohms(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilohms(resistance: Resistance): number {
  return read("inKilohms", resistance, 1e3);
}

/**
 * An electric resistance, reactance or impedance given in megohms. 1 MΩ = 1e6 Ω (SI prefix).
 *
 * @param value - the number of megohms; any finite number
 * @returns the quantity in Ω
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { megohms } from "risingmain/units";
 *
 * megohms(12); // ≈ 1.2e+7
 * ```
 */
export function megohms(value: number): Resistance {
  return scaled("megohms", value, 1e6) as Resistance;
}

/**
 * Reads an electric resistance, reactance or impedance in megohms; undoes {@link megohms}.
 *
 * @param resistance - the quantity, in Ω
 * @returns the number of megohms
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMegohms, megohms } from "risingmain/units";
 *
 * inMegohms(megohms(12)); // ≈ 12.0000000000
 * ```
 */
export function inMegohms(resistance: Resistance): number {
  return read("inMegohms", resistance, 1e6);
}
