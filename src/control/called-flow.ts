/**
 * Calls of a caller's curve, with what comes back looked at.
 *
 * @module
 */
import { requireWithin } from "../numeric/index.ts";
import { type GaugePressure, InputError, type VolumeFlow } from "../units/index.ts";

/** A pump's flow into the tank against the gauge pressure there. */
export type FlowAtPressure = (pressure: GaugePressure) => VolumeFlow;

/** A pump's gauge pressure at the tank against its flow. */
export type PressureAtFlow = (flow: VolumeFlow) => GaugePressure;

/** Refuses what is not a function. @internal */
export function requireFunction(parameter: string, value: unknown): void {
  if (typeof value !== "function") throw new InputError(parameter, value, "a function");
}

/** The flow a curve gives at a pressure, as a number from 0 to 100 m³/s. @internal */
export function calledFlow(parameter: string, curve: FlowAtPressure, pressure: number): number {
  const flow: unknown = curve(pressure as GaugePressure);
  requireWithin(`${parameter}(${pressure} Pa)`, flow, 0, 100, "m³/s");
  return flow as number;
}

/** The pressure a curve gives at a flow, as a number within 1 GPa. @internal */
export function calledPressure(parameter: string, curve: PressureAtFlow, flow: number): number {
  const pressure: unknown = curve(flow as VolumeFlow);
  requireWithin(`${parameter}(${flow} m³/s)`, pressure, -1e9, 1e9, "Pa gauge");
  return pressure as number;
}
