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
export { chlorineCautions } from "./cautions.ts";
export { type KitchenMeasure, kitchenMeasure } from "./kitchen-measure.ts";
export {
  type BoreSection,
  type FilledPipe,
  type TreatedVolume,
  type TreatedVolumeInput,
  treatedVolume,
} from "./treated-volume.ts";
