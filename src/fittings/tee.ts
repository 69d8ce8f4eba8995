/**
 * Tees where the flow divides or joins: losses of the run and of the branch, by the share of flow that takes the branch.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { InputError, type Length, type VolumeFlow } from "../units/index.ts";

/** Angle of a branch to the run, degrees. */
export type BranchAngle = 30 | 45 | 60 | 90;

/** A tee or wye and the flows in it. */
export interface TeeInput {
  /** "dividing": the combined flow splits into run and branch. "joining": run and branch meet. */
  readonly flowPattern: "dividing" | "joining";
  /** Flow in the leg that carries all of it. 1e-12 to 1000 m³/s. */
  readonly combinedFlow: VolumeFlow;
  /** Flow in the branch. 0 up to the combined flow, m³/s. */
  readonly branchFlow: VolumeFlow;
  /** Inside diameter of the run. 0.0001 to 100 m. */
  readonly runDiameter: Length;
  /** Inside diameter of the branch. A tenth of that of the run up to it, m. */
  readonly branchDiameter: Length;
  /** Angle of the branch to the run, in degrees: 90 for a tee. */
  readonly angle: BranchAngle;
}

/** Losses of a tee. */
export interface TeeCoefficients {
  /** Coefficient between the combined leg and the branch, on the velocity head of the combined leg; negative where the joining run drags the branch along. */
  readonly branch: number;
  /** Coefficient between the combined leg and the run, on the same velocity head; negative where the run regains head. */
  readonly run: number;
  /** False where the branch is so fast (over twice the combined leg) that the source gives no constant. */
  readonly insideRange: boolean;
}

/** E of the branch and F of the branch for joining flow, by the angle in degrees; `crane-410`. */
const JOINING: Readonly<Record<BranchAngle, readonly [E: number, F: number]>> = {
  30: [2, 1.74],
  45: [2, 1.41],
  60: [2, 1],
  90: [2, 0],
};

/**
 * Loss coefficients of a tee or wye whose flow divides or joins.
 *
 * @remarks
 * With q = Q_b / Q_c the share of flow in the branch, β² the area of branch over run and v = q / β² the branch's velocity over
 * the combined one:
 * dividing, branch K = G [1 + H v² − J v cos α], run K = M q²;
 * joining, branch K = C [1 + D v² − E (1 − q)² − F v q] with D 1, run K = 1 − (1 − q)² − F v q, at 90° 1.55 q − q².
 * The constants go by β², q and the angle α. A coefficient below 0 is no mistake: the slower stream is dragged along by the
 * faster. Some 10 to 20 % uncertain; the constants step where the source changes rule. For a 90° branch wider than 2/3 of the
 * run, K = 1 + 0.3 v²; one reading of the handbook multiplies this by 1 + 0.3 q² again, at most 30 % more.
 *
 * @param input - the flows, bores and angle; each field says its unit and the values it takes
 * @returns the coefficients of branch and run on the velocity head of the combined leg
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example 300 gpm in the run joined by 100 gpm from a branch of the same bore
 * ```ts
 * import { teeCoefficients } from "risingmain/fittings";
 * import { gpm, inches } from "risingmain/units";
 *
 * const tee = teeCoefficients({
 *   flowPattern: "joining", combinedFlow: gpm(400), branchFlow: gpm(100),
 *   runDiameter: inches(4.026), branchDiameter: inches(4.026), angle: 90,
 * });
 * tee.run; // ≈ 0.325
 * tee.branch; // ≈ -0.042
 * ```
 *
 * @source crane-410, tees and wyes
 * @source idelchik-2007: the 90° branch of the run's own size, recalled
 */
export function teeCoefficients(input: TeeInput): TeeCoefficients {
  requireObject("input", input);
  const { flowPattern, combinedFlow, branchFlow, runDiameter, branchDiameter, angle } = input;
  requireOneOf("flowPattern", flowPattern, ["dividing", "joining"]);
  requireWithin("combinedFlow", combinedFlow, 1e-12, 1e3, "m³/s");
  requireWithin("branchFlow", branchFlow, 0, combinedFlow, "m³/s (the combined flow)");
  requireWithin("runDiameter", runDiameter, 1e-4, 100, "m");
  requireWithin("branchDiameter", branchDiameter, runDiameter / 10, runDiameter, "m (a tenth of the run's up to it)");
  if (!(angle === 30 || angle === 45 || angle === 60 || angle === 90)) {
    throw new InputError("angle", angle, "30, 45, 60 or 90 degrees");
  }
  const q = branchFlow / combinedFlow;
  const area = (branchDiameter / runDiameter) ** 2;
  return flowPattern === "dividing" ? dividing(q, area, angle) : joining(q, area, angle);
}

function dividing(q: number, area: number, angle: BranchAngle): TeeCoefficients {
  const v = q / area;
  const run = runDividing(q, area);
  if (angle === 90) {
    // A narrow branch keeps its whole velocity head as loss (H = 1); one of the run's size regains most of it (H = 0.3).
    const H = Math.sqrt(area) <= 2 / 3 ? 1 : 0.3;
    return { branch: 1 + H * v * v, run, insideRange: v <= 2 };
  }
  const G = area <= 0.35 ? (q <= 0.4 ? 1.1 - 0.7 * q : 0.85) : q <= 0.6 ? 1 - 0.6 * q : 0.6;
  return { branch: G * (1 + v * v - 2 * v * Math.cos((angle * Math.PI) / 180)), run, insideRange: true };
}

function runDividing(q: number, area: number): number {
  const M = area <= 0.4 ? 0.4 : q <= 0.5 ? 2 * (2 * q - 1) : 0.3 * (2 * q - 1);
  return M * q * q;
}

function joining(q: number, area: number, angle: BranchAngle): TeeCoefficients {
  const v = q / area;
  const [E, F] = JOINING[angle];
  const C = area <= 0.35 ? 1 : q <= 0.4 ? 0.9 * (1 - q) : 0.55;
  const branch = C * (1 + v * v - E * (1 - q) ** 2 - F * v * q);
  const run = angle === 90 ? 1.55 * q - q * q : 1 - (1 - q) ** 2 - F * v * q;
  return { branch, run, insideRange: true };
}
