/**
 * A bucket of stock solution that carries the whole dose down the well.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Concentration, Mass, Volume } from "../units/index.ts";
import { availableChlorine, type Bleach } from "./bleach.ts";
import { chlorineCautions } from "./cautions.ts";
import { type KitchenMeasure, kitchenMeasure } from "./kitchen-measure.ts";

/** Least solution to wash the casing above the water with: 10 US gallons, m³ (`maryland-well-disinfection`). */
const LEAST_STOCK = 10 * 231 * 0.0254 ** 3;

/** The well water, the bleach and the bucket. */
export interface StockSolutionInput extends Bleach {
  /** Water to treat. 0 to 100 000 m³. */
  readonly volume: Volume;
  /** Chlorine wanted in it when mixed. 0 to 10 kg/m³. */
  readonly target: Concentration;
  /** Solution to make up. 1e-6 to 1000 m³; 10 US gallons where left out. */
  readonly stockVolume?: Volume;
}

/** How to make it up. */
export type StockSolution =
  | {
      /** It can be made. */
      readonly state: "made";
      /** Bleach in the solution, m³, exact. */
      readonly bleach: Volume;
      /** The same to measure out. */
      readonly measure: KitchenMeasure;
      /** Clean water to fill up with, m³. */
      readonly water: Volume;
      /** Chlorine in the solution, kg/m³. */
      readonly strength: Concentration;
      /** Chlorine in all of it, kg. */
      readonly chlorine: Mass;
      /** What to say with it. */
      readonly cautions: readonly Caution[];
    }
  | {
      /** The bleach alone is more than the solution: make a bigger one. */
      readonly state: "too small";
      /** Bleach needed, m³. */
      readonly bleach: Volume;
    };

/**
 * A stock solution that, poured in whole, brings a volume of water to a wanted chlorine concentration.
 *
 * @remarks
 * V_b = C V / s as in `bleachDose`; the solution is filled up to V_s with clean water and has strength C V / V_s. Poured
 * around the inside of the casing it also wets what stands above the water; one state asks for 10 gallons at least.
 *
 * @param input - the water, the bleach and the bucket; each field says its unit and range
 * @returns bleach, water and strength; or that the bucket is too small
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { stockSolution } from "risingmain/disinfection";
 * import { inGramsPerLitre, mgPerLitre, percent, usGallons } from "risingmain/units";
 *
 * const stock = stockSolution({ volume: usGallons(147), target: mgPerLitre(100), strength: percent(5.25) });
 * if (stock.state !== "made") throw new Error(stock.state);
 * stock.measure.text; // => "4 cups 4 fl oz"
 * inGramsPerLitre(stock.strength); // ≈ 1.470
 * ```
 *
 * @source derived: mass balance of chlorine
 * @source maryland-well-disinfection, D(2): the 10 gallons
 */
export function stockSolution(input: StockSolutionInput): StockSolution {
  requireObject("input", input);
  const { volume, target, stockVolume = LEAST_STOCK } = input;
  requireWithin("volume", volume, 0, 1e5, "m³");
  requireWithin("target", target, 0, 10, "kg/m³");
  requireWithin("stockVolume", stockVolume, 1e-6, 1000, "m³");
  const chlorine = target * volume;
  const bleach = (chlorine / availableChlorine(input)) as Volume;
  if (!(bleach <= stockVolume)) return { state: "too small", bleach };
  return {
    state: "made",
    bleach,
    measure: kitchenMeasure(bleach),
    water: (stockVolume - bleach) as Volume,
    strength: (chlorine / stockVolume) as Concentration,
    chlorine: chlorine as Mass,
    cautions: chlorineCautions,
  };
}
