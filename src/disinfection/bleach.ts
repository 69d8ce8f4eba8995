/**
 * Liquid bleach: how much gives a wanted dose, and what dose a poured amount gave.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Concentration, Mass, Ratio, Volume } from "../units/index.ts";
import { chlorineCautions } from "./cautions.ts";
import { type KitchenMeasure, kitchenMeasure } from "./kitchen-measure.ts";

/** Grams in 100 mL as a share, 1 g/mL, in kg/m³ (exact). */
const KILOGRAMS_PER_CUBIC_METRE = 1000;

/** What the percentage on the label is a share of. */
export type StrengthBasis = "volume" | "weight";

/** A liquid bleach. */
export interface Bleach {
  /** Available chlorine as the label gives it, as a share: 0.0525 for 5.25 percent. 0.001 to 0.25. */
  readonly strength: Ratio;
  /** "volume": grams in 100 mL (trade percent), taken where left out. "weight": grams in 100 g; density is then used. */
  readonly strengthBasis?: StrengthBasis;
  /** Density over that of water, with "weight" only: 0.9 to 1.4; 1.1 where left out (household bleach is 1.07 to 1.1). */
  readonly relativeDensity?: number;
}

/** The water and the bleach. */
export interface BleachDoseInput extends Bleach {
  /** Water to treat. 0 to 100 000 m³. */
  readonly volume: Volume;
  /** Chlorine wanted in the water when mixed, before any is used up. 0 to 10 kg/m³ (10 000 mg/L). */
  readonly target: Concentration;
}

/** The amount of bleach. */
export interface BleachDose {
  /** Bleach to add, m³, exact. */
  readonly bleach: Volume;
  /** The same to measure out, rounded up to half a fluid ounce. */
  readonly measure: KitchenMeasure;
  /** Available chlorine in it, kg. */
  readonly chlorine: Mass;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

/**
 * Liquid bleach for a wanted chlorine concentration in a volume of water.
 *
 * @remarks
 * V_b = C V / s, with C `target`, V `volume` and s the available chlorine in kg per m³ of bleach: 1000 × strength, times
 * the relative density where the label is by weight. The bleach's own volume is left out of V, as in every published
 * table; at 200 mg/L and 5.25 percent that is 0.4 %. A table written for 5.25 percent bleach overdoses by 57 % with
 * 8.25 percent bleach: always go by the strength. Old bleach is weaker: see `agedStrength`.
 *
 * @param input - the water, the target and the bleach; each field says its unit and range
 * @returns the amount exact and in measures, the chlorine in it, and the cautions
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example 147 gallons to 100 mg/L with 5.25 percent bleach
 * ```ts
 * import { bleachDose } from "risingmain/disinfection";
 * import { inUsCups, mgPerLitre, percent, usGallons } from "risingmain/units";
 *
 * const dose = bleachDose({ volume: usGallons(147), target: mgPerLitre(100), strength: percent(5.25) });
 * inUsCups(dose.bleach); // ≈ 4.480
 * dose.measure.text; // => "4 cups 4 fl oz"
 * ```
 *
 * @source derived: mass balance of chlorine
 */
export function bleachDose(input: BleachDoseInput): BleachDose {
  requireObject("input", input);
  requireWithin("volume", input.volume, 0, 1e5, "m³");
  requireWithin("target", input.target, 0, 10, "kg/m³");
  const available = availableChlorine(input);
  const chlorine = input.target * input.volume;
  // At the edges of every range at once the bleach would pass what a measure accepts; nobody pours 1000 m³ of it.
  requireWithin("volume × target / strength", chlorine / available, 0, 1000, "m³ of bleach");
  const bleach = (chlorine / available) as Volume;
  return { bleach, measure: kitchenMeasure(bleach), chlorine: chlorine as Mass, cautions: chlorineCautions };
}

/** Bleach poured into water. */
export interface BleachConcentrationInput extends Bleach {
  /** Water it was poured into. Above 0, to 100 000 m³. */
  readonly volume: Volume;
  /** Bleach poured. 0 to 1000 m³. */
  readonly bleach: Volume;
}

/**
 * The chlorine concentration that a poured amount of bleach gives; undoes {@link bleachDose}.
 *
 * @remarks
 * C = s V_b / V, symbols as there. Useful against printed tables, whose heading and whose amounts often disagree.
 *
 * @param input - the water and the bleach; each field says its unit and range
 * @returns the concentration when mixed, before any is used up, kg/m³
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example One quart of 5.25 percent bleach in 100 gallons: not 100 mg/L, as is often said
 * ```ts
 * import { bleachConcentration } from "risingmain/disinfection";
 * import { inMgPerLitre, percent, usGallons, usQuarts } from "risingmain/units";
 *
 * inMgPerLitre(bleachConcentration({ volume: usGallons(100), bleach: usQuarts(1), strength: percent(5.25) })); // ≈ 131.3
 * ```
 *
 * @source derived: mass balance of chlorine
 */
export function bleachConcentration(input: BleachConcentrationInput): Concentration {
  requireObject("input", input);
  requireWithin("volume", input.volume, 1e-9, 1e5, "m³");
  requireWithin("bleach", input.bleach, 0, 1000, "m³");
  return ((availableChlorine(input) * input.bleach) / input.volume) as Concentration;
}

/** Available chlorine in the liquid, kg per m³ of it. */
export function availableChlorine(bleach: Bleach): number {
  const { strength, strengthBasis = "volume", relativeDensity = 1.1 } = bleach;
  requireWithin("strength", strength, 0.001, 0.25, "(0.0525 for 5.25 percent)");
  requireOneOf("strengthBasis", strengthBasis, ["volume", "weight"]);
  requireWithin("relativeDensity", relativeDensity, 0.9, 1.4, "");
  return KILOGRAMS_PER_CUBIC_METRE * strength * (strengthBasis === "weight" ? relativeDensity : 1);
}
