/**
 * An amount of liquid in the measures that are to hand at a wellhead: gallons, cups and fluid ounces.
 *
 * @module
 */
import { requireWithin } from "../numeric/index.ts";
import { inUsFluidOunces, usFluidOunces, type Volume } from "../units/index.ts";

/** A volume counted out in US measures. */
export interface KitchenMeasure {
  /** Whole US gallons. */
  readonly gallons: number;
  /** Whole US cups beyond the gallons, 0 to 15. */
  readonly cups: number;
  /** US fluid ounces beyond the cups, in halves (a tablespoon), 0 to 7.5. */
  readonly fluidOunces: number;
  /** The amount that is so measured out, m³: the asked one rounded up to half a fluid ounce. */
  readonly volume: Volume;
  /** As it is said: "1 gal 3 cups 2 fl oz". */
  readonly text: string;
}

const CUPS_PER_GALLON = 16;
const OUNCES_PER_CUP = 8;
/** Rounding up must not turn an amount that is whole but for the last bit of its double into the next half ounce. */
const ROUNDING_SLACK = 1e-9;

/**
 * A volume in gallons, cups and fluid ounces, rounded up to the half fluid ounce (one tablespoon).
 *
 * @remarks
 * 1 US gallon = 16 cups = 128 fluid ounces (exact). Rounded up, since an under-dose is the worse error.
 *
 * @param volume - the amount, m³; 0 to 1000
 * @returns the counts, the amount measured, and the text
 * @throws {@link units.InputError} where the volume is not a number in its range
 *
 * @example
 * ```ts
 * import { kitchenMeasure } from "risingmain/disinfection";
 * import { litres } from "risingmain/units";
 *
 * kitchenMeasure(litres(1)).text; // => "4 cups 2 fl oz"
 * ```
 *
 * @source nist-sp811: definitions of the US liquid measures
 */
export function kitchenMeasure(volume: Volume): KitchenMeasure {
  requireWithin("volume", volume, 0, 1000, "m³");
  const halves = Math.ceil(2 * inUsFluidOunces(volume) * (1 - ROUNDING_SLACK));
  const ounces = halves / 2;
  const gallons = Math.floor(ounces / (OUNCES_PER_CUP * CUPS_PER_GALLON));
  const cups = Math.floor((ounces - gallons * OUNCES_PER_CUP * CUPS_PER_GALLON) / OUNCES_PER_CUP);
  const fluidOunces = ounces - (gallons * CUPS_PER_GALLON + cups) * OUNCES_PER_CUP;
  const said = [
    gallons > 0 ? `${gallons} gal` : "",
    cups > 0 ? `${cups} ${cups === 1 ? "cup" : "cups"}` : "",
    fluidOunces > 0 || ounces === 0 ? `${fluidOunces} fl oz` : "",
  ];
  return { gallons, cups, fluidOunces, volume: usFluidOunces(ounces), text: said.filter((word) => word).join(" ") };
}
