/**
 * Sizes for the runs a job leaves open: least pipe that serves every use.
 *
 * @module
 */
import type { OutletResult, RunResult, SolvedNetwork } from "../network/index.ts";
import type { PipeSize } from "../pipe/index.ts";
import { leastCostSizes } from "../selection/index.ts";
import { feetPerSecond, type GaugePressure, type Velocity } from "../units/index.ts";
import type { Water } from "../water/index.ts";
import { placesReached } from "./contradictions.ts";
import type { Job, JobRun } from "./job.ts";
import { layoutNetwork, runId, solveUse } from "./layout-solve.ts";
import { familySizes, pipeNamed } from "./pipes.ts";
import type { Use } from "./uses.ts";

/** The family of pipe taken where a job names none: common practice for yard lines. */
export const USUAL_FAMILY = "PE SIDR 15";

/** Highest velocity where a job names none: 5 ft/s, common practice. */
export function highestVelocity(job: Job): Velocity {
  return job.pipeChoice?.highestVelocity ?? feetPerSecond(5);
}

/** How the sizes left open were found. */
export type PipeChoiceState =
  /** Nothing was left open. */
  | "all given"
  /** No other sizes use less pipe and serve every use: proven. */
  | "least pipe"
  /** Step by step, for layouts with loops, or where not even the widest sizes serve: good, not proven least. */
  | "step by step";

/** The pipes of a layout. */
export interface ChosenPipes {
  /** A pipe for each run, in the job's order. */
  readonly pipes: readonly PipeSize[];
  /** How those left open were found. */
  readonly state: PipeChoiceState;
}

/** What a choice is made from. */
interface Choice {
  readonly job: Job;
  readonly water: Water;
  readonly uses: readonly Use[];
  readonly tankPressure: GaugePressure;
  /** Sizes on offer, thin to thick. */
  readonly sizes: readonly PipeSize[];
  /** Places in the job of the runs left open. */
  readonly open: readonly number[];
}

/** A pipe for each run: what the job gave, and for the others the least pipe that keeps pressure, velocity and rating. */
export function choosePipes(job: Job, water: Water, uses: readonly Use[], tankPressure: GaugePressure): ChosenPipes {
  const open = job.runs.flatMap(({ pipe }, i) => (pipe === undefined ? [i] : []));
  if (open.length === 0) return { pipes: job.runs.map(({ pipe }) => pipeNamed(pipe as string)), state: "all given" };
  const sizes = familySizes(job.pipeChoice?.family ?? USUAL_FAMILY);
  const choice = { job, water, uses, tankPressure, sizes, open };
  return (isTree(job) ? leastPipe(choice) : null) ?? stepByStep(choice);
}

/** As many runs as places, and all of them joined to the wellhead: no loop. */
function isTree(job: Job): boolean {
  return job.runs.length === job.places.length && placesReached(job).size === job.places.length + 1;
}

/** Area of the wall across the pipe: its material, and so about its price. */
function material({ outsideDiameter, insideDiameter }: PipeSize): number {
  return (Math.PI / 4) * (outsideDiameter ** 2 - insideDiameter ** 2);
}

/** The optimum over the sizes; null where nothing serves every use. */
function leastPipe({ job, water, uses, tankPressure, sizes, open }: Choice): ChosenPipes | null {
  const pipes = given(job, sizes);
  const found = leastCostSizes({
    network: layoutNetwork({ job, water, pipes }, job.outlets, tankPressure),
    choices: open.map((i) => ({
      run: runId(job.runs[i] as JobRun, i),
      sizes: sizes.map((pipe) => ({
        name: pipe.name,
        insideDiameter: pipe.insideDiameter,
        costPerMetre: material(pipe),
        ...(pipe.pressureRating === null ? {} : { pressureRating: pipe.pressureRating }),
      })),
    })),
    scenarios: uses.map(({ name, outlets }) => ({ name, open: outlets.map((outlet) => outlet.name) })),
    greatestVelocity: highestVelocity(job),
  });
  if (found.state !== "found") return null;
  found.runs.forEach(({ size }, k) => {
    pipes[open[k] as number] = sizes.find(({ name }) => name === size) as PipeSize;
  });
  return { pipes, state: found.proven ? "least pipe" : "step by step" };
}

/** The pipes given, and the smallest size for the rest. */
function given(job: Job, sizes: readonly PipeSize[]): PipeSize[] {
  return job.runs.map(({ pipe }) => (pipe === undefined ? (sizes[0] as PipeSize) : pipeNamed(pipe)));
}

/**
 * Starts small; enlarges what runs too fast; then, while an outlet lacks pressure, takes the one step of size that mends
 * most for the pipe it adds. Each step enlarges a run, so the steps are at most runs × sizes.
 */
function stepByStep({ job, water, uses, tankPressure, sizes, open }: Choice): ChosenPipes {
  const pipes = given(job, sizes);
  const fastest = highestVelocity(job);
  const solveAll = (trial: readonly PipeSize[]) =>
    uses.map((use) => solveUse({ job, water, pipes: trial }, use, tankPressure));
  const larger = (i: number): PipeSize | undefined => sizes[sizes.indexOf(pipes[i] as PipeSize) + 1];

  for (let grown = true; grown; ) {
    const solved = solveAll(pipes);
    grown = false;
    for (const i of open) {
      const next = larger(i);
      const tooFast = solved.some(({ runs }) => Math.abs((runs[i] as RunResult).velocity as Velocity) > fastest);
      if (next === undefined || !tooFast) continue;
      pipes[i] = next;
      grown = true;
    }
  }
  for (;;) {
    const missing = shortfall(solveAll(pipes), uses);
    if (missing <= 0) break;
    const steps = open.flatMap((i) => {
      const next = larger(i);
      if (next === undefined) return [];
      const mended = missing - shortfall(solveAll(pipes.map((pipe, k) => (k === i ? next : pipe))), uses);
      const added = (material(next) - material(pipes[i] as PipeSize)) * (job.runs[i] as JobRun).length;
      return [{ i, next, worth: mended / added }];
    });
    const best = steps.reduce<(typeof steps)[number] | null>(
      (most, step) => (most === null || step.worth > most.worth ? step : most),
      null,
    );
    if (best === null || !(best.worth > 0)) break;
    pipes[best.i] = best.next;
  }
  return { pipes, state: "step by step" };
}

/** Pressure missing at the outlets of all uses together, Pa; 0 where none lacks any. */
function shortfall(solved: readonly SolvedNetwork[], uses: readonly Use[]): number {
  return solved.reduce(
    (sum, { outlets }, k) =>
      sum +
      (uses[k] as Use).outlets.reduce(
        (part, { pressure }, i) => part + Math.max(pressure - (outlets[i] as OutletResult).pressure, 0),
        0,
      ),
    0,
  );
}
