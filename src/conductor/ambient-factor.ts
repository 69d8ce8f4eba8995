/**
 * Correction of an ampacity for ambient temperature by its law, for tables that print no factor.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { InputError, type Ratio, type Temperature } from "../units/index.ts";

/** Insulation, ambient, and the ambient of the table. */
export interface AmbientFactorInput {
  /** Temperature the insulation is rated for. 300 to 500 K. */
  readonly insulation: Temperature;
  /** Ambient temperature. 200 to 500 K. */
  readonly ambient: Temperature;
  /** Ambient of the table to be corrected; 30 °C where left out (in ground 20 °C is usual). Below the insulation's. */
  readonly tableAmbient?: Temperature;
}

/**
 * Factor on an ampacity for another ambient temperature.
 *
 * @remarks
 * √((T_c − T_a) / (T_c − T₀)): the heat an insulated conductor may shed is in proportion to how much hotter it may be than
 * its surroundings. The tables of the code and of the international standard are this law at the upper end of each band,
 * rounded to two figures.
 *
 * @param input - the temperatures; each field says the values it takes
 * @returns the factor; 0 where the ambient is as hot as the insulation permits, or hotter
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { ambientFactor } from "risingmain/conductor";
 * import { celsius } from "risingmain/units";
 *
 * ambientFactor({ insulation: celsius(75), ambient: celsius(40) }); // ≈ 0.88
 * ```
 *
 * @source nfpa-70, 310.15(B)(2), equation
 */
export function ambientFactor(input: AmbientFactorInput): Ratio {
  requireObject("input", input);
  const { insulation, ambient, tableAmbient = 303.15 as Temperature } = input;
  requireWithin("insulation", insulation, 300, 500, "K");
  requireWithin("ambient", ambient, 200, 500, "K");
  requireWithin("tableAmbient", tableAmbient, 200, 500, "K");
  if (tableAmbient > insulation - 1) {
    throw new InputError("tableAmbient", tableAmbient, `at least 1 K below the insulation's ${insulation} K`);
  }
  return Math.sqrt(Math.max(0, (insulation - ambient) / (insulation - tableAmbient))) as Ratio;
}
