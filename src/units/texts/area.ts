/**
 * How an area is written.
 *
 * @module
 */
import {
  type Area,
  acres,
  circularMils,
  hectares,
  inAcres,
  inCircularMils,
  inHectares,
  inSquareCentimetres,
  inSquareFeet,
  inSquareInches,
  inSquareMetres,
  inSquareMillimetres,
  squareCentimetres,
  squareFeet,
  squareInches,
  squareMetres,
  squareMillimetres,
} from "../area.ts";
import { parseQuantity, type UnitText } from "../parse-quantity.ts";

/** The units in which an area is read and written. */
export const areaUnits: readonly UnitText<Area>[] = [
  { symbol: "m²", words: ["m²", "m^2", "sqm"], make: squareMetres, read: inSquareMetres },
  { symbol: "mm²", words: ["mm²", "mm^2", "sqmm"], make: squareMillimetres, read: inSquareMillimetres },
  { symbol: "cm²", words: ["cm²", "cm^2", "sqcm"], make: squareCentimetres, read: inSquareCentimetres },
  { symbol: "ha", words: ["ha", "hectare", "hectares"], make: hectares, read: inHectares },
  { symbol: "in²", words: ["in²", "in^2", "sqin"], make: squareInches, read: inSquareInches },
  { symbol: "ft²", words: ["ft²", "ft^2", "sqft"], make: squareFeet, read: inSquareFeet },
  { symbol: "acre", words: ["acre", "acres", "ac"], make: acres, read: inAcres },
  { symbol: "cmil", words: ["cmil", "cmils"], make: circularMils, read: inCircularMils },
];

/**
 * Reads an area from text, with its unit.
 *
 * @param text - a number and a unit, such as `2 acres`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseArea } from "risingmain/units";
 *
 * parseArea("2 acres"); // ≈ 8094
 * ```
 */
export function parseArea(text: string): Area {
  return parseQuantity("an area", areaUnits, "2 acres", text);
}
