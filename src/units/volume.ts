/**
 * A volume, held as a number in m³.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A volume; a number in m³, told apart from other quantities by its type alone. */
export type Volume = Quantity<"Volume">;

/**
 * A volume given in cubic metres.
 *
 * @param value - the number of cubic metres; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicMetres } from "risingmain/units";
 *
 * cubicMetres(12); // ≈ 12.000
 * ```
 */
export function cubicMetres(value: number): Volume {
  return scaled("cubicMetres", value) as Volume;
}

/**
 * Reads a volume in cubic metres; undoes {@link cubicMetres}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of cubic metres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicMetres, inCubicMetres } from "risingmain/units";
 *
 * inCubicMetres(cubicMetres(12)); // ≈ 12.0000000000
 * ```
 */
export function inCubicMetres(volume: Volume): number {
  return read("inCubicMetres", volume);
}

/**
 * A volume given in litres. 1 L = 1e-3 m³ (exact: 1 dm³).
 *
 * @param value - the number of litres; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { litres } from "risingmain/units";
 *
 * litres(12); // ≈ 0.012
 * ```
 */
export function litres(value: number): Volume {
  return scaled("litres", value, 1e-3) as Volume;
}

/**
 * Reads a volume in litres; undoes {@link litres}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of litres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inLitres, litres } from "risingmain/units";
 *
 * inLitres(litres(12)); // ≈ 12.0000000000
 * ```
 */
export function inLitres(volume: Volume): number {
  return read("inLitres", volume, 1e-3);
}

/**
 * A volume given in millilitres. 1 mL = 1e-6 m³ (exact: 1 cm³).
 *
 * @param value - the number of millilitres; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { millilitres } from "risingmain/units";
 *
 * millilitres(12); // ≈ 0.000012
 * ```
 */
export function millilitres(value: number): Volume {
  return scaled("millilitres", value, 1e-6) as Volume;
}

/**
 * Reads a volume in millilitres; undoes {@link millilitres}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of millilitres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMillilitres, millilitres } from "risingmain/units";
 *
 * inMillilitres(millilitres(12)); // ≈ 12.0000000000
 * ```
 */
export function inMillilitres(volume: Volume): number {
  return read("inMillilitres", volume, 1e-6);
}

/**
 * A volume given in US gallons. 1 US gal = 3.785411784e-3 m³ (exact: 231 in³).
 *
 * @param value - the number of US gallons; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { usGallons } from "risingmain/units";
 *
 * usGallons(12); // ≈ 0.0454249
 * ```
 */
export function usGallons(value: number): Volume {
  return scaled("usGallons", value, 3.785411784e-3) as Volume;
}

/**
 * Reads a volume in US gallons; undoes {@link usGallons}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of US gallons
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inUsGallons, usGallons } from "risingmain/units";
 *
 * inUsGallons(usGallons(12)); // ≈ 12.0000000000
 * ```
 */
export function inUsGallons(volume: Volume): number {
  return read("inUsGallons", volume, 3.785411784e-3);
}

/**
 * A volume given in imperial gallons. 1 imp gal = 4.54609e-3 m³ (exact: 4.54609 L).
 *
 * @param value - the number of imperial gallons; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { imperialGallons } from "risingmain/units";
 *
 * imperialGallons(12); // ≈ 0.0545531
 * ```
 */
export function imperialGallons(value: number): Volume {
  return scaled("imperialGallons", value, 4.54609e-3) as Volume;
}

/**
 * Reads a volume in imperial gallons; undoes {@link imperialGallons}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of imperial gallons
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { imperialGallons, inImperialGallons } from "risingmain/units";
 *
 * inImperialGallons(imperialGallons(12)); // ≈ 12.0000000000
 * ```
 */
export function inImperialGallons(volume: Volume): number {
  return read("inImperialGallons", volume, 4.54609e-3);
}

/**
 * A volume given in US liquid quarts. 1 US qt = 9.46352946e-4 m³ (exact: 1/4 US gal).
 *
 * @param value - the number of US liquid quarts; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { usQuarts } from "risingmain/units";
 *
 * usQuarts(12); // ≈ 0.0113562
 * ```
 */
export function usQuarts(value: number): Volume {
  return scaled("usQuarts", value, 9.46352946e-4) as Volume;
}

/**
 * Reads a volume in US liquid quarts; undoes {@link usQuarts}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of US liquid quarts
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inUsQuarts, usQuarts } from "risingmain/units";
 *
 * inUsQuarts(usQuarts(12)); // ≈ 12.0000000000
 * ```
 */
export function inUsQuarts(volume: Volume): number {
  return read("inUsQuarts", volume, 9.46352946e-4);
}

/**
 * A volume given in US liquid pints. 1 US pt = 4.73176473e-4 m³ (exact: 1/8 US gal).
 *
 * @param value - the number of US liquid pints; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { usPints } from "risingmain/units";
 *
 * usPints(12); // ≈ 0.00567812
 * ```
 */
export function usPints(value: number): Volume {
  return scaled("usPints", value, 4.73176473e-4) as Volume;
}

/**
 * Reads a volume in US liquid pints; undoes {@link usPints}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of US liquid pints
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inUsPints, usPints } from "risingmain/units";
 *
 * inUsPints(usPints(12)); // ≈ 12.0000000000
 * ```
 */
export function inUsPints(volume: Volume): number {
  return read("inUsPints", volume, 4.73176473e-4);
}

/**
 * A volume given in US cups. 1 US cup = 2.365882365e-4 m³ (exact: 1/16 US gal).
 *
 * @param value - the number of US cups; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { usCups } from "risingmain/units";
 *
 * usCups(12); // ≈ 0.00283906
 * ```
 */
export function usCups(value: number): Volume {
  return scaled("usCups", value, 2.365882365e-4) as Volume;
}

/**
 * Reads a volume in US cups; undoes {@link usCups}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of US cups
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inUsCups, usCups } from "risingmain/units";
 *
 * inUsCups(usCups(12)); // ≈ 12.0000000000
 * ```
 */
export function inUsCups(volume: Volume): number {
  return read("inUsCups", volume, 2.365882365e-4);
}

/**
 * A volume given in US fluid ounces. 1 US fl oz = 2.95735295625e-5 m³ (exact: 1/128 US gal).
 *
 * @param value - the number of US fluid ounces; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { usFluidOunces } from "risingmain/units";
 *
 * usFluidOunces(12); // ≈ 0.000354882
 * ```
 */
export function usFluidOunces(value: number): Volume {
  return scaled("usFluidOunces", value, 2.95735295625e-5) as Volume;
}

/**
 * Reads a volume in US fluid ounces; undoes {@link usFluidOunces}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of US fluid ounces
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inUsFluidOunces, usFluidOunces } from "risingmain/units";
 *
 * inUsFluidOunces(usFluidOunces(12)); // ≈ 12.0000000000
 * ```
 */
export function inUsFluidOunces(volume: Volume): number {
  return read("inUsFluidOunces", volume, 2.95735295625e-5);
}

/**
 * A volume given in imperial fluid ounces. 1 imp fl oz = 2.84130625e-5 m³ (exact: 1/160 imperial gal).
 *
 * @param value - the number of imperial fluid ounces; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { imperialFluidOunces } from "risingmain/units";
 *
 * imperialFluidOunces(12); // ≈ 0.000340957
 * ```
 */
export function imperialFluidOunces(value: number): Volume {
  return scaled("imperialFluidOunces", value, 2.84130625e-5) as Volume;
}

/**
 * Reads a volume in imperial fluid ounces; undoes {@link imperialFluidOunces}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of imperial fluid ounces
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { imperialFluidOunces, inImperialFluidOunces } from "risingmain/units";
 *
 * inImperialFluidOunces(imperialFluidOunces(12)); // ≈ 12.0000000000
 * ```
 */
export function inImperialFluidOunces(volume: Volume): number {
  return read("inImperialFluidOunces", volume, 2.84130625e-5);
}

/**
 * A volume given in US tablespoons. 1 US tbsp = 1.478676478125e-5 m³ (exact: 1/2 US fl oz).
 *
 * @param value - the number of US tablespoons; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { usTablespoons } from "risingmain/units";
 *
 * usTablespoons(12); // ≈ 0.000177441
 * ```
 */
export function usTablespoons(value: number): Volume {
  return scaled("usTablespoons", value, 1.478676478125e-5) as Volume;
}

/**
 * Reads a volume in US tablespoons; undoes {@link usTablespoons}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of US tablespoons
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inUsTablespoons, usTablespoons } from "risingmain/units";
 *
 * inUsTablespoons(usTablespoons(12)); // ≈ 12.0000000000
 * ```
 */
export function inUsTablespoons(volume: Volume): number {
  return read("inUsTablespoons", volume, 1.478676478125e-5);
}

/**
 * A volume given in cubic feet. 1 ft³ = 0.028316846592 m³ (exact: (0.3048 m)³).
 *
 * @param value - the number of cubic feet; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicFeet } from "risingmain/units";
 *
 * cubicFeet(12); // ≈ 0.339802
 * ```
 */
export function cubicFeet(value: number): Volume {
  return scaled("cubicFeet", value, 0.028316846592) as Volume;
}

/**
 * Reads a volume in cubic feet; undoes {@link cubicFeet}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of cubic feet
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicFeet, inCubicFeet } from "risingmain/units";
 *
 * inCubicFeet(cubicFeet(12)); // ≈ 12.0000000000
 * ```
 */
export function inCubicFeet(volume: Volume): number {
  return read("inCubicFeet", volume, 0.028316846592);
}

/**
 * A volume given in cubic inches. 1 in³ = 1.6387064e-5 m³ (exact: (0.0254 m)³).
 *
 * @param value - the number of cubic inches; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicInches } from "risingmain/units";
 *
 * cubicInches(12); // ≈ 0.000196645
 * ```
 */
export function cubicInches(value: number): Volume {
  return scaled("cubicInches", value, 1.6387064e-5) as Volume;
}

/**
 * Reads a volume in cubic inches; undoes {@link cubicInches}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of cubic inches
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicInches, inCubicInches } from "risingmain/units";
 *
 * inCubicInches(cubicInches(12)); // ≈ 12.0000000000
 * ```
 */
export function inCubicInches(volume: Volume): number {
  return read("inCubicInches", volume, 1.6387064e-5);
}

/**
 * A volume given in cubic yards. 1 yd³ = 0.764554857984 m³ (exact: (0.9144 m)³).
 *
 * @param value - the number of cubic yards; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicYards } from "risingmain/units";
 *
 * cubicYards(12); // ≈ 9.17466
 * ```
 */
export function cubicYards(value: number): Volume {
  return scaled("cubicYards", value, 0.764554857984) as Volume;
}

/**
 * Reads a volume in cubic yards; undoes {@link cubicYards}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of cubic yards
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicYards, inCubicYards } from "risingmain/units";
 *
 * inCubicYards(cubicYards(12)); // ≈ 12.0000000000
 * ```
 */
export function inCubicYards(volume: Volume): number {
  return read("inCubicYards", volume, 0.764554857984);
}

/**
 * A volume given in acre-feet. 1 acre·ft = 1233.48183754752 m³ (exact: 43 560 ft³).
 *
 * @param value - the number of acre-feet; any finite number
 * @returns the quantity in m³
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { acreFeet } from "risingmain/units";
 *
 * acreFeet(12); // ≈ 14801.8
 * ```
 */
export function acreFeet(value: number): Volume {
  return scaled("acreFeet", value, 1233.48183754752) as Volume;
}

/**
 * Reads a volume in acre-feet; undoes {@link acreFeet}.
 *
 * @param volume - the quantity, in m³
 * @returns the number of acre-feet
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { acreFeet, inAcreFeet } from "risingmain/units";
 *
 * inAcreFeet(acreFeet(12)); // ≈ 12.0000000000
 * ```
 */
export function inAcreFeet(volume: Volume): number {
  return read("inAcreFeet", volume, 1233.48183754752);
}
