/**
 * Field tests: what the bucket, the stopwatch, the gauge, the air line and the ammeter say, and how far to trust them.
 *
 * @module
 */

export { type AirLineInput, type AirLineLevel, airLineLevel } from "./air-line.ts";
export {
  type BucketFlow,
  type BucketInput,
  type BucketTimeInput,
  bucketFlow,
  bucketTime,
} from "./bucket.ts";
export { type BucketRuns, type BucketRunsInput, bucketRuns } from "./bucket-runs.ts";
export type { Carried, TrialOptions } from "./carried.ts";
export { authorityCaution, liftingCautions, mainsCautions, pressureCautions } from "./cautions.ts";
export { type CurrentTest, type CurrentTestInput, currentTest } from "./current-test.ts";
export { type DiagnoseInput, diagnose } from "./diagnose.ts";
export type {
  CauseName,
  Diagnosis,
  DiagnosisPlant,
  DiagnosisReading,
  Explanation,
  FittedValue,
  NextReading,
  ReadingKind,
  ReadingSetup,
  Residual,
  YardRun,
} from "./diagnosis-types.ts";
export {
  type DrawdownEntry,
  type DrawdownLog,
  type DrawdownLogInput,
  drawdownLog,
  type LevelReading,
} from "./drawdown-log.ts";
export { type GaugeHead, type GaugeHeadInput, gaugeHead } from "./gauge-head.ts";
export { type JudgeInput, type Judgement, judgeReading } from "./judge-reading.ts";
export { type Lifting, type LiftingInput, liftingLoad } from "./lifting.ts";
export {
  type CurveReading,
  type MeasuredCurve,
  type MeasuredCurveInput,
  type MeasuredCurvePoint,
  measuredCurve,
} from "./measured-curve.ts";
export { type MonteCarlo, type MonteCarloInput, monteCarlo, type Spread } from "./monte-carlo.ts";
export { type PipeWall, type PressureHold, type PressureHoldInput, pressureHold } from "./pressure-hold.ts";
export {
  type InsulationTest,
  type InsulationTestInput,
  insulationTest,
  type ResistanceJudged,
  type WindingTest,
  type WindingTestInput,
  windingTest,
} from "./resistance-test.ts";
export { type SettingHardware, type SettingHardwareInput, settingHardware } from "./setting-hardware.ts";
export { type EchoDepth, type EchoInput, echoDepth, type LeaningTapeInput, leaningTape } from "./sounding.ts";
export type { PublishedRule, RuleSubject } from "./standards/published-rules.ts";
export { type TankTest, type TankTestInput, tankTest } from "./tank-test.ts";
export { type TestAllowance, type TestAllowanceInput, testAllowance } from "./test-allowance.ts";
export { type Trajectory, type TrajectoryInput, trajectoryFlow } from "./trajectory.ts";
export {
  type Correlation,
  type Propagated,
  type PropagationInput,
  propagateUncertainty,
  type UncertainInput,
  type UncertaintyPart,
} from "./uncertainty.ts";
export { type VoltageLost, type VoltageTest, type VoltageTestInput, voltageTest } from "./voltage-test.ts";
export {
  type AirGap,
  type AirGapInput,
  type AirGapRule,
  leastAirGap,
  type WellheadRules,
  wellheadRules,
} from "./wellhead-rules.ts";
