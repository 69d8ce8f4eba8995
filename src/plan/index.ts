/**
 * The whole job: job documents, the plan, its findings, the commissioning sheet, the report.
 *
 * @module
 */

export type { PipeChoiceState } from "./choose-pipes.ts";
export { citationsOf } from "./citations.ts";
export type { ExpectedReading } from "./commissioning.ts";
export { type DiagnoseRecordInput, diagnoseRecord, type RecordDiagnosis } from "./diagnose-record.ts";
export type { Basis, Finding, Severity, StageName } from "./finding.ts";
export type {
  Job,
  JobAnimals,
  JobCable,
  JobControls,
  JobDemand,
  JobDisinfection,
  JobDropPipe,
  JobFitting,
  JobMotor,
  JobOtherUse,
  JobOutlet,
  JobPipeChoice,
  JobPlace,
  JobPower,
  JobPump,
  JobPumpCandidate,
  JobPumpPoint,
  JobRegulatingValve,
  JobRun,
  JobSite,
  JobSource,
  JobTank,
  JobTestStep,
  JobUse,
  JobWell,
} from "./job.ts";
export { JobError, type JobIssue } from "./job-error.ts";
export type { Measure, MeasureKind, UnitSystem } from "./measure.ts";
export { type Plan, planSystem } from "./plan-system.ts";
export { readJob, readJobText } from "./read-job.ts";
export { readRecord } from "./read-record.ts";
export {
  type AsBuiltInput,
  type AsBuiltRecord,
  asBuiltRecord,
  type RecordedReading,
  type RecordVerdict,
} from "./record.ts";
export type { UnusedReading, UsedReading } from "./record-readings.ts";
export { recordReport } from "./record-report.ts";
export { type ReportOptions, reportOf } from "./report.ts";
export { sampleJob } from "./sample-job.ts";
export type {
  CablePlan,
  CandidateFault,
  CandidatePlan,
  ChosenPump,
  ControlsStage,
  DayStage,
  DemandStage,
  DisinfectionStage,
  DropPipeStage,
  FlowBand,
  HeldPlan,
  LayoutGradeLine,
  LayoutStage,
  OutletPlan,
  PlanStages,
  PowerStage,
  PumpPoint,
  PumpStage,
  RunPlan,
  SiteStage,
  SourcePlan,
  TankStage,
  UsePlan,
  WellStage,
} from "./stages.ts";
