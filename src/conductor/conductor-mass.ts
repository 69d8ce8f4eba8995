/**
 * Mass of the metal in a conductor.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Area, MassPerLength } from "../units/index.ts";
import { CONDUCTOR_MATERIALS, type ConductorMaterial, conductorMetals } from "./material.ts";

/** A conductor by area. */
export interface ConductorMassInput {
  /** Area of metal. 0 to 0.1 m². */
  readonly area: Area;
  /** Metal; copper where left out. */
  readonly material?: ConductorMaterial;
}

/**
 * Mass per length of the metal in one conductor, insulation apart.
 *
 * @remarks
 * Area times density, 8890 kg/m³ for copper and 2703 kg/m³ for aluminium. A stranded conductor weighs about 2 % more.
 * A drop cable's whole mass, with insulation and jacket, is on its reel.
 *
 * @param input - area and metal
 * @returns the mass per length, kg/m
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { conductorGeometry, conductorMass } from "risingmain/conductor";
 * import { inPoundsPerFoot } from "risingmain/units";
 *
 * inPoundsPerFoot(conductorMass({ area: conductorGeometry("12 AWG").area })); // ≈ 0.0198
 * ```
 *
 * @source iec-60028, density of standard annealed copper
 */
export function conductorMass(input: ConductorMassInput): MassPerLength {
  requireObject("input", input);
  const { area, material = "copper" } = input;
  requireWithin("area", area, 0, 0.1, "m²");
  requireOneOf("material", material, CONDUCTOR_MATERIALS);
  return (area * conductorMetals[material].density) as MassPerLength;
}
