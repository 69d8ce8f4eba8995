/**
 * Choosing: the cheapest sizes, the pump that serves, what matters most, and sweeps of variants.
 *
 * @module
 */
export {
  type ChoosePumpInput,
  choosePump,
  type PumpCandidate,
  type PumpChoice,
  type PumpCriterion,
  type PumpDuty,
  type PumpPlace,
  type PumpRejection,
  type PumpScenario,
  type RankedPump,
  type RejectedPump,
} from "./choose-pump.ts";
export {
  type LeastCostSizes,
  type LeastCostSizesInput,
  leastCostSizes,
  type NoSizeForRun,
  type NoSizesMeet,
  type RuledOutSize,
  type RunChoices,
  type SizeChoice,
  type SizedRun,
  type SizesFound,
  type SizingScenario,
  type TightestJunction,
} from "./least-cost-sizes.ts";
export type { PartWayLayout, ResidualPressure, RunInParts, RunPart } from "./part-way-layout.ts";
export {
  type LinearProgramme,
  type PartWayChoices,
  type PartWayInput,
  type PartWayProgramme,
  type PartWaySize,
  type ProgrammeRow,
  type ProgrammeVariable,
  partWayProgramme,
  type RuledOutSizes,
  type ShareVariable,
} from "./part-way-programme.ts";
export {
  type CannotBeLaid,
  type LaidLayout,
  type PartWayFound,
  type PartWaySizes,
  type PartWaySizesInput,
  type PressureFails,
  type ProgrammeAnswer,
  partWaySizes,
  type SharesFail,
} from "./part-way-sizes.ts";
export { programmeText } from "./programme-text.ts";
export {
  type NamedNumbers,
  type Sensitivity,
  type SensitivityInput,
  sensitivity,
  type Tornado,
  type TornadoBar,
  type TornadoInput,
  tornado,
} from "./sensitivity.ts";
export {
  countVariants,
  type NumberedVariant,
  type SweepAxes,
  type SweepPart,
  sweep,
  sweepParts,
  type Variant,
  variantAt,
} from "./sweep.ts";
