/**
 * Sudden changes of bore: widening by momentum, narrowing by the usual half rule.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { InputError, type Length } from "../units/index.ts";

/** A narrow and a wide bore that meet. */
export interface BoreChange {
  /** Inside diameter of the narrow side. 0.0001 to 100 m. */
  readonly smallDiameter: Length;
  /** Inside diameter of the wide side, not under the narrow one. Up to 100 m. */
  readonly largeDiameter: Length;
}

/**
 * Resistance coefficient of a sudden widening, on the velocity head of the narrow side.
 *
 * @remarks
 * K = (1 − β²)²,  β = d / D
 *
 * with d `smallDiameter`, D `largeDiameter`; Borda and Carnot, from the balance of momentum with flat velocity profiles.
 * Into a tank β is 0 and K is 1: the whole velocity head is lost. Within about 10 % in turbulent flow.
 *
 * @param change - the two bores; each field says its unit and the values it takes
 * @returns K on the velocity head of the narrow side, 0 to 1
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { suddenExpansion } from "risingmain/fittings";
 * import { inches } from "risingmain/units";
 *
 * suddenExpansion({ smallDiameter: inches(1), largeDiameter: inches(2) }); // ≈ 0.5625
 * ```
 *
 * @source derived: momentum balance over the widening
 */
export function suddenExpansion(change: BoreChange): number {
  return (1 - areaRatio(change)) ** 2;
}

/**
 * Resistance coefficient of a sudden narrowing, on the velocity head of the narrow side.
 *
 * @remarks
 * K = ½ (1 − β²),  β = d / D
 *
 * with d `smallDiameter`, D `largeDiameter`. Out of a tank β is 0 and K is ½, a sharp-edged entrance. An accepted fit,
 * within about 0.05 of K.
 *
 * @param change - the two bores; each field says its unit and the values it takes
 * @returns K on the velocity head of the narrow side, 0 to 0.5
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { suddenContraction } from "risingmain/fittings";
 * import { inches } from "risingmain/units";
 *
 * suddenContraction({ smallDiameter: inches(1), largeDiameter: inches(2) }); // ≈ 0.375
 * ```
 *
 * @source crane-410, sudden contraction
 */
export function suddenContraction(change: BoreChange): number {
  return 0.5 * (1 - areaRatio(change));
}

/**
 * Resistance coefficient of a narrowing by the coefficient of contraction of its jet, on the velocity head of the narrow side.
 *
 * @remarks
 * K = (1 / C_c − 1)²
 *
 * The jet shrinks to C_c of the narrow bore and loses head as it widens again. C_c is about 0.61 for a sharp edge out of a
 * tank and 1 for a rounded one.
 *
 * @param contractionCoefficient - area of the jet at its narrowest over that of the narrow bore, C_c. 0.1 to 1
 * @returns K on the velocity head of the narrow side, 0 to 81
 * @throws {@link units.InputError} where the coefficient is not a number in its range
 *
 * @example
 * ```ts
 * import { contractionByJet } from "risingmain/fittings";
 *
 * contractionByJet(0.62); // ≈ 0.3757
 * ```
 *
 * @source derived: sudden widening of the contracted jet
 */
export function contractionByJet(contractionCoefficient: number): number {
  requireWithin("contractionCoefficient", contractionCoefficient, 0.1, 1, "");
  return (1 / contractionCoefficient - 1) ** 2;
}

/**
 * The narrow area over the wide one, checked.
 *
 * @internal
 */
export function areaRatio(change: BoreChange): number {
  requireObject("change", change);
  const { smallDiameter, largeDiameter } = change;
  requireWithin("smallDiameter", smallDiameter, 1e-4, 100, "m");
  requireWithin("largeDiameter", largeDiameter, 1e-4, 100, "m");
  if (smallDiameter > largeDiameter) {
    throw new InputError("smallDiameter", smallDiameter, `at most the large diameter, ${largeDiameter} m`);
  }
  return (smallDiameter / largeDiameter) ** 2;
}
