/**
 * Generators: starting and running a pump, receptacles, what altitude takes, fuel, cautions.
 *
 * @module
 */
export { type GeneratorCaution, generatorCautions } from "./cautions.ts";
export { type CordCheck, type CordCheckInput, type CordSize, cordAmpacity, cordCheck } from "./cord-limits.ts";
export { type FrequencyUnderLoadInput, frequencyUnderLoad } from "./frequency-droop.ts";
export {
  type FuelUseBetweenInput,
  type FuelUseInput,
  fuelUse,
  fuelUseBetween,
  type GeneratorFuel,
  shaftWorkPerGallon,
  type TankRunTimeInput,
  tankRunTime,
} from "./fuel-use.ts";
export {
  type GeneratorChecked,
  type GeneratorCheckInput,
  type GeneratorMargin,
  type GeneratorMisfit,
  generatorCheck,
} from "./generator-check.ts";
export { type GeneratorDerating, type GeneratorDeratingInput, generatorDerating } from "./generator-derating.ts";
export type { Generator, GeneratorLoad, GeneratorMotor } from "./generator-plate.ts";
export { type GeneratorRules, generatorRules } from "./generator-rules.ts";
export { type PumpingFuel, type PumpingFuelInput, pumpingFuel } from "./pumping-fuel.ts";
export { type ReceptacleCheck, type ReceptacleCheckInput, receptacleCheck } from "./receptacle-check.ts";
export { type Receptacle, type ReceptacleRating, receptacleRatings } from "./receptacles.ts";
export {
  type GeneratorForDipInput,
  generatorForDip,
  type ReactanceFromCapabilityInput,
  reactanceFromCapability,
  type StartingDipInput,
  startingDip,
} from "./starting-dip.ts";
