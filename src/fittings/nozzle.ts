/**
 * Water from a nozzle or open outlet under pressure.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { type Density, type GaugePressure, InputError, type Length, type VolumeFlow } from "../units/index.ts";

/** A nozzle and the pressure behind it. */
export interface NozzleFlowInput {
  /** Diameter of the tip. 0.0001 to 1 m. */
  readonly diameter: Length;
  /** Gauge pressure: at the tip by a pitot, or in the pipe behind it where `pipeDiameter` is given. 0 to 1e8 Pa. */
  readonly pressure: GaugePressure;
  /** Discharge coefficient: 0.9 for a smooth hydrant outlet, 0.995 for a smooth-bore tip. 0.01 to 1. */
  readonly dischargeCoefficient: number;
  /** Density of the water. 500 to 2000 kg/m³. */
  readonly density: Density;
  /** Inside diameter of the pipe where the pressure is read, wider than the tip; its velocity then counts. Up to 10 m. */
  readonly pipeDiameter?: Length;
}

/**
 * Flow from a nozzle.
 *
 * @remarks
 * Q = C A √(2 p / ρ) from a pitot pressure, and Q = C A √(2 p / ρ) / √(1 − C² β⁴) from the pressure in the pipe behind,
 * β = d / D
 *
 * with C `dischargeCoefficient`, A the area of the tip, p `pressure`, d `diameter`, D `pipeDiameter`.
 *
 * @param input - nozzle and pressure; each field says its unit and the values it takes
 * @returns the flow, m³/s
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example A smooth-bore tip of 3/4 in at 50 psi
 * ```ts
 * import { nozzleFlow } from "risingmain/fittings";
 * import { inches, inGpm, poundsPerCubicFoot, psi } from "risingmain/units";
 *
 * inGpm(nozzleFlow({
 *   diameter: inches(0.75), pressure: psi(50), dischargeCoefficient: 0.995, density: poundsPerCubicFoot(62.35),
 * })); // ≈ 118
 * ```
 *
 * @source nfpa-291: the coefficients
 * @source derived: energy of a jet
 */
export function nozzleFlow(input: NozzleFlowInput): VolumeFlow {
  requireObject("input", input);
  const { diameter, pressure, dischargeCoefficient, density, pipeDiameter } = input;
  requireWithin("diameter", diameter, 1e-4, 1, "m");
  requireWithin("pressure", pressure, 0, 1e8, "Pa");
  requireWithin("dischargeCoefficient", dischargeCoefficient, 0.01, 1, "");
  requireWithin("density", density, 500, 2000, "kg/m³");
  const free = dischargeCoefficient * (Math.PI / 4) * diameter ** 2 * Math.sqrt((2 * pressure) / density);
  if (pipeDiameter === undefined) return free as VolumeFlow;
  requireWithin("pipeDiameter", pipeDiameter, 1e-4, 10, "m");
  if (!(pipeDiameter >= 1.01 * diameter))
    throw new InputError("pipeDiameter", pipeDiameter, "a bore wider than the tip");
  return (free / Math.sqrt(1 - dischargeCoefficient ** 2 * (diameter / pipeDiameter) ** 4)) as VolumeFlow;
}

/** How the inside edge of a hydrant's outlet is made. */
export type HydrantOutlet = "smooth" | "square" | "projecting";

/**
 * Discharge coefficient of a hydrant outlet by the make of its inside edge: well rounded, square and sharp, or projecting into
 * the barrel.
 *
 * @source nfpa-291, recalled
 */
export const hydrantOutletCoefficients: Readonly<Record<HydrantOutlet, number>> = {
  smooth: 0.9,
  square: 0.8,
  projecting: 0.7,
};
