/**
 * Checks a layout and numbers its parts for the solver. Private to the network solver.
 *
 * @module
 */
import { requireList, requireObject, requireOneOf, requirePositive, requireWithin } from "../numeric/index.ts";
import { InputError } from "../units/index.ts";
import type { Junction, Network, NetworkSource, Outlet, Run } from "./network-parts.ts";
import { OUTLET_COEFFICIENTS } from "./outlet-coefficient.ts";

/** Most junctions, runs and outlets. */
const MOST_PARTS = 1_000_000;
const MOST_SOURCES = 1000;
const LONGEST_NAME = 200;

/** Where the parts stand: indices into the lists of the network. */
export interface NumberedNetwork {
  /** Index of each junction by its name. */
  readonly junctionIndex: ReadonlyMap<string, number>;
  /** Index of each outlet by its name. */
  readonly outletIndex: ReadonlyMap<string, number>;
  /** Index of each run by its name. */
  readonly runIndex: ReadonlyMap<string, number>;
  /** Junctions at both ends of each run, one after the other. */
  readonly runEnds: Int32Array;
  /** Junction of each outlet. */
  readonly outletJunction: Int32Array;
  /** Junction of each source. */
  readonly sourceJunction: Int32Array;
}

/** Refuses a layout that cannot be solved, naming the first part at fault. */
export function readNetwork(network: Network): NumberedNetwork {
  requireObject("network", network);
  const { water, junctions, runs, outlets, sources } = network;
  requireObject("water", water);
  requireWithin("water.density", water.density, 100, 1e4, "kg/m³");
  requireWithin("water.kinematicViscosity", water.kinematicViscosity, 1e-8, 1e-2, "m²/s");
  requireList("junctions", junctions, 1, MOST_PARTS);
  requireList("runs", runs, 0, MOST_PARTS);
  requireList("outlets", outlets, 0, MOST_PARTS);
  requireList("sources", sources, 1, MOST_SOURCES);
  const junctionIndex = named("junctions", junctions, requireJunction);
  const runIndex = named("runs", runs, requireRun);
  const outletIndex = named("outlets", outlets, requireOutlet);
  named("sources", sources, requireSource);

  const find = (path: string, id: string): number => {
    const index = junctionIndex.get(id);
    if (index === undefined) throw new InputError(path, id, "the id of a junction");
    return index;
  };
  const runEnds = new Int32Array(runs.length * 2);
  runs.forEach((run, i) => {
    runEnds[2 * i] = find(`runs[${i}].from`, run.from);
    runEnds[2 * i + 1] = find(`runs[${i}].to`, run.to);
    if (run.from === run.to) throw new InputError(`runs[${i}].to`, run.to, "another junction than the run leaves");
  });
  const outletJunction = Int32Array.from(outlets, (outlet, i) => find(`outlets[${i}].junction`, outlet.junction));
  const sourceJunction = Int32Array.from(sources, (source, i) => find(`sources[${i}].junction`, source.junction));
  requireSourcesApart(sources, sourceJunction);
  return { junctionIndex, outletIndex, runIndex, runEnds, outletJunction, sourceJunction };
}

function named<T extends { readonly id: string }>(
  list: string,
  parts: readonly T[],
  check: (path: string, part: T) => void,
): Map<string, number> {
  const index = new Map<string, number>();
  for (let i = 0; i < parts.length; i++) {
    const part = parts[i] as T;
    const path = `${list}[${i}]`;
    requireObject(path, part);
    if (!(typeof part.id === "string" && part.id.length >= 1 && part.id.length <= LONGEST_NAME)) {
      throw new InputError(`${path}.id`, part.id, `a name of 1 to ${LONGEST_NAME} characters`);
    }
    if (index.has(part.id)) throw new InputError(`${path}.id`, part.id, `a name that no other of the ${list} has`);
    index.set(part.id, i);
    check(path, part);
  }
  return index;
}

function requireJunction(path: string, junction: Junction): void {
  requireWithin(`${path}.elevation`, junction.elevation, -1e4, 1e4, "m");
}

function requireRun(path: string, run: Run): void {
  requireOneOf(`${path}.law`, run.law, ["darcy-weisbach", "hazen-williams", "power"]);
  if (run.valve !== undefined) {
    requireObject(`${path}.valve`, run.valve);
    requireOneOf(`${path}.valve.kind`, run.valve.kind, ["check", "reducing", "shut"]);
    if (run.valve.kind === "reducing") {
      requireWithin(`${path}.valve.setPressure`, run.valve.setPressure, 0, 1e8, "Pa gauge");
    }
  }
  if (run.law === "power") {
    requireWithin(`${path}.resistance`, run.resistance, 1e-6, 1e18, "m at 1 m³/s");
    requireWithin(`${path}.exponent`, run.exponent, 1, 3, "");
    return;
  }
  requireWithin(`${path}.insideDiameter`, run.insideDiameter, 1e-3, 20, "m");
  requireWithin(`${path}.length`, run.length, 1e-3, 1e6, "m");
  if (run.lossCoefficient !== undefined) requireWithin(`${path}.lossCoefficient`, run.lossCoefficient, 0, 1e6, "");
  if (run.law === "hazen-williams") requireWithin(`${path}.coefficient`, run.coefficient, 10, 200, "");
  else requireWithin(`${path}.roughness`, run.roughness, 0, run.insideDiameter / 2, "m (half the inside diameter)");
}

function requireOutlet(path: string, outlet: Outlet): void {
  requireOneOf(`${path}.kind`, outlet.kind, ["fixed demand", "pressure-dependent"]);
  if (outlet.leastPressure !== undefined) {
    requireWithin(`${path}.leastPressure`, outlet.leastPressure, 0, 1e8, "Pa gauge");
  }
  if (outlet.kind === "fixed demand") requireWithin(`${path}.flow`, outlet.flow, -1e3, 1e3, "m³/s");
  else {
    const [low, high] = OUTLET_COEFFICIENTS;
    requireWithin(`${path}.coefficient`, outlet.coefficient, low, high, "m^2.5/s");
    if (outlet.height !== undefined) requireWithin(`${path}.height`, outlet.height, -1000, 1000, "m");
  }
}

function requireSource(path: string, source: NetworkSource): void {
  requireOneOf(`${path}.kind`, source.kind, ["fixed head", "curve"]);
  if (source.kind === "fixed head") requireWithin(`${path}.head`, source.head, -1e4, 2e4, "m");
  else {
    if (typeof source.headAtFlow !== "function") {
      throw new InputError(`${path}.headAtFlow`, source.headAtFlow, "a function of the flow that gives a head");
    }
    requirePositive(`${path}.largestFlow`, source.largestFlow, 1000, "m³/s");
    if (source.largestFlow < 1e-9)
      throw new InputError(`${path}.largestFlow`, source.largestFlow, "at least 1e-9 m³/s");
  }
}

/** A held head leaves nothing for a second source at the same junction to decide. */
function requireSourcesApart(sources: readonly NetworkSource[], junction: Int32Array): void {
  const held = new Set<number>();
  const curves = new Set<number>();
  sources.forEach((source, i) => {
    const at = junction[i] as number;
    if (held.has(at) || (source.kind === "fixed head" && curves.has(at))) {
      throw new InputError(`sources[${i}].junction`, source.junction, "a junction whose head no other source holds");
    }
    (source.kind === "fixed head" ? held : curves).add(at);
  });
}
