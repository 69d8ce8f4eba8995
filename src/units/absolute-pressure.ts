/**
 * An absolute pressure: above a vacuum, held as a number in Pa.
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** An absolute pressure: above a vacuum; a number in Pa, told apart from other quantities by its type alone. */
export type AbsolutePressure = Quantity<"AbsolutePressure">;

/**
 * An absolute pressure given in pascals.
 *
 * @param value - the number of pascals; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { pascalsAbsolute } from "risingmain/units";
 *
 * pascalsAbsolute(12); // ≈ 12.000
 * ```
 */
export function pascalsAbsolute(value: number): AbsolutePressure {
  return scaled("pascalsAbsolute", value) as AbsolutePressure;
}

/**
 * Reads an absolute pressure in pascals; undoes {@link pascalsAbsolute}.
 *
 * @param absolutePressure - the quantity, in Pa
 * @returns the number of pascals
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPascalsAbsolute, pascalsAbsolute } from "risingmain/units";
 *
 * inPascalsAbsolute(pascalsAbsolute(12)); // ≈ 12.0000000000
 * ```
 */
export function inPascalsAbsolute(absolutePressure: AbsolutePressure): number {
  return read("inPascalsAbsolute", absolutePressure);
}

/**
 * An absolute pressure given in kilopascals. 1 kPa abs = 1e3 Pa (SI prefix).
 *
 * @param value - the number of kilopascals; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { kilopascalsAbsolute } from "risingmain/units";
 *
 * kilopascalsAbsolute(12); // ≈ 1.2e+4
 * ```
 */
export function kilopascalsAbsolute(value: number): AbsolutePressure {
  return scaled("kilopascalsAbsolute", value, 1e3) as AbsolutePressure;
}

/**
 * Reads an absolute pressure in kilopascals; undoes {@link kilopascalsAbsolute}.
 *
 * @param absolutePressure - the quantity, in Pa
 * @returns the number of kilopascals
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inKilopascalsAbsolute, kilopascalsAbsolute } from "risingmain/units";
 *
 * inKilopascalsAbsolute(kilopascalsAbsolute(12)); // ≈ 12.0000000000
 * ```
 */
export function inKilopascalsAbsolute(absolutePressure: AbsolutePressure): number {
  return read("inKilopascalsAbsolute", absolutePressure, 1e3);
}

/**
 * An absolute pressure given in megapascals. 1 MPa abs = 1e6 Pa (SI prefix).
 *
 * @param value - the number of megapascals; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { megapascalsAbsolute } from "risingmain/units";
 *
 * megapascalsAbsolute(12); // ≈ 1.2e+7
 * ```
 */
export function megapascalsAbsolute(value: number): AbsolutePressure {
  return scaled("megapascalsAbsolute", value, 1e6) as AbsolutePressure;
}

/**
 * Reads an absolute pressure in megapascals; undoes {@link megapascalsAbsolute}.
 *
 * @param absolutePressure - the quantity, in Pa
 * @returns the number of megapascals
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inMegapascalsAbsolute, megapascalsAbsolute } from "risingmain/units";
 *
 * inMegapascalsAbsolute(megapascalsAbsolute(12)); // ≈ 12.0000000000
 * ```
 */
export function inMegapascalsAbsolute(absolutePressure: AbsolutePressure): number {
  return read("inMegapascalsAbsolute", absolutePressure, 1e6);
}

/**
 * An absolute pressure given in bar. 1 bar abs = 1e5 Pa (exact: 100 kPa).
 *
 * @param value - the number of bar; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { barAbsolute } from "risingmain/units";
 *
 * barAbsolute(12); // ≈ 1.2e+6
 * ```
 */
export function barAbsolute(value: number): AbsolutePressure {
  return scaled("barAbsolute", value, 1e5) as AbsolutePressure;
}

/**
 * Reads an absolute pressure in bar; undoes {@link barAbsolute}.
 *
 * @param absolutePressure - the quantity, in Pa
 * @returns the number of bar
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { barAbsolute, inBarAbsolute } from "risingmain/units";
 *
 * inBarAbsolute(barAbsolute(12)); // ≈ 12.0000000000
 * ```
 */
export function inBarAbsolute(absolutePressure: AbsolutePressure): number {
  return read("inBarAbsolute", absolutePressure, 1e5);
}

/**
 * An absolute pressure given in pounds-force per square inch. 1 psia = 6894.757293168362 Pa (lbf/in² of 4.4482216152605 N and 0.0254 m, to the nearest double).
 *
 * @param value - the number of pounds-force per square inch; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { psia } from "risingmain/units";
 *
 * psia(12); // ≈ 82737.1
 * ```
 */
export function psia(value: number): AbsolutePressure {
  return scaled("psia", value, 6894.757293168362) as AbsolutePressure;
}

/**
 * Reads an absolute pressure in pounds-force per square inch; undoes {@link psia}.
 *
 * @param absolutePressure - the quantity, in Pa
 * @returns the number of pounds-force per square inch
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inPsia, psia } from "risingmain/units";
 *
 * inPsia(psia(12)); // ≈ 12.0000000000
 * ```
 */
export function inPsia(absolutePressure: AbsolutePressure): number {
  return read("inPsia", absolutePressure, 6894.757293168362);
}

/**
 * An absolute pressure given in standard atmospheres. 1 atm = 101325 Pa (exact (CGPM 1954)).
 *
 * @param value - the number of standard atmospheres; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { standardAtmospheres } from "risingmain/units";
 *
 * standardAtmospheres(12); // ≈ 1.21590e+6
 * ```
 */
export function standardAtmospheres(value: number): AbsolutePressure {
  return scaled("standardAtmospheres", value, 101325) as AbsolutePressure;
}

/**
 * Reads an absolute pressure in standard atmospheres; undoes {@link standardAtmospheres}.
 *
 * @param absolutePressure - the quantity, in Pa
 * @returns the number of standard atmospheres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inStandardAtmospheres, standardAtmospheres } from "risingmain/units";
 *
 * inStandardAtmospheres(standardAtmospheres(12)); // ≈ 12.0000000000
 * ```
 */
export function inStandardAtmospheres(absolutePressure: AbsolutePressure): number {
  return read("inStandardAtmospheres", absolutePressure, 101325);
}

/**
 * An absolute pressure given in inches of mercury, conventional. 1 inHg = 3386.388640341 Pa (0.0254 m × 13 595.1 kg/m³ × 9.806 65 m/s²; NIST SP 811).
 *
 * @param value - the number of inches of mercury, conventional; any finite number
 * @returns the quantity in Pa
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inchesOfMercury } from "risingmain/units";
 *
 * inchesOfMercury(12); // ≈ 40636.7
 * ```
 */
export function inchesOfMercury(value: number): AbsolutePressure {
  return scaled("inchesOfMercury", value, 3386.388640341) as AbsolutePressure;
}

/**
 * Reads an absolute pressure in inches of mercury, conventional; undoes {@link inchesOfMercury}.
 *
 * @param absolutePressure - the quantity, in Pa
 * @returns the number of inches of mercury, conventional
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inInchesOfMercury, inchesOfMercury } from "risingmain/units";
 *
 * inInchesOfMercury(inchesOfMercury(12)); // ≈ 12.0000000000
 * ```
 */
export function inInchesOfMercury(absolutePressure: AbsolutePressure): number {
  return read("inInchesOfMercury", absolutePressure, 3386.388640341);
}
