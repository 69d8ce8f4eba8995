/**
 * The make-up water that a main with gasketed joints may take under test.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import {
  type GaugePressure,
  inFeet,
  inInches,
  inPsi,
  type Length,
  usGallonsPerHour,
  type VolumeFlow,
} from "../units/index.ts";
import { pressureCautions } from "./cautions.ts";

/** A main with gasketed joints under test. */
export interface TestAllowanceInput {
  /** Length under test. 0 to 1 000 000 m. */
  readonly length: Length;
  /** Nominal diameter. 0 to 10 m. */
  readonly diameter: Length;
  /** Mean test pressure. 0 to 100 MPa. */
  readonly pressure: GaugePressure;
  /** "current" constant 148 000, or that of editions before 1999, 133 200, 11 % looser. "current" where left out. */
  readonly edition?: "current" | "older";
}

/** Make-up water allowed. */
export interface TestAllowance {
  /** Most make-up water, m³/s. */
  readonly allowed: VolumeFlow;
  /** Source of the formula. */
  readonly method: "awwa-c605";
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

const ALLOWANCE: Readonly<Record<"current" | "older", number>> = { current: 148_000, older: 133_200 };

/**
 * The make-up water that a main with gasketed joints may take in a hydrostatic test.
 *
 * @remarks
 * Q = L D √P / 148 000, with Q in gal/h, L in ft, D in in, P in psi. Nothing is allowed on welded, fused or glued joints: on a
 * private line of those, any loss that goes on is a leak.
 *
 * @param input - main, pressure and edition; each field says its unit and range
 * @returns the allowance
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { testAllowance } from "risingmain/field";
 * import { feet, inches, inUsGallonsPerHour, psi } from "risingmain/units";
 *
 * const main = { length: feet(1000), diameter: inches(10), pressure: psi(100) };
 * inUsGallonsPerHour(testAllowance(main).allowed); // ≈ 0.68
 * ```
 *
 * @source awwa-c605, as quoted in a filed specification
 */
export function testAllowance(input: TestAllowanceInput): TestAllowance {
  requireObject("input", input);
  const { length, diameter, pressure, edition = "current" } = input;
  requireWithin("length", length, 0, 1e6, "m");
  requireWithin("diameter", diameter, 0, 10, "m");
  requireWithin("pressure", pressure, 0, 1e8, "Pa");
  requireOneOf("edition", edition, ["current", "older"]);
  const gallons = (inFeet(length) * inInches(diameter) * Math.sqrt(inPsi(pressure))) / ALLOWANCE[edition];
  return { allowed: usGallonsPerHour(gallons), method: "awwa-c605", cautions: pressureCautions };
}
