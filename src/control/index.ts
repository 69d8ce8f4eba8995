/**
 * Controls between pump and tank: pressure switch, regulating valve, variable speed, relief valve, low-level cut-off.
 *
 * @module
 */
export type { FlowAtPressure, PressureAtFlow } from "./called-flow.ts";
export {
  checkRegulatingValve,
  type RegulatingValveCheck,
  type RegulatingValveCheckInput,
  type RegulatingValveCode,
} from "./check-regulating-valve.ts";
export type { ControlCondition } from "./condition.ts";
export {
  checkLevelCutOff,
  type LevelCutOff,
  type LevelCutOffCheck,
  type LevelCutOffCheckInput,
  type LevelCutOffCode,
} from "./level-cut-off.ts";
export {
  checkPressureSwitch,
  type PressureSwitch,
  type PressureSwitchCheck,
  type PressureSwitchCheckInput,
  type PressureSwitchCode,
} from "./pressure-switch.ts";
export {
  type PressureHeld,
  type PressureHeldInput,
  pressureHeld,
  type RegulatedFlow,
  type RegulatedFlowInput,
  type RegulatingValve,
  regulatedFlow,
  type ValveMode,
} from "./regulating-valve.ts";
export { type ReliefOrificeInput, reliefOrificeFlow } from "./relief-orifice.ts";
export {
  checkReliefValve,
  type RatedPart,
  type ReliefValveCheck,
  type ReliefValveCode,
  type ReliefValveInput,
  weakestPart,
} from "./relief-valve.ts";
export {
  checkSpeedSetPoint,
  type SpeedSetPointCheck,
  type SpeedSetPointCode,
  type SpeedSetPointInput,
} from "./speed-set-point.ts";
