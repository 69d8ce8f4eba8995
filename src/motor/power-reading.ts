/**
 * Power factor and efficiency from readings at a running motor.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { type ApparentPower, type Current, InputError, type Power, type Ratio, type Voltage } from "../units/index.ts";
import { MOTOR_SYSTEMS, type MotorSystem } from "./full-load-current.ts";

/** Readings at the motor's supply. */
export interface PowerReadingInput {
  /** Electric input by a wattmeter, or by timing the meter. 0.1 W to 10 MW. */
  readonly inputPower: Power;
  /** Voltage, line to line for three-phase. 1 to 1000 V. */
  readonly voltage: Voltage;
  /** Current in each line. 0.001 to 10 000 A. */
  readonly current: Current;
  /** Phases. */
  readonly system: MotorSystem;
  /** Shaft power, where known, for the efficiency. 0 to the input. */
  readonly shaftPower?: Power;
}

/** What follows from the readings. */
export interface PowerReading {
  /** Power factor. */
  readonly powerFactor: Ratio;
  /** Apparent power, VA. */
  readonly apparentPower: ApparentPower;
  /** Efficiency; null where no shaft power was given. */
  readonly efficiency: Ratio | null;
}

/**
 * Power factor, and efficiency where shaft power is known, from watts, volts and amperes.
 *
 * @remarks
 * cos φ = P / (V I), or P / (√3 V I) for three phases; η = shaft power / P. Each reading's error goes straight into the result.
 *
 * @param input - the readings; each field says its unit and the values it takes
 * @returns power factor and efficiency
 * @throws InputError naming the first field that is not in its range, or watts above volts times amperes by more than 1 %
 *
 * @example
 * ```ts
 * import { powerReading } from "risingmain/motor";
 * import { amperes, volts, watts } from "risingmain/units";
 *
 * powerReading({
 *   inputPower: watts(400), voltage: volts(115), current: amperes(5.35), system: "single-phase",
 * }).powerFactor; // ≈ 0.650
 * ```
 *
 * @source derived: definitions of power factor and efficiency
 */
export function powerReading(input: PowerReadingInput): PowerReading {
  requireObject("input", input);
  const { inputPower, voltage, current, system, shaftPower } = input;
  requireWithin("inputPower", inputPower, 0.1, 1e7, "W");
  requireWithin("voltage", voltage, 1, 1000, "V");
  requireWithin("current", current, 0.001, 1e4, "A");
  requireOneOf("system", system, MOTOR_SYSTEMS);
  if (shaftPower !== undefined) requireWithin("shaftPower", shaftPower, 0, inputPower, "W, not above the input");
  const apparent = voltage * current * (system === "three-phase" ? Math.sqrt(3) : 1);
  if (inputPower > 1.01 * apparent) {
    throw new InputError("inputPower", inputPower, `at most the apparent power, ${apparent} VA`);
  }
  return {
    powerFactor: Math.min(1, inputPower / apparent) as Ratio,
    apparentPower: apparent as ApparentPower,
    efficiency: shaftPower === undefined ? null : ((shaftPower / inputPower) as Ratio),
  };
}
