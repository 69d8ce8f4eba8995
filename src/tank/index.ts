/**
 * Air-charged tanks: usable water, precharge, run time, starts per hour, size, loss of air.
 *
 * @module
 */
export { type AirCharge, type StoredWater, storedWater } from "./air-charge.ts";
export { type AirEnergy, type AirEnergyInput, airEnergy } from "./air-energy.ts";
export { type AirLoss, type AirLossInput, airLoss } from "./air-loss.ts";
export {
  type AirOverWaterDrawdown,
  type AirOverWaterInput,
  type AirOverWaterSizeInput,
  airOverWaterDrawdown,
  airOverWaterSize,
  waterSeal,
} from "./air-over-water.ts";
export { type BankDrawdown, type BankTank, bankDrawdown, type TankBank } from "./bank.ts";
export { type TankCycle, type TankCycleInput, tankCycle, type WorstDemand, worstDemand } from "./cycle.ts";
export { type PrechargeState, type TankDrawdown, type TankDrawdownInput, tankDrawdown } from "./drawdown.ts";
export { type PrechargeAtTemperatureInput, prechargeAtTemperature, recommendedPrecharge } from "./precharge.ts";
export {
  type PeakStorage,
  type PeakStorageInput,
  peakStorage,
  publicSystemTank,
  type TankSize,
  type TankSizeInput,
  tankSizeForRunTime,
  tankSizeForStarts,
} from "./sizing.ts";
export { motorStartLimit, type StartLimit } from "./start-limit.ts";
export { type StockTank, type StockTankInput, stockTank } from "./stock-chart.ts";
export {
  type FillingInput,
  type FillTime,
  tankFillTime,
  type WorstDemandOnCurve,
  worstDemandOnCurve,
} from "./worst-demand.ts";
