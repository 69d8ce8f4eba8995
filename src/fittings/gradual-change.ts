/**
 * Tapered changes of bore, and valves whose port is narrower than the pipe.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Length } from "../units/index.ts";
import { areaRatio } from "./bore-change.ts";

/** A tapered change between two bores. */
export interface TaperedChange {
  /** Inside diameter of the narrow side. 0.0001 to 100 m. */
  readonly smallDiameter: Length;
  /** Inside diameter of the wide side, not under the narrow one. Up to 100 m. */
  readonly largeDiameter: Length;
  /** Whole angle between the walls of the taper, radians: 0 is parallel, π is a sudden change. 0 to π. */
  readonly angle: number;
}

/** Up to this angle the rule is linear in the sine of the half angle, rad: 45°. */
const SHALLOW = Math.PI / 4;

/**
 * Resistance coefficient of a tapered widening, on the velocity head of the narrow side.
 *
 * @remarks
 * K = 2.6 sin(θ/2) (1 − β²)² up to 45°, and (1 − β²)² from there to 180°;  β = d / D
 *
 * with d `smallDiameter`, D `largeDiameter`, θ `angle`. Wall friction of a long taper is not in it.
 *
 * @param change - the two bores and the angle; each field says its unit and the values it takes
 * @returns K on the velocity head of the narrow side, 0 to 1
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { gradualExpansion } from "risingmain/fittings";
 * import { inches } from "risingmain/units";
 *
 * gradualExpansion({ smallDiameter: inches(1), largeDiameter: inches(2), angle: Math.PI / 9 }); // ≈ 0.254
 * ```
 *
 * @source crane-410
 */
export function gradualExpansion(change: TaperedChange): number {
  const { ratio, angle } = taper(change);
  const sudden = (1 - ratio) ** 2;
  return angle <= SHALLOW ? 2.6 * Math.sin(angle / 2) * sudden : sudden;
}

/**
 * Resistance coefficient of a tapered narrowing, on the velocity head of the narrow side.
 *
 * @remarks
 * K = 0.8 sin(θ/2) (1 − β²) up to 45°, and ½ (1 − β²) √sin(θ/2) from there to 180°;  β = d / D
 *
 * with d `smallDiameter`, D `largeDiameter`, θ `angle`. The two laws meet at 45° within 1 %.
 *
 * @param change - the two bores and the angle; each field says its unit and the values it takes
 * @returns K on the velocity head of the narrow side, 0 to 0.5
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { gradualContraction } from "risingmain/fittings";
 * import { inches } from "risingmain/units";
 *
 * gradualContraction({ smallDiameter: inches(1), largeDiameter: inches(2), angle: Math.PI }); // ≈ 0.375
 * ```
 *
 * @source crane-410
 */
export function gradualContraction(change: TaperedChange): number {
  const { ratio, angle } = taper(change);
  const sine = Math.sin(angle / 2);
  return angle <= SHALLOW ? 0.8 * sine * (1 - ratio) : 0.5 * (1 - ratio) * Math.sqrt(sine);
}

/** A valve with a narrow port between tapers. */
export interface ReducedPortInput extends TaperedChange {
  /** Resistance coefficient of the valve itself, on the velocity head in its port. 0 to 1e6. */
  readonly portCoefficient: number;
}

/**
 * Resistance coefficient of a gate, ball or plug valve whose port is narrower than the pipe.
 *
 * @remarks
 * K = [K₁ + sin(θ/2) (0.8 (1 − β²) + 2.6 (1 − β²)²)] / β⁴ up to 45°, and
 * K = [K₁ + ½ (1 − β²) √sin(θ/2) + (1 − β²)²] / β⁴ above;  β = d / D
 *
 * with K₁ `portCoefficient`, d `smallDiameter` (the port), D `largeDiameter` (the pipe), θ `angle`. The narrowing and the
 * widening are added to the valve, and all is carried to the velocity head in the pipe.
 *
 * @param input - the port, the pipe, the angle and the valve; each field says its unit and the values it takes
 * @returns K on the velocity head in the pipe
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { reducedPortCoefficient } from "risingmain/fittings";
 * import { millimetres } from "risingmain/units";
 *
 * reducedPortCoefficient({
 *   portCoefficient: 0.045, smallDiameter: millimetres(60), largeDiameter: millimetres(77.9), angle: Math.PI,
 * }); // ≈ 1.176
 * ```
 *
 * @source crane-410
 */
export function reducedPortCoefficient(input: ReducedPortInput): number {
  const { ratio } = taper(input);
  requireWithin("portCoefficient", input.portCoefficient, 0, 1e6, "");
  return (input.portCoefficient + gradualContraction(input) + gradualExpansion(input)) / (ratio * ratio);
}

function taper(change: TaperedChange): { readonly ratio: number; readonly angle: number } {
  requireObject("change", change);
  requireWithin("angle", change.angle, 0, Math.PI, "rad");
  return { ratio: areaRatio(change), angle: change.angle };
}
