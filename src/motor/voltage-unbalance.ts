/**
 * Unbalance of three phase voltages or currents, and what a motor still gives under it.
 *
 * @module
 */
import { requireList, requireWithin } from "../numeric/index.ts";
import type { Current, Ratio, Voltage } from "../units/index.ts";
import { type UnbalanceDeratingRow, unbalanceDerating } from "./unbalance-derating.ts";

/** Largest unbalance at which a motor may run at all, and the one above which it must be derated. */
const LARGEST = 0.05;
const HARMLESS = 0.01;

/** Three voltages and what they mean for a motor. */
export interface VoltageUnbalance {
  /** What the unbalance means for the motor. */
  readonly state: "no derating" | "derate" | "do not run";
  /** Largest deviation from the average over the average. */
  readonly unbalance: Ratio;
  /** Average of the three, V. */
  readonly average: Voltage;
  /** Share of rated power the motor may still give; 0 where it must not run. */
  readonly deratingFactor: Ratio;
  /** Rise of the winding's temperature rise, as a share of it: 2 u² with u in per cent, as a percentage. */
  readonly addedTemperatureRise: Ratio;
  /** Where the rules are from. */
  readonly method: "nema-mg-1";
}

/**
 * Unbalance of three line-to-line voltages, and the derating of a three-phase motor under it.
 *
 * @remarks
 * Unbalance = largest deviation from the average / average. Up to 1 % there is no derating; to 5 % the factor is read
 * off the standard's curve, tabulated every half per cent and straight between (other readings of the curve differ by
 * 0.01); above 5 % a motor must not run. The windings' rise grows by about 2 u² per cent.
 *
 * @param voltages - the three line-to-line voltages at the motor, each 1 to 2000 V
 * @returns unbalance and derating
 * @throws InputError where there are not three voltages in that range
 *
 * @example
 * ```ts
 * import { voltageUnbalance } from "risingmain/motor";
 * import { inPercent, volts } from "risingmain/units";
 *
 * const supply = voltageUnbalance([volts(460), volts(455), volts(440)]);
 * inPercent(supply.unbalance); // ≈ 2.58
 * supply.state; // => "derate"
 * ```
 *
 * @source nema-mg-1, effects of unbalanced voltages
 * @source hubert-electric-machines, example 5.14: temperature rise
 */
export function voltageUnbalance(voltages: readonly [Voltage, Voltage, Voltage]): VoltageUnbalance {
  const { average, unbalance } = spread("voltages", voltages, 1, 2000, "V");
  const state = unbalance > LARGEST ? "do not run" : unbalance > HARMLESS ? "derate" : "no derating";
  const percent = 100 * unbalance;
  return {
    state,
    unbalance: unbalance as Ratio,
    average: average as Voltage,
    deratingFactor: (state === "do not run" ? 0 : state === "derate" ? factorAt(percent) : 1) as Ratio,
    addedTemperatureRise: ((2 * percent * percent) / 100) as Ratio,
    method: "nema-mg-1",
  };
}

/** Three currents. */
export interface CurrentUnbalance {
  /** Largest deviation from the average over the average; 0 where there is no current. */
  readonly unbalance: Ratio;
  /** Average of the three, A. */
  readonly average: Current;
}

/**
 * Unbalance of three line currents.
 *
 * @remarks
 * As for voltages. A voltage unbalance of 1 % commonly shows as 6 to 10 % in the currents. Rolling the three leads, so that
 * each motor lead meets another supply line, tells whether the unbalance belongs to the supply (it stays with the line)
 * or to the motor (it moves with the lead), common practice.
 *
 * @param currents - the three line currents, each 0 to 100 000 A
 * @returns unbalance and average
 * @throws InputError where there are not three currents in that range
 *
 * @example
 * ```ts
 * import { currentUnbalance } from "risingmain/motor";
 * import { amperes, inPercent } from "risingmain/units";
 *
 * inPercent(currentUnbalance([amperes(51), amperes(46), amperes(53)]).unbalance); // ≈ 8.0
 * ```
 *
 * @source common practice
 */
export function currentUnbalance(currents: readonly [Current, Current, Current]): CurrentUnbalance {
  const { average, unbalance } = spread("currents", currents, 0, 1e5, "A");
  return { unbalance: unbalance as Ratio, average: average as Current };
}

function spread(
  parameter: string,
  values: readonly number[],
  low: number,
  high: number,
  unit: string,
): { readonly average: number; readonly unbalance: number } {
  requireList(parameter, values, 3, 3);
  for (const [i, value] of Array.from(values).entries()) requireWithin(`${parameter}[${i}]`, value, low, high, unit);
  const average = values.reduce((sum, value) => sum + value, 0) / 3;
  const worst = Math.max(...values.map((value) => Math.abs(value - average)));
  return { average, unbalance: average > 0 ? worst / average : 0 };
}

/** The curve between its readings, above the first of them and up to the last. */
function factorAt(percent: number): number {
  const next = unbalanceDerating.findIndex((row) => row.percent >= percent);
  const [below, above] = unbalanceDerating.slice(next - 1) as [UnbalanceDeratingRow, UnbalanceDeratingRow];
  return below.factor + ((above.factor - below.factor) * (percent - below.percent)) / (above.percent - below.percent);
}
