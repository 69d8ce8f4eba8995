/**
 * The plan as the diagnosis takes it: what the plant should be.
 *
 * @module
 */
import type { DiagnosisPlant } from "../field/index.ts";
import { pumpCurve } from "../pump/index.ts";
import type { Length, VolumeFlow } from "../units/index.ts";
import type { Job } from "./job.ts";
import { tankElevation } from "./layout-solve.ts";
import { headTaken, type Lift } from "./lift.ts";
import { valveHolds } from "./record-readings.ts";
import type { PlanStages } from "./stages.ts";

/** Least head the diagnosis takes for a line, m; a line of no length has less. */
const LEAST_LOSS = 1e-6;

/**
 * The plant of a plan; null where the plan has no pump to diagnose.
 *
 * The loss from pump to tank is anchored at the planned flow at cut-in, so that there the diagnosis and the plan agree
 * exactly; away from it the diagnosis takes it as the square of the flow.
 */
export function diagnosisPlantOf(job: Job, stages: PlanStages): DiagnosisPlant | null {
  const { site, well, pump, dropPipe, controls, tank, power } = stages;
  const candidate = job.pump?.candidates?.find(({ name }) => name === pump.chosen?.name);
  const [source] = power?.sources ?? [];
  if (candidate === undefined || power === null || source === undefined) return null;
  const lift: Lift = {
    job,
    water: site.water,
    law: well.law,
    dropPipe: dropPipe.pipe,
    setting: pump.setting,
    staticLevel: well.staticLevel,
  };
  const flow: VolumeFlow = pump.chosen?.atCutIn?.flow ?? pump.dutyFlow;
  const { losses } = headTaken(lift, flow, controls.cutIn).parts;
  return {
    pump: pumpCurve({ points: candidate.curve }),
    well: { staticLevel: well.staticLevel, law: well.law },
    rise: tankElevation(job),
    mainLoss: { flow, headLoss: Math.max(losses, LEAST_LOSS) as Length },
    cutIn: controls.cutIn,
    cutOut: controls.cutOut,
    tank: { volume: tank.volume, precharge: tank.precharge, atmosphere: site.atmosphere },
    density: site.water.density,
    // The sheet reads voltage at the source: the diagnosis looks at its share of the planned one alone.
    voltage: source.voltage,
    current: power.fullLoadCurrent,
    threePhase: candidate.motor.phase === "three-phase",
    ...(controls.setPressure !== null && valveHolds(stages) ? { regulatedPressure: controls.setPressure } : {}),
  };
}
