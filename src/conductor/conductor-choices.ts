/**
 * The sizes a run may be built with, thin to thick, from the code's tables: what `smallestConductor` chooses from.
 *
 * @module
 */
import { requireList, requireObject } from "../numeric/index.ts";
import type { Area, Current, ResistancePerLength } from "../units/index.ts";
import { type ConductorAmpacityInput, conductorAmpacity } from "./ampacity.ts";
import { type ConductorImpedanceInput, conductorImpedance } from "./conductor-impedance.ts";
import { conductorGeometry } from "./geometry.ts";
import type { ConductorSize } from "./size.ts";

/** One size on offer. An app with its own cable writes these itself. */
export interface ConductorChoice {
  /** Its name. */
  readonly size: string;
  /** Resistance per length of one conductor. 0 to 10 Ω/m. */
  readonly resistance: ResistancePerLength;
  /** Reactance per length of one conductor; 0 where left out. 0 to 10 Ω/m. */
  readonly reactance?: ResistancePerLength;
  /** Area of one conductor, where the amount of metal matters. 1e-9 to 0.1 m². */
  readonly area?: Area;
  /** Current it may carry; no limit where left out. 0 to 100 000 A. */
  readonly ampacity?: Current;
}

/** Sizes commonly stocked for pump circuits: 14 AWG to 4/0 AWG. */
const USUAL_SIZES: readonly ConductorSize[] = [
  "14 AWG",
  "12 AWG",
  "10 AWG",
  "8 AWG",
  "6 AWG",
  "4 AWG",
  "3 AWG",
  "2 AWG",
  "1 AWG",
  "1/0 AWG",
  "2/0 AWG",
  "3/0 AWG",
  "4/0 AWG",
];

/** What all sizes on offer have in common. */
export interface ConductorChoicesInput
  extends Omit<ConductorImpedanceInput, "size">,
    Omit<ConductorAmpacityInput, "size" | "material"> {
  /** The sizes, thin to thick; 14 AWG to 4/0 AWG where left out (12 AWG up in aluminium). 1 to 100. */
  readonly sizes?: readonly ConductorSize[];
}

/**
 * Resistance, reactance and ampacity of each size that a run may be built with.
 *
 * @remarks
 * Each size by {@link conductorImpedance} and {@link conductorAmpacity}, with the same metal, insulation and surroundings.
 *
 * @param input - what the sizes have in common; each field says the values it takes
 * @returns the sizes in the order given
 * @throws InputError naming the first field that is not known or not in its range
 *
 * @example
 * ```ts
 * import { conductorChoices } from "risingmain/conductor";
 *
 * const onOffer = conductorChoices({ insulation: "75 °C", sizes: ["14 AWG", "12 AWG"] });
 * onOffer[1]?.ampacity; // => 25
 * ```
 *
 * @source nfpa-70, Chapter 9 Table 8 and Table 310.16
 */
export function conductorChoices(input: ConductorChoicesInput): readonly ConductorChoice[] {
  requireObject("input", input);
  const { sizes = input.material === "aluminium" ? USUAL_SIZES.slice(1) : USUAL_SIZES } = input;
  requireList("sizes", sizes, 1, 100);
  return Array.from(sizes, (size) => {
    const { resistance, reactance } = conductorImpedance({ ...input, size });
    return {
      size,
      resistance,
      reactance,
      area: conductorGeometry(size).area,
      ampacity: conductorAmpacity({ ...input, size }).ampacity,
    };
  });
}
