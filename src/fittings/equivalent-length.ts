/**
 * Fittings as a length of the pipe they stand in: from a coefficient and back, from printed tables, and from one C to another.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import { feet, InputError, type Length } from "../units/index.ts";
import type { EquivalentLengthTable } from "./equivalent-lengths/equivalent-length-table.ts";

/** A resistance coefficient and the pipe around it. */
export interface EquivalentLengthInput {
  /** Resistance coefficient on the velocity head in the pipe. 0 to 1e9. */
  readonly coefficient: number;
  /** Inside diameter of the pipe. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Darcy friction factor of the pipe at the flow in question. 0.001 to 1000. */
  readonly frictionFactor: number;
}

/**
 * Length of pipe that loses as much as a fitting.
 *
 * @remarks
 * L = K D / f
 *
 * with K `coefficient`, D `insideDiameter`, f `frictionFactor`. Holds at the flow of the friction factor.
 *
 * @param input - coefficient, bore and friction factor; each field says its unit and the values it takes
 * @returns the equivalent length, m
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { equivalentLength } from "risingmain/fittings";
 * import { inMetres, metres } from "risingmain/units";
 *
 * inMetres(equivalentLength({ coefficient: 3.6, insideDiameter: metres(0.154), frictionFactor: 0.015 })); // ≈ 37.0
 * ```
 *
 * @source derived: the loss of a fitting set equal to that of pipe
 */
export function equivalentLength(input: EquivalentLengthInput): Length {
  requireObject("input", input);
  const { coefficient, insideDiameter, frictionFactor } = input;
  requireWithin("coefficient", coefficient, 0, 1e9, "");
  requireWithin("insideDiameter", insideDiameter, 1e-4, 100, "m");
  requireWithin("frictionFactor", frictionFactor, 1e-3, 1e3, "");
  return ((coefficient * insideDiameter) / frictionFactor) as Length;
}

/** A length of pipe that stands for a fitting. */
export interface CoefficientOfLengthInput {
  /** Equivalent length. 0 to 1 000 000 m. */
  readonly length: Length;
  /** Inside diameter of the pipe. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Darcy friction factor of the pipe at the flow in question. 0.001 to 1000. */
  readonly frictionFactor: number;
}

/**
 * Resistance coefficient of a fitting given as a length of pipe; undoes {@link equivalentLength}.
 *
 * @remarks
 * K = f L / D
 *
 * @param input - length, bore and friction factor; each field says its unit and the values it takes
 * @returns K on the velocity head in the pipe, 0 or more
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { coefficientOfLength } from "risingmain/fittings";
 * import { metres } from "risingmain/units";
 *
 * coefficientOfLength({ length: metres(14.58), insideDiameter: metres(0.0972), frictionFactor: 0.0165 }); // ≈ 2.475
 * ```
 *
 * @source derived: the loss of a fitting set equal to that of pipe
 */
export function coefficientOfLength(input: CoefficientOfLengthInput): number {
  requireObject("input", input);
  const { length, insideDiameter, frictionFactor } = input;
  requireWithin("length", length, 0, 1e6, "m");
  requireWithin("insideDiameter", insideDiameter, 1e-4, 100, "m");
  requireWithin("frictionFactor", frictionFactor, 1e-3, 1e3, "");
  return (frictionFactor * length) / insideDiameter;
}

/** A fitting to look up in a printed table. */
export interface PrintedLengthInput {
  /** The table, such as `steelPipeLengths`. */
  readonly table: EquivalentLengthTable;
  /** Name of the fitting, as the table has it. */
  readonly fitting: string;
  /** Nominal size, as the table has it: "1-1/4 in". */
  readonly nominal: string;
}

/**
 * Equivalent length of a fitting by nominal size, as a handbook prints it.
 *
 * @remarks
 * The table is an argument, so an app carries only the tables it uses. Printed lengths are rounded to half a foot or a foot and
 * differ between handbooks by a factor of two; where that matters take {@link threeKCoefficient}.
 *
 * @param input - the table, the fitting and the size
 * @returns the equivalent length, m
 * @throws {@link units.InputError} where the table has no such fitting or size; the message lists what it has
 *
 * @example
 * ```ts
 * import { printedLength, steelPipeLengths } from "risingmain/fittings";
 * import { inFeet } from "risingmain/units";
 *
 * inFeet(printedLength({ table: steelPipeLengths, fitting: "elbow 90", nominal: "1-1/4 in" })); // ≈ 3.0
 * ```
 *
 * @source nfpa-13: steel pipe
 * @source illinois-plumbing-code: copper tube
 * @source irc-appendix: screwed fittings
 * @source pvc-fittings-table: PVC pipe
 */
export function printedLength(input: PrintedLengthInput): Length {
  requireObject("input", input);
  const { table, fitting, nominal } = input;
  requireObject("table", table);
  requireObject("table.feet", table.feet);
  requireList("table.sizes", table.sizes, 1, 100);
  const row = typeof fitting === "string" && Object.hasOwn(table.feet, fitting) ? table.feet[fitting] : undefined;
  if (!Array.isArray(row)) {
    throw new InputError(
      "fitting",
      fitting,
      `one of ${Object.keys(table.feet)
        .map((name) => `"${name}"`)
        .join(", ")}`,
    );
  }
  const value = row[table.sizes.indexOf(nominal)];
  if (typeof value !== "number") {
    const printed = table.sizes.filter((size, i) => typeof size === "string" && typeof row[i] === "number");
    throw new InputError("nominal", nominal, `one of ${printed.map((size) => `"${size}"`).join(", ")}`);
  }
  return feet(value);
}

/** A printed length that goes with another Hazen–Williams coefficient than the pipe has. */
export interface LengthForCInput {
  /** Printed equivalent length. 0 to 1 000 000 m. */
  readonly length: Length;
  /** Hazen–Williams coefficient the printed length goes with: 120 in `steelPipeLengths`. 10 to 200. */
  readonly printedC: number;
  /** Hazen–Williams coefficient of the pipe. 10 to 200. */
  readonly C: number;
}

/**
 * Equivalent length in pipe of another Hazen–Williams coefficient than the table's.
 *
 * @remarks
 * L = L_p (C / C_p)^1.85
 *
 * with L_p `length`, C_p `printedC`. The fitting loses the same head whatever the pipe: a smoother pipe needs more length to
 * lose as much.
 *
 * @param input - the printed length and both coefficients; each field says its unit and the values it takes
 * @returns the equivalent length in the pipe, m
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { lengthForC } from "risingmain/fittings";
 * import { feet, inFeet } from "risingmain/units";
 *
 * inFeet(lengthForC({ length: feet(3), printedC: 120, C: 150 })); // ≈ 4.53
 * ```
 *
 * @source nfpa-13: the factors for other C
 */
export function lengthForC(input: LengthForCInput): Length {
  requireObject("input", input);
  const { length, printedC, C } = input;
  requireWithin("length", length, 0, 1e6, "m");
  requireWithin("printedC", printedC, 10, 200, "");
  requireWithin("C", C, 10, 200, "");
  return (length * (C / printedC) ** 1.85) as Length;
}
