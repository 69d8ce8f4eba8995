/**
 * The pressure made by a sudden change of velocity: Joukowsky's equation.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, Length, PressureDifference, Velocity } from "../units/index.ts";

/** A sudden change of velocity in a pipe. */
export interface JoukowskyInput {
  /** Velocity taken off by whatever stops the water; negative where water is set in motion. −1000 to 1000 m/s. */
  readonly velocityChange: Velocity;
  /** Speed of a pressure wave in the pipe. 1 to 10 000 m/s. */
  readonly waveSpeed: Velocity;
  /** Density of the liquid. 1 to 25 000 kg/m³. */
  readonly density: Density;
}

/** A surge as pressure and as head. */
export interface Surge {
  /** Rise of pressure on the upstream side of what stops the water; as much falls on its downstream side, Pa. */
  readonly pressure: PressureDifference;
  /** The same as head of the liquid, m. */
  readonly head: Length;
}

/**
 * The pressure surge of a sudden change of velocity.
 *
 * @remarks
 * Δp = ρ a ΔV;  ΔH = a ΔV / g
 *
 * with ρ `density`, a `waveSpeed`, ΔV `velocityChange`. Holds for a change done within the critical time 2 L/a, before
 * the first echo is back; friction adds the line's loss to it in a long line (line packing). About 1 psi for each
 * 0.02 ft/s in steel, 0.07 ft/s in PVC.
 * Caution: a surge adds to the working pressure; see `surgeAllowance`.
 *
 * @param input - velocity change, wave speed, density
 * @returns the surge as pressure and head, of the sign of the velocity change
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A float valve that snaps shut on 5 ft/s in PVC
 * ```ts
 * import { joukowsky } from "risingmain/surge";
 * import { feetPerSecond, inPsiDifference, kilogramsPerCubicMetre } from "risingmain/units";
 *
 * const surge = joukowsky({
 *   velocityChange: feetPerSecond(5), waveSpeed: feetPerSecond(1069), density: kilogramsPerCubicMetre(999.7),
 * });
 * inPsiDifference(surge.pressure); // ≈ 72.00
 * ```
 *
 * @source joukowsky-1898
 */
export function joukowsky(input: JoukowskyInput): Surge {
  requireObject("input", input);
  const { velocityChange, waveSpeed, density } = input;
  requireWithin("velocityChange", velocityChange, -1000, 1000, "m/s");
  requireWithin("waveSpeed", waveSpeed, 1, 10000, "m/s");
  requireWithin("density", density, 1, 25000, "kg/m³");
  return {
    pressure: (density * waveSpeed * velocityChange) as PressureDifference,
    head: ((waveSpeed * velocityChange) / STANDARD_GRAVITY) as Length,
  };
}
