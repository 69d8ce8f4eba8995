/**
 * Air pressure at an elevation: what a gauge reads zero at, and all that a suction lift has to work with.
 *
 * @module
 */
import { requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { AbsolutePressure, Length } from "../units/index.ts";

/** Constants of ISO 2533: pressure, Pa, and temperature, K, at sea level. */
const SEA_LEVEL_PRESSURE = 101325;
const SEA_LEVEL_TEMPERATURE = 288.15;
/** Fall of temperature with height in the lowest layer, K/m. */
const LAPSE = 0.0065;
/** Specific gas constant of dry air, J/(kg·K). */
const AIR_GAS_CONSTANT = 287.05287;
/** Nominal radius of the earth, m, that turns height into geopotential height. */
const EARTH_RADIUS = 6356766;

/** Lowest and highest elevation taken, m: the lowest layer of the standard. */
const LOWEST = -2000;
const HIGHEST = 11000;

/**
 * Air pressure in the standard atmosphere at an elevation above sea level.
 *
 * @remarks
 * p = p₀ (1 − β H / T₀)^(g / (R β)),  H = r z / (r + z)
 *
 * with z the elevation, H the geopotential height, p₀ = 101 325 Pa, T₀ = 288.15 K, β = 0.0065 K/m, R = 287.05287
 * J/(kg·K), r = 6 356 766 m. The standard's lowest layer, −2000 to 11 000 m. Weather moves the true pressure by some 3 %
 * either way.
 *
 * @param elevation - elevation above mean sea level, m; −2000 to 11 000
 * @returns air pressure, Pa absolute
 * @throws {@link units.InputError} where the elevation is not a number in its range
 *
 * @example
 * ```ts
 * import { feet, inPsia } from "risingmain/units";
 * import { atmosphereAt } from "risingmain/water";
 *
 * inPsia(atmosphereAt(feet(4200))); // ≈ 12.60
 * ```
 *
 * @source iso-2533, section 2
 */
export function atmosphereAt(elevation: Length): AbsolutePressure {
  requireWithin("elevation", elevation, LOWEST, HIGHEST, "m");
  const geopotential = (EARTH_RADIUS * elevation) / (EARTH_RADIUS + elevation);
  const temperatureRatio = 1 - (LAPSE * geopotential) / SEA_LEVEL_TEMPERATURE;
  return (SEA_LEVEL_PRESSURE * temperatureRatio ** (STANDARD_GRAVITY / (AIR_GAS_CONSTANT * LAPSE))) as AbsolutePressure;
}
