/**
 * Current and electric input of a running motor from its power, efficiency and power factor.
 *
 * @module
 */
import { requireObject, requireOneOf, requirePositive, requireWithin } from "../numeric/index.ts";
import type { ApparentPower, Current, Power, Ratio, Voltage } from "../units/index.ts";
import type { MotorSystem } from "./full-load-current.ts";

/** A motor under load. */
export interface MotorCurrentInput {
  /** Shaft power it gives. Above 0, at most 1 MW. */
  readonly power: Power;
  /** Efficiency as a ratio, from electric input to shaft. 0.05 to 1. */
  readonly efficiency: Ratio;
  /** Power factor, lagging, as a ratio; 1 for direct current. 0.05 to 1. */
  readonly powerFactor: Ratio;
  /** Voltage at the motor, line to line for three-phase. 1 to 1000 V. */
  readonly voltage: Voltage;
  /** How it is fed. */
  readonly system: MotorSystem | "direct current";
}

/** What the motor takes from its supply. */
export interface MotorCurrent {
  /** Current in each line, A. */
  readonly current: Current;
  /** Electric input, W. */
  readonly inputPower: Power;
  /** Apparent power, VA. */
  readonly apparentPower: ApparentPower;
}

/**
 * Current of a running motor from shaft power, efficiency and power factor.
 *
 * @remarks
 * Input P / η; apparent power P / (η cos φ); current that over V, or over √3 V for three phases. Exact by definition of its
 * terms; efficiency and power factor change with load, so use those of the load meant.
 *
 * @param input - the motor; each field says its unit and the values it takes
 * @returns current, input and apparent power
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { motorCurrent } from "risingmain/motor";
 * import { electricHorsepower, ratio, volts } from "risingmain/units";
 *
 * const running = motorCurrent({
 *   power: electricHorsepower(1.5), efficiency: ratio(0.815), powerFactor: ratio(0.85), voltage: volts(230),
 *   system: "single-phase",
 * });
 * running.current; // ≈ 7.023
 * running.inputPower; // ≈ 1373
 * ```
 *
 * @source derived: definitions of efficiency and power factor
 */
export function motorCurrent(input: MotorCurrentInput): MotorCurrent {
  requireObject("input", input);
  const { power, efficiency, powerFactor, voltage, system } = input;
  requirePositive("power", power, 1e6, "W");
  requireWithin("efficiency", efficiency, 0.05, 1, "as a ratio");
  requireWithin("powerFactor", powerFactor, 0.05, 1, "as a ratio");
  requireWithin("voltage", voltage, 1, 1000, "V");
  requireOneOf("system", system, ["single-phase", "three-phase", "direct current"]);
  const inputPower = power / efficiency;
  const apparent = inputPower / powerFactor;
  return {
    current: (apparent / (voltage * (system === "three-phase" ? Math.sqrt(3) : 1))) as Current,
    inputPower: inputPower as Power,
    apparentPower: apparent as ApparentPower,
  };
}
