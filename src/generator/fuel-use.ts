/**
 * Fuel a generator burns, and how long its tank lasts.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { type Duration, InputError, type Power, type Ratio, type Volume, type VolumeFlow } from "../units/index.ts";

/** Fuels with a published figure. */
export type GeneratorFuel = "diesel" | "gasoline" | "propane";

/**
 * Work at the engine's shaft from one US gallon, horsepower-hours: what a well-kept engine reaches near full load.
 *
 * @source dorn-2008, Table 1
 */
export const shaftWorkPerGallon: Readonly<Record<GeneratorFuel, number>> = {
  diesel: 16.66,
  gasoline: 11.5,
  propane: 9.2,
};

/** Joules in a horsepower-hour and cubic metres in a US gallon. */
const HORSEPOWER_HOUR = 745.69987158227022 * 3600;
const US_GALLON = 3.785411784e-3;
/** Efficiency of a small alternator: common practice. */
const ALTERNATOR_EFFICIENCY = 0.85;

/** A load on a generator. */
export interface FuelUseInput {
  /** Electric load. 0 to 10 MW. */
  readonly load: Power;
  /** Fuel. */
  readonly fuel: GeneratorFuel;
  /** Efficiency of the alternator; 0.85 where left out. 0.3 to 1. */
  readonly alternatorEfficiency?: Ratio;
}

/**
 * Fuel a well-kept generator burns near full load, by the pumping-plant criteria.
 *
 * @remarks
 * load / (alternator efficiency · work per gallon), with 16.66, 11.5 and 9.2 hp·h per US gallon for diesel, gasoline and
 * propane. Small portable sets burn more, at part load up to twice as much for each kilowatt-hour: use
 * {@link fuelUseBetween} where the plate or manual gives figures.
 *
 * @param input - load and fuel; each field says its unit and the values it takes
 * @returns the volume of fuel per time, m³/s
 * @throws InputError naming the first field that is not in its range
 *
 * @example 5 kW on gasoline
 * ```ts
 * import { fuelUse } from "risingmain/generator";
 * import { inUsGallonsPerHour, kilowatts } from "risingmain/units";
 *
 * inUsGallonsPerHour(fuelUse({ load: kilowatts(5), fuel: "gasoline" })); // ≈ 0.686
 * ```
 *
 * @source dorn-2008, Table 1
 */
export function fuelUse(input: FuelUseInput): VolumeFlow {
  requireObject("input", input);
  const { load, fuel, alternatorEfficiency = ALTERNATOR_EFFICIENCY } = input;
  requireWithin("load", load, 0, 1e7, "W");
  requireOneOf("fuel", fuel, Object.keys(shaftWorkPerGallon));
  requireWithin("alternatorEfficiency", alternatorEfficiency, 0.3, 1, "as a ratio");
  return (((load / alternatorEfficiency) * US_GALLON) / (shaftWorkPerGallon[fuel] * HORSEPOWER_HOUR)) as VolumeFlow;
}

/** A generator's own figures. */
export interface FuelUseBetweenInput {
  /** Load as a share of the rated power. 0 to 1. */
  readonly loadShare: Ratio;
  /** Fuel burnt per time at half load. 0 to 0.1 m³/s. */
  readonly atHalfLoad: VolumeFlow;
  /** Fuel burnt per time at full load. At least that at half load, at most 0.1 m³/s. */
  readonly atFullLoad: VolumeFlow;
}

/**
 * Fuel a generator burns at any load, from its own figures at half and full load.
 *
 * @remarks
 * The straight line through both (an engine's fuel is close to one), extended below half load, and never below 0.
 *
 * @param input - load and the two figures; each field says its unit and the values it takes
 * @returns the volume of fuel per time, m³/s
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { fuelUseBetween } from "risingmain/generator";
 * import { inUsGallonsPerHour, ratio, usGallonsPerHour } from "risingmain/units";
 *
 * const use = fuelUseBetween({
 *   loadShare: ratio(0.25), atHalfLoad: usGallonsPerHour(0.7), atFullLoad: usGallonsPerHour(1.1),
 * });
 * inUsGallonsPerHour(use); // ≈ 0.5
 * ```
 *
 * @source derived: straight line through two figures
 */
export function fuelUseBetween(input: FuelUseBetweenInput): VolumeFlow {
  requireObject("input", input);
  const { loadShare, atHalfLoad, atFullLoad } = input;
  requireWithin("loadShare", loadShare, 0, 1, "as a ratio");
  requireWithin("atHalfLoad", atHalfLoad, 0, 0.1, "m³/s");
  requireWithin("atFullLoad", atFullLoad, 0, 0.1, "m³/s");
  if (atFullLoad < atHalfLoad) throw new InputError("atFullLoad", atFullLoad, "at least the use at half load");
  return Math.max(0, atHalfLoad + (atFullLoad - atHalfLoad) * (2 * loadShare - 1)) as VolumeFlow;
}

/** A tank and what is drawn from it. */
export interface TankRunTimeInput {
  /** Usable fuel in the tank. 0 to 1000 m³. */
  readonly tank: Volume;
  /** Fuel burnt per time. 1e-12 to 0.1 m³/s. */
  readonly use: VolumeFlow;
}

/**
 * How long a tank of fuel lasts.
 *
 * @remarks
 * Volume over use.
 *
 * @param input - tank and use
 * @returns the time, s
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { tankRunTime } from "risingmain/generator";
 * import { inHours, usGallons, usGallonsPerHour } from "risingmain/units";
 *
 * inHours(tankRunTime({ tank: usGallons(6), use: usGallonsPerHour(0.75) })); // ≈ 8.0
 * ```
 *
 * @source derived: volume over flow
 */
export function tankRunTime(input: TankRunTimeInput): Duration {
  requireObject("input", input);
  const { tank, use } = input;
  requireWithin("tank", tank, 0, 1000, "m³");
  requireWithin("use", use, 1e-12, 0.1, "m³/s");
  return (tank / use) as Duration;
}
