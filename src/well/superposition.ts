/**
 * Drawdown of a well whose flow changes: pumping on and off, and the recovery after it.
 *
 * @module
 */
import { requireList, requireObject, requireWhole, requireWithin } from "../numeric/index.ts";
import { type Duration, InputError, type Length, type VolumeFlow } from "../units/index.ts";
import { type Aquifer, requireAquifer } from "./theis.ts";
import { wellFunction } from "./well-function.ts";

/** From a time on the well is pumped at a flow. */
export interface FlowChange {
  /** When it begins, after the well's rest. 0 to 1e12 s. */
  readonly time: Duration;
  /** Flow from then on; 0 is rest. 0 to 100 m³/s. */
  readonly flow: VolumeFlow;
}

/** An aquifer, a history of pumping and the time to look. */
export interface ScheduleInput {
  /** The aquifer. */
  readonly aquifer: Aquifer;
  /** 1 to 100 000 changes, in order of time. */
  readonly changes: readonly FlowChange[];
  /** When to look. 0 to 1e12 s; changes after it do not count. */
  readonly at: Duration;
}

/**
 * Drawdown in the aquifer at a moment of any history of pumping.
 *
 * @remarks
 * The sum over the changes before `at` of ΔQ W(uᵢ) / (4 π T) with uᵢ taken from the time since the change: the equation
 * of a confined aquifer is linear, so histories add. Never below 0: recovery does not pass the static level.
 *
 * @param input - the aquifer, the changes of flow and the moment; each field says its unit and the values it takes
 * @returns fall of the level below static, m, without loss in the well
 * @throws {@link units.InputError} naming the first field that cannot be used, or changes out of order
 *
 * @example Four hours of pumping, twenty of rest
 * ```ts
 * import { drawdownOfSchedule } from "risingmain/well";
 * import { gpm, hours, inFeet, inches, usGallonsPerDayPerFoot } from "risingmain/units";
 *
 * const aquifer = { transmissivity: usGallonsPerDayPerFoot(2000), storativity: 1e-4, radius: inches(3) };
 * const changes = [{ time: hours(0), flow: gpm(15) }, { time: hours(4), flow: gpm(0) }];
 * inFeet(drawdownOfSchedule({ aquifer, changes, at: hours(4) })); // ≈ 14.26
 * inFeet(drawdownOfSchedule({ aquifer, changes, at: hours(24) })); // ≈ 0.16
 * ```
 *
 * @source theis-1935: superposition of solutions
 */
export function drawdownOfSchedule(input: ScheduleInput): Length {
  requireObject("input", input);
  const { aquifer, changes, at } = input;
  requireAquifer(aquifer, "aquifer");
  requireList("changes", changes, 1, 100_000);
  requireWithin("at", at, 0, 1e12, "s");
  const { transmissivity: T, storativity, radius } = aquifer;
  let flowBefore = 0;
  let timeBefore = -1;
  let sum = 0;
  for (let i = 0; i < changes.length; i++) {
    const change = changes[i] as FlowChange;
    requireObject(`changes[${i}]`, change);
    requireWithin(`changes[${i}].time`, change.time, 0, 1e12, "s");
    requireWithin(`changes[${i}].flow`, change.flow, 0, 100, "m³/s");
    if (!(change.time > timeBefore)) {
      throw new InputError(`changes[${i}].time`, change.time, "later than the change before it");
    }
    const since = at - change.time;
    if (since > 0) sum += (change.flow - flowBefore) * wellFunction((radius * radius * storativity) / (4 * T * since));
    flowBefore = change.flow;
    timeBefore = change.time;
  }
  // Terms of opposite sign leave rounding of either sign where the true sum is 0.
  return Math.max(0, sum / (4 * Math.PI * T)) as Length;
}

/** A pump that runs and rests in turn. */
export interface IntermittentInput {
  /** Flow while it runs. 0 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Time it runs in each turn. Above 0 to below `cycleTime`, s. */
  readonly runTime: Duration;
  /** From one start to the next. 1e-3 to 1e9 s. */
  readonly cycleTime: Duration;
  /** Turns, a whole number from 1 to 50 000. */
  readonly cycles: number;
}

/**
 * The changes of flow of a pump that runs and rests in turn, for {@link drawdownOfSchedule}.
 *
 * @param input - flow, running time, cycle and number of turns; each field says its unit and the values it takes
 * @returns two changes a turn, from time 0
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { intermittentSchedule } from "risingmain/well";
 * import { days, gpm, hours } from "risingmain/units";
 *
 * intermittentSchedule({ flow: gpm(15), runTime: hours(4), cycleTime: days(1), cycles: 30 }).length; // => 60
 * ```
 *
 * @source derived: a list of on and off
 */
export function intermittentSchedule(input: IntermittentInput): readonly FlowChange[] {
  requireObject("input", input);
  const { flow, runTime, cycleTime, cycles } = input;
  requireWithin("flow", flow, 0, 100, "m³/s");
  requireWithin("cycleTime", cycleTime, 1e-3, 1e9, "s");
  requireWithin("runTime", runTime, 1e-6, 1e9, "s");
  if (!(runTime < cycleTime)) throw new InputError("runTime", runTime, `less than the cycle, ${cycleTime} s`);
  requireWhole("cycles", cycles, 1, 50_000);
  const changes: FlowChange[] = [];
  for (let i = 0; i < cycles; i++) {
    const start = i * cycleTime;
    changes.push({ time: start as Duration, flow }, { time: (start + runTime) as Duration, flow: 0 as VolumeFlow });
  }
  return changes;
}
