/**
 * A pressure tank at the pressure of the moment, as a source of a network.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import { type Density, type GaugePressure, InputError, type Length } from "../units/index.ts";
import type { FixedHeadSource } from "./network-parts.ts";

/** A pressure tank and what its gauge reads. */
export interface TankSourceInput {
  /** Name of the source. */
  readonly id: string;
  /** Junction it feeds. */
  readonly junction: string;
  /** Elevation of the gauge, m. −10 000 to 10 000 m. */
  readonly elevation: Length;
  /** Gauge pressure there. 0 to 1e8 Pa; at most 10 000 m of head. */
  readonly pressure: GaugePressure;
  /** Density of the water. 100 to 10 000 kg/m³. */
  readonly density: Density;
}

/**
 * A pressure tank as a source whose head does not move while the picture is taken.
 *
 * @remarks
 * H = z + p/(ρ g). The pressure of a tank moves between cut-in and cut-out: solve at the cut-in for the least an outlet
 * will see, at the cut-out for the most a pipe must stand.
 *
 * @param input - the tank's gauge: elevation (−10 000 to 10 000 m), pressure (0 to 1e8 Pa), density (100 to 10 000 kg/m³)
 * @returns the source, for the `sources` of a network
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { tankSource } from "risingmain/network";
 * import { feet, inFeet, kilogramsPerCubicMetre, psi } from "risingmain/units";
 *
 * const tank = tankSource({
 *   id: "tank", junction: "tank tee", elevation: feet(12), pressure: psi(40), density: kilogramsPerCubicMetre(999.7),
 * });
 * inFeet(tank.head); // ≈ 104.29
 * ```
 *
 * @source derived: pressure head above its elevation
 */
export function tankSource(input: TankSourceInput): FixedHeadSource {
  requireObject("input", input);
  const { id, junction, elevation, pressure, density } = input;
  if (typeof id !== "string") throw new InputError("id", id, "a name");
  if (typeof junction !== "string") throw new InputError("junction", junction, "the id of a junction");
  requireWithin("elevation", elevation, -1e4, 1e4, "m");
  requireWithin("pressure", pressure, 0, 1e8, "Pa gauge");
  requireWithin("density", density, 100, 1e4, "kg/m³");
  const head = elevation + pressure / (density * STANDARD_GRAVITY);
  requireWithin("pressure", pressure, 0, 1e4 * density * STANDARD_GRAVITY, "Pa gauge (10 000 m of head)");
  return { id, junction, kind: "fixed head", head: head as Length };
}
