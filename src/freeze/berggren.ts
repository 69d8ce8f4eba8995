/**
 * How deep the frost goes by Berggren's formula as modified, which allows for the warmth below.
 *
 * @module
 */
import { erf, findRoot, requireObject, requireWithin, scaledErfc } from "../numeric/index.ts";
import type { Duration, Length, Ratio, Temperature } from "../units/index.ts";
import { BTU_PER_POUND_DEGREE, FREEZING } from "./constants.ts";
import { requireSoil, type StefanInput, stefanFrostDepth } from "./stefan.ts";

/** Specific heat of dry soil, and of its water half frozen, Btu/(lb·°F) (`wsdot-berggren`). */
const SOIL_HEAT = 0.17;
const MOISTURE_HEAT = 0.75;

/** A soil and its climate. */
export interface BerggrenInput extends StefanInput {
  /** Length of the freezing season. 1 to 366 days, s. */
  readonly season: Duration;
  /** Mean annual temperature of the ground, near that of the air. 223.15 to 323.15 K. */
  readonly meanAnnual: Temperature;
}

/** A depth by the modified Berggren formula. */
export type BerggrenDepth =
  | {
      /** The ground freezes in winter. */
      readonly state: "seasonal frost";
      /** Depth of frost, m. */
      readonly depth: Length;
      /** Depth by Stefan's formula, m: an upper bound. */
      readonly stefanDepth: Length;
      /** Correction to Stefan's formula, 0 to 1. */
      readonly lambda: Ratio;
      /** Warmth of the ground over the cold of the surface, α. */
      readonly thermalRatio: Ratio;
      /** Heat stored over latent heat, μ. */
      readonly fusionParameter: Ratio;
      /** Source of the method. */
      readonly method: "aldrich-paynter-1953";
    }
  | {
      /** The mean of the year is at or below freezing: the ground under the summer's thaw stays frozen. */
      readonly state: "ground frozen all year";
      /** Source of the method. */
      readonly method: "aldrich-paynter-1953";
    };

/**
 * Depth of frost by the modified Berggren formula.
 *
 * @remarks
 * X = λ √(2 k F / L), with λ of α = v₀/v_s and μ = C v_s/L: v₀ mean annual temperature above freezing, v_s = F/t the
 * mean cold of the surface over the season t, C = dry density × (0.17 + 0.75 × moisture) Btu/(lb·°F). See
 * {@link berggrenCoefficient} for λ. One layer; a layered soil, a wet year or a bare winter moves it by a quarter. Local records of
 * frost win.
 *
 * @param input - soil, winter and climate; each field says its unit and range
 * @returns the depth with λ, α and μ; or that the ground is frozen all year
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example The same silt with a mean annual 42 °F and a winter of 120 days
 * ```ts
 * import { berggrenFrostDepth } from "risingmain/freeze";
 * import { btuPerHourFootDegreeF, days, fahrenheit, fahrenheitDegreeDays } from "risingmain/units";
 * import { inFeet, percent, poundsPerCubicFoot } from "risingmain/units";
 *
 * const silt = berggrenFrostDepth({
 *   conductivity: btuPerHourFootDegreeF(0.8), dryDensity: poundsPerCubicFoot(100), moisture: percent(15),
 *   surfaceIndex: fahrenheitDegreeDays(1000), season: days(120), meanAnnual: fahrenheit(42),
 * });
 * if (silt.state !== "seasonal frost") throw new Error(silt.state);
 * inFeet(silt.depth); // ≈ 3.43
 * ```
 *
 * @source aldrich-paynter-1953, as printed in `wsdot-berggren`
 * @source tm-5-852-6, worked example of a homogeneous soil; recalled
 */
export function berggrenFrostDepth(input: BerggrenInput): BerggrenDepth {
  requireSoil(input);
  requireWithin("season", input.season, 86_400, 366 * 86_400, "s");
  requireWithin("meanAnnual", input.meanAnnual, 223.15, 323.15, "K");
  const method = "aldrich-paynter-1953";
  if (!(input.meanAnnual > FREEZING)) return { state: "ground frozen all year", method };
  const { depth: stefanDepth, latentHeat } = stefanFrostDepth(input);
  const cold = input.surfaceIndex / input.season;
  const heatCapacity = BTU_PER_POUND_DEGREE * input.dryDensity * (SOIL_HEAT + MOISTURE_HEAT * input.moisture);
  // The coefficient is asked no further than its own accepted range: beyond it λ is as good as 0 or 1.
  const thermalRatio = Math.min((input.meanAnnual - FREEZING) / Math.max(cold, 1e-12), MOST_THERMAL_RATIO);
  const fusionParameter = Math.min(Math.max((heatCapacity * cold) / latentHeat, LEAST_FUSION), MOST_FUSION);
  const lambda = berggrenCoefficient({
    thermalRatio: thermalRatio as Ratio,
    fusionParameter: fusionParameter as Ratio,
  });
  return {
    state: "seasonal frost",
    depth: (lambda * stefanDepth) as Length,
    stefanDepth,
    lambda,
    thermalRatio: thermalRatio as Ratio,
    fusionParameter: fusionParameter as Ratio,
    method,
  };
}

/** What λ is a function of. */
export interface BerggrenCoefficientInput {
  /** Warmth of the ground over the cold of the surface, α. 0 to 1000. */
  readonly thermalRatio: Ratio;
  /** Heat stored over latent heat, μ. 1e-6 to 100. */
  readonly fusionParameter: Ratio;
}

const MOST_THERMAL_RATIO = 1000;
const LEAST_FUSION = 1e-6;
const MOST_FUSION = 100;
/** The root lies between: γ < √(μ/2) always, and with the least μ and the most α it is above 1e-7. */
const LEAST_GAMMA = 1e-9;

/**
 * The coefficient λ of the modified Berggren formula, from Neumann's solution rather than the chart.
 *
 * @remarks
 * e^(−γ²)/erf γ − α e^(−γ²)/erfc γ = √π γ/μ,  λ = γ √(2/μ)
 *
 * for equal properties of frozen and thawed soil, as the chart is drawn. The left side falls and the right rises with γ, so
 * the root is the only one.
 *
 * @param input - the two ratios; each field says its range
 * @returns λ, 0 to 1
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example The published chart reads about 0.89 here
 * ```ts
 * import { berggrenCoefficient } from "risingmain/freeze";
 * import { ratio } from "risingmain/units";
 *
 * berggrenCoefficient({ thermalRatio: ratio(0.33), fusionParameter: ratio(0.2) }); // ≈ 0.898
 * ```
 *
 * @source aldrich-paynter-1953
 */
export function berggrenCoefficient(input: BerggrenCoefficientInput): Ratio {
  requireObject("input", input);
  const { thermalRatio: alpha, fusionParameter: mu } = input;
  requireWithin("thermalRatio", alpha, 0, MOST_THERMAL_RATIO, "");
  requireWithin("fusionParameter", mu, LEAST_FUSION, MOST_FUSION, "");
  // e^(−γ²)/erfc γ is 1/(e^(γ²) erfc γ), which stays in range where erfc vanishes.
  const excess = (gamma: number): number =>
    Math.exp(-gamma * gamma) / erf(gamma) - alpha / scaledErfc(gamma) - (Math.sqrt(Math.PI) * gamma) / mu;
  const { x: gamma } = findRoot(excess, LEAST_GAMMA, Math.sqrt(mu / 2));
  return (gamma * Math.sqrt(2 / mu)) as Ratio;
}
