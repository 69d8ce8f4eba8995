/**
 * Drawdown in a confined aquifer with time: Theis, and the straight line of Cooper and Jacob.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Length, Transmissivity, VolumeFlow } from "../units/index.ts";
import type { DrawdownLaw } from "./drawdown.ts";
import { wellFunction } from "./well-function.ts";

/** An aquifer, and the distance from the pumped well at which it is watched. */
export interface Aquifer {
  /** Transmissivity: conductivity times thickness. 1e-12 to 100 m²/s. */
  readonly transmissivity: Transmissivity;
  /** Storativity: water released per area and fall of level, without unit. 1e-12 to 1. */
  readonly storativity: number;
  /** Distance from the axis of the pumped well; for the well itself its effective radius. 1e-3 to 1e6 m. */
  readonly radius: Length;
}

/** Steady pumping from an aquifer for a time. */
export interface TheisInput extends Aquifer {
  /** Steady flow. 0 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Time since pumping began. 1e-3 to 1e12 s. */
  readonly time: Duration;
}

/** Drawdown with what it was made from. */
export interface TheisDrawdown {
  /** Fall of the level, m. */
  readonly drawdown: Length;
  /** r² S / (4 T t). */
  readonly u: number;
  /** W(u). */
  readonly wellFunction: number;
  /** The equation used. */
  readonly method: "theis-1935" | "cooper-jacob-1946";
  /** False where the equation's own condition on u is not met. */
  readonly insideRange: boolean;
}

/** u up to which the straight line is within 0.25 % of the curve. */
const STRAIGHT_LINE_UP_TO = 0.01;

/** 4 e^−γ, the constant under the logarithm of the straight line (usually printed 2.25). */
export const JACOB_CONSTANT = 2.2458379342675396;

/**
 * Drawdown after steady pumping from a confined aquifer.
 *
 * @remarks
 * s = Q W(u) / (4 π T), u = r² S / (4 T t), with Q `flow`, T `transmissivity`, S `storativity`, r `radius`, t `time`.
 * For a wide, level, confined aquifer and a well of no storage; in an unconfined one while s is small beside the
 * saturated thickness. Well loss is not in it: see {@link aquiferLaw}.
 *
 * @param input - the aquifer, the flow and the time; each field says its unit and the values it takes
 * @returns drawdown, m, with u and W(u)
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { theisDrawdown } from "risingmain/well";
 * import { days, feet, gpm, inFeet, usGallonsPerDayPerFoot } from "risingmain/units";
 *
 * const after = theisDrawdown({
 *   flow: gpm(700), transmissivity: usGallonsPerDayPerFoot(32000), storativity: 3.4e-5, radius: feet(1), time: days(1),
 * });
 * after.wellFunction; // ≈ 19.459
 * inFeet(after.drawdown); // ≈ 48.8
 * ```
 *
 * @source theis-1935
 */
export function theisDrawdown(input: TheisInput): TheisDrawdown {
  const { flow, transmissivity: T } = requireTheis(input);
  const u = uOf(input);
  const W = wellFunction(u);
  return {
    drawdown: ((flow * W) / (4 * Math.PI * T)) as Length,
    u,
    wellFunction: W,
    method: "theis-1935",
    insideRange: true,
  };
}

/**
 * Drawdown by the straight line of Cooper and Jacob, good once pumping has gone on for long.
 *
 * @remarks
 * s = Q / (4 π T) · ln(2.2458 T t / (r² S)). Under 0.25 % low for u ≤ 0.01, 2 % at 0.05, 5 % at 0.1; `insideRange` is u ≤ 0.01.
 *
 * @param input - the aquifer, the flow and the time; each field says its unit and the values it takes
 * @returns drawdown, m, 0 where the line is still below it, with u and the value taken for W(u)
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { cooperJacobDrawdown } from "risingmain/well";
 * import { hours, inMetres, litresPerMinute, metres, squareMetresPerDay } from "risingmain/units";
 *
 * const after = cooperJacobDrawdown({
 *   flow: litresPerMinute(1500), transmissivity: squareMetresPerDay(1050), storativity: 0.004,
 *   radius: metres(40), time: hours(20),
 * });
 * inMetres(after.drawdown); // ≈ 0.94
 * ```
 *
 * @source cooper-jacob-1946
 */
export function cooperJacobDrawdown(input: TheisInput): TheisDrawdown {
  const { flow, transmissivity: T } = requireTheis(input);
  const u = uOf(input);
  const W = Math.max(0, Math.log(JACOB_CONSTANT / 4 / u));
  return {
    drawdown: ((flow * W) / (4 * Math.PI * T)) as Length,
    u,
    wellFunction: W,
    method: "cooper-jacob-1946",
    insideRange: u <= STRAIGHT_LINE_UP_TO,
  };
}

/** An aquifer pumped for a time, and the loss in the well itself. */
export interface AquiferLawInput extends Aquifer {
  /** Time of steady pumping. 1e-3 to 1e12 s. */
  readonly time: Duration;
  /** C of s = B Q + C Q², from a step test. 0 to 1e20 s²/m⁵; 0 where left out. */
  readonly wellLoss?: number;
}

/**
 * The drawdown law of a well after a time of pumping: B from the aquifer by Theis, C from the well.
 *
 * @remarks
 * B = W(u) / (4 π T). Use it with {@link drawdownAt} and {@link flowForDrawdown} as the law of a step test.
 *
 * @param input - aquifer, time and well loss; each field says its unit and the values it takes
 * @returns the law at that time
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { aquiferLaw, drawdownAt } from "risingmain/well";
 * import { cubicMetresPerHour, inMetres, metres, minutes, squareMetresPerSecondTransmissivity } from "risingmain/units";
 *
 * const law = aquiferLaw({
 *   transmissivity: squareMetresPerSecondTransmissivity(1.38e-3), storativity: 2.21e-5, radius: metres(0.3), time: minutes(500),
 * });
 * inMetres(drawdownAt(law, cubicMetresPerHour(50))); // ≈ 14.14
 * ```
 *
 * @source theis-1935
 * @source jacob-1947: the loss in the well
 */
export function aquiferLaw(input: AquiferLawInput): DrawdownLaw {
  requireAquifer(input);
  requireWithin("time", input.time, 1e-3, 1e12, "s");
  const { wellLoss = 0 } = input;
  requireWithin("wellLoss", wellLoss, 0, 1e20, "s²/m⁵");
  return { aquiferLoss: wellFunction(uOf(input)) / (4 * Math.PI * input.transmissivity), wellLoss };
}

function uOf({ radius, storativity, transmissivity, time }: Aquifer & { readonly time: Duration }): number {
  return (radius * radius * storativity) / (4 * transmissivity * time);
}

/** @internal */
export function requireAquifer(input: Aquifer, parameter = "input"): void {
  requireObject(parameter, input);
  const path = parameter === "input" ? "" : `${parameter}.`;
  requireWithin(`${path}transmissivity`, input.transmissivity, 1e-12, 100, "m²/s");
  requireWithin(`${path}storativity`, input.storativity, 1e-12, 1, "");
  requireWithin(`${path}radius`, input.radius, 1e-3, 1e6, "m");
}

function requireTheis(input: TheisInput): TheisInput {
  requireAquifer(input);
  requireWithin("flow", input.flow, 0, 100, "m³/s");
  requireWithin("time", input.time, 1e-3, 1e12, "s");
  return input;
}
