/**
 * Power from the wire to the water, and the losses between.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, Length, Power, Ratio, VolumeFlow } from "../units/index.ts";

/** Water lifted. */
export interface HydraulicPowerInput {
  /** Flow. 0 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Head added to it. 0 to 100 000 m. */
  readonly head: Length;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
}

/**
 * Power given to the water ("water horsepower").
 *
 * @remarks
 * P = ρ g Q H, with ρ `density`, Q `flow`, H `head` and g standard gravity. Exact.
 *
 * @param input - flow, head and density; each field says its unit and the values it takes
 * @returns power in the water, W
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { hydraulicPower } from "risingmain/pump";
 * import { feet, gpm, inHorsepower, poundsPerCubicFoot } from "risingmain/units";
 *
 * inHorsepower(hydraulicPower({ flow: gpm(10), head: feet(100), density: poundsPerCubicFoot(62.37) })); // ≈ 0.252656
 * ```
 *
 * @source derived: weight per second times height
 */
export function hydraulicPower(input: HydraulicPowerInput): Power {
  requireObject("input", input);
  const { flow, head, density } = input;
  requireWithin("flow", flow, 0, 100, "m³/s");
  requireWithin("head", head, 0, 1e5, "m");
  requireWithin("density", density, 900, 1100, "kg/m³");
  return (density * STANDARD_GRAVITY * flow * head) as Power;
}

/** Water lifted, and the machines that lift it. */
export interface PumpPowerInput extends HydraulicPowerInput {
  /** Pump efficiency: water power over shaft power. 1e-6 to 1. */
  readonly pumpEfficiency: Ratio;
  /** Motor efficiency: shaft power over electrical power. 1e-6 to 1. */
  readonly motorEfficiency: Ratio;
  /** Efficiency of belt, gear or variable-speed drive between supply and pump. 1e-6 to 1; 1 where left out. */
  readonly driveEfficiency?: Ratio;
}

/** Power at each stage from the wire to the water. */
export interface PumpPower {
  /** Power in the water, W. */
  readonly hydraulicPower: Power;
  /** Power into the pump's shaft, W. */
  readonly shaftPower: Power;
  /** Power drawn from the supply, W. */
  readonly electricalPower: Power;
  /** Water power over electrical power. */
  readonly wireToWater: Ratio;
}

/**
 * Power in the water, at the shaft and at the wire, and the efficiency from wire to water.
 *
 * @remarks
 * shaft = water / pump efficiency; wire = shaft / (motor · drive efficiency); wire-to-water = water / wire.
 *
 * @param input - flow, head, density and efficiencies as ratios; each field says the values it takes
 * @returns the three powers, W, and their overall ratio
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { pumpPower } from "risingmain/pump";
 * import { feet, gpm, inHorsepower, percent, poundsPerCubicFoot } from "risingmain/units";
 *
 * const power = pumpPower({
 *   flow: gpm(700), head: feet(428), density: poundsPerCubicFoot(62.364),
 *   pumpEfficiency: percent(70.7), motorEfficiency: percent(95), driveEfficiency: percent(96),
 * });
 * inHorsepower(power.shaftPower); // ≈ 107.06
 * inHorsepower(power.electricalPower); // ≈ 117.39
 * ```
 *
 * @source derived: definitions of the efficiencies
 */
export function pumpPower(input: PumpPowerInput): PumpPower {
  const water = hydraulicPower(input);
  const { pumpEfficiency, motorEfficiency, driveEfficiency = 1 } = input;
  requireEfficiency("pumpEfficiency", pumpEfficiency);
  requireEfficiency("motorEfficiency", motorEfficiency);
  requireEfficiency("driveEfficiency", driveEfficiency);
  const shaft = water / pumpEfficiency;
  return {
    hydraulicPower: water,
    shaftPower: shaft as Power,
    electricalPower: (shaft / (motorEfficiency * driveEfficiency)) as Power,
    wireToWater: (pumpEfficiency * motorEfficiency * driveEfficiency) as Ratio,
  };
}

/**
 * Below this no machine is at work, and a quotient could overflow.
 *
 * @internal
 */
export const LEAST_EFFICIENCY = 1e-6;

/** @internal */
export function requireEfficiency(parameter: string, value: unknown): void {
  requireWithin(parameter, value, LEAST_EFFICIENCY, 1, "as a ratio: 0.70 for 70 %");
}
