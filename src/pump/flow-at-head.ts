/**
 * Reading a pump curve the other way: the flow at which it makes a head.
 *
 * @module
 */
import { cubicValue, findRoot, requireWithin } from "../numeric/index.ts";
import { InputError, type Length, type VolumeFlow } from "../units/index.ts";
import type { FlowLine, PumpCurve } from "./curve.ts";
import { requireCurve } from "./read-curve.ts";

/** The flow at a head, or why the curve has none. */
export type FlowAtHead =
  | {
      /** The pump makes the head at this flow. */
      readonly state: "delivers";
      /** Flow, m³/s. */
      readonly flow: VolumeFlow;
    }
  | {
      /** The head lies above the shutoff head. */
      readonly state: "above shutoff";
      /** By so much, m. */
      readonly short: Length;
    }
  | {
      /** The head lies below the last point's: more flows than the curve knows. */
      readonly state: "past the curve";
      /** Flow of the last point, m³/s. */
      readonly moreThan: VolumeFlow;
    };

/**
 * The flow at which a falling pump curve makes a head.
 *
 * @remarks
 * Solves H(Q) = H on the piece that holds it, to the last bit. The field use: a gauge and the water level give the
 * head, the curve then gives the flow that a good pump would deliver.
 *
 * @param curve - a falling curve from {@link pumpCurve}; a rising one has two flows at some heads and is refused
 * @param head - head of the pump, 0 to 10 000 m
 * @returns the flow, or that the head lies off the curve
 * @throws {@link units.InputError} where the curve is not one, is not falling, or the head is out of its range
 *
 * @example
 * ```ts
 * import { pumpCurve, pumpFlowAt } from "risingmain/pump";
 * import { feet, gpm, inGpm } from "risingmain/units";
 *
 * const curve = pumpCurve({ points: [{ flow: gpm(0), head: feet(400) }, { flow: gpm(20), head: feet(100) }] });
 * const at = pumpFlowAt(curve, feet(250));
 * at.state === "delivers" ? inGpm(at.flow) : 0; // ≈ 10.00
 * ```
 *
 * @source derived: the inverse of the curve
 */
export function pumpFlowAt(curve: PumpCurve, head: Length): FlowAtHead {
  requireFalling(curve);
  requireWithin("head", head, 0, 10_000, "m");
  if (head > curve.shutoffHead) return { state: "above shutoff", short: (head - curve.shutoffHead) as Length };
  if (head < (curve.head.y.at(-1) as number)) return { state: "past the curve", moreThan: curve.runoutFlow };
  return { state: "delivers", flow: flowOnLine(curve.head, head) as VolumeFlow };
}

/**
 * Refuses a curve that rises anywhere.
 *
 * @internal
 */
export function requireFalling(curve: PumpCurve, parameter = "curve"): void {
  requireCurve(curve, parameter);
  if (curve.shape !== "falling") {
    throw new InputError(`${parameter}.shape`, curve.shape, "falling: a head that rises has more than one flow");
  }
}

/**
 * The flow at a head that lies between the ends of a falling line.
 *
 * @internal
 */
export function flowOnLine(line: FlowLine, head: number): number {
  const { x, y } = line;
  let i = 0;
  while (head < (y[i + 1] as number)) i++;
  return findRoot((flow) => cubicValue(line, flow) - head, x[i] as number, x[i + 1] as number).x;
}
