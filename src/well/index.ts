/**
 * Wells: what they hold, how far the water falls when pumped, and where the pump hangs.
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
  type DrawdownLaw,
  drawdownAt,
  type PumpingTest,
  singleTestLaw,
  specificCapacity,
  wellEfficiency,
} from "./drawdown.ts";
export { type MotorCooling, type MotorCoolingInput, motorCooling } from "./motor-cooling.ts";
export { type PumpSetting, type PumpSettingInput, pumpSetting, type SettingCheck } from "./pump-setting.ts";
