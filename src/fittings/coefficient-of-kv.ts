/**
 * Resistance coefficient of a valve from its flow coefficient, and back.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Length } from "../units/index.ts";
import { BAR, PER_HOUR, REFERENCE_DENSITY } from "./flow-coefficient.ts";

/** A Kv and the pipe whose velocity head a coefficient refers to. */
export interface CoefficientOfKvInput {
  /** Flow coefficient, m³/h/bar^0.5. 1e-9 to 1e9. */
  readonly Kv: number;
  /** Inside diameter of the pipe. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
}

/**
 * Resistance coefficient of a valve from its Kv.
 *
 * @remarks
 * K = 2 ΔP A² / (ρ Q²) with Q = Kv at ΔP = 1 bar; K = 1.6e9 d⁴ / Kv² with d in m. On the velocity head in the pipe.
 *
 * @param input - Kv and bore; each field says its unit and the values it takes
 * @returns K, above 0
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A valve of 500 m³/h in a bore of 154 mm
 * ```ts
 * import { coefficientOfKv } from "risingmain/fittings";
 * import { millimetres } from "risingmain/units";
 *
 * coefficientOfKv({ Kv: 500, insideDiameter: millimetres(154) }); // ≈ 3.60
 * ```
 *
 * @source iec-60534-2-1: the definition of Kv
 */
export function coefficientOfKv(input: CoefficientOfKvInput): number {
  requireObject("input", input);
  const { Kv, insideDiameter } = input;
  requireWithin("Kv", Kv, 1e-9, 1e9, "m³/h/bar^0.5");
  return twoPressureHeads(insideDiameter) / (Kv * PER_HOUR) ** 2;
}

/** A resistance coefficient and the pipe it refers to. */
export interface KvOfCoefficientInput {
  /** Resistance coefficient on the velocity head in the pipe. 1e-9 to 1e12. */
  readonly coefficient: number;
  /** Inside diameter of the pipe. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
}

/**
 * Kv of a fitting from its resistance coefficient; undoes {@link coefficientOfKv}.
 *
 * @remarks
 * Kv = 3600 A √(2 · 1 bar / (ρ K))
 *
 * @param input - coefficient and bore; each field says its unit and the values it takes
 * @returns Kv, m³/h/bar^0.5
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { kvOfCoefficient } from "risingmain/fittings";
 * import { millimetres } from "risingmain/units";
 *
 * kvOfCoefficient({ coefficient: 2.475, insideDiameter: millimetres(97.2) }); // ≈ 240
 * ```
 *
 * @source iec-60534-2-1: the definition of Kv
 */
export function kvOfCoefficient(input: KvOfCoefficientInput): number {
  requireObject("input", input);
  const { coefficient, insideDiameter } = input;
  requireWithin("coefficient", coefficient, 1e-9, 1e12, "");
  return Math.sqrt(twoPressureHeads(insideDiameter) / coefficient) / PER_HOUR;
}

/** 2 A² · 1 bar / ρ: the square of the flow that a coefficient of 1 passes at a loss of 1 bar. */
function twoPressureHeads(insideDiameter: number): number {
  requireWithin("insideDiameter", insideDiameter, 1e-4, 100, "m");
  const area = (Math.PI / 4) * insideDiameter ** 2;
  return (2 * area * area * BAR) / REFERENCE_DENSITY;
}
