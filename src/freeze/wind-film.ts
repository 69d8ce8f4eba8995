/**
 * How well the air around a pipe takes its heat away: still air, or wind across it.
 *
 * @module
 */

/** Dry air at 0 °C and one atmosphere: kinematic viscosity m²/s, conductivity W/(m·K), Prandtl number (`incropera`; recalled). */
const AIR_VISCOSITY = 1.35e-5;
const AIR_CONDUCTIVITY = 0.0241;
const AIR_PRANDTL = 0.714;
/** Still air with radiation to cold surroundings, 1.65 Btu/(h·ft²·°F), W/(m²·K) (`ashrae-fundamentals`; recalled). */
const STILL_AIR = 9.37;

/**
 * Surface coefficient of a cylinder across a wind, W/(m²·K); not under that of still air.
 *
 * Nu = 0.3 + 0.62 Re^½ Pr^⅓ / [1 + (0.4/Pr)^⅔]^¼ · [1 + (Re/282 000)^⅝]^⅘ (`churchill-bernstein-1977`), with air at 0 °C.
 *
 * @internal
 */
export function windFilm(wind: number, diameter: number): number {
  const reynolds = (wind * diameter) / AIR_VISCOSITY;
  const nusselt =
    0.3 +
    ((0.62 * Math.sqrt(reynolds) * Math.cbrt(AIR_PRANDTL)) / (1 + (0.4 / AIR_PRANDTL) ** (2 / 3)) ** 0.25) *
      (1 + (reynolds / 282_000) ** (5 / 8)) ** (4 / 5);
  return Math.max((nusselt * AIR_CONDUCTIVITY) / diameter, STILL_AIR);
}
