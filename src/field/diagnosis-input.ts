/**
 * Refuses plants and readings that the diagnosis cannot use.
 *
 * @module
 */
import { requireBoolean, requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { pumpFlowAt } from "../pump/index.ts";
import { storedWater } from "../tank/index.ts";
import { InputError, type Length } from "../units/index.ts";
import { requireLaw } from "../well/drawdown.ts";
import type { DiagnosisPlant, DiagnosisReading, ReadingKind } from "./diagnosis-types.ts";

const KINDS: readonly ReadingKind[] = [
  "static level",
  "pumping level",
  "flow",
  "shutoff pressure",
  "far flow",
  "cut-in",
  "cut-out",
  "precharge",
  "regulated pressure",
  "fill time",
  "pressure fall",
  "voltage",
  "current",
  "precharge fall",
  "swapped shutoff pressure",
];

const YEAR = 31_557_600;

/**
 * Refuses a plant that cannot be one.
 *
 * @internal
 */
export function requirePlant(plant: DiagnosisPlant): void {
  requireObject("plant", plant);
  // The modules' own gates: a curve that is not one, a law or a tank that cannot be used.
  pumpFlowAt(plant.pump, 0 as Length);
  requireObject("plant.well", plant.well);
  requireWithin("plant.well.staticLevel", plant.well.staticLevel, 0, 5000, "m");
  requireLaw(plant.well.law, "plant.well.law");
  requireWithin("plant.rise", plant.rise, -1000, 1000, "m");
  requirePoint("plant.mainLoss", plant.mainLoss);
  requireWithin("plant.cutIn", plant.cutIn, 0, 1e7, "Pa");
  requireWithin("plant.cutOut", plant.cutOut, plant.cutIn, 1e7, "Pa (above the cut-in)");
  requireObject("plant.tank", plant.tank);
  storedWater({ ...plant.tank, pressure: plant.cutIn });
  requireWithin("plant.density", plant.density, 900, 1100, "kg/m³");
  requireWithin("plant.voltage", plant.voltage, 1, 1000, "V");
  requireWithin("plant.current", plant.current, 0.01, 1e4, "A");
  if (plant.threePhase !== undefined) requireBoolean("plant.threePhase", plant.threePhase);
  if (plant.tankAge !== undefined) requireWithin("plant.tankAge", plant.tankAge, 3600, 100 * YEAR, "s");
  if (plant.regulatedPressure !== undefined) {
    requireWithin("plant.regulatedPressure", plant.regulatedPressure, 0, 1e7, "Pa");
  }
  if (plant.yard !== undefined) {
    requireObject("plant.yard", plant.yard);
    requirePoint("plant.yard.loss", plant.yard.loss);
    requirePoint("plant.yard.outlet", plant.yard.outlet);
    requireWithin("plant.yard.rise", plant.yard.rise, -1000, 1000, "m");
  }
}

function requirePoint(parameter: string, point: { readonly flow: number; readonly headLoss: number }): void {
  requireObject(parameter, point);
  requireWithin(`${parameter}.flow`, point.flow, 1e-9, 100, "m³/s");
  requireWithin(`${parameter}.headLoss`, point.headLoss, 1e-6, 1e4, "m");
}

/**
 * Refuses a reading that cannot be one, or is of something the plant has not.
 *
 * @internal
 */
export function requireReading(plant: DiagnosisPlant, reading: DiagnosisReading, at: string): void {
  requireObject(at, reading);
  requireOneOf(`${at}.kind`, reading.kind, KINDS);
  requireWithin(`${at}.value`, reading.value, -1e9, 1e9, "");
  requireWithin(`${at}.standardUncertainty`, reading.standardUncertainty, 1e-12, 1e9, "");
  if (reading.at !== undefined) requireWithin(`${at}.at`, reading.at, 0, 1e7, "Pa");
  if (reading.over !== undefined) {
    requireWithin(`${at}.over`, reading.over, 1, reading.kind === "precharge fall" ? 100 * YEAR : 86_400, "s");
  }
  const missing =
    (reading.kind === "far flow" && plant.yard === undefined) ||
    (reading.kind === "regulated pressure" && plant.regulatedPressure === undefined) ||
    (reading.kind === "swapped shutoff pressure" && plant.threePhase !== true);
  if (missing) throw new InputError(`${at}.kind`, reading.kind, "a reading of something the plant has");
}
