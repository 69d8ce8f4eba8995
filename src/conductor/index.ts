/**
 * Conductors: size, resistance, voltage drop, ampacity, and the choice of a size.
 *
 * @module
 */
export {
  type ConductorAmpacity,
  type ConductorAmpacityInput,
  conductorAmpacity,
  type TemperatureRating,
} from "./ampacity.ts";
export type { CircuitSegment, SourceImpedance, SupplySystem } from "./circuit.ts";
export { type ConductorChoice, type ConductorChoicesInput, conductorChoices } from "./conductor-choices.ts";
export {
  type ConductorImpedance,
  type ConductorImpedanceInput,
  conductorImpedance,
  type Raceway,
} from "./conductor-impedance.ts";
export { type ConductorReactanceInput, conductorReactance } from "./conductor-reactance.ts";
export {
  type ConductorResistance,
  type ConductorResistanceInput,
  conductorResistance,
  type Stranding,
} from "./conductor-resistance.ts";
export { type ConductorGeometry, conductorGeometry, gaugeDiameter } from "./geometry.ts";
export {
  type Iec60228Row,
  iec60228Class1,
  iec60228Class2,
  iec60228Class5,
} from "./iec-60228.ts";
export { type LockedRotorDrop, type LockedRotorDropInput, lockedRotorDrop } from "./locked-rotor-drop.ts";
export { type ConductorMaterial, type ConductorMetal, conductorMetals } from "./material.ts";
export {
  type AmbientBand,
  type BundlingBand,
  necAmbientCorrection,
  necBundlingAdjustment,
} from "./nec-310-15-correction.ts";
export { type AmpacityByRating, type AmpacityRow, necTable310_16 } from "./nec-310-16.ts";
export { necTable310_17 } from "./nec-310-17.ts";
export { type NecTable8Row, necChapter9Table8 } from "./nec-chapter-9-table-8.ts";
export { type NecTable9Figures, type NecTable9Row, necChapter9Table9 } from "./nec-chapter-9-table-9.ts";
export {
  type StandardRatings,
  smallConductorLimit,
  standardOvercurrentRatings,
  standardRatings,
} from "./overcurrent-rating.ts";
export {
  type ResistanceAtTemperatureInput,
  resistanceAtTemperature,
  type TemperatureCoefficient,
  type TemperatureFromResistanceInput,
  temperatureFromResistance,
} from "./resistance-at-temperature.ts";
export { type ConductorSize, parseConductorSize } from "./size.ts";
export { type SkinEffectInput, skinEffectFactor } from "./skin-effect.ts";
export {
  type ConductorFound,
  type ConductorNotFound,
  type SmallestConductorInput,
  smallestConductor,
} from "./smallest-conductor.ts";
export {
  type CarriedDrop,
  type CollapsedDrop,
  type SegmentDrop,
  type VoltageDrop,
  type VoltageDropInput,
  voltageDrop,
} from "./voltage-drop.ts";
export { type WireResistanceInput, wireResistance } from "./wire-resistance.ts";
