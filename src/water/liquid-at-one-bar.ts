/**
 * Liquid water at 0.1 MPa: volume, its two slopes and heat capacity, by the equations of IAPWS SR6-08.
 *
 * Source: `iapws-sr6-08`, the release of 2011, table 1 and equations 1 to 5; coefficients as that release prints them.
 * The heat capacity is here only because the speed of sound needs it.
 *
 * @module
 */

/** Specific gas constant of water, J/(kg·K); SR6-08, section 1. */
const GAS_CONSTANT = 461.51805;
/** Reference temperature, K. */
const T_R = 10;
/** Upper and lower temperature in the two reduced variables α and β, K. */
const T_A = 593;
const T_B = 232;
/** Reference pressure, Pa. */
const P_0 = 1e5;

/** A coefficient and its exponent. */
type Terms = readonly (readonly [coefficient: number, exponent: number])[];

/** Coefficients of the Gibbs energy: a1–a3, b1–b4, c3. */
const GIBBS_ALPHA: Terms = [
  [-1.661470539e5, 4],
  [2.70878164e6, 5],
  [-1.557191544e8, 7],
];
const GIBBS_BETA: Terms = [
  [-8.237426256e-1, 2],
  [1.908956353, 3],
  [-2.017597384, 4],
  [8.546361348e-1, 5],
];
const GIBBS_C3 = -8.983025854;

/** Coefficients of the volume: a5, a6–a10, b5–b10. */
const VOLUME_A5 = 1.93763157e-2;
const VOLUME_ALPHA: Terms = [
  [6.74458446e3, 4],
  [-2.22521604e5, 5],
  [1.00231247e8, 7],
  [-1.63552118e9, 8],
  [8.32299658e9, 9],
];
const VOLUME_BETA: Terms = [
  [5.78545292e-3, 1],
  [-1.53195665e-2, 2],
  [3.11337859e-2, 3],
  [-4.23546241e-2, 4],
  [3.38713507e-2, 5],
  [-1.19946761e-2, 6],
];

/** Coefficients of the slope of the volume with pressure: a11–a15, b11–b17. */
const SQUEEZE_ALPHA: Terms = [
  [-7.5245878e-6, 1],
  [-1.3767418e-2, 3],
  [1.0627293e1, 5],
  [-2.0457795e2, 6],
  [1.2037414e3, 7],
];
const SQUEEZE_BETA: Terms = [
  [-3.109147e-6, 1],
  [2.8964919e-5, 3],
  [-1.3112763e-4, 4],
  [3.0410453e-4, 5],
  [-3.9034594e-4, 6],
  [2.3403117e-4, 7],
  [-4.8510101e-5, 9],
];

/** Specific volume, m³/kg, at a temperature in K. */
export function specificVolume(temperature: number): number {
  const alpha = T_R / (T_A - temperature);
  const beta = T_R / (temperature - T_B);
  return ((GAS_CONSTANT * T_R) / P_0) * (VOLUME_A5 + powerSum(VOLUME_ALPHA, alpha) + powerSum(VOLUME_BETA, beta));
}

/** Slope of the specific volume with temperature at constant pressure, m³/(kg·K). */
export function volumeSlopeWithTemperature(temperature: number): number {
  const alpha = T_R / (T_A - temperature);
  const beta = T_R / (temperature - T_B);
  return (GAS_CONSTANT / P_0) * (firstSlope(VOLUME_ALPHA, alpha) - firstSlope(VOLUME_BETA, beta));
}

/** Slope of the specific volume with pressure at constant temperature, m³/(kg·Pa); negative. */
export function volumeSlopeWithPressure(temperature: number): number {
  const alpha = T_R / (T_A - temperature);
  const beta = T_R / (temperature - T_B);
  return ((GAS_CONSTANT * T_R) / P_0 ** 2) * (powerSum(SQUEEZE_ALPHA, alpha) + powerSum(SQUEEZE_BETA, beta));
}

/** Specific heat capacity at constant pressure, J/(kg·K). */
export function heatCapacity(temperature: number): number {
  const alpha = T_R / (T_A - temperature);
  const beta = T_R / (temperature - T_B);
  const curvature = secondSlope(GIBBS_ALPHA, alpha) + secondSlope(GIBBS_BETA, beta);
  return -GAS_CONSTANT * (GIBBS_C3 + (temperature / T_R) * curvature);
}

/** Σ c xⁿ. */
function powerSum(terms: Terms, x: number): number {
  return terms.reduce((sum, [c, n]) => sum + c * x ** n, 0);
}

/** Σ n c xⁿ⁺¹: the slope of Σ c xⁿ with ±T/T_R, since both variables change by x² for one unit of it. */
function firstSlope(terms: Terms, x: number): number {
  return terms.reduce((sum, [c, n]) => sum + n * c * x ** (n + 1), 0);
}

/** Σ n (n + 1) c xⁿ⁺²: the slope once more. */
function secondSlope(terms: Terms, x: number): number {
  return terms.reduce((sum, [c, n]) => sum + n * (n + 1) * c * x ** (n + 2), 0);
}
