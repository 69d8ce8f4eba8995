/**
 * Pumps: curves, the operating point on any system, power and efficiency.
 *
 * @module
 */
export {
  type FlowLine,
  type PumpCurve,
  type PumpCurveInput,
  type PumpPoint,
  pumpCurve,
  type RisingPart,
} from "./curve.ts";
export {
  type CannotLift,
  type OperatingPoint,
  type OperatingPointInput,
  operatingPoint,
  type Running,
  type RunsOut,
} from "./operating-point.ts";
export { type HydraulicPowerInput, hydraulicPower, type PumpPower, type PumpPowerInput, pumpPower } from "./power.ts";
export { npshRequiredAt, pumpEfficiencyAt, pumpHeadAt, pumpHeadSlopeAt, pumpInputPowerAt } from "./read-curve.ts";
