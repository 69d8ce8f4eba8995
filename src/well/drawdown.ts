/**
 * How far the water falls for a flow: specific capacity, and the law s = B Q + C Q² from one test or several.
 *
 * @module
 */
import { requireObject, requirePositive, requireWithin } from "../numeric/index.ts";
import type { Length, Ratio, Transmissivity, VolumeFlow } from "../units/index.ts";

/** One pumping test, read once the level had nearly stopped falling. */
export interface PumpingTest {
  /** Steady flow. Above 0, at most 100 m³/s; at least 1e-9. */
  readonly flow: VolumeFlow;
  /** Fall of the level below its static depth. Above 0, at most 10 000 m; at least 1e-6. */
  readonly drawdown: Length;
}

/** Drawdown against flow at one time of pumping: s = B Q + C Q². Plain data. */
export interface DrawdownLaw {
  /** B: loss in the aquifer (and in laminar flow through the screen) per flow, s/m². */
  readonly aquiferLoss: number;
  /** C: loss in the turbulent flow into and up the well per flow squared, s²/m⁵; 0 for a single test. */
  readonly wellLoss: number;
}

/**
 * Flow of a well per length of drawdown.
 *
 * @remarks
 * Q / s. It falls with time and, through well loss, with flow: quote both beside it.
 *
 * @param test - flow, m³/s, and drawdown, m, of one test
 * @returns specific capacity, m³/s per m
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { specificCapacity } from "risingmain/well";
 * import { feet, gpm, inGpmPerFoot } from "risingmain/units";
 *
 * inGpmPerFoot(specificCapacity({ flow: gpm(200), drawdown: feet(40) })); // ≈ 5.000
 * ```
 *
 * @source derived: definition
 */
export function specificCapacity(test: PumpingTest): Transmissivity {
  requireTest(test);
  return (test.flow / test.drawdown) as Transmissivity;
}

/**
 * The drawdown law a single test gives: a straight line through the origin.
 *
 * @remarks
 * B = s / Q, C = 0. Without a second rate the well loss cannot be told apart, so beyond the tested flow the true
 * drawdown is greater than the line says.
 *
 * @param test - flow, m³/s, and drawdown, m, of one test
 * @returns the law, for {@link drawdownAt}
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { drawdownAt, singleTestLaw } from "risingmain/well";
 * import { feet, gpm, inFeet } from "risingmain/units";
 *
 * const law = singleTestLaw({ flow: gpm(20), drawdown: feet(40) });
 * inFeet(drawdownAt(law, gpm(30))); // ≈ 60.00
 * ```
 *
 * @source derived: proportion
 */
export function singleTestLaw(test: PumpingTest): DrawdownLaw {
  requireTest(test);
  return { aquiferLoss: test.drawdown / test.flow, wellLoss: 0 };
}

/**
 * Drawdown of a well at a flow.
 *
 * @remarks
 * s = B Q + C Q² (`jacob-1947`), with B `aquiferLoss` and C `wellLoss`, for the time of pumping the law was taken at.
 *
 * @param law - the well's law, from a single test or a step test
 * @param flow - steady flow from the well, 0 to 100 m³/s
 * @returns fall of the level below its static depth, m
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { drawdownAt } from "risingmain/well";
 * import { cubicMetresPerSecond, inMetres } from "risingmain/units";
 *
 * inMetres(drawdownAt({ aquiferLoss: 2000, wellLoss: 50_000 }, cubicMetresPerSecond(0.01))); // ≈ 25.0
 * ```
 *
 * @source jacob-1947
 */
export function drawdownAt(law: DrawdownLaw, flow: VolumeFlow): Length {
  requireLaw(law);
  requireWithin("flow", flow, 0, 100, "m³/s");
  return (flow * (law.aquiferLoss + law.wellLoss * flow)) as Length;
}

/**
 * Share of the drawdown that is spent in the aquifer: the efficiency of the well at a flow.
 *
 * @remarks
 * B Q / (B Q + C Q²) = B / (B + C Q). The part of B that is loss in the screen and gravel is counted as aquifer, so
 * the true efficiency is no higher.
 *
 * @param law - the well's law, from a step test; a single test gives 1
 * @param flow - steady flow from the well, 0 to 100 m³/s
 * @returns the efficiency as a ratio
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { wellEfficiency } from "risingmain/well";
 * import { cubicMetresPerSecond } from "risingmain/units";
 *
 * wellEfficiency({ aquiferLoss: 2000, wellLoss: 50_000 }, cubicMetresPerSecond(0.01)); // ≈ 0.800
 * ```
 *
 * @source jacob-1947
 */
export function wellEfficiency(law: DrawdownLaw, flow: VolumeFlow): Ratio {
  requireLaw(law);
  requireWithin("flow", flow, 0, 100, "m³/s");
  const { aquiferLoss: B, wellLoss: C } = law;
  return (C * flow === 0 ? 1 : B / (B + C * flow)) as Ratio;
}

/** @internal */
export function requireLaw(law: DrawdownLaw, parameter = "law"): void {
  requireObject(parameter, law);
  requireWithin(`${parameter}.aquiferLoss`, law.aquiferLoss, 0, 1e15, "s/m²");
  requireWithin(`${parameter}.wellLoss`, law.wellLoss, 0, 1e20, "s²/m⁵");
}

function requireTest(test: PumpingTest): void {
  requireObject("test", test);
  requirePositive("flow", test.flow, 100, "m³/s");
  requireWithin("flow", test.flow, 1e-9, 100, "m³/s");
  requireWithin("drawdown", test.drawdown, 1e-6, 10_000, "m");
}
