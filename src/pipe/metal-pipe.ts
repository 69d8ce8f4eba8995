/**
 * Pressure that copper tube and steel pipe may work at.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { GaugePressure, Length, Modulus } from "../units/index.ts";

/** A metal pipe and the stress it may carry. */
export interface MetalPipeInput {
  /** Allowable stress at the temperature of the water. 1e6 to 1e9 Pa. */
  readonly allowableStress: Modulus;
  /** Outside diameter. 0.001 to 10 m. */
  readonly outsideDiameter: Length;
  /** Wall at its thinnest: the nominal wall less the mill's tolerance. Up to a third of the outside diameter, m. */
  readonly wall: Length;
  /** Depth lost to threads and corrosion; 0 when left out. 0 up to the wall, m. */
  readonly lostDepth?: Length;
  /** Strength of the seam or joint over that of the metal; 1 when left out. 0.1 to 1. */
  readonly jointFactor?: number;
}

/** How far the hoop stress is taken off the inside toward the middle of the wall in ductile metal at ordinary temperature. */
const WALL_COEFFICIENT = 0.4;

/**
 * Pressure that copper tube or steel pipe may work at: their dimension standards give none.
 *
 * @remarks
 * P = 2 S E (t − A) / (D − 2 y (t − A)),  y = 0.4
 *
 * with S `allowableStress`, E `jointFactor`, t `wall`, A `lostDepth`, D `outsideDiameter`. Copper joints (solder above all) and
 * threads are weaker than the tube and set the limit of a system; local code has the last word.
 *
 * @param input - stress, dimensions and losses; each field says its unit and the values it takes
 * @returns the working pressure, Pa
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example 1 in type L annealed copper at 6000 psi, wall 0.045 in at its thinnest
 * ```ts
 * import { metalPipeWorkingPressure } from "risingmain/pipe";
 * import { inches, inPsi, psiModulus } from "risingmain/units";
 *
 * inPsi(metalPipeWorkingPressure({
 *   allowableStress: psiModulus(6000), outsideDiameter: inches(1.1265), wall: inches(0.045),
 * })); // ≈ 495
 * ```
 *
 * @source asme-b31-9: the equation of pressure design
 */
export function metalPipeWorkingPressure(input: MetalPipeInput): GaugePressure {
  requireObject("input", input);
  const { allowableStress: S, outsideDiameter: D, wall, lostDepth = 0, jointFactor = 1 } = input;
  requireWithin("allowableStress", S, 1e6, 1e9, "Pa");
  requireWithin("outsideDiameter", D, 1e-3, 10, "m");
  requireWithin("wall", wall, 0, D / 3, "m (a third of the outside diameter)");
  requireWithin("lostDepth", lostDepth, 0, wall, "m (the wall)");
  requireWithin("jointFactor", jointFactor, 0.1, 1, "");
  const t = wall - lostDepth;
  return ((2 * S * jointFactor * t) / (D - 2 * WALL_COEFFICIENT * t)) as GaugePressure;
}
