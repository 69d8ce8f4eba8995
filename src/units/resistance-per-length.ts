/**
 * An electric resistance or reactance per length, held as a number in Ω/m.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** An electric resistance or reactance per length; a number in Ω/m, told apart from other quantities by its type alone. */
export type ResistancePerLength = Quantity<"ResistancePerLength">;

/**
 * An electric resistance or reactance per length given in ohms per metre.
 *
 * @param value - the number of ohms per metre; any finite number
 * @returns the quantity in Ω/m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { ohmsPerMetre } from "risingmain/units";
 *
 * ohmsPerMetre(12); // ≈ 12.000
 * ```
 */
export function ohmsPerMetre(value: number): ResistancePerLength {
  return scaled("ohmsPerMetre", value) as ResistancePerLength;
}

/**
 * Reads an electric resistance or reactance per length in ohms per metre; undoes {@link ohmsPerMetre}.
 *
 * @param resistancePerLength - the quantity, in Ω/m
 * @returns the number of ohms per metre
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inOhmsPerMetre, ohmsPerMetre } from "risingmain/units";
 *
 * inOhmsPerMetre(ohmsPerMetre(12)); // ≈ 12.0000000000
 * ```
 */
export function inOhmsPerMetre(resistancePerLength: ResistancePerLength): number {
  return read("inOhmsPerMetre", resistancePerLength);
}

/**
 * An electric resistance or reactance per length given in ohms per kilometre. 1 Ω/km = 1e-3 Ω/m (SI prefix).
 *
 * @param value - the number of ohms per kilometre; any finite number
 * @returns the quantity in Ω/m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { ohmsPerKilometre } from "risingmain/units";
 *
 * ohmsPerKilometre(12); // ≈ 0.012
 * ```
 */
export function ohmsPerKilometre(value: number): ResistancePerLength {
  return scaled("ohmsPerKilometre", value, 1e-3) as ResistancePerLength;
}

/**
 * Reads an electric resistance or reactance per length in ohms per kilometre; undoes {@link ohmsPerKilometre}.
 *
 * @param resistancePerLength - the quantity, in Ω/m
 * @returns the number of ohms per kilometre
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inOhmsPerKilometre, ohmsPerKilometre } from "risingmain/units";
 *
 * inOhmsPerKilometre(ohmsPerKilometre(12)); // ≈ 12.0000000000
 * ```
 */
export function inOhmsPerKilometre(resistancePerLength: ResistancePerLength): number {
  return read("inOhmsPerKilometre", resistancePerLength, 1e-3);
}

/**
 * An electric resistance or reactance per length given in ohms per 1000 feet. 1 Ω/kft = 1/304.8 Ω/m (exact: 1/304.8 Ω/m).
 *
 * @param value - the number of ohms per 1000 feet; any finite number
 * @returns the quantity in Ω/m
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { ohmsPerThousandFeet } from "risingmain/units";
 *
 * ohmsPerThousandFeet(12); // ≈ 0.0393701
 * ```
 */
export function ohmsPerThousandFeet(value: number): ResistancePerLength {
  return scaled("ohmsPerThousandFeet", value, 1, 304.8) as ResistancePerLength;
}

/**
 * Reads an electric resistance or reactance per length in ohms per 1000 feet; undoes {@link ohmsPerThousandFeet}.
 *
 * @param resistancePerLength - the quantity, in Ω/m
 * @returns the number of ohms per 1000 feet
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inOhmsPerThousandFeet, ohmsPerThousandFeet } from "risingmain/units";
 *
 * inOhmsPerThousandFeet(ohmsPerThousandFeet(12)); // ≈ 12.0000000000
 * ```
 */
export function inOhmsPerThousandFeet(resistancePerLength: ResistancePerLength): number {
  return read("inOhmsPerThousandFeet", resistancePerLength, 1, 304.8);
}
