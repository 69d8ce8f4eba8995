/**
 * Disinfection after the work: the water that stands in well, pipe and tank, and the bleach for it.
 *
 * @module
 */
import { bleachDose, treatedVolume } from "../disinfection/index.ts";
import type { Concentration, Duration, Length, Ratio, VolumeFlow } from "../units/index.ts";
import type { Lift } from "./lift.ts";
import type { DisinfectionStage, LayoutStage, TankStage } from "./stages.ts";
import { boreSections } from "./well-stage.ts";

/** Chlorine wanted where the job names none: 100 mg/L, common practice. */
const USUAL_TARGET = 0.1 as Concentration;
/** Strength of household bleach where the job names none: common practice. */
const USUAL_STRENGTH = 0.06 as Ratio;

/** Water to treat and bleach for it. */
export function disinfectionStage(
  { job, dropPipe }: Lift,
  layout: LayoutStage,
  tank: TankStage,
  flow: VolumeFlow,
): DisinfectionStage {
  const { target = USUAL_TARGET, bleachStrength = USUAL_STRENGTH } = job.disinfection ?? {};
  const treated = treatedVolume({
    staticLevel: Math.max(job.well.staticLevel, 0) as Length,
    bore: boreSections(job.well),
    dropPipe: dropPipe.insideDiameter,
    pipes: layout.runs.map(({ pipe, length }) => ({ insideDiameter: pipe.insideDiameter, length })),
    tank: tank.drawdown.storedAtCutOut,
  });
  return {
    treated,
    dose: bleachDose({ volume: treated.total, target, strength: bleachStrength }),
    flushTime: (treated.total / flow) as Duration,
  };
}
