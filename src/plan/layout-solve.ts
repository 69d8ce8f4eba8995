/**
 * The yard lines in a use, by the network solver: the tank is a source of fixed head, each outlet takes the flow wanted.
 *
 * @module
 */
import { fittingsLoss } from "../fittings/index.ts";
import { headOfPressure } from "../head/index.ts";
import { type SolvedNetwork, solveNetwork } from "../network/index.ts";
import { type PipeSize, wallRoughness } from "../pipe/index.ts";
import type { GaugePressure, Length } from "../units/index.ts";
import type { Water } from "../water/index.ts";
import { WELLHEAD } from "./contradictions.ts";
import type { Job, JobRun } from "./job.ts";
import { JobError } from "./job-error.ts";
import type { Use } from "./uses.ts";

/** What the layout is made of, sizes settled. */
export interface Layout {
  /** The job. */
  readonly job: Job;
  /** Its water. */
  readonly water: Water;
  /** A pipe for each run of the job, in its order. */
  readonly pipes: readonly PipeSize[];
}

/** Elevation of the tank's connection above the ground at the well. */
export function tankElevation({ tank }: Job): Length {
  return (tank?.elevation ?? 0) as Length;
}

/** Elevations of all places, the wellhead with them. */
export function elevations(job: Job): ReadonlyMap<string, Length> {
  return new Map([
    [WELLHEAD, tankElevation(job)],
    ...job.places.map(({ name, elevation }) => [name, elevation] as const),
  ]);
}

/** The layout in one use with the tank at a pressure. */
export function solveUse({ job, water, pipes }: Layout, use: Use, tankPressure: GaugePressure): SolvedNetwork {
  const { density } = water;
  const head = (tankElevation(job) + headOfPressure({ pressure: tankPressure, density })) as Length;
  const solved = solveNetwork({
    water,
    junctions: [...elevations(job)].map(([id, elevation]) => ({ id, elevation })),
    runs: job.runs.map((run, i) => networkRun(run, i, pipes[i] as PipeSize, use, water)),
    outlets: use.outlets.map(({ name, at, flow, pressure }) => ({
      id: name,
      junction: at,
      kind: "fixed demand",
      flow,
      leastPressure: pressure,
    })),
    sources: [{ id: "tank", junction: WELLHEAD, kind: "fixed head", head }],
  });
  if (solved.state !== "solved") {
    throw new JobError([
      { path: "runs", value: use.name, expected: "runs and flows whose pressures lie within reach of each other" },
    ]);
  }
  return solved;
}

/** Name of a run in the network: the number of its place in the job keeps doubled runs apart. */
export function runId(run: JobRun, i: number): string {
  return `${i + 1}: ${run.from} – ${run.to}`;
}

function networkRun(run: JobRun, i: number, pipe: PipeSize, use: Use, { kinematicViscosity }: Water) {
  const { roughness } = wallRoughness(pipe.material);
  const fittings = (run.fittings ?? []).map(({ kind, count }) => ({ kind: "named", fitting: kind, count }) as const);
  // The coefficients vary little with the flow: those at the flow of the whole use serve.
  const coefficient =
    fittings.length === 0
      ? 0
      : (fittingsLoss({
          flow: use.flow,
          insideDiameter: pipe.insideDiameter,
          roughness,
          viscosity: kinematicViscosity,
          fittings,
        }).coefficient ?? 0);
  return {
    id: runId(run, i),
    from: run.from,
    to: run.to,
    law: "darcy-weisbach",
    insideDiameter: pipe.insideDiameter,
    length: run.length,
    roughness,
    lossCoefficient: coefficient,
  } as const;
}
