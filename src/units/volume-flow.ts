/**
 * A volume flow, held as a number in m³/s.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A volume flow; a number in m³/s, told apart from other quantities by its type alone. */
export type VolumeFlow = Quantity<"VolumeFlow">;

/**
 * A volume flow given in cubic metres per second.
 *
 * @param value - the number of cubic metres per second; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicMetresPerSecond } from "risingmain/units";
 *
 * cubicMetresPerSecond(12); // ≈ 12.000
 * ```
 */
export function cubicMetresPerSecond(value: number): VolumeFlow {
  return scaled("cubicMetresPerSecond", value) as VolumeFlow;
}

/**
 * Reads a volume flow in cubic metres per second; undoes {@link cubicMetresPerSecond}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of cubic metres per second
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicMetresPerSecond, inCubicMetresPerSecond } from "risingmain/units";
 *
 * inCubicMetresPerSecond(cubicMetresPerSecond(12)); // ≈ 12.0000000000
 * ```
 */
export function inCubicMetresPerSecond(volumeFlow: VolumeFlow): number {
  return read("inCubicMetresPerSecond", volumeFlow);
}

/**
 * A volume flow given in litres per second. 1 L/s = 1e-3 m³/s (exact).
 *
 * @param value - the number of litres per second; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { litresPerSecond } from "risingmain/units";
 *
 * litresPerSecond(12); // ≈ 0.012
 * ```
 */
export function litresPerSecond(value: number): VolumeFlow {
  return scaled("litresPerSecond", value, 1e-3) as VolumeFlow;
}

/**
 * Reads a volume flow in litres per second; undoes {@link litresPerSecond}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of litres per second
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inLitresPerSecond, litresPerSecond } from "risingmain/units";
 *
 * inLitresPerSecond(litresPerSecond(12)); // ≈ 12.0000000000
 * ```
 */
export function inLitresPerSecond(volumeFlow: VolumeFlow): number {
  return read("inLitresPerSecond", volumeFlow, 1e-3);
}

/**
 * A volume flow given in US gallons per second. 1 US gal/s = 3.785411784e-3 m³/s (exact: 231 in³/s).
 *
 * @param value - the number of US gallons per second; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { usGallonsPerSecond } from "risingmain/units";
 *
 * usGallonsPerSecond(12); // ≈ 0.0454249
 * ```
 */
export function usGallonsPerSecond(value: number): VolumeFlow {
  return scaled("usGallonsPerSecond", value, 3.785411784e-3) as VolumeFlow;
}

/**
 * Reads a volume flow in US gallons per second; undoes {@link usGallonsPerSecond}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of US gallons per second
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inUsGallonsPerSecond, usGallonsPerSecond } from "risingmain/units";
 *
 * inUsGallonsPerSecond(usGallonsPerSecond(12)); // ≈ 12.0000000000
 * ```
 */
export function inUsGallonsPerSecond(volumeFlow: VolumeFlow): number {
  return read("inUsGallonsPerSecond", volumeFlow, 3.785411784e-3);
}

/**
 * A volume flow given in cubic feet per second. 1 ft³/s = 0.028316846592 m³/s (exact: (0.3048 m)³/s).
 *
 * @param value - the number of cubic feet per second; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicFeetPerSecond } from "risingmain/units";
 *
 * cubicFeetPerSecond(12); // ≈ 0.339802
 * ```
 */
export function cubicFeetPerSecond(value: number): VolumeFlow {
  return scaled("cubicFeetPerSecond", value, 0.028316846592) as VolumeFlow;
}

/**
 * Reads a volume flow in cubic feet per second; undoes {@link cubicFeetPerSecond}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of cubic feet per second
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicFeetPerSecond, inCubicFeetPerSecond } from "risingmain/units";
 *
 * inCubicFeetPerSecond(cubicFeetPerSecond(12)); // ≈ 12.0000000000
 * ```
 */
export function inCubicFeetPerSecond(volumeFlow: VolumeFlow): number {
  return read("inCubicFeetPerSecond", volumeFlow, 0.028316846592);
}

/**
 * A volume flow given in litres per minute. 1 L/min = 1/6e4 m³/s (exact: 1/60 000 m³/s).
 *
 * @param value - the number of litres per minute; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { litresPerMinute } from "risingmain/units";
 *
 * litresPerMinute(12); // ≈ 0.000200000
 * ```
 */
export function litresPerMinute(value: number): VolumeFlow {
  return scaled("litresPerMinute", value, 1, 6e4) as VolumeFlow;
}

/**
 * Reads a volume flow in litres per minute; undoes {@link litresPerMinute}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of litres per minute
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inLitresPerMinute, litresPerMinute } from "risingmain/units";
 *
 * inLitresPerMinute(litresPerMinute(12)); // ≈ 12.0000000000
 * ```
 */
export function inLitresPerMinute(volumeFlow: VolumeFlow): number {
  return read("inLitresPerMinute", volumeFlow, 1, 6e4);
}

/**
 * A volume flow given in litres per hour. 1 L/h = 1/3.6e6 m³/s (exact: 1/3 600 000 m³/s).
 *
 * @param value - the number of litres per hour; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { litresPerHour } from "risingmain/units";
 *
 * litresPerHour(12); // ≈ 0.00000333333
 * ```
 */
export function litresPerHour(value: number): VolumeFlow {
  return scaled("litresPerHour", value, 1, 3.6e6) as VolumeFlow;
}

/**
 * Reads a volume flow in litres per hour; undoes {@link litresPerHour}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of litres per hour
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inLitresPerHour, litresPerHour } from "risingmain/units";
 *
 * inLitresPerHour(litresPerHour(12)); // ≈ 12.0000000000
 * ```
 */
export function inLitresPerHour(volumeFlow: VolumeFlow): number {
  return read("inLitresPerHour", volumeFlow, 1, 3.6e6);
}

/**
 * A volume flow given in cubic metres per hour. 1 m³/h = 1/3600 m³/s (exact: 1/3600 m³/s).
 *
 * @param value - the number of cubic metres per hour; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicMetresPerHour } from "risingmain/units";
 *
 * cubicMetresPerHour(12); // ≈ 0.00333333
 * ```
 */
export function cubicMetresPerHour(value: number): VolumeFlow {
  return scaled("cubicMetresPerHour", value, 1, 3600) as VolumeFlow;
}

/**
 * Reads a volume flow in cubic metres per hour; undoes {@link cubicMetresPerHour}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of cubic metres per hour
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicMetresPerHour, inCubicMetresPerHour } from "risingmain/units";
 *
 * inCubicMetresPerHour(cubicMetresPerHour(12)); // ≈ 12.0000000000
 * ```
 */
export function inCubicMetresPerHour(volumeFlow: VolumeFlow): number {
  return read("inCubicMetresPerHour", volumeFlow, 1, 3600);
}

/**
 * A volume flow given in cubic metres per day. 1 m³/d = 1/86400 m³/s (exact: 1/86 400 m³/s).
 *
 * @param value - the number of cubic metres per day; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicMetresPerDay } from "risingmain/units";
 *
 * cubicMetresPerDay(12); // ≈ 0.000138889
 * ```
 */
export function cubicMetresPerDay(value: number): VolumeFlow {
  return scaled("cubicMetresPerDay", value, 1, 86400) as VolumeFlow;
}

/**
 * Reads a volume flow in cubic metres per day; undoes {@link cubicMetresPerDay}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of cubic metres per day
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { cubicMetresPerDay, inCubicMetresPerDay } from "risingmain/units";
 *
 * inCubicMetresPerDay(cubicMetresPerDay(12)); // ≈ 12.0000000000
 * ```
 */
export function inCubicMetresPerDay(volumeFlow: VolumeFlow): number {
  return read("inCubicMetresPerDay", volumeFlow, 1, 86400);
}

/**
 * A volume flow given in US gallons per minute. 1 gpm = 6.30901964e-5 m³/s (exact: 231 in³/min).
 *
 * @param value - the number of US gallons per minute; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { gpm } from "risingmain/units";
 *
 * gpm(12); // ≈ 0.000757082
 * ```
 */
export function gpm(value: number): VolumeFlow {
  return scaled("gpm", value, 6.30901964e-5) as VolumeFlow;
}

/**
 * Reads a volume flow in US gallons per minute; undoes {@link gpm}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of US gallons per minute
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { gpm, inGpm } from "risingmain/units";
 *
 * inGpm(gpm(12)); // ≈ 12.0000000000
 * ```
 */
export function inGpm(volumeFlow: VolumeFlow): number {
  return read("inGpm", volumeFlow, 6.30901964e-5);
}

/**
 * A volume flow given in imperial gallons per minute. 1 imp gpm = 7.576816666666667e-5 m³/s (4.54609 L/min, to the nearest double).
 *
 * @param value - the number of imperial gallons per minute; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { imperialGpm } from "risingmain/units";
 *
 * imperialGpm(12); // ≈ 0.000909218
 * ```
 */
export function imperialGpm(value: number): VolumeFlow {
  return scaled("imperialGpm", value, 7.576816666666667e-5) as VolumeFlow;
}

/**
 * Reads a volume flow in imperial gallons per minute; undoes {@link imperialGpm}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of imperial gallons per minute
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { imperialGpm, inImperialGpm } from "risingmain/units";
 *
 * inImperialGpm(imperialGpm(12)); // ≈ 12.0000000000
 * ```
 */
export function inImperialGpm(volumeFlow: VolumeFlow): number {
  return read("inImperialGpm", volumeFlow, 7.576816666666667e-5);
}

/**
 * A volume flow given in US gallons per hour. 1 gph = 1.0515032733333334e-06 m³/s (231 in³/h, to the nearest double).
 *
 * @param value - the number of US gallons per hour; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { usGallonsPerHour } from "risingmain/units";
 *
 * usGallonsPerHour(12); // ≈ 0.0000126180
 * ```
 */
export function usGallonsPerHour(value: number): VolumeFlow {
  return scaled("usGallonsPerHour", value, 1.0515032733333334e-6) as VolumeFlow;
}

/**
 * Reads a volume flow in US gallons per hour; undoes {@link usGallonsPerHour}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of US gallons per hour
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inUsGallonsPerHour, usGallonsPerHour } from "risingmain/units";
 *
 * inUsGallonsPerHour(usGallonsPerHour(12)); // ≈ 12.0000000000
 * ```
 */
export function inUsGallonsPerHour(volumeFlow: VolumeFlow): number {
  return read("inUsGallonsPerHour", volumeFlow, 1.0515032733333334e-6);
}

/**
 * A volume flow given in US gallons per day. 1 gpd = 4.3812636388888886e-08 m³/s (231 in³/d, to the nearest double).
 *
 * @param value - the number of US gallons per day; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { usGallonsPerDay } from "risingmain/units";
 *
 * usGallonsPerDay(12); // ≈ 5.25752e-7
 * ```
 */
export function usGallonsPerDay(value: number): VolumeFlow {
  return scaled("usGallonsPerDay", value, 4.3812636388888886e-8) as VolumeFlow;
}

/**
 * Reads a volume flow in US gallons per day; undoes {@link usGallonsPerDay}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of US gallons per day
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inUsGallonsPerDay, usGallonsPerDay } from "risingmain/units";
 *
 * inUsGallonsPerDay(usGallonsPerDay(12)); // ≈ 12.0000000000
 * ```
 */
export function inUsGallonsPerDay(volumeFlow: VolumeFlow): number {
  return read("inUsGallonsPerDay", volumeFlow, 4.3812636388888886e-8);
}

/**
 * A volume flow given in imperial gallons per day. 1 imp gpd = 5.2616782407407406e-08 m³/s (4.54609 L/d, to the nearest double).
 *
 * @param value - the number of imperial gallons per day; any finite number
 * @returns the quantity in m³/s
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { imperialGallonsPerDay } from "risingmain/units";
 *
 * imperialGallonsPerDay(12); // ≈ 6.31401e-7
 * ```
 */
export function imperialGallonsPerDay(value: number): VolumeFlow {
  return scaled("imperialGallonsPerDay", value, 5.2616782407407406e-8) as VolumeFlow;
}

/**
 * Reads a volume flow in imperial gallons per day; undoes {@link imperialGallonsPerDay}.
 *
 * @param volumeFlow - the quantity, in m³/s
 * @returns the number of imperial gallons per day
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { imperialGallonsPerDay, inImperialGallonsPerDay } from "risingmain/units";
 *
 * inImperialGallonsPerDay(imperialGallonsPerDay(12)); // ≈ 12.0000000000
 * ```
 */
export function inImperialGallonsPerDay(volumeFlow: VolumeFlow): number {
  return read("inImperialGallonsPerDay", volumeFlow, 5.2616782407407406e-8);
}
