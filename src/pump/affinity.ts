/**
 * The affinity laws: what a pump does at another speed, and about what with a trimmed impeller.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Length, Power, Ratio, VolumeFlow } from "../units/index.ts";
import type { PumpCurve } from "./curve.ts";
import { requireCurve } from "./read-curve.ts";
import { scaleCurve } from "./scale-curve.ts";

/** A point of a pump at one speed, and another speed. */
export interface DutyAtSpeedInput {
  /** Flow at the first speed. 0 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Head at the first speed. 0 to 10 000 m. */
  readonly head: Length;
  /** Shaft power at the first speed. 0 to 1e8 W. */
  readonly power: Power;
  /** New speed over the first. 0.01 to 10. */
  readonly speedRatio: Ratio;
}

/** The similar point at the new speed. */
export interface SimilarDuty {
  /** Flow, m³/s. */
  readonly flow: VolumeFlow;
  /** Head, m. */
  readonly head: Length;
  /** Shaft power, W. */
  readonly power: Power;
}

/**
 * The point at another speed that is similar to a point at the first: same angles in the impeller, same efficiency.
 *
 * @remarks
 * Q₂ = Q₁ r, H₂ = H₁ r², P₂ = P₁ r³, with r `speedRatio`. Exact but for the slow change of efficiency with size of
 * the friction inside. The similar point is seldom the new operating point: a system with static head does not follow
 * the same parabola, so take {@link curveAtSpeed} and find where it meets the system.
 *
 * @param input - the point and the ratio of speeds; each field says its unit and the values it takes
 * @returns the similar point
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { dutyAtSpeed } from "risingmain/pump";
 * import { feet, gpm, horsepower, inFeet, inGpm, inHorsepower, ratio } from "risingmain/units";
 *
 * const slow = dutyAtSpeed({
 *   flow: gpm(400), head: feet(126), power: horsepower(17.5), speedRatio: ratio(1700 / 3500),
 * });
 * inGpm(slow.flow); // ≈ 194.29
 * inFeet(slow.head); // ≈ 29.73
 * inHorsepower(slow.power); // ≈ 2.005
 * ```
 *
 * @source derived: similarity of flow in one machine at two speeds
 */
export function dutyAtSpeed(input: DutyAtSpeedInput): SimilarDuty {
  requireObject("input", input);
  const { flow, head, power, speedRatio: r } = input;
  requireWithin("flow", flow, 0, 100, "m³/s");
  requireWithin("head", head, 0, 10_000, "m");
  requireWithin("power", power, 0, 1e8, "W");
  requireWithin("speedRatio", r, 0.01, 10, "");
  return { flow: (flow * r) as VolumeFlow, head: (head * r * r) as Length, power: (power * r * r * r) as Power };
}

/**
 * The curve of the same pump at another speed.
 *
 * @remarks
 * Each point moves to its similar point: flow by r, head and required NPSH by r², power by r³; efficiency goes along.
 * Exact for head and flow; efficiency falls somewhat below half speed, which the laws do not know.
 *
 * @param curve - the pump at its first speed, from {@link pumpCurve}
 * @param speedRatio - new speed over the first, 0.05 to 2
 * @returns the curve at the new speed
 * @throws {@link units.InputError} where the curve is not one or the ratio is out of its range
 *
 * @example
 * ```ts
 * import { curveAtSpeed, pumpCurve } from "risingmain/pump";
 * import { feet, gpm, inFeet, ratio } from "risingmain/units";
 *
 * const curve = pumpCurve({ points: [{ flow: gpm(0), head: feet(25) }, { flow: gpm(300), head: feet(21.9) }] });
 * inFeet(curveAtSpeed(curve, ratio(1750 / 1170)).shutoffHead); // ≈ 55.9
 * ```
 *
 * @source derived: similarity of flow in one machine at two speeds
 */
export function curveAtSpeed(curve: PumpCurve, speedRatio: Ratio): PumpCurve {
  requireCurve(curve);
  requireWithin("speedRatio", speedRatio, 0.05, 2, "");
  return scaleCurve(curve, atSpeed(speedRatio));
}

/** A curve with a trimmed impeller. */
export interface TrimmedCurve {
  /** The curve after trimming. */
  readonly curve: PumpCurve;
  /** False for a trim below 0.8 of the full diameter, where the rule is not relied on. */
  readonly insideRange: boolean;
  /** The rule used. */
  readonly method: "trim by diameter, common practice";
}

/** Smallest trim usually made and trusted, of the full diameter; common practice (75 to 80 %). */
const SMALLEST_TRIM = 0.8;

/**
 * About the curve of a pump after its impeller is turned down.
 *
 * @remarks
 * Flow by the ratio of diameters, head and required NPSH by its square, power by its cube. Unlike a change of speed a
 * trim is not similar: vane angles and clearances change, efficiency falls a point or two for each tenth trimmed, and
 * the true head is often lower than the rule says, so trim in two steps and test between. Common practice goes no
 * lower than 75 to 80 % of the full diameter.
 *
 * @param curve - the pump with its full impeller, from {@link pumpCurve}
 * @param diameterRatio - trimmed diameter over full diameter, 0.6 to 1
 * @returns the curve, and whether the trim lies where the rule is relied on
 * @throws {@link units.InputError} where the curve is not one or the ratio is out of its range
 *
 * @example
 * ```ts
 * import { curveTrimmed, pumpCurve } from "risingmain/pump";
 * import { feet, gpm, inFeet, ratio } from "risingmain/units";
 *
 * const full = pumpCurve({ points: [{ flow: gpm(0), head: feet(120) }, { flow: gpm(200), head: feet(90) }] });
 * inFeet(curveTrimmed(full, ratio(0.9)).curve.shutoffHead); // ≈ 97.2
 * ```
 *
 * @source common practice
 */
export function curveTrimmed(curve: PumpCurve, diameterRatio: Ratio): TrimmedCurve {
  requireCurve(curve);
  requireWithin("diameterRatio", diameterRatio, 0.6, 1, "");
  return {
    curve: scaleCurve(curve, atSpeed(diameterRatio)),
    insideRange: diameterRatio >= SMALLEST_TRIM,
    method: "trim by diameter, common practice",
  };
}

function atSpeed(r: number): { flow: number; head: number; power: number; npsh: number } {
  return { flow: r, head: r * r, power: r * r * r, npsh: r * r };
}
