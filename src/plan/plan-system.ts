/**
 * The whole job: what it leaves open is sized, what it fixes is checked.
 *
 * @module
 */
import type { Caution } from "../sources/index.ts";
import type { RunningSystem } from "../system/index.ts";
import type { VolumeFlow } from "../units/index.ts";
import { planCautions } from "./cautions.ts";
import { commissioningSheet, type ExpectedReading } from "./commissioning.ts";
import { controlsFindings, controlsStage } from "./controls-stage.ts";
import { dayFindings, dayStage, runningSystem } from "./day-stage.ts";
import { demandFindings, demandStage } from "./demand-stage.ts";
import { disinfectionStage } from "./disinfection-stage.ts";
import { chooseDropPipe, dropPipeFindings, dropPipeStage } from "./drop-pipe-stage.ts";
import type { Finding, Severity } from "./finding.ts";
import type { Job } from "./job.ts";
import { layoutFindings, layoutStage } from "./layout-stage.ts";
import { powerFindings } from "./power-findings.ts";
import { powerStage } from "./power-stage.ts";
import { pumpFindings } from "./pump-findings.ts";
import { pumpStage } from "./pump-stage.ts";
import { checkedJob } from "./read-job.ts";
import { siteStage } from "./site-stage.ts";
import type { PlanStages } from "./stages.ts";
import { tankFindings, tankStage } from "./tank-stage.ts";
import { wellFindings, wellStage } from "./well-stage.ts";

/** A plan: plain data that JSON carries. */
export interface Plan {
  /** Form of the plan; 1. */
  readonly version: 1;
  /** What the property is called. */
  readonly name: string;
  /** The stages, in the order the work is done. */
  readonly stages: PlanStages;
  /**
   * The system of the stages, as `simulate` runs it; null where there is no pump, its curve rises in part, or its intake
   * hangs out of the water.
   */
  readonly running: RunningSystem | null;
  /** What was found, gravest first, then in the order of the work. */
  readonly findings: readonly Finding[];
  /** The readings to take when it runs. */
  readonly commissioning: readonly ExpectedReading[];
  /** The cautions that go with it. */
  readonly cautions: readonly Caution[];
}

/** Gravest first. */
const SEVERITIES: readonly Severity[] = ["stop", "fix", "look", "good"];

/**
 * Plans a private water system: well, pump, pipe, tank, controls, power, disinfection.
 *
 * @remarks
 * Each stage is the physical model of its module: Darcy–Weisbach in the pipes, the pump's own curve against lift,
 * drawdown and loss, the gas law in the tank, phasors in the cables. What practice alone says (the water kept
 * over an intake, the shortest run, typical efficiencies where no plate gives them) is marked as such.
 *
 * @param job - the job in SI quantities; {@link readJob} reads one from a document
 * @returns the plan: stages, findings, commissioning sheet, cautions
 * @throws {@link JobError} (an InputError) with everything wrong in the job
 * @source derived: the modules' methods, put together
 *
 * @example
 * ```ts
 * import { planSystem, readJob, sampleJob } from "risingmain/plan";
 * import { inFeet, inGpm } from "risingmain/units";
 *
 * const { stages, findings } = planSystem(readJob(sampleJob));
 * inGpm(stages.pump.dutyFlow); // ≈ 8.000
 * inFeet(stages.pump.duty.totalDynamicHead); // ≈ 187.2
 * findings.map(({ code }) => code); // => []
 * ```
 */
export function planSystem(job: Job): Plan {
  const checked = checkedJob(job);
  const site = siteStage(checked);
  const { water, atmosphere } = site;
  const demand = demandStage(checked);
  const flow = demand.designFlow;
  const well = wellStage(checked, flow);
  const layout = layoutStage(checked, water);
  const work = pumpStage({
    job: checked,
    water,
    law: well.law,
    dropPipe: chooseDropPipe(checked, water, flow),
    dutyFlow: flow,
  });
  const curve = work.pump?.curve ?? null;
  const dropPipe = dropPipeStage(work.lift, flow, work.pump, work.stage.lowestLevel);
  const controls = controlsStage(work.lift, curve);
  const motorPower = work.pump?.candidate.motor.power ?? null;
  const tank = tankStage(work.lift, curve, atmosphere, motorPower);
  const power = work.pump === null ? null : powerStage(checked, work.pump.candidate, work.stage.setting);
  const dayBasis =
    work.pump === null || power === null
      ? null
      : {
          lift: work.lift,
          curve: work.pump.curve,
          motor: work.pump.candidate.motor,
          tank,
          demand,
          atmosphere,
          lowestLevel: work.stage.lowestLevel,
          motorEfficiency: power.motorEfficiency,
        };
  const running = dayBasis === null ? null : runningSystem(dayBasis);
  const day = dayBasis === null ? null : dayStage(dayBasis, running);
  const disinfection = disinfectionStage(work.lift, layout, tank, flow);
  const stages: PlanStages = {
    site,
    demand,
    well,
    layout,
    pump: work.stage,
    dropPipe,
    controls,
    tank,
    day,
    power,
    disinfection,
  };
  const findings = [
    ...demandFindings(checked, demand),
    ...wellFindings(checked, well, Math.max(flow, work.stage.chosen?.atCutIn?.flow ?? 0) as VolumeFlow),
    ...layoutFindings(checked, layout),
    ...pumpFindings(checked, work),
    ...dropPipeFindings(checked, dropPipe),
    ...controlsFindings(work.lift, curve, controls, layout),
    ...tankFindings(checked, tank, motorPower),
    ...(dayBasis === null ? [] : dayFindings(dayBasis, day)),
    ...(power === null || work.pump === null ? [] : powerFindings(checked, work.pump.candidate.motor, power)),
  ];
  return {
    version: 1,
    name: checked.name,
    stages,
    running,
    // Sorting is stable, so within a severity the order of the work stays.
    findings: findings.sort((a, b) => SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity)),
    commissioning: commissioningSheet(stages),
    cautions: planCautions(checked),
  };
}
