/**
 * Friction in full round pipes, and the pipes: Darcy–Weisbach and its friction factor, Hazen–Williams, standard sizes.
 *
 * @module
 */
export { type DarcyWeisbachInput, type DarcyWeisbachLoss, darcyWeisbachLoss } from "./darcy-weisbach.ts";
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
export { type WallMaterial, type WallRoughness, wallRoughness, wallRoughnesses } from "./wall-roughness.ts";
