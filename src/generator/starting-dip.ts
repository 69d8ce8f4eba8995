/**
 * Dip of a generator's voltage by the reactive divider, and the generator that a dip limit asks for.
 *
 * The full circuit, with conductors and power factors, is in `generator-check.ts`.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { ApparentPower, Ratio } from "../units/index.ts";

/** A generator and a motor about to start. */
export interface StartingDipInput {
  /** Rated apparent power of the generator. 1 VA to 100 MVA. */
  readonly generatorPower: ApparentPower;
  /** Transient reactance as a share of its rated impedance. 0.01 to 1. */
  readonly transientReactance: Ratio;
  /** Locked-rotor apparent power of the motor at rated voltage. 0 to 100 MVA. */
  readonly startingPower: ApparentPower;
}

/**
 * Dip of a generator's voltage as a motor starts at its terminals, by the reactive divider.
 *
 * @remarks
 * dip = x s / (1 + x s), with x the transient reactance and s the starting over the rated apparent power: generator and motor
 * as two reactances in series. On the safe side, since the motor's resistance and the conductors make the dip smaller.
 *
 * @param input - generator and motor; each field says its unit and the values it takes
 * @returns the dip as a share of the voltage
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { startingDip } from "risingmain/generator";
 * import { inPercent, kilovoltAmperes, ratio } from "risingmain/units";
 *
 * const dip = startingDip({
 *   generatorPower: kilovoltAmperes(9.375), transientReactance: ratio(0.2), startingPower: kilovoltAmperes(12.75),
 * });
 * inPercent(dip); // ≈ 21.4
 * ```
 *
 * @source derived: two reactances in series
 */
export function startingDip(input: StartingDipInput): Ratio {
  requireObject("input", input);
  const { generatorPower, transientReactance, startingPower } = input;
  requireWithin("generatorPower", generatorPower, 1, 1e8, "VA");
  requireWithin("transientReactance", transientReactance, 0.01, 1, "as a ratio");
  requireWithin("startingPower", startingPower, 0, 1e8, "VA");
  const share = (transientReactance * startingPower) / generatorPower;
  return (share / (1 + share)) as Ratio;
}

/** A dip limit and a motor. */
export interface GeneratorForDipInput {
  /** Greatest dip allowed as a share of the voltage. 0.01 to 0.9. */
  readonly dip: Ratio;
  /** Transient reactance as a share of the generator's rated impedance. 0.01 to 1. */
  readonly transientReactance: Ratio;
  /** Locked-rotor apparent power of the motor at rated voltage. 0 to 100 MVA. */
  readonly startingPower: ApparentPower;
}

/**
 * Rated apparent power of the generator that keeps a starting dip, by the reactive divider.
 *
 * @remarks
 * S = x S_start (1 − dip) / dip, {@link startingDip} solved for the generator.
 *
 * @param input - dip limit and motor; each field says its unit and the values it takes
 * @returns the generator's rated apparent power, VA
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { generatorForDip } from "risingmain/generator";
 * import { inKilovoltAmperes, kilovoltAmperes, percent, ratio } from "risingmain/units";
 *
 * const size = generatorForDip({
 *   dip: percent(30), transientReactance: ratio(0.2), startingPower: kilovoltAmperes(12.75),
 * });
 * inKilovoltAmperes(size); // ≈ 5.95
 * ```
 *
 * @source derived: two reactances in series
 */
export function generatorForDip(input: GeneratorForDipInput): ApparentPower {
  requireObject("input", input);
  const { dip, transientReactance, startingPower } = input;
  requireWithin("dip", dip, 0.01, 0.9, "as a ratio");
  requireWithin("transientReactance", transientReactance, 0.01, 1, "as a ratio");
  requireWithin("startingPower", startingPower, 0, 1e8, "VA");
  return ((transientReactance * startingPower * (1 - dip)) / dip) as ApparentPower;
}

/** A starting capability as a data sheet states it. */
export interface ReactanceFromCapabilityInput {
  /** Rated apparent power of the generator. 1 VA to 100 MVA. */
  readonly generatorPower: ApparentPower;
  /** Locked-rotor apparent power it starts. 1 VA to 1 GVA. */
  readonly startingPower: ApparentPower;
  /** Dip at which it does. 0.01 to 0.9. */
  readonly dip: Ratio;
}

/**
 * Transient reactance that a published starting capability stands for.
 *
 * @remarks
 * x = dip / (1 − dip) · S / S_start. A data sheet that says "22 kVA at 30 % dip" then serves {@link generatorCheck}.
 *
 * @param input - rating and capability; each field says its unit and the values it takes
 * @returns the transient reactance as a share of the rated impedance
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { reactanceFromCapability } from "risingmain/generator";
 * import { kilovoltAmperes, percent } from "risingmain/units";
 *
 * reactanceFromCapability({
 *   generatorPower: kilovoltAmperes(10), startingPower: kilovoltAmperes(22), dip: percent(30),
 * }); // ≈ 0.195
 * ```
 *
 * @source derived: two reactances in series
 */
export function reactanceFromCapability(input: ReactanceFromCapabilityInput): Ratio {
  requireObject("input", input);
  const { generatorPower, startingPower, dip } = input;
  requireWithin("generatorPower", generatorPower, 1, 1e8, "VA");
  requireWithin("startingPower", startingPower, 1, 1e9, "VA");
  requireWithin("dip", dip, 0.01, 0.9, "as a ratio");
  return (((dip / (1 - dip)) * generatorPower) / startingPower) as Ratio;
}
