/**
 * Whether a drop pipe bears the pull on it.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { type Force, InputError, type Length, type Modulus, type Ratio } from "../units/index.ts";

/** A pipe under a pull. */
export interface TensileInput {
  /** Pull in the pipe, from {@link hangingLoad}. 0 to 1e8 N. */
  readonly load: Force;
  /** Inside diameter; the root of the thread where the pipe is threaded takes the place of the outside one. 1e-3 to 1 m. */
  readonly insideDiameter: Length;
  /** Outside diameter of the section that carries. Above the inside one, at most 2 m. */
  readonly outsideDiameter: Length;
  /** Tensile strength of the material, or of the joint where that is less. 1e4 to 1e10 Pa. */
  readonly strength: Modulus;
  /** Strength over the stress allowed. 1 to 100. */
  readonly safetyFactor: number;
}

/** The pull against what the pipe bears. */
export interface TensileCheck {
  /** Whether the stress is allowed. */
  readonly met: boolean;
  /** Stress in the wall, Pa. */
  readonly stress: Modulus;
  /** Stress allowed, Pa. */
  readonly allowed: Modulus;
  /** Stress over the allowed one. */
  readonly share: Ratio;
  /** Greatest pull allowed, N. */
  readonly greatestLoad: Force;
}

/**
 * Whether a drop pipe bears the pull.
 *
 * @remarks
 * σ = F / (π (D² − d²) / 4) against strength / safety factor. Joints, threads and insert fittings are usually weaker
 * than the pipe; plastic under a lasting pull creeps, so take its long-term strength.
 *
 * @param input - load, section, strength and safety factor; each field says its unit and the values it takes
 * @returns the check with its numbers
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { tensileCheck } from "risingmain/well";
 * import { inches, poundsForce, psiModulus } from "risingmain/units";
 *
 * const check = tensileCheck({
 *   load: poundsForce(322), insideDiameter: inches(1.049), outsideDiameter: inches(1.315),
 *   strength: psiModulus(7000), safetyFactor: 5,
 * });
 * check.met; // => true
 * check.share; // ≈ 0.466
 * ```
 *
 * @source derived: force over area
 */
export function tensileCheck(input: TensileInput): TensileCheck {
  requireObject("input", input);
  const { load, strength, safetyFactor } = input;
  requireWithin("load", load, 0, 1e8, "N");
  const area = wallArea(input);
  requireWithin("strength", strength, 1e4, 1e10, "Pa");
  requireWithin("safetyFactor", safetyFactor, 1, 100, "");
  const stress = load / area;
  const allowed = strength / safetyFactor;
  return {
    met: stress <= allowed,
    stress: stress as Modulus,
    allowed: allowed as Modulus,
    share: (stress / allowed) as Ratio,
    greatestLoad: (allowed * area) as Force,
  };
}

/**
 * The section of the wall that carries, m².
 *
 * @internal
 */
export function wallArea({
  insideDiameter,
  outsideDiameter,
}: {
  insideDiameter: Length;
  outsideDiameter: Length;
}): number {
  requireWithin("insideDiameter", insideDiameter, 1e-3, 1, "m");
  requireWithin("outsideDiameter", outsideDiameter, 1e-3, 2, "m");
  const area = (Math.PI / 4) * (outsideDiameter - insideDiameter) * (outsideDiameter + insideDiameter);
  if (!(area > 1e-9))
    throw new InputError("outsideDiameter", outsideDiameter, `more than the inside one, ${insideDiameter} m`);
  return area;
}
