/**
 * The most a hole of a size can pass: an upper bound for a relief valve whose certificate is missing.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Density, GaugePressure, Length, VolumeFlow } from "../units/index.ts";

/** A hole, the pressure before it and the water. */
export interface ReliefOrificeInput {
  /** Diameter of the hole. 0 to 1 m. */
  readonly diameter: Length;
  /** Gauge pressure before it, the open air behind it. 0 to 100 MPa. */
  readonly pressure: GaugePressure;
  /** Share of the ideal flow that passes; 0.62 for a sharp edge. 0 to 1. */
  readonly dischargeCoefficient: number;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
}

/**
 * Flow of water through a hole into the open air.
 *
 * @remarks
 * Q = C · A · √(2 p / ρ). A relief valve passes far less until it is fully open: use its certified capacity, and this
 * only to see that a size cannot do.
 *
 * @param input - the hole, the pressure and the water
 * @returns the flow
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { reliefOrificeFlow } from "risingmain/control";
 * import { inches, inGpm, kilogramsPerCubicMetre, psi } from "risingmain/units";
 *
 * const hole = { diameter: inches(0.5), pressure: psi(75), dischargeCoefficient: 0.62 };
 * inGpm(reliefOrificeFlow({ ...hole, density: kilogramsPerCubicMetre(999) })); // ≈ 40.1
 * ```
 *
 * @source derived: Torricelli's law with a discharge coefficient
 */
export function reliefOrificeFlow(input: ReliefOrificeInput): VolumeFlow {
  requireObject("input", input);
  const { diameter, pressure, dischargeCoefficient, density } = input;
  requireWithin("diameter", diameter, 0, 1, "m");
  requireWithin("pressure", pressure, 0, 1e8, "Pa gauge");
  requireWithin("dischargeCoefficient", dischargeCoefficient, 0, 1, "");
  requireWithin("density", density, 900, 1100, "kg/m³");
  const area = (Math.PI / 4) * diameter * diameter;
  return (dischargeCoefficient * area * Math.sqrt((2 * pressure) / density)) as VolumeFlow;
}
