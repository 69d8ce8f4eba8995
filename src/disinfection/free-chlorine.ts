/**
 * How much of the free chlorine is hypochlorous acid, the part that kills fast: a matter of pH.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Ratio, Temperature } from "../units/index.ts";

/** Where less than half is left as acid the caution is given: the pK itself. */
const HALF = 0.5;

/** The water. */
export interface FreeChlorineInput {
  /** pH of the water with the chlorine in it. 0 to 14. */
  readonly pH: number;
  /** Temperature of the water. 273.15 to 313.15 K (0 to 40 °C). */
  readonly temperature: Temperature;
}

/** How the free chlorine stands. */
export interface FreeChlorine {
  /** Share of the free chlorine that is hypochlorous acid (HOCl); the rest is hypochlorite, some eighty times weaker. */
  readonly hypochlorousShare: Ratio;
  /** The pH at which half is acid. */
  readonly pK: number;
  /** A caution where less than half is acid; none otherwise. */
  readonly cautions: readonly Caution[];
  /** Source of the method. */
  readonly method: "morris-1966";
  /** False above 35 °C. */
  readonly insideRange: boolean;
}

const HIGH_PH: Caution = {
  code: "chlorine-high-ph",
  text: "At this pH most of the chlorine is in its weak form. More bleach raises the pH further and helps little: treat at the published dose, give more time, or have the pH lowered by someone trained to; never pour acid into chlorinated water.",
  basis: "morris-1966",
};

/**
 * The share of free chlorine that is hypochlorous acid at a pH and temperature.
 *
 * @remarks
 * share = 1 / (1 + 10^(pH − pK)),  pK = 3000.00/T − 10.0686 + 0.0253 T,  T in kelvins
 *
 * Fitted for dilute solution at 0 to 35 °C. Strong liquid bleach lifts the pH of soft water well over 8, and a strong dose
 * kills more slowly for it: more is not better.
 *
 * @param input - pH and temperature; each field says its unit and range
 * @returns the share, the pK, and a caution where less than half is acid
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { freeChlorine } from "risingmain/disinfection";
 * import { celsius } from "risingmain/units";
 *
 * freeChlorine({ pH: 7, temperature: celsius(20) }).hypochlorousShare; // ≈ 0.79
 * freeChlorine({ pH: 9, temperature: celsius(20) }).hypochlorousShare; // ≈ 0.04
 * ```
 *
 * @source morris-1966, equation for the ionisation constant; recalled
 */
export function freeChlorine(input: FreeChlorineInput): FreeChlorine {
  requireObject("input", input);
  const { pH, temperature: T } = input;
  requireWithin("pH", pH, 0, 14, "");
  requireWithin("temperature", T, 273.15, 313.15, "K");
  const pK = 3000 / T - 10.0686 + 0.0253 * T;
  const share = 1 / (1 + 10 ** (pH - pK));
  return {
    hypochlorousShare: share as Ratio,
    pK,
    cautions: share < HALF ? [HIGH_PH] : [],
    method: "morris-1966",
    insideRange: T <= 308.15,
  };
}
