/**
 * Skin and proximity effect: alternating current crowds to the outside of a thick conductor, and away from its neighbour.
 *
 * @module
 */
import { requireObject, requireWhole, requireWithin } from "../numeric/index.ts";
import type { Frequency, Length, Ratio, ResistancePerLength } from "../units/index.ts";

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
 * Within 0.11 % of the exact solution (Bessel functions) for x up to 2.8, about 2000 kcmil copper at 60 Hz; below 1/0 AWG it
 * is less than 1.001. Neighbouring
 * conductors add to it in large cables: {@link proximityEffect}.
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
 * skinEffectFactor({ resistance: ohmsPerThousandFeet(0.0258), frequency: hertz(60) }); // ≈ 1.0163
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

/** Conductors side by side. */
export interface ProximityEffectInput extends SkinEffectInput {
  /** Diameter of the metal. 1e-5 to 0.2 m. */
  readonly diameter: Length;
  /** Distance between centres. The diameter to 1 m. */
  readonly spacing: Length;
  /** Two conductors of one phase, or three of three phases. */
  readonly conductors: 2 | 3;
}

/**
 * What neighbouring conductors add to the resistance factor of {@link skinEffectFactor}.
 *
 * @remarks
 * With F = x⁴ / (192 + 0.8 x⁴), x² = 8π f / R · 10⁻⁷ and y = (d / s)²: 2.9 F y for two conductors,
 * F y (0.312 y + 1.18 / (F + 0.27)) for three. Good to 1 % of the resistance for x up to 2.8; below 1/0 AWG it is less than
 * 0.01. A steel raceway adds more.
 *
 * @param input - the conductors; each field says its unit and the values it takes
 * @returns the part to add to the skin-effect factor, 0 or more
 * @throws InputError naming the first field that is not in its range, or a spacing below the diameter
 *
 * @example Three 500 kcmil conductors together
 * ```ts
 * import { proximityEffect } from "risingmain/conductor";
 * import { hertz, inches, ohmsPerThousandFeet } from "risingmain/units";
 *
 * proximityEffect({
 *   resistance: ohmsPerThousandFeet(0.0258), frequency: hertz(60), diameter: inches(0.813), spacing: inches(1.05),
 *   conductors: 3,
 * }); // ≈ 0.042
 * ```
 *
 * @source iec-60287-1-1, clause 2.1.4
 */
export function proximityEffect(input: ProximityEffectInput): Ratio {
  requireObject("input", input);
  const { diameter, spacing, conductors } = input;
  const f = skinEffectFactor(input) - 1;
  requireWithin("diameter", diameter, 1e-5, 0.2, "m");
  requireWithin("spacing", spacing, diameter, 1, "m");
  requireWhole("conductors", conductors, 2, 3);
  const y = (diameter / spacing) ** 2;
  return (conductors === 2 ? 2.9 * f * y : f * y * (0.312 * y + 1.18 / (f + 0.27))) as Ratio;
}
