/**
 * Friction in full round pipes, and the pipes: Darcy–Weisbach and its friction factor, Hazen–Williams, standard sizes.
 *
 * @module
 */

export { type AverageBoreInput, averageInsideDiameter } from "./average-bore.ts";
export { churchillFactor } from "./churchill.ts";
export { type CompareLossesInput, compareLosses, type LossComparison } from "./compare-losses.ts";
export { type DarcyWeisbachInput, type DarcyWeisbachLoss, darcyWeisbachLoss } from "./darcy-weisbach.ts";
export {
  type DiameterForHeadLoss,
  type DiameterForHeadLossInput,
  diameterForHeadLoss,
} from "./diameter-for-head-loss.ts";
export { type EquivalentPipeInput, equivalentPipe } from "./equivalent-pipe.ts";
export type { ExplicitFactor } from "./explicit-factor.ts";
export { findPipe } from "./find-pipe.ts";
export { type FlowForHeadLoss, type FlowForHeadLossInput, flowForHeadLoss } from "./flow-for-head-loss.ts";
export {
  type FrictionFactor,
  type FrictionFactorInput,
  type FrictionRegime,
  frictionFactor,
} from "./friction-factor.ts";
export { haalandFactor } from "./haaland.ts";
export {
  type HazenWilliamsInput,
  type HazenWilliamsLimit,
  type HazenWilliamsLoss,
  hazenWilliamsLoss,
} from "./hazen-williams.ts";
export {
  type CoefficientFound,
  type CoefficientInput,
  type CoefficientMaterial,
  type HazenWilliamsCoefficient,
  hazenWilliamsCoefficient,
  hazenWilliamsCoefficients,
} from "./hazen-williams-c.ts";
export {
  type CoefficientForHeadLossInput,
  coefficientForHeadLoss,
  type HazenWilliamsDiameterInput,
  type HazenWilliamsFlowInput,
  hazenWilliamsDiameter,
  hazenWilliamsFlow,
} from "./hazen-williams-inverse.ts";
export { listPipes, type PipeFilter } from "./list-pipes.ts";
export {
  type LengthForHeadLossInput,
  lengthForHeadLoss,
  type RoughnessForHeadLoss,
  type RoughnessForHeadLossInput,
  roughnessForHeadLoss,
} from "./measured-loss.ts";
export { type MetalPipeInput, metalPipeWorkingPressure } from "./metal-pipe.ts";
export { type MultipleOutletFactor, type MultipleOutletInput, multipleOutletFactor } from "./multiple-outlets.ts";
export { type ParallelFlow, parallelFlow, parallelLoss } from "./parallel.ts";
export { boreArea, type PipeMassInput, type PipeVolumeInput, pipeMass, pipeVolume } from "./pipe-contents.ts";
export { type PipeGradeName, type PipeGradeProperties, pipeGradeProperties } from "./pipe-grade.ts";
export type { PipeOfRun, RunFlowInput, RunLossInput, SolvedRun } from "./pipe-run.ts";
export { type PipeSize, pipesOf } from "./pipe-size.ts";
export type {
  FigureOrigin,
  InsideDiameterBasis,
  PipeGrade,
  PipeMaterial,
  PipeProvenance,
  PipeRow,
  PipeTable,
  WallBasis,
} from "./pipe-table.ts";
export {
  type DimensionRatioInput,
  type InsideDimensionRatioInput,
  type PlasticWallInput,
  pressureRatingOfInsideRatio,
  pressureRatingOfRatio,
  pressureRatingOfWall,
  workingPressureWithoutSurge,
} from "./pressure-rating.ts";
export {
  type RatingAtTemperature,
  type RatingAtTemperatureInput,
  ratingAtTemperature,
} from "./rating-at-temperature.ts";
export { serghidesFactor } from "./serghides.ts";
export { type SeriesLoss, seriesFlow, seriesLoss } from "./series.ts";
export { asmeB3610 } from "./standards/asme-b36-10.ts";
export { astmB88 } from "./standards/astm-b88.ts";
export { astmD1785 } from "./standards/astm-d1785.ts";
export { astmD2239 } from "./standards/astm-d2239.ts";
export { astmD2241 } from "./standards/astm-d2241.ts";
export { astmD2737 } from "./standards/astm-d2737.ts";
export { astmD3035 } from "./standards/astm-d3035.ts";
export { astmF876 } from "./standards/astm-f876.ts";
export { iso1452 } from "./standards/iso-1452.ts";
export { iso4427 } from "./standards/iso-4427.ts";
export { swameeJainFactor } from "./swamee-jain.ts";
export { type WallMaterial, type WallRoughness, wallRoughness, wallRoughnesses } from "./wall-roughness.ts";
