/**
 * Cold: when a pipe freezes, how deep the frost goes, how deep to lay the line, and what a hydrant drains.
 *
 * @module
 */
export {
  type BurialDepth,
  type BurialInput,
  burialDepth,
  type DrainBack,
  type DrainBackInput,
  drainBack,
} from "./burial.ts";
export { type BuriedPipe, type BuriedPipeInput, buriedPipe, type ThawedCylinder } from "./buried-pipe.ts";
export {
  type BerggrenCoefficientInput,
  type BerggrenDepth,
  type BerggrenInput,
  berggrenCoefficient,
  berggrenFrostDepth,
  type StefanDepth,
  type StefanInput,
  stefanFrostDepth,
} from "./frost-depth.ts";
export {
  type GroundSurface,
  type SurfaceIndex,
  type SurfaceIndexInput,
  surfaceFreezingIndex,
} from "./surface-factor.ts";
export { type TimeToFreeze, type TimeToFreezeInput, timeToFreeze } from "./time-to-freeze.ts";
