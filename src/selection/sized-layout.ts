/**
 * A branched layout read for sizing: its tree, what each use takes, and what each size loses. Private to the selection.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: lists of one length, walked together.
import type { DarcyRun, HazenWilliamsRun, Network, Run } from "../network/index.ts";
import type { readNetwork } from "../network/read-network.ts";
import { requireList, requireObject, requirePositive, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import { darcyWeisbachLoss, hazenWilliamsLoss } from "../pipe/index.ts";
import { InputError, type VolumeFlow } from "../units/index.ts";
import type { RunChoices, SizeChoice, SizingScenario } from "./least-cost-sizes.ts";

export function readChoices(
  network: Network,
  runIndex: ReadonlyMap<string, number>,
  choices: readonly RunChoices[],
): Map<number, readonly SizeChoice[]> {
  const sizesOf = new Map<number, readonly SizeChoice[]>();
  choices.forEach((choice, c) => {
    const path = `choices[${c}]`;
    requireObject(path, choice);
    const index = runIndex.get(choice.run);
    if (index === undefined) throw new InputError(`${path}.run`, choice.run, "the id of a run");
    if (sizesOf.has(index)) throw new InputError(`${path}.run`, choice.run, "each run once");
    const run = network.runs[index]!;
    if (run.law === "power") throw new InputError(`${path}.run`, choice.run, 'a run of pipe, not of law "power"');
    requireList(`${path}.sizes`, choice.sizes, 1, 50);
    Array.from(choice.sizes).forEach((size, k) => {
      requireSize(`${path}.sizes[${k}]`, size, run);
    });
    sizesOf.set(index, choice.sizes);
  });
  return sizesOf;
}

function requireSize(path: string, size: SizeChoice, run: DarcyRun | HazenWilliamsRun): void {
  requireObject(path, size);
  if (!(typeof size.name === "string" && size.name.length >= 1 && size.name.length <= 200)) {
    throw new InputError(`${path}.name`, size.name, "a name of 1 to 200 characters");
  }
  requireWithin(`${path}.insideDiameter`, size.insideDiameter, 1e-3, 20, "m");
  requireWithin(`${path}.costPerMetre`, size.costPerMetre, 0, 1e9, "a metre");
  if (size.pressureRating !== undefined)
    requirePositive(`${path}.pressureRating`, size.pressureRating, 1e8, "Pa gauge");
  const roughness = size.roughness ?? (run.law === "darcy-weisbach" ? run.roughness : 0);
  requireWithin(`${path}.roughness`, roughness, 0, size.insideDiameter / 2, "m (half the inside diameter)");
  if (size.coefficient !== undefined) requireWithin(`${path}.coefficient`, size.coefficient, 10, 200, "");
}

/** The run with a size, or as it is. */
export function sized(run: Run, size: SizeChoice | undefined): Run {
  if (size === undefined || run.law === "power") return run;
  const { insideDiameter } = size;
  return run.law === "darcy-weisbach"
    ? { ...run, insideDiameter, roughness: size.roughness ?? run.roughness }
    : { ...run, insideDiameter, coefficient: size.coefficient ?? run.coefficient };
}

export function lossOf(run: Run, flow: number, network: Network): number {
  const q = Math.max(-1000, Math.min(1000, flow)) as VolumeFlow;
  if (run.law === "power") return run.resistance * Math.abs(flow) ** run.exponent * Math.sign(flow);
  const loss =
    run.law === "hazen-williams"
      ? hazenWilliamsLoss({ ...run, flow: q })
      : darcyWeisbachLoss({ ...run, flow: q, viscosity: network.water.kinematicViscosity });
  const fittings = ((run.lossCoefficient ?? 0) * loss.velocity * Math.abs(loss.velocity)) / (2 * STANDARD_GRAVITY);
  return loss.headLoss + fittings;
}

export function ruledOut(
  size: SizeChoice,
  flows: readonly number[],
  greatestVelocity: number,
  staticHead: number,
  elevation: number,
  upperElevation: number,
  perHead: number,
): "velocity" | "pressure rating" | undefined {
  const area = (Math.PI / 4) * size.insideDiameter ** 2;
  if (flows.some((flow) => Math.abs(flow) / area > greatestVelocity)) return "velocity";
  const pressure = (staticHead - Math.min(elevation, upperElevation)) * perHead;
  return pressure > (size.pressureRating ?? Infinity) ? "pressure rating" : undefined;
}

/** What a scenario takes at each junction, and the most pressure an open outlet there asks for. */
export function demands(
  network: Network,
  { outletIndex, outletJunction }: ReturnType<typeof readNetwork>,
  scenario: SizingScenario,
  path: string,
): { readonly taken: Float64Array; readonly asked: Float64Array } {
  requireObject(path, scenario);
  if (!(typeof scenario.name === "string" && scenario.name.length >= 1 && scenario.name.length <= 200)) {
    throw new InputError(`${path}.name`, scenario.name, "a name of 1 to 200 characters");
  }
  requireList(`${path}.open`, scenario.open, 0, network.outlets.length);
  const taken = new Float64Array(network.junctions.length);
  const asked = new Float64Array(network.junctions.length);
  const seen = new Set<number>();
  Array.from(scenario.open).forEach((name, k) => {
    const index = outletIndex.get(name);
    if (index === undefined || seen.has(index)) {
      throw new InputError(`${path}.open[${k}]`, name, "the id of an outlet, each once");
    }
    seen.add(index);
    const outlet = network.outlets[index]!;
    const at = outletJunction[index]!;
    if (outlet.kind === "fixed demand") taken[at]! += outlet.flow;
    asked[at] = Math.max(asked[at]!, outlet.leastPressure ?? 0);
  });
  return { taken, asked };
}

/** The tree from its source outwards: junctions in order, the place of each one's parent, and the run between. */
export function outwards(
  network: Network,
  { runEnds, sourceJunction }: ReturnType<typeof readNetwork>,
): { readonly order: readonly number[]; readonly parent: readonly number[]; readonly runOf: readonly number[] } {
  const { junctions, runs, outlets, sources } = network;
  if (sources.length !== 1) throw new InputError("network.sources", sources, "one source");
  outlets.forEach(({ kind }, i) => {
    if (kind !== "fixed demand") {
      throw new InputError(
        `network.outlets[${i}].kind`,
        kind,
        '"fixed demand": sizes are chosen for the flow an outlet must give',
      );
    }
  });
  const at: number[][] = junctions.map(() => []);
  runs.forEach((run, l) => {
    if (run.valve !== undefined && run.valve.kind !== "check") {
      throw new InputError(`network.runs[${l}].valve`, run.valve, "no valve but check valves in a layout to be sized");
    }
    at[runEnds[2 * l]!]!.push(l);
    at[runEnds[2 * l + 1]!]!.push(l);
  });
  const order = [sourceJunction[0]!];
  const parent = [-1];
  const runOf = [-1];
  const reached = new Set(order);
  for (let i = 0; i < order.length; i++) {
    for (const l of at[order[i]!]!) {
      if (l === runOf[i]) continue;
      const onward = runEnds[2 * l] === order[i];
      const far = onward ? runEnds[2 * l + 1]! : runEnds[2 * l]!;
      if (reached.has(far))
        throw new InputError(`network.runs[${l}]`, runs[l], "a branched layout: this run closes a loop");
      if (!onward && runs[l]!.valve !== undefined) {
        throw new InputError(
          `network.runs[${l}].valve`,
          runs[l]!.valve,
          "a check valve that opens away from the source",
        );
      }
      reached.add(far);
      order.push(far);
      parent.push(i);
      runOf.push(l);
    }
  }
  if (order.length < junctions.length)
    throw new InputError("network.runs", runs, "runs that reach every junction from the source");
  return { order, parent, runOf };
}
