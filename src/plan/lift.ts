/**
 * From the water in the well to the tank: the head it takes at a flow and a pressure, and the flow a pump gives.
 *
 * @module
 */
import { headOfPressureDifference, pressureOfHead, type TotalDynamicHead, totalDynamicHead } from "../head/index.ts";
import type { PipeSize } from "../pipe/index.ts";
import { type OperatingPoint, operatingPoint, type PumpCurve, pumpHeadAt, shutoffPressure } from "../pump/index.ts";
import type { Density, GaugePressure, Length, PressureDifference, VolumeFlow } from "../units/index.ts";
import type { Water } from "../water/index.ts";
import { type DrawdownLaw, drawdownAt } from "../well/index.ts";
import type { Job, JobFitting } from "./job.ts";
import { tankElevation } from "./layout-solve.ts";
import { runLoss } from "./pipes.ts";

/** What a pipe or a valve far too small for its flow is reckoned to take, m: more than any pump lifts. */
const MOST_LOSS = 3000;
/** The same as a pressure, Pa. */
const MOST_PRESSURE_LOSS = 3e7;

/** Everything between the water at rest and the tank. */
export interface Lift {
  /** The job. */
  readonly job: Job;
  /** Its water. */
  readonly water: Water;
  /** Drawdown of its well. */
  readonly law: DrawdownLaw;
  /** The drop pipe. */
  readonly dropPipe: PipeSize;
  /** Depth of the intake. */
  readonly setting: Length;
  /** Depth to the water at rest: the usual one, or the highest. */
  readonly staticLevel: Length;
}

/** Length of the drop pipe: from the intake to the tank's connection. */
export function dropPipeLength({ job, setting }: Lift): Length {
  return (setting + Math.max(tankElevation(job), 0)) as Length;
}

/** The fittings of the drop pipe, its check valves with them. */
function dropPipeFittings({ dropPipe }: Job): readonly JobFitting[] {
  const { fittings = [], checkValves = 0 } = dropPipe ?? {};
  // The pump's own check valve counts once.
  return [...fittings, { kind: "swing check valve", count: checkValves + 1 }];
}

/** Head lost in the drop pipe at a flow, pipe and fittings apart. */
export function dropPipeLoss(lift: Lift, flow: VolumeFlow): { readonly pipe: Length; readonly fittings: Length } {
  const { job, water, dropPipe } = lift;
  const run = { pipe: dropPipe, length: dropPipeLength(lift), fittings: dropPipeFittings(job) };
  const { pipe, fittings } = runLoss(run, flow, water.kinematicViscosity);
  return { pipe: Math.min(pipe, MOST_LOSS) as Length, fittings: Math.min(fittings, MOST_LOSS) as Length };
}

/** Head lost in the regulating valve wide open: as the square of the flow. */
export function valveLossAt({ controls }: Job, flow: VolumeFlow, density: Density): Length {
  const { loss, ratedFlow } = controls.regulatingValve ?? {};
  if (loss === undefined || ratedFlow === undefined) return 0 as Length;
  const pressureDifference = Math.min(loss * (flow / ratedFlow) ** 2, MOST_PRESSURE_LOSS) as PressureDifference;
  return headOfPressureDifference({ pressureDifference, density });
}

/** Head from the water at rest to the tank at a flow and a pressure there, part by part. */
export function headTaken(lift: Lift, flow: VolumeFlow, pressure: GaugePressure): TotalDynamicHead {
  const { job, water, law, staticLevel } = lift;
  const { density } = water;
  const { pipe, fittings } = dropPipeLoss(lift, flow);
  return totalDynamicHead({
    staticLevel,
    drawdown: drawdownAt(law, flow),
    elevation: tankElevation(job),
    dischargePressure: pressure,
    losses: [
      { name: "drop pipe", headLoss: pipe },
      { name: "fittings and check valves", headLoss: fittings },
      { name: "regulating valve", headLoss: valveLossAt(job, flow, density) },
    ],
    density,
  });
}

/** What a pump does against the lift at a pressure. */
export function pumpAt(lift: Lift, curve: PumpCurve, pressure: GaugePressure): OperatingPoint {
  return operatingPoint({ curve, systemHead: (flow) => headTaken(lift, flow, pressure).totalDynamicHead });
}

/** Flow of a pump into the tank at a pressure: 0 where it cannot lift, the curve's last where it runs out past it. */
export function flowAt(lift: Lift, curve: PumpCurve, pressure: GaugePressure): VolumeFlow {
  const point = pumpAt(lift, curve, pressure);
  if (point.state === "running") return point.flow;
  return (point.state === "runs out" ? point.moreThan : 0) as VolumeFlow;
}

/** Gauge pressure at the tank with the pump at the end of its curve: where it is above the switch's, the pump runs out. */
export function pressureAtRunout(lift: Lift, curve: PumpCurve): GaugePressure {
  const flow = curve.runoutFlow;
  const head = (pumpHeadAt(curve, flow) - headTaken(lift, flow, 0 as GaugePressure).totalDynamicHead) as Length;
  return pressureOfHead({ head, density: lift.water.density });
}

/** Gauge pressure at the tank against a closed valve. */
export function pressureAtShutoff({ job, water, staticLevel }: Lift, curve: PumpCurve): GaugePressure {
  return shutoffPressure({ curve, staticLevel: (staticLevel + tankElevation(job)) as Length, density: water.density })
    .pressure;
}
