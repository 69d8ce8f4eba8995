/**
 * What this module accepts: wide enough for any water system, narrow enough to catch a slip of units.
 *
 * @module
 */
import { requireWithin } from "../numeric/index.ts";
import { InputError } from "../units/index.ts";

/** Refuses a density outside 1 to 25 000 kg/m³: from thin gas to the heaviest liquid metal. */
export function requireDensity(density: unknown): void {
  requireWithin("density", density, 1, 25000, "kg/m³");
}

/** Refuses a gauge pressure, or a difference, outside ±1e9 Pa (ten thousand bar). */
export function requirePressure(parameter: string, pressure: unknown): void {
  requireWithin(parameter, pressure, -1e9, 1e9, "Pa");
}

/** Refuses a head or an elevation outside ±1 000 km. */
export function requireHead(parameter: string, head: unknown): void {
  requireWithin(parameter, head, -1e6, 1e6, "m");
}

/** Refuses a velocity outside ±1 000 m/s. */
export function requireVelocity(parameter: string, velocity: unknown): void {
  requireWithin(parameter, velocity, -1000, 1000, "m/s");
}

/** Refuses what is not a text of at most 200 characters. */
export function requireName(parameter: string, name: unknown): void {
  if (typeof name !== "string" || name.length > 200) {
    throw new InputError(parameter, name, "a name of at most 200 characters");
  }
}
