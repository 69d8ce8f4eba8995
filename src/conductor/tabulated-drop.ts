/**
 * Voltage drop by a tabulated figure per ampere and metre, as the British tables give it.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Current, Length, ResistancePerLength, Voltage } from "../units/index.ts";

/** A run for a tabulated drop. */
export interface TabulatedDropInput {
  /** Line-to-line drop per ampere and metre of run, go and return or √3 included, Ω/m (1 mV/(A·m) is 0.001 Ω/m). 0 to 10. */
  readonly dropPerAmpereMetre: ResistancePerLength;
  /** Line current. 0 to 10 000 A. */
  readonly current: Current;
  /** One-way length. 0 to 100 000 m. */
  readonly length: Length;
}

/**
 * Voltage drop by a tabulated figure in millivolts per ampere and metre.
 *
 * @remarks
 * Drop = figure · I · L. The British tables print the figure at the conductor's full working temperature and for the worst
 * power factor, so it reads high for a lightly loaded cable.
 *
 * @param input - figure, current and length
 * @returns the drop, V
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { tabulatedDrop } from "risingmain/conductor";
 * import { amperes, metres, ohmsPerKilometre } from "risingmain/units";
 *
 * tabulatedDrop({ dropPerAmpereMetre: ohmsPerKilometre(18), current: amperes(16), length: metres(18) }); // ≈ 5.18
 * ```
 *
 * @source bs-7671, appendix 4
 */
export function tabulatedDrop(input: TabulatedDropInput): Voltage {
  requireObject("input", input);
  const { dropPerAmpereMetre, current, length } = input;
  requireWithin("dropPerAmpereMetre", dropPerAmpereMetre, 0, 10, "Ω/m");
  requireWithin("current", current, 0, 1e4, "A");
  requireWithin("length", length, 0, 1e5, "m");
  return (dropPerAmpereMetre * current * length) as Voltage;
}
