/**
 * The place: what its water and its air are.
 *
 * @module
 */
import { atmosphereAt, waterAt } from "../water/index.ts";
import type { Job } from "./job.ts";
import type { SiteStage } from "./stages.ts";

/** Properties of the water at its temperature, and the air at the altitude of the well. */
export function siteStage({ site }: Job): SiteStage {
  return { water: waterAt({ temperature: site.waterTemperature }), atmosphere: atmosphereAt(site.elevation) };
}
