/**
 * The pump: the duty, its setting, the pumps of the list tried in this well, and the one to take.
 *
 * @module
 */
import {
  acceptanceTolerance,
  hydraulicPower,
  type OperatingPoint,
  operatingBand,
  type PumpCurve,
  pumpCurve,
  pumpEfficiencyAt,
  pumpHeadAt,
} from "../pump/index.ts";
import type { GaugePressure, Length, Power, VolumeFlow } from "../units/index.ts";
import { drawdownAt, motorCooling, type PumpSetting, pumpSetting } from "../well/index.ts";
import type { Job, JobPumpCandidate } from "./job.ts";
import { pressureWhileUsed } from "./layout-stage.ts";
import { flowAt, headTaken, type Lift, pressureAtRunout, pressureAtShutoff, pumpAt } from "./lift.ts";
import { type MeasureKind, measure } from "./measure.ts";
import type { CandidateFault, CandidatePlan, ChosenPump, PumpPoint, PumpStage } from "./stages.ts";
import { usesOf } from "./uses.ts";

/** What the pump stage is worked out from. */
export type PumpBasis = Omit<Lift, "setting" | "staticLevel"> & { readonly dutyFlow: VolumeFlow };

/** Where the pump hangs when no pump is known: length below the intake in the usual range, common practice. */
const USUAL_LENGTH_BELOW_INTAKE = 0.5;
/** Water kept over the intake for dry seasons where the plan sets the depth and the hole has room: 20 ft, common practice. */
const DRY_SEASON_RESERVE = 6.096;
/** Steps along the curve in the search for the greatest shaft power. */
const POWER_STEPS = 64;

/** The pump stage, and the lift and candidate behind it for the stages that follow. */
export interface PumpWork {
  /** What the plan shows. */
  readonly stage: PumpStage;
  /** The lift with the setting settled. */
  readonly lift: Lift;
  /** The chosen pump's curve and entry; null where there is none. */
  readonly pump: { readonly candidate: JobPumpCandidate; readonly curve: PumpCurve } | null;
}

/** Works out the pump. */
export function pumpStage(basis: PumpBasis): PumpWork {
  const { job, dutyFlow } = basis;
  const { staticLevel } = job.well;
  const tried = (job.pump?.candidates ?? []).map((candidate) => tryCandidate(basis, candidate));
  tried.sort((a, b) => Number(b.plan.suits) - Number(a.plan.suits) || a.powerPerFlow - b.powerPerFlow);
  const best = tried.find(({ plan }) => plan.suits) ?? (tried.length === 1 ? tried[0] : undefined);
  const setting = best?.setting ?? settingOf(basis, dutyFlow, undefined);
  const lift = { ...basis, setting: setting.depth, staticLevel };
  return {
    stage: {
      dutyFlow,
      duty: headTaken(lift, dutyFlow, dutyPressure(job)),
      setting: setting.depth,
      settingBy: job.pump?.setting === undefined ? "plan" : "job",
      settingChecks: setting.checks,
      casingServes: setting.casingServes,
      lowestLevel: setting.lowestLevel,
      candidates: tried.map(({ plan }) => plan),
      chosen: best === undefined ? null : chosenPump(lift, best.candidate, best.curve, best.plan),
    },
    lift,
    pump: best === undefined ? null : { candidate: best.candidate, curve: best.curve },
  };
}

/** Pressure the duty is reckoned at: the pump must still fill the tank to cut-out; behind a valve, hold the valve's. */
export function dutyPressure(job: Job): GaugePressure {
  return job.controls.regulatingValve === undefined ? job.controls.cutOut : pressureWhileUsed(job);
}

/** A depth for the intake, and how it does. */
interface Setting {
  readonly depth: Length;
  readonly checks: PumpSetting;
  /** Whether some depth inside the casing would do; where none does, the open hole below it is the right place. */
  readonly casingServes: boolean;
  /** The lowest water the depth was chosen for. */
  readonly lowestLevel: Length;
}

/** The setting for the lowest water, that of a flow. */
function settingOf({ job, law }: PumpBasis, flow: VolumeFlow, candidate: JobPumpCandidate | undefined): Setting {
  const { well } = job;
  const { length, lengthBelowIntake = length === undefined ? USUAL_LENGTH_BELOW_INTAKE : length / 2 } = candidate ?? {};
  // Water cannot fall below the bottom; a law carried beyond its test may say it does.
  const lowestLevel = Math.min(well.staticLevel + drawdownAt(law, flow), well.depth) as Length;
  const input = {
    lengthBelowIntake: lengthBelowIntake as Length,
    wellDepth: well.depth,
    casingDepth: well.casingDepth ?? well.depth,
    ...(well.screenTop === undefined ? {} : { screenTop: well.screenTop }),
    pumpingLevel: lowestLevel,
  };
  // Any depth will do to ask for the good ones.
  const inCasing = pumpSetting({ ...input, pumpSetting: well.depth });
  const casingServes = inCasing.shallowest <= inCasing.deepest;
  const given = job.pump?.setting;
  if (given !== undefined)
    return { depth: given, checks: pumpSetting({ ...input, pumpSetting: given }), casingServes, lowestLevel };
  const inHole = pumpSetting({ ...input, casingDepth: well.depth, pumpSetting: well.depth });
  const { shallowest, deepest } = casingServes ? inCasing : inHole;
  const depth = Math.max(Math.min(shallowest + DRY_SEASON_RESERVE, deepest), 0) as Length;
  return { depth, checks: pumpSetting({ ...input, pumpSetting: depth }), casingServes, lowestLevel };
}

interface Tried {
  readonly candidate: JobPumpCandidate;
  readonly curve: PumpCurve;
  readonly setting: Setting;
  readonly plan: CandidatePlan;
  /** Shaft power per flow at the pressure held: what ranks pumps that all do the job. */
  readonly powerPerFlow: number;
}

function tryCandidate(basis: PumpBasis, candidate: JobPumpCandidate): Tried {
  const { job, dutyFlow } = basis;
  const { cutIn, cutOut, regulatingValve } = job.controls;
  const curve = pumpCurve({ points: candidate.curve });
  const first = { ...basis, setting: settingOf(basis, dutyFlow, candidate).depth, staticLevel: job.well.staticLevel };
  // Most flow, and so the lowest water, is at cut-in.
  const setting = settingOf(basis, Math.max(flowAt(first, curve, cutIn), dutyFlow) as VolumeFlow, candidate);
  const lift = { ...first, setting: setting.depth };
  const atCutIn = pointAt(lift, curve, cutIn);
  const atCutOut = pointAt(lift, curve, cutOut);
  const held = pressureWhileUsed(job);
  const flowHeld = flowAt(lift, curve, held);

  const faults: CandidateFault[] = [];
  const fault = (reason: string, kind: MeasureKind, value: number, limit: number): void => {
    faults.push({ reason, value: measure(kind, value), limit: measure(kind, limit) });
  };
  if (pumpAt(lift, curve, cutIn).state === "runs out") {
    fault("runs out past the end of its curve at cut-in", "pressure", pressureAtRunout(lift, curve), cutIn);
  }
  if (atCutOut === null) fault("cannot reach the cut-out pressure", "pressure", pressureAtShutoff(lift, curve), cutOut);
  if (flowHeld < dutyFlow) {
    const where = regulatingValve === undefined ? "at cut-in" : "at the pressure the valve holds";
    fault(`gives less than the largest use ${where}`, "flow", flowHeld, dutyFlow);
  }
  const { motor } = candidate;
  const most = greatestShaftPower(lift, curve, atCutIn?.flow ?? 0);
  const plate = motor.power * (motor.serviceFactor ?? 1);
  if (most !== null && most > plate) fault("loads its motor above the plate", "motorPower", most, plate);
  if (!job.power.sources.some(({ phase }) => phase === motor.phase)) {
    const [source] = job.power.sources;
    fault(
      "has a motor of other phases than any source",
      "count",
      phases(motor.phase),
      phases(source?.phase ?? motor.phase),
    );
  }
  const point = pointAt(lift, curve, held);
  return {
    candidate,
    curve,
    setting,
    plan: { name: candidate.name, suits: faults.length === 0, faults, atCutIn, atCutOut },
    powerPerFlow:
      point === null ? Number.POSITIVE_INFINITY : (point.shaftPower ?? point.head * point.flow) / point.flow,
  };
}

/** Phases as a number. */
export function phases(phase: "single-phase" | "three-phase"): number {
  return phase === "three-phase" ? 3 : 1;
}

/** The pump at a pressure at the tank; null where it delivers nothing there. */
export function pointAt(lift: Lift, curve: PumpCurve, pressure: GaugePressure): PumpPoint | null {
  const flow = flowAt(lift, curve, pressure);
  if (!(flow > 0)) return null;
  const head = pumpHeadAt(curve, flow);
  const efficiency = pumpEfficiencyAt(curve, flow);
  const water = hydraulicPower({ flow, head, density: lift.water.density });
  const shaftPower = efficiency === null || efficiency <= 0 ? null : ((water / efficiency) as Power);
  return { pressure, flow, head, efficiency, shaftPower };
}

/** The most the pump asks of its motor from no flow to a flow; null where the curve gives no efficiency. */
export function greatestShaftPower({ water }: Lift, curve: PumpCurve, to: number): Power | null {
  let most: number | null = null;
  for (let i = 1; i <= POWER_STEPS; i++) {
    const flow = ((to * i) / POWER_STEPS) as VolumeFlow;
    const efficiency = pumpEfficiencyAt(curve, flow);
    // Near no flow the efficiency goes to 0 with the water power; the curve's first tenth says nothing sure there.
    if (efficiency === null || i < POWER_STEPS / 10 || efficiency <= 0) continue;
    most = Math.max(
      most ?? 0,
      hydraulicPower({ flow, head: pumpHeadAt(curve, flow), density: water.density }) / efficiency,
    );
  }
  return most as Power | null;
}

function chosenPump(lift: Lift, candidate: JobPumpCandidate, curve: PumpCurve, plan: CandidatePlan): ChosenPump {
  const { job } = lift;
  const { highestStaticLevel = job.well.staticLevel, casingInsideDiameter } = job.well;
  return {
    name: candidate.name,
    atCutIn: plan.atCutIn,
    atCutOut: plan.atCutOut,
    flowBand: flowBand(lift, curve),
    shutoffPressure: pressureAtShutoff({ ...lift, staticLevel: highestStaticLevel }, curve),
    usualShutoff: pressureAtShutoff(lift, curve),
    cooling: motorCooling({
      flow: leastLongFlow(job, plan),
      casingInsideDiameter,
      motorDiameter: candidate.diameter,
      ...(candidate.motor.coolingVelocity === undefined ? {} : { leastVelocity: candidate.motor.coolingVelocity }),
    }),
  };
}

/** Flow at cut-in of the weakest and the strongest pump the acceptance grade passes; null where one of them has none. */
function flowBand(lift: Lift, curve: PumpCurve): ChosenPump["flowBand"] {
  const tolerance = acceptanceTolerance({ grade: "small pump" });
  const systemHead = (flow: VolumeFlow): Length => headTaken(lift, flow, lift.job.controls.cutIn).totalDynamicHead;
  const { low, high } = operatingBand({ curve, systemHead, tolerance });
  const flow = (point: OperatingPoint): VolumeFlow | null =>
    point.state === "running" ? point.flow : point.state === "runs out" ? point.moreThan : null;
  const [least, most] = [flow(low), flow(high)];
  return least === null || most === null ? null : { low: least, high: most };
}

/**
 * The least flow the pump runs minutes at: behind a valve its minimum flow, at which every refill above the set pressure
 * and every trickle runs; else the flow at cut-out.
 */
function leastLongFlow({ controls }: Job, { atCutIn, atCutOut }: CandidatePlan): VolumeFlow {
  return controls.regulatingValve?.minimumFlow ?? (atCutOut ?? atCutIn)?.flow ?? (0 as VolumeFlow);
}

/** The least flow of a use while the valve holds; without a valve the flow at cut-out. */
export function leastUsedFlow(job: Job, { atCutIn, atCutOut }: ChosenPump): VolumeFlow {
  if (job.controls.regulatingValve === undefined) return (atCutOut ?? atCutIn)?.flow ?? (0 as VolumeFlow);
  return Math.min(...usesOf(job).map(({ flow }) => flow)) as VolumeFlow;
}
