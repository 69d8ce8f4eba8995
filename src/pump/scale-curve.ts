/**
 * A curve with its flows, heads and powers multiplied: what speed, trim, stages, wear and tolerances have in common.
 *
 * @module
 */
import { type FlowLine, finishCurve, type PumpCurve } from "./curve.ts";
import { requireCurve } from "./read-curve.ts";

/** Factors on a curve's quantities; 1 where left out. */
export interface CurveScale {
  readonly flow?: number;
  readonly head?: number;
  readonly power?: number;
  readonly npsh?: number;
  readonly efficiency?: number;
}

/** The curve, scaled. Refuses a result beyond what a curve may hold. */
export function scaleCurve(curve: PumpCurve, scale: CurveScale): PumpCurve {
  const { flow = 1, head = 1, power = 1, npsh = 1, efficiency = 1 } = scale;
  const scaled = finishCurve({
    head: scaleLine(curve.head, flow, head),
    efficiency: curve.efficiency && scaleLine(curve.efficiency, flow, efficiency),
    inputPower: curve.inputPower && scaleLine(curve.inputPower, flow, power),
    npshRequired: curve.npshRequired && scaleLine(curve.npshRequired, flow, npsh),
    shutoffBasis: curve.shutoffBasis,
  });
  requireCurve(scaled);
  return scaled;
}

function scaleLine(line: FlowLine, flow: number, value: number): FlowLine {
  return {
    x: line.x.map((x) => x * flow),
    y: line.y.map((y) => y * value),
    slope: line.slope.map((slope) => (slope * value) / flow),
  };
}
