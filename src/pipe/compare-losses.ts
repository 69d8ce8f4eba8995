/**
 * How far the rule of Hazen and Williams lies from Darcy–Weisbach for one case.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { KinematicViscosity, Length, Temperature, VolumeFlow } from "../units/index.ts";
import { type DarcyWeisbachLoss, darcyWeisbachLoss } from "./darcy-weisbach.ts";
import { type HazenWilliamsLoss, hazenWilliamsLoss, SLOPE_POWER } from "./hazen-williams.ts";

/** One flow in one pipe, described for both methods. */
export interface CompareLossesInput {
  /** Flow. 1e-9 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Inside diameter, not the trade size. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Length of straight pipe. 0.001 to 1 000 000 m. */
  readonly length: Length;
  /** Equivalent sand-grain height of the wall, 0 for smooth. 0 to half the diameter, m. */
  readonly roughness: Length;
  /** Kinematic viscosity of the water. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
  /** The coefficient C of Hazen and Williams. 10 to 200. */
  readonly coefficient: number;
  /** Water temperature, only to judge the range of the rule. 253.15 to 383.15 K. */
  readonly temperature?: Temperature;
}

/** Both losses and their difference. */
export interface LossComparison {
  /** The loss by Darcy and Weisbach with Colebrook's friction factor. */
  readonly darcyWeisbach: DarcyWeisbachLoss;
  /** The loss by Hazen and Williams. */
  readonly hazenWilliams: HazenWilliamsLoss;
  /** Hazen–Williams over Darcy–Weisbach, less 1: −0.1 where the rule gives 10 % less loss. Above −1. */
  readonly difference: number;
  /** The C with which the rule would give the loss of Darcy and Weisbach at this flow. Above 0. */
  readonly matchingCoefficient: number;
}

/**
 * How far the loss by Hazen and Williams lies from that by Darcy and Weisbach.
 *
 * @remarks
 * The rule has one C for a wall, whatever the flow and the temperature; Darcy–Weisbach has neither limit. Where they
 * differ by more than a few per cent, or the rule is outside its range, go by Darcy–Weisbach.
 *
 * @param input - the pipe, the flow, and the wall as both methods see it
 * @returns both losses, their relative difference and the C that would close it
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example 1-1/4 in smooth pipe at 3 gpm and C = 150
 * ```ts
 * import { compareLosses } from "risingmain/pipe";
 * import { celsius, feet, gpm, inches } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * const { difference, matchingCoefficient } = compareLosses({
 *   flow: gpm(3), insideDiameter: inches(1.38), length: feet(100), roughness: feet(0.000005),
 *   viscosity: waterKinematicViscosity(celsius(10)), coefficient: 150,
 * });
 * difference; // ≈ -0.2466
 * matchingCoefficient; // ≈ 128.7
 * ```
 *
 * @source colebrook-1939
 * @source williams-hazen-1920
 */
export function compareLosses(input: CompareLossesInput): LossComparison {
  requireObject("input", input);
  requireWithin("flow", input.flow, 1e-9, 1e3, "m³/s");
  requireWithin("length", input.length, 1e-3, 1e6, "m");
  const darcyWeisbach = darcyWeisbachLoss(input);
  const hazenWilliams = hazenWilliamsLoss(input);
  const ratio = hazenWilliams.headLoss / darcyWeisbach.headLoss;
  return {
    darcyWeisbach,
    hazenWilliams,
    difference: ratio - 1,
    // The loss goes with C to the power −1/0.54.
    matchingCoefficient: input.coefficient * ratio ** SLOPE_POWER,
  };
}
