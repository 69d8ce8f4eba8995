/**
 * Heads, flows and cavities at the nodes of a simulated line, and one time step of the method of characteristics.
 *
 * @module
 */
import { type EndNode, stepEnd } from "./end-node.ts";
import type { LineGrid } from "./line-grid.ts";
import type { SteadyStart } from "./steady-start.ts";

/** The nodes at one time. */
interface Nodes {
  /** Head, m. */
  readonly head: Float64Array;
  /** Flow arriving from the side of the start, m³/s; differs from `leaving` where a cavity stands. */
  readonly arriving: Float64Array;
  /** Flow leaving towards the end, m³/s. */
  readonly leaving: Float64Array;
}

/** The line as it is carried from step to step. */
export interface LineState {
  /** The nodes now. */
  now: Nodes;
  /** Room for the nodes after the step. */
  after: Nodes;
  /** Head at which each node boils, m. */
  readonly boilingHead: Float64Array;
  /** Volume of the cavity at each node, m³. */
  readonly cavity: Float64Array;
  /** Highest head so far at each node, m. */
  readonly highest: Float64Array;
  /** Lowest head so far at each node, m. */
  readonly lowest: Float64Array;
  /** The first cavity: node and time, s. */
  firstCavity: { readonly node: number; readonly time: number } | undefined;
  /** The largest cavity so far, m³. */
  largestCavity: number;
  /** The largest share of its reach that a cavity took. */
  largestShare: number;
}

/** The line in its steady state. */
export function settledLine({ heads, flow }: SteadyStart, boilingHead: Float64Array): LineState {
  const nodes = (): Nodes => ({
    head: heads.slice(),
    arriving: new Float64Array(heads.length).fill(flow),
    leaving: new Float64Array(heads.length).fill(flow),
  });
  return {
    now: nodes(),
    after: nodes(),
    boilingHead,
    cavity: new Float64Array(heads.length),
    highest: heads.slice(),
    lowest: heads.slice(),
    firstCavity: undefined,
    largestCavity: 0,
    largestShare: 0,
  };
}

/** One step: the characteristics that meet inside the line, those that meet its ends, then the record. */
export function stepLine(line: LineState, grid: LineGrid, ends: readonly [EndNode, EndNode], time: number): void {
  stepInside(line, grid);
  stepEnds(line, grid, ends, time);
  [line.now, line.after] = [line.after, line.now];
  record(line, grid, time);
}

function stepInside({ now, after, cavity, boilingHead }: LineState, grid: LineGrid): void {
  const { impedance, resistance, timeStep } = grid;
  const last = impedance.length;
  // The index is inside every array; `as number` says so to the compiler at no cost in this, the hot loop.
  for (let i = 1; i < last; i++) {
    const QA = now.leaving[i - 1] as number;
    const QB = now.arriving[i + 1] as number;
    const CP = (now.head[i - 1] as number) + (impedance[i - 1] as number) * QA;
    const CM = (now.head[i + 1] as number) - (impedance[i] as number) * QB;
    const BP = (impedance[i - 1] as number) + (resistance[i - 1] as number) * Math.abs(QA);
    const BM = (impedance[i] as number) + (resistance[i] as number) * Math.abs(QB);
    const boiling = boilingHead[i] as number;
    const head = (CP * BM + CM * BP) / (BP + BM);

    if (head < boiling || (cavity[i] as number) > 0) {
      const arriving = (CP - boiling) / BP;
      const leaving = (boiling - CM) / BM;
      const grown = (cavity[i] as number) + timeStep * (leaving - arriving);
      cavity[i] = Math.max(0, grown);
      if (grown > 0) {
        after.head[i] = boiling;
        after.arriving[i] = arriving;
        after.leaving[i] = leaving;
        continue;
      }
    }
    const flow = (CP - head) / BP;
    after.head[i] = head;
    after.arriving[i] = flow;
    after.leaving[i] = flow;
  }
}

function stepEnds({ now, after, cavity }: LineState, grid: LineGrid, ends: readonly [EndNode, EndNode], time: number) {
  const { impedance, resistance, timeStep } = grid;
  const [start, end] = ends;
  const last = impedance.length;

  const QB = now.arriving[1] as number;
  const CM = (now.head[1] as number) - (impedance[0] as number) * QB;
  const BM = (impedance[0] as number) + (resistance[0] as number) * Math.abs(QB);
  const first = stepEnd(start, time, timeStep, CM, BM);
  after.head[0] = first.head;
  after.arriving[0] = first.into;
  after.leaving[0] = first.into;
  cavity[0] = start.cavity;

  const QA = now.leaving[last - 1] as number;
  const CP = (now.head[last - 1] as number) + (impedance[last - 1] as number) * QA;
  const BP = (impedance[last - 1] as number) + (resistance[last - 1] as number) * Math.abs(QA);
  const final = stepEnd(end, time, timeStep, CP, BP);
  after.head[last] = final.head;
  after.arriving[last] = 0 - final.into;
  after.leaving[last] = 0 - final.into;
  cavity[last] = end.cavity;
}

function record(line: LineState, { water }: LineGrid, time: number): void {
  const { now, highest, lowest, cavity } = line;
  for (let i = 0; i < highest.length; i++) {
    const head = now.head[i] as number;
    if (head > (highest[i] as number)) highest[i] = head;
    if (head < (lowest[i] as number)) lowest[i] = head;
    const hollow = cavity[i] as number;
    if (hollow > 0) {
      line.firstCavity ??= { node: i, time };
      line.largestCavity = Math.max(line.largestCavity, hollow);
      line.largestShare = Math.max(line.largestShare, hollow / (water[Math.min(i, water.length - 1)] as number));
    }
  }
}
