/**
 * Calcium hypochlorite (granules or tablets): how much gives a wanted dose, and what dose an amount gave.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import { type Concentration, inGrams, inOunces, type Mass, type Ratio, type Volume } from "../units/index.ts";
import { chlorineCautions } from "./cautions.ts";

/** The water and the granules. */
export interface HypochloriteDoseInput {
  /** Water to treat. 0 to 100 000 m³. */
  readonly volume: Volume;
  /** Chlorine wanted in the water when mixed. 0 to 10 kg/m³ (10 000 mg/L). */
  readonly target: Concentration;
  /** Available chlorine by weight, as a share: 0.65 for 65 percent. 0.1 to 1. */
  readonly availableChlorine: Ratio;
}

/** The amount of granules. */
export interface HypochloriteDose {
  /** Granules to add, kg, exact. */
  readonly granules: Mass;
  /** Whole grams, rounded up. */
  readonly grams: number;
  /** Ounces (avoirdupois), rounded up to the half. */
  readonly ounces: number;
  /** As it is said: "57 g (2 oz)". */
  readonly text: string;
  /** Available chlorine in it, kg. */
  readonly chlorine: Mass;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

/** Said with granules, beside the cautions of all chlorine. */
const GRANULE_CAUTION: Caution = {
  code: "hypochlorite-fire",
  text: "Calcium hypochlorite can set fire to oil, grease and paper. Dissolve it in water in a clean plastic bucket, granules into water, and never let it touch liquid bleach or any other pool chemical.",
  basis: "common practice",
};

/** Rounding up must not turn an amount that is whole but for the last bit of its double into the next whole one. */
const ROUNDING_SLACK = 1e-9;

/**
 * Calcium hypochlorite for a wanted chlorine concentration in a volume of water.
 *
 * @remarks
 * m = C V / a with C `target`, V `volume` and a `availableChlorine`. Granules are sold at 65 to 75 percent.
 *
 * @param input - the water, the target and the strength; each field says its unit and range
 * @returns the mass exact and in measures, the chlorine in it, and the cautions
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { hypochloriteDose } from "risingmain/disinfection";
 * import { mgPerLitre, percent, usGallons } from "risingmain/units";
 *
 * const dose = hypochloriteDose({ volume: usGallons(100), target: mgPerLitre(100), availableChlorine: percent(65) });
 * dose.text; // => "59 g (2.5 oz)"
 * ```
 *
 * @source derived: mass balance of chlorine
 */
export function hypochloriteDose(input: HypochloriteDoseInput): HypochloriteDose {
  requireObject("input", input);
  const { volume, target, availableChlorine } = input;
  requireWithin("volume", volume, 0, 1e5, "m³");
  requireWithin("target", target, 0, 10, "kg/m³");
  requireWithin("availableChlorine", availableChlorine, 0.1, 1, "(0.65 for 65 percent)");
  const chlorine = target * volume;
  const granules = (chlorine / availableChlorine) as Mass;
  const grams = Math.ceil(inGrams(granules) * (1 - ROUNDING_SLACK));
  const ounces = Math.ceil(2 * inOunces(granules) * (1 - ROUNDING_SLACK)) / 2;
  return {
    granules,
    grams,
    ounces,
    text: `${grams} g (${ounces} oz)`,
    chlorine: chlorine as Mass,
    cautions: [...chlorineCautions, GRANULE_CAUTION],
  };
}

/** Granules in water. */
export interface HypochloriteConcentrationInput {
  /** Water they went into. Above 0, to 100 000 m³. */
  readonly volume: Volume;
  /** Granules added. 0 to 1 000 000 kg. */
  readonly granules: Mass;
  /** Available chlorine by weight, as a share. 0.1 to 1. */
  readonly availableChlorine: Ratio;
}

/**
 * The chlorine concentration that an amount of calcium hypochlorite gives; undoes {@link hypochloriteDose}.
 *
 * @remarks
 * C = a m / V, symbols as there.
 *
 * @param input - the water and the granules; each field says its unit and range
 * @returns the concentration when mixed, before any is used up, kg/m³
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { hypochloriteConcentration } from "risingmain/disinfection";
 * import { inMgPerLitre, ounces, percent, usGallons } from "risingmain/units";
 *
 * const well = { volume: usGallons(100), granules: ounces(2), availableChlorine: percent(65) };
 * inMgPerLitre(hypochloriteConcentration(well)); // ≈ 97.4
 * ```
 *
 * @source derived: mass balance of chlorine
 */
export function hypochloriteConcentration(input: HypochloriteConcentrationInput): Concentration {
  requireObject("input", input);
  requireWithin("volume", input.volume, 1e-9, 1e5, "m³");
  requireWithin("granules", input.granules, 0, 1e6, "kg");
  requireWithin("availableChlorine", input.availableChlorine, 0.1, 1, "(0.65 for 65 percent)");
  return ((input.granules * input.availableChlorine) / input.volume) as Concentration;
}
