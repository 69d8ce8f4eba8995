/**
 * What altitude and heat leave of a generator's power.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Length, Ratio, Temperature } from "../units/index.ts";

/** Loss of a naturally aspirated engine: 3 % for each 1000 ft above 500 ft. */
const LOSS_PER_METRE = 0.03 / 304.8;
const ALTITUDE_FREE = 152.4;
/** Loss by heat: 1 % for each 10 °F above 77 °F (25 °C): common practice, no source. */
const LOSS_PER_KELVIN = 0.01 / (10 / 1.8);
const TEMPERATURE_FREE = 298.15;

/** Site and engine. */
export interface GeneratorDeratingInput {
  /** Altitude of the site. −500 to 6000 m. */
  readonly altitude: Length;
  /** Air temperature at the set; 25 °C where left out. 220 to 330 K. */
  readonly ambient?: Temperature;
  /** Share of power lost per metre above `altitudeFree`; 3 % per 1000 ft where left out. 0 to 0.001 1/m. */
  readonly lossPerMetre?: number;
  /** Altitude up to which nothing is lost; 500 ft where left out. −500 to 6000 m. */
  readonly altitudeFree?: Length;
  /** Share of power lost per kelvin above `temperatureFree`; 1 % per 10 °F where left out. 0 to 0.05 1/K. */
  readonly lossPerKelvin?: number;
  /** Temperature up to which nothing is lost; 25 °C where left out. 220 to 330 K. */
  readonly temperatureFree?: Temperature;
}

/** What is left, and the two losses. */
export interface GeneratorDerating {
  /** Share of the rated power that is left, at least 0; multiply running and surge power by it. */
  readonly factor: Ratio;
  /** Share lost to thin air. */
  readonly altitudeLoss: Ratio;
  /** Share lost to heat. */
  readonly temperatureLoss: Ratio;
  /** The altitude rule is published in a farm-engineering text; the temperature rule is common practice. */
  readonly method: "progressive-gardening-altitude";
  /** False where the loss is so large that the straight-line rules no longer mean anything: more than a third. */
  readonly insideRange: boolean;
}

/**
 * Share of a generator's power that altitude and heat leave.
 *
 * @remarks
 * A naturally aspirated engine loses 3 % for each 1000 ft above 500 ft, and about 1 % for each 10 °F above 77 °F; the two
 * losses are added. Carburetted sets lose more until rejetted; turbocharged ones less. The maker's own figures come first,
 * as arguments.
 *
 * @param input - site and rules; each field says its unit and the values it takes
 * @returns the factor and the losses
 * @throws InputError naming the first field that is not in its range
 *
 * @example A ranch at 4,500 ft
 * ```ts
 * import { generatorDerating } from "risingmain/generator";
 * import { feet } from "risingmain/units";
 *
 * generatorDerating({ altitude: feet(4500) }).factor; // ≈ 0.88
 * ```
 *
 * @source progressive-gardening-altitude, 3 % per 1000 ft above 500 ft
 * @source common practice
 */
export function generatorDerating(input: GeneratorDeratingInput): GeneratorDerating {
  requireObject("input", input);
  const { altitude, ambient = TEMPERATURE_FREE, lossPerMetre = LOSS_PER_METRE, altitudeFree = ALTITUDE_FREE } = input;
  const { lossPerKelvin = LOSS_PER_KELVIN, temperatureFree = TEMPERATURE_FREE } = input;
  requireWithin("altitude", altitude, -500, 6000, "m");
  requireWithin("ambient", ambient, 220, 330, "K");
  requireWithin("lossPerMetre", lossPerMetre, 0, 0.001, "1/m");
  requireWithin("altitudeFree", altitudeFree, -500, 6000, "m");
  requireWithin("lossPerKelvin", lossPerKelvin, 0, 0.05, "1/K");
  requireWithin("temperatureFree", temperatureFree, 220, 330, "K");
  const altitudeLoss = Math.max(0, altitude - altitudeFree) * lossPerMetre;
  const temperatureLoss = Math.max(0, ambient - temperatureFree) * lossPerKelvin;
  const lost = altitudeLoss + temperatureLoss;
  return {
    factor: Math.max(0, 1 - lost) as Ratio,
    altitudeLoss: altitudeLoss as Ratio,
    temperatureLoss: temperatureLoss as Ratio,
    method: "progressive-gardening-altitude",
    insideRange: lost <= 1 / 3,
  };
}
