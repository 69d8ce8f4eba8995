/**
 * Head and grade lines: pressure as height of water, and every height and loss a pump works against.
 *
 * @module
 */
export {
  type Bernoulli,
  type BernoulliInput,
  type BernoulliUnknown,
  bernoulli,
  type EnergyPoint,
  type EnergyPointInput,
} from "./bernoulli.ts";
export type {
  GradeLines,
  GradeLinesInput,
  GradeSection,
  GradeState,
  GradeStation,
  GradeStationInput,
  SiphonReach,
} from "./grade-line-types.ts";
export { gradeLines } from "./grade-lines.ts";
export { type LineRun, type LineStations, type LineStationsInput, lineStations } from "./line-stations.ts";
export {
  greatestSuctionLift,
  type NpshAvailable,
  type NpshInput,
  npshAvailable,
  type SuctionInput,
  type SuctionLift,
  type SuctionLiftInput,
} from "./npsh.ts";
export { type PressureClass, type PressureClassInput, pressureClassNeeded } from "./pressure-class.ts";
export {
  type HeadInput,
  headOfPressure,
  headOfPressureDifference,
  type PressureDifferenceHeadInput,
  type PressureHeadInput,
  pressureDifferenceOfHead,
  pressureOfHead,
} from "./pressure-head.ts";
export {
  type HeadLossPart,
  type TotalDynamicHead,
  type TotalDynamicHeadInput,
  type TotalDynamicHeadParts,
  totalDynamicHead,
} from "./total-dynamic-head.ts";
export { velocityHead, velocityOfHead } from "./velocity-head.ts";
