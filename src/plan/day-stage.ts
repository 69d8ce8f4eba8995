/**
 * A day of use, run through event by event: starts, running time, energy.
 *
 * @module
 */
import type { PumpCurve } from "../pump/index.ts";
import { type DemandSegment, type MainLossPoint, type RunningSystem, simulate } from "../system/index.ts";
import { motorStartLimit } from "../tank/index.ts";
import {
  type AbsolutePressure,
  type Duration,
  days,
  hours,
  type Length,
  perDay,
  type Volume,
  type VolumeFlow,
} from "../units/index.ts";
import { valveOf } from "./controls-stage.ts";
import type { Finding } from "./finding.ts";
import { finding } from "./findings.ts";
import type { JobMotor } from "./job.ts";
import { tankElevation } from "./layout-solve.ts";
import { dropPipeLoss, type Lift, valveLossAt } from "./lift.ts";
import type { DayStage, DemandStage, TankStage } from "./stages.ts";
import { type Use, usesOf } from "./uses.ts";

/** Points of the loss between pump and tank; the line through them is smooth. */
const LOSS_POINTS = 24;
/** Draws in a day: the day's water is taken in as many equal parts, the uses in turn. */
const DRAWS = 24;

/** What the day is run with. */
export interface DayBasis {
  readonly lift: Lift;
  readonly curve: PumpCurve;
  readonly motor: JobMotor;
  readonly tank: TankStage;
  readonly demand: DemandStage;
  readonly atmosphere: AbsolutePressure;
  /** Depth to the water at the most flow. */
  readonly lowestLevel: Length;
  /** Efficiency of the motor at full load. */
  readonly motorEfficiency: number;
}

/** The day run through; null where there is nothing to run, or the job does not say how much a day takes. */
export function dayStage(basis: DayBasis, running: RunningSystem | null): DayStage | null {
  const { daily } = basis.demand;
  if (running === null || daily === null || daily.volume <= 0) return null;
  const demand = pattern(usesOf(basis.lift.job), daily.volume);
  const run = simulate({ system: running, demand, duration: days(1), keepEvents: 0 });
  const water = run.delivered + run.refused;
  return {
    state: run.state,
    demand,
    draws: DRAWS,
    starts: run.starts,
    mostStartsInAnHour: run.mostStartsInAnHour,
    runTime: run.runTime,
    shortestRun: run.shortestRun,
    delivered: run.delivered,
    refused: run.refused,
    energy: run.energy,
    energyPerVolume: run.energy === null || !(run.delivered > 0) ? null : run.energy / run.delivered,
    servedShare: (water > 0 ? run.delivered / water : 1) as DayStage["servedShare"],
  };
}

/** The system as planned; null where its pump's curve rises in part, or its intake hangs out of the water. */
export function runningSystem({ lift, curve, tank, atmosphere, motorEfficiency }: DayBasis): RunningSystem | null {
  const { job, water, law, setting, staticLevel } = lift;
  // An intake out of the water has its own finding; there is nothing to run.
  if (curve.shape !== "falling" || setting <= staticLevel) return null;
  const { cutIn, cutOut } = job.controls;
  const valve = valveOf(job);
  return {
    pump: curve,
    motorEfficiency: motorEfficiency as never,
    // A flowing well stands above the ground: its head is part of the rise, so that the depth starts at nothing.
    well: {
      staticLevel: Math.max(staticLevel, 0) as Length,
      law,
      intake: (setting - Math.min(staticLevel, 0)) as Length,
    },
    rise: (tankElevation(job) + Math.min(staticLevel, 0)) as Length,
    mainLoss: lossPoints(lift, curve),
    control: { kind: "switch", cutIn, cutOut, ...(valve === null ? {} : { valve }) },
    tanks: [{ volume: tank.volume, precharge: tank.precharge }],
    atmosphere,
    density: water.density,
  };
}

function lossPoints(lift: Lift, curve: PumpCurve): readonly MainLossPoint[] {
  const { job, water } = lift;
  return Array.from({ length: LOSS_POINTS }, (_, i) => {
    const flow = (curve.runoutFlow * ((i + 1) / LOSS_POINTS)) as VolumeFlow;
    const { pipe, fittings } = dropPipeLoss(lift, flow);
    return { flow, headLoss: (pipe + fittings + valveLossAt(job, flow, water.density)) as Length };
  });
}

/** Each hour takes its share of the day's water, at the flow of the uses in turn. */
function pattern(uses: readonly Use[], volume: Volume): readonly DemandSegment[] {
  const share = volume / DRAWS;
  const hour = hours(1);
  return Array.from({ length: DRAWS }, (_, i) => uses[i % uses.length] as Use).flatMap(
    ({ flow }): readonly DemandSegment[] => {
      const open = share / flow;
      if (open >= hour) return [{ duration: hour, flow: (share / hour) as VolumeFlow }];
      return [
        { duration: open as Duration, flow },
        { duration: (hour - open) as Duration, flow: 0 as VolumeFlow },
      ];
    },
  );
}

/** The day against the motor's starts and the water asked for. */
export function dayFindings({ motor, lift, lowestLevel }: DayBasis, day: DayStage | null): readonly Finding[] {
  if (day === null) return [];
  const given = lift.job.tank?.mostStartsPerDay;
  const published = motorStartLimit(motor.power);
  return [
    ...finding({
      code: "starts-a-day",
      stage: "day",
      kind: "startsPerDay",
      value: perDay(day.starts),
      limit: given === undefined ? published.perDay : perDay(given),
      wrong: "above",
      severity: "fix",
      message: "In a day of use the pump starts more often than its motor should.",
      remedy: "Take a larger tank, or a regulating valve.",
      basis:
        given === undefined
          ? { kind: "published", source: published.method }
          : { kind: "given", locator: "most starts in a day" },
    }),
    ...(day.state === "ran dry"
      ? finding({
          code: "runs-dry",
          stage: "day",
          kind: "length",
          value: lowestLevel,
          limit: lift.setting,
          wrong: "at or above",
          severity: "stop",
          message: "In a day of use the water falls to the intake and the pump runs dry.",
          remedy: "Set the pump deeper, use less at once, and fit a dry-run cut-off.",
          basis: { kind: "derived", locator: "drawdown at the pump's flow against the setting" },
        })
      : []),
    ...finding({
      code: "water-refused",
      stage: "day",
      kind: "ratio",
      value: day.servedShare,
      limit: SERVED,
      wrong: "below",
      severity: "fix",
      message: "In a day of use some of the water asked for does not come.",
      remedy: "Take a larger pump or fewer outlets at once.",
      basis: { kind: "derived", locator: "volume delivered over volume asked for" },
    }),
  ];
}

/** All of the water, but for rounding. */
const SERVED = 0.999;
