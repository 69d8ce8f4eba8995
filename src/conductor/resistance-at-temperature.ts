/**
 * Resistance of a metal conductor at another temperature, and the temperature that a resistance tells.
 *
 * @module
 */
import { requireObject, requireOneOf, requirePositive, requireWithin } from "../numeric/index.ts";
import { InputError, type Resistance, type ResistancePerLength, type Temperature } from "../units/index.ts";
import { CONDUCTOR_MATERIALS, type ConductorMaterial, conductorMetals } from "./material.ts";

/** 20 °C, to which the metals' coefficients refer, K. */
const TWENTY_CELSIUS = 293.15;
/** The straight line holds within half a per cent from −60 to 200 °C; beyond 0 to 100 °C the tables give no figure. */
const COLDEST = 200;
const HOTTEST = 600;

/** A temperature coefficient with the temperature it is stated for. */
export interface TemperatureCoefficient {
  /** Relative rise of resistance per kelvin. 0 to 0.02 1/K. */
  readonly perKelvin: number;
  /** Temperature at which the coefficient is stated. 200 to 600 K. */
  readonly at: Temperature;
}

/** A resistance to carry to another temperature. */
export interface ResistanceAtTemperatureInput<R extends Resistance | ResistancePerLength> {
  /** Resistance, or resistance per length, at `from`. 0 to 1e12 Ω or Ω/m. */
  readonly resistance: R;
  /** Temperature of the metal at which the resistance is known. 200 to 600 K. */
  readonly from: Temperature;
  /** Temperature of the metal at which it is wanted. 200 to 600 K. */
  readonly to: Temperature;
  /** Metal of the conductor; copper where left out. */
  readonly material?: ConductorMaterial;
  /** Replaces the metal's own coefficient. */
  readonly coefficient?: TemperatureCoefficient;
}

/**
 * Resistance at another temperature of the metal.
 *
 * @remarks
 * R₂ = R₁ · (1 + α (t₂ − t₀)) / (1 + α (t₁ − t₀)), with α the coefficient stated for t₀: 0.00393 per kelvin at 20 °C for
 * copper, 0.00403 for aluminium. The code's form, R₇₅ (1 + 0.00323 (t − 75)), is the same line with its slope rounded to
 * three figures. Within 0.5 % from −60 to 200 °C.
 *
 * @param input - the resistance and the two temperatures
 * @returns the resistance, in the same quantity as given
 * @throws InputError naming the first field that is not in its range, or where the line has no positive resistance left
 *
 * @example A 1.98 Ω/kft conductor of the 75 °C table, at 10 °C in a well
 * ```ts
 * import { resistanceAtTemperature } from "risingmain/conductor";
 * import { celsius, inOhmsPerThousandFeet, ohmsPerThousandFeet } from "risingmain/units";
 *
 * const cold = resistanceAtTemperature({ resistance: ohmsPerThousandFeet(1.98), from: celsius(75), to: celsius(10) });
 * inOhmsPerThousandFeet(cold); // ≈ 1.564
 * ```
 *
 * @source iec-60028, temperature coefficient of standard annealed copper
 */
export function resistanceAtTemperature<R extends Resistance | ResistancePerLength>(
  input: ResistanceAtTemperatureInput<R>,
): R {
  requireObject("input", input);
  const { resistance, from, to } = input;
  requireWithin("resistance", resistance, 0, 1e12, "Ω or Ω/m");
  requireWithin("from", from, COLDEST, HOTTEST, "K");
  requireWithin("to", to, COLDEST, HOTTEST, "K");
  const { perKelvin, at } = chosen(input);
  const before = 1 + perKelvin * (from - at);
  const after = 1 + perKelvin * (to - at);
  // A steep coefficient can cross zero inside the accepted temperatures; no metal does.
  if (!(before > 0.01))
    throw new InputError("from", from, "a temperature at which the coefficient leaves a resistance");
  if (!(after > 0.01)) throw new InputError("to", to, "a temperature at which the coefficient leaves a resistance");
  return ((resistance * after) / before) as R;
}

/** A cold and a hot reading of one conductor or winding. */
export interface TemperatureFromResistanceInput {
  /** Resistance at the known temperature. Above 0, at most 1e9 Ω. */
  readonly coldResistance: Resistance;
  /** The known temperature. 200 to 600 K. */
  readonly coldTemperature: Temperature;
  /** Resistance at the temperature wanted. Above 0, at most 1e9 Ω. */
  readonly hotResistance: Resistance;
  /** Metal of the conductor; copper where left out. */
  readonly material?: ConductorMaterial;
  /** Replaces the metal's own coefficient. */
  readonly coefficient?: TemperatureCoefficient;
}

/**
 * Mean temperature of a conductor or winding from its resistance cold and hot.
 *
 * @remarks
 * t₂ = t₁ + (R₂ − R₁) / R₁ · (1 + α (t₁ − t₀)) / α, the line of {@link resistanceAtTemperature} solved for t₂.
 * An ohmmeter good to 1 % gives the temperature to about 3 K.
 *
 * @param input - the two readings
 * @returns the temperature at the second reading, K
 * @throws InputError naming the first field that is not in its range, or where the answer falls below 0 K or above 2000 K
 *
 * @example
 * ```ts
 * import { temperatureFromResistance } from "risingmain/conductor";
 * import { celsius, inCelsius, ohms } from "risingmain/units";
 *
 * const hot = temperatureFromResistance({
 *   coldResistance: ohms(2), coldTemperature: celsius(15), hotResistance: ohms(2.4),
 * });
 * inCelsius(hot); // ≈ 64.9
 * ```
 *
 * @source iec-60028, temperature coefficient of standard annealed copper
 */
export function temperatureFromResistance(input: TemperatureFromResistanceInput): Temperature {
  requireObject("input", input);
  const { coldResistance, coldTemperature, hotResistance } = input;
  requirePositive("coldResistance", coldResistance, 1e9, "Ω");
  requireWithin("coldTemperature", coldTemperature, COLDEST, HOTTEST, "K");
  requirePositive("hotResistance", hotResistance, 1e9, "Ω");
  const { perKelvin, at } = chosen(input);
  if (!(perKelvin >= 1e-5)) {
    throw new InputError("coefficient.perKelvin", perKelvin, "at least 1e-5 1/K, or no temperature can be told");
  }
  const rise =
    (((hotResistance - coldResistance) / coldResistance) * (1 + perKelvin * (coldTemperature - at))) / perKelvin;
  const temperature = coldTemperature + rise;
  if (!(temperature > 0 && temperature <= 2000)) {
    throw new InputError("hotResistance", hotResistance, "a resistance that means a temperature from 0 to 2000 K");
  }
  return temperature as Temperature;
}

function chosen(input: {
  readonly material?: ConductorMaterial;
  readonly coefficient?: TemperatureCoefficient;
}): TemperatureCoefficient {
  const { material = "copper", coefficient } = input;
  requireOneOf("material", material, CONDUCTOR_MATERIALS);
  if (coefficient === undefined) {
    return { perKelvin: conductorMetals[material].coefficientAt20, at: TWENTY_CELSIUS as Temperature };
  }
  requireObject("coefficient", coefficient);
  requireWithin("coefficient.perKelvin", coefficient.perKelvin, 0, 0.02, "1/K");
  requireWithin("coefficient.at", coefficient.at, COLDEST, HOTTEST, "K");
  return coefficient;
}
