/**
 * The water held by an air-charged tank at a pressure: the air law behind everything in this module.
 *
 * Gauge pressures come in, absolute pressures are what the air feels; they are turned over here and nowhere else.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { type AbsolutePressure, type GaugePressure, InputError, type Volume } from "../units/index.ts";

/** The smallest absolute pressure of an air charge that is accepted, Pa: below it the tank holds nothing to reckon with. */
const LEAST_AIR_PRESSURE = 100;

/** The smallest tank that is accepted, m³: a microlitre. */
const LEAST_VOLUME = 1e-9;

/** An air-charged tank and the air outside it. */
export interface AirCharge {
  /** Whole volume of the tank: the air it holds when no water is in it. 1 microlitre to 10 000 m³. */
  readonly volume: Volume;
  /**
   * Gauge pressure of the air when the tank is empty of water; 0 for a plain tank that was full of outside air. From
   * 100 Pa absolute to 100 MPa.
   */
  readonly precharge: GaugePressure;
  /** Absolute pressure of the air outside, which falls with altitude. 10 to 200 kPa. */
  readonly atmosphere: AbsolutePressure;
  /**
   * Exponent n of p·Vⁿ = constant: 1 (the default) for slow filling, when the air keeps the temperature of the water;
   * 1.4 for a change so fast that no heat passes. 1 to 1.4.
   */
  readonly polytropicExponent?: number;
}

/** The water and the air in a tank. */
export interface StoredWater {
  /** "holding water", or "empty" where the pressure is at or below the precharge. */
  readonly state: "holding water" | "empty";
  /** Water in the tank, m³. */
  readonly stored: Volume;
  /** Air in the tank, m³. */
  readonly air: Volume;
  /** Water as a share of the tank's volume, 0 to 1. */
  readonly share: number;
}

/**
 * The water an air-charged tank holds at a pressure.
 *
 * @remarks
 * w = V · (1 − ((p₀ + a) / (p + a))^(1/n)) where p > p₀, otherwise 0
 *
 * with w `stored`, V `volume`, p₀ `precharge`, p `pressure`, a `atmosphere`, n `polytropicExponent`. Exact for an ideal
 * gas; dry air departs from one by less than 0.5 % below 1 MPa. The membrane's own stiffness is left out.
 *
 * @param input - the tank, the air outside and the gauge pressure of the water (0 to 100 MPa)
 * @returns the water and the air in it
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example An 85 gal tank charged to 38 psi, at 60 psi
 * ```ts
 * import { storedWater } from "risingmain/tank";
 * import { inUsGallons, psi, standardAtmospheres, usGallons } from "risingmain/units";
 *
 * const tank = { volume: usGallons(85), precharge: psi(38), atmosphere: standardAtmospheres(1) };
 * inUsGallons(storedWater({ ...tank, pressure: psi(60) }).stored); // ≈ 25.0
 * ```
 *
 * @source derived: Boyle's law, and its polytropic form, on the air in the tank
 */
export function storedWater(input: AirCharge & { readonly pressure: GaugePressure }): StoredWater {
  requireAirCharge(input);
  const { volume, precharge, atmosphere, pressure, polytropicExponent = 1 } = input;
  requireWithin("pressure", pressure, 0, 1e8, "Pa gauge");
  const share = waterShare(precharge + atmosphere, pressure + atmosphere, polytropicExponent);
  return {
    state: share > 0 ? "holding water" : "empty",
    stored: (volume * share) as Volume,
    air: (volume * (1 - share)) as Volume,
    share,
  };
}

/** Share of a tank that water fills, from absolute pressures; 0 below the precharge. @internal */
export function waterShare(prechargeAbsolute: number, absolute: number, exponent: number): number {
  if (!(absolute > prechargeAbsolute)) return 0;
  const ratio = prechargeAbsolute / absolute;
  return 1 - (exponent === 1 ? ratio : ratio ** (1 / exponent));
}

/** Refuses a tank that is not one; `path` goes before the names of its fields. @internal */
export function requireAirCharge(input: AirCharge, path = ""): void {
  requireObject(path === "" ? "input" : path.slice(0, -1), input);
  const { volume, precharge, atmosphere, polytropicExponent = 1 } = input;
  requireWithin(`${path}volume`, volume, LEAST_VOLUME, 1e4, "m³");
  requireWithin("atmosphere", atmosphere, 1e4, 2e5, "Pa absolute");
  requireWithin(`${path}precharge`, precharge, -2e5, 1e8, "Pa gauge");
  if (!(precharge + atmosphere >= LEAST_AIR_PRESSURE)) {
    throw new InputError(
      `${path}precharge`,
      precharge,
      `a gauge pressure that leaves ${LEAST_AIR_PRESSURE} Pa absolute`,
    );
  }
  requireWithin("polytropicExponent", polytropicExponent, 1, 1.4, "");
}

/** Refuses a pair of switch pressures that does not open above where it closes. @internal */
export function requireSwitch(cutIn: unknown, cutOut: unknown): void {
  requireWithin("cutIn", cutIn, 0, 1e8, "Pa gauge");
  requireWithin("cutOut", cutOut, 0, 1e8, "Pa gauge");
  if (!((cutOut as number) > (cutIn as number))) {
    throw new InputError("cutOut", cutOut, `a gauge pressure above the cut-in of ${cutIn} Pa`);
  }
}
