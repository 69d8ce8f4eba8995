/**
 * First estimates for a pump that stops: the fall and rise of pressure at its check valve, and the slam of a late one.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, Duration, Length, PressureDifference, Velocity } from "../units/index.ts";
import type { Surge } from "./joukowsky.ts";

/** A rising main whose pump stops at once. Heads are above the check valve, in head of water. */
export interface PumpStopInput {
  /** Velocity in the main while the pump runs. 0 to 1000 m/s. */
  readonly velocity: Velocity;
  /** Speed of a pressure wave. 1 to 10 000 m/s. */
  readonly waveSpeed: Velocity;
  /** Height of the water, or of the tank pressure's head, at the far end above the check valve. ±1 000 000 m. */
  readonly staticHead: Length;
  /** Friction in the main while the pump runs. 0 to 1 000 000 m. */
  readonly frictionHead: Length;
  /** Gauge head at which the water boils: (p_vapour − p_air) / (ρ g), about −10 m cold at sea level. −100 to 0 m. */
  readonly vapourHead: Length;
}

/** The swing of head at the check valve. */
export interface PumpStopSurge {
  /** Whether the column holds together at the valve, or parts: then the rise is not bounded by this estimate. */
  readonly state: "column holds" | "column separates";
  /** Head while the pump runs, m. */
  readonly runningHead: Length;
  /** Lowest head after the stop, m; the vapour head where the column parts. */
  readonly lowestHead: Length;
  /** Highest head after the wave is back, m: an upper bound while the column holds. */
  readonly highestHead: Length;
  /** Joukowsky head of the velocity, m. */
  readonly surgeHead: Length;
}

/** A check valve that shuts only after the water has turned. */
export interface CheckValveSlamInput {
  /** Height of the far end's water above the source that the column falls back to. 0 to 1 000 000 m. */
  readonly staticHead: Length;
  /** Length of the column. 1e-3 to 1 000 000 m. */
  readonly length: Length;
  /** Time the valve stays open after the flow has reversed. 0 to 1000 s. */
  readonly closingDelay: Duration;
  /** Speed of a pressure wave. 1 to 10 000 m/s. */
  readonly waveSpeed: Velocity;
  /** Density of the water. 1 to 25 000 kg/m³. */
  readonly density: Density;
}

/** The slam of a late check valve. */
export interface CheckValveSlam extends Surge {
  /** Speed of the water backwards when the valve shuts, m/s: an upper bound, friction left out. */
  readonly reverseVelocity: Velocity;
}

/**
 * How far the head at a pump's check valve falls and rises when the pump stops at once.
 *
 * @remarks
 * lowest = static + friction − a V/g, not below the vapour head; highest = static + a V/g
 *
 * with a `waveSpeed`, V `velocity`. A small well pump has so little inertia that it stops well within 2 L/a of a long
 * line, and its check valve shuts with the flow. Where the estimate reaches the vapour head the column parts, and its
 * rejoining can exceed the bound: run `simulateSurge`, and have the line looked at by someone who does such lines.
 *
 * @param input - velocity, wave speed and heads
 * @returns the lowest and the highest head at the check valve, and whether the column holds
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { pumpStopSurge } from "risingmain/surge";
 * import { inMetres, metres, metresPerSecond } from "risingmain/units";
 *
 * const surge = pumpStopSurge({
 *   velocity: metresPerSecond(1), waveSpeed: metresPerSecond(330), staticHead: metres(80),
 *   frictionHead: metres(6), vapourHead: metres(-10),
 * });
 * inMetres(surge.lowestHead); // ≈ 52.35
 * inMetres(surge.highestHead); // ≈ 113.65
 * ```
 *
 * @source joukowsky-1898
 * @source derived: reflection at an open and at a closed end, friction left out of the return
 */
export function pumpStopSurge(input: PumpStopInput): PumpStopSurge {
  requireObject("input", input);
  const { velocity, waveSpeed, staticHead, frictionHead, vapourHead } = input;
  requireWithin("velocity", velocity, 0, 1000, "m/s");
  requireWithin("waveSpeed", waveSpeed, 1, 10000, "m/s");
  requireWithin("staticHead", staticHead, -1e6, 1e6, "m");
  requireWithin("frictionHead", frictionHead, 0, 1e6, "m");
  requireWithin("vapourHead", vapourHead, -100, 0, "m");
  const surgeHead = (waveSpeed * velocity) / STANDARD_GRAVITY;
  const runningHead = staticHead + frictionHead;
  const fall = runningHead - surgeHead;
  return {
    state: fall > vapourHead ? "column holds" : "column separates",
    runningHead: runningHead as Length,
    lowestHead: Math.max(fall, vapourHead) as Length,
    highestHead: Math.max(runningHead, staticHead + surgeHead) as Length,
    surgeHead: surgeHead as Length,
  };
}

/**
 * The slam of a check valve that shuts only some time after the water has begun to run back.
 *
 * @remarks
 * V = g H t / L;  Δp = ρ a V
 *
 * with H `staticHead`, t `closingDelay`, L `length`: the column falls back freely, as a rigid one, until the valve stops
 * it at once. Friction, and a velocity that levels off, make the true slam smaller. Short columns under a high head slam
 * worst; a spring-loaded valve near the pump, which shuts as the flow stops, does not.
 *
 * @param input - head, length, delay, wave speed and density
 * @returns the reverse velocity and the surge it makes
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A swing check a fifth of a second late
 * ```ts
 * import { checkValveSlam } from "risingmain/surge";
 * import { inMetresPerSecond, inPsiDifference, kilogramsPerCubicMetre } from "risingmain/units";
 * import { metres, metresPerSecond, seconds } from "risingmain/units";
 *
 * const slam = checkValveSlam({
 *   staticHead: metres(60), length: metres(120), closingDelay: seconds(0.2), waveSpeed: metresPerSecond(330),
 *   density: kilogramsPerCubicMetre(999.7),
 * });
 * inMetresPerSecond(slam.reverseVelocity); // ≈ 0.981
 * inPsiDifference(slam.pressure); // ≈ 46.92
 * ```
 *
 * @source derived: free fall of a rigid column, then Joukowsky's equation
 */
export function checkValveSlam(input: CheckValveSlamInput): CheckValveSlam {
  requireObject("input", input);
  const { staticHead, length, closingDelay, waveSpeed, density } = input;
  requireWithin("staticHead", staticHead, 0, 1e6, "m");
  requireWithin("length", length, 1e-3, 1e6, "m");
  requireWithin("closingDelay", closingDelay, 0, 1000, "s");
  requireWithin("waveSpeed", waveSpeed, 1, 10000, "m/s");
  requireWithin("density", density, 1, 25000, "kg/m³");
  const reverseVelocity = (STANDARD_GRAVITY * staticHead * closingDelay) / length;
  return {
    reverseVelocity: reverseVelocity as Velocity,
    pressure: (density * waveSpeed * reverseVelocity) as PressureDifference,
    head: ((waveSpeed * reverseVelocity) / STANDARD_GRAVITY) as Length,
  };
}
