/**
 * A power: hydraulic, shaft or electrical (real), held as a number in W.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** A power: hydraulic, shaft or electrical (real); a number in W, told apart from other quantities by its type alone. */
export type Power = Quantity<"Power">;

/**
 * A power given in watts.
 *
 * @param value - the number of watts; any finite number
 * @returns the quantity in W
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { watts } from "risingmain/units";
 *
 * watts(12); // ≈ 12.000
 * ```
 */
export function watts(value: number): Power {
  return scaled("watts", value) as Power;
}

/**
 * Reads a power in watts; undoes {@link watts}.
 *
 * @param power - the quantity, in W
 * @returns the number of watts
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inWatts, watts } from "risingmain/units";
 *
 * inWatts(watts(12)); // ≈ 12.0000000000
 * ```
 */
export function inWatts(power: Power): number {
  return read("inWatts", power);
}

/**
 * A power given in kilowatts. 1 kW = 1e3 W (SI prefix).
 *
 * @param value - the number of kilowatts; any finite number
 * @returns the quantity in W
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilowatts } from "risingmain/units";
 *
 * kilowatts(12); // ≈ 1.2e+4
 * ```
 */
export function kilowatts(value: number): Power {
  return scaled("kilowatts", value, 1e3) as Power;
}

/**
 * Reads a power in kilowatts; undoes {@link kilowatts}.
 *
 * @param power - the quantity, in W
 * @returns the number of kilowatts
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilowatts, kilowatts } from "risingmain/units";
 *
 * inKilowatts(kilowatts(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilowatts(power: Power): number {
  return read("inKilowatts", power, 1e3);
}

/**
 * A power given in mechanical horsepower of 550 ft·lbf/s. 1 hp = 745.6998715822702 W (550 × 0.3048 m × 4.4482216152605 N, to the nearest double).
 *
 * @param value - the number of mechanical horsepower of 550 ft·lbf/s; any finite number
 * @returns the quantity in W
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { horsepower } from "risingmain/units";
 *
 * horsepower(12); // ≈ 8948.40
 * ```
 */
export function horsepower(value: number): Power {
  return scaled("horsepower", value, 745.6998715822702) as Power;
}

/**
 * Reads a power in mechanical horsepower of 550 ft·lbf/s; undoes {@link horsepower}.
 *
 * @param power - the quantity, in W
 * @returns the number of mechanical horsepower of 550 ft·lbf/s
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { horsepower, inHorsepower } from "risingmain/units";
 *
 * inHorsepower(horsepower(12)); // ≈ 12.0000000000
 * ```
 */
export function inHorsepower(power: Power): number {
  return read("inHorsepower", power, 745.6998715822702);
}

/**
 * A power given in electric horsepower of 746 W. 1 hp(E) = 746 W (exact by definition; NIST SP 811).
 *
 * @param value - the number of electric horsepower of 746 W; any finite number
 * @returns the quantity in W
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { electricHorsepower } from "risingmain/units";
 *
 * electricHorsepower(12); // ≈ 8952.000
 * ```
 */
export function electricHorsepower(value: number): Power {
  return scaled("electricHorsepower", value, 746) as Power;
}

/**
 * Reads a power in electric horsepower of 746 W; undoes {@link electricHorsepower}.
 *
 * @param power - the quantity, in W
 * @returns the number of electric horsepower of 746 W
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { electricHorsepower, inElectricHorsepower } from "risingmain/units";
 *
 * inElectricHorsepower(electricHorsepower(12)); // ≈ 12.0000000000
 * ```
 */
export function inElectricHorsepower(power: Power): number {
  return read("inElectricHorsepower", power, 746);
}

/**
 * A power given in metric horsepower of 75 kgf·m/s. 1 hp(M) = 735.49875 W (exact: 75 × 9.80665 W).
 *
 * @param value - the number of metric horsepower of 75 kgf·m/s; any finite number
 * @returns the quantity in W
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { metricHorsepower } from "risingmain/units";
 *
 * metricHorsepower(12); // ≈ 8825.98
 * ```
 */
export function metricHorsepower(value: number): Power {
  return scaled("metricHorsepower", value, 735.49875) as Power;
}

/**
 * Reads a power in metric horsepower of 75 kgf·m/s; undoes {@link metricHorsepower}.
 *
 * @param power - the quantity, in W
 * @returns the number of metric horsepower of 75 kgf·m/s
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMetricHorsepower, metricHorsepower } from "risingmain/units";
 *
 * inMetricHorsepower(metricHorsepower(12)); // ≈ 12.0000000000
 * ```
 */
export function inMetricHorsepower(power: Power): number {
  return read("inMetricHorsepower", power, 735.49875);
}

/**
 * A power given in British thermal units (IT) per hour. 1 Btu/h = 0.2930710701722222 W (1055.05585262 J / 3600 s, to the nearest double).
 *
 * @param value - the number of British thermal units (IT) per hour; any finite number
 * @returns the quantity in W
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { btuPerHour } from "risingmain/units";
 *
 * btuPerHour(12); // ≈ 3.51685
 * ```
 */
export function btuPerHour(value: number): Power {
  return scaled("btuPerHour", value, 0.2930710701722222) as Power;
}

/**
 * Reads a power in British thermal units (IT) per hour; undoes {@link btuPerHour}.
 *
 * @param power - the quantity, in W
 * @returns the number of British thermal units (IT) per hour
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { btuPerHour, inBtuPerHour } from "risingmain/units";
 *
 * inBtuPerHour(btuPerHour(12)); // ≈ 12.0000000000
 * ```
 */
export function inBtuPerHour(power: Power): number {
  return read("inBtuPerHour", power, 0.2930710701722222);
}
