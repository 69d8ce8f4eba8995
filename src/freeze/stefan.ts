/**
 * How deep the frost goes by Stefan's formula: an upper bound.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { DegreeTime, Density, Length, Ratio, ThermalConductivity } from "../units/index.ts";
import { LATENT_HEAT } from "./constants.ts";

/** A soil, for Stefan's formula. */
export interface StefanInput {
  /** Conductivity of the frozen soil (for Berggren's, mean of frozen and thawed). 0.05 to 10 W/(m·K). */
  readonly conductivity: ThermalConductivity;
  /** Dry density. 100 to 3000 kg/m³. */
  readonly dryDensity: Density;
  /** Water, as a share of the dry weight: 0.15 for 15 percent. 0.01 to 2. */
  readonly moisture: Ratio;
  /** Freezing index of the surface: see `surfaceFreezingIndex`. 0 to 1e9 K·s. */
  readonly surfaceIndex: DegreeTime;
}

/** A depth by Stefan's formula. */
export interface StefanDepth {
  /** Depth of frost, m. */
  readonly depth: Length;
  /** Latent heat of the soil's water, J/m³. */
  readonly latentHeat: number;
  /** Source of the method. */
  readonly method: "stefan-1891";
}

/**
 * Depth of frost by Stefan's formula: an upper bound.
 *
 * @remarks
 * X = √(2 k F / L),  L = 144 Btu/lb × dry density × moisture
 *
 * with k `conductivity`, F `surfaceIndex`. It leaves out the heat stored in the soil and so goes too deep: by a fifth in a
 * temperate climate. In customary units √(48 k F / L).
 *
 * @param input - soil and winter; each field says its unit and range
 * @returns the depth and the latent heat behind it
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example A moist silt, 1000 °F·d
 * ```ts
 * import { stefanFrostDepth } from "risingmain/freeze";
 * import { btuPerHourFootDegreeF, fahrenheitDegreeDays, inFeet, percent, poundsPerCubicFoot } from "risingmain/units";
 *
 * const silt = stefanFrostDepth({
 *   conductivity: btuPerHourFootDegreeF(0.8), dryDensity: poundsPerCubicFoot(100), moisture: percent(15),
 *   surfaceIndex: fahrenheitDegreeDays(1000),
 * });
 * inFeet(silt.depth); // ≈ 4.22
 * ```
 *
 * @source stefan-1891, as printed in `pavement-interactive-frost`
 */
export function stefanFrostDepth(input: StefanInput): StefanDepth {
  requireSoil(input);
  const latentHeat = LATENT_HEAT * input.dryDensity * input.moisture;
  const depth = Math.sqrt((2 * input.conductivity * input.surfaceIndex) / latentHeat);
  return { depth: depth as Length, latentHeat, method: "stefan-1891" };
}

/**
 * Refuses a soil that cannot be one.
 *
 * @internal
 */
export function requireSoil(input: StefanInput): void {
  requireObject("input", input);
  requireWithin("conductivity", input.conductivity, 0.05, 10, "W/(m·K)");
  requireWithin("dryDensity", input.dryDensity, 100, 3000, "kg/m³");
  requireWithin("moisture", input.moisture, 0.01, 2, "(0.15 for 15 percent)");
  requireWithin("surfaceIndex", input.surfaceIndex, 0, 1e9, "K·s");
}
