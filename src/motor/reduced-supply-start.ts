/**
 * Starting current and torque at another voltage or frequency.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Current, Frequency, Torque, Voltage } from "../units/index.ts";

/** A motor's rated start, and the supply it meets. */
export interface ReducedSupplyStartInput {
  /** Locked-rotor current at rated voltage and frequency. 0 to 100 000 A. */
  readonly lockedRotorCurrent: Current;
  /** Locked-rotor torque at rated voltage and frequency. 0 to 1 000 000 N·m. */
  readonly lockedRotorTorque: Torque;
  /** Rated voltage. 1 to 1000 V. */
  readonly ratedVoltage: Voltage;
  /** Voltage at the motor as it starts. 0 to 1200 V. */
  readonly voltage: Voltage;
  /** Rated frequency; 60 Hz where left out. 10 to 400 Hz. */
  readonly ratedFrequency?: Frequency;
  /** Frequency of the supply; the rated one where left out. 10 to 400 Hz. */
  readonly frequency?: Frequency;
}

/** What is left of the start. */
export interface ReducedSupplyStart {
  /** Starting current, A. */
  readonly current: Current;
  /** Starting torque, N·m. */
  readonly torque: Torque;
}

/**
 * Starting current and torque of an induction motor at another voltage or frequency.
 *
 * @remarks
 * I ∝ V / f, since the leakage reactance of a motor at rest outweighs its resistance; torque ∝ (V / f)². Good to a few per
 * cent for frequencies within a tenth of the rated one; small motors, with more resistance, follow V more than V / f.
 *
 * @param input - rated start and supply; each field says its unit and the values it takes
 * @returns current and torque
 * @throws InputError naming the first field that is not in its range
 *
 * @example 65 % of rated voltage
 * ```ts
 * import { reducedSupplyStart } from "risingmain/motor";
 * import { amperes, inPoundFeet, poundFeet, volts } from "risingmain/units";
 *
 * const start = reducedSupplyStart({
 *   lockedRotorCurrent: amperes(55), lockedRotorTorque: poundFeet(8), ratedVoltage: volts(230), voltage: volts(149.5),
 * });
 * start.current; // ≈ 35.75
 * inPoundFeet(start.torque); // ≈ 3.38
 * ```
 *
 * @source hubert-electric-machines, examples 5.7, 5.8 and 5.18
 */
export function reducedSupplyStart(input: ReducedSupplyStartInput): ReducedSupplyStart {
  requireObject("input", input);
  const { lockedRotorCurrent, lockedRotorTorque, ratedVoltage, voltage, ratedFrequency = 60 as Frequency } = input;
  const { frequency = ratedFrequency } = input;
  requireWithin("lockedRotorCurrent", lockedRotorCurrent, 0, 1e5, "A");
  requireWithin("lockedRotorTorque", lockedRotorTorque, 0, 1e6, "N·m");
  requireWithin("ratedVoltage", ratedVoltage, 1, 1000, "V");
  requireWithin("voltage", voltage, 0, 1200, "V");
  requireWithin("ratedFrequency", ratedFrequency, 10, 400, "Hz");
  requireWithin("frequency", frequency, 10, 400, "Hz");
  const share = ((voltage / ratedVoltage) * ratedFrequency) / frequency;
  return { current: (lockedRotorCurrent * share) as Current, torque: (lockedRotorTorque * share * share) as Torque };
}
