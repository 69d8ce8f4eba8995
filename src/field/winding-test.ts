/**
 * Readings on a motor and its cable with the power off: winding resistance and insulation.
 *
 * @module
 */
import { resistanceAtTemperature } from "../conductor/index.ts";
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import { kelvins, type Ratio, type Resistance, type Temperature, type Voltage } from "../units/index.ts";
import { mainsCautions } from "./cautions.ts";

/** The temperature motor sheets give resistance at, 25 °C, common practice, and the reference of insulation, 40 °C, K. */
const SHEET_TEMPERATURE = 298.15;
const INSULATION_REFERENCE = 313.15;

/** A resistance between two leads. */
export interface WindingTestInput {
  /** Resistance read at the box, the meter's own leads taken off. 0 to 1e6 Ω. */
  readonly reading: Resistance;
  /** Resistance of the cable down to the motor and back. 0 to 1e6 Ω; 0 where left out, as with a reading at the motor. */
  readonly cable?: Resistance;
  /** Least resistance of the winding on the motor's sheet. Above 0, to 1e6 Ω. */
  readonly least: Resistance;
  /** Most; at least the least. Up to 1e6 Ω. */
  readonly most: Resistance;
  /** Temperature of the winding now. 223.15 to 473.15 K; that of the sheet where left out. */
  readonly temperature?: Temperature;
  /** Temperature the sheet's figures are for. 223.15 to 473.15 K; 25 °C where left out (common practice). */
  readonly sheetTemperature?: Temperature;
}

/** The winding judged. */
export interface WindingTest {
  /** "low": shorted turns or a wrong motor. "high": a bad splice, a broken strand, an open winding. */
  readonly state: "inside" | "low" | "high";
  /** Resistance of the winding alone, carried to the sheet's temperature, Ω; 0 where the cable takes all of it. */
  readonly corrected: Resistance;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

/**
 * Judges a winding's resistance, the cable taken off and the temperature allowed for.
 *
 * @remarks
 * R = (reading − cable) carried to the sheet's temperature as copper, 0.393 % a kelvin. A meter that reads to 0.1 Ω is little use on
 * a winding of 1 Ω, and the cable's own resistance is often as large: compute it.
 *
 * @param input - reading, cable, sheet and temperatures; each field says its unit and range
 * @returns the state, the corrected resistance and the cautions
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { windingTest } from "risingmain/field";
 * import { celsius, ohms } from "risingmain/units";
 *
 * const main = windingTest({
 *   reading: ohms(2.9), cable: ohms(1), least: ohms(1.7), most: ohms(2.2), temperature: celsius(12),
 * });
 * main.state; // => "inside"
 * main.corrected; // ≈ 2.0
 * ```
 *
 * @source iec-60228: the temperature coefficient of copper
 * @source common practice: the sheet's 25 °C
 */
export function windingTest(input: WindingTestInput): WindingTest {
  requireObject("input", input);
  const { reading, cable = 0, least, most, sheetTemperature = SHEET_TEMPERATURE } = input;
  const temperature = input.temperature ?? sheetTemperature;
  requireWithin("reading", reading, 0, 1e6, "Ω");
  requireWithin("cable", cable, 0, 1e6, "Ω");
  requireWithin("least", least, 1e-6, 1e6, "Ω");
  requireWithin("most", most, least, 1e6, "Ω (at least the least)");
  requireWithin("temperature", temperature, 223.15, 473.15, "K");
  requireWithin("sheetTemperature", sheetTemperature, 223.15, 473.15, "K");
  const corrected = resistanceAtTemperature({
    resistance: Math.max(reading - cable, 0) as Resistance,
    from: kelvins(temperature),
    to: kelvins(sheetTemperature),
  });
  return {
    state: corrected < least ? "low" : corrected > most ? "high" : "inside",
    corrected,
    cautions: mainsCautions,
  };
}

/** An insulation reading to earth. */
export interface InsulationTestInput {
  /** Resistance read with the test voltage on for a minute. 0 to 1e15 Ω. */
  readonly reading: Resistance;
  /** Temperature of the winding. 233.15 to 473.15 K. */
  readonly temperature: Temperature;
  /** Rated voltage of the motor. Above 0, to 1000 V: what a private well has. */
  readonly rated: Voltage;
  /** "modern": made after about 1970, taken where left out. "older": the rule of a megohm and one for each kilovolt. */
  readonly made?: "modern" | "older";
}

/** The insulation judged. */
export interface InsulationTest {
  /** "weak": over nothing but under the least. "earthed": under 1 % of the least. */
  readonly state: "good" | "weak" | "earthed";
  /** The reading carried to 40 °C, Ω. */
  readonly corrected: Resistance;
  /** The least at 40 °C, Ω. */
  readonly least: Resistance;
  /** Corrected over least. */
  readonly ratio: Ratio;
  /** Direct voltage to test with, V. */
  readonly testVoltage: Voltage;
  /** Source of the least. */
  readonly method: "ieee-43";
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

/** Least for random-wound windings and all below 1 kV, Ω, and the test voltage below 1 kV, V (`ieee-43`). */
const MODERN_LEAST = 5e6;
const TEST_VOLTAGE = 500;
const EARTHED = 0.01;

/**
 * Carries an insulation resistance to another temperature: halved for each 10 °C of rise.
 *
 * @remarks
 * R₂ = R₁ · 2^((T₁ − T₂)/10 °C).
 *
 * @param input - reading, its temperature and the one wanted; each field says its unit and range
 * @returns the resistance at the other temperature, Ω
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { insulationAtTemperature } from "risingmain/field";
 * import { celsius, inMegohms, megohms } from "risingmain/units";
 *
 * inMegohms(insulationAtTemperature({ reading: megohms(200), from: celsius(20), to: celsius(40) })); // ≈ 50.00
 * ```
 *
 * @source ieee-43, the ten-degree rule
 */
export function insulationAtTemperature(input: {
  /** Resistance read. 0 to 1e15 Ω. */
  readonly reading: Resistance;
  /** Temperature it was read at. 233.15 to 473.15 K. */
  readonly from: Temperature;
  /** Temperature wanted. 233.15 to 473.15 K. */
  readonly to: Temperature;
}): Resistance {
  requireObject("input", input);
  requireWithin("reading", input.reading, 0, 1e15, "Ω");
  requireWithin("from", input.from, 233.15, 473.15, "K");
  requireWithin("to", input.to, 233.15, 473.15, "K");
  return (input.reading * 2 ** ((input.from - input.to) / 10)) as Resistance;
}

/**
 * Judges the insulation of a motor and its cable.
 *
 * @remarks
 * The reading, carried to 40 °C, against 5 MΩ for windings below 1 kV made after about 1970, or 1 MΩ + 1 MΩ for each kilovolt for
 * older ones. A wet splice reads low with a good motor: read the cable and the motor apart before pulling. A falling trend over
 * the years tells more than one reading.
 *
 * @param input - reading, temperature, rated voltage and age; each field says its unit and range
 * @returns the state, the corrected reading, the least and the test voltage
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { insulationTest } from "risingmain/field";
 * import { celsius, megohms, volts } from "risingmain/units";
 *
 * insulationTest({ reading: megohms(200), temperature: celsius(12), rated: volts(230) }).state; // => "good"
 * ```
 *
 * @source ieee-43, least insulation resistance and test voltage
 */
export function insulationTest(input: InsulationTestInput): InsulationTest {
  requireObject("input", input);
  const { reading, temperature, rated, made = "modern" } = input;
  requireWithin("rated", rated, 1e-3, 1000, "V");
  requireOneOf("made", made, ["modern", "older"]);
  requireWithin("temperature", temperature, 233.15, 473.15, "K");
  const corrected = insulationAtTemperature({ reading, from: temperature, to: kelvins(INSULATION_REFERENCE) });
  const least = made === "modern" ? MODERN_LEAST : 1e6 + (rated / 1000) * 1e6;
  const ratio = corrected / least;
  return {
    state: ratio >= 1 ? "good" : ratio >= EARTHED ? "weak" : "earthed",
    corrected,
    least: least as Resistance,
    ratio: ratio as Ratio,
    testVoltage: TEST_VOLTAGE as Voltage,
    method: "ieee-43",
    cautions: mainsCautions,
  };
}
