/**
 * The coefficient C of Hazen and Williams, by material and age.
 *
 * Sources: NCEES FE Reference Handbook 9.2, "Values of Hazen-Williams coefficient C" (read); NFPA 13, 2019, table of C
 * values (recalled). Where both print a material, the first is used.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Duration } from "../units/index.ts";

/** A pipe wall as tables of C name it. */
export type CoefficientMaterial =
  | "plastic"
  | "copper"
  | "stainless steel"
  | "welded steel"
  | "galvanised steel"
  | "black steel"
  | "riveted steel"
  | "cast iron"
  | "ductile iron"
  | "cement-lined iron"
  | "asbestos cement"
  | "concrete"
  | "vitrified clay"
  | "wood stave";

/** One entry of the table. */
export interface HazenWilliamsCoefficient {
  /** The material. */
  readonly material: CoefficientMaterial;
  /** Age in years the figure is printed for; "any" where the source says so or gives none. */
  readonly age: number | "any";
  /** The coefficient C. 10 to 200. */
  readonly coefficient: number;
  /** Id of the source. */
  readonly source: "ncees-2013" | "nfpa-13";
}

/**
 * Coefficients as printed.
 *
 * @source ncees-2013, values of the coefficient C
 * @source nfpa-13, table of C values; recalled
 */
export const hazenWilliamsCoefficients: readonly HazenWilliamsCoefficient[] = [
  { material: "plastic", age: "any", coefficient: 150, source: "ncees-2013" },
  { material: "copper", age: "any", coefficient: 150, source: "nfpa-13" },
  { material: "stainless steel", age: "any", coefficient: 150, source: "nfpa-13" },
  { material: "welded steel", age: 0, coefficient: 120, source: "ncees-2013" },
  { material: "galvanised steel", age: "any", coefficient: 120, source: "nfpa-13" },
  { material: "black steel", age: "any", coefficient: 120, source: "nfpa-13" },
  { material: "riveted steel", age: 0, coefficient: 110, source: "ncees-2013" },
  { material: "cast iron", age: 0, coefficient: 130, source: "ncees-2013" },
  { material: "cast iron", age: 5, coefficient: 120, source: "ncees-2013" },
  { material: "cast iron", age: 20, coefficient: 100, source: "ncees-2013" },
  { material: "ductile iron", age: "any", coefficient: 140, source: "ncees-2013" },
  { material: "cement-lined iron", age: "any", coefficient: 140, source: "nfpa-13" },
  { material: "asbestos cement", age: "any", coefficient: 140, source: "ncees-2013" },
  { material: "concrete", age: "any", coefficient: 130, source: "ncees-2013" },
  { material: "vitrified clay", age: "any", coefficient: 110, source: "ncees-2013" },
  { material: "wood stave", age: "any", coefficient: 120, source: "ncees-2013" },
];

/** Seconds in a Julian year. */
const YEAR = 365.25 * 86400;

/** A pipe wall and how long it has been in use. */
export interface CoefficientInput {
  /** What the wall is made of. */
  readonly material: CoefficientMaterial;
  /** Time in use; new when left out. 0 to 200 years, s. */
  readonly age?: Duration;
}

/** A tabulated coefficient, and whether the table reaches the age asked for. */
export interface CoefficientFound extends HazenWilliamsCoefficient {
  /** False where the pipe is older than the oldest entry: C is then lower, by an amount no table tells. */
  readonly insideRange: boolean;
}

/**
 * Coefficient C of Hazen and Williams for a material and age, as printed.
 *
 * @remarks
 * The first entry at least as old as the pipe; never between two entries, since scale grows by the water and not by the
 * calendar. Local codes often prescribe lower design values: they have the last word.
 *
 * @param input - the material, and the time in use
 * @returns the entry, with its source, and whether it is as old as the pipe
 * @throws {@link units.InputError} where the material is not in the table or the age not a number in its range
 *
 * @example
 * ```ts
 * import { hazenWilliamsCoefficient } from "risingmain/pipe";
 * import { years } from "risingmain/units";
 *
 * hazenWilliamsCoefficient({ material: "plastic" }).coefficient; // => 150
 * hazenWilliamsCoefficient({ material: "cast iron", age: years(12) }).coefficient; // => 100
 * ```
 *
 * @source ncees-2013, Values of Hazen-Williams coefficient C
 * @source nfpa-13, Hazen-Williams C values
 */
export function hazenWilliamsCoefficient(input: CoefficientInput): CoefficientFound {
  requireObject("input", input);
  const { material, age = 0 } = input;
  const rows = hazenWilliamsCoefficients.filter((row) => row.material === material);
  requireOneOf(
    "material",
    material,
    hazenWilliamsCoefficients.map((row) => row.material),
  );
  requireWithin("age", age, 0, 200 * YEAR, "s");
  const years = age / YEAR;
  const found = rows.find((row) => row.age === "any" || row.age >= years);
  const row = found ?? (rows[rows.length - 1] as HazenWilliamsCoefficient);
  return { ...row, insideRange: found !== undefined };
}
