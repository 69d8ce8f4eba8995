/**
 * Resistance of a wire from its metal, area, length and temperature: the law behind every wire table.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Area, Length, Resistance, Temperature } from "../units/index.ts";
import { CONDUCTOR_MATERIALS, type ConductorMaterial, conductorMetals } from "./material.ts";
import { resistanceAtTemperature } from "./resistance-at-temperature.ts";

/** 20 °C, at which resistivities are stated, K. */
const TWENTY_CELSIUS = 293.15;

/** A wire of one metal. */
export interface WireResistanceInput {
  /** Metal of the conductor. */
  readonly material: ConductorMaterial;
  /** Area of metal. Above 0, at most 1 m². */
  readonly area: Area;
  /** Length along the metal, there and back where a loop is meant. 0 to 1 000 000 m. */
  readonly length: Length;
  /** Temperature of the metal; 20 °C where left out. 200 to 600 K. */
  readonly temperature?: Temperature;
  /** Resistivity at 20 °C, Ω·m, where the metal is not standard annealed copper or 61 % aluminium. 1e-9 to 1e-5. */
  readonly resistivityAt20?: number;
}

/**
 * Resistance of a wire from its metal, area and length.
 *
 * @remarks
 * R = ρ₂₀ · L / A · (1 + α₂₀ (t − 20 °C)), with ρ₂₀ 1/58 Ω·mm²/m for standard annealed copper and α₂₀ 0.00393 per kelvin.
 * Good to 0.3 % for solid wire of that copper; a stranded conductor has about 2 % more resistance than its area suggests,
 * since its strands run in a helix.
 *
 * @param input - the wire; each field says its unit and the values it takes
 * @returns the direct-current resistance, Ω
 * @throws InputError naming the first field that is not in its range
 *
 * @example Solid 12 AWG copper, 1000 ft at 20 °C
 * ```ts
 * import { conductorGeometry, wireResistance } from "risingmain/conductor";
 * import { feet } from "risingmain/units";
 *
 * wireResistance({ material: "copper", area: conductorGeometry("12 AWG").area, length: feet(1000) }); // ≈ 1.588
 * ```
 *
 * @source iec-60028, resistivity and temperature coefficient of standard annealed copper
 */
export function wireResistance(input: WireResistanceInput): Resistance {
  requireObject("input", input);
  const { material, area, length, temperature = TWENTY_CELSIUS as Temperature } = input;
  requireOneOf("material", material, CONDUCTOR_MATERIALS);
  const { resistivityAt20 = conductorMetals[material].resistivityAt20 } = input;
  requireWithin("area", area, 1e-12, 1, "m²");
  requireWithin("length", length, 0, 1e6, "m");
  requireWithin("resistivityAt20", resistivityAt20, 1e-9, 1e-5, "Ω·m");
  const cold = ((resistivityAt20 * length) / area) as Resistance;
  return resistanceAtTemperature({ resistance: cold, from: TWENTY_CELSIUS as Temperature, to: temperature, material });
}
