/**
 * Conductors: size, resistance, voltage drop, ampacity, and the choice of a size.
 *
 * @module
 */

export { type AmbientFactorInput, ambientFactor } from "./ambient-factor.ts";
export {
  type ConductorAmpacity,
  type ConductorAmpacityInput,
  conductorAmpacity,
  type TemperatureRating,
} from "./ampacity.ts";
export { type ApproximateDrop, type ApproximateDrops, approximateDrops } from "./approximate-drops.ts";
export { bs7671Table4E4B, type TabulatedDropRow } from "./bs-7671-4e4b.ts";
export { type CircuitCaution, circuitCautions } from "./cautions.ts";
export type { CircuitSegment, SourceImpedance, SupplySystem } from "./circuit.ts";
export {
  type CircularMilAreaInput,
  type CircularMilDropInput,
  circularMilArea,
  circularMilDrop,
} from "./circular-mil-drop.ts";
export { type ConductorChoice, type ConductorChoicesInput, conductorChoices } from "./conductor-choices.ts";
export {
  type ConductorImpedance,
  type ConductorImpedanceInput,
  conductorImpedance,
  type Raceway,
} from "./conductor-impedance.ts";
export { type ConductorMassInput, conductorMass } from "./conductor-mass.ts";
export { type ConductorReactanceInput, conductorReactance } from "./conductor-reactance.ts";
export {
  type ConductorResistance,
  type ConductorResistanceInput,
  conductorResistance,
  type Stranding,
} from "./conductor-resistance.ts";
export {
  type ConductorTemperature,
  type ConductorTemperatureInput,
  conductorTemperature,
} from "./conductor-temperature.ts";
export { type DropLimit, recommendedDropLimits } from "./drop-limits.ts";
export { type EffectiveImpedanceInput, effectiveImpedance } from "./effective-impedance.ts";
export { type ConductorGeometry, conductorGeometry, gaugeDiameter } from "./geometry.ts";
export {
  type EnlargedConductor,
  type GroundingConductor,
  type GroundingConductorInput,
  groundingConductor,
} from "./grounding-conductor.ts";
export {
  type Iec60228Row,
  iec60228Class1,
  iec60228Class2,
  iec60228Class5,
} from "./iec-60228.ts";
export {
  type IecInstallation,
  type IecInsulation,
  iecCapacity,
  iecCapacityAreas,
  iecGroupingFactors,
} from "./iec-60364-5-52.ts";
export { type IecCapacity, type IecCapacityInput, iecCurrentCapacity } from "./iec-capacity.ts";
export { type LeastMetal, type LeastMetalInput, type LeastMetalRun, leastMetal } from "./least-metal.ts";
export { type LockedRotorDrop, type LockedRotorDropInput, lockedRotorDrop } from "./locked-rotor-drop.ts";
export { type LongestLength, type LongestLengthInput, longestLength } from "./longest-length.ts";
export { type ConductorMaterial, type ConductorMetal, conductorMetals } from "./material.ts";
export { type GroundingRow, necTable250_122 } from "./nec-250-122.ts";
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
export {
  type PowerFactorReference,
  type RunCollapsed,
  type RunLoad,
  type RunVoltages,
  type RunVoltagesInput,
  runVoltages,
  type SendingVoltageInput,
  sendingVoltage,
} from "./run-with-loads.ts";
export { type ConductorSize, parseConductorSize } from "./size.ts";
export { type ProximityEffectInput, proximityEffect, type SkinEffectInput, skinEffectFactor } from "./skin-effect.ts";
export {
  type ConductorFound,
  type ConductorLimit,
  type ConductorNotFound,
  type ConductorStart,
  type SmallestConductorInput,
  smallestConductor,
} from "./smallest-conductor.ts";
export {
  type ServiceImpedanceInput,
  serviceImpedance,
  type TransformerImpedanceInput,
  transformerImpedance,
} from "./source-impedance.ts";
export { type TabulatedDropInput, tabulatedDrop } from "./tabulated-drop.ts";
export {
  type CarriedDrop,
  type CollapsedDrop,
  type SegmentDrop,
  type VoltageDrop,
  type VoltageDropInput,
  voltageDrop,
} from "./voltage-drop.ts";
export { type WireResistanceInput, wireResistance } from "./wire-resistance.ts";
