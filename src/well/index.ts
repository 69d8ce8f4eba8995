/**
 * Wells: what they hold, how far the water falls when pumped and for how long, and what hangs in them.
 *
 * @module
 */
export {
  type Annulus,
  type AnnulusInput,
  type AnnulusVolumeInput,
  annulus,
  annulusVolume,
  type CasingVolumeInput,
  casingVolume,
  type WaterColumnInput,
  waterColumn,
} from "./casing.ts";
export {
  type DailyYield,
  type DailyYieldInput,
  dailyYield,
  type PeakSupplyInput,
  peakSupply,
} from "./daily-yield.ts";
export {
  type DrawdownLaw,
  drawdownAt,
  type PumpingTest,
  singleTestLaw,
  specificCapacity,
  wellEfficiency,
} from "./drawdown.ts";
export {
  type HangingInput,
  type HangingLoad,
  hangingLoad,
  hangingStretch,
  type StretchInput,
} from "./drop-pipe.ts";
export {
  dropPipeFixings,
  type Fixings,
  type FixingsInput,
  type MotorTorque,
  type MotorTorqueInput,
  motorTorque,
} from "./drop-pipe-fixings.ts";
export { fitTheis, type TheisFit } from "./fit-theis.ts";
export { type MotorCooling, type MotorCoolingInput, motorCooling } from "./motor-cooling.ts";
export {
  type PumpSetting,
  type PumpSettingInput,
  pumpSetting,
  type SettingCheck,
  type SettingSuction,
} from "./pump-setting.ts";
export {
  fitRecovery,
  type RecoveryFit,
  type RecoveryInput,
  type RecoveryReading,
  type ResidualDrawdownInput,
  residualDrawdown,
} from "./recovery.ts";
export { type Recuperation, type RecuperationInput, recuperation } from "./recuperation.ts";
export {
  type DupuitInput,
  type SichardtInput,
  sichardtRadius,
  steadyFlowConfined,
  steadyFlowUnconfined,
  type ThiemInput,
} from "./steady-flow.ts";
export {
  fitStepTest,
  type StepFit,
  type StepTest,
  type StepTestInput,
  type WellCondition,
  wellCondition,
} from "./step-test.ts";
export {
  type Draw,
  type DrawInput,
  drawdownAfterRest,
  drawOnStorage,
  type RestInput,
  type RestTimeInput,
  restTime,
  type StoringWell,
} from "./storage-draw.ts";
export {
  type AquiferFromLine,
  aquiferFromPlottedLine,
  type DrawdownReading,
  fitStraightLine,
  type PlottedLineInput,
  type StraightLineFit,
  type TimeDrawdownInput,
} from "./straight-line.ts";
export {
  drawdownOfSchedule,
  type FlowChange,
  type IntermittentInput,
  intermittentSchedule,
  type ScheduleInput,
} from "./superposition.ts";
export {
  type AvailableDrawdown,
  type AvailableDrawdownInput,
  availableDrawdown,
  type FlowForDrawdown,
  flowForDrawdown,
  type SustainableFlowInput,
  sustainableFlow,
} from "./sustainable-flow.ts";
export { type TensileCheck, type TensileInput, tensileCheck } from "./tensile-check.ts";
export {
  type Aquifer,
  type AquiferLawInput,
  aquiferLaw,
  cooperJacobDrawdown,
  type TheisDrawdown,
  type TheisInput,
  theisDrawdown,
} from "./theis.ts";
export {
  type TransmissivityFromTest,
  type TransmissivityFromTestInput,
  transmissivityFromTest,
} from "./transmissivity-from-test.ts";
export { wellFunction } from "./well-function.ts";
