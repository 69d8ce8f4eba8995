/**
 * Steady flow to a well from a circle of influence: Thiem for a confined aquifer, Dupuit for an open one.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { InputError, type Length, type Transmissivity, type Velocity, type VolumeFlow } from "../units/index.ts";

/** A well in the middle of a circle where the level stays as it was. */
interface Circle {
  /** Radius of the well. 1e-3 to 1e3 m. */
  readonly wellRadius: Length;
  /** Radius at which pumping is no longer felt. Above the well's, at most 1e6 m. */
  readonly influenceRadius: Length;
}

/** A confined aquifer drawn on steadily. */
export interface ThiemInput extends Circle {
  /** Transmissivity. 1e-12 to 100 m²/s. */
  readonly transmissivity: Transmissivity;
  /** Drawdown at the well. 0 to 10 000 m. */
  readonly drawdown: Length;
}

/**
 * Steady flow of a well in a confined aquifer.
 *
 * @remarks
 * Q = 2 π T s / ln(R/r), with T `transmissivity`, s `drawdown`, R and r the two radii. Doubling the well's radius adds
 * about a tenth to the flow, not a doubling: R/r stands under a logarithm.
 *
 * @param input - aquifer, drawdown and radii; each field says its unit and the values it takes
 * @returns flow, m³/s
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { steadyFlowConfined } from "risingmain/well";
 * import { inLitresPerSecond, metres, squareMetresPerDay } from "risingmain/units";
 *
 * const flow = steadyFlowConfined({
 *   transmissivity: squareMetresPerDay(1080), drawdown: metres(4), wellRadius: metres(0.1), influenceRadius: metres(250),
 * });
 * inLitresPerSecond(flow); // ≈ 40.2
 * ```
 *
 * @source thiem-1906
 */
export function steadyFlowConfined(input: ThiemInput): VolumeFlow {
  const logarithm = requireCircle(input);
  const { transmissivity, drawdown } = input;
  requireWithin("transmissivity", transmissivity, 1e-12, 100, "m²/s");
  requireWithin("drawdown", drawdown, 0, 10_000, "m");
  return ((2 * Math.PI * transmissivity * drawdown) / logarithm) as VolumeFlow;
}

/** An open aquifer drawn on steadily. */
export interface DupuitInput extends Circle {
  /** Hydraulic conductivity: flow per area at a fall of one in one. 1e-12 to 10 m/s. */
  readonly conductivity: Velocity;
  /** Height of the static water above the bottom of the aquifer. 1e-3 to 10 000 m. */
  readonly saturatedThickness: Length;
  /** Drawdown at the well. 0 to the saturated thickness, m. */
  readonly drawdown: Length;
}

/**
 * Steady flow of a well in an unconfined aquifer.
 *
 * @remarks
 * Q = π K s (2 H − s) / ln(R/r), with K `conductivity`, H `saturatedThickness`, s `drawdown`. Not in proportion to the
 * drawdown: half of it gives three quarters of the greatest flow. The true level outside the well stands higher
 * (seepage face), so s is that inside it.
 *
 * @param input - aquifer, drawdown and radii; each field says its unit and the values it takes
 * @returns flow, m³/s
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { steadyFlowUnconfined } from "risingmain/well";
 * import { inLitresPerSecond, metres, metresPerSecond } from "risingmain/units";
 *
 * const flow = steadyFlowUnconfined({
 *   conductivity: metresPerSecond(1e-4), saturatedThickness: metres(20), drawdown: metres(5),
 *   wellRadius: metres(0.1), influenceRadius: metres(200),
 * });
 * inLitresPerSecond(flow); // ≈ 7.23
 * ```
 *
 * @source dupuit-1863
 */
export function steadyFlowUnconfined(input: DupuitInput): VolumeFlow {
  const logarithm = requireCircle(input);
  const { conductivity, saturatedThickness: H, drawdown: s } = input;
  requireWithin("conductivity", conductivity, 1e-12, 10, "m/s");
  requireWithin("saturatedThickness", H, 1e-3, 10_000, "m");
  requireWithin("drawdown", s, 0, H, "m, the saturated thickness");
  return ((Math.PI * conductivity * s * (2 * H - s)) / logarithm) as VolumeFlow;
}

/** A drawdown and a conductivity, for the rule of Sichardt. */
export interface SichardtInput {
  /** Drawdown at the well. 0 to 10 000 m. */
  readonly drawdown: Length;
  /** Hydraulic conductivity. 1e-12 to 10 m/s. */
  readonly conductivity: Velocity;
}

/**
 * A rough radius of influence by Sichardt's rule.
 *
 * @remarks
 * R = 3000 s √K with s in m and K in m/s only: an empirical rule without dimension. It stands under a logarithm, where
 * a factor of two moves the flow by a tenth.
 *
 * @param input - drawdown, m, and conductivity, m/s
 * @returns radius, m
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { sichardtRadius } from "risingmain/well";
 * import { inMetres, metres, metresPerSecond } from "risingmain/units";
 *
 * inMetres(sichardtRadius({ drawdown: metres(14.14), conductivity: metresPerSecond(9.42e-5) })); // ≈ 411.7
 * ```
 *
 * @source kyrieleis-sichardt-1930 (from memory)
 */
export function sichardtRadius(input: SichardtInput): Length {
  requireObject("input", input);
  const { drawdown, conductivity } = input;
  requireWithin("drawdown", drawdown, 0, 10_000, "m");
  requireWithin("conductivity", conductivity, 1e-12, 10, "m/s");
  return (3000 * drawdown * Math.sqrt(conductivity)) as Length;
}

/** Checks the radii; returns ln(R/r). */
function requireCircle(input: Circle): number {
  requireObject("input", input);
  const { wellRadius, influenceRadius } = input;
  requireWithin("wellRadius", wellRadius, 1e-3, 1e3, "m");
  requireWithin("influenceRadius", influenceRadius, 1e-3, 1e6, "m");
  const logarithm = Math.log(influenceRadius / wellRadius);
  if (!(logarithm > 0)) {
    throw new InputError("influenceRadius", influenceRadius, `more than the well's radius, ${wellRadius} m`);
  }
  return logarithm;
}
