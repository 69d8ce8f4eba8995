/**
 * Field tests: what the bucket, the stopwatch, the gauge, the air line and the ammeter say, and how far to trust them.
 *
 * @module
 */
export {
  type BucketFlow,
  type BucketInput,
  type BucketRuns,
  type BucketRunsInput,
  type BucketTimeInput,
  bucketFlow,
  bucketRuns,
  bucketTime,
} from "./bucket.ts";
export { authorityCaution, liftingCautions, mainsCautions, pressureCautions } from "./cautions.ts";
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
export { type DrawdownEntry, type DrawdownLog, type DrawdownLogInput, drawdownLog } from "./drawdown-log.ts";
export {
  type CurveReading,
  type GaugeHeadInput,
  gaugeHead,
  type MeasuredCurve,
  type MeasuredCurveInput,
  type MeasuredCurvePoint,
  measuredCurve,
} from "./gauge-head.ts";
export { type JudgeInput, type Judgement, judgeReading } from "./judge-reading.ts";
export {
  type PipeWall,
  type PressureHold,
  type PressureHoldInput,
  pressureHold,
  type TestAllowance,
  type TestAllowanceInput,
  testAllowance,
} from "./leak-test.ts";
export {
  type Lifting,
  type LiftingInput,
  liftingLoad,
  type SettingHardware,
  type SettingHardwareInput,
  settingHardware,
} from "./lifting.ts";
export { type MonteCarlo, type MonteCarloInput, monteCarlo, type Spread } from "./monte-carlo.ts";
export {
  type CurrentTest,
  type CurrentTestInput,
  currentTest,
  type VoltageTest,
  type VoltageTestInput,
  voltageTest,
} from "./supply-test.ts";
export { type TankTest, type TankTestInput, tankTest } from "./tank-test.ts";
export { type Trajectory, type TrajectoryInput, trajectoryFlow } from "./trajectory.ts";
export {
  type Correlation,
  type Propagated,
  type PropagationInput,
  propagateUncertainty,
  type UncertainInput,
  type UncertaintyPart,
} from "./uncertainty.ts";
export {
  type AirLineInput,
  type AirLineLevel,
  airLineLevel,
  type EchoInput,
  echoDepth,
  type LeaningTapeInput,
  type LevelReading,
  leaningTape,
} from "./water-level.ts";
