/**
 * Velocity head: the height that the motion of the water would carry it to, V² / (2 g).
 *
 * @module
 */
import { requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Length, Velocity } from "../units/index.ts";
import { requireVelocity } from "./ranges.ts";

/**
 * The velocity head of moving water.
 *
 * @remarks
 * h = V² / (2 g)
 *
 * with V the mean velocity and g standard gravity. The mean velocity understates the kinetic energy of a profile that
 * is not flat, by some 5 % in turbulent and 100 % in laminar pipe flow (`bernoulli` takes the factor).
 *
 * @param velocity - mean velocity; its sign does not matter. −1000 to 1000 m/s
 * @returns the velocity head, m; 0 or more
 * @throws {@link units.InputError} where the velocity is not a number in its range
 *
 * @example At 5 ft/s it is less than half a foot: left out of most small systems
 * ```ts
 * import { velocityHead } from "risingmain/head";
 * import { feetPerSecond, inFeet } from "risingmain/units";
 *
 * inFeet(velocityHead(feetPerSecond(5))); // ≈ 0.3885
 * ```
 *
 * @source derived: kinetic energy per weight
 */
export function velocityHead(velocity: Velocity): Length {
  requireVelocity("velocity", velocity);
  return ((velocity * velocity) / (2 * STANDARD_GRAVITY)) as Length;
}

/**
 * The velocity that a head gives when nothing is lost: the free jet, V = √(2 g h); undoes {@link velocityHead}.
 *
 * @remarks
 * V = √(2 g h), Torricelli's law; a real jet is slower by its velocity coefficient, and narrower.
 *
 * @param head - the head turned into motion. 0 to 50 000 m
 * @returns the velocity, m/s
 * @throws {@link units.InputError} where the head is not a number in its range
 *
 * @example
 * ```ts
 * import { velocityOfHead } from "risingmain/head";
 * import { inMetresPerSecond, metres } from "risingmain/units";
 *
 * inMetresPerSecond(velocityOfHead(metres(5))); // ≈ 9.903
 * ```
 *
 * @source derived: kinetic energy per weight
 */
export function velocityOfHead(head: Length): Velocity {
  // 50 000 m answers to 990 m/s: inside what velocityHead takes back.
  requireWithin("head", head, 0, 5e4, "m");
  return Math.sqrt(2 * STANDARD_GRAVITY * head) as Velocity;
}
