/**
 * Skin effect: alternating current crowds to the outside of a thick conductor.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Frequency, Ratio, ResistancePerLength } from "../units/index.ts";

/** A conductor of a given direct-current resistance at a frequency. */
export interface SkinEffectInput {
  /** Direct-current resistance per length at the conductor's temperature. 1e-6 to 100 Ω/m. */
  readonly resistance: ResistancePerLength;
  /** Frequency of the supply. 0 to 400 Hz. */
  readonly frequency: Frequency;
}

/**
 * How many times its direct-current resistance a round conductor shows to alternating current, standing alone.
 *
 * @remarks
 * 1 + x⁴ / (192 + 0.8 x⁴), with x² = 8π f / R · 10⁻⁷, f the frequency and R the direct-current resistance, Ω/m.
 * Good to 1 % for x up to 2.8, about 1000 kcmil copper at 60 Hz; below 1/0 AWG it is less than 1.001. Neighbouring
 * conductors (proximity effect) add to it in large cables and are not in it.
 *
 * @param input - resistance and frequency
 * @returns the factor, 1 or a little more
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { skinEffectFactor } from "risingmain/conductor";
 * import { hertz, ohmsPerThousandFeet } from "risingmain/units";
 *
 * skinEffectFactor({ resistance: ohmsPerThousandFeet(0.0258), frequency: hertz(60) }); // ≈ 1.0165
 * ```
 *
 * @source iec-60287-1-1, clause 2.1.2
 */
export function skinEffectFactor(input: SkinEffectInput): Ratio {
  requireObject("input", input);
  const { resistance, frequency } = input;
  requireWithin("resistance", resistance, 1e-6, 100, "Ω/m");
  requireWithin("frequency", frequency, 0, 400, "Hz");
  const square = ((8 * Math.PI * frequency) / resistance) * 1e-7;
  const fourth = square * square;
  return (1 + fourth / (192 + 0.8 * fourth)) as Ratio;
}
