/**
 * The drop pipe: its size, its loss, and the pressure at its lower end.
 *
 * @module
 */
import { pressureOfHead } from "../head/index.ts";
import { darcyWeisbachLoss, type PipeSize, pipeGradeProperties, pipeMass, wallRoughness } from "../pipe/index.ts";
import type { Force, GaugePressure, Length, Mass, VolumeFlow } from "../units/index.ts";
import type { Water } from "../water/index.ts";
import { dropPipeFixings, hangingLoad } from "../well/index.ts";
import { highestVelocity } from "./choose-pipes.ts";
import { type Finding, PRACTICE } from "./finding.ts";
import { finding } from "./findings.ts";
import type { Job } from "./job.ts";
import { dropPipeLength, dropPipeLoss, type Lift } from "./lift.ts";
import { familySizes, pipeNamed, ratingAt } from "./pipes.ts";
import type { PumpWork } from "./pump-stage.ts";
import type { DropPipeStage } from "./stages.ts";

/** Family of the drop pipe where the job names no pipe: threaded heavy-wall PVC, common practice. */
const USUAL_DROP_FAMILY = "PVC SCH 80";

/** The drop pipe of the job; where it names none, the smallest that keeps the velocity at the duty flow. */
export function chooseDropPipe(job: Job, water: Water, flow: VolumeFlow): PipeSize {
  const { pipe } = job.dropPipe ?? {};
  if (pipe !== undefined) return pipeNamed(pipe);
  const sizes = familySizes(USUAL_DROP_FAMILY);
  const fits = sizes.find((size) => velocityIn(size, flow, water) <= highestVelocity(job));
  return fits ?? (sizes.at(-1) as PipeSize);
}

function velocityIn(pipe: PipeSize, flow: VolumeFlow, { kinematicViscosity }: Water): number {
  const { roughness } = wallRoughness(pipe.material);
  return darcyWeisbachLoss({
    flow,
    insideDiameter: pipe.insideDiameter,
    length: 0 as Length,
    roughness,
    viscosity: kinematicViscosity,
  }).velocity;
}

/** The drop pipe at the duty flow, with the pump against a closed valve, and hanging on the hoist. */
export function dropPipeStage(
  lift: Lift,
  flow: VolumeFlow,
  pump: PumpWork["pump"],
  lowestLevel: Length,
): DropPipeStage {
  const { job, water, dropPipe, setting } = lift;
  const loss = dropPipeLoss(lift, flow);
  return {
    pipe: dropPipe,
    pipeBy: job.dropPipe?.pipe === undefined ? "plan" : "job",
    length: dropPipeLength(lift),
    velocity: velocityIn(dropPipe, flow, water) as DropPipeStage["velocity"],
    headLoss: (loss.pipe + loss.fittings) as Length,
    // The water outside bears up the pipe as the column inside loads it: what is left is the pump's own shutoff head.
    highestPressure: (pump === null
      ? 0
      : pressureOfHead({ head: pump.curve.greatestHead, density: water.density })) as GaugePressure,
    pressureRating: ratingAt(dropPipe, water.temperature),
    hangingLoad: pump?.candidate.mass === undefined ? null : pull(lift, pump.candidate.mass),
    fixings: dropPipeFixings({ pumpSetting: setting, pumpingLevel: Math.max(lowestLevel, 0) as Length }),
  };
}

/** Pull on the hoist with the pipe full and nothing borne up: what the hoist must be good for. */
function pull({ dropPipe, setting, water }: Lift, pumpMass: Mass): Force {
  const { insideDiameter, outsideDiameter, grade } = dropPipe;
  const { density } = pipeGradeProperties(grade);
  const mass = pipeMass({ outsideDiameter, insideDiameter, density });
  return hangingLoad({
    pumpMass,
    insideDiameter,
    outsideDiameter,
    pipeMass: mass,
    pumpSetting: setting,
    density: water.density,
  }).lifting;
}

/** The drop pipe against its rating and the usual velocity. */
export function dropPipeFindings(job: Job, stage: DropPipeStage): readonly Finding[] {
  const { pipe } = stage;
  return [
    ...(stage.pressureRating === null
      ? []
      : finding({
          code: "drop-pipe-rating-exceeded",
          stage: "dropPipe",
          subject: pipe.name,
          kind: "pressure",
          value: stage.highestPressure,
          limit: stage.pressureRating,
          wrong: "above",
          severity: "stop",
          message: "Against a closed valve the lower end of the drop pipe sees more than it is rated for.",
          remedy: "Take a heavier pipe, or steel for the lower lengths.",
          basis: {
            kind: "published",
            source: pipe.source,
            locator: "pressure rating, at the temperature of the water",
          },
        })),
    ...(job.dropPipe?.checkValves === undefined
      ? []
      : finding({
          code: "few-check-valves",
          stage: "dropPipe",
          kind: "count",
          value: job.dropPipe.checkValves,
          limit: stage.fixings.checkValves.length - 1,
          wrong: "below",
          severity: "look",
          message: "Fewer check valves stand above the pump's own than practice has for the depth.",
          remedy: "Fit them at the depths the plan lists, unless the code or the pump's sheet says otherwise.",
          basis: PRACTICE,
        })),
    ...finding({
      code: "drop-pipe-velocity-high",
      stage: "dropPipe",
      subject: pipe.name,
      kind: "velocity",
      value: stage.velocity,
      limit: highestVelocity(job),
      wrong: "above",
      severity: "look",
      message: "The water runs faster up the drop pipe than is usual.",
      remedy: "Take the next size of pipe.",
      basis: job.pipeChoice?.highestVelocity === undefined ? PRACTICE : { kind: "given", locator: "highest velocity" },
    }),
  ];
}
