/**
 * Resistance and reactance of a trade-size conductor at power frequency.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { type Frequency, InputError, type Length, type ResistancePerLength, type Temperature } from "../units/index.ts";
import { conductorReactance } from "./conductor-reactance.ts";
import { type ConductorResistanceInput, conductorResistance } from "./conductor-resistance.ts";
import { conductorGeometry } from "./geometry.ts";
import { necChapter9Table9 } from "./nec-chapter-9-table-9.ts";
import { resistanceAtTemperature } from "./resistance-at-temperature.ts";
import { skinEffectFactor } from "./skin-effect.ts";

/** What the conductors lie in. */
export type Raceway = "open" | "plastic" | "aluminium" | "steel";

const RACEWAYS: readonly Raceway[] = ["open", "plastic", "aluminium", "steel"];
/** Reactance of a cable about which nothing is known: 0.08 Ω/km at 50 Hz (`iec-60364-5-52`, annex G). */
const DEFAULT_REACTANCE = 0.08e-3 / 50;

/** A conductor and its surroundings. */
export interface ConductorImpedanceInput extends ConductorResistanceInput {
  /**
   * What the conductors lie in; `"open"` where left out: cable hanging in a well, buried or in free air.
   * The other three take the code's Table 9 (60 Hz).
   */
  readonly raceway?: Raceway;
  /** Distance between the centres of neighbouring conductors of an open run, where known. At least the diameter; up to 1 m. */
  readonly spacing?: Length;
  /** Frequency of the supply; 60 Hz where left out. 0 to 400 Hz. */
  readonly frequency?: Frequency;
}

/** Ohms per length of one conductor; spread it into a circuit segment. */
export interface ConductorImpedance {
  /** Resistance of one conductor, Ω/m. */
  readonly resistance: ResistancePerLength;
  /** Reactance of one conductor, Ω/m. */
  readonly reactance: ResistancePerLength;
  /** Source of the resistance. */
  readonly method: "nfpa-70" | "iec-60228" | "iec-60028";
  /** False where the conductor, its temperature or frequency is outside its table. */
  readonly insideRange: boolean;
}

/**
 * Resistance and reactance per length of one conductor at power frequency.
 *
 * @remarks
 * In a raceway, the code's Chapter 9 Table 9, printed to two figures, with reactance in proportion to frequency. In the
 * open, {@link conductorResistance} with skin effect, and the reactance of two parallel wires at the spacing given
 * ({@link conductorReactance}), or 0.08 Ω/km at 50 Hz where it is not. Up to 8 AWG the resistance is
 * fifteen times the reactance and the choice hardly matters; from 1/0 AWG up it does.
 *
 * @param input - the conductor and its surroundings; each field says the values it takes
 * @returns the two figures, Ω/m, with their origin
 * @throws InputError naming the first field that is not known or not in its range, or a size that Table 9 does not list
 *
 * @example
 * ```ts
 * import { conductorImpedance } from "risingmain/conductor";
 * import { inOhmsPerThousandFeet } from "risingmain/units";
 *
 * const inPlastic = conductorImpedance({ size: "4/0 AWG", raceway: "plastic" });
 * inOhmsPerThousandFeet(inPlastic.resistance); // ≈ 0.062
 * inOhmsPerThousandFeet(inPlastic.reactance); // ≈ 0.041
 * ```
 *
 * @source nfpa-70, Chapter 9 Tables 8 and 9
 * @source iec-60364-5-52, annex G: reactance where nothing is known
 */
export function conductorImpedance(input: ConductorImpedanceInput): ConductorImpedance {
  requireObject("input", input);
  const { raceway = "open", spacing, frequency = 60 as Frequency } = input;
  requireOneOf("raceway", raceway, RACEWAYS);
  requireWithin("frequency", frequency, 0, 400, "Hz");
  if (raceway !== "open") return fromTable9(input, raceway, frequency);

  const direct = conductorResistance(input);
  const resistance = direct.resistance * skinEffectFactor({ resistance: direct.resistance, frequency });
  const reactance =
    spacing === undefined
      ? DEFAULT_REACTANCE * frequency
      : conductorReactance({ diameter: conductorGeometry(input.size).solidDiameter, spacing, frequency });
  return {
    resistance: resistance as ResistancePerLength,
    reactance: reactance as ResistancePerLength,
    method: direct.method,
    insideRange: direct.insideRange,
  };
}

function fromTable9(
  input: ConductorImpedanceInput,
  raceway: Exclude<Raceway, "open">,
  frequency: number,
): ConductorImpedance {
  // Checks the conductor's own fields; its answer is not used.
  conductorResistance(input);
  const { size, material = "copper", spacing, temperature = 348.15 as Temperature } = input;
  if (spacing !== undefined) throw new InputError("spacing", spacing, "nothing where a raceway is named");
  const row = necChapter9Table9.find((candidate) => candidate.size === size);
  const figures = material === "copper" ? row?.copper : row?.conductorOfAluminium;
  if (!row || !figures)
    throw new InputError("size", size, `a size that Table 9 lists in ${material}: 14 AWG to 750 kcmil`);
  return {
    resistance: resistanceAtTemperature({
      resistance: (figures[raceway] / 304.8) as ResistancePerLength,
      from: 348.15 as Temperature,
      to: temperature,
      material,
    }),
    reactance: ((row.reactance[raceway] / 304.8) * (frequency / 60)) as ResistancePerLength,
    method: "nfpa-70",
    insideRange: frequency === 60 && temperature >= 273.15 && temperature <= 373.15,
  };
}
