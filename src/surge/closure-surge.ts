/**
 * The surge of a valve that takes time to close: sudden within the critical time 2 L/a, weaker in proportion beyond it.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, Duration, Length, PressureDifference, Velocity } from "../units/index.ts";
import type { Surge } from "./joukowsky.ts";

/** A line and the valve at its end. */
export interface ClosureSurgeInput {
  /** Length from the valve back to the tank or main that holds its pressure. 1e-3 to 1 000 000 m. */
  readonly length: Length;
  /** Speed of a pressure wave in the line. 1 to 10 000 m/s. */
  readonly waveSpeed: Velocity;
  /** Velocity the valve takes off. 0 to 1000 m/s. */
  readonly velocityChange: Velocity;
  /** Time in which it does so, evenly. 0 to 1e6 s. */
  readonly closureTime: Duration;
  /** Density of the liquid. 1 to 25 000 kg/m³. */
  readonly density: Density;
}

/** A surge, and what kind of closure made it. */
export interface ClosureSurge extends Surge {
  /** Time for a wave to run to the tank and back, 2 L/a, s. */
  readonly criticalTime: Duration;
  /** Whether the valve is shut before the first echo is back. */
  readonly closure: "rapid" | "slow";
  /** Length of line, from the valve back, that feels the whole surge, m; 0 for a slow closure. */
  readonly fullSurgeLength: Length;
  /** The equation used. */
  readonly method: "joukowsky-1898" | "michaud-1878";
}

/** A column of water stopped as a whole. */
export interface RigidColumnInput {
  /** Length of the column. 0 to 1 000 000 m. */
  readonly length: Length;
  /** Velocity taken off. −1000 to 1000 m/s. */
  readonly velocityChange: Velocity;
  /** Time in which it is, evenly. 1e-6 to 1e6 s. */
  readonly time: Duration;
  /** Density of the liquid. 1 to 25 000 kg/m³. */
  readonly density: Density;
}

/**
 * The time within which a closure counts as sudden: for a wave to run to the tank and back.
 *
 * @remarks
 * T = 2 L / a
 *
 * @param length - from the valve to the tank or main. 0 to 1 000 000 m
 * @param waveSpeed - speed of a pressure wave. 1 to 10 000 m/s
 * @returns the critical time, s
 * @throws {@link units.InputError} where either is not a number in its range
 *
 * @example
 * ```ts
 * import { criticalTime } from "risingmain/surge";
 * import { feet, feetPerSecond, inSeconds } from "risingmain/units";
 *
 * inSeconds(criticalTime(feet(1300), feetPerSecond(1069))); // ≈ 2.432
 * ```
 *
 * @source derived: time of travel
 */
export function criticalTime(length: Length, waveSpeed: Velocity): Duration {
  requireWithin("length", length, 0, 1e6, "m");
  requireWithin("waveSpeed", waveSpeed, 1, 10000, "m/s");
  return ((2 * length) / waveSpeed) as Duration;
}

/**
 * The surge of a valve that closes in a given time.
 *
 * @remarks
 * T ≤ 2 L/a: Δp = ρ a ΔV (Joukowsky).  T > 2 L/a: Δp = 2 ρ L ΔV / T (Michaud), the first in the ratio (2 L/a)/T.
 *
 * with L `length`, a `waveSpeed`, ΔV `velocityChange`, T `closureTime`, ρ `density`. Michaud's is exact where the flow
 * falls evenly and friction is nil. A valve turned evenly does not stop the flow evenly: most of it goes in the last
 * part of the stroke, so count that part as the closing time, or run `simulateSurge`.
 *
 * @param input - the line, the velocity, the time and the density
 * @returns the surge, the critical time, and how much of the line feels all of it
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A valve shut over three seconds at the end of 300 m
 * ```ts
 * import { closureSurge } from "risingmain/surge";
 * import { inKilopascalsDifference, kilogramsPerCubicMetre, metres, metresPerSecond, seconds } from "risingmain/units";
 *
 * const surge = closureSurge({
 *   length: metres(300), waveSpeed: metresPerSecond(330), velocityChange: metresPerSecond(1.2),
 *   closureTime: seconds(3), density: kilogramsPerCubicMetre(999.7),
 * });
 * surge.closure; // => "slow"
 * inKilopascalsDifference(surge.pressure); // ≈ 239.9
 * ```
 *
 * @source joukowsky-1898
 * @source michaud-1878
 */
export function closureSurge(input: ClosureSurgeInput): ClosureSurge {
  requireObject("input", input);
  const { length: L, waveSpeed: a, velocityChange: dV, closureTime: T, density } = input;
  requireWithin("length", L, 1e-3, 1e6, "m");
  requireWithin("waveSpeed", a, 1, 10000, "m/s");
  requireWithin("velocityChange", dV, 0, 1000, "m/s");
  requireWithin("closureTime", T, 0, 1e6, "s");
  requireWithin("density", density, 1, 25000, "kg/m³");
  const critical = (2 * L) / a;
  const rapid = T <= critical;
  const head = (rapid ? a * dV : (2 * L * dV) / T) / STANDARD_GRAVITY;
  return {
    pressure: (density * STANDARD_GRAVITY * head) as PressureDifference,
    head: head as Length,
    criticalTime: critical as Duration,
    closure: rapid ? "rapid" : "slow",
    // The valve's last wave leaves at T, the relief of its first comes from the tank: they meet at L − a T/2.
    fullSurgeLength: (rapid ? L - (a * T) / 2 : 0) as Length,
    method: rapid ? "joukowsky-1898" : "michaud-1878",
  };
}

/**
 * The pressure that stops a column of water as a whole, as if neither it nor the pipe could be squeezed.
 *
 * @remarks
 * Δp = ρ L ΔV / T, Newton's second law for the column. Half of what Michaud's equation gives: the mean, not the peak, of
 * an even closure; right for changes that take many times 2 L/a, as a tank filling or a pump running down.
 *
 * @param input - the column, the velocity, the time and the density
 * @returns the pressure and head, of the sign of the velocity change
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { rigidColumnSurge } from "risingmain/surge";
 * import { inKilopascalsDifference, kilogramsPerCubicMetre, metres, metresPerSecond, seconds } from "risingmain/units";
 *
 * const surge = rigidColumnSurge({
 *   length: metres(500), velocityChange: metresPerSecond(1.7), time: seconds(1), density: kilogramsPerCubicMetre(1000),
 * });
 * inKilopascalsDifference(surge.pressure); // ≈ 850.0
 * ```
 *
 * @source derived: Newton's second law
 */
export function rigidColumnSurge(input: RigidColumnInput): Surge {
  requireObject("input", input);
  const { length, velocityChange, time, density } = input;
  requireWithin("length", length, 0, 1e6, "m");
  requireWithin("velocityChange", velocityChange, -1000, 1000, "m/s");
  requireWithin("time", time, 1e-6, 1e6, "s");
  requireWithin("density", density, 1, 25000, "kg/m³");
  const acceleration = velocityChange / time;
  return {
    pressure: (density * length * acceleration) as PressureDifference,
    head: ((length * acceleration) / STANDARD_GRAVITY) as Length,
  };
}
