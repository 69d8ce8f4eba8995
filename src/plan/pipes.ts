/**
 * What a length of pipe with fittings costs in head, as the plan reckons it everywhere: Darcy–Weisbach with the wall's
 * roughness, fittings by their names.
 *
 * @module
 */
import { type FittingsLoss, fittingsLoss } from "../fittings/index.ts";
import {
  averageInsideDiameter,
  darcyWeisbachLoss,
  findPipe,
  listPipes,
  type PipeSize,
  ratingAtTemperature,
  wallRoughness,
} from "../pipe/index.ts";
import {
  type GaugePressure,
  InputError,
  type KinematicViscosity,
  type Length,
  parseLength,
  type Temperature,
  type VolumeFlow,
} from "../units/index.ts";
import type { JobFitting } from "./job.ts";

/** A length of one pipe with its fittings. */
export interface PipeRun {
  /** The pipe. */
  readonly pipe: PipeSize;
  /** Its length. */
  readonly length: Length;
  /** Its fittings. */
  readonly fittings: readonly JobFitting[];
}

/** A pipe by its text, with the bore such pipe has on average: a standard that sets the least wall gives the widest bore. */
export function pipeNamed(text: string): PipeSize {
  return withAverageBore(findPipe(text));
}

function withAverageBore(pipe: PipeSize): PipeSize {
  return { ...pipe, insideDiameter: averageInsideDiameter(pipe), insideDiameterBasis: "average" };
}

/** Head lost in a run at a flow, pipe and fittings apart. */
export function runLoss(
  run: PipeRun,
  flow: VolumeFlow,
  viscosity: KinematicViscosity,
): { readonly pipe: Length; readonly fittings: Length } {
  const { insideDiameter } = run.pipe;
  const roughness = wallRoughness(run.pipe.material).roughness;
  const pipe = darcyWeisbachLoss({ flow, insideDiameter, length: run.length, roughness, viscosity }).headLoss;
  if (run.fittings.length === 0) return { pipe, fittings: 0 as Length };
  return { pipe, fittings: runFittings(run.pipe, run.fittings, flow, viscosity).headLoss };
}

/** Loss of a pipe's fittings, by the nominal size that the published coefficients ask for. */
export function runFittings(
  pipe: PipeSize,
  fittings: readonly JobFitting[],
  flow: VolumeFlow,
  viscosity: KinematicViscosity,
): FittingsLoss {
  return fittingsLoss({
    flow,
    insideDiameter: pipe.insideDiameter,
    nominalSize: parseLength(pipe.nominal),
    roughness: wallRoughness(pipe.material).roughness,
    viscosity,
    fittings: fittings.map(({ kind, count }) => ({ kind: "named", fitting: kind, count })),
  });
}

/** What a pipe may see at a temperature; null where its standard gives no rating. */
export function ratingAt(pipe: PipeSize, temperature: Temperature): GaugePressure | null {
  const rated = ratingAtTemperature({ pipe, temperature });
  // Too warm for its material at all: it may see no pressure, and the finding of its rating says so.
  if (rated.state === "too warm") return 0 as GaugePressure;
  return rated.state === "rated" ? rated.pressureRating : null;
}

/** Sizes that nearly every family has; one of them found leads to the rest. */
const COMMON_SIZES = ["1 in", "2 in", "32 mm", "63 mm", "1/2 in", "4 in"] as const;

/** The sizes of a family such as "PE SIDR 15", thin to thick as its table has them; empty where there is no such family. */
export function familySizes(family: string): readonly PipeSize[] {
  const member = memberOf(family);
  if (member === undefined) return [];
  const { standard, grade, series } = member;
  return listPipes({ standard })
    .filter((pipe) => pipe.grade === grade && pipe.series === series)
    .map(withAverageBore);
}

function memberOf(family: string): PipeSize | undefined {
  for (const size of COMMON_SIZES) {
    try {
      return findPipe(`${size} ${family}`);
    } catch (error) {
      // Not every family has every size; only that may be passed over.
      if (!(error instanceof InputError)) throw error;
    }
  }
  return undefined;
}
