/**
 * Insulation resistance of a motor, read with a megohmmeter.
 *
 * @module
 */
import { requireBoolean, requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Ratio, Resistance, Temperature, Voltage } from "../units/index.ts";

/** 40 °C, to which the minima refer, K. */
const FORTY_CELSIUS = 313.15;
/** Insulation loses half of its resistance for each 10 K: the standard's rule. */
const HALVING = 10;
const MEGOHM = 1e6;

/** Least resistance of sound windings at 40 °C after one minute, Ω. */
const RANDOM_WOUND = 5 * MEGOHM;
const FORM_WOUND = 100 * MEGOHM;

/** A megohmmeter reading. */
export interface InsulationReadingInput {
  /** Resistance to ground after one minute. 0 to 1e15 Ω. */
  readonly reading: Resistance;
  /** Temperature of the winding. 233.15 to 433.15 K (−40 to 160 °C). */
  readonly temperature: Temperature;
  /** Rated voltage of the motor. 1 to 15 000 V. */
  readonly ratedVoltage: Voltage;
  /** Random-wound, as all pump motors below 1000 V are; or form-wound. Random-wound where left out. */
  readonly winding?: "random-wound" | "form-wound";
  /** Whether the motor was made before about 1970; false where left out. */
  readonly beforeAbout1970?: boolean;
}

/** What the reading says. */
export interface InsulationReading {
  /**
   * Good: at or above the minimum. Doubtful: below it, but still above the older rule of 1 MΩ and 1 MΩ for each kilovolt.
   * Bad: below both.
   */
  readonly state: "good" | "doubtful" | "bad";
  /** The reading carried to 40 °C, Ω. */
  readonly at40: Resistance;
  /** Least resistance at 40 °C by the standard, Ω. */
  readonly minimum: Resistance;
  /** Least resistance at 40 °C by the older rule, kilovolts and one more megohm, Ω. */
  readonly olderMinimum: Resistance;
  /** Direct voltage to test with, V. */
  readonly testVoltage: Voltage;
  /** Where the minima are from. */
  readonly method: "ieee-43";
}

/**
 * Judges the insulation resistance of a motor.
 *
 * @remarks
 * R₄₀ = R · 2^((t − 40) / 10). Minimum 5 MΩ for random-wound motors and all below 1 kV, 100 MΩ for form-wound ones, kV + 1 MΩ
 * for windings made before about 1970. Test with 500 V direct below 1 kV.
 * Through a drop cable in a wet well the cable and its splices are in the reading and bring it down; no published minimum
 * covers that, so a doubtful motor is judged again with the cable taken off. Isolate the motor and any drive first.
 *
 * @param input - reading and motor; each field says its unit and the values it takes
 * @returns the corrected reading, the minima and the verdict
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { insulationReading } from "risingmain/motor";
 * import { celsius, inMegohms, megohms, volts } from "risingmain/units";
 *
 * const motor = insulationReading({ reading: megohms(200), temperature: celsius(20), ratedVoltage: volts(230) });
 * inMegohms(motor.at40); // ≈ 50
 * motor.state; // => "good"
 * ```
 *
 * @source ieee-43, minima, test voltage and temperature correction
 */
export function insulationReading(input: InsulationReadingInput): InsulationReading {
  requireObject("input", input);
  const { reading, temperature, ratedVoltage, winding = "random-wound", beforeAbout1970 = false } = input;
  requireWithin("reading", reading, 0, 1e15, "Ω");
  requireWithin("temperature", temperature, 233.15, 433.15, "K");
  requireWithin("ratedVoltage", ratedVoltage, 1, 15_000, "V");
  requireOneOf("winding", winding, ["random-wound", "form-wound"]);
  requireBoolean("beforeAbout1970", beforeAbout1970);
  const at40 = reading * 2 ** ((temperature - FORTY_CELSIUS) / HALVING);
  const olderMinimum = (ratedVoltage / 1000 + 1) * MEGOHM;
  const modern = winding === "random-wound" || ratedVoltage < 1000 ? RANDOM_WOUND : FORM_WOUND;
  const minimum = beforeAbout1970 ? olderMinimum : modern;
  return {
    state: at40 >= minimum ? "good" : at40 >= olderMinimum ? "doubtful" : "bad",
    at40: at40 as Resistance,
    minimum: minimum as Resistance,
    olderMinimum: olderMinimum as Resistance,
    testVoltage: testVoltage(ratedVoltage) as Voltage,
    method: "ieee-43",
  };
}

/** Lower end of the standard's range of direct test voltage; above 1000 V from memory. */
function testVoltage(rated: number): number {
  if (rated <= 2500) return 500;
  if (rated <= 5000) return 1000;
  return rated <= 12_000 ? 2500 : 5000;
}

/** A reading to carry to another temperature. */
export interface InsulationAtTemperatureInput {
  /** Resistance read. 0 to 1e15 Ω. */
  readonly reading: Resistance;
  /** Temperature of the insulation at the reading. 233.15 to 433.15 K. */
  readonly from: Temperature;
  /** Temperature wanted. 233.15 to 433.15 K. */
  readonly to: Temperature;
}

/**
 * Insulation resistance at another temperature.
 *
 * @remarks
 * R₂ = R₁ · 2^((t₁ − t₂) / 10): half for each 10 K of rise, a rule of thumb that real insulation keeps within a factor of 1.5
 * over 20 K.
 *
 * @param input - reading and temperatures
 * @returns the resistance, Ω
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { insulationAtTemperature } from "risingmain/motor";
 * import { celsius, inMegohms, megohms } from "risingmain/units";
 *
 * inMegohms(insulationAtTemperature({ reading: megohms(40), from: celsius(45), to: celsius(20) })); // ≈ 226
 * ```
 *
 * @source ieee-43, temperature correction
 */
export function insulationAtTemperature(input: InsulationAtTemperatureInput): Resistance {
  requireObject("input", input);
  const { reading, from, to } = input;
  requireWithin("reading", reading, 0, 1e15, "Ω");
  requireWithin("from", from, 233.15, 433.15, "K");
  requireWithin("to", to, 233.15, 433.15, "K");
  return (reading * 2 ** ((from - to) / HALVING)) as Resistance;
}

/** Thermal class of insulation. */
export type ThermalClass = "A" | "B" | "F" | "H";

/**
 * Least polarization index, the ten-minute over the one-minute reading, by thermal class.
 *
 * Not for small random-wound motors, whose charging current dies away within seconds.
 *
 * @source ieee-43, polarization index
 */
export const leastPolarizationIndex: Readonly<Record<ThermalClass, number>> = { A: 1.5, B: 2, F: 2, H: 2 };

/** An ageing winding. */
export interface InsulationLifeInput {
  /** Temperature at which it runs. 273.15 to 573.15 K. */
  readonly temperature: Temperature;
  /** Temperature its class allows. 273.15 to 573.15 K. */
  readonly ratedTemperature: Temperature;
}

/**
 * Life of insulation as a share of its rated life, by the ten-degree rule.
 *
 * @remarks
 * Life halves for each 10 K above the rated temperature and doubles for each below: 2^((T_r − T) / 10). A rule of thumb.
 *
 * @param input - the two temperatures
 * @returns share of the rated life
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { insulationLife } from "risingmain/motor";
 * import { celsius } from "risingmain/units";
 *
 * insulationLife({ temperature: celsius(125), ratedTemperature: celsius(105) }); // ≈ 0.25
 * ```
 *
 * @source hubert-electric-machines, example 5.14: ten-degree rule
 */
export function insulationLife(input: InsulationLifeInput): Ratio {
  requireObject("input", input);
  const { temperature, ratedTemperature } = input;
  requireWithin("temperature", temperature, 273.15, 573.15, "K");
  requireWithin("ratedTemperature", ratedTemperature, 273.15, 573.15, "K");
  return (2 ** ((ratedTemperature - temperature) / HALVING)) as Ratio;
}
