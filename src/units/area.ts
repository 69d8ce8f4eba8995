/**
 * An area, held as a number in m².
 *
 * @module
 */
import { type Quantity, read, scaled } from "./quantity.ts";

/** An area; a number in m², told apart from other quantities by its type alone. */
export type Area = Quantity<"Area">;

/**
 * An area given in square metres.
 *
 * @param value - the number of square metres; any finite number
 * @returns the quantity in m²
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { squareMetres } from "risingmain/units";
 *
 * squareMetres(12); // ≈ 12.000
 * ```
 */
export function squareMetres(value: number): Area {
  return scaled("squareMetres", value) as Area;
}

/**
 * Reads an area in square metres; undoes {@link squareMetres}.
 *
 * @param area - the quantity, in m²
 * @returns the number of square metres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inSquareMetres, squareMetres } from "risingmain/units";
 *
 * inSquareMetres(squareMetres(12)); // ≈ 12.0000000000
 * ```
 */
export function inSquareMetres(area: Area): number {
  return read("inSquareMetres", area);
}

/**
 * An area given in square millimetres. 1 mm² = 1e-6 m² (SI prefix).
 *
 * @param value - the number of square millimetres; any finite number
 * @returns the quantity in m²
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { squareMillimetres } from "risingmain/units";
 *
 * squareMillimetres(12); // ≈ 0.000012
 * ```
 */
export function squareMillimetres(value: number): Area {
  return scaled("squareMillimetres", value, 1e-6) as Area;
}

/**
 * Reads an area in square millimetres; undoes {@link squareMillimetres}.
 *
 * @param area - the quantity, in m²
 * @returns the number of square millimetres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inSquareMillimetres, squareMillimetres } from "risingmain/units";
 *
 * inSquareMillimetres(squareMillimetres(12)); // ≈ 12.0000000000
 * ```
 */
export function inSquareMillimetres(area: Area): number {
  return read("inSquareMillimetres", area, 1e-6);
}

/**
 * An area given in square centimetres. 1 cm² = 1e-4 m² (SI prefix).
 *
 * @param value - the number of square centimetres; any finite number
 * @returns the quantity in m²
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { squareCentimetres } from "risingmain/units";
 *
 * squareCentimetres(12); // ≈ 0.0012
 * ```
 */
export function squareCentimetres(value: number): Area {
  return scaled("squareCentimetres", value, 1e-4) as Area;
}

/**
 * Reads an area in square centimetres; undoes {@link squareCentimetres}.
 *
 * @param area - the quantity, in m²
 * @returns the number of square centimetres
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inSquareCentimetres, squareCentimetres } from "risingmain/units";
 *
 * inSquareCentimetres(squareCentimetres(12)); // ≈ 12.0000000000
 * ```
 */
export function inSquareCentimetres(area: Area): number {
  return read("inSquareCentimetres", area, 1e-4);
}

/**
 * An area given in hectares. 1 ha = 1e4 m² (exact: 10 000 m²).
 *
 * @param value - the number of hectares; any finite number
 * @returns the quantity in m²
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { hectares } from "risingmain/units";
 *
 * hectares(12); // ≈ 1.2e+5
 * ```
 */
export function hectares(value: number): Area {
  return scaled("hectares", value, 1e4) as Area;
}

/**
 * Reads an area in hectares; undoes {@link hectares}.
 *
 * @param area - the quantity, in m²
 * @returns the number of hectares
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { hectares, inHectares } from "risingmain/units";
 *
 * inHectares(hectares(12)); // ≈ 12.0000000000
 * ```
 */
export function inHectares(area: Area): number {
  return read("inHectares", area, 1e4);
}

/**
 * An area given in square inches. 1 in² = 6.4516e-4 m² (exact: (0.0254 m)²).
 *
 * @param value - the number of square inches; any finite number
 * @returns the quantity in m²
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { squareInches } from "risingmain/units";
 *
 * squareInches(12); // ≈ 0.00774192
 * ```
 */
export function squareInches(value: number): Area {
  return scaled("squareInches", value, 6.4516e-4) as Area;
}

/**
 * Reads an area in square inches; undoes {@link squareInches}.
 *
 * @param area - the quantity, in m²
 * @returns the number of square inches
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inSquareInches, squareInches } from "risingmain/units";
 *
 * inSquareInches(squareInches(12)); // ≈ 12.0000000000
 * ```
 */
export function inSquareInches(area: Area): number {
  return read("inSquareInches", area, 6.4516e-4);
}

/**
 * An area given in square feet. 1 ft² = 0.09290304 m² (exact: (0.3048 m)²).
 *
 * @param value - the number of square feet; any finite number
 * @returns the quantity in m²
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { squareFeet } from "risingmain/units";
 *
 * squareFeet(12); // ≈ 1.11484
 * ```
 */
export function squareFeet(value: number): Area {
  return scaled("squareFeet", value, 0.09290304) as Area;
}

/**
 * Reads an area in square feet; undoes {@link squareFeet}.
 *
 * @param area - the quantity, in m²
 * @returns the number of square feet
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { inSquareFeet, squareFeet } from "risingmain/units";
 *
 * inSquareFeet(squareFeet(12)); // ≈ 12.0000000000
 * ```
 */
export function inSquareFeet(area: Area): number {
  return read("inSquareFeet", area, 0.09290304);
}

/**
 * An area given in acres of 43 560 square international feet. 1 acre = 4046.8564224 m² (exact: 43 560 ft²).
 *
 * @param value - the number of acres of 43 560 square international feet; any finite number
 * @returns the quantity in m²
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { acres } from "risingmain/units";
 *
 * acres(12); // ≈ 48562.3
 * ```
 */
export function acres(value: number): Area {
  return scaled("acres", value, 4046.8564224) as Area;
}

/**
 * Reads an area in acres of 43 560 square international feet; undoes {@link acres}.
 *
 * @param area - the quantity, in m²
 * @returns the number of acres of 43 560 square international feet
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { acres, inAcres } from "risingmain/units";
 *
 * inAcres(acres(12)); // ≈ 12.0000000000
 * ```
 */
export function inAcres(area: Area): number {
  return read("inAcres", area, 4046.8564224);
}

/**
 * An area given in circular mils, the area of a circle one mil across. 1 cmil = 5.067074790974977e-10 m² (π/4 · (2.54e-5 m)², to the nearest double).
 *
 * @param value - the number of circular mils, the area of a circle one mil across; any finite number
 * @returns the quantity in m²
 * @throws {@link InputError} where the value, or the quantity, is not a finite number
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { circularMils } from "risingmain/units";
 *
 * circularMils(12); // ≈ 6.08049e-9
 * ```
 */
export function circularMils(value: number): Area {
  return scaled("circularMils", value, 5.067074790974977e-10) as Area;
}

/**
 * Reads an area in circular mils, the area of a circle one mil across; undoes {@link circularMils}.
 *
 * @param area - the quantity, in m²
 * @returns the number of circular mils, the area of a circle one mil across
 * @throws {@link InputError} where the quantity, or the number, is not finite
 * @source nist-sp811
 *
 * @example
 * ```ts
 * import { circularMils, inCircularMils } from "risingmain/units";
 *
 * inCircularMils(circularMils(12)); // ≈ 12.0000000000
 * ```
 */
export function inCircularMils(area: Area): number {
  return read("inCircularMils", area, 5.067074790974977e-10);
}
