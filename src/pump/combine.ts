/**
 * Pumps together: stages on one shaft, pumps in series, pumps side by side.
 *
 * @module
 */
import { cubicSlope, cubicValue, monotoneCubic, requireList, requireWhole } from "../numeric/index.ts";
import type { FlowLine, PumpCurve } from "./curve.ts";
import { finishCurve } from "./curve.ts";
import { flowOnLine, requireFalling } from "./flow-at-head.ts";
import { requireCurve } from "./read-curve.ts";
import { scaleCurve } from "./scale-curve.ts";

/** Most pumps put together. */
const MOST_PUMPS = 20;

/**
 * The curve of a pump with several equal stages, from the curve of one.
 *
 * @remarks
 * Head and power add from stage to stage at the same flow; efficiency and required NPSH stay those of one stage.
 *
 * @param stage - the curve of one stage, from {@link pumpCurve}
 * @param stages - number of stages, a whole number from 1 to 500
 * @returns the curve of the pump
 * @throws {@link units.InputError} where the curve is not one, or its heads would pass 10 000 m
 *
 * @example
 * ```ts
 * import { pumpCurve, stagedCurve } from "risingmain/pump";
 * import { feet, gpm, inFeet } from "risingmain/units";
 *
 * const stage = pumpCurve({ points: [{ flow: gpm(0), head: feet(33) }, { flow: gpm(16), head: feet(14) }] });
 * inFeet(stagedCurve(stage, 12).shutoffHead); // ≈ 396.0
 * ```
 *
 * @source derived: the same water passes each stage
 */
export function stagedCurve(stage: PumpCurve, stages: number): PumpCurve {
  requireCurve(stage, "stage");
  requireWhole("stages", stages, 1, 500);
  return scaleCurve(stage, { head: stages, power: stages });
}

/**
 * The curve of pumps in series: the same water through each.
 *
 * @remarks
 * Heads add at the same flow, exactly; shaft powers add where every pump has them. The curve ends where the first of
 * them ends. Required NPSH is that of the first pump, the one at the suction. Efficiency is not carried over.
 *
 * @param curves - 1 to 20 curves, the suction's first
 * @returns the curve of the set
 * @throws {@link units.InputError} where one is not a curve, or the heads would pass 10 000 m
 *
 * @example
 * ```ts
 * import { curvesInSeries, pumpCurve } from "risingmain/pump";
 * import { feet, gpm, inFeet } from "risingmain/units";
 *
 * const curve = pumpCurve({ points: [{ flow: gpm(0), head: feet(100) }, { flow: gpm(340), head: feet(20) }] });
 * inFeet(curvesInSeries([curve, curve]).shutoffHead); // ≈ 200.0
 * ```
 *
 * @source derived: the same water passes each pump
 */
export function curvesInSeries(curves: readonly PumpCurve[]): PumpCurve {
  requireList("curves", curves, 1, MOST_PUMPS);
  for (let i = 0; i < curves.length; i++) requireCurve(curves[i] as PumpCurve, `curves[${i}]`);
  const powers = curves.map(({ inputPower }) => inputPower).filter((line) => line !== undefined);
  const [first] = curves as readonly [PumpCurve, ...PumpCurve[]];
  const set = finishCurve({
    // Every curve begins at no flow, so they always have a part in common.
    head: sum(curves.map(({ head }) => head)) as FlowLine,
    inputPower: powers.length === curves.length ? sum(powers) : undefined,
    npshRequired: first.npshRequired,
    shutoffBasis: curves.every(({ shutoffBasis }) => shutoffBasis === "given") ? "given" : "extrapolated",
  });
  requireCurve(set, "curves");
  return set;
}

/** The sum of lines where all are known, or nothing: exact, because a sum of cubics between the same ends is one. */
function sum(lines: readonly FlowLine[]): FlowLine | undefined {
  const begin = Math.max(...lines.map(({ x }) => x[0] as number));
  const end = Math.min(...lines.map(({ x }) => x.at(-1) as number));
  const flows: number[] = [];
  // The same flow from two sheets may differ in its last bit: it is one point.
  for (const flow of lines.flatMap(({ x }) => x).sort((a, b) => a - b)) {
    const before = flows.at(-1);
    if (flow >= begin && flow <= end && (before === undefined || flow - before > SAME_FLOW * end)) flows.push(flow);
  }
  if (flows.length < 2) return undefined;
  const total = (read: (line: FlowLine, flow: number) => number): readonly number[] =>
    flows.map((flow) => lines.reduce((so, line) => so + read(line, flow), 0));
  return { x: flows, y: total(cubicValue), slope: total(cubicSlope) };
}

/** Flows nearer than this share of the greatest are the same but for rounding. */
const SAME_FLOW = 1e-12;

/** Points between two of a curve's own at which a sum of flows is taken. */
const STEPS_BETWEEN = 16;

/**
 * The curve of pumps side by side, each with its own check valve, into one pipe.
 *
 * @remarks
 * Flows add at the same head. Above its own shutoff head a pump adds nothing and its check valve is shut, so the set
 * begins as its strongest pump alone. Equal pumps are exact; unequal ones are taken at 16 steps between their points
 * and close about each shutoff head, which is good to a thousandth of the set's greatest flow.
 * The curve ends at the head where the first of them reaches its last point. Into a pipe with friction two equal
 * pumps deliver much less than twice the flow of one.
 *
 * @param curves - 1 to 20 falling curves
 * @returns the curve of the set; with power and efficiency only where the pumps are equal
 * @throws {@link units.InputError} where one is not a falling curve
 *
 * @example
 * ```ts
 * import { curvesInParallel, pumpCurve, pumpHeadAt } from "risingmain/pump";
 * import { feet, gpm, inFeet } from "risingmain/units";
 *
 * const curve = pumpCurve({ points: [{ flow: gpm(0), head: feet(100) }, { flow: gpm(300), head: feet(40) }] });
 * inFeet(pumpHeadAt(curvesInParallel([curve, curve]), gpm(600))); // ≈ 40.0
 * ```
 *
 * @source derived: the pumps share inlet and outlet
 */
export function curvesInParallel(curves: readonly PumpCurve[]): PumpCurve {
  requireList("curves", curves, 1, MOST_PUMPS);
  for (let i = 0; i < curves.length; i++) requireFalling(curves[i] as PumpCurve, `curves[${i}]`);
  const [first, ...others] = curves as readonly [PumpCurve, ...PumpCurve[]];
  const lines = linesOf(first);
  if (others.every((other) => linesOf(other) === lines)) {
    return scaleCurve(first, { flow: curves.length, power: curves.length });
  }
  const lowest = Math.max(...curves.map(({ head }) => head.y.at(-1) as number));
  const highest = Math.max(...curves.map(({ shutoffHead }) => shutoffHead));
  const heads = curves.flatMap(({ head, shutoffHead }) => [
    ...steps(head).map((flow) => cubicValue(head, flow)),
    // Where a weaker pump joins, the set's slope jumps: a point close on either side keeps the jump from spreading.
    shutoffHead * (1 + ABOVE),
    cubicValue(head, BELOW * (head.x.at(-1) as number)),
  ]);
  const points = heads
    .filter((head) => head >= lowest && head <= highest)
    .sort((a, b) => b - a)
    .map((head) => ({ head, flow: curves.reduce((so, curve) => so + flowAbove(curve, head), 0) }));
  const end = points.at(-1)?.flow as number;
  // Points nearer than rounding would make slopes of noise.
  const kept: { head: number; flow: number }[] = [];
  for (const point of points) {
    const before = kept.at(-1);
    if (before === undefined || point.flow - before.flow > CLOSEST * end) kept.push(point);
  }
  const set = finishCurve({
    head: monotoneCubic(
      kept.map(({ flow }) => flow),
      kept.map(({ head }) => head),
    ),
    shutoffBasis: curves.every(({ shutoffBasis }) => shutoffBasis === "given") ? "given" : "extrapolated",
  });
  requireCurve(set, "curves");
  return set;
}

/** The neighbour above a shutoff head, as a share of it. */
const ABOVE = 3e-5;

/** The neighbour below, as a share of the pump's last flow: where a curve is level at no flow, little head is much flow. */
const BELOW = 2e-4;

/** Flows closer than this share of the largest are one. */
const CLOSEST = 1e-6;

/** The flows of a line's points and of equal steps between them. */
function steps({ x }: FlowLine): readonly number[] {
  return x.flatMap((flow, i) => {
    const next = x[i + 1];
    if (next === undefined) return [flow];
    return Array.from({ length: STEPS_BETWEEN }, (_, k) => flow + ((next - flow) * k) / STEPS_BETWEEN);
  });
}

/** All that a pump's lines hold, as one text: equal for equal pumps. */
function linesOf({ head, efficiency, inputPower, npshRequired }: PumpCurve): string {
  const lines = [head, efficiency, inputPower, npshRequired];
  return JSON.stringify(lines.map((line) => line && [line.x, line.y, line.slope]));
}

/** Flow of one pump at the common head: none above its shutoff head, where its check valve is shut. */
function flowAbove(curve: PumpCurve, head: number): number {
  return head < curve.shutoffHead ? flowOnLine(curve.head, head) : 0;
}
