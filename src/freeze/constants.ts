/**
 * Figures of water that the methods of this module are printed with.
 *
 * @module
 */

/** A Btu (IT) a pound and Fahrenheit degree, J/(kg·K): exact by definition; the specific heat of water as the methods take it. */
export const BTU_PER_POUND_DEGREE = 4186.8;
/** Latent heat of fusion as the methods take it, 144 Btu/lb = 144 / 1.8 × 4186.8 J/kg; 0.4 % over today's 333.6 kJ/kg. */
export const LATENT_HEAT: number = 334_944;
/** Density of water as the methods take it, 62.4 lb/ft³, kg/m³. */
export const WATER_DENSITY = 999.552_08;
/** Freezing point, K. */
export const FREEZING = 273.15;
/** Conductivity of ice at 0 °C, W/(m·K) (`slack-1980`; recalled). */
export const ICE_CONDUCTIVITY = 2.2;
