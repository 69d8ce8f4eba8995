/**
 * Sizes for the runs a job leaves open.
 *
 * @module
 */
import { findPipe, type PipeSize } from "../pipe/index.ts";
import { feetPerSecond, type GaugePressure, type Velocity } from "../units/index.ts";
import type { Water } from "../water/index.ts";
import type { Job } from "./job.ts";
import { solveUse } from "./layout-solve.ts";
import { familySizes } from "./pipes.ts";
import type { Use } from "./uses.ts";

/** The family of pipe taken where a job names none: common practice for yard lines. */
export const USUAL_FAMILY = "PE SIDR 15";

/** Highest velocity where a job names none: 5 ft/s, common practice. */
export function highestVelocity(job: Job): Velocity {
  return job.pipeChoice?.highestVelocity ?? feetPerSecond(5);
}

/**
 * A pipe for each run: what the job gave, and for the others the smallest sizes that keep the velocity; then, while an
 * outlet lacks pressure, the next size where a step of size saves most head for the pipe it adds.
 */
export function choosePipes(
  job: Job,
  water: Water,
  uses: readonly Use[],
  tankPressure: GaugePressure,
): readonly PipeSize[] {
  const sizes = familySizes(job.pipeChoice?.family ?? USUAL_FAMILY);
  const open = job.runs.flatMap(({ pipe }, i) => (pipe === undefined ? [i] : []));
  const pipes = job.runs.map(({ pipe }) => (pipe === undefined ? (sizes[0] as PipeSize) : findPipe(pipe)));
  const fastest = highestVelocity(job);
  const solveAll = () => uses.map((use) => solveUse({ job, water, pipes }, use, tankPressure));
  const enlarge = (i: number): boolean => {
    const next = sizes[sizes.indexOf(pipes[i] as PipeSize) + 1];
    if (next === undefined) return false;
    pipes[i] = next;
    return true;
  };

  // Each pass enlarges at least one run or ends, so the passes are at most runs × sizes.
  for (let grown = true; grown; ) {
    grown = false;
    const solved = solveAll();
    for (const i of open) {
      const tooFast = solved.some(({ runs }) => Math.abs(runs[i]?.velocity ?? 0) > fastest);
      if (tooFast && enlarge(i)) grown = true;
    }
  }
  for (;;) {
    const short = solveAll().flatMap((result, k) => (isShort(result, uses[k] as Use) ? [result] : []));
    if (short.length === 0) return pipes;
    let best = -1;
    let most = 0;
    for (const i of open) {
      const at = sizes.indexOf(pipes[i] as PipeSize);
      const next = sizes[at + 1];
      if (next === undefined) continue;
      const now = pipes[i] as PipeSize;
      const lost = Math.max(...short.map(({ runs }) => Math.abs(runs[i]?.headLoss ?? 0)));
      // Loss falls about as the fifth power of the bore; wall material grows as the product of bore and wall.
      const saved = lost * (1 - (now.insideDiameter / next.insideDiameter) ** 5);
      const run = job.runs[i];
      const added = (section(next) - section(now)) * (run?.length ?? 1);
      if (saved / added > most) {
        most = saved / added;
        best = i;
      }
    }
    if (best < 0 || !enlarge(best)) return pipes;
  }
}

/** Area of the wall across the pipe: material, and so about the price. */
function section({ outsideDiameter, insideDiameter }: PipeSize): number {
  return outsideDiameter ** 2 - insideDiameter ** 2;
}

function isShort(
  result: { readonly outlets: readonly { readonly id: string; readonly pressure: number }[] },
  use: Use,
): boolean {
  return use.outlets.some(
    ({ name, pressure }) => (result.outlets.find(({ id }) => id === name)?.pressure ?? 0) < pressure,
  );
}
