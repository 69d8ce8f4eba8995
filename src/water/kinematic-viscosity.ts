/**
 * Kinematic viscosity of liquid water: what the Reynolds number wants.
 *
 * @module
 */
import type { KinematicViscosity, Temperature } from "../units/index.ts";
import { waterDensity } from "./density.ts";
import { waterDynamicViscosity } from "./dynamic-viscosity.ts";

/**
 * Kinematic viscosity of pure liquid water at 0.1 MPa.
 *
 * @remarks
 * ν = µ / ρ, with µ `waterDynamicViscosity` and ρ `waterDensity`; as accurate as the viscosity, 1 %.
 *
 * @param temperature - water temperature, K; 253.15 to 383.15
 * @returns kinematic viscosity, m²/s
 * @throws {@link units.InputError} where the temperature is not a number in its range
 *
 * @example
 * ```ts
 * import { celsius, inSquareMillimetresPerSecond } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * inSquareMillimetresPerSecond(waterKinematicViscosity(celsius(10))); // ≈ 1.306
 * ```
 *
 * @source derived: the definition, from iapws-sr6-08, equations 2 and 7
 */
export function waterKinematicViscosity(temperature: Temperature): KinematicViscosity {
  return (waterDynamicViscosity(temperature) / waterDensity(temperature)) as KinematicViscosity;
}
