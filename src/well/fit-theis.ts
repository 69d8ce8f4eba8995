/**
 * Transmissivity and storativity by least squares of the whole Theis curve, early readings included.
 *
 * @module
 */
import { type LeastSquares, leastSquares } from "../numeric/index.ts";
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
/** Halvings by golden section from three looks to the square root of rounding, where sums of squares go flat. */
const NARROWINGS = 50;
const GOLDEN = 0.6180339887498949;
/** Steps of Newton's kind that polish the last digits. */
const POLISHES = 6;

/**
 * Transmissivity and storativity by least squares of the Theis curve through all readings.
 *
 * @remarks
 * Makes Σ(s − Q W(u) / (4 π T))² smallest. For each r²S/(4T) the best Q/(4πT) follows in closed form, so one unknown is
 * searched, over every value an aquifer may have; two-unknown steps polish the end and give the standard errors.
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
  const measured = readings.map(({ drawdown }) => drawdown as number);
  const times = readings.map(({ time }) => time as number);
  const shapeAt = (logged: number): readonly number[] => times.map((time) => wellFunction(Math.exp(logged) / time));

  // The best scale for a shape is a projection; what is left of the squares depends on one unknown.
  const scaleOf = (shape: readonly number[]): number => {
    const length = dot(shape, shape);
    return length > 0 ? dot(shape, measured) / length : 0;
  };
  const left = (logged: number): number => {
    const shape = shapeAt(logged);
    const scale = scaleOf(shape);
    return measured.reduce((sum, s, i) => sum + (s - scale * (shape[i] as number)) ** 2, 0);
  };
  const start = leastOf(left);
  if (start === null) return { state: "no fit" };
  let logged = start;
  let scale = scaleOf(shapeAt(logged));
  let last = stepFrom(times, measured, logged, scale);
  for (let i = 0; i < POLISHES && last !== null; i++) {
    const [ofT, ofS] = last.coefficients as [number, number];
    if (!(Math.abs(ofT) < 0.5 && Math.abs(ofS) < 0.5)) break;
    scale *= Math.exp(-ofT);
    logged += ofS - ofT;
    last = stepFrom(times, measured, logged, scale);
  }
  const transmissivity = flow / (4 * Math.PI * scale);
  const storativity = (4 * transmissivity * Math.exp(logged)) / (radius * radius);
  if (last === null || !(scale > 0 && Number.isFinite(transmissivity) && Number.isFinite(storativity))) {
    return { state: "no fit" };
  }
  return {
    state: "fitted",
    transmissivity: transmissivity as Transmissivity,
    storativity,
    relativeErrors: last.standardErrors as readonly [number, number] | null,
    residuals: remainders(times, measured, logged, scale) as readonly Length[],
    deviation: last.deviation as Length | null,
    method: "theis-1935",
  };
}

/** The lowest value of a function between the bounds: a look everywhere, then golden section; null at a bound. */
function leastOf(f: (x: number) => number): number | null {
  const step = (MOST - LEAST) / LOOKS;
  let best = 0;
  let lowest = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= LOOKS; i++) {
    const value = f(LEAST + i * step);
    if (value < lowest) {
      lowest = value;
      best = i;
    }
  }
  if (best === 0 || best === LOOKS) return null;
  let a = LEAST + (best - 1) * step;
  let b = LEAST + (best + 1) * step;
  let x1 = b - GOLDEN * (b - a);
  let x2 = a + GOLDEN * (b - a);
  let f1 = f(x1);
  let f2 = f(x2);
  for (let i = 0; i < NARROWINGS; i++) {
    if (f1 < f2) {
      b = x2;
      x2 = x1;
      f2 = f1;
      x1 = b - GOLDEN * (b - a);
      f1 = f(x1);
    } else {
      a = x1;
      x1 = x2;
      f1 = f2;
      x2 = a + GOLDEN * (b - a);
      f2 = f(x2);
    }
  }
  return (a + b) / 2;
}

/**
 * A least-squares step in ln T and ln S, so that its standard errors are relative ones. The scale is Q/(4πT) and u goes
 * as S/T; with dW/du = −e⁻ᵘ/u the slopes are scale · (e⁻ᵘ − W) and −scale · e⁻ᵘ.
 */
function stepFrom(
  times: readonly number[],
  measured: readonly number[],
  logged: number,
  scale: number,
): LeastSquares | null {
  const rows = times.map((time) => {
    const u = Math.exp(logged) / time;
    const decay = Math.exp(-u);
    return [scale * (decay - wellFunction(u)), -scale * decay];
  });
  return leastSquares(rows, remainders(times, measured, logged, scale));
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
}

function remainders(
  times: readonly number[],
  measured: readonly number[],
  logged: number,
  scale: number,
): readonly number[] {
  return measured.map((s, i) => s - scale * wellFunction(Math.exp(logged) / (times[i] as number)));
}
