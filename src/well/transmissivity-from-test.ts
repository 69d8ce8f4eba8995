/**
 * Transmissivity from one reading of flow and drawdown: what a driller's test alone can say.
 *
 * @module
 */
import { findRoot, requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Length, Transmissivity } from "../units/index.ts";
import type { PumpingTest } from "./drawdown.ts";
import { wellFunction } from "./well-function.ts";

/** One test and what must be assumed to read it. */
export interface TransmissivityFromTestInput extends PumpingTest {
  /** Time of steady pumping when the drawdown was read. 1 to 1e10 s. */
  readonly time: Duration;
  /** Effective radius of the well. 1e-3 to 1e3 m. */
  readonly radius: Length;
  /** Storativity assumed: 1e-5 to 1e-3 confined, 0.05 to 0.25 unconfined. 1e-12 to 1. */
  readonly storativity: number;
}

/** Transmissivity from one test. */
export type TransmissivityFromTest =
  | {
      /** There is one. */
      readonly state: "known";
      /** Transmissivity, m²/s; too low where well loss is part of the drawdown. */
      readonly transmissivity: Transmissivity;
      /** The method. */
      readonly method: "theis-1935";
    }
  | {
      /** No aquifer within 1e-12 to 100 m²/s gives this drawdown at this time. */
      readonly state: "none";
    };

/** Bounds of an aquifer's transmissivity, m²/s. */
const LEAST = 1e-12;
const MOST = 100;

/**
 * Transmissivity from one reading of flow and drawdown, with storativity assumed.
 *
 * @remarks
 * Solves T = (Q/s) W(r²S/(4Tt)) / (4π). W changes little with S, so an S wrong by ten moves T by about a tenth. Of the
 * two solutions Theis's equation has, the greater is meant: u below about 0.4, as in any pumped well after minutes.
 *
 * @param input - flow, drawdown, time, radius and storativity; each field says its unit and the values it takes
 * @returns transmissivity, or that none fits
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { transmissivityFromTest } from "risingmain/well";
 * import { days, feet, gpm, inUsGallonsPerDayPerFoot } from "risingmain/units";
 *
 * const test = transmissivityFromTest({
 *   flow: gpm(150), drawdown: feet(10), time: days(1), radius: feet(0.5), storativity: 0.001,
 * });
 * test.state === "known" ? inUsGallonsPerDayPerFoot(test.transmissivity) : 0; // ≈ 3.0e4
 * ```
 *
 * @source theis-1935
 */
export function transmissivityFromTest(input: TransmissivityFromTestInput): TransmissivityFromTest {
  requireObject("input", input);
  const { flow, drawdown, time, radius, storativity } = input;
  requireWithin("flow", flow, 1e-9, 100, "m³/s");
  requireWithin("drawdown", drawdown, 1e-6, 10_000, "m");
  requireWithin("time", time, 1, 1e10, "s");
  requireWithin("radius", radius, 1e-3, 1e3, "m");
  requireWithin("storativity", storativity, 1e-12, 1, "");
  const capacity = flow / drawdown / (4 * Math.PI);
  const timesU = (radius * radius * storativity) / (4 * time);
  // Drawdown as a function of T has its maximum where W(u) = e⁻ᵘ, u = 0.4348; right of it drawdown falls as T grows.
  const short = (logged: number): number => {
    const T = Math.exp(logged);
    return Math.log(capacity) + Math.log(wellFunction(timesU / T)) - logged;
  };
  const low = Math.max(Math.log(LEAST), Math.log(timesU / U_OF_GREATEST_DRAWDOWN));
  const high = Math.log(MOST);
  if (!(low < high) || short(low) < 0 || short(high) > 0) return { state: "none" };
  const transmissivity = Math.exp(findRoot(short, low, high).x);
  return { state: "known", transmissivity: transmissivity as Transmissivity, method: "theis-1935" };
}

/** u at which e⁻ᵘ = W(u): a smaller and a larger T give less drawdown. */
const U_OF_GREATEST_DRAWDOWN = 0.434818204384904;
