/**
 * The yard lines: sizes, flows, and the pressure each outlet has in each use.
 *
 * @module
 */
import { pressureOfHead } from "../head/index.ts";
import { gradeLine, type RunResult, type SolvedNetwork } from "../network/index.ts";
import type { PipeSize } from "../pipe/index.ts";
import type { GaugePressure, Length, Velocity, VolumeFlow } from "../units/index.ts";
import type { Water } from "../water/index.ts";
import { choosePipes, highestVelocity } from "./choose-pipes.ts";
import { WELLHEAD } from "./contradictions.ts";
import { type Finding, PRACTICE } from "./finding.ts";
import { finding } from "./findings.ts";
import type { Job, JobOutlet, JobRun } from "./job.ts";
import { elevations, type Layout, layoutNetwork, lowerEnd, runId, solveUse, tankElevation } from "./layout-solve.ts";
import { ratingAt } from "./pipes.ts";
import type { LayoutGradeLine, LayoutStage, RunPlan, UsePlan } from "./stages.ts";
import { type Use, usesOf } from "./uses.ts";

/**
 * Pressure at the tank while water is used: the valve's; without a valve the lowest, cut-in, and likewise with one that is
 * set at or above cut-out and so never holds.
 */
export function pressureWhileUsed({ controls }: Job): GaugePressure {
  const { cutIn, cutOut, regulatingValve } = controls;
  if (regulatingValve === undefined || regulatingValve.setPressure >= cutOut) return cutIn;
  return regulatingValve.setPressure;
}

/** The layout in every use. */
export function layoutStage(job: Job, water: Water): LayoutStage {
  const uses = usesOf(job);
  const { cutIn } = job.controls;
  const { pipes, state } = choosePipes(job, water, uses, cutIn);
  const layout = { job, water, pipes };
  const atCutIn = uses.map((use) => solveUse(layout, use, cutIn));
  const held = uses.map((use) => solveUse(layout, use, pressureWhileUsed(job)));
  const usePlans = uses.map((use, k): UsePlan => {
    const pressureIn = (solved: readonly SolvedNetwork[], i: number): GaugePressure =>
      (solved[k] as SolvedNetwork).outlets[i]?.pressure as GaugePressure;
    const outlets = use.outlets.map(({ name, flow, pressure }, i) => ({
      name,
      flow,
      pressureAtCutIn: pressureIn(atCutIn, i),
      pressureHeld: pressureIn(held, i),
      wanted: pressure,
    }));
    // With the flows fixed, every pressure moves with the tank's, one for one.
    const missing = Math.max(...outlets.map(({ pressureAtCutIn, wanted }) => wanted - pressureAtCutIn));
    return { name: use.name, flow: use.flow, outlets, tankPressureNeeded: (cutIn + missing) as GaugePressure };
  });
  return {
    runs: job.runs.map((run, i) =>
      runPlan(
        layout,
        run,
        pipes[i] as PipeSize,
        atCutIn.map(({ runs }) => runs[i] as RunResult),
      ),
    ),
    uses: usePlans,
    tankPressureNeeded: Math.max(...usePlans.map(({ tankPressureNeeded }) => tankPressureNeeded)) as GaugePressure,
    choice: state,
    gradeLine: tightestGradeLine(layout, uses, usePlans, held),
  };
}

/** The way to the outlet with the least to spare in any use, with the tank at the pressure held. */
function tightestGradeLine(
  layout: Layout,
  uses: readonly Use[],
  plans: readonly UsePlan[],
  held: readonly SolvedNetwork[],
): LayoutGradeLine | null {
  const { job } = layout;
  const tightest = plans
    .flatMap(({ outlets }, k) => outlets.map((outlet, i) => ({ k, i, spare: outlet.pressureHeld - outlet.wanted })))
    .reduce((least, each) => (each.spare < least.spare ? each : least));
  const use = uses[tightest.k] as Use;
  const outlet = use.outlets[tightest.i] as JobOutlet;
  const runs = wayTo(job, outlet.at);
  if (runs.length === 0) return null;
  const network = layoutNetwork(layout, use.outlets, pressureWhileUsed(job));
  const solution = held[tightest.k] as SolvedNetwork;
  return {
    use: use.name,
    outlet: outlet.name,
    points: gradeLine({ network, solution, from: WELLHEAD, runs }),
  };
}

/** The runs from the wellhead to a place, by the fewest of them. */
function wayTo(job: Job, place: string): readonly string[] {
  const ways = new Map<string, readonly string[]>([[WELLHEAD, []]]);
  // A place reached is walked on from in its turn: a map keeps the order in which its keys came.
  for (const [here, way] of ways) {
    job.runs.forEach((run, i) => {
      const next = run.from === here ? run.to : run.to === here ? run.from : undefined;
      if (next !== undefined && !ways.has(next)) ways.set(next, [...way, runId(run, i)]);
    });
  }
  return ways.get(place) as readonly string[];
}

function runPlan({ job, water }: Layout, run: JobRun, pipe: PipeSize, inUses: readonly RunResult[]): RunPlan {
  const busiest = inUses.reduce((most, result) => (Math.abs(result.flow) > Math.abs(most.flow) ? result : most));
  const fall = (tankElevation(job) - lowerEnd(run, elevations(job))) as Length;
  return {
    name: `${run.from} – ${run.to}`,
    from: run.from,
    to: run.to,
    length: run.length,
    pipe,
    pipeBy: run.pipe === undefined ? "plan" : "job",
    flow: Math.abs(busiest.flow) as VolumeFlow,
    velocity: Math.abs(busiest.velocity as Velocity) as Velocity,
    headLoss: Math.abs(busiest.headLoss) as Length,
    highestPressure: (job.controls.cutOut + pressureOfHead({ head: fall, density: water.density })) as GaugePressure,
    pressureRating: ratingAt(pipe, water.temperature),
  };
}

/** Outlets against what they want, runs against velocity and rating. */
export function layoutFindings(job: Job, { runs, uses }: LayoutStage): readonly Finding[] {
  return [...uses.flatMap(outletFindings), ...runs.flatMap((run) => runFindings(job, run))];
}

function outletFindings({ name: use, outlets }: UsePlan): readonly Finding[] {
  return outlets.flatMap(({ name, pressureAtCutIn, pressureHeld, wanted }) => {
    const base = {
      stage: "layout",
      subject: `${name}, in "${use}"`,
      kind: "pressure",
      wrong: "below",
      basis: { kind: "given", locator: "pressure wanted at the outlet" },
    } as const;
    const held = finding({
      ...base,
      code: "outlet-short-of-pressure",
      value: pressureHeld,
      limit: wanted,
      severity: pressureHeld <= 0 ? "stop" : "fix",
      message: "The outlet has less pressure than wanted while the pump runs.",
      remedy: "Take the next size of pipe on its way, raise the switch setting, or lower the flow.",
    });
    if (held.length > 0) return held;
    return finding({
      ...base,
      code: "outlet-short-at-cut-in",
      value: pressureAtCutIn,
      limit: wanted,
      severity: "look",
      message: "Just before the pump starts the outlet has less pressure than wanted; the pump then makes it good.",
      remedy: "Raise the cut-in or take the next size of pipe on its way, if the user will notice.",
    });
  });
}

function runFindings(job: Job, run: RunPlan): readonly Finding[] {
  const base = { stage: "layout", subject: `run ${run.name}` } as const;
  return [
    ...finding({
      ...base,
      code: "velocity-high",
      kind: "velocity",
      value: run.velocity,
      limit: highestVelocity(job),
      wrong: "above",
      severity: "look",
      message: "The water runs faster in the pipe than is usual: more loss, more surge when a valve shuts.",
      remedy: "Take the next size of pipe.",
      basis: job.pipeChoice?.highestVelocity === undefined ? PRACTICE : { kind: "given", locator: "highest velocity" },
    }),
    ...(run.pressureRating === null
      ? []
      : finding({
          ...base,
          code: "pipe-rating-exceeded",
          kind: "pressure",
          value: run.highestPressure,
          limit: run.pressureRating,
          wrong: "above",
          severity: "stop",
          message: "At rest at cut-out the lowest end of the run sees more than its pipe is rated for.",
          remedy: "Take a pipe of a higher class, or lower the cut-out.",
          basis: {
            kind: "published",
            source: run.pipe.source,
            locator: "pressure rating, at the temperature of the water",
          },
        })),
  ];
}
