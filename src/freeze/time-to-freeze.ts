/**
 * How long a still, full pipe takes to come down to freezing, and to freeze through.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Duration, Energy, Length, Temperature, ThermalConductivity, Velocity } from "../units/index.ts";
import { BTU_PER_POUND_DEGREE, FREEZING, ICE_CONDUCTIVITY, LATENT_HEAT, WATER_DENSITY } from "./constants.ts";
import { windFilm } from "./wind-film.ts";

/** A pipe full of still water in cold air. */
export interface TimeToFreezeInput {
  /** Inside diameter of the pipe. 0.001 to 5 m. */
  readonly insideDiameter: Length;
  /** Diameter the insulation starts at: the pipe's outside. From the inside diameter, to 10 m. */
  readonly insulationInside: Length;
  /** Diameter the insulation ends at; the same again for a bare pipe. From where it starts, to 10 m. */
  readonly insulationOutside: Length;
  /** Conductivity of the insulation. 0.005 to 10 W/(m·K). */
  readonly conductivity: ThermalConductivity;
  /** Temperature of the water at the start. 273.15 to 373.15 K. */
  readonly water: Temperature;
  /** Temperature of the air. 173.15 to 373.15 K. */
  readonly air: Temperature;
  /** Wind across the pipe, 0 for still air. 0 to 100 m/s. Where left out, the surface is at the temperature of the air: the
   * published form, and the safe one. */
  readonly wind?: Velocity;
}

/** What happens, and when. */
export type TimeToFreeze =
  | {
      /** The air is cold enough. */
      readonly state: "freezes";
      /** Time for the water to come down to freezing, s: the published figure. The pipe is not blocked yet. */
      readonly toFreezing: Duration;
      /** Time to freeze through, s: the upper end. Where the water is under pressure the pipe may burst before. */
      readonly toSolid: Duration;
      /** Heat to cool one metre of pipe to freezing, J. */
      readonly coolingHeat: Energy;
      /** Heat to freeze one metre of pipe through, J. */
      readonly freezingHeat: Energy;
      /** Source of the cooling time. */
      readonly method: "ashrae-fundamentals";
      /** What to say with it. */
      readonly cautions: readonly Caution[];
    }
  | {
      /** The air is not below freezing. */
      readonly state: "never";
      /** Source of the method. */
      readonly method: "ashrae-fundamentals";
    };

const CAUTIONS: readonly Caution[] = [
  {
    code: "freeze-local",
    text: "Fittings, hangers, a gap in the insulation or a draught freeze first. Drain what need not stand full, and go by what local practice has found to be enough.",
    basis: "common practice",
  },
  {
    code: "thawing-fire",
    text: "Never thaw a pipe with a flame. Turn off the mains first where a heating cable may be damaged, and thaw from the open end.",
    basis: "common practice",
  },
];

/**
 * The time that still water in an insulated pipe takes to reach freezing, and to freeze through.
 *
 * @remarks
 * θ = ρ c π (D₁/2)² R ln[(t_w − t_a)/(t_f − t_a)],  R = ln(D₃/D₂)/(2πk) (+ 1/(π D₃ h) with a wind given)
 *
 * with D₁ inside diameter, D₂ and D₃ the insulation's diameters, k its conductivity, t_w water, t_a air, t_f 0 °C, ρ c of water
 * 62.4 lb/ft³ × 1 Btu/(lb·°F), h the surface coefficient. That leaves out the latent heat: it is the time to reach freezing, not to
 * a blocked pipe. Freezing through takes ρ L π (D₁/2)² [R + 1/(4π k_ice)]/(t_f − t_a) more (quasi-steady, ice growing inward
 * from the wall), some 14 times the heat of cooling by 10 °F. The pipe's own heat, the wall and any supercooling are left out.
 * Within a fifth or so where insulation is dry and whole; wet insulation is none.
 *
 * @param input - pipe, insulation, water, air and wind; each field says its unit and range
 * @returns the two times and the two heats, or that it never freezes
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example A 2 in pipe in 1.5 in of insulation at 20 °F
 * ```ts
 * import { timeToFreeze } from "risingmain/freeze";
 * import { fahrenheit, inches, inHours, wattsPerMetreKelvin } from "risingmain/units";
 *
 * const pipe = timeToFreeze({
 *   insideDiameter: inches(2.067), insulationInside: inches(2.375), insulationOutside: inches(5.375),
 *   conductivity: wattsPerMetreKelvin(0.0433), water: fahrenheit(42), air: fahrenheit(20),
 * });
 * if (pipe.state !== "freezes") throw new Error(pipe.state);
 * inHours(pipe.toFreezing); // ≈ 4.6
 * inHours(pipe.toSolid); // ≈ 96
 * ```
 *
 * @source ashrae-fundamentals, insulation chapter, as quoted with two printed answers in `warren-freezing`
 * @source derived: freezing through, from the heat balance of a growing ring of ice
 * @source churchill-bernstein-1977: the wind
 */
export function timeToFreeze(input: TimeToFreezeInput): TimeToFreeze {
  requireObject("input", input);
  const { insideDiameter: D1, insulationInside: D2, insulationOutside: D3, conductivity: k, water, air, wind } = input;
  requireWithin("insideDiameter", D1, 0.001, 5, "m");
  requireWithin("insulationInside", D2, D1, 10, "m (at least the inside diameter)");
  requireWithin("insulationOutside", D3, D2, 10, "m (at least where it starts)");
  requireWithin("conductivity", k, 0.005, 10, "W/(m·K)");
  requireWithin("water", water, FREEZING, 373.15, "K");
  requireWithin("air", air, 173.15, 373.15, "K");
  if (wind !== undefined) requireWithin("wind", wind, 0, 100, "m/s");
  // A hair below freezing would take for ever to no purpose: a millikelvin is under any forecast.
  if (!(air < FREEZING - 1e-3)) return { state: "never", method: "ashrae-fundamentals" };

  const film = wind === undefined ? 0 : 1 / (Math.PI * D3 * windFilm(wind, D3));
  const resistance = Math.log(D3 / D2) / (2 * Math.PI * k) + film;
  const mass = WATER_DENSITY * (Math.PI / 4) * D1 * D1;
  const toFreezing = mass * BTU_PER_POUND_DEGREE * resistance * Math.log((water - air) / (FREEZING - air));
  const inIce = 1 / (4 * Math.PI * ICE_CONDUCTIVITY);
  const freezing = (mass * LATENT_HEAT * (resistance + inIce)) / (FREEZING - air);
  return {
    state: "freezes",
    toFreezing: toFreezing as Duration,
    toSolid: (toFreezing + freezing) as Duration,
    coolingHeat: (mass * BTU_PER_POUND_DEGREE * (water - FREEZING)) as Energy,
    freezingHeat: (mass * LATENT_HEAT) as Energy,
    method: "ashrae-fundamentals",
    cautions: CAUTIONS,
  };
}
