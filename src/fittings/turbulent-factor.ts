/**
 * Friction factor of fully turbulent flow, where the wall alone decides: the factor that goes with lengths in diameters.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Length } from "../units/index.ts";

/** Roughness of clean commercial steel that handbooks of fittings use, m: 0.0018 in (`crane-410`, recalled). */
const COMMERCIAL_STEEL = 0.0018 * 0.0254;

/** A bore and its wall. */
export interface FullyTurbulentInput {
  /** Inside diameter. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Sand-grain roughness of the wall; clean commercial steel (0.0018 in) when left out. 1e-9 m to half the diameter. */
  readonly roughness?: Length;
}

/**
 * Darcy friction factor of fully turbulent flow, f_T.
 *
 * @remarks
 * 1 / √f_T = 2 log₁₀(3.7 D / ε)
 *
 * with D `insideDiameter`, ε `roughness`: the limit of Colebrook's equation at a high Reynolds number. Handbooks that give
 * fittings as lengths in diameters multiply them by f_T of clean commercial steel, whatever pipe the fitting sits in.
 *
 * @param input - bore and roughness; each field says its unit and the values it takes
 * @returns the factor, about 0.005 to 0.4
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { fullyTurbulentFactor } from "risingmain/fittings";
 * import { inches } from "risingmain/units";
 *
 * fullyTurbulentFactor({ insideDiameter: inches(2.067) }); // ≈ 0.019
 * ```
 *
 * @source colebrook-1939: the limit for a rough wall
 * @source crane-410: its use with fittings
 */
export function fullyTurbulentFactor(input: FullyTurbulentInput): number {
  requireObject("input", input);
  const { insideDiameter } = input;
  requireWithin("insideDiameter", insideDiameter, 1e-4, 100, "m");
  const roughness = input.roughness ?? COMMERCIAL_STEEL;
  requireWithin("roughness", roughness, 1e-9, insideDiameter / 2, "m (at most half the inside diameter)");
  return 1 / (2 * Math.log10((3.7 * insideDiameter) / roughness)) ** 2;
}
