/**
 * The conventional tank: air over water with nothing between, and a seal of water that keeps the air in.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { AbsolutePressure, GaugePressure, Length, Volume } from "../units/index.ts";
import { type AirCharge, requireAirCharge, requireSwitch, waterShare } from "./air-charge.ts";

/** A conventional tank; its precharge is the gauge pressure the same air would have with the tank empty of water. */
export interface AirOverWaterInput extends AirCharge {
  /** Gauge pressure at which the pump starts. 0 to 100 MPa. */
  readonly cutIn: GaugePressure;
  /** Gauge pressure at which the pump stops. Up to 100 MPa. */
  readonly cutOut: GaugePressure;
  /** Water that must stay over the outlet so that no air leaves with it. 0 to the tank's volume. */
  readonly seal: Volume;
}

/** What a conventional tank gives. */
export interface AirOverWaterDrawdown {
  /** "sealed", or "air escapes" where the air would reach the outlet before the pump starts. */
  readonly state: "sealed" | "air escapes";
  /** Water given from cut-out to cut-in, the seal left in, m³. */
  readonly usable: Volume;
  /** Usable water as a share of the tank's volume. */
  readonly acceptance: number;
  /** Water in the tank at cut-out, m³. */
  readonly storedAtCutOut: Volume;
  /** Water in it at cut-in, before any air escapes, m³. */
  readonly remaining: Volume;
}

/**
 * The water a conventional air-over-water tank gives between cut-out and cut-in.
 *
 * @remarks
 * Boyle's law as in {@link tankDrawdown}. A plain tank closed with outside air in it has `precharge` 0: it gives a third of what
 * the same tank gives with the air charge kept at the cut-in. Air dissolves and is lost until it is renewed.
 *
 * @param input - the tank, its air, the switch and the seal
 * @returns the usable water, and whether the seal holds
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A 120 gal plain tank that was full of outside air, 30/50 psi
 * ```ts
 * import { airOverWaterDrawdown } from "risingmain/tank";
 * import { inUsGallons, psi, psia, usGallons } from "risingmain/units";
 *
 * const tank = { volume: usGallons(120), precharge: psi(0), atmosphere: psia(14.7), seal: usGallons(10) };
 * inUsGallons(airOverWaterDrawdown({ ...tank, cutIn: psi(30), cutOut: psi(50) }).usable); // ≈ 12.2
 * ```
 *
 * @source derived: Boyle's law
 */
export function airOverWaterDrawdown(input: AirOverWaterInput): AirOverWaterDrawdown {
  requireAirCharge(input);
  const { volume, precharge, atmosphere, polytropicExponent: n = 1, cutIn, cutOut, seal } = input;
  requireSwitch(cutIn, cutOut);
  requireWithin("seal", seal, 0, volume, "m³, the tank's volume");
  const storedAt = (pressure: number): number => volume * waterShare(precharge + atmosphere, pressure + atmosphere, n);
  const stored = storedAt(cutOut);
  const remaining = storedAt(cutIn);
  const usable = Math.max(0, stored - Math.max(remaining, seal));
  return {
    state: remaining >= seal && precharge <= cutIn ? "sealed" : "air escapes",
    usable: usable as Volume,
    acceptance: usable / volume,
    storedAtCutOut: stored as Volume,
    remaining: remaining as Volume,
  };
}

/** What a conventional tank must give, and between what. */
export interface AirOverWaterSizeInput {
  /** Usable water wanted. 0 to 10 000 m³. */
  readonly usable: Volume;
  /** Gauge pressure at which the pump starts. 0 to 100 MPa. */
  readonly cutIn: GaugePressure;
  /** Gauge pressure at which the pump stops. Up to 100 MPa. */
  readonly cutOut: GaugePressure;
  /** Absolute pressure of the air outside. 10 to 200 kPa. */
  readonly atmosphere: AbsolutePressure;
  /** Water that must stay over the outlet. 0 to 10 000 m³. */
  readonly seal: Volume;
}

/**
 * The volume of a conventional tank whose air is kept down to the seal at cut-in.
 *
 * @remarks
 * V = W · (p_out + a) / (p_out − p_in) + seal, the best a conventional tank can do.
 *
 * @param input - usable water, switch, air outside and seal
 * @returns whole volume of the tank
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example Six starts an hour of a 25 gpm pump at 40/60 psi, 36 in tank with a 6 in seal
 * ```ts
 * import { airOverWaterSize, waterSeal } from "risingmain/tank";
 * import { inches, inUsGallons, psi, psia, usGallons } from "risingmain/units";
 *
 * const size = airOverWaterSize({
 *   usable: usGallons((15 * 25) / 6), cutIn: psi(40), cutOut: psi(60), atmosphere: psia(14.7),
 *   seal: waterSeal({ diameter: inches(36), depth: inches(6) }),
 * });
 * inUsGallons(size); // ≈ 259.9
 * ```
 *
 * @source washington-state-department-2009, section 11.1.2, equation 11-2
 */
export function airOverWaterSize(input: AirOverWaterSizeInput): Volume {
  requireObject("input", input);
  const { usable, cutIn, cutOut, atmosphere, seal } = input;
  requireWithin("usable", usable, 0, 1e4, "m³");
  requireSwitch(cutIn, cutOut);
  requireWithin("atmosphere", atmosphere, 1e4, 2e5, "Pa absolute");
  requireWithin("seal", seal, 0, 1e4, "m³");
  // A differential of no size asks for a tank of no bound.
  requireWithin("cutOut - cutIn", cutOut - cutIn, 1, 1e8, "Pa");
  return (usable * ((cutOut + atmosphere) / (cutOut - cutIn)) + seal) as Volume;
}

/**
 * The water in the bottom of an upright round tank.
 *
 * @param input - inside diameter (0 to 100 m) and depth of the water (0 to 100 m)
 * @returns its volume
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A 6 in seal in a 36 in tank
 * ```ts
 * import { waterSeal } from "risingmain/tank";
 * import { inches, inUsGallons } from "risingmain/units";
 *
 * inUsGallons(waterSeal({ diameter: inches(36), depth: inches(6) })); // ≈ 26.4
 * ```
 *
 * @source derived: a cylinder
 */
export function waterSeal(input: { readonly diameter: Length; readonly depth: Length }): Volume {
  requireObject("input", input);
  requireWithin("diameter", input.diameter, 0, 100, "m");
  requireWithin("depth", input.depth, 0, 100, "m");
  return ((Math.PI / 4) * input.diameter * input.diameter * input.depth) as Volume;
}
