/**
 * Pumps: curves, the operating point on any system, speed, stages and wear, tolerance, power and cost.
 *
 * @module
 */
export {
  type AcceptanceBand,
  type AcceptanceInput,
  type AcceptanceTolerance,
  acceptanceBand,
  acceptanceTolerance,
  type HeadFlowTolerance,
  type OperatingBand,
  type OperatingBandInput,
  operatingBand,
} from "./acceptance.ts";
export type { AcceptanceGrade } from "./acceptance-grades.ts";
export {
  curveAtSpeed,
  curveTrimmed,
  type DutyAtSpeedInput,
  dutyAtSpeed,
  type SimilarDuty,
  type TrimmedCurve,
} from "./affinity.ts";
export { type BestEfficiencyPoint, bestEfficiencyPoint } from "./best-efficiency.ts";
export { curvesInParallel, curvesInSeries, stagedCurve } from "./combine.ts";
export {
  type FlowLine,
  type PumpCurve,
  type PumpCurveInput,
  type PumpPoint,
  pumpCurve,
  type RisingPart,
} from "./curve.ts";
export { type Duty, type DutyInput, pumpDuty } from "./duty.ts";
export {
  type PumpingEnergyInput,
  pumpingEnergy,
  type RunningCost,
  type RunningCostInput,
  runningCost,
} from "./energy.ts";
export { type FitCurveInput, type FittedCurve, fitPumpCurve, type MeasuredPoint } from "./fit-curve.ts";
export { type FlowAtHead, pumpFlowAt } from "./flow-at-head.ts";
export {
  type MinimumFlow,
  type MinimumFlowInput,
  minimumFlow,
  pumpTemperatureRise,
  type TemperatureRiseInput,
} from "./minimum-flow.ts";
export {
  type CannotLift,
  type OperatingPoint,
  type OperatingPointInput,
  operatingPoint,
  type Running,
  type RunsOut,
} from "./operating-point.ts";
export { type HydraulicPowerInput, hydraulicPower, type PumpPower, type PumpPowerInput, pumpPower } from "./power.ts";
export { type PumpPowerAt, type PumpPowerAtInput, pumpPowerAt } from "./power-at.ts";
export { npshRequiredAt, pumpEfficiencyAt, pumpHeadAt, pumpHeadSlopeAt, pumpInputPowerAt } from "./read-curve.ts";
export { type ShutoffPressure, type ShutoffPressureInput, shutoffPressure } from "./shutoff-pressure.ts";
export { type SpecificSpeed, type SpecificSpeedInput, specificSpeed } from "./specific-speed.ts";
export {
  type ConstantPressure,
  type ConstantPressureInput,
  type ConstantPressureRow,
  constantPressure,
  type SpeedFor,
  type SpeedForInput,
  speedFor,
} from "./variable-speed.ts";
export { type Wear, wornCurve } from "./wear.ts";
