/**
 * Voltage while a motor starts: standing still, it is an impedance in series with the conductors and the source.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { ApparentPower, Current, Power, Ratio, Voltage } from "../units/index.ts";
import { type CircuitSegment, lineFactor, readSegments, readSource, type SourceImpedance } from "./circuit.ts";

/** A motor about to start at the end of a circuit. */
export interface LockedRotorDropInput {
  /** How the circuit is fed. */
  readonly system: "single-phase" | "three-phase";
  /** Voltage at the source with nothing connected, line to line for three-phase. 0.1 to 1000 V. */
  readonly sourceVoltage: Voltage;
  /** The source's own impedance; none where left out. */
  readonly source?: SourceImpedance;
  /** The conductors from source to motor, in order. 0 to 1000. */
  readonly segments: readonly CircuitSegment[];
  /** Line current of the motor standing still at its rated voltage. 0.01 to 10 000 A. */
  readonly lockedRotorCurrent: Current;
  /** Power factor of the motor standing still, lagging. 0 to 1. */
  readonly lockedRotorPowerFactor: Ratio;
  /** Voltage at which the locked-rotor current is stated. 0.1 to 1000 V. */
  readonly ratedVoltage: Voltage;
}

/** What the voltages fall to in the first moment. */
export interface LockedRotorDrop {
  /** Current in each line, A: less than the locked-rotor current, since the voltage has fallen. */
  readonly current: Current;
  /** Voltage at the source's terminals, V. */
  readonly terminalVoltage: Voltage;
  /** Fall of the terminal voltage as a share of the voltage with nothing connected. */
  readonly terminalDip: Ratio;
  /** Voltage at the motor, V. */
  readonly motorVoltage: Voltage;
  /** Fall of the motor voltage as a share of the source voltage with nothing connected. */
  readonly motorDip: Ratio;
  /** Starting torque as a share of that at rated voltage: the square of the voltage ratio. */
  readonly torqueShare: Ratio;
  /** Power taken from the source's terminals, motor and conductors together, W. */
  readonly power: Power;
  /** Apparent power at the source's terminals, VA. */
  readonly apparentPower: ApparentPower;
  /** How it was worked out. */
  readonly method: "phasor";
}

/**
 * Voltages and current in the first moment of a motor start, with circuit and source in series.
 *
 * @remarks
 * The motor standing still is the impedance Z = V / I at its locked-rotor power factor. With k = 2 or √3 conductors,
 * I = V₀ / |Zsource + k Zline + Z|. Exact for that impedance; saturation makes a real motor draw up to a tenth more near
 * rated voltage than a reading at low voltage suggests. Multiplying the locked-rotor current by the line's ohms instead
 * overstates the dip, by more the longer the line.
 *
 * @param input - source, conductors and motor; each field says its unit and the values it takes
 * @returns current, voltages, dips and torque
 * @throws InputError naming the first field that is not in its range
 *
 * @example A 1-1/2 hp motor of code letter K behind 1.56 Ω of conductors
 * ```ts
 * import { lockedRotorDrop } from "risingmain/conductor";
 * import { amperes, feet, inPercent, ohmsPerThousandFeet, ratio, volts } from "risingmain/units";
 *
 * const start = lockedRotorDrop({
 *   system: "single-phase", sourceVoltage: volts(230), ratedVoltage: volts(230),
 *   lockedRotorCurrent: amperes(55.43478), lockedRotorPowerFactor: ratio(0.5),
 *   segments: [
 *     { length: feet(150), resistance: ohmsPerThousandFeet(1.24) },
 *     { length: feet(300), resistance: ohmsPerThousandFeet(1.98) },
 *   ],
 * });
 * start.motorVoltage; // ≈ 186.7
 * inPercent(start.motorDip); // ≈ 18.82
 * ```
 *
 * @source derived: Kirchhoff's laws for sine waves; torque in proportion to the square of voltage
 */
export function lockedRotorDrop(input: LockedRotorDropInput): LockedRotorDrop {
  requireObject("input", input);
  const { system, sourceVoltage, segments, lockedRotorCurrent, lockedRotorPowerFactor, ratedVoltage } = input;
  requireOneOf("system", system, ["single-phase", "three-phase"]);
  requireWithin("sourceVoltage", sourceVoltage, 0.1, 1000, "V");
  const source = readSource("source", input.source, system);
  const ohms = readSegments("segments", segments, system, 0);
  requireWithin("lockedRotorCurrent", lockedRotorCurrent, 0.01, 1e4, "A");
  requireWithin("lockedRotorPowerFactor", lockedRotorPowerFactor, 0, 1, "as a ratio");
  requireWithin("ratedVoltage", ratedVoltage, 0.1, 1000, "V");

  // All on the scale of line voltage over line current, so one form serves one phase and three.
  const k = lineFactor(system);
  const phases = system === "three-phase" ? Math.sqrt(3) : 1;
  const motor = ratedVoltage / lockedRotorCurrent;
  const loadR = motor * lockedRotorPowerFactor + k * ohms.reduce((sum, { r }) => sum + r, 0);
  const loadX =
    motor * Math.sqrt(1 - lockedRotorPowerFactor * lockedRotorPowerFactor) +
    k * ohms.reduce((sum, { x }) => sum + x, 0);
  const current = sourceVoltage / Math.hypot(source.r + loadR, source.x + loadX);
  const terminalVoltage = current * Math.hypot(loadR, loadX);
  const motorVoltage = current * motor;
  return {
    current: current as Current,
    terminalVoltage: terminalVoltage as Voltage,
    terminalDip: (1 - terminalVoltage / sourceVoltage) as Ratio,
    motorVoltage: motorVoltage as Voltage,
    motorDip: (1 - motorVoltage / sourceVoltage) as Ratio,
    torqueShare: ((motorVoltage / ratedVoltage) ** 2) as Ratio,
    power: (phases * current * current * loadR) as Power,
    apparentPower: (phases * current * terminalVoltage) as ApparentPower,
    method: "phasor",
  };
}
