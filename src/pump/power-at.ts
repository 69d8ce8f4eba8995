/**
 * Power of a pump at a flow on its curve.
 *
 * @module
 */
import { cubicValue, requireObject, requireWithin } from "../numeric/index.ts";
import type { Density, Length, Power, Ratio, VolumeFlow } from "../units/index.ts";
import type { PumpCurve } from "./curve.ts";
import { hydraulicPower, LEAST_EFFICIENCY, type PumpPower, requireEfficiency } from "./power.ts";
import { pumpEfficiencyAt, pumpInputPowerAt, requireCurve } from "./read-curve.ts";

/** A pump at a flow, and its motor. */
export interface PumpPowerAtInput {
  /** The pump, with efficiency or input power, from {@link pumpCurve}. */
  readonly curve: PumpCurve;
  /** Flow. 0 to the curve's `runoutFlow`, m³/s. */
  readonly flow: VolumeFlow;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
  /** Motor efficiency at that load. 1e-6 to 1. */
  readonly motorEfficiency: Ratio;
  /** Efficiency of a drive between supply and pump. 1e-6 to 1; 1 where left out. */
  readonly driveEfficiency?: Ratio;
}

/** Power from the wire to the water at a flow, and what it was worked out from. */
export type PumpPowerAt =
  | (PumpPower & {
      /** The powers are known. */
      readonly state: "known";
      /** Which line of the curve gave the shaft power; input power first, being measured. */
      readonly from: "input power" | "efficiency";
    })
  | {
      /** The curve has neither line at this flow. */
      readonly state: "unknown";
    };

/** Below this a quotient of powers is rounding, W. */
const LEAST_POWER = 1e-9;

/**
 * Power in the water, at the shaft and at the wire, at a flow on a pump's curve.
 *
 * @remarks
 * Shaft power is read from the curve's input power; without one it is ρ g Q H / η. See {@link pumpPower}. Motor
 * efficiency falls below three quarters of its load: give the one at this load.
 *
 * @param input - the pump, flow, density and efficiencies
 * @returns the powers, W, or that the curve cannot tell
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { pumpCurve, pumpPowerAt } from "risingmain/pump";
 * import { feet, gpm, inWatts, kilogramsPerCubicMetre, percent } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: gpm(0), head: feet(365) },
 *     { flow: gpm(8), head: feet(322), efficiency: percent(54) },
 *     { flow: gpm(12), head: feet(275), efficiency: percent(62) },
 *   ],
 * });
 * const at = { curve, flow: gpm(12), density: kilogramsPerCubicMetre(1000), motorEfficiency: percent(75) };
 * const power = pumpPowerAt(at);
 * power.state === "known" ? inWatts(power.electricalPower) : 0; // ≈ 1338.3
 * ```
 *
 * @source derived: definitions of the efficiencies
 */
export function pumpPowerAt(input: PumpPowerAtInput): PumpPowerAt {
  requireObject("input", input);
  const { curve, flow, density, motorEfficiency, driveEfficiency = 1 } = input;
  requireCurve(curve);
  requireWithin("flow", flow, 0, curve.runoutFlow, "m³/s, the end of the curve");
  requireEfficiency("motorEfficiency", motorEfficiency);
  requireEfficiency("driveEfficiency", driveEfficiency);
  const water = hydraulicPower({ flow, head: cubicValue(curve.head, flow) as Length, density });
  const measured = pumpInputPowerAt(curve, flow);
  const efficiency = pumpEfficiencyAt(curve, flow);
  const isEfficient = (efficiency ?? 0) >= LEAST_EFFICIENCY;
  if (measured === null && !isEfficient) return { state: "unknown" };
  const shaft = measured ?? water / (efficiency as number);
  const electrical = shaft / (motorEfficiency * driveEfficiency);
  return {
    state: "known",
    from: measured === null ? "efficiency" : "input power",
    hydraulicPower: water,
    shaftPower: shaft as Power,
    electricalPower: electrical as Power,
    // Not held below 1: a ratio above it shows that the curve's points contradict each other.
    wireToWater: (electrical > LEAST_POWER ? water / electrical : 0) as Ratio,
  };
}
