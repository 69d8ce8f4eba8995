/**
 * What is left of a bleach's strength after standing.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Ratio, Temperature } from "../units/index.ts";

/** Activation enthalpy of the decay of hypochlorite to chlorate, J/mol, and entropy, J/(mol·K) (`adam-gordon-1999`). */
const ENTHALPY = 1.018e5;
const ENTROPY = -56.5;
/** Boltzmann constant over Planck constant, 1/(K·s): both exact since 2019. */
const BOLTZMANN_OVER_PLANCK = 1.380649e-23 / 6.62607015e-34;
/** Molar gas constant, J/(mol·K): exact since 2019. */
const GAS_CONSTANT = 8.31446261815324;
/** Growth of the rate with ionic strength, decades a mol/L (`adam-gordon-1999`). */
const IONIC_SLOPE = 0.146;
/** Molar mass of chlorine, Cl₂, g/mol: one mole of available chlorine is one of hypochlorite. */
const CHLORINE_MOLAR_MASS = 70.906;
/** Grams in 100 mL as a share, in grams a litre. */
const GRAMS_PER_LITRE = 1000;
/** Salt as strong as the hypochlorite is left by its making, and some caustic keeps it: ions beyond them, mol/L. */
const CAUSTIC = 0.1;

/** A bleach that has stood. */
export interface AgedStrengthInput {
  /** Available chlorine when made, grams in 100 mL as a share: 0.0825 for 8.25 percent. 0.001 to 0.25. */
  readonly strength: Ratio;
  /** Time since it was made. 0 to 20 years, s. */
  readonly age: Duration;
  /** Mean temperature it was kept at. 263.15 to 333.15 K (−10 to 60 °C). */
  readonly temperature: Temperature;
}

/** What is left. */
export interface AgedStrength {
  /** Available chlorine now, grams in 100 mL as a share. */
  readonly strength: Ratio;
  /** Share of the first strength that is left. */
  readonly remaining: Ratio;
  /** Time for half of the first strength to go, s. */
  readonly halfLife: Duration;
  /** Source of the method. */
  readonly method: "adam-gordon-1999";
  /** False below 20 °C, where the rate is carried on, or over 12 percent strength. */
  readonly insideRange: boolean;
}

/**
 * The strength of a bleach after standing.
 *
 * @remarks
 * 1/s = 1/s₀ + k t,  k = (k_B T / h) e^(ΔS/R) e^(−ΔH/RT) 10^(0.146 I),  ΔH 101.8 kJ/mol, ΔS −56.5 J/(mol·K)
 *
 * with s the molar concentration of hypochlorite, I the ionic strength (hypochlorite, as much salt, 0.1 mol/L caustic) and
 * k in L/(mol·s). Strong bleach fades faster: at double the strength more than twice as fast. The law is for clean bleach in
 * the dark at pH 11 to 13; sunlight and traces of metal make it worse, so take it as the best case, within a third or so of
 * published half-lives. Where the date is unknown, buy fresh or measure with a test strip.
 *
 * @param input - the bleach, its age and its keeping; each field says its unit and range
 * @returns the strength left, the share and the half-life
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example A year on a shelf at 25 °C
 * ```ts
 * import { agedStrength } from "risingmain/disinfection";
 * import { celsius, inPercent, percent, years } from "risingmain/units";
 *
 * const old = agedStrength({ strength: percent(8.25), age: years(1), temperature: celsius(25) });
 * inPercent(old.strength); // ≈ 4.5
 * ```
 *
 * @source adam-gordon-1999, rate law; recalled
 */
export function agedStrength(input: AgedStrengthInput): AgedStrength {
  requireObject("input", input);
  const { strength, age, temperature: T } = input;
  requireWithin("strength", strength, 0.001, 0.25, "(0.0825 for 8.25 percent)");
  requireWithin("age", age, 0, 20 * 31_557_600, "s");
  requireWithin("temperature", T, 263.15, 333.15, "K");
  const molar = (GRAMS_PER_LITRE * strength) / CHLORINE_MOLAR_MASS;
  // Salt of one-to-one ions: the ionic strength is the sum of hypochlorite, chloride and hydroxide.
  const ionic = 2 * molar + CAUSTIC;
  const k =
    BOLTZMANN_OVER_PLANCK *
    T *
    Math.exp(ENTROPY / GAS_CONSTANT - ENTHALPY / (GAS_CONSTANT * T)) *
    10 ** (IONIC_SLOPE * ionic);
  const remaining = 1 / (1 + k * molar * age);
  return {
    strength: (strength * remaining) as Ratio,
    remaining: remaining as Ratio,
    halfLife: (1 / (k * molar)) as Duration,
    method: "adam-gordon-1999",
    insideRange: T >= 293.15 && strength <= 0.12,
  };
}
