/**
 * The yard lines in a use, by the network solver: the tank is a source of fixed head, each outlet takes the flow wanted.
 *
 * @module
 */
import { headOfPressure } from "../head/index.ts";
import { type Network, type Run, type SolvedNetwork, solveNetwork } from "../network/index.ts";
import { type PipeSize, wallRoughness } from "../pipe/index.ts";
import type { GaugePressure, Length, VolumeFlow } from "../units/index.ts";
import type { Water } from "../water/index.ts";
import { WELLHEAD } from "./contradictions.ts";
import type { Job, JobOutlet, JobRun } from "./job.ts";
import { JobError } from "./job-error.ts";
import { runFittings } from "./pipes.ts";
import type { Use } from "./uses.ts";

/** Head beyond which no water lies, m; a thin pipe asked for a river has it on paper. */
const MOST_HEAD = 1e9;

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

/** Elevation of the lower end of a run, where its pressure is highest. */
export function lowerEnd({ from, to }: Pick<JobRun, "from" | "to">, places: ReadonlyMap<string, Length>): Length {
  return Math.min(places.get(from) as Length, places.get(to) as Length) as Length;
}

/** The layout as the network solver reads it: some outlets, the tank at a pressure. */
export function layoutNetwork(
  { job, water, pipes }: Layout,
  outlets: readonly JobOutlet[],
  tankPressure: GaugePressure,
): Network {
  const head = (tankElevation(job) + headOfPressure({ pressure: tankPressure, density: water.density })) as Length;
  const flow = outlets.reduce((sum, outlet) => sum + outlet.flow, 0) as VolumeFlow;
  return {
    water,
    junctions: [...elevations(job)].map(([id, elevation]) => ({ id, elevation })),
    runs: job.runs.map((run, i) => networkRun(run, i, pipes[i] as PipeSize, flow, water)),
    outlets: outlets.map(({ name, at, flow: wanted, pressure }) => ({
      id: name,
      junction: at,
      kind: "fixed demand",
      flow: wanted,
      leastPressure: pressure,
    })),
    sources: [{ id: "tank", junction: WELLHEAD, kind: "fixed head", head }],
  };
}

/** The layout in one use with the tank at a pressure. */
export function solveUse(layout: Layout, use: Use, tankPressure: GaugePressure): SolvedNetwork {
  const solved = solveNetwork(layoutNetwork(layout, use.outlets, tankPressure));
  if (solved.state !== "solved" || solved.junctions.some(({ head }) => Math.abs(head) > MOST_HEAD)) {
    throw new JobError([
      { path: "runs", value: use.name, expected: "runs and flows whose pressures lie within reach of each other" },
    ]);
  }
  return solved;
}

/** Name of a run in the network: the number of its place in the job keeps doubled runs apart. */
export function runId({ from, to }: JobRun, i: number): string {
  return `${i + 1}: ${from} – ${to}`;
}

function networkRun(run: JobRun, i: number, pipe: PipeSize, flow: VolumeFlow, { kinematicViscosity }: Water): Run {
  const { roughness } = wallRoughness(pipe.material);
  // The coefficients vary little with the flow: those at the flow of all outlets together serve.
  const coefficient =
    run.fittings === undefined ? 0 : (runFittings(pipe, run.fittings, flow, kinematicViscosity).coefficient ?? 0);
  return {
    id: runId(run, i),
    from: run.from,
    to: run.to,
    law: "darcy-weisbach",
    insideDiameter: pipe.insideDiameter,
    length: run.length,
    roughness,
    lossCoefficient: coefficient,
  };
}
