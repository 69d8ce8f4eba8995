/**
 * Cold: when a pipe freezes, how deep the frost goes, how deep to lay the line, and what a hydrant drains.
 *
 * @module
 */

export {
  type BerggrenCoefficientInput,
  type BerggrenDepth,
  type BerggrenInput,
  berggrenCoefficient,
  berggrenFrostDepth,
} from "./berggren.ts";
export {
  type BurialDepth,
  type BurialInput,
  burialDepth,
  type DrainBack,
  type DrainBackInput,
  drainBack,
} from "./burial.ts";
export { type BuriedPipe, type BuriedPipeInput, buriedPipe, type ThawedCylinder } from "./buried-pipe.ts";
export { type StefanDepth, type StefanInput, stefanFrostDepth } from "./stefan.ts";
export {
  type GroundSurface,
  type SurfaceIndex,
  type SurfaceIndexInput,
  surfaceFreezingIndex,
} from "./surface-factor.ts";
export { type TimeToFreeze, type TimeToFreezeInput, timeToFreeze } from "./time-to-freeze.ts";
