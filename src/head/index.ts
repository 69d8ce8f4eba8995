/**
 * Head and grade lines: pressure as height of water, and every height and loss a pump works against.
 *
 * @module
 */
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
