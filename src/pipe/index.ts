/**
 * Friction in full round pipes, and the pipes: Darcy–Weisbach and its friction factor, Hazen–Williams, standard sizes.
 *
 * @module
 */
export { type DarcyWeisbachInput, type DarcyWeisbachLoss, darcyWeisbachLoss } from "./darcy-weisbach.ts";
export { findPipe } from "./find-pipe.ts";
export {
  type FrictionFactor,
  type FrictionFactorInput,
  type FrictionRegime,
  frictionFactor,
} from "./friction-factor.ts";
export {
  type HazenWilliamsInput,
  type HazenWilliamsLimit,
  type HazenWilliamsLoss,
  hazenWilliamsLoss,
} from "./hazen-williams.ts";
export { listPipes, type PipeFilter } from "./list-pipes.ts";
export { boreArea, type PipeMassInput, type PipeVolumeInput, pipeMass, pipeVolume } from "./pipe-contents.ts";
export { type PipeGradeName, type PipeGradeProperties, pipeGradeProperties } from "./pipe-grade.ts";
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
  type MetalPipeInput,
  metalPipeWorkingPressure,
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
export { type WallMaterial, type WallRoughness, wallRoughness, wallRoughnesses } from "./wall-roughness.ts";
