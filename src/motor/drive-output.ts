/**
 * Voltage peaks at a motor on a long cable from a variable-speed drive.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Length, Velocity, Voltage } from "../units/index.ts";

/** Speed of a voltage front along an insulated cable, about half that of light, m/s: common practice. */
const USUAL_SPEED = 1.5e8;
/** Rise of a modern drive's pulses, s: common practice. */
const USUAL_RISE = 1e-7;
/** Peak that general-purpose and inverter-duty windings up to 600 V must stand (`nema-mg-1`, parts 30 and 31; memory), V. */
const GENERAL_PURPOSE_PEAK = 1000;
const INVERTER_DUTY_PEAK = 1600;

/** A drive, a cable and a motor. */
export interface DriveOutputInput {
  /** One-way length of cable from drive to motor. 0 to 10 000 m. */
  readonly length: Length;
  /** Alternating voltage that feeds the drive, line to line. 1 to 1000 V. */
  readonly supplyVoltage: Voltage;
  /** Time in which a pulse of the drive rises; 0.1 µs where left out. 1e-9 to 1e-3 s. */
  readonly riseTime?: Duration;
  /** Speed of the front along the cable; 150 000 km/s where left out. 1e7 to 3e8 m/s. */
  readonly speed?: Velocity;
}

/** What arrives at the motor. */
export interface DriveOutput {
  /** What the peak asks for: nothing, a motor wound for drives, or a filter at the drive. */
  readonly state: "any motor" | "inverter-duty motor" | "filter needed";
  /** Length above which the full reflection builds up, m. */
  readonly criticalLength: Length;
  /** Peak voltage at the motor, V. */
  readonly peakVoltage: Voltage;
  /** Voltage of the drive's direct-current link, V. */
  readonly linkVoltage: Voltage;
  /** Where the limits of windings are from. */
  readonly method: "nema-mg-1";
}

/**
 * Peak voltage at a motor on the end of a drive's output cable.
 *
 * @remarks
 * A pulse front runs down the cable and is reflected at the motor, whose surge impedance is far higher than the cable's.
 * Above the critical length, speed · rise time / 2, the full doubling builds up; below it, in proportion. Link voltage √2
 * times the supply. Windings: 1000 V for general purpose, 1600 V for inverter duty. A screening figure on the safe side:
 * losses in the cable lower the peak. The drive's and the motor's own data on cable length and filters come first.
 *
 * @param input - cable, supply and pulse; each field says its unit and the values it takes
 * @returns the peak and what it asks for
 * @throws InputError naming the first field that is not in its range
 *
 * @example 300 ft of cable behind a 230 V drive
 * ```ts
 * import { driveOutputPeak } from "risingmain/motor";
 * import { feet, volts } from "risingmain/units";
 *
 * const atMotor = driveOutputPeak({ length: feet(300), supplyVoltage: volts(230) });
 * atMotor.criticalLength; // ≈ 7.5
 * atMotor.peakVoltage; // ≈ 650.5
 * atMotor.state; // => "any motor"
 * ```
 *
 * @source derived: reflection at the end of a transmission line
 * @source nema-mg-1, parts 30 and 31 (from memory)
 */
export function driveOutputPeak(input: DriveOutputInput): DriveOutput {
  requireObject("input", input);
  const { length, supplyVoltage, riseTime = USUAL_RISE, speed = USUAL_SPEED } = input;
  requireWithin("length", length, 0, 1e4, "m");
  requireWithin("supplyVoltage", supplyVoltage, 1, 1000, "V");
  requireWithin("riseTime", riseTime, 1e-9, 1e-3, "s");
  requireWithin("speed", speed, 1e7, 3e8, "m/s");
  const criticalLength = (speed * riseTime) / 2;
  const linkVoltage = Math.SQRT2 * supplyVoltage;
  const peak = linkVoltage * (1 + Math.min(1, length / criticalLength));
  return {
    state:
      peak <= GENERAL_PURPOSE_PEAK ? "any motor" : peak <= INVERTER_DUTY_PEAK ? "inverter-duty motor" : "filter needed",
    criticalLength: criticalLength as Length,
    peakVoltage: peak as Voltage,
    linkVoltage: linkVoltage as Voltage,
    method: "nema-mg-1",
  };
}
