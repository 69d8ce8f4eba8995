/**
 * The water an air-charged tank gives between the pump's stop and its start.
 *
 * @module
 */
import { requireWithin } from "../numeric/index.ts";
import type { GaugePressure, Volume } from "../units/index.ts";
import { type AirCharge, requireAirCharge, requireSwitch, waterShare } from "./air-charge.ts";
import { LOWEST_PRECHARGE_BELOW_CUT_IN, recommendedPrecharge } from "./precharge.ts";

/** A tank and the pressures it works between. */
export interface TankDrawdownInput extends AirCharge {
  /** Gauge pressure at which the pump starts, at the tank. 0 to 100 MPa. */
  readonly cutIn: GaugePressure;
  /** Gauge pressure at which the pump stops, at the tank; above the cut-in. Up to 100 MPa. */
  readonly cutOut: GaugePressure;
  /** Most water the membrane can take, as a share of the tank's volume; 1 (the default) for no limit. Above 0 to 1. */
  readonly largestShare?: number;
}

/**
 * How the precharge sits against the cut-in.
 *
 * - "right": at the cut-in or up to 4 psi below it.
 * - "too low": more than that below; water lies in the tank that is never used, and the membrane is stretched.
 * - "too high": above the cut-in; the tank runs empty first, and the pressure drops at once before the pump starts.
 * - "no water enters": at or above the cut-out.
 */
export type PrechargeState = "right" | "too low" | "too high" | "no water enters";

/** What a tank gives, and what stays in it. */
export interface TankDrawdown {
  /** Water given from cut-out to cut-in, m³: the drawdown. */
  readonly usable: Volume;
  /** The usable water as a share of the tank's volume: the acceptance factor. */
  readonly acceptance: number;
  /** Water in the tank at cut-out, m³. */
  readonly storedAtCutOut: Volume;
  /** Water still in the tank at cut-in, m³; 0 where the precharge is above the cut-in. */
  readonly remaining: Volume;
  /** How the precharge sits against the cut-in. */
  readonly precharge: PrechargeState;
  /** The precharge practice asks for: 2 psi below the cut-in. */
  readonly recommendedPrecharge: GaugePressure;
  /** The usable water the same tank would give with the recommended precharge, m³. */
  readonly usableAtRecommended: Volume;
  /** True where the membrane's limit, and not the air, ends the filling before the cut-out. */
  readonly limitedByMembrane: boolean;
  /** The id of the rule that gave the recommended precharge. */
  readonly method: "water-systems-council-2007";
}

/**
 * The water an air-charged tank gives between cut-out and cut-in, and what the precharge does to it.
 *
 * @remarks
 * usable = V · [ ((p₀ + a)/(p_in + a))^(1/n) − ((p₀ + a)/(p_out + a))^(1/n) ] with p₀ ≤ p_in
 *
 * with V `volume`, p₀ `precharge`, p_in `cutIn`, p_out `cutOut`, a `atmosphere`, n `polytropicExponent`. Absolute
 * pressures: with gauge pressures Boyle's law gives about a quarter too much. A precharge above the cut-in lets the
 * tank run empty before the pump starts, so all it stored is given, and then the pressure collapses: it says so.
 * Exact for an ideal gas at the temperature of the filling; a heated or cooled charge is {@link prechargeAtTemperature}.
 *
 * @param input - the tank, the switch and the air outside; each field says its unit and the values it takes
 * @returns usable, stored and remaining water, and the state of the precharge
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example An 85 gal tank, 28 psi precharge, on a 30/50 psi switch at sea level
 * ```ts
 * import { tankDrawdown } from "risingmain/tank";
 * import { inUsGallons, psi, psia, usGallons } from "risingmain/units";
 *
 * const tank = { volume: usGallons(85), precharge: psi(28), atmosphere: psia(14.7) };
 * const drawdown = tankDrawdown({ ...tank, cutIn: psi(30), cutOut: psi(50) });
 * inUsGallons(drawdown.usable); // ≈ 25.1
 * drawdown.precharge; // => "right"
 * ```
 *
 * @source pelikan-2006, example 1
 * @source water-systems-council-2007, p. 3: the recommended precharge
 */
export function tankDrawdown(input: TankDrawdownInput): TankDrawdown {
  requireAirCharge(input);
  const { volume, precharge, atmosphere, polytropicExponent: n = 1, cutIn, cutOut, largestShare = 1 } = input;
  requireSwitch(cutIn, cutOut);
  requireWithin("largestShare", largestShare, Number.MIN_VALUE, 1, "");

  const shareAt = (air: number, pressure: number): number => waterShare(air + atmosphere, pressure + atmosphere, n);
  const usableShare = (air: number): number =>
    Math.max(0, Math.min(largestShare, shareAt(air, cutOut)) - shareAt(air, cutIn));
  const atCutOut = Math.min(largestShare, shareAt(precharge, cutOut));
  const atCutIn = Math.min(atCutOut, shareAt(precharge, cutIn));
  const recommended = recommendedPrecharge(cutIn);
  const acceptance = atCutOut - atCutIn;

  return {
    usable: (volume * acceptance) as Volume,
    acceptance,
    storedAtCutOut: (volume * atCutOut) as Volume,
    remaining: (volume * atCutIn) as Volume,
    precharge: prechargeState(precharge, cutIn, cutOut),
    recommendedPrecharge: recommended,
    usableAtRecommended: (volume * usableShare(recommended)) as Volume,
    limitedByMembrane: shareAt(precharge, cutOut) > largestShare,
    method: "water-systems-council-2007",
  };
}

function prechargeState(precharge: number, cutIn: number, cutOut: number): PrechargeState {
  if (precharge >= cutOut) return "no water enters";
  if (precharge > cutIn) return "too high";
  return precharge >= cutIn - LOWEST_PRECHARGE_BELOW_CUT_IN ? "right" : "too low";
}
