/**
 * The temperatures the formulas for liquid water take.
 *
 * @module
 */
import { requireWithin } from "../numeric/index.ts";

/** Lowest and highest temperature of IAPWS SR6-08, K: −20 °C (undercooled) and 110 °C (superheated). */
const LOWEST = 253.15;
const HIGHEST = 383.15;

/** Water at 0.1 MPa is a stable liquid between these, K: 0 °C and 100 °C. */
const FREEZING = 273.15;
const BOILING = 373.15;

/** Refuses what is not a temperature of liquid water. */
export function requireLiquid(temperature: unknown): void {
  requireWithin("temperature", temperature, LOWEST, HIGHEST, "K (−20 to 110 °C)");
}

/** Whether water at this temperature, K, is an ordinary liquid: neither undercooled nor superheated. */
export function isOrdinaryLiquid(temperature: number): boolean {
  return temperature >= FREEZING && temperature <= BOILING;
}
