/**
 * How much of its air a tank has lost, from two gauge readings and the water drawn between them.
 *
 * @module
 */
import { requireWithin } from "../numeric/index.ts";
import { type GaugePressure, InputError, type Ratio, type Volume } from "../units/index.ts";
import { type AirCharge, requireAirCharge } from "./air-charge.ts";
import { PRECHARGE_BELOW_CUT_IN } from "./precharge.ts";

/** A tank with the precharge it should have, and what was read at it. */
export interface AirLossInput extends AirCharge {
  /** Gauge pressure before water was drawn, the pump off. 0 to 100 MPa. */
  readonly before: GaugePressure;
  /** Gauge pressure after; less than before. 0 to 100 MPa. */
  readonly after: GaugePressure;
  /** Water drawn between the two, caught and measured. Above 0, to 10 000 m³; at least 1e-12. */
  readonly drawn: Volume;
}

/** What two readings say of a tank's air. */
export interface AirLoss {
  /**
   * - "sound": the charge is that of the precharge, to within 2 psi of reading.
   * - "air lost": less, but above the pressure of the open air.
   * - "waterlogged": no more air than an open tank would hold.
   * - "readings disagree": more water came than any charge that empties the tank at `after` could push out.
   */
  readonly state: "sound" | "air lost" | "waterlogged" | "readings disagree";
  /** Gauge pressure the air would have with the tank empty; to be held against the precharge it should have. */
  readonly equivalentPrecharge: GaugePressure;
  /** Air in the tank as a share of the charge it should have. */
  readonly airLeft: Ratio;
  /** Water a sound tank would have given between the two readings, m³. */
  readonly soundDrawdown: Volume;
}

/**
 * The air charge of a tank from two gauge readings and the water drawn between them.
 *
 * @remarks
 * p₀ + a = ΔW / V / [ (p₂ + a)^(−1/n) − (p₁ + a)^(−1/n) ], to the power n. With the pump off and nothing else running. A tank
 * whose precharge cannot be read because it cannot be emptied can still be judged so. Gauges of 2 psi divisions read a
 * small pressure drop poorly: draw enough to drop it by 10 psi or more.
 *
 * @param input - the tank as it should be, the two readings and the water drawn
 * @returns the charge it has and what state that is
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example An 85 gal tank meant to hold 38 psi: 4 gal drop it from 60 to 45 psi
 * ```ts
 * import { airLoss } from "risingmain/tank";
 * import { inPsi, psi, psia, usGallons } from "risingmain/units";
 *
 * const tank = { volume: usGallons(85), precharge: psi(38), atmosphere: psia(14.7) };
 * const loss = airLoss({ ...tank, before: psi(60), after: psi(45), drawn: usGallons(4) });
 * loss.state; // => "waterlogged"
 * inPsi(loss.equivalentPrecharge); // ≈ -0.7
 * ```
 *
 * @source derived: Boyle's law twice
 */
export function airLoss(input: AirLossInput): AirLoss {
  requireAirCharge(input);
  const { volume, precharge, atmosphere, polytropicExponent: n = 1, before, after, drawn } = input;
  requireWithin("before", before, 0, 1e8, "Pa gauge");
  requireWithin("after", after, 0, 1e8, "Pa gauge");
  requireWithin("drawn", drawn, 1e-12, 1e4, "m³");
  // Air of unit charge expands by this share of the tank from one reading to the other.
  const expansion = (after + atmosphere) ** (-1 / n) - (before + atmosphere) ** (-1 / n);
  if (!(expansion > 0)) {
    throw new InputError(
      "after",
      after,
      `a gauge pressure below the ${before} Pa before, by enough to be told from it`,
    );
  }
  const wanted = (precharge + atmosphere) ** (1 / n);
  const found = drawn / volume / expansion;
  const equivalent = found ** n - atmosphere;
  // Past any tank there is; kept finite whatever was typed.
  const equivalentPrecharge = Math.min(equivalent, 1e12) as GaugePressure;
  const airLeft = Math.min(found / wanted, 1e12) as Ratio;
  const soundDrawdown = (volume * wanted * expansion) as Volume;
  return { state: stateOf(equivalent, precharge, after), equivalentPrecharge, airLeft, soundDrawdown };
}

function stateOf(equivalent: number, precharge: number, after: number): AirLoss["state"] {
  if (equivalent > Math.max(after, precharge) + PRECHARGE_BELOW_CUT_IN) return "readings disagree";
  if (equivalent >= precharge - PRECHARGE_BELOW_CUT_IN) return "sound";
  return equivalent > 0 ? "air lost" : "waterlogged";
}
