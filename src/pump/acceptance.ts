/**
 * What a pump may really do: acceptance tolerances carried through to a band of operating points.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { InputError, type Power, type Ratio } from "../units/index.ts";
import { type AcceptanceGrade, acceptanceGrades } from "./acceptance-grades.ts";
import type { PumpCurve } from "./curve.ts";
import { type OperatingPoint, type OperatingPointInput, operatingPoint } from "./operating-point.ts";
import { requireCurve } from "./read-curve.ts";
import { scaleCurve } from "./scale-curve.ts";

/** A grade and, for the small-pump rule, the size of the pump. */
export interface AcceptanceInput {
  /** "1U", "1E", "1B", "2U", "2B", "3B", or "small pump" for shaft powers of 10 kW and less. */
  readonly grade: AcceptanceGrade;
  /** Shaft power at the guaranteed point. 0 to 1e8 W; needed for the efficiency of a small pump, at most 10 kW there. */
  readonly shaftPower?: Power;
}

/** How far flow and head may lie from the guaranteed point. */
export interface HeadFlowTolerance {
  /** Lowest deviation of flow as a share of it, 0 or less. */
  readonly flowLow: Ratio;
  /** Highest deviation of flow. */
  readonly flowHigh: Ratio;
  /** Lowest deviation of head, 0 or less. */
  readonly headLow: Ratio;
  /** Highest deviation of head. */
  readonly headHigh: Ratio;
}

/** What a grade allows, with where the figures come from. */
export interface AcceptanceTolerance extends HeadFlowTolerance {
  /** Lowest deviation of efficiency, a share of the guaranteed efficiency; null for a small pump of unknown power. */
  readonly efficiencyLow: Ratio | null;
  /** Highest deviation of shaft power; null where the grade has none. */
  readonly powerHigh: Ratio | null;
  /** The standard. */
  readonly method: "iso-9906";
  /** How the figures came here: a transcription that was read, or memory. Neither is the standard itself. */
  readonly provenance: "read in a transcription" | "memory";
}

/** Powers up to this are small, W. */
const SMALL_PUMP = 10_000;
/** Below this the rule for small pumps ends; its value at 1 kW is kept, W. */
const SMALLEST_PUMP = 1000;

/**
 * How far a delivered pump may lie from its guaranteed point and still be accepted.
 *
 * @remarks
 * Shares of the guaranteed flow, head, efficiency and power. For shaft powers up to 10 kW, nearly every farm pump,
 * flow ±10 %, head ±8 %, efficiency −[10 (1 − P/10) + 7] % with P in kW, from 1 kW up (recalled). An untested stock
 * pump should not be assumed better than 3B. Figures were not read in the standard: check them there for a contract.
 *
 * @param input - the grade; the shaft power where a small pump's efficiency is wanted
 * @returns the tolerances, as ratios, and how the figures came here
 * @throws {@link units.InputError} for an unknown grade, or a small pump above 10 kW
 *
 * @example
 * ```ts
 * import { acceptanceTolerance } from "risingmain/pump";
 * import { inPercent, kilowatts } from "risingmain/units";
 *
 * inPercent(acceptanceTolerance({ grade: "2B" }).headLow); // ≈ -5.00
 * const small = acceptanceTolerance({ grade: "small pump", shaftPower: kilowatts(1.5) });
 * small.provenance; // => "memory"
 * ```
 *
 * @source iso-9906, acceptance-grade table, read in a transcription; the small-pump rule from memory
 */
export function acceptanceTolerance(input: AcceptanceInput): AcceptanceTolerance {
  requireObject("input", input);
  const { grade, shaftPower } = input;
  requireOneOf("grade", grade, Object.keys(acceptanceGrades));
  if (shaftPower !== undefined) requireWithin("shaftPower", shaftPower, 0, 1e8, "W");
  const row = acceptanceGrades[grade];
  const isSmall = grade === "small pump";
  if (isSmall && (shaftPower ?? 0) > SMALL_PUMP) {
    throw new InputError("shaftPower", shaftPower, "at most 10 000 W for the small-pump rule");
  }
  const smallEfficiency =
    shaftPower === undefined ? null : -(0.1 * (1 - Math.max(shaftPower, SMALLEST_PUMP) / SMALL_PUMP) + 0.07);
  return {
    flowLow: row.flowLow as Ratio,
    flowHigh: row.flowHigh as Ratio,
    headLow: row.headLow as Ratio,
    headHigh: row.headHigh as Ratio,
    efficiencyLow: (isSmall ? smallEfficiency : row.efficiencyLow) as Ratio | null,
    powerHigh: row.powerHigh as Ratio | null,
    method: "iso-9906",
    provenance: isSmall ? "memory" : "read in a transcription",
  };
}

/** The weakest and the strongest pump that a tolerance accepts. */
export interface AcceptanceBand {
  /** The guaranteed curve less its flow, and less its head: below both a pump is rejected. */
  readonly weakest: readonly [lessFlow: PumpCurve, lessHead: PumpCurve];
  /** The guaranteed curve with more flow, and with more head: above both a pump is rejected. */
  readonly strongest: readonly [moreFlow: PumpCurve, moreHead: PumpCurve];
}

/**
 * The curves between which an accepted pump lies.
 *
 * @remarks
 * A pump is accepted when its measured curve touches the cross of flow and head tolerance at the guaranteed point, so
 * the weakest accepted pump has either all its flows short or all its heads short by their tolerance. Power and
 * efficiency lines are left as they were.
 *
 * @param curve - the guaranteed curve, from {@link pumpCurve}
 * @param tolerance - deviations of flow and head, from {@link acceptanceTolerance} or a contract; low −0.5 to 0, high 0 to 0.5
 * @returns two curves below and two above
 * @throws {@link units.InputError} where the curve is not one or a deviation is out of its range
 *
 * @example
 * ```ts
 * import { acceptanceBand, acceptanceTolerance, pumpCurve } from "risingmain/pump";
 * import { feet, gpm, inFeet } from "risingmain/units";
 *
 * const curve = pumpCurve({ points: [{ flow: gpm(0), head: feet(400) }, { flow: gpm(20), head: feet(100) }] });
 * const band = acceptanceBand(curve, acceptanceTolerance({ grade: "3B" }));
 * inFeet(band.weakest[1].shutoffHead); // ≈ 372.0
 * ```
 *
 * @source iso-9906: acceptance where the curve touches the tolerance cross (from memory)
 */
export function acceptanceBand(curve: PumpCurve, tolerance: HeadFlowTolerance): AcceptanceBand {
  requireCurve(curve);
  requireObject("tolerance", tolerance);
  const { flowLow, flowHigh, headLow, headHigh } = tolerance;
  requireWithin("tolerance.flowLow", flowLow, -0.5, 0, "as a ratio: -0.05 for -5 %");
  requireWithin("tolerance.flowHigh", flowHigh, 0, 0.5, "as a ratio: 0.05 for 5 %");
  requireWithin("tolerance.headLow", headLow, -0.5, 0, "as a ratio: -0.05 for -5 %");
  requireWithin("tolerance.headHigh", headHigh, 0, 0.5, "as a ratio: 0.05 for 5 %");
  return {
    weakest: [scaleCurve(curve, { flow: 1 + flowLow }), scaleCurve(curve, { head: 1 + headLow })],
    strongest: [scaleCurve(curve, { flow: 1 + flowHigh }), scaleCurve(curve, { head: 1 + headHigh })],
  };
}

/** A pump on a system, and its tolerance. */
export interface OperatingBandInput extends OperatingPointInput {
  /** Deviations of flow and head, from {@link acceptanceTolerance} or a contract. Low −0.5 to 0, high 0 to 0.5. */
  readonly tolerance: HeadFlowTolerance;
}

/** Where an accepted pump runs: from its least flow to its greatest. */
export interface OperatingBand {
  /** The weakest accepted pump's operating point. */
  readonly low: OperatingPoint;
  /** The guaranteed curve's operating point. */
  readonly nominal: OperatingPoint;
  /** The strongest accepted pump's operating point. */
  readonly high: OperatingPoint;
}

/**
 * The band of operating points of any pump a tolerance accepts, on one system.
 *
 * @remarks
 * Operating points of the four curves of {@link acceptanceBand}; the least and the greatest flow bound the band. On a
 * flat system curve head tolerance decides, and a few per cent of head move the flow by many.
 * Near the end of the curve the one with less flow ends first: where it runs out, the low edge is the other's.
 *
 * @param input - the guaranteed curve, the system and the tolerance
 * @returns the operating points at both edges and in the middle; an edge may be "cannot lift" or "runs out"
 * @throws {@link units.InputError} as {@link operatingPoint} and {@link acceptanceBand}
 *
 * @example
 * ```ts
 * import { acceptanceTolerance, operatingBand, pumpCurve } from "risingmain/pump";
 * import { feet, gpm, inGpm } from "risingmain/units";
 *
 * const curve = pumpCurve({ points: [{ flow: gpm(0), head: feet(400) }, { flow: gpm(20), head: feet(100) }] });
 * const { low, nominal, high } = operatingBand({
 *   curve, systemHead: () => feet(250), tolerance: acceptanceTolerance({ grade: "3B" }),
 * });
 * low.state === "running" ? inGpm(low.flow) : 0; // ≈ 8.75
 * nominal.state === "running" ? inGpm(nominal.flow) : 0; // ≈ 10.00
 * high.state === "running" ? inGpm(high.flow) : 0; // ≈ 11.09
 * ```
 *
 * @source iso-9906
 */
export function operatingBand(input: OperatingBandInput): OperatingBand {
  requireObject("input", input);
  const nominal = operatingPoint(input);
  const { weakest, strongest } = acceptanceBand(input.curve, input.tolerance);
  const among = (curves: readonly PumpCurve[]): readonly OperatingPoint[] =>
    [nominal, ...curves.map((curve) => operatingPoint({ curve, systemHead: input.systemHead }))].sort(byFlow);
  return { low: among(weakest)[0] as OperatingPoint, nominal, high: among(strongest).at(-1) as OperatingPoint };
}

/** From least flow to greatest: those that cannot lift first, the shortest of head foremost; those past their end last. */
function byFlow(a: OperatingPoint, b: OperatingPoint): number {
  const [rankA, sizeA] = rank(a);
  const [rankB, sizeB] = rank(b);
  return rankA - rankB || sizeA - sizeB;
}

function rank(point: OperatingPoint): readonly [number, number] {
  if (point.state === "cannot lift") return [0, -point.short];
  return point.state === "running" ? [1, point.flow] : [2, point.moreThan];
}
