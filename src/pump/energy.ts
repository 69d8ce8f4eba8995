/**
 * Energy and cost of lifted water.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, Duration, Energy, Length, Power, Ratio, Volume } from "../units/index.ts";
import { requireEfficiency } from "./power.ts";

/** Joules in a kilowatt-hour; exact. */
const KILOWATT_HOUR = 3.6e6;

/** A volume lifted. */
export interface PumpingEnergyInput {
  /** Volume of water. 0 to 1e9 m³. */
  readonly volume: Volume;
  /** Head added to it. 0 to 100 000 m. */
  readonly head: Length;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
  /** Water power over electrical power; 1 gives the energy in the water itself. 1e-6 to 1. */
  readonly wireToWater: Ratio;
}

/**
 * Energy drawn to lift a volume of water.
 *
 * @remarks
 * E = ρ g V H / η, with η `wireToWater`. For a tank system take the head at each pressure or the mean of cut-in and
 * cut-out; starting energy is not counted.
 *
 * @param input - volume, head, density and overall efficiency; each field says its unit and the values it takes
 * @returns energy from the supply, J
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { pumpingEnergy } from "risingmain/pump";
 * import { feet, inKilowattHours, kilogramsPerCubicMetre, percent, usGallons } from "risingmain/units";
 *
 * const energy = pumpingEnergy({
 *   volume: usGallons(1000), head: feet(200), density: kilogramsPerCubicMetre(999), wireToWater: percent(40),
 * });
 * inKilowattHours(energy); // ≈ 1.570
 * ```
 *
 * @source derived: weight times height over efficiency
 */
export function pumpingEnergy(input: PumpingEnergyInput): Energy {
  requireObject("input", input);
  const { volume, head, density, wireToWater } = input;
  requireWithin("volume", volume, 0, 1e9, "m³");
  requireWithin("head", head, 0, 1e5, "m");
  requireWithin("density", density, 900, 1100, "kg/m³");
  requireEfficiency("wireToWater", wireToWater);
  return ((density * STANDARD_GRAVITY * volume * head) / wireToWater) as Energy;
}

/** A pump that runs for a time at a price. */
export interface RunningCostInput {
  /** Power drawn from the supply. 0 to 1e9 W. */
  readonly electricalPower: Power;
  /** Time it runs. 0 to 1e10 s. */
  readonly runTime: Duration;
  /** Price of a kilowatt-hour in any currency. 0 to 1e6. */
  readonly pricePerKilowattHour: number;
  /** Volume delivered in that time, for the cost by volume. Above 0 to 1e12 m³; may be left out. */
  readonly volume?: Volume;
}

/** What running a pump takes. */
export interface RunningCost {
  /** Energy drawn, J. */
  readonly energy: Energy;
  /** Cost, in the currency of the price. */
  readonly cost: number;
  /** Cost of a cubic metre delivered, in that currency; null where no volume was given. */
  readonly costPerCubicMetre: number | null;
}

/**
 * Energy and cost of running a pump for a time.
 *
 * @remarks
 * E = P t; cost = E × price. Standing charges and demand charges are not counted.
 *
 * @param input - electrical power, time, price, and the volume delivered where known
 * @returns energy, J, and cost in the price's own currency
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { runningCost } from "risingmain/pump";
 * import { cubicMetres, hours, inKilowattHours, kilowatts } from "risingmain/units";
 *
 * const day = runningCost({
 *   electricalPower: kilowatts(1.5), runTime: hours(4), pricePerKilowattHour: 0.16, volume: cubicMetres(16),
 * });
 * inKilowattHours(day.energy); // ≈ 6.000
 * day.cost; // ≈ 0.960
 * day.costPerCubicMetre ?? 0; // ≈ 0.0600
 * ```
 *
 * @source derived: power times time
 */
export function runningCost(input: RunningCostInput): RunningCost {
  requireObject("input", input);
  const { electricalPower, runTime, pricePerKilowattHour, volume } = input;
  requireWithin("electricalPower", electricalPower, 0, 1e9, "W");
  requireWithin("runTime", runTime, 0, 1e10, "s");
  requireWithin("pricePerKilowattHour", pricePerKilowattHour, 0, 1e6, "in any currency");
  if (volume !== undefined) requireWithin("volume", volume, 1e-9, 1e12, "m³");
  const energy = electricalPower * runTime;
  const cost = (energy / KILOWATT_HOUR) * pricePerKilowattHour;
  return { energy: energy as Energy, cost, costPerCubicMetre: volume === undefined ? null : cost / volume };
}
