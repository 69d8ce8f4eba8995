/**
 * The log of a well while it is pumped and while it recovers: drawdown, specific capacity, steadiness, recovery.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Length, Ratio, VolumeFlow } from "../units/index.ts";
import { type Carried, carried, type TrialOptions } from "./carried.ts";
import { FLOW_SHARE, TAPE } from "./usual-doubts.ts";

/** One reading of a pumping test. */
export interface LevelReading {
  /** Time since the pump was started. 0 to 1 year, s. */
  readonly time: Duration;
  /** Depth to water, from the same point as the static level. 0 to 5000 m. */
  readonly level: Length;
}

/** A pumping test's log. */
export interface DrawdownLogInput extends TrialOptions {
  /** Depth to water before the pump was started. 0 to 5000 m. */
  readonly staticLevel: Length;
  /** Steady flow while pumped. 1e-9 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** When the pump was stopped, from its start; pumped to the end of the log where left out. 0 to 1 year, s. */
  readonly stopped?: Duration;
  /** Readings in order of time; 1 to 100 000. */
  readonly readings: readonly LevelReading[];
  /** Span over which the level is judged. 60 s to 1 day; 1 h where left out. */
  readonly steadySpan?: Duration;
  /** Most change in that span that still counts as steady. 0 to 100 m; 0.03 m (a tenth of a foot) where left out, common
   * practice. */
  readonly steadyChange?: Length;
  /** Standard uncertainty of one level. 0 to 100 m; 0.01 ft, a graduated tape's, where left out. */
  readonly levelUncertainty?: Length;
  /** Standard uncertainty of the flow. 0 to 1000 m³/s; 3 % of it where left out (common practice). */
  readonly flowUncertainty?: VolumeFlow;
}

/** One line of the log, worked. */
export interface DrawdownEntry {
  /** Time since the start, s. */
  readonly time: Duration;
  /** Drawdown, or in recovery the residual drawdown, m; negative where the water stands over the static level. */
  readonly drawdown: Length;
  /** "pumping" or "recovering". */
  readonly phase: "pumping" | "recovering";
}

/** The log, worked. */
export interface DrawdownLog {
  /** Each reading, worked. */
  readonly entries: readonly DrawdownEntry[];
  /** Drawdown at the last reading while pumping, m; 0 where there is none. */
  readonly finalDrawdown: Length;
  /** Standard uncertainty of a drawdown, two levels being in it, m. */
  readonly drawdownUncertainty: Length;
  /** Flow over that drawdown, m²/s (gpm/ft is 2.07e-4 of it); null where the drawdown is none. Falls as the test goes on. */
  readonly specificCapacity: number | null;
  /** Its uncertainty, m²/s; null with it. */
  readonly specificCapacityDoubt: Carried<number> | null;
  /** Whether the level held still over the last span of pumping: "steady", "falling", "rising", or "too short" to tell. */
  readonly steadiness: "steady" | "falling" | "rising" | "too short";
  /** Share of the final drawdown won back at the last reading after the stop; null without one. */
  readonly recovery: Ratio | null;
  /** Its uncertainty; null with it. The static level is in both drawdowns, and counts once. */
  readonly recoveryDoubt: Carried<Ratio> | null;
  /** Time from the stop to 90 % recovery, by a straight line between readings, s; null where it was not reached. */
  readonly timeToRecover: Duration | null;
}

const USUAL_SPAN = 3600;
const USUAL_CHANGE = 0.03;
/** Recovery that counts as recovered, common practice. */
const RECOVERED = 0.9;

/**
 * Works a log of water levels through pumping and recovery.
 *
 * @remarks
 * drawdown = level − static level; specific capacity = flow/drawdown at the last pumping reading; recovery = 1 − residual
 * drawdown/final drawdown. A specific capacity is a figure of its own flow and time: a longer or harder test gives less.
 *
 * @param input - static level, flow, stop and readings; each field says its unit and range
 * @returns the lines worked, specific capacity, steadiness and recovery
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { drawdownLog } from "risingmain/field";
 * import { feet, gpm, hours, inFeet, inMinutes, minutes } from "risingmain/units";
 *
 * const log = drawdownLog({
 *   staticLevel: feet(60), flow: gpm(10), stopped: hours(4),
 *   readings: [
 *     { time: hours(1), level: feet(88) }, { time: hours(3), level: feet(90) }, { time: hours(4), level: feet(90.05) },
 *     { time: minutes(270), level: feet(66) }, { time: minutes(300), level: feet(62) },
 *   ],
 * });
 * log.steadiness; // => "steady"
 * inFeet(log.finalDrawdown); // ≈ 30.05
 * if (log.timeToRecover === null) throw new Error("not recovered");
 * inMinutes(log.timeToRecover); // ≈ 52
 * ```
 *
 * @source derived: definitions of drawdown, specific capacity and recovery
 * @source common practice: the tenth of a foot and the 90 %
 * @source jcgm-100, 5.1.2
 * @source usgs-gwpd-4: the tape
 */
export function drawdownLog(input: DrawdownLogInput): DrawdownLog {
  requireObject("input", input);
  const { staticLevel, flow, readings, steadySpan = USUAL_SPAN, steadyChange = USUAL_CHANGE } = input;
  requireWithin("staticLevel", staticLevel, 0, 5000, "m");
  requireWithin("flow", flow, 1e-9, 1000, "m³/s");
  requireWithin("steadySpan", steadySpan, 60, 86_400, "s");
  requireWithin("steadyChange", steadyChange, 0, 100, "m");
  const { levelUncertainty = TAPE, flowUncertainty = FLOW_SHARE * flow } = input;
  requireWithin("levelUncertainty", levelUncertainty, 0, 100, "m");
  requireWithin("flowUncertainty", flowUncertainty, 0, 1000, "m³/s");
  requireReadings(readings);
  if (input.stopped !== undefined) requireWithin("stopped", input.stopped, 0, 31_557_600, "s");
  const stopped = input.stopped ?? Number.POSITIVE_INFINITY;

  const entries = readings.map(
    ({ time, level }): DrawdownEntry => ({
      time,
      drawdown: (level - staticLevel) as Length,
      phase: time <= stopped ? "pumping" : "recovering",
    }),
  );
  const pumping = entries.filter(({ phase }) => phase === "pumping");
  const recovering = entries.filter(({ phase }) => phase === "recovering");
  const last = pumping[pumping.length - 1];
  const drawdown = last?.drawdown ?? 0;
  const lastRecovery = recovering[recovering.length - 1];
  const known = drawdown > LEAST_DRAWDOWN;
  // Levels enter as their errors, so that the slopes are taken by steps of a tape's doubt and not of a deep well's depth.
  const level = (name: string) => ({ name, value: 0, standardUncertainty: levelUncertainty, low: -1e3, high: 1e3 });
  const drawn = (atRest: number, pumped: number): number => Math.max(drawdown + pumped - atRest, LEAST_DRAWDOWN);
  return {
    entries,
    finalDrawdown: drawdown as Length,
    drawdownUncertainty: (Math.SQRT2 * levelUncertainty) as Length,
    specificCapacity: known ? flow / drawdown : null,
    specificCapacityDoubt: known
      ? carried(
          [
            { name: "flow", value: flow, standardUncertainty: flowUncertainty, low: 0, high: 1e4 },
            level("staticLevel"),
            level("pumpingLevel"),
          ],
          ([q = 0, atRest = 0, pumped = 0]) => q / drawn(atRest, pumped),
          input,
        )
      : null,
    steadiness: steadiness(pumping, steadySpan, steadyChange),
    recovery: known && lastRecovery !== undefined ? ((1 - lastRecovery.drawdown / drawdown) as Ratio) : null,
    recoveryDoubt:
      known && lastRecovery !== undefined
        ? carried<Ratio>(
            [level("staticLevel"), level("pumpingLevel"), level("recoveringLevel")],
            ([atRest = 0, pumped = 0, risen = 0]) =>
              1 - (lastRecovery.drawdown + risen - atRest) / drawn(atRest, pumped),
            input,
          )
        : null,
    timeToRecover: known && last !== undefined ? timeToRecover(last, recovering, stopped) : null,
  };
}

/** A drawdown under a micrometre is none. */
const LEAST_DRAWDOWN = 1e-6;

function steadiness(pumping: readonly DrawdownEntry[], span: number, change: number): DrawdownLog["steadiness"] {
  const last = pumping[pumping.length - 1];
  if (last === undefined) return "too short";
  // The latest reading that is at least a span old; readings are far apart, so the span may be longer.
  const earlier = pumping.filter(({ time }) => time <= last.time - span).pop();
  if (earlier === undefined) return "too short";
  const moved = last.drawdown - earlier.drawdown;
  if (Math.abs(moved) <= change) return "steady";
  return moved > 0 ? "falling" : "rising";
}

function timeToRecover(last: DrawdownEntry, recovering: readonly DrawdownEntry[], stopped: number): Duration | null {
  const residual = last.drawdown * (1 - RECOVERED);
  // From the stop on: the drawdown of the last pumping reading is taken as that at the stop.
  let before = { time: stopped, drawdown: last.drawdown as number };
  for (const { time, drawdown } of recovering) {
    if (drawdown <= residual) {
      const share = (before.drawdown - residual) / (before.drawdown - drawdown);
      return (before.time + share * (time - before.time) - stopped) as Duration;
    }
    before = { time, drawdown };
  }
  return null;
}

function requireReadings(readings: readonly LevelReading[]): void {
  requireList("readings", readings, 1, 100_000);
  let previous = 0;
  readings.forEach((reading, i) => {
    requireObject(`readings[${i}]`, reading);
    requireWithin(`readings[${i}].time`, reading.time, previous, 31_557_600, "s (not before the reading ahead of it)");
    requireWithin(`readings[${i}].level`, reading.level, 0, 5000, "m");
    previous = reading.time;
  });
}
