/**
 * All the properties of water that the library uses, at one temperature.
 *
 * @module
 */
import { requireObject } from "../numeric/index.ts";
import type {
  AbsolutePressure,
  Density,
  DynamicViscosity,
  KinematicViscosity,
  Modulus,
  Temperature,
  Velocity,
} from "../units/index.ts";
import { waterDensity } from "./density.ts";
import { waterDynamicViscosity } from "./dynamic-viscosity.ts";
import { waterKinematicViscosity } from "./kinematic-viscosity.ts";
import { waterBulkModulus, waterSpeedOfSound } from "./speed-of-sound.ts";
import { isOrdinaryLiquid } from "./temperature-range.ts";
import { waterVapourPressure } from "./vapour-pressure.ts";

/** What water is asked about. */
export interface WaterInput {
  /** Water temperature, K. 253.15 to 383.15. */
  readonly temperature: Temperature;
}

/** Properties of pure liquid water at 0.1 MPa. */
export interface Water {
  /** The temperature asked for, K. 253.15 to 383.15. */
  readonly temperature: Temperature;
  /** Density, kg/m³. 950 to 1000. */
  readonly density: Density;
  /** Dynamic viscosity, Pa·s. 0.25e-3 to 4.3e-3. */
  readonly dynamicViscosity: DynamicViscosity;
  /** Kinematic viscosity, m²/s. 0.26e-6 to 4.4e-6. */
  readonly kinematicViscosity: KinematicViscosity;
  /** Vapour pressure, Pa absolute. 125 to 144 000. */
  readonly vapourPressure: AbsolutePressure;
  /** Speed of sound without bubbles, m/s. 1274 to 1556. */
  readonly speedOfSound: Velocity;
  /** Adiabatic bulk modulus, Pa. 1.6e9 to 2.4e9. */
  readonly bulkModulus: Modulus;
  /** True from 0 to 100 °C; outside, the water is undercooled or superheated and would rather be ice or steam. */
  readonly insideRange: boolean;
}

/**
 * Properties of pure liquid water at 0.1 MPa: density, viscosities, vapour pressure, speed of sound, stiffness.
 *
 * @remarks
 * One call to each of `waterDensity`, `waterDynamicViscosity`, `waterKinematicViscosity`, `waterVapourPressure`,
 * `waterSpeedOfSound` and `waterBulkModulus`, where ranges and accuracies stand. Dissolved salts are left out.
 *
 * @param input - the temperature, K; 253.15 to 383.15
 * @returns the properties, as plain data
 * @throws {@link units.InputError} where the temperature is not a number in its range
 *
 * @example Water from a cool well
 * ```ts
 * import { fahrenheit, inCentistokes } from "risingmain/units";
 * import { waterAt } from "risingmain/water";
 *
 * const water = waterAt({ temperature: fahrenheit(52) });
 * water.density; // ≈ 999.6
 * inCentistokes(water.kinematicViscosity); // ≈ 1.266
 * ```
 *
 * @source iapws-sr6-08
 * @source iapws-sr1-86
 */
export function waterAt(input: WaterInput): Water {
  requireObject("input", input);
  const { temperature } = input;
  return {
    temperature,
    density: waterDensity(temperature),
    dynamicViscosity: waterDynamicViscosity(temperature),
    kinematicViscosity: waterKinematicViscosity(temperature),
    vapourPressure: waterVapourPressure(temperature),
    speedOfSound: waterSpeedOfSound(temperature),
    bulkModulus: waterBulkModulus(temperature),
    insideRange: isOrdinaryLiquid(temperature),
  };
}
