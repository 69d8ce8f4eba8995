/**
 * Current of a motor standing still, from its code letter.
 *
 * @module
 */
import { requireObject, requireOneOf, requirePositive, requireWithin } from "../numeric/index.ts";
import type { ApparentPower, Current, Power, Voltage } from "../units/index.ts";
import { CODE_LETTERS, type CodeLetter, codeLetterRanges } from "./code-letters.ts";
import { MOTOR_SYSTEMS, type MotorSystem } from "./full-load-current.ts";

/** Watts in a horsepower, 550 ft·lbf/s exactly. */
const HORSEPOWER = 745.69987158227022;

/** A motor by its nameplate. */
export interface LockedRotorCurrentInput {
  /** Rated power. Above 0, at most 1 MW. */
  readonly power: Power;
  /** Rated voltage, line to line for three-phase. 1 to 1000 V. */
  readonly voltage: Voltage;
  /** Phases of the supply. */
  readonly system: MotorSystem;
  /** Code letter on the nameplate, A to V without I, O and Q. */
  readonly codeLetter: CodeLetter;
}

/** The band of starting currents that a code letter means. */
export interface LockedRotorCurrent {
  /** Least starting current, A; 0 for letter A. */
  readonly low: Current;
  /** Middle of the band, A; for V, which has no upper end, its lower end. */
  readonly middle: Current;
  /** Greatest starting current, A; null for V, which has no upper end. */
  readonly high: Current | null;
  /** Apparent power at the middle of the band, VA. */
  readonly apparentPower: ApparentPower;
  /** Where the letters are from. */
  readonly method: "nema-mg-1";
}

/**
 * Starting current of a motor from the code letter on its nameplate.
 *
 * @remarks
 * I = kVA/hp · hp · 1000 / V, divided by √3 for three phases. A letter is a band some 11 % wide.
 *
 * @param input - the motor; each field says its unit and the values it takes
 * @returns the band of currents at rated voltage
 * @throws InputError naming the first field that is not known or not in its range
 *
 * @example
 * ```ts
 * import { lockedRotorCurrent } from "risingmain/motor";
 * import { horsepower, volts } from "risingmain/units";
 *
 * const start = lockedRotorCurrent({
 *   power: horsepower(1.5), voltage: volts(230), system: "single-phase", codeLetter: "K",
 * });
 * start.low; // ≈ 52.2
 * start.middle; // ≈ 55.4
 * ```
 *
 * @source nema-mg-1, locked-rotor code letters
 */
export function lockedRotorCurrent(input: LockedRotorCurrentInput): LockedRotorCurrent {
  requireObject("input", input);
  const { power, voltage, system, codeLetter } = input;
  requirePositive("power", power, 1e6, "W");
  requireWithin("voltage", voltage, 1, 1000, "V");
  requireOneOf("system", system, MOTOR_SYSTEMS);
  requireOneOf("codeLetter", codeLetter, CODE_LETTERS);
  const { low, high, middle } = codeLetterRanges[codeLetter];
  const phases = system === "three-phase" ? Math.sqrt(3) : 1;
  const perKva = ((power / HORSEPOWER) * 1000) / (phases * voltage);
  return {
    low: (low * perKva) as Current,
    middle: (middle * perKva) as Current,
    high: high === null ? null : ((high * perKva) as Current),
    apparentPower: (middle * 1000 * (power / HORSEPOWER)) as ApparentPower,
    method: "nema-mg-1",
  };
}

/** A motor's starting current, read or stated. */
export interface CodeLetterOfInput {
  /** Rated power. 1 W to 1 MW. */
  readonly power: Power;
  /** Voltage at which the current was taken, line to line for three-phase. 1 to 1000 V. */
  readonly voltage: Voltage;
  /** Line current with the rotor standing still. 0 to 100 000 A. */
  readonly lockedRotorCurrent: Current;
  /** Phases of the supply. */
  readonly system: MotorSystem;
}

/** The band a starting current falls in. */
export interface CodeLetterOf {
  /** Code letter. */
  readonly codeLetter: CodeLetter;
  /** Kilovolt-amperes per horsepower, as the letters are defined. */
  readonly kvaPerHorsepower: number;
}

/**
 * Code letter of a motor from its starting current.
 *
 * @remarks
 * kVA/hp = V I / (1000 hp), times √3 for three phases. The printed bands leave a gap of 0.01 between letters: a value in the
 * gap takes the lower letter.
 *
 * @param input - the motor and its starting current; each field says its unit and the values it takes
 * @returns the letter and the figure behind it
 * @throws InputError naming the first field that is not known or not in its range
 *
 * @example
 * ```ts
 * import { codeLetterOf } from "risingmain/motor";
 * import { amperes, horsepower, volts } from "risingmain/units";
 *
 * codeLetterOf({
 *   power: horsepower(1.5), voltage: volts(230), lockedRotorCurrent: amperes(55), system: "single-phase",
 * }).codeLetter; // => "K"
 * ```
 *
 * @source nema-mg-1, locked-rotor code letters
 */
export function codeLetterOf(input: CodeLetterOfInput): CodeLetterOf {
  requireObject("input", input);
  const { power, voltage, lockedRotorCurrent, system } = input;
  requireWithin("power", power, 1, 1e6, "W");
  requireWithin("voltage", voltage, 1, 1000, "V");
  requireWithin("lockedRotorCurrent", lockedRotorCurrent, 0, 1e5, "A");
  requireOneOf("system", system, MOTOR_SYSTEMS);
  const apparent = voltage * lockedRotorCurrent * (system === "three-phase" ? Math.sqrt(3) : 1);
  const kvaPerHorsepower = apparent / 1000 / (power / HORSEPOWER);
  // A value on the edge belongs to the letter that begins there, whatever the rounding of the products.
  const edge = kvaPerHorsepower * (1 + 1e-12);
  const letter = CODE_LETTERS.filter((one) => codeLetterRanges[one].low <= edge).at(-1);
  return { codeLetter: letter as CodeLetter, kvaPerHorsepower };
}
