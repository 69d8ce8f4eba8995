/**
 * Air-charged tanks: usable water, precharge, run time, starts per hour, size.
 *
 * @module
 */
export { type AirCharge, type StoredWater, storedWater } from "./air-charge.ts";
export { type BankDrawdown, type BankTank, bankDrawdown, type TankBank } from "./bank.ts";
export { type TankCycle, type TankCycleInput, tankCycle, type WorstDemand, worstDemand } from "./cycle.ts";
export { type PrechargeState, type TankDrawdown, type TankDrawdownInput, tankDrawdown } from "./drawdown.ts";
export { type PrechargeAtTemperatureInput, prechargeAtTemperature, recommendedPrecharge } from "./precharge.ts";
export { type TankSize, type TankSizeInput, tankSizeForRunTime, tankSizeForStarts } from "./sizing.ts";
