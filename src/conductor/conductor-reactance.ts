/**
 * Reactance of a conductor from its spacing.
 *
 * @module
 */
import { requireObject, requirePositive, requireWithin } from "../numeric/index.ts";
import { type Frequency, InputError, type Length, type ResistancePerLength } from "../units/index.ts";

/** μ₀ / 2π, H/m: 2e-7 by the definition of the ampere before 2019, since then within 1e-9 of it. */
const MU_OVER_TWO_PI = 2e-7;

/** Parallel round conductors. */
export interface ConductorReactanceInput {
  /** Diameter of the metal. 1e-5 to 0.2 m. */
  readonly diameter: Length;
  /** Distance between centres; for three conductors the geometric mean of the three distances. The diameter to 1 m. */
  readonly spacing: Length;
  /** Frequency of the supply. 0 to 400 Hz. */
  readonly frequency: Frequency;
}

/**
 * Reactance per length of one of two, or of three symmetric, parallel round conductors.
 *
 * @remarks
 * X = 2π f · (μ₀ / 2π) · (ln(2 s / d) + 1/4), with s the spacing and d the diameter of the metal. Exact for solid round wire
 * with the current spread evenly, in air, water or plastic; strands lower it by less than 1 %. Steel near it raises it.
 *
 * @param input - diameter, spacing and frequency
 * @returns the reactance of one conductor, Ω/m
 * @throws InputError naming the first field that is not in its range, or a spacing below the diameter
 *
 * @example
 * ```ts
 * import { conductorReactance } from "risingmain/conductor";
 * import { hertz, inOhmsPerKilometre, millimetres } from "risingmain/units";
 *
 * inOhmsPerKilometre(
 *   conductorReactance({ diameter: millimetres(2.05), spacing: millimetres(5), frequency: hertz(60) }),
 * ); // ≈ 0.1383
 * ```
 *
 * @source derived: inductance of parallel round wires with even current
 */
export function conductorReactance(input: ConductorReactanceInput): ResistancePerLength {
  requireObject("input", input);
  const { diameter, spacing, frequency } = input;
  requireWithin("diameter", diameter, 1e-5, 0.2, "m");
  requirePositive("spacing", spacing, 1, "m");
  if (spacing < diameter) throw new InputError("spacing", spacing, `at least the diameter, ${diameter} m`);
  requireWithin("frequency", frequency, 0, 400, "Hz");
  return (2 *
    Math.PI *
    frequency *
    MU_OVER_TWO_PI *
    (Math.log((2 * spacing) / diameter) + 0.25)) as ResistancePerLength;
}
