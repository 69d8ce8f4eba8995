/**
 * A step test: drawdowns at several steady flows, and the law s = B Q + C Q² through them.
 *
 * @module
 */
import { leastSquares, requireList, requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { InputError, type Length } from "../units/index.ts";
import type { DrawdownLaw, PumpingTest } from "./drawdown.ts";

/** A step test. */
export interface StepTestInput {
  /** 2 to 1000 steps, each the drawdown at the end of an equally long step; at two or more different flows. */
  readonly steps: readonly PumpingTest[];
  /**
   * What is made smallest: "specific drawdown", the squares of s/Q against B + C Q, as the plot of the trade does; or
   * "drawdown", the squares of s. "specific drawdown" where left out.
   */
  readonly fitted?: "specific drawdown" | "drawdown";
}

/** A fit with its errors. */
export interface StepFit {
  /** B, s/m². */
  readonly aquiferLoss: number;
  /** C, s²/m⁵. */
  readonly wellLoss: number;
  /** Standard errors of B and C, in their units; null with two steps only. */
  readonly standardErrors: readonly [aquiferLoss: number, wellLoss: number] | null;
  /** Measured drawdown less the law's, step by step in the order given, m. */
  readonly residuals: readonly Length[];
}

/** What a step test says. */
export type StepTest =
  | (StepFit & {
      /** Both coefficients are sensible. */
      readonly state: "law";
      /** The law, for {@link drawdownAt}, {@link wellEfficiency} and {@link flowForDrawdown}. */
      readonly law: DrawdownLaw;
    })
  | (StepFit & {
      /** A coefficient comes out below zero: the well cleared itself while it was tested, or levels had not settled. */
      readonly state: "no law";
    });

/**
 * The law s = B Q + C Q² through the steps of a test, by least squares.
 *
 * @remarks
 * The plot of s/Q against Q is a straight line with intercept B and slope C. Levels still falling from earlier steps
 * make C too large, in one published test by 40 %: take each step's own increment where the records allow.
 *
 * @param input - the steps, each flow and drawdown, and what is to be fitted
 * @returns B and C with standard errors and residuals; no law where a coefficient is negative
 * @throws {@link units.InputError} naming the first step that cannot be used, or steps all at one flow
 *
 * @example
 * ```ts
 * import { fitStepTest, wellEfficiency } from "risingmain/well";
 * import { feet, gpm } from "risingmain/units";
 *
 * const test = fitStepTest({
 *   steps: [
 *     { flow: gpm(6), drawdown: feet(13.1) },
 *     { flow: gpm(12), drawdown: feet(29.4) },
 *     { flow: gpm(18), drawdown: feet(48.8) },
 *   ],
 * });
 * test.state === "law" ? wellEfficiency(test.law, gpm(18)) : 0; // ≈ 0.7
 * ```
 *
 * @source jacob-1947: the law
 * @source bierschenk-1963: the plot of specific drawdown
 */
export function fitStepTest(input: StepTestInput): StepTest {
  requireObject("input", input);
  const { steps, fitted = "specific drawdown" } = input;
  requireOneOf("fitted", fitted, ["specific drawdown", "drawdown"]);
  requireList("steps", steps, 2, 1000);
  steps.forEach((step, i) => {
    requireObject(`steps[${i}]`, step);
    requireWithin(`steps[${i}].flow`, step.flow, 1e-9, 100, "m³/s");
    requireWithin(`steps[${i}].drawdown`, step.drawdown, 1e-6, 10_000, "m");
  });
  const bySpecific = fitted === "specific drawdown";
  const rows = steps.map(({ flow }) => (bySpecific ? [1, flow] : [flow, flow * flow]));
  const values = steps.map(({ flow, drawdown }) => (bySpecific ? drawdown / flow : drawdown));
  const fit = leastSquares(rows, values);
  if (fit === null) throw new InputError("steps", steps, "steps at two or more different flows");
  const [B, C] = fit.coefficients as [number, number];
  const greatestFlow = Math.max(...steps.map(({ flow }) => flow));
  const aquiferLoss = withoutRounding(B, C * greatestFlow);
  const wellLoss = withoutRounding(C, B / greatestFlow);
  const result: StepFit = {
    aquiferLoss,
    wellLoss,
    standardErrors: fit.standardErrors as readonly [number, number] | null,
    residuals: steps.map(({ flow, drawdown }) => (drawdown - flow * (aquiferLoss + wellLoss * flow)) as Length),
  };
  if (aquiferLoss < 0 || wellLoss < 0) return { state: "no law", ...result };
  return { state: "law", law: { aquiferLoss, wellLoss }, ...result };
}

/** A well without one of the losses has 0 of it, and not less by rounding. */
function withoutRounding(coefficient: number, other: number): number {
  return Math.abs(coefficient) < ROUNDING * Math.abs(other) ? 0 : coefficient;
}

/** A loss below this share of the other at the greatest flow is rounding: steps of most unequal flows lose 1e-11. */
const ROUNDING = 1e-9;

/** Condition of a well by its turbulent loss. */
export interface WellCondition {
  /** "good", "beginning to clog", "clogged", or "hard to restore". */
  readonly condition: "good" | "beginning to clog" | "clogged" | "hard to restore";
  /** The classes used; recalled. */
  readonly method: "walton-1962";
}

/** Upper limits of C for the first three classes, s²/ft⁵ (`walton-1962`, from memory). */
const WALTON_CLASSES: readonly [number, number, number] = [5, 10, 40];
const FOOT = 0.3048;

/**
 * What the turbulent loss coefficient says of a well's condition.
 *
 * @remarks
 * C below 5 s²/ft⁵ (1900 s²/m⁵) properly designed and developed; 5 to 10 beginning to clog; above 10 clogged; above 40
 * hard to restore. Classes drawn from high-yield municipal wells: a small farm well may have a larger C and be sound.
 *
 * @param wellLoss - C of s = B Q + C Q², 0 to 1e20 s²/m⁵
 * @returns the class
 * @throws {@link units.InputError} where C is not a number in its range
 *
 * @example
 * ```ts
 * import { wellCondition } from "risingmain/well";
 *
 * wellCondition(1082).condition; // => "good"
 * ```
 *
 * @source walton-1962, well loss; classes from memory
 */
export function wellCondition(wellLoss: number): WellCondition {
  requireWithin("wellLoss", wellLoss, 0, 1e20, "s²/m⁵");
  const [good, clogging, clogged] = WALTON_CLASSES;
  const c = wellLoss * FOOT ** 5;
  const condition =
    c < good ? "good" : c <= clogging ? "beginning to clog" : c <= clogged ? "clogged" : "hard to restore";
  return { condition, method: "walton-1962" };
}
