/**
 * Specific speed: the shape of an impeller in one number, and the same for the suction.
 *
 * @module
 */
import { requireObject, requireWhole, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Frequency, Length, VolumeFlow } from "../units/index.ts";

/** A pump at its best point. */
export interface SpecificSpeedInput {
  /** Speed of the shaft; `perMinute` takes r/min. 0.01 to 10 000 Hz. */
  readonly speed: Frequency;
  /** Flow at best efficiency; half of it for an impeller with two inlets. 1e-9 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Head of the whole pump at that flow; or the NPSH it requires, for the suction specific speed. 1e-3 to 10 000 m. */
  readonly head: Length;
  /** Stages that share the head, a whole number from 1 to 500; 1 where left out. */
  readonly stages?: number;
}

/** Specific speed in the three forms in use. */
export interface SpecificSpeed {
  /** Without dimension: ω √Q / (g H)^¾, ω in radians a second. */
  readonly dimensionless: number;
  /** United States form: r/min √(US gpm) / ft^¾. */
  readonly us: number;
  /** Metric form: r/min √(m³/s) / m^¾. */
  readonly metric: number;
}

/** Metres in a foot, and m³/s in a US gallon a minute; exact by definition. */
const FOOT = 0.3048;
const GPM = (231 * 0.0254 ** 3) / 60;

/**
 * Specific speed of a pump, per stage.
 *
 * @remarks
 * n √Q / H^¾ at best efficiency, with H the head of one stage. Low (US 500 to 2000): radial impellers, flat curves,
 * high heads; high: mixed and axial flow. With the required NPSH in place of the head it is the suction specific speed.
 *
 * @param input - speed, flow, head and stages; each field says its unit and the values it takes
 * @returns the number in three forms
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { specificSpeed } from "risingmain/pump";
 * import { feet, gpm, perMinute } from "risingmain/units";
 *
 * specificSpeed({ speed: perMinute(1170), flow: gpm(300), head: feet(21.9) }).us; // ≈ 2001.8
 * ```
 *
 * @source derived: similarity of flow in machines of one shape
 */
export function specificSpeed(input: SpecificSpeedInput): SpecificSpeed {
  requireObject("input", input);
  const { speed, flow, head, stages = 1 } = input;
  requireWithin("speed", speed, 0.01, 1e4, "Hz");
  requireWithin("flow", flow, 1e-9, 100, "m³/s");
  requireWithin("head", head, 1e-3, 1e4, "m");
  requireWhole("stages", stages, 1, 500);
  const metric = (60 * speed * Math.sqrt(flow)) / (head / stages) ** 0.75;
  return {
    dimensionless: (metric * Math.PI) / 30 / STANDARD_GRAVITY ** 0.75,
    us: (metric / Math.sqrt(GPM)) * FOOT ** 0.75,
    metric,
  };
}
