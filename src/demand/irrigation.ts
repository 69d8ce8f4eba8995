/**
 * Water for irrigation: a depth over an area, put on in the hours the pump may run.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Area, Duration, Length, Ratio, Volume, VolumeFlow } from "../units/index.ts";

/** What is watered. */
export interface IrrigationInput {
  /** Area watered. 0 to 1e10 m². */
  readonly area: Area;
  /** Depth of water the ground should get in a day of watering. 0 to 1 m. */
  readonly depth: Length;
  /** Share of the water that reaches the roots: 0.9 for drip, 0.7 for sprinklers in wind (common practice). 0.05 to 1; 1
   * where left out. */
  readonly efficiency?: Ratio;
  /** Hours of watering in that day. 60 s to 24 h; 24 h where left out. */
  readonly time?: Duration;
}

/** Water and flow. */
export interface IrrigationDemand {
  /** Water on that day, m³. */
  readonly volume: Volume;
  /** Flow while watering, m³/s. */
  readonly flow: VolumeFlow;
}

/**
 * The water and the flow that irrigation takes.
 *
 * @remarks
 * V = A d / e,  q = V / t,  with A `area`, d `depth`, e `efficiency`, t `time`. A quarter inch a day over an acre is 4.7 gpm day
 * and night; few wells do that beside a house.
 *
 * @param input - area, depth, efficiency and hours; each field says its unit and range
 * @returns volume and flow
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { irrigationDemand } from "risingmain/demand";
 * import { acres, inches, inGpm } from "risingmain/units";
 *
 * inGpm(irrigationDemand({ area: acres(1), depth: inches(0.25) }).flow); // ≈ 4.71
 * ```
 *
 * @source derived: volume of a layer of water
 */
export function irrigationDemand(input: IrrigationInput): IrrigationDemand {
  requireObject("input", input);
  const { area, depth, efficiency = 1, time = 86_400 } = input;
  requireWithin("area", area, 0, 1e10, "m²");
  requireWithin("depth", depth, 0, 1, "m");
  requireWithin("efficiency", efficiency, 0.05, 1, "(0.7 for 70 percent)");
  requireWithin("time", time, 60, 86_400, "s");
  const volume = (area * depth) / efficiency;
  return { volume: volume as Volume, flow: (volume / time) as VolumeFlow };
}
