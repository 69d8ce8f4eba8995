/**
 * The published CT of free chlorine that inactivates Giardia and viruses.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Concentration, ConcentrationTime, Temperature } from "../units/index.ts";
import { VIRUS_CT, type VirusCtRow } from "./virus-ct-table.ts";

/** Mg·min/L in kg·s/m³ (exact). */
const MG_MINUTES_PER_LITRE = 0.06;
/** Mg/L in kg/m³ (exact). */
const MG_PER_LITRE = 1e-3;
const ICE_POINT = 273.15;

/** The water and the inactivation wanted. */
export interface GiardiaContactInput {
  /** pH of the chlorinated water. 5 to 10. */
  readonly pH: number;
  /** Temperature. 273.15 to 313.15 K. */
  readonly temperature: Temperature;
  /** Free chlorine at the end of the contact. 1e-5 to 1 kg/m³. */
  readonly residual: Concentration;
  /** Decades of inactivation: 3 for 99.9 %. 0 to 6. */
  readonly logInactivation: number;
}

/** A published CT. */
export interface RequiredContact {
  /** The CT, kg·s/m³. */
  readonly contact: ConcentrationTime;
  /** Source id. */
  readonly method: string;
  /** False outside the published range. */
  readonly insideRange: boolean;
}

/**
 * The CT of free chlorine that inactivates Giardia cysts.
 *
 * @remarks
 * CT = 0.2828 pH^2.69 C^0.15 0.933^(T − 5) L,  CT in mg·min/L, C in mg/L, T in °C, L decades
 *
 * Taken as published for what the agency's tables span: pH 6 to 9, 0.5 to 25 °C, up to 3 mg/L and three decades. The
 * temperature factor halves CT each 10 °C. Within 10 % of the tables where it was compared. Not for Cryptosporidium, which chlorine does not kill
 * at any practical CT.
 *
 * @param input - the water and the inactivation; each field says its unit and range
 * @returns the CT
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { giardiaContact } from "risingmain/disinfection";
 * import { celsius, inMgMinutesPerLitre, mgPerLitre } from "risingmain/units";
 *
 * const water = { pH: 7, temperature: celsius(10), residual: mgPerLitre(1), logInactivation: 3 };
 * inMgMinutesPerLitre(giardiaContact(water).contact); // ≈ 112.5
 * ```
 *
 * @source epa-giardia-ct, formula
 */
export function giardiaContact(input: GiardiaContactInput): RequiredContact {
  requireObject("input", input);
  const { pH, temperature, residual, logInactivation } = input;
  requireWithin("pH", pH, 5, 10, "");
  requireWithin("temperature", temperature, ICE_POINT, 313.15, "K");
  requireWithin("residual", residual, 1e-5, 1, "kg/m³");
  requireWithin("logInactivation", logInactivation, 0, 6, "");
  const celsius = temperature - ICE_POINT;
  const milligrams = residual / MG_PER_LITRE;
  const contact = 0.2828 * pH ** 2.69 * milligrams ** 0.15 * 0.933 ** (celsius - 5) * logInactivation;
  return {
    contact: (contact * MG_MINUTES_PER_LITRE) as ConcentrationTime,
    method: "epa-giardia-ct",
    insideRange: pH >= 6 && pH <= 9 && isTabled(celsius) && milligrams <= 3 && logInactivation <= 3,
  };
}

/** The water. */
export interface VirusContactInput {
  /** pH of the chlorinated water. 6 to 10. */
  readonly pH: number;
  /** Temperature. 273.15 to 313.15 K. */
  readonly temperature: Temperature;
}

/**
 * The CT of free chlorine for four decades (99.99 %) of inactivation of viruses.
 *
 * @remarks
 * A table at six temperatures, pH 6 to 9 and pH 10; between temperatures a straight line, above pH 9 the column of pH 10
 * (7.5 times as much). Below 0.5 °C and above 25 °C the end row. Both ends are marked as outside the range.
 *
 * @param input - pH and temperature; each field says its unit and range
 * @returns the CT
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { virusContact } from "risingmain/disinfection";
 * import { celsius, inMgMinutesPerLitre } from "risingmain/units";
 *
 * inMgMinutesPerLitre(virusContact({ pH: 7.5, temperature: celsius(10) }).contact); // ≈ 6.000
 * ```
 *
 * @source epa-profiling-1999, table B-2
 */
export function virusContact(input: VirusContactInput): RequiredContact {
  requireObject("input", input);
  requireWithin("pH", input.pH, 6, 10, "");
  requireWithin("temperature", input.temperature, ICE_POINT, 313.15, "K");
  const celsius = input.temperature - ICE_POINT;
  const at = (row: VirusCtRow): number => (input.pH > 9 ? row.pH10 : row.pH6to9);
  // A straight line from row to row: of each, as much as lies below the temperature.
  const contact = VIRUS_CT.slice(1).reduce((sum, row, i) => {
    const before = VIRUS_CT[i] as VirusCtRow;
    const share = (celsius - before.celsius) / (row.celsius - before.celsius);
    return sum + Math.min(Math.max(share, 0), 1) * (at(row) - at(before));
  }, at(VIRUS_CT[0]));
  return {
    contact: (contact * MG_MINUTES_PER_LITRE) as ConcentrationTime,
    method: "epa-profiling-1999",
    insideRange: isTabled(celsius) && (input.pH <= 9 || input.pH === 10),
  };
}

/** Whether the agency's tables span a temperature; one given in another unit comes back a few ulp off. */
function isTabled(celsius: number): boolean {
  const few = 1e-9;
  return celsius >= 0.5 - few && celsius <= 25 + few;
}
