/**
 * Copper and aluminium as conductors: resistivity, its rise with temperature, density.
 *
 * @module
 */

/** The two conductor metals; copper-clad aluminium is not covered. */
export type ConductorMaterial = "copper" | "aluminium";

/** The names, for checks of input. */
export const CONDUCTOR_MATERIALS: readonly ConductorMaterial[] = ["copper", "aluminium"];

/** What the formulas need to know of a metal. */
export interface ConductorMetal {
  /** Resistivity at 20 °C, Ω·m. */
  readonly resistivityAt20: number;
  /** Relative rise of resistance per kelvin, referred to 20 °C. */
  readonly coefficientAt20: number;
  /** Density at 20 °C, kg/m³. */
  readonly density: number;
}

/**
 * The metals by name.
 *
 * Copper is the international annealed copper standard: conductivity exactly 58 m/(Ω·mm²) at 20 °C, coefficient 0.00393 per
 * kelvin, 8890 kg/m³. Aluminium is electrical grade at 61 % of that conductivity, 0.00403 per kelvin, 2703 kg/m³ (memory).
 *
 * @source iec-60028, copper
 * @source iec-60889, aluminium
 */
export const conductorMetals: Readonly<Record<ConductorMaterial, ConductorMetal>> = {
  copper: { resistivityAt20: 1e-6 / 58, coefficientAt20: 0.00393, density: 8890 },
  aluminium: { resistivityAt20: 1e-6 / (58 * 0.61), coefficientAt20: 0.00403, density: 2703 },
};
