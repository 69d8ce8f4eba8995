/**
 * An engine-driven pumping plant's fuel against the pumping-plant criteria.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Power, Ratio, VolumeFlow } from "../units/index.ts";
import { type GeneratorFuel, shaftWorkPerGallon } from "./fuel-use.ts";

/** Joules in a horsepower-hour and cubic metres in a US gallon. */
const HORSEPOWER_HOUR = 745.69987158227022 * 3600;
const US_GALLON = 3.785411784e-3;

/** A pumping plant's fuel against the criteria. */
export interface PumpingFuelInput {
  /** Power the pump gives to the water. 0 to 10 MW. */
  readonly waterPower: Power;
  /** Fuel. */
  readonly fuel: GeneratorFuel;
  /** Fuel burnt per time by an engine that drives the pump. 1e-12 to 0.1 m³/s. */
  readonly use: VolumeFlow;
}

/** Pump efficiency behind the criteria. */
const CRITERIA_PUMP_EFFICIENCY = 0.75;

/** What the plant does with its fuel. */
export interface PumpingFuel {
  /** Work done on the water per volume of fuel, J/m³. */
  readonly workPerVolume: number;
  /** The criterion for the fuel, J/m³. */
  readonly criterion: number;
  /** The first as a share of the second: 1 for a good plant, well below it for a worn one. */
  readonly share: Ratio;
  /** Where the criterion is from. */
  readonly method: "dorn-2008";
}

/**
 * Work an engine-driven pumping plant does on the water per volume of fuel, against the pumping-plant criteria.
 *
 * @remarks
 * The criteria: work at the shaft per gallon times a pump efficiency of 75 %. Field tests commonly find plants at two thirds
 * of them.
 *
 * @param input - water power, fuel and use; each field says its unit and the values it takes
 * @returns the work, the criterion and their ratio
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { pumpingFuel } from "risingmain/generator";
 * import { horsepower, inPercent, usGallonsPerHour } from "risingmain/units";
 *
 * const plant = pumpingFuel({ waterPower: horsepower(31.6), fuel: "diesel", use: usGallonsPerHour(4) });
 * inPercent(plant.share); // ≈ 63.2
 * ```
 *
 * @source dorn-2008, Table 1
 */
export function pumpingFuel(input: PumpingFuelInput): PumpingFuel {
  requireObject("input", input);
  const { waterPower, fuel, use } = input;
  requireWithin("waterPower", waterPower, 0, 1e7, "W");
  requireOneOf("fuel", fuel, Object.keys(shaftWorkPerGallon));
  requireWithin("use", use, 1e-12, 0.1, "m³/s");
  const criterion = (shaftWorkPerGallon[fuel] * CRITERIA_PUMP_EFFICIENCY * HORSEPOWER_HOUR) / US_GALLON;
  const workPerVolume = waterPower / use;
  return { workPerVolume, criterion, share: (workPerVolume / criterion) as Ratio, method: "dorn-2008" };
}
