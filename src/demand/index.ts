/**
 * Water demand: what people, animals, fixtures, irrigation and fire ask of the well, and the storage that closes the gap.
 *
 * @module
 */
export {
  type DailyDemand,
  type DailyDemandInput,
  type DailyPart,
  dailyDemand,
  householdRange,
  type OtherUse,
  type PeakFlowInput,
  peakFlow,
} from "./daily.ts";
export { type LivestockDemand, type LivestockInput, livestockDemand } from "./livestock.ts";
export type { LivestockKind } from "./livestock-table.ts";
