/**
 * The energy in a tank's compressed air: why a tank is never tested with air.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { AbsolutePressure, Energy, GaugePressure, Volume } from "../units/index.ts";

/** Ratio of the specific heats of air, for an expansion too quick to take up heat (common practice). */
const RATIO_OF_HEATS = 1.4;

/** Warnings that go with compressed air in a tank. */
const AIR_CAUTIONS: readonly Caution[] = [
  {
    code: "no-air-test",
    text: "Never test a tank or piping with compressed air: the energy stored in air kills when a part lets go.",
    basis: "common practice",
  },
];

/** Air under pressure. */
export interface AirEnergyInput {
  /** Volume of the air. 0 to 10 000 m³. */
  readonly air: Volume;
  /** Its gauge pressure. 0 to 100 MPa. */
  readonly pressure: GaugePressure;
  /** Absolute pressure of the air outside. 10 to 200 kPa. */
  readonly atmosphere: AbsolutePressure;
}

/** What the air can give, and what to say with it. */
export interface AirEnergy {
  /** Energy of the air let out at once, J. */
  readonly energy: Energy;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

/**
 * The energy that compressed air sets free when a tank bursts.
 *
 * @remarks
 * E = p V / (γ − 1) · [1 − (a / p)^((γ − 1)/γ)] with p the absolute pressure, γ = 1.4: an isentropic expansion to the
 * outside, the most that can come free.
 *
 * @param input - volume and pressure of the air, and the air outside
 * @returns the energy and the caution to show with it
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example The air of a 120 gal tank, 40 % air at 75 psi
 * ```ts
 * import { airEnergy } from "risingmain/tank";
 * import { psi, psia, usGallons } from "risingmain/units";
 *
 * airEnergy({ air: usGallons(48), pressure: psi(75), atmosphere: psia(14.7) }).energy; // ≈ 113369.6
 * ```
 *
 * @source derived: isentropic expansion of an ideal gas
 */
export function airEnergy(input: AirEnergyInput): AirEnergy {
  requireObject("input", input);
  const { air, pressure, atmosphere } = input;
  requireWithin("air", air, 0, 1e4, "m³");
  requireWithin("pressure", pressure, 0, 1e8, "Pa gauge");
  requireWithin("atmosphere", atmosphere, 1e4, 2e5, "Pa absolute");
  const absolute = pressure + atmosphere;
  const left = (atmosphere / absolute) ** ((RATIO_OF_HEATS - 1) / RATIO_OF_HEATS);
  const energy = ((absolute * air) / (RATIO_OF_HEATS - 1)) * (1 - left);
  return { energy: energy as Energy, cautions: AIR_CAUTIONS };
}
