/**
 * What takes the chlorine out again before the water is let go.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Concentration, Mass, Ratio, Volume } from "../units/index.ts";

/** A substance that destroys chlorine. */
export type Dechlorinator =
  | "ascorbic acid"
  | "sodium ascorbate"
  | "sodium thiosulphate pentahydrate"
  | "sodium bisulphite"
  | "sodium sulphite";

/** Molar masses, g/mol, from the standard atomic weights (`iupac-2021`), over that of chlorine: one mole takes one. */
const CHLORINE = 70.906;
const MASS_RATIO: Readonly<Record<Dechlorinator, number>> = {
  "ascorbic acid": 176.124 / CHLORINE,
  "sodium ascorbate": 198.106 / CHLORINE,
  // Not one reaction but a mix that shifts with pH: from 0.9 (to sulphate) to 7 (to tetrathionate). 2.2 is published for
  // alkaline water, the bad case of a bleached well (`white-chlorination`, recalled).
  "sodium thiosulphate pentahydrate": 2.2,
  "sodium bisulphite": 104.06 / CHLORINE,
  "sodium sulphite": 126.04 / CHLORINE,
};

/** The water to be let go. */
export interface DechlorinationInput {
  /** Chlorinated water. 0 to 100 000 m³. */
  readonly volume: Volume;
  /** Chlorine in it. 0 to 10 kg/m³. */
  readonly residual: Concentration;
  /** What it is treated with. */
  readonly dechlorinator: Dechlorinator;
  /** Excess over what the reaction takes: 0.1 for a tenth more. 0 to 2; 0 where left out. */
  readonly excess?: Ratio;
}

/** The amount. */
export interface Dechlorination {
  /** Dechlorinator to add, kg. */
  readonly mass: Mass;
  /** Mass of it for each mass of chlorine. */
  readonly massRatio: Ratio;
  /** Source id, or "derived" where it is the ratio of molar masses. */
  readonly method: string;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

const CAUTIONS: readonly Caution[] = [
  {
    code: "discharge-rule",
    text: "Ask the local authority before letting treated water go. Test for zero chlorine at the outlet; too much sulphite takes the oxygen from a stream.",
    basis: "common practice",
  },
  {
    code: "chlorine-mixing",
    text: "Add the dechlorinator to the diluted water only. Never let it, or any acid, meet bleach or granules: heat and gas.",
    basis: "common practice",
  },
];

/**
 * The amount of a dechlorinator that takes the chlorine out of a volume of water.
 *
 * @remarks
 * m = r C V (1 + e) with C `residual`, V `volume`, e `excess` and r the ratio of molar masses, mole for mole: 2.48 for ascorbic
 * acid, 1.47 for bisulphite, 1.78 for sulphite. Thiosulphate does not keep to one reaction; 2.2 is a published figure for
 * alkaline water. Ascorbic acid and ascorbate are the kind ones to a stream; ascorbic acid lowers pH, ascorbate does not.
 *
 * @param input - the water, its chlorine and the substance; each field says its unit and range
 * @returns the mass, the ratio used and the cautions
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { dechlorination } from "risingmain/disinfection";
 * import { inGrams, mgPerLitre, usGallons } from "risingmain/units";
 *
 * const flushed = { volume: usGallons(100), residual: mgPerLitre(100), dechlorinator: "ascorbic acid" } as const;
 * inGrams(dechlorination(flushed).mass); // ≈ 94.0
 * ```
 *
 * @source derived: stoichiometry, one mole a mole of chlorine
 * @source white-chlorination: thiosulphate; recalled
 */
export function dechlorination(input: DechlorinationInput): Dechlorination {
  requireObject("input", input);
  const { volume, residual, dechlorinator, excess = 0 } = input;
  requireWithin("volume", volume, 0, 1e5, "m³");
  requireWithin("residual", residual, 0, 10, "kg/m³");
  requireOneOf("dechlorinator", dechlorinator, Object.keys(MASS_RATIO));
  requireWithin("excess", excess, 0, 2, "(0.1 for a tenth more)");
  const massRatio = MASS_RATIO[dechlorinator];
  return {
    mass: (massRatio * residual * volume * (1 + excess)) as Mass,
    massRatio: massRatio as Ratio,
    method: dechlorinator === "sodium thiosulphate pentahydrate" ? "white-chlorination" : "derived",
    cautions: CAUTIONS,
  };
}
