/**
 * Whether voltage and frequency at a running motor are near enough to its nameplate.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Frequency, Ratio, Voltage } from "../units/index.ts";

/** Running variation that motors must stand at rated load, and the sum of both. */
const VOLTAGE_TOLERANCE = 0.1;
const FREQUENCY_TOLERANCE = 0.05;
const COMBINED_TOLERANCE = 0.1;

/** A motor's rating and a reading. */
export interface SupplyToleranceInput {
  /** Voltage on the nameplate. 1 to 1000 V. */
  readonly ratedVoltage: Voltage;
  /** Voltage read at the motor's terminals while it runs. 0 to 2000 V. */
  readonly voltage: Voltage;
  /** Frequency on the nameplate; 60 Hz where left out. 10 to 400 Hz. */
  readonly ratedFrequency?: Frequency;
  /** Frequency read; the rated one where left out. 1 to 400 Hz. */
  readonly frequency?: Frequency;
}

/** How far the reading is off, and the limits. */
export interface SupplyTolerance {
  /** Whether the motor may run on it, or what is off. */
  readonly state: "within tolerance" | "voltage too low" | "voltage too high" | "frequency off" | "both too far off";
  /** Voltage over rated voltage, less 1. */
  readonly voltageDeviation: Ratio;
  /** Frequency over rated frequency, less 1. */
  readonly frequencyDeviation: Ratio;
  /** Least voltage allowed, V. */
  readonly lowest: Voltage;
  /** Greatest voltage allowed, V. */
  readonly highest: Voltage;
  /** Largest frequency deviation allowed, either way. */
  readonly frequencyLimit: Ratio;
  /** Largest sum of the two deviations allowed, signs apart. */
  readonly combinedLimit: Ratio;
  /** Where the limits are from. */
  readonly method: "nema-mg-1";
}

/**
 * Whether voltage and frequency at a running motor are within the tolerance motors are built for.
 *
 * @remarks
 * Voltage ±10 %, frequency ±5 %, the sum of both 10 %, at rated load. Within them a motor runs, though not at its rated
 * figures; torque goes with the square of the voltage, current at full load roughly against it.
 *
 * @param input - rating and reading; each field says its unit and the values it takes
 * @returns the deviations and the limits
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { supplyTolerance } from "risingmain/motor";
 * import { volts } from "risingmain/units";
 *
 * supplyTolerance({ ratedVoltage: volts(230), voltage: volts(203) }).state; // => "voltage too low"
 * supplyTolerance({ ratedVoltage: volts(230), voltage: volts(214) }).lowest; // ≈ 207
 * ```
 *
 * @source nema-mg-1, variation from rated voltage and frequency
 */
export function supplyTolerance(input: SupplyToleranceInput): SupplyTolerance {
  requireObject("input", input);
  const { ratedVoltage, voltage, ratedFrequency = 60 as Frequency } = input;
  const { frequency = ratedFrequency } = input;
  requireWithin("ratedVoltage", ratedVoltage, 1, 1000, "V");
  requireWithin("voltage", voltage, 0, 2000, "V");
  requireWithin("ratedFrequency", ratedFrequency, 10, 400, "Hz");
  requireWithin("frequency", frequency, 1, 400, "Hz");
  const lowest = ratedVoltage * (1 - VOLTAGE_TOLERANCE);
  const highest = ratedVoltage * (1 + VOLTAGE_TOLERANCE);
  const byVoltage = voltage / ratedVoltage - 1;
  const byFrequency = frequency / ratedFrequency - 1;
  // A reading on the limit itself passes, whatever the rounding of the product.
  const slack = 1e-12;
  const state =
    voltage < lowest * (1 - slack)
      ? "voltage too low"
      : voltage > highest * (1 + slack)
        ? "voltage too high"
        : Math.abs(byFrequency) > FREQUENCY_TOLERANCE + slack
          ? "frequency off"
          : Math.abs(byVoltage) + Math.abs(byFrequency) > COMBINED_TOLERANCE + slack
            ? "both too far off"
            : "within tolerance";
  return {
    state,
    voltageDeviation: byVoltage as Ratio,
    frequencyDeviation: byFrequency as Ratio,
    lowest: lowest as Voltage,
    highest: highest as Voltage,
    frequencyLimit: FREQUENCY_TOLERANCE as Ratio,
    combinedLimit: COMBINED_TOLERANCE as Ratio,
    method: "nema-mg-1",
  };
}
