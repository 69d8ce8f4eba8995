/**
 * A pump in its well as a source of a network, with a pressure-regulating valve if there is one.
 *
 * @module
 */
import { type RegulatingValve, regulatedFlow } from "../control/index.ts";
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import { type PumpCurve, pumpHeadAt } from "../pump/index.ts";
import { type Density, InputError, type Length, type VolumeFlow } from "../units/index.ts";
import type { CurveSource } from "./network-parts.ts";

/** A regulating valve at the junction that the source feeds. */
export interface RegulatedAt {
  /** The valve. */
  readonly valve: RegulatingValve;
  /** Elevation of the valve's outlet, m. −10 000 to 10 000 m. */
  readonly elevation: Length;
  /** Density of the water. 100 to 10 000 kg/m³. */
  readonly density: Density;
}

/** A pump, the level it draws from, and what its line loses before the first junction. */
export interface PumpSourceInput {
  /** Name of the source. */
  readonly id: string;
  /** Junction it feeds. */
  readonly junction: string;
  /** The pump's curve. */
  readonly curve: PumpCurve;
  /** Elevation of the water the pump draws from against its flow, m: of a well, static level less drawdown. */
  readonly waterLevelAt: (flow: VolumeFlow) => Length;
  /** Head lost between the pump and the junction against the flow, m, never falling: riser, check valves, fittings. */
  readonly lossAt: (flow: VolumeFlow) => Length;
  /** A regulating valve, if there is one. */
  readonly regulated?: RegulatedAt;
}

/**
 * A pump as a source of a network.
 *
 * @remarks
 * H(Q) = water level(Q) + pump head(Q) − loss(Q) up to the end of the curve; behind a regulating valve no more than the
 * elevation of the valve plus its set pressure (less its droop at Q), and less what the valve loses wide open. Below the valve's minimum flow the pressure
 * wanders between cut-in and cut-out as the tank fills and empties; the set pressure is then its middle, not its least:
 * for the least, use {@link tankSource} at the cut-in pressure.
 *
 * @param input - the pump, its level and its line; the two functions are asked from 0 to the curve's `runoutFlow`
 * @returns the source, for the `sources` of a network
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { pumpSource } from "risingmain/network";
 * import { pumpCurve } from "risingmain/pump";
 * import { feet, gpm, inFeet } from "risingmain/units";
 *
 * const curve = pumpCurve({ points: [{ flow: gpm(0), head: feet(365) }, { flow: gpm(16), head: feet(206) }] });
 * const pump = pumpSource({
 *   id: "pump", junction: "tank tee", curve,
 *   waterLevelAt: (flow) => feet(-120 - 20 * (flow / gpm(16))),
 *   lossAt: (flow) => feet(6 * (flow / gpm(16)) ** 2),
 * });
 * inFeet(pump.headAtFlow(gpm(16))); // ≈ 60.000
 * ```
 *
 * @source derived: heads along the way of the water add up
 */
export function pumpSource(input: PumpSourceInput): CurveSource {
  requireObject("input", input);
  const { id, junction, curve, waterLevelAt, lossAt, regulated } = input;
  if (typeof id !== "string") throw new InputError("id", id, "a name");
  if (typeof junction !== "string") throw new InputError("junction", junction, "the id of a junction");
  if (typeof waterLevelAt !== "function") throw new InputError("waterLevelAt", waterLevelAt, "a function of the flow");
  if (typeof lossAt !== "function") throw new InputError("lossAt", lossAt, "a function of the flow");
  pumpHeadAt(curve, 0 as VolumeFlow); // refuses what is no curve
  if (regulated !== undefined) requireRegulated(regulated);
  const headAtFlow = (flow: VolumeFlow): Length => {
    const level: unknown = waterLevelAt(flow);
    const loss: unknown = lossAt(flow);
    requireWithin(`waterLevelAt(${flow})`, level, -1e4, 1e4, "m");
    requireWithin(`lossAt(${flow})`, loss, 0, 1e5, "m");
    const open = (level as number) + pumpHeadAt(curve, flow) - (loss as number);
    if (regulated === undefined) return open as Length;
    return Math.min(open - wideOpenLoss(regulated, flow), heldHead(regulated, flow)) as Length;
  };
  return { id, junction, kind: "curve", headAtFlow, largestFlow: curve.runoutFlow };
}

/** Head lost in the valve wide open. */
function wideOpenLoss({ valve, density }: RegulatedAt, flow: number): number {
  const { openLoss = 0, openLossFlow = 0 } = valve;
  const share = flow / openLossFlow;
  return openLoss > 0 ? (openLoss / (density * STANDARD_GRAVITY)) * share * share : 0;
}

/** Grade line that the valve holds at a flow: the set pressure, less the droop up to that flow. */
function heldHead({ valve, elevation, density }: RegulatedAt, flow: number): number {
  const { setPressure, minimumFlow, droop = 0, droopFlow = minimumFlow } = valve;
  const beyond = Math.max(0, flow - minimumFlow);
  const pressure = droop > 0 ? setPressure - (droop * beyond) / (droopFlow - minimumFlow) : setPressure;
  return elevation + pressure / (density * STANDARD_GRAVITY);
}

function requireRegulated(regulated: RegulatedAt): void {
  requireObject("regulated", regulated);
  requireObject("regulated.valve", regulated.valve);
  requireWithin("regulated.elevation", regulated.elevation, -1e4, 1e4, "m");
  requireWithin("regulated.density", regulated.density, 100, 1e4, "kg/m³");
  // Asking the valve for a flow checks all its fields.
  const { valve } = regulated;
  regulatedFlow({ valve, outletPressure: valve.setPressure, openFlow: 0 as VolumeFlow, demand: 0 as VolumeFlow });
}
