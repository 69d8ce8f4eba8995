/**
 * Several air-charged tanks on one line, at one level or at different ones.
 *
 * A tank that hangs higher feels a lower water pressure, so each has its own pressure at which water enters it.
 *
 * @module
 */
import { findRoot, requireList, requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { AbsolutePressure, Density, GaugePressure, Length, Volume } from "../units/index.ts";
import { requireAirCharge, requireSwitch } from "./air-charge.ts";

/** One tank of a bank. */
export interface BankTank {
  /** Whole volume. Above 0 to 10 000 m³. */
  readonly volume: Volume;
  /** Gauge pressure of the air when the tank is empty of water. From 100 Pa absolute to 100 MPa. */
  readonly precharge: GaugePressure;
  /** Height of the tank over the switch or gauge; negative where it stands lower; 0 if left out. −1000 to 1000 m. */
  readonly elevation?: Length;
}

/** Tanks on one line, and what surrounds them. */
export interface TankBank {
  /** 1 to 1000 tanks. */
  readonly tanks: readonly BankTank[];
  /** Absolute pressure of the air outside. 10 to 200 kPa. */
  readonly atmosphere: AbsolutePressure;
  /** Density of the water, for the tanks' heights. 900 to 1100 kg/m³. */
  readonly density: Density;
  /** Exponent n of p·Vⁿ = constant, 1 if left out. 1 to 1.4. */
  readonly polytropicExponent?: number;
}

/** What a bank gives between two pressures at the switch. */
export interface BankDrawdown {
  /** Water given by all tanks, m³. */
  readonly usable: Volume;
  /** Water in all tanks at the cut-out, m³. */
  readonly storedAtCutOut: Volume;
  /** Water left in all tanks at the cut-in, m³. */
  readonly remaining: Volume;
  /** Each tank's share, in the order given. */
  readonly tanks: readonly {
    /** Water it gives, m³. */
    readonly usable: Volume;
    /** Pressure at the switch at which water begins to enter it, Pa. */
    readonly opensAt: GaugePressure;
  }[];
}

/**
 * The water several tanks give between cut-out and cut-in, pressures being read at the switch.
 *
 * @remarks
 * Each tank by Boyle's law at its own level: the water pressure in a tank z higher is p − ρ g z.
 *
 * @param input - the tanks, the switch and the air outside
 * @returns the water of all and of each
 * @throws {@link units.InputError} naming the first field that is not usable
 *
 * @example Two equal tanks, one of them 20 ft up the hill with the same precharge
 * ```ts
 * import { bankDrawdown } from "risingmain/tank";
 * import { feet, inUsGallons, kilogramsPerCubicMetre, psi, standardAtmospheres, usGallons } from "risingmain/units";
 *
 * const tank = { volume: usGallons(40), precharge: psi(38) };
 * const bank = bankDrawdown({
 *   tanks: [tank, { ...tank, elevation: feet(20) }],
 *   cutIn: psi(40), cutOut: psi(60), atmosphere: standardAtmospheres(1), density: kilogramsPerCubicMetre(999.7),
 * });
 * bank.tanks.map(({ usable }) => Math.round(inUsGallons(usable) * 10) / 10); // => [10.3, 8.1]
 * ```
 *
 * @source derived: Boyle's law and the weight of the water between the levels
 */
export function bankDrawdown(
  input: TankBank & { readonly cutIn: GaugePressure; readonly cutOut: GaugePressure },
): BankDrawdown {
  const air = compileBank(input);
  const { cutIn, cutOut } = input;
  requireSwitch(cutIn, cutOut);
  const each = (pressure: number): readonly number[] => air.volume.map((_, k) => waterIn(air, k, pressure));
  const stored = each(cutOut);
  const left = each(cutIn);
  const sum = (list: readonly number[]): number => list.reduce((total, value) => total + value, 0);
  return {
    usable: (sum(stored) - sum(left)) as Volume,
    storedAtCutOut: sum(stored) as Volume,
    remaining: sum(left) as Volume,
    tanks: stored.map((full, k) => ({
      usable: (full - (left[k] as number)) as Volume,
      opensAt: air.opens[k] as GaugePressure,
    })),
  };
}

/** The water in all tanks against the gauge pressure at the switch, ready to be called often. */
export interface AirBank {
  /** Volume of each, m³. */
  readonly volume: readonly number[];
  /** V · (p₀ absolute)^(1/n) of each. */
  readonly amount: readonly number[];
  /** Gauge pressure at the switch plus this is the absolute pressure in the tank, Pa. */
  readonly offset: readonly number[];
  /** Gauge pressure at the switch at which water begins to enter each, Pa. */
  readonly opens: readonly number[];
  /** 1/n. */
  readonly power: number;
}

/** Checks a bank and makes it ready. @internal */
export function compileBank(input: TankBank, parameter = ""): AirBank {
  requireObject(parameter === "" ? "input" : parameter, input);
  const path = parameter === "" ? "" : `${parameter}.`;
  const { tanks, atmosphere, density, polytropicExponent = 1 } = input;
  requireWithin(`${path}density`, density, 900, 1100, "kg/m³");
  requireList(`${path}tanks`, tanks, 1, 1000);
  const checked = tanks.map((tank, i) => {
    requireObject(`${path}tanks[${i}]`, tank);
    const { volume, precharge, elevation = 0 } = tank;
    requireAirCharge({ volume, precharge, atmosphere, polytropicExponent }, `${path}tanks[${i}].`);
    requireWithin(`${path}tanks[${i}].elevation`, elevation, -1000, 1000, "m");
    return { volume, precharge, weight: density * STANDARD_GRAVITY * elevation };
  });
  return {
    volume: checked.map(({ volume }) => volume),
    amount: checked.map(({ volume, precharge }) => volume * (precharge + atmosphere) ** (1 / polytropicExponent)),
    offset: checked.map(({ weight }) => atmosphere - weight),
    opens: checked.map(({ precharge, weight }) => precharge + weight),
    power: 1 / polytropicExponent,
  };
}

/** Water in tank `k`, m³, at a gauge pressure at the switch. @internal */
export function waterIn(bank: AirBank, k: number, pressure: number): number {
  if (!(pressure > (bank.opens[k] as number))) return 0;
  const air = pressure + (bank.offset[k] as number);
  return (bank.volume[k] as number) - (bank.amount[k] as number) / (bank.power === 1 ? air : air ** bank.power);
}

/** Water in all tanks, m³. @internal */
export function bankWater(bank: AirBank, pressure: number): number {
  let water = 0;
  for (let k = 0; k < bank.volume.length; k++) water += waterIn(bank, k, pressure);
  return water;
}

/** Water taken up per rise of pressure, m³/Pa, by the tanks that open at or below `pressure`. @internal */
export function bankCompliance(bank: AirBank, pressure: number): number {
  const { power, opens, offset, amount } = bank;
  let slope = 0;
  for (let k = 0; k < amount.length; k++) {
    if (!(pressure >= (opens[k] as number))) continue;
    const air = pressure + (offset[k] as number);
    slope += (power * (amount[k] as number)) / (power === 1 ? air * air : air ** (power + 1));
  }
  return slope;
}

/**
 * Gauge pressure at the switch at which the tanks hold some water, at most what they hold at `highest`; the pressure at
 * which the first opens where that is none. @internal
 */
export function bankPressure(bank: AirBank, water: number, highest: number): number {
  const lowest = lowestOpening(bank);
  if (!(water > 0 && highest > lowest)) return lowest;
  if (bank.volume.length === 1) {
    const air = (bank.amount[0] as number) / ((bank.volume[0] as number) - water);
    const absolute = bank.power === 1 ? air : air ** (1 / bank.power);
    return Math.min(Math.max(absolute - (bank.offset[0] as number), lowest), highest);
  }
  const excess = (pressure: number): number => bankWater(bank, pressure) - water;
  return excess(highest) <= 0 ? highest : findRoot(excess, lowest, highest).x;
}

/** The pressure at the switch at which the first tank takes water. @internal */
export function lowestOpening(bank: AirBank): number {
  return bank.opens.reduce((low, pressure) => Math.min(low, pressure), Number.POSITIVE_INFINITY);
}
