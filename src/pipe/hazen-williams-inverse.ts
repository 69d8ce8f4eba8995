/**
 * The rule of Hazen and Williams, turned around: for the flow, the bore, or the coefficient of a measured pipe.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Length, VolumeFlow } from "../units/index.ts";
import { METRE_CONSTANT, RADIUS_POWER, SLOPE_POWER } from "./hazen-williams.ts";

/** A pipe and the head spent in it. */
export interface HazenWilliamsFlowInput {
  /** Head lost from inlet to outlet; negative for a flow that runs backwards. −100 000 to 100 000 m. */
  readonly headLoss: Length;
  /** Inside diameter, not the trade size. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Length of straight pipe. 0.001 to 1 000 000 m. */
  readonly length: Length;
  /** The coefficient C: the higher, the smoother. 10 to 200. */
  readonly coefficient: number;
}

/** A flow, the head it may lose, and the kind of pipe. */
export interface HazenWilliamsDiameterInput {
  /** Flow; its direction does not matter here. 1e-9 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Head lost. 1e-9 to 100 000 m. */
  readonly headLoss: Length;
  /** Length of straight pipe. 0.001 to 1 000 000 m. */
  readonly length: Length;
  /** The coefficient C: the higher, the smoother. 10 to 200. */
  readonly coefficient: number;
}

/** A flow through a pipe of unknown coefficient, and the head it lost. */
export interface CoefficientForHeadLossInput {
  /** Flow; its direction does not matter here. 1e-9 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Head lost. 1e-9 to 100 000 m. */
  readonly headLoss: Length;
  /** Inside diameter, not the trade size. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Length of straight pipe. 0.001 to 1 000 000 m. */
  readonly length: Length;
}

/** Flow by the rule, m³/s, for C = 1, a bore and a slope h/L. */
function unitFlow(D: number, slope: number): number {
  return (Math.PI / 4) * D * D * METRE_CONSTANT * (D / 4) ** RADIUS_POWER * slope ** SLOPE_POWER;
}

/**
 * Flow that a given head loss drives through a straight pipe full of cold water, by Hazen and Williams.
 *
 * @remarks
 * Q = K C (π/4) D² (D/4)^0.63 (h/L)^0.54, K ≈ 0.84918; range as `hazenWilliamsLoss`, which it undoes.
 *
 * @param input - the pipe and the head loss; each field says its unit and the values it takes
 * @returns the flow, m³/s, with the sign of the head loss
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { hazenWilliamsFlow } from "risingmain/pipe";
 * import { feet, inches, inGpm } from "risingmain/units";
 *
 * const flow = hazenWilliamsFlow({
 *   headLoss: feet(3.0495), insideDiameter: inches(4.026), length: feet(100), coefficient: 120,
 * });
 * inGpm(flow); // ≈ 200.0
 * ```
 *
 * @source williams-hazen-1920
 */
export function hazenWilliamsFlow(input: HazenWilliamsFlowInput): VolumeFlow {
  requireObject("input", input);
  const { headLoss, insideDiameter: D, length: L, coefficient: C } = input;
  requireWithin("headLoss", headLoss, -1e5, 1e5, "m");
  requireWithin("insideDiameter", D, 1e-4, 100, "m");
  requireWithin("length", L, 1e-3, 1e6, "m");
  requireWithin("coefficient", C, 10, 200, "");
  const flow = C * unitFlow(D, Math.abs(headLoss) / L);
  return (headLoss < 0 ? -flow : flow) as VolumeFlow;
}

/**
 * Inside diameter of the straight pipe that loses a given head at a given flow of cold water, by Hazen and Williams.
 *
 * @remarks
 * D = (4^1.63 Q / (π K C (h/L)^0.54))^(1/2.63), K ≈ 0.84918; range as `hazenWilliamsLoss`, which it undoes.
 *
 * @param input - the flow, the loss and the pipe; each field says its unit and the values it takes
 * @returns the inside diameter, m
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { hazenWilliamsDiameter } from "risingmain/pipe";
 * import { feet, gpm, inInches } from "risingmain/units";
 *
 * const bore = hazenWilliamsDiameter({ flow: gpm(25), headLoss: feet(30), length: feet(1300), coefficient: 150 });
 * inInches(bore); // ≈ 1.78
 * ```
 *
 * @source williams-hazen-1920
 */
export function hazenWilliamsDiameter(input: HazenWilliamsDiameterInput): Length {
  requireObject("input", input);
  const { flow, headLoss, length: L, coefficient: C } = input;
  requireWithin("flow", flow, 1e-9, 1e3, "m³/s");
  requireWithin("headLoss", headLoss, 1e-9, 1e5, "m");
  requireWithin("length", L, 1e-3, 1e6, "m");
  requireWithin("coefficient", C, 10, 200, "");
  return ((flow / (C * unitFlow(1, headLoss / L))) ** (1 / (2 + RADIUS_POWER))) as Length;
}

/**
 * The coefficient C of a pipe, from a measured head loss.
 *
 * @remarks
 * C = Q / (K (π/4) D² (D/4)^0.63 (h/L)^0.54). The wall, the bore taken for it and the fittings on the line all end up
 * in C; in small or slow lines the rule itself is off, and C then falls with the flow.
 *
 * @param input - the flow, the loss and the pipe; each field says its unit and the values it takes
 * @returns the coefficient C; new plastic gives about 150, old iron below 100
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { coefficientForHeadLoss } from "risingmain/pipe";
 * import { feet, gpm, inches } from "risingmain/units";
 *
 * coefficientForHeadLoss({
 *   flow: gpm(25), headLoss: feet(30), insideDiameter: inches(1.61), length: feet(500),
 * }); // ≈ 116
 * ```
 *
 * @source williams-hazen-1920
 */
export function coefficientForHeadLoss(input: CoefficientForHeadLossInput): number {
  requireObject("input", input);
  const { flow, headLoss, insideDiameter: D, length: L } = input;
  requireWithin("flow", flow, 1e-9, 1e3, "m³/s");
  requireWithin("headLoss", headLoss, 1e-9, 1e5, "m");
  requireWithin("insideDiameter", D, 1e-4, 100, "m");
  requireWithin("length", L, 1e-3, 1e6, "m");
  return flow / unitFlow(D, headLoss / L);
}
