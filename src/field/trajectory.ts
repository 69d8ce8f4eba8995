/**
 * Flow from the throw of a full horizontal pipe: a rule, a level and the fall of the jet.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Length, VolumeFlow } from "../units/index.ts";
import { type Carried, carried, type TrialOptions } from "./carried.ts";
import { RULE } from "./usual-doubts.ts";

/** A level pipe that runs full. */
export interface TrajectoryInput extends TrialOptions {
  /** Inside diameter of the pipe. 0.005 to 5 m. */
  readonly insideDiameter: Length;
  /** Distance along the pipe's line from its end to where the drop is measured. 0.001 to 100 m. */
  readonly throw: Length;
  /** Drop of the jet there, from the pipe's top inside to the top of the jet (or centre to centre). 0.001 to 100 m. */
  readonly drop: Length;
  /** Standard uncertainty of throw and drop. 0 to 1 m; 6 mm (a quarter inch) where left out (common practice). */
  readonly lengthUncertainty?: Length;
  /** Standard uncertainty of the inside diameter. 0 to 1 m; 0 where left out. */
  readonly diameterUncertainty?: Length;
}

/** The flow; its uncertainty is that of the lengths, and the method itself is good to some 5 % besides. */
export interface Trajectory extends Carried<VolumeFlow> {
  /** Flow, m³/s. */
  readonly flow: VolumeFlow;
  /** Source of the method's use. */
  readonly method: "hohn-discharge";
  /** False outside the published tables: 2 to 4 in pipes, throws of 12 to 24 in. */
  readonly insideRange: boolean;
}

const INCH = 0.0254;

/**
 * The flow of a full horizontal pipe from the throw of its jet.
 *
 * @remarks
 * Q = A x √(g/(2 y)) with A the bore's area, x `throw`, y `drop`: free fall, no air drag. In inches at a drop of 13 in it
 * is gpm = area × throw; the popular same rule at a drop of 12 in reads 4 % low. The pipe must be level, run full, and be straight for
 * six diameters. Measure from the top of the bore to the top of the jet, or centre to centre, not mixed.
 *
 * @param input - bore, throw and drop; each field says its unit and range
 * @returns the flow and its uncertainty
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example A 6 in pipe that throws 24 in while it drops 12 in
 * ```ts
 * import { trajectoryFlow } from "risingmain/field";
 * import { inches, inGpm } from "risingmain/units";
 *
 * inGpm(trajectoryFlow({ insideDiameter: inches(6), throw: inches(24), drop: inches(12) }).flow); // ≈ 707
 * ```
 *
 * @source hohn-discharge, table 1
 * @source derived: free fall of a jet
 * @source jcgm-100, 5.1.2
 */
export function trajectoryFlow(input: TrajectoryInput): Trajectory {
  requireObject("input", input);
  const { insideDiameter: d, throw: x, drop: y, lengthUncertainty = RULE, diameterUncertainty = 0 } = input;
  requireWithin("insideDiameter", d, 0.005, 5, "m");
  requireWithin("throw", x, 0.001, 100, "m");
  requireWithin("drop", y, 0.001, 100, "m");
  requireWithin("lengthUncertainty", lengthUncertainty, 0, 1, "m");
  requireWithin("diameterUncertainty", diameterUncertainty, 0, 1, "m");
  const flow = (bore: number, reach: number, fall: number): number =>
    (Math.PI / 4) * bore * bore * reach * Math.sqrt(STANDARD_GRAVITY / (2 * fall));
  return {
    flow: flow(d, x, y) as VolumeFlow,
    ...carried<VolumeFlow>(
      [
        { name: "insideDiameter", value: d, standardUncertainty: diameterUncertainty, low: 0, high: 10 },
        { name: "throw", value: x, standardUncertainty: lengthUncertainty, low: 0, high: 1000 },
        { name: "drop", value: y, standardUncertainty: lengthUncertainty, low: 1e-6, high: 1000 },
      ],
      ([bore = 0, reach = 0, fall = 1]) => flow(bore, reach, fall),
      input,
    ),
    method: "hohn-discharge",
    insideRange: d >= 2 * INCH && d <= 4 * INCH && x >= 12 * INCH && x <= 24 * INCH,
  };
}
