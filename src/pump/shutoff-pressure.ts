/**
 * The pressure a pump can put on everything above it when nothing flows.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Density, GaugePressure, Length } from "../units/index.ts";
import type { PumpCurve } from "./curve.ts";
import { requireCurve } from "./read-curve.ts";

/** A pump below a gauge, with the outlet shut. */
export interface ShutoffPressureInput {
  /** The pump, from {@link pumpCurve}; the strongest one its tolerance accepts, for a rating. */
  readonly curve: PumpCurve;
  /** Depth of the water below the gauge: the highest static level of the year; negative where it stands above. −1000 to 10 000 m. */
  readonly staticLevel: Length;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
}

/** The greatest pressure, and what it was made of. */
export interface ShutoffPressure {
  /** Pressure at the gauge with no flow, Pa gauge; 0 where the pump cannot reach it. */
  readonly pressure: GaugePressure;
  /** Greatest head of the pump, m. */
  readonly greatestHead: Length;
  /** Whether the water reaches the gauge at all. */
  readonly reaches: boolean;
  /** What to know before relying on it. */
  readonly cautions: readonly Caution[];
}

const CAUTIONS: readonly Caution[] = [
  {
    code: "shutoff-pressure",
    text: "Every pipe, fitting, tank and valve that can see this pressure must be rated for it, or be guarded by a relief valve that passes the pump's flow. Add the pump's tolerance and the pressure surge.",
    basis: "common practice",
  },
];

/**
 * Pressure at a gauge when the pump runs and nothing flows, at the highest static level.
 *
 * @remarks
 * p = ρ g (H − z), with H the greatest head of the curve, z the depth of the water below the gauge. Greatest in the wet
 * season, when the water stands highest.
 *
 * @param input - the pump, the level and the density
 * @returns the pressure, Pa gauge, with cautions
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { pumpCurve, shutoffPressure } from "risingmain/pump";
 * import { feet, gpm, inPsi, kilogramsPerCubicMetre } from "risingmain/units";
 *
 * const curve = pumpCurve({ points: [{ flow: gpm(0), head: feet(400) }, { flow: gpm(20), head: feet(100) }] });
 * const shut = shutoffPressure({ curve, staticLevel: feet(60), density: kilogramsPerCubicMetre(999.7) });
 * inPsi(shut.pressure); // ≈ 147.4
 * ```
 *
 * @source derived: hydrostatics
 */
export function shutoffPressure(input: ShutoffPressureInput): ShutoffPressure {
  requireObject("input", input);
  const { curve, staticLevel, density } = input;
  requireCurve(curve);
  requireWithin("staticLevel", staticLevel, -1000, 10_000, "m");
  requireWithin("density", density, 900, 1100, "kg/m³");
  const greatestHead = Math.max(...curve.head.y);
  const above = greatestHead - staticLevel;
  return {
    pressure: (Math.max(0, above) * density * STANDARD_GRAVITY) as GaugePressure,
    greatestHead: greatestHead as Length,
    reaches: above > 0,
    cautions: CAUTIONS,
  };
}
