import type { CompiledSystem } from "./compile.ts";
import type { Plant, PlantStart } from "./plant.ts";
import { steadyPlant } from "./steady-plant.ts";
export function storingPlant(system: CompiledSystem, begin: PlantStart): Plant {
  return steadyPlant(system, begin);
}
