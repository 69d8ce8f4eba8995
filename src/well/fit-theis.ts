/**
 * Transmissivity and storativity by least squares of the whole Theis curve, early readings included.
 *
 * @module
 */
import { findRoot, leastSquares } from "../numeric/index.ts";
import type { Length, Transmissivity } from "../units/index.ts";
import { requireReadings, type TimeDrawdownInput } from "./straight-line.ts";
import { wellFunction } from "./well-function.ts";

/** The Theis curve through readings, or the news that they do not follow one. */
export type TheisFit =
  | {
      /** A curve was found. */
      readonly state: "fitted";
      /** Transmissivity, m²/s. */
      readonly transmissivity: Transmissivity;
      /** Storativity; above 1 it shows a radius or readings that are wrong, as in a pumped well with well loss. */
      readonly storativity: number;
      /** Standard errors as shares of transmissivity and storativity; null with two readings. */
      readonly relativeErrors: readonly [transmissivity: number, storativity: number] | null;
      /** Measured less the curve, for the readings taken, in order of the input, m. */
      readonly residuals: readonly Length[];
      /** Standard deviation of the residuals, m; null with two readings. */
      readonly deviation: Length | null;
      /** The method. */
      readonly method: "theis-1935";
    }
  | {
      /** The sum of squares has no least value inside 1e-12 to 1e12 of r²S/T in seconds: the readings do not curve. */
      readonly state: "no fit";
    };

/** Bounds of ln(r² S / (4 T)) in seconds: u of one at a picosecond or at a terasecond; no aquifer lies outside. ±12 ln 10. */
const LEAST = -27.631021115928547;
const MOST = 27.631021115928547;
/** Steps of the first look; one for each third of e, so that no valley is stepped over. */
const LOOKS = 166;

/**
 * Transmissivity and storativity by least squares of the Theis curve through all readings.
 *
 * @remarks
 * Makes Σ(s − Q W(u) / (4 π T))² smallest. For each r²S/(4T) the best Q/(4πT) follows in closed form, so one unknown is
 * searched, over every value an aquifer may have; the slopes over both give the standard errors.
 *
 * @param input - flow, distance and readings; each field says its unit and the values it takes
 * @returns the aquifer's constants with relative standard errors, or that there is no fit
 * @throws {@link units.InputError} naming the first field that cannot be used, or too few readings left after `from`
 *
 * @example
 * ```ts
 * import { fitTheis } from "risingmain/well";
 * import { cubicMetresPerHour, inSquareMetresPerDay, metres, minutes } from "risingmain/units";
 *
 * const fit = fitTheis({
 *   flow: cubicMetresPerHour(10), radius: metres(20),
 *   readings: [
 *     { time: minutes(1), drawdown: metres(0.1) },
 *     { time: minutes(5), drawdown: metres(0.34) },
 *     { time: minutes(30), drawdown: metres(0.71) },
 *     { time: minutes(240), drawdown: metres(1.15) },
 *   ],
 * });
 * fit.state === "fitted" ? inSquareMetresPerDay(fit.transmissivity) : 0; // ≈ 89.3
 * ```
 *
 * @source theis-1935
 */
export function fitTheis(input: TimeDrawdownInput): TheisFit {
  const { flow, radius, readings } = requireReadings(input);
  const drawdowns = readings.map(({ drawdown }) => drawdown);
  // The best scale for a shape is a projection, so what is left depends on one unknown. Half the slope of the sum of squares
  // over it is scale · Σ r e⁻ᵘ, because dW/du = −e⁻ᵘ/u; the scale is positive.
  const curveAt = (logged: number) => {
    const us = readings.map(({ time }) => Math.exp(logged) / time);
    const shape = us.map(wellFunction);
    const decay = us.map((u) => Math.exp(-u));
    const scale = dot(shape, drawdowns) / dot(shape, shape);
    const residuals = drawdowns.map((s, i) => (s - scale * (shape[i] as number)) as Length);
    return { shape, decay, scale, residuals, squares: dot(residuals, residuals), slope: dot(residuals, decay) };
  };
  const slopeAt = (logged: number): number => curveAt(logged).slope;
  const step = (MOST - LEAST) / LOOKS;
  let best = LEAST;
  let lowest = Number.POSITIVE_INFINITY;
  for (let i = 1; i < LOOKS; i++) {
    const { squares } = curveAt(LEAST + i * step);
    if (squares < lowest) {
      lowest = squares;
      best = LEAST + i * step;
    }
  }
  if (!(slopeAt(best - step) < 0 && slopeAt(best + step) > 0)) return { state: "no fit" };
  const logged = findRoot(slopeAt, best - step, best + step).x;
  const { shape, decay, scale, residuals } = curveAt(logged);
  // Slopes of s over ln T and ln S, but for a sign, so that the standard errors are relative ones: the scale is Q/(4πT) and
  // u goes as S/T.
  const rows = shape.map((W, i) => [scale * ((decay[i] as number) - W), scale * (decay[i] as number)]);
  const fit = leastSquares(rows, residuals);
  const transmissivity = flow / (4 * Math.PI * scale);
  const storativity = (4 * transmissivity * Math.exp(logged)) / (radius * radius);
  if (fit === null || !Number.isFinite(storativity)) return { state: "no fit" };
  return {
    state: "fitted",
    transmissivity: transmissivity as Transmissivity,
    storativity,
    relativeErrors: fit.standardErrors as readonly [number, number] | null,
    residuals,
    deviation: fit.deviation as Length | null,
    method: "theis-1935",
  };
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
}
