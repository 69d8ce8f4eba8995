/**
 * What no single field shows: parts of a job that contradict each other or name what is not there.
 *
 * @module
 */
import { parseConductorSize } from "../conductor/index.ts";
import { livestockDemand } from "../demand/index.ts";
import { fullLoadCurrent } from "../motor/index.ts";
import { findPipe } from "../pipe/index.ts";
import { pumpCurve } from "../pump/index.ts";
import { format, InputError, type Length } from "../units/index.ts";
import type { Job, JobPumpPoint } from "./job.ts";
import type { JobIssue } from "./job-error.ts";
import { familySizes } from "./pipes.ts";

/** The place every layout starts from: the well with its tank. */
export const WELLHEAD = "wellhead";

/** Everything in the job that contradicts something else in it. */
export function contradictions(job: Job): readonly JobIssue[] {
  return [
    ...wellIssues(job),
    ...pumpIssues(job),
    ...controlIssues(job),
    ...layoutIssues(job),
    ...powerIssues(job),
    ...nameIssues(job),
  ];
}

const feet = (length: Length): string => `${format(length, "ft")} (${format(length, "m")})`;

function wellIssues({ well, pump }: Job): JobIssue[] {
  const issues: JobIssue[] = [];
  const deeperThanHole = (path: string, depth: Length | undefined): void => {
    if (depth !== undefined && depth > well.depth) {
      issues.push({
        path,
        value: feet(depth),
        expected: `a depth above the bottom of the hole at ${feet(well.depth)}`,
      });
    }
  };
  deeperThanHole("well.casingDepth", well.casingDepth);
  deeperThanHole("well.screenTop", well.screenTop);
  deeperThanHole("well.staticLevel", well.staticLevel);
  deeperThanHole("pump.setting", pump?.setting);
  well.test.forEach(({ pumpingLevel }, i) => {
    const path = `well.test[${i}].pumpingLevel`;
    deeperThanHole(path, pumpingLevel);
    if (!(pumpingLevel > well.staticLevel)) {
      issues.push({
        path,
        value: feet(pumpingLevel),
        expected: `a level below the water at rest at ${feet(well.staticLevel)}: pumping draws it down`,
      });
    }
  });
  const { highestStaticLevel = well.staticLevel } = well;
  if (highestStaticLevel > well.staticLevel) {
    issues.push({
      path: "well.highestStaticLevel",
      value: feet(highestStaticLevel),
      expected: `a depth no greater than the static level, ${feet(well.staticLevel)}: the highest water has the least depth`,
    });
  }
  return issues;
}

function pumpIssues({ pump, well }: Job): JobIssue[] {
  return (pump?.candidates ?? []).flatMap(({ curve, diameter, motor }, i) => {
    const path = `pump.candidates[${i}]`;
    const issues = curveIssues(curve, `${path}.curve`);
    const { power, voltage, phase, fullLoadCurrent: plate } = motor;
    if (plate === undefined) {
      issues.push(
        ...refusal(`${path}.motor.fullLoadCurrent`, "nothing", () =>
          fullLoadCurrent({ power, voltage, system: phase }),
        ).map((issue) => ({
          ...issue,
          expected: `the current of the plate: the code's table has no such motor (${issue.expected})`,
        })),
      );
    }
    if (!(diameter < well.casingInsideDiameter)) {
      issues.push({
        path: `${path}.diameter`,
        value: format(diameter, "in"),
        expected: `a pump that goes down the casing, inside diameter ${format(well.casingInsideDiameter, "in")}`,
      });
    }
    return issues;
  });
}

/** A curve goes to more flow at less head. One that rises gives two flows at one head, and no operating point is sure. */
function curveIssues(curve: readonly JobPumpPoint[], path: string): JobIssue[] {
  const issues: JobIssue[] = [];
  curve.forEach((point, i) => {
    const before = curve[i - 1];
    if (before === undefined) return;
    if (!(point.flow > before.flow)) {
      issues.push({
        path: `${path}[${i}].flow`,
        value: format(point.flow, "gpm"),
        expected: `a flow above that of the point before, ${format(before.flow, "gpm")}: list the curve from no flow on`,
      });
    } else if (!(point.head < before.head)) {
      issues.push({
        path: `${path}[${i}].head`,
        value: format(point.head, "ft"),
        expected: `a head below that of the point before, ${format(before.head, "ft")}: a rising curve has no sure operating point`,
      });
    }
  });
  return issues.length > 0 ? issues : refusedCurve(curve, path);
}

/** What the pump module refuses in the points of a curve, said of the job's. */
function refusedCurve(points: readonly JobPumpPoint[], path: string): JobIssue[] {
  try {
    pumpCurve({ points });
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const { parameter, value, expected } = error;
    return [{ path: parameter.replace("points", path), value, expected }];
  }
}

function controlIssues({ controls }: Job): JobIssue[] {
  const { cutIn, cutOut, regulatingValve } = controls;
  const issues: JobIssue[] = [];
  if (!(cutOut > cutIn)) {
    issues.push({
      path: "controls.cutOut",
      value: format(cutOut, "psi"),
      expected: `a pressure above the cut-in, ${format(cutIn, "psi")}: the pump starts at cut-in and stops at cut-out`,
    });
  }
  if (
    regulatingValve !== undefined &&
    (regulatingValve.loss === undefined) !== (regulatingValve.ratedFlow === undefined)
  ) {
    issues.push({
      path: "controls.regulatingValve.ratedFlow",
      value: regulatingValve.ratedFlow,
      expected: "the loss of the open valve and the flow it is rated at, both or neither",
    });
  }
  if (controls.reliefCapacity !== undefined && controls.reliefPressure === undefined) {
    issues.push({
      path: "controls.reliefPressure",
      value: undefined,
      expected: "the pressure the relief valve opens at, with its capacity",
    });
  }
  return issues;
}

function layoutIssues(job: Job): JobIssue[] {
  const issues: JobIssue[] = [];
  const known = new Set([WELLHEAD, ...job.places.map(({ name }) => name)]);
  const knownText = [...known].map((name) => `"${name}"`).join(", ");
  const requirePlace = (path: string, name: string): void => {
    if (!known.has(name)) issues.push({ path, value: name, expected: `a place of the job: ${knownText}` });
  };
  job.runs.forEach(({ from, to }, i) => {
    requirePlace(`runs[${i}].from`, from);
    requirePlace(`runs[${i}].to`, to);
    if (from === to)
      issues.push({ path: `runs[${i}].to`, value: to, expected: "another place than the run starts from" });
  });
  for (const [i, { at }] of job.outlets.entries()) requirePlace(`outlets[${i}].at`, at);
  const reached = placesReached(job);
  job.outlets.forEach(({ at }, i) => {
    if (known.has(at) && !reached.has(at))
      issues.push({ path: `outlets[${i}].at`, value: at, expected: "a place that runs of pipe join to the wellhead" });
  });
  const outlets = new Set(job.outlets.map(({ name }) => name));
  job.uses?.forEach((use, i) => {
    use.outlets.forEach((name, k) => {
      if (!outlets.has(name))
        issues.push({
          path: `uses[${i}].outlets[${k}]`,
          value: name,
          expected: `an outlet of the job: ${[...outlets].map((o) => `"${o}"`).join(", ")}`,
        });
    });
  });
  const pipes: readonly (readonly [string, string | undefined])[] = [
    ["dropPipe.pipe", job.dropPipe?.pipe],
    ...job.runs.map(({ pipe }, i) => [`runs[${i}].pipe`, pipe] as const),
  ];
  const { family } = job.pipeChoice ?? {};
  if (family !== undefined && familySizes(family).length === 0) {
    issues.push({
      path: "pipeChoice.family",
      value: family,
      expected: 'a family of pipe such as "PE SIDR 15" or "PVC SCH 40"',
    });
  }
  for (const [path, pipe] of pipes) {
    if (pipe !== undefined) issues.push(...refusal(path, pipe, () => findPipe(pipe)));
  }
  return issues;
}

/** The issue where a look-up refuses a name of the job; none where it finds it. */
function refusal(path: string, value: string, lookUp: () => unknown): JobIssue[] {
  try {
    lookUp();
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return [{ path, value, expected: error.expected }];
  }
}

/** The places that runs join to the wellhead, near or far. */
export function placesReached(job: Job): ReadonlySet<string> {
  const reached = new Set([WELLHEAD]);
  let before = 0;
  while (reached.size > before) {
    before = reached.size;
    for (const { from, to } of job.runs) {
      if (reached.has(from)) reached.add(to);
      else if (reached.has(to)) reached.add(from);
    }
  }
  return reached;
}

function powerIssues({ power }: Job): JobIssue[] {
  const issues = power.circuit.flatMap(({ size }, i) =>
    size === undefined ? [] : refusal(`power.circuit[${i}].size`, size, () => parseConductorSize(size)),
  );
  const { groundingSize } = power;
  if (groundingSize !== undefined)
    issues.push(...refusal("power.groundingSize", groundingSize, () => parseConductorSize(groundingSize)));
  power.sources.forEach((source, i) => {
    const path = `power.sources[${i}]`;
    if (source.kind === "generator" && source.runningPower === undefined) {
      issues.push({
        path: `${path}.runningPower`,
        value: undefined,
        expected: "the power the generator runs, from its plate",
      });
    }
    if (
      source.runningPower !== undefined &&
      source.surgePower !== undefined &&
      source.surgePower < source.runningPower
    ) {
      issues.push({
        path: `${path}.surgePower`,
        value: format(source.surgePower, "W"),
        expected: `at least the running power, ${format(source.runningPower, "W")}`,
      });
    }
  });
  return issues;
}

function nameIssues(job: Job): JobIssue[] {
  const issues: JobIssue[] = [];
  const lists: readonly (readonly [string, readonly { readonly name: string }[]])[] = [
    ["places", [...job.places]],
    ["outlets", job.outlets],
    ["uses", job.uses ?? []],
    ["pump.candidates", job.pump?.candidates ?? []],
    ["power.sources", job.power.sources],
    ["power.circuit", job.power.circuit],
  ];
  for (const [path, items] of lists) {
    const seen = new Set<string>(path === "places" ? [WELLHEAD] : []);
    items.forEach(({ name }, i) => {
      if (seen.has(name))
        issues.push({ path: `${path}[${i}].name`, value: name, expected: "a name not used before in the list" });
      seen.add(name);
    });
  }
  job.demand?.livestock?.forEach(({ kind }, i) => {
    issues.push(...refusal(`demand.livestock[${i}].kind`, kind, () => livestockDemand({ kind, head: 1 })));
  });
  return issues;
}
