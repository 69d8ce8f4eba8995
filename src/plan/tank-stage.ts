/**
 * The tank: what it gives between cut-out and cut-in, and how often the pump starts on it.
 *
 * @module
 */
import { cubicValue, monotoneCubic } from "../numeric/index.ts";
import type { PumpCurve } from "../pump/index.ts";
import {
  type AirCharge,
  motorStartLimit,
  recommendedPrecharge,
  tankDrawdown,
  tankFillTime,
  tankSizeForRunTime,
  type WorstDemand,
  worstDemandOnCurve,
} from "../tank/index.ts";
import type { AbsolutePressure, Duration, GaugePressure, Power, Volume, VolumeFlow } from "../units/index.ts";
import { valveOf } from "./controls-stage.ts";
import { type Finding, PRACTICE } from "./finding.ts";
import { finding } from "./findings.ts";
import type { Job } from "./job.ts";
import { flowAt, type Lift } from "./lift.ts";
import type { TankStage } from "./stages.ts";

/** Shortest run where the job asks for none: one minute, common practice. */
const USUAL_RUN_TIME = 60 as Duration;
/** Tank where there is neither a tank nor a pump to size one for. */
const SMALL_TANK = 0.075 as Volume;

/** The tank of the job, or the one its pump needs. */
export function tankStage(
  lift: Lift,
  curve: PumpCurve | null,
  atmosphere: AbsolutePressure,
  motorPower: Power | null,
): TankStage {
  const { tank, controls } = lift.job;
  const { cutIn, cutOut } = controls;
  const precharge = tank?.precharge ?? recommendedPrecharge(cutIn);
  const pumpFlow = curve === null ? (0 as VolumeFlow) : flowAt(lift, curve, cutIn);
  const volume = tank?.volume ?? sized(lift, precharge, pumpFlow, atmosphere);
  const charge = { volume, precharge, atmosphere };
  const filling = curve === null ? null : fillingOf(lift, curve, charge);
  return {
    volume,
    volumeBy: tank?.volume === undefined ? "plan" : "job",
    precharge,
    maximumPressure: tank?.maximumPressure ?? null,
    drawdown: tankDrawdown({ ...charge, cutIn, cutOut }),
    worst: filling?.worst ?? null,
    mostStarts: motorPower === null ? null : motorStartLimit(motorPower).perHour,
    fillTime: filling?.time ?? null,
  };
}

/** Filling and the worst use with the pump's own curve, the valve throttling it above its set pressure. */
function fillingOf(
  lift: Lift,
  curve: PumpCurve,
  charge: AirCharge,
): { readonly time: Duration; readonly worst: WorstDemand | null } | null {
  const { cutIn, cutOut } = lift.job.controls;
  const valve = valveOf(lift.job);
  const open = readOff(lift, curve);
  const throttled = (pressure: GaugePressure): VolumeFlow =>
    (valve !== null && pressure > valve.setPressure
      ? Math.min(open(pressure), valve.minimumFlow)
      : open(pressure)) as VolumeFlow;
  if (!(throttled(cutOut) > 0)) return null;
  // The flow steps down at the set pressure, so the filling is summed on either side of it.
  const set = Math.min(Math.max(valve?.setPressure ?? cutOut, cutIn), cutOut) as GaugePressure;
  const parts = [
    ...(set > cutIn
      ? [tankFillTime({ ...charge, cutIn, cutOut: set, pumpFlowAt: open, demand: 0 as VolumeFlow })]
      : []),
    ...(cutOut > set
      ? [tankFillTime({ ...charge, cutIn: set, cutOut, pumpFlowAt: throttled, demand: 0 as VolumeFlow })]
      : []),
  ];
  const time = parts.reduce((sum, part) => sum + (part.state === "fills" ? part.time : 0), 0) as Duration;
  const worst = worstDemandOnCurve({ ...charge, cutIn, cutOut, pumpFlowAt: throttled });
  return { time, worst: worst.state === "cycles" ? worst : null };
}

/** Pressures at which the operating point is found; between them the flow is read off a smooth line. */
const READINGS = 16;

/** Flow against pressure from cut-in to cut-out, found at some pressures and interpolated: quadrature asks for thousands. */
function readOff(lift: Lift, curve: PumpCurve): (pressure: GaugePressure) => VolumeFlow {
  const { cutIn, cutOut } = lift.job.controls;
  const x = Array.from({ length: READINGS + 1 }, (_, i) => cutIn + ((cutOut - cutIn) * i) / READINGS);
  const y = x.map((pressure) => flowAt(lift, curve, pressure as GaugePressure));
  const line = monotoneCubic(x, y);
  return (pressure) => Math.max(cubicValue(line, Math.min(Math.max(pressure, cutIn), cutOut)), 0) as VolumeFlow;
}

function sized({ job }: Lift, precharge: GaugePressure, pumpFlow: VolumeFlow, atmosphere: AbsolutePressure): Volume {
  if (!(pumpFlow > 0)) return SMALL_TANK;
  const { cutIn, cutOut } = job.controls;
  const runTime = job.tank?.leastRunTime ?? USUAL_RUN_TIME;
  const size = tankSizeForRunTime({ pumpFlow, cutIn, cutOut, precharge, atmosphere, runTime });
  return size.state === "sized" ? size.volume : SMALL_TANK;
}

/** Precharge, run time and starts against their limits. */
export function tankFindings(job: Job, stage: TankStage, motorPower: Power | null): readonly Finding[] {
  const { tank, controls } = job;
  const { worst } = stage;
  const leastRun = tank?.leastRunTime ?? USUAL_RUN_TIME;
  return [
    ...prechargeFindings(stage),
    ...(tank?.maximumPressure === undefined
      ? []
      : finding({
          code: "tank-rating-exceeded",
          stage: "tank",
          kind: "pressure",
          value: controls.cutOut,
          limit: tank.maximumPressure,
          wrong: "above",
          severity: "stop",
          message: "The switch stops the pump above the tank's highest working pressure.",
          remedy: "Lower the cut-out or take a tank for the pressure.",
          basis: { kind: "given", locator: "tank plate" },
        })),
    ...(worst === null
      ? []
      : [
          ...finding({
            code: "run-too-short",
            stage: "tank",
            kind: "shortTime",
            value: stage.fillTime ?? 0,
            limit: leastRun,
            wrong: "below",
            severity: "fix",
            message: "The tank fills from cut-in to cut-out in less than the shortest run a motor should have.",
            remedy: "Take a larger tank or a wider switch setting.",
            basis: tank?.leastRunTime === undefined ? PRACTICE : { kind: "given", locator: "least run time" },
          }),
          ...startFindings(worst, motorPower),
        ]),
  ];
}

/** Starts at the worst use against what motors of the power stand in an hour. */
function startFindings({ starts }: WorstDemand, power: Power | null): readonly Finding[] {
  if (power === null) return [];
  const limit = motorStartLimit(power);
  return finding({
    code: "starts-too-often",
    stage: "tank",
    kind: "startsPerHour",
    value: starts,
    limit: limit.perHour,
    wrong: "above",
    severity: "fix",
    message: "At the worst use the pump would start more often in an hour than its motor should.",
    remedy: "Take a larger tank, or a regulating valve.",
    basis: { kind: "published", source: limit.method },
  });
}

function prechargeFindings({ drawdown, precharge }: TankStage): readonly Finding[] {
  const base = {
    stage: "tank",
    kind: "pressure",
    value: precharge,
    basis: { kind: "published", source: drawdown.method },
  } as const;
  switch (drawdown.precharge) {
    case "right":
      return [];
    case "too low":
      return finding({
        ...base,
        code: "precharge-low",
        limit: drawdown.recommendedPrecharge,
        wrong: "below",
        severity: "look",
        message: "The precharge is lower than practice: the tank gives less water and its membrane stretches more.",
        remedy: "Pump the empty tank up to the recommended precharge.",
      });
    default:
      return finding({
        ...base,
        code: "precharge-high",
        limit: drawdown.recommendedPrecharge,
        wrong: "above",
        severity: drawdown.usable <= 0 ? "stop" : "fix",
        message:
          "The precharge is at or above cut-in: the tank is empty before the pump starts, and the pressure drops at once.",
        remedy: "Let air out of the empty tank down to the recommended precharge.",
      });
  }
}
