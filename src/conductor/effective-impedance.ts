/**
 * Effective impedance: the resistance and reactance of a conductor as one figure at a power factor.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Ratio, ResistancePerLength } from "../units/index.ts";

/** One conductor at a power factor. */
export interface EffectiveImpedanceInput {
  /** Resistance per length of one conductor. 0 to 10 Ω/m. */
  readonly resistance: ResistancePerLength;
  /** Reactance per length of one conductor. 0 to 10 Ω/m. */
  readonly reactance: ResistancePerLength;
  /** Power factor of the load, lagging. 0 to 1. */
  readonly powerFactor: Ratio;
}

/**
 * Effective impedance of a conductor at a power factor, R cos φ + X sin φ, as the code's Table 9 lists it for 0.85.
 *
 * @remarks
 * Times current, length and 2 or √3 it is the usual drop formula: the `inPhase` part of {@link voltageDrop}, low by
 * (I (X cos φ − R sin φ))² / 2V, at most 0.13 % of the voltage for drops up to 5 %.
 *
 * @param input - resistance, reactance and power factor
 * @returns the effective impedance of one conductor, Ω/m
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { effectiveImpedance } from "risingmain/conductor";
 * import { inOhmsPerThousandFeet, ohmsPerThousandFeet, ratio } from "risingmain/units";
 *
 * const z = effectiveImpedance({
 *   resistance: ohmsPerThousandFeet(0.054), reactance: ohmsPerThousandFeet(0.052), powerFactor: ratio(0.85),
 * });
 * inOhmsPerThousandFeet(z); // ≈ 0.0733
 * ```
 *
 * @source nfpa-70, Chapter 9 Table 9, note on effective impedance
 */
export function effectiveImpedance(input: EffectiveImpedanceInput): ResistancePerLength {
  requireObject("input", input);
  const { resistance, reactance, powerFactor } = input;
  requireWithin("resistance", resistance, 0, 10, "Ω/m");
  requireWithin("reactance", reactance, 0, 10, "Ω/m");
  requireWithin("powerFactor", powerFactor, 0, 1, "as a ratio");
  return (resistance * powerFactor + reactance * Math.sqrt(1 - powerFactor * powerFactor)) as ResistancePerLength;
}
