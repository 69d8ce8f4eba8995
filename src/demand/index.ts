/**
 * Water demand: what people, animals, fixtures, irrigation and fire ask of the well, and the storage that closes the gap.
 *
 * @module
 */
export {
  type AllowanceCount,
  type AllowanceDemand,
  type AllowanceFixture,
  allowanceDemand,
  fixtureCountDemand,
} from "./allowance.ts";
export { type CattleDemand, type CattleInput, cattleDemand } from "./cattle.ts";
export type { CattleClass } from "./cattle-table.ts";
export {
  bedroomDemand,
  type DailyDemand,
  type DailyDemandInput,
  type DailyPart,
  dailyDemand,
  type HouseholdRange,
  householdRange,
  type OtherUse,
  type PeakFlowInput,
  peakFlow,
} from "./daily.ts";
export { type FireReserve, type FireReserveInput, fireReserve } from "./fire-reserve.ts";
export type { Fixture } from "./fixture-tables.ts";
export {
  type FixtureCount,
  type FixtureDemand,
  type FixtureDemandInput,
  type FixtureMethod,
  type FlushKind,
  fixtureDemand,
  fixtureUnits,
} from "./fixtures.ts";
export { type IrrigationDemand, type IrrigationInput, irrigationDemand } from "./irrigation.ts";
export { type LivestockDemand, type LivestockInput, livestockDemand } from "./livestock.ts";
export type { LivestockKind } from "./livestock-table.ts";
export { type PublishedDailyUse, type PublishedFlow, publishedDailyUses, publishedFlows } from "./published-figures.ts";
export { type DrawPeriod, type StorageInput, type StorageNeed, storageNeed } from "./storage.ts";
export { type WashingDemand, type WashingInput, washingDemand } from "./washing.ts";
export type { Washing } from "./washing-table.ts";
export { type WeighedAnimal, type WeightRuleInput, weightRuleDemand } from "./weight-rule.ts";
