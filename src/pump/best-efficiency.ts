/**
 * The point of best efficiency on a pump curve.
 *
 * @module
 */
import { cubicValue } from "../numeric/index.ts";
import type { Length, Ratio, VolumeFlow } from "../units/index.ts";
import type { FlowLine, PumpCurve } from "./curve.ts";
import { requireCurve } from "./read-curve.ts";

/** The best point of a curve. */
export interface BestEfficiencyPoint {
  /** Flow of best efficiency, m³/s. */
  readonly flow: VolumeFlow;
  /** Head there, m. */
  readonly head: Length;
  /** The best efficiency. */
  readonly efficiency: Ratio;
}

/**
 * The point of best efficiency.
 *
 * @remarks
 * The vertex of the parabola through the best of the given points and its two neighbours; the point itself where it is
 * the last. As good as the points are near the top: three within a few per cent of each other fix the flow to about 5 %.
 *
 * @param curve - a curve from {@link pumpCurve}
 * @returns flow, head and efficiency; null where the points gave no efficiency
 * @throws {@link units.InputError} where the curve is not one
 *
 * @example
 * ```ts
 * import { bestEfficiencyPoint, pumpCurve } from "risingmain/pump";
 * import { feet, gpm, inGpm, percent } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: gpm(0), head: feet(365) },
 *     { flow: gpm(8), head: feet(322), efficiency: percent(54) },
 *     { flow: gpm(12), head: feet(275), efficiency: percent(62) },
 *     { flow: gpm(16), head: feet(206), efficiency: percent(58) },
 *   ],
 * });
 * const best = bestEfficiencyPoint(curve);
 * best === null ? 0 : inGpm(best.flow); // ≈ 12.67
 * ```
 *
 * @source derived: the vertex of a parabola
 */
export function bestEfficiencyPoint(curve: PumpCurve): BestEfficiencyPoint | null {
  requireCurve(curve);
  const line = curve.efficiency;
  if (line === undefined) return null;
  const top = vertex(line);
  if (!(top.y > 0) || top.x > curve.runoutFlow) return null;
  return {
    flow: top.x as VolumeFlow,
    head: cubicValue(curve.head, top.x) as Length,
    efficiency: Math.min(1, top.y) as Ratio,
  };
}

/** The top of the parabola through the highest point and its neighbours. */
function vertex({ x, y }: FlowLine): { readonly x: number; readonly y: number } {
  const i = y.indexOf(Math.max(...y));
  if (i === 0 || i === y.length - 1) return { x: x[i] as number, y: y[i] as number };
  const [x0, x1, x2] = x.slice(i - 1, i + 2) as [number, number, number];
  const [y0, y1, y2] = y.slice(i - 1, i + 2) as [number, number, number];
  const before = (y1 - y0) / (x1 - x0);
  const after = (y2 - y1) / (x2 - x1);
  const bend = (after - before) / (x2 - x0);
  const slope = before + bend * (x1 - x0);
  const shift = -slope / (2 * bend);
  return { x: x1 + shift, y: y1 + (slope * shift) / 2 };
}
