/**
 * Disinfecting a well and its system with chlorine: how much water, how much chlorine, how long, and how to be rid of it.
 *
 * @module
 */
export {
  type Bleach,
  type BleachConcentrationInput,
  type BleachDose,
  type BleachDoseInput,
  bleachConcentration,
  bleachDose,
  type StrengthBasis,
} from "./bleach.ts";
export { type AgedStrength, type AgedStrengthInput, agedStrength } from "./bleach-age.ts";
export { chlorineCautions } from "./cautions.ts";
export { type ContactInput, type ContactTimeInput, contactReached, contactTime } from "./contact.ts";
export {
  type Dechlorination,
  type DechlorinationInput,
  type Dechlorinator,
  dechlorination,
} from "./dechlorination.ts";
export { type Flush, type FlushInput, flush } from "./flush.ts";
export { type FreeChlorine, type FreeChlorineInput, freeChlorine } from "./free-chlorine.ts";
export {
  type HypochloriteConcentrationInput,
  type HypochloriteDose,
  type HypochloriteDoseInput,
  hypochloriteConcentration,
  hypochloriteDose,
} from "./hypochlorite.ts";
export { type KitchenMeasure, kitchenMeasure } from "./kitchen-measure.ts";
export { type PublishedDose, publishedDoses } from "./published-doses.ts";
export { type Recirculation, type RecirculationInput, recirculation } from "./recirculation.ts";
export {
  type GiardiaContactInput,
  giardiaContact,
  type RequiredContact,
  type VirusContactInput,
  virusContact,
} from "./required-contact.ts";
export { type SamplingStep, samplingPractice } from "./sampling.ts";
export { type StockSolution, type StockSolutionInput, stockSolution } from "./stock-solution.ts";
export {
  type BoreSection,
  type FilledPipe,
  type TreatedVolume,
  type TreatedVolumeInput,
  treatedVolume,
} from "./treated-volume.ts";
