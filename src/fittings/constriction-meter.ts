/**
 * Flow from the pressure difference over a constriction in a pipe: orifice plate, nozzle, venturi.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { type Density, InputError, type Length, type PressureDifference, type VolumeFlow } from "../units/index.ts";

/** A constriction in a pipe and the pressure difference over it. */
export interface ConstrictionFlowInput {
  /** Diameter of the constriction. 0.0001 m to that of the pipe. */
  readonly boreDiameter: Length;
  /** Inside diameter of the pipe. 0.0001 to 10 m. */
  readonly pipeDiameter: Length;
  /** Pressure before it less that at its throat. 0 to 1e9 Pa. */
  readonly pressureDifference: PressureDifference;
  /** Density of the liquid. 100 to 20 000 kg/m³. */
  readonly density: Density;
  /** Discharge coefficient: about 0.6 for an orifice plate, 0.98 for a venturi. 0.01 to 1. */
  readonly dischargeCoefficient: number;
}

/**
 * Flow from the pressure difference over a constriction.
 *
 * @remarks
 * Q = C A √(2 ΔP / ρ) / √(1 − β⁴),  β = d / D
 *
 * with C `dischargeCoefficient`, A the area of the constriction of `boreDiameter` d, D `pipeDiameter`. Where a source gives a
 * flow coefficient instead, C / √(1 − β⁴) in one, use `orificeFlow` with the difference as a head.
 *
 * @param input - the constriction and the difference; each field says its unit and the values it takes
 * @returns the flow, m³/s
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { constrictionFlow } from "risingmain/fittings";
 * import { inLitresPerMinute, kilogramsPerCubicMetre, kilopascalsDifference, millimetres } from "risingmain/units";
 *
 * inLitresPerMinute(constrictionFlow({
 *   boreDiameter: millimetres(50), pipeDiameter: millimetres(73.66), pressureDifference: kilopascalsDifference(17),
 *   density: kilogramsPerCubicMetre(999.1), dischargeCoefficient: 0.6153,
 * })); // ≈ 476
 * ```
 *
 * @source derived: continuity and energy over the constriction
 */
export function constrictionFlow(input: ConstrictionFlowInput): VolumeFlow {
  requireObject("input", input);
  const { boreDiameter: d, pipeDiameter: D, pressureDifference, density, dischargeCoefficient } = input;
  requireWithin("pipeDiameter", D, 1e-4, 10, "m");
  requireWithin("boreDiameter", d, 1e-4, D, "m (the pipe's diameter)");
  // At the pipe's own diameter nothing is constricted and any flow has no difference.
  if (d > 0.99 * D) throw new InputError("boreDiameter", d, "at most 0.99 of the pipe's diameter");
  requireWithin("pressureDifference", pressureDifference, 0, 1e9, "Pa");
  requireWithin("density", density, 100, 2e4, "kg/m³");
  requireWithin("dischargeCoefficient", dischargeCoefficient, 0.01, 1, "");
  const area = (Math.PI / 4) * d * d;
  const approach = Math.sqrt(1 - (d / D) ** 4);
  return ((dischargeCoefficient * area * Math.sqrt((2 * pressureDifference) / density)) / approach) as VolumeFlow;
}
