/**
 * Contact: concentration times time.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Concentration, ConcentrationTime, Duration } from "../units/index.ts";

/** Chlorine left and the time it stood. */
export interface ContactInput {
  /** Free chlorine at the END of the contact, when it is least. 0 to 10 kg/m³. */
  readonly residual: Concentration;
  /** Time of contact. 0 to 1 year; in a flowing tank the time that nine tenths of the water stays, not volume over flow. */
  readonly time: Duration;
}

/**
 * The CT a contact has reached.
 *
 * @remarks
 * CT = C t with C the residual at the end and t the time.
 *
 * @param input - residual and time; each field says its unit and range
 * @returns the product, kg·s/m³
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { contactReached } from "risingmain/disinfection";
 * import { inMgMinutesPerLitre, mgPerLitre, minutes } from "risingmain/units";
 *
 * inMgMinutesPerLitre(contactReached({ residual: mgPerLitre(0.5), time: minutes(30) })); // ≈ 15.000
 * ```
 *
 * @source derived: definition of CT
 */
export function contactReached(input: ContactInput): ConcentrationTime {
  requireObject("input", input);
  requireWithin("residual", input.residual, 0, 10, "kg/m³");
  requireWithin("time", input.time, 0, 31_557_600, "s");
  return (input.residual * input.time) as ConcentrationTime;
}

/** A CT wanted and the residual kept. */
export interface ContactTimeInput {
  /** CT wanted. 0 to 1e6 kg·s/m³. */
  readonly contact: ConcentrationTime;
  /** Free chlorine at the end of the contact. 1e-6 to 10 kg/m³. */
  readonly residual: Concentration;
}

/**
 * The time a residual has to be held for a wanted CT.
 *
 * @remarks
 * t = CT / C.
 *
 * @param input - CT and residual; each field says its unit and range
 * @returns the time, s
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { contactTime } from "risingmain/disinfection";
 * import { inMinutes, mgMinutesPerLitre, mgPerLitre } from "risingmain/units";
 *
 * inMinutes(contactTime({ contact: mgMinutesPerLitre(112), residual: mgPerLitre(1) })); // ≈ 112.0
 * ```
 *
 * @source derived: definition of CT
 */
export function contactTime(input: ContactTimeInput): Duration {
  requireObject("input", input);
  requireWithin("contact", input.contact, 0, 1e6, "kg·s/m³");
  requireWithin("residual", input.residual, 1e-6, 10, "kg/m³");
  return (input.contact / input.residual) as Duration;
}
