/**
 * A pump curve by least squares through measured points, which scatter.
 *
 * @module
 */
import { type CubicLine, leastSquares, requireList, requireObject, requireWithin } from "../numeric/index.ts";
import { InputError, type Length, type VolumeFlow } from "../units/index.ts";
import { finishCurve, type PumpCurve } from "./curve.ts";
import { requireCurve } from "./read-curve.ts";

/** One measured point. */
export interface MeasuredPoint {
  /** Flow. 0 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Head at it. 0 to 10 000 m. */
  readonly head: Length;
}

/** Measured points of one pump at one speed. */
export interface FitCurveInput {
  /** 3 to 10 000 points, repeats allowed, at three or more different flows. */
  readonly points: readonly MeasuredPoint[];
  /**
   * "level at shutoff": H = a + c Q², which falls from no flow on; "quadratic": H = a + b Q + c Q², which may rise at
   * first. "level at shutoff" where left out.
   */
  readonly form?: "level at shutoff" | "quadratic";
}

/** A fitted curve, and how well it fits. */
export interface FittedCurve {
  /** The curve, from no flow to the greatest measured. */
  readonly curve: PumpCurve;
  /** a, m. */
  readonly constant: number;
  /** b, m per m³/s; 0 in the form without it. */
  readonly linear: number;
  /** c, m per (m³/s)². */
  readonly quadratic: number;
  /** Standard errors of a, b and c in their units (0 for a b that was not fitted); null with no more points than unknowns. */
  readonly standardErrors: readonly [number, number, number] | null;
  /** Measured head less fitted, in the order given, m. */
  readonly residuals: readonly Length[];
  /** Standard deviation of the residuals, m; null with no more points than unknowns. */
  readonly deviation: Length | null;
  /** The largest residual, without its sign, m. */
  readonly largestResidual: Length;
}

/**
 * The parabola closest to measured points of head against flow.
 *
 * @remarks
 * Least squares of the heads, all points weighted alike and flows taken as exact. A parabola suits radial impellers;
 * where the residuals change sign in long runs it does not, and {@link pumpCurve} through smoothed points is better.
 *
 * @param input - the points and the form
 * @returns the curve, its coefficients with standard errors, and the residuals
 * @throws {@link units.InputError} where a point cannot be used, the flows are too few or too close, or the fitted
 * heads leave 0 to 10 000 m
 *
 * @example
 * ```ts
 * import { fitPumpCurve } from "risingmain/pump";
 * import { cubicMetresPerHour, metres } from "risingmain/units";
 *
 * const fitted = fitPumpCurve({
 *   points: [
 *     { flow: cubicMetresPerHour(0), head: metres(100.2) },
 *     { flow: cubicMetresPerHour(2), head: metres(83.9) },
 *     { flow: cubicMetresPerHour(3), head: metres(64.3) },
 *     { flow: cubicMetresPerHour(4), head: metres(35.8) },
 *   ],
 * });
 * fitted.constant; // ≈ 100.2
 * fitted.largestResidual; // ≈ 0.28
 * fitted.curve.shape; // => "falling"
 * ```
 *
 * @source golub-van-loan: least squares by reflections
 */
export function fitPumpCurve(input: FitCurveInput): FittedCurve {
  requireObject("input", input);
  const { points, form = "level at shutoff" } = input;
  requireList("points", points, 3, 10_000);
  if (form !== "level at shutoff" && form !== "quadratic") {
    throw new InputError("form", form, '"level at shutoff" or "quadratic"');
  }
  points.forEach((point, i) => {
    requireObject(`points[${i}]`, point);
    requireWithin(`points[${i}].flow`, point.flow, 0, 100, "m³/s");
    requireWithin(`points[${i}].head`, point.head, 0, 10_000, "m");
  });
  const end = Math.max(...points.map(({ flow }) => flow));
  if (!(end >= 1e-9)) throw new InputError("points", end, "a largest flow of at least 1e-9 m³/s");
  // Flows as shares of the largest keep the columns of one size.
  const rows = points.map(({ flow }) => {
    const q = flow / end;
    return form === "quadratic" ? [1, q, q * q] : [1, q * q];
  });
  const fit = leastSquares(
    rows,
    points.map(({ head }) => head),
  );
  if (fit === null) throw new InputError("points", points, "points at three or more different flows");
  const full = form === "quadratic" ? fit.coefficients : [fit.coefficients[0], 0, fit.coefficients[1]];
  const [a, b, c] = full as [number, number, number];
  const errors =
    fit.standardErrors &&
    (form === "quadratic" ? fit.standardErrors : [fit.standardErrors[0], 0, fit.standardErrors[1]]);
  const curve = finishCurve({
    head: parabola(a, b, c, end),
    shutoffBasis: points.some(({ flow }) => flow === 0) ? "given" : "extrapolated",
  });
  requireCurve(curve, "points");
  return {
    curve,
    constant: a,
    linear: b / end,
    quadratic: c / end / end,
    standardErrors: errors && [errors[0] as number, (errors[1] as number) / end, (errors[2] as number) / end / end],
    residuals: fit.residuals as readonly Length[],
    deviation: fit.deviation as Length | null,
    largestResidual: Math.max(...fit.residuals.map(Math.abs)) as Length,
  };
}

/** A parabola in q = Q/end as a line: exact with its own slopes; a point is set at a vertex, so that rising parts show. */
function parabola(a: number, b: number, c: number, end: number): CubicLine {
  const vertex = -b / (2 * c);
  const q = vertex > 1e-6 && vertex < 1 - 1e-6 ? [0, vertex, 1] : [0, 1];
  return {
    x: q.map((share) => share * end),
    y: q.map((share) => a + share * (b + share * c)),
    slope: q.map((share) => (b + 2 * c * share) / end),
  };
}
