/**
 * Generators: starting and running a pump, receptacles, what altitude takes, fuel, cautions.
 *
 * @module
 */
export { type GeneratorCaution, generatorCautions } from "./cautions.ts";
export {
  type Generator,
  type GeneratorChecked,
  type GeneratorCheckInput,
  type GeneratorLoad,
  type GeneratorMargin,
  type GeneratorMisfit,
  type GeneratorMotor,
  generatorCheck,
} from "./generator-check.ts";
export { type ReceptacleCheck, type ReceptacleCheckInput, receptacleCheck } from "./receptacle-check.ts";
export { type Receptacle, type ReceptacleRating, receptacleRatings } from "./receptacles.ts";
