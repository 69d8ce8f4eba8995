/**
 * Reading a pump curve at a flow.
 *
 * @module
 */
import { cubicSlope, cubicValue, requireList, requireObject, requireWithin } from "../numeric/index.ts";
import { InputError, type Length, type Power, type Ratio, type VolumeFlow } from "../units/index.ts";
import type { FlowLine, PumpCurve } from "./curve.ts";

/**
 * Head of the pump at a flow.
 *
 * @param curve - a curve from {@link pumpCurve}
 * @param flow - flow through the pump, from 0 to the curve's `runoutFlow`, m³/s
 * @returns total head, m
 * @throws {@link units.InputError} where the flow lies outside the curve: nothing is known there
 *
 * @example
 * ```ts
 * import { pumpCurve, pumpHeadAt } from "risingmain/pump";
 * import { cubicMetresPerHour, inMetres, metres } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: cubicMetresPerHour(0), head: metres(100) },
 *     { flow: cubicMetresPerHour(2), head: metres(84) },
 *     { flow: cubicMetresPerHour(4), head: metres(36) },
 *   ],
 * });
 * inMetres(pumpHeadAt(curve, cubicMetresPerHour(3))); // ≈ 64.000
 * ```
 *
 * @source fritsch-carlson-1980
 */
export function pumpHeadAt(curve: PumpCurve, flow: VolumeFlow): Length {
  requireCurve(curve);
  requireOnCurve(curve, flow);
  return cubicValue(curve.head, flow) as Length;
}

/**
 * How fast the head changes with flow: negative on a falling curve.
 *
 * @param curve - a curve from {@link pumpCurve}
 * @param flow - flow through the pump, from 0 to the curve's `runoutFlow`, m³/s
 * @returns dH/dQ, m per m³/s
 * @throws {@link units.InputError} where the flow lies outside the curve
 *
 * @example
 * ```ts
 * import { pumpCurve, pumpHeadSlopeAt } from "risingmain/pump";
 * import { cubicMetresPerSecond, metres } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: cubicMetresPerSecond(0), head: metres(60) },
 *     { flow: cubicMetresPerSecond(0.002), head: metres(40) },
 *   ],
 * });
 * pumpHeadSlopeAt(curve, cubicMetresPerSecond(0.001)); // ≈ -10000.0
 * ```
 *
 * @source derived: the derivative of the interpolating cubic
 */
export function pumpHeadSlopeAt(curve: PumpCurve, flow: VolumeFlow): number {
  requireCurve(curve);
  requireOnCurve(curve, flow);
  return cubicSlope(curve.head, flow);
}

/**
 * Pump efficiency at a flow: water power over shaft power.
 *
 * @param curve - a curve from {@link pumpCurve}
 * @param flow - flow through the pump, from 0 to the curve's `runoutFlow`, m³/s
 * @returns the efficiency as a ratio; null where the points gave none, or not at this flow
 * @throws {@link units.InputError} where the flow lies outside the curve
 *
 * @example
 * ```ts
 * import { pumpCurve, pumpEfficiencyAt } from "risingmain/pump";
 * import { gpm, feet, percent } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: gpm(0), head: feet(365) },
 *     { flow: gpm(10), head: feet(300), efficiency: percent(60) },
 *     { flow: gpm(14), head: feet(240), efficiency: percent(58) },
 *   ],
 * });
 * pumpEfficiencyAt(curve, gpm(10)) ?? 0; // ≈ 0.600
 * ```
 *
 * @source fritsch-carlson-1980
 */
export function pumpEfficiencyAt(curve: PumpCurve, flow: VolumeFlow): Ratio | null {
  return readOptional(curve, "efficiency", flow) as Ratio | null;
}

/**
 * Power into the pump's shaft at a flow, as the curve's points gave it.
 *
 * @param curve - a curve from {@link pumpCurve}
 * @param flow - flow through the pump, from 0 to the curve's `runoutFlow`, m³/s
 * @returns shaft power, W; null where the points gave none, or not at this flow
 * @throws {@link units.InputError} where the flow lies outside the curve
 *
 * @example
 * ```ts
 * import { pumpCurve, pumpInputPowerAt } from "risingmain/pump";
 * import { feet, gpm, horsepower, inHorsepower } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: gpm(0), head: feet(365), inputPower: horsepower(0.9) },
 *     { flow: gpm(14), head: feet(240), inputPower: horsepower(1.5) },
 *   ],
 * });
 * inHorsepower(pumpInputPowerAt(curve, gpm(7)) ?? horsepower(0)); // ≈ 1.200
 * ```
 *
 * @source fritsch-carlson-1980
 */
export function pumpInputPowerAt(curve: PumpCurve, flow: VolumeFlow): Power | null {
  return readOptional(curve, "inputPower", flow) as Power | null;
}

/**
 * Net positive suction head the pump requires at a flow.
 *
 * @param curve - a curve from {@link pumpCurve}
 * @param flow - flow through the pump, from 0 to the curve's `runoutFlow`, m³/s
 * @returns the required head above vapour pressure at the intake, m; null where the points gave none, or not at this flow
 * @throws {@link units.InputError} where the flow lies outside the curve
 *
 * @example
 * ```ts
 * import { npshRequiredAt, pumpCurve } from "risingmain/pump";
 * import { feet, gpm, inFeet } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: gpm(0), head: feet(365), npshRequired: feet(6) },
 *     { flow: gpm(14), head: feet(240), npshRequired: feet(10) },
 *   ],
 * });
 * inFeet(npshRequiredAt(curve, gpm(7)) ?? feet(0)); // ≈ 8.00
 * ```
 *
 * @source fritsch-carlson-1980
 */
export function npshRequiredAt(curve: PumpCurve, flow: VolumeFlow): Length | null {
  return readOptional(curve, "npshRequired", flow) as Length | null;
}

/**
 * Refuses what is not a curve as {@link pumpCurve} makes it, so that a curve read back from JSON is as safe as a new one.
 *
 * @internal
 */
export function requireCurve(curve: PumpCurve, parameter = "curve"): void {
  requireObject(parameter, curve);
  const { head, efficiency, inputPower, npshRequired } = curve;
  if (!isLine(head, 10_000)) refuseLine(`${parameter}.head`, head, 10_000);
  if (efficiency !== undefined && !isLine(efficiency, 1)) refuseLine(`${parameter}.efficiency`, efficiency, 1);
  if (inputPower !== undefined && !isLine(inputPower, 1e8)) refuseLine(`${parameter}.inputPower`, inputPower, 1e8);
  if (npshRequired !== undefined && !isLine(npshRequired, 1000)) {
    refuseLine(`${parameter}.npshRequired`, npshRequired, 1000);
  }
  const { x, y } = head;
  const refuse = (field: string, value: unknown, expected: string): never => {
    throw new InputError(`${parameter}.${field}`, value, expected);
  };
  if (x[0] !== 0) refuse("head.x[0]", x[0], "0: a curve begins at no flow");
  const end = x[x.length - 1] as number;
  if (curve.runoutFlow !== end) refuse("runoutFlow", curve.runoutFlow, `the last flow, ${end} m³/s`);
  if (curve.shutoffHead !== y[0]) refuse("shutoffHead", curve.shutoffHead, `the first head, ${y[0]} m`);
  const shape = isFalling(y) ? "falling" : "rising in part";
  if (curve.shape !== shape) refuse("shape", curve.shape, `"${shape}", as its heads are`);
  const basis: unknown = curve.shutoffBasis;
  if (basis !== "given" && basis !== "extrapolated") refuse("shutoffBasis", basis, '"given" or "extrapolated"');
}

/** Most points of a line: far more than any sheet has, to bound the work. */
const MOST_POINTS = 100_000;
/** Closest flows of a line, m³/s; closer ones give slopes beyond the range of a double. */
const CLOSEST = 1e-16;
/** Steepest slope of a line, SI per m³/s; beyond it products leave the range of a double. */
const STEEPEST = 1e24;

/** Whether it is a line; without a word, because every reading of a curve passes here and texts cost more than the check. */
function isLine(line: FlowLine, most: number): boolean {
  if (typeof line !== "object" || line === null) return false;
  const { x, y, slope } = line;
  if (!(Array.isArray(x) && Array.isArray(y) && Array.isArray(slope))) return false;
  const count = x.length;
  if (count < 2 || count > MOST_POINTS || y.length !== count || slope.length !== count) return false;
  let least = 0;
  for (let i = 0; i < count; i++) {
    if (!(isWithin(x[i], least, 100) && isWithin(y[i], 0, most) && isWithin(slope[i], -STEEPEST, STEEPEST)))
      return false;
    least = x[i] + CLOSEST;
  }
  return true;
}

function isWithin(value: unknown, low: number, high: number): boolean {
  return typeof value === "number" && value >= low && value <= high;
}

function isFalling(y: readonly number[]): boolean {
  for (let i = 1; i < y.length; i++) if (!((y[i] as number) < (y[i - 1] as number))) return false;
  return true;
}

/** Says what is wrong with a line that is none. */
function refuseLine(path: string, line: FlowLine, most: number): never {
  requireObject(path, line);
  requireList(`${path}.x`, line.x, 2, MOST_POINTS);
  const count = line.x.length;
  requireList(`${path}.y`, line.y, count, count);
  requireList(`${path}.slope`, line.slope, count, count);
  // Ends at the first that is none; at the latest past the last.
  for (let i = 0, least = 0; ; i++) {
    requireWithin(`${path}.x[${i}]`, line.x[i], least, 100, "m³/s, ascending");
    requireWithin(`${path}.y[${i}]`, line.y[i], 0, most, "");
    requireWithin(`${path}.slope[${i}]`, line.slope[i], -STEEPEST, STEEPEST, "");
    least = (line.x[i] as number) + CLOSEST;
  }
}

function requireOnCurve(curve: PumpCurve, flow: VolumeFlow): void {
  requireWithin("flow", flow, 0, curve.runoutFlow, "m³/s, the end of the curve");
}

function readOptional(
  curve: PumpCurve,
  name: "efficiency" | "inputPower" | "npshRequired",
  flow: VolumeFlow,
): number | null {
  requireCurve(curve);
  requireOnCurve(curve, flow);
  const line = curve[name];
  if (line === undefined) return null;
  const inside = flow >= (line.x[0] as number) && flow <= (line.x.at(-1) as number);
  return inside ? cubicValue(line, flow) : null;
}
