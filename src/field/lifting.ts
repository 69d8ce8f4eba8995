/**
 * What hangs on the hoist while a pump is set or pulled, against its rating.
 *
 * @module
 */
import { requireObject, requirePositive, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Mass, Ratio } from "../units/index.ts";
import { type HangingInput, type HangingLoad, hangingLoad } from "../well/index.ts";
import { liftingCautions } from "./cautions.ts";

/** A pump on its pipe, as for `hangingLoad` of `risingmain/well`, and the hoist. */
export interface LiftingInput extends HangingInput {
  /** Rated load of the weakest part: hoist, mast, clamp or sling. Above 0, to 1 000 000 kg. */
  readonly capacity: Mass;
  /** Capacity over load that is wanted. 1 to 20; 2 where left out (common practice: half the rating for jerks and drag). */
  readonly wantedMargin?: Ratio;
}

/** The load. */
export interface Lifting {
  /** "enough" where the capacity is at least the wanted margin over the load. */
  readonly state: "enough" | "margin too small" | "over capacity";
  /** Whole load as the hoist's plate counts it, kg. */
  readonly load: Mass;
  /** What it is made of, N. */
  readonly hanging: HangingLoad;
  /** Capacity over load; 20 where the load is none or less than a twentieth. */
  readonly margin: Ratio;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

const MARGIN = 2;
const MOST_MARGIN = 20;

/**
 * The load on the hoist with everything hanging, against its rating.
 *
 * @remarks
 * load = the lifting force of `hangingLoad` over standard gravity: pump, pipe, cable and the water in the pipe. The pipe comes up
 * full unless it has a weep hole or the check valve is let go, and that water often weighs more than the pump. Leave the water level
 * out, and no buoyancy is counted on. Sand in the casing and rust hold a pump with a force no formula knows.
 *
 * @param input - pump, pipe, cable, water and hoist; each field says its unit and range
 * @returns load, parts, margin and cautions
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example 300 ft of 1-1/4 in steel pipe, full
 * ```ts
 * import { liftingLoad } from "risingmain/field";
 * import { feet, inches, inPounds, kilogramsPerCubicMetre, pounds, poundsPerFoot } from "risingmain/units";
 *
 * const pulled = liftingLoad({
 *   pumpMass: pounds(60), pumpSetting: feet(300), pipeMass: poundsPerFoot(2.3), cableMass: poundsPerFoot(0.2),
 *   insideDiameter: inches(1.38), outsideDiameter: inches(1.66), density: kilogramsPerCubicMetre(1000), capacity: pounds(2000),
 * });
 * inPounds(pulled.load); // ≈ 1005
 * pulled.state; // => "margin too small"
 * ```
 *
 * @source derived: sum of weights
 * @source common practice: the margin
 */
export function liftingLoad(input: LiftingInput): Lifting {
  requireObject("input", input);
  const { capacity, wantedMargin = MARGIN } = input;
  requirePositive("capacity", capacity, 1e6, "kg");
  requireWithin("wantedMargin", wantedMargin, 1, 20, "");
  const hanging = hangingLoad(input);
  const load = hanging.lifting / STANDARD_GRAVITY;
  const margin = capacity < MOST_MARGIN * load ? capacity / load : MOST_MARGIN;
  return {
    state: margin >= wantedMargin ? "enough" : margin >= 1 ? "margin too small" : "over capacity",
    load: load as Mass,
    hanging,
    margin: margin as Ratio,
    cautions: liftingCautions,
  };
}
