/**
 * Ohmmeter readings of a motor's windings through its cable.
 *
 * @module
 */
import { resistanceAtTemperature } from "../conductor/index.ts";
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Ratio, Resistance, Temperature } from "../units/index.ts";

/** Readings may differ from the nameplate or from each other by this share: common practice, no source. */
const USUAL_TOLERANCE = 0.1;

/** A reading and what it should be. */
export interface WindingReadingInput {
  /** Resistance read between two leads at the surface. 0 to 10 000 Ω. */
  readonly reading: Resistance;
  /** Resistance of the cable, there and back, at its temperature; 0 where left out. 0 to 1000 Ω. */
  readonly cable?: Resistance;
  /** Temperature of the winding: in a well, that of the water once the motor has stood an hour. 200 to 600 K. */
  readonly temperature: Temperature;
  /** Resistance of the winding by its data sheet. 0.001 to 10 000 Ω. */
  readonly expected: Resistance;
  /** Temperature for which the data sheet gives it; 20 °C where left out. 200 to 600 K. */
  readonly expectedAt?: Temperature;
  /** How far it may be off; 0.1 where left out. 0 to 1. */
  readonly tolerance?: Ratio;
}

/** What the reading says. */
export interface WindingReading {
  /** Low: turns shorted. High: a poor splice or a burnt contact. Open: a broken wire or winding. */
  readonly state: "as expected" | "low" | "high" | "open";
  /** Resistance of the winding alone at the data sheet's temperature, Ω; 0 where the cable explains all of the reading. */
  readonly winding: Resistance;
  /** Its deviation from the expected value, as a share. */
  readonly deviation: Ratio;
  /** The tolerance is common practice. */
  readonly method: "common practice";
}

/** More than this many times the expected resistance is no winding any more: common practice. */
const OPEN = 10;

/**
 * Judges a winding's resistance read at the surface.
 *
 * @remarks
 * Winding = reading − cable, carried to the data sheet's temperature on copper's line, compared with the data sheet ±10 %,
 * common practice. Disconnect and lock out first; discharge the capacitors; zero the meter's leads.
 *
 * @param input - reading and data; each field says its unit and the values it takes
 * @returns the winding's resistance and the verdict
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { windingReading } from "risingmain/motor";
 * import { celsius, ohms } from "risingmain/units";
 *
 * const read = windingReading({
 *   reading: ohms(3.1), cable: ohms(0.94), temperature: celsius(10), expected: ohms(2.2),
 * });
 * read.winding; // ≈ 2.248
 * read.state; // => "as expected"
 * ```
 *
 * @source common practice
 */
export function windingReading(input: WindingReadingInput): WindingReading {
  requireObject("input", input);
  const { reading, cable = 0, temperature, expected, expectedAt = 293.15 as Temperature } = input;
  const { tolerance = USUAL_TOLERANCE } = input;
  requireWithin("reading", reading, 0, 1e4, "Ω");
  requireWithin("cable", cable, 0, 1000, "Ω");
  requireWithin("temperature", temperature, 200, 600, "K");
  requireWithin("expected", expected, 0.001, 1e4, "Ω");
  requireWithin("expectedAt", expectedAt, 200, 600, "K");
  requireWithin("tolerance", tolerance, 0, 1, "as a ratio");
  const alone = Math.max(0, reading - cable) as Resistance;
  const winding = resistanceAtTemperature({ resistance: alone, from: temperature, to: expectedAt });
  const deviation = winding / expected - 1;
  return {
    state:
      winding > OPEN * expected
        ? "open"
        : deviation > tolerance
          ? "high"
          : deviation < -tolerance
            ? "low"
            : "as expected",
    winding,
    deviation: deviation as Ratio,
    method: "common practice",
  };
}

/** Three readings of a three-wire, single-phase motor. */
export interface ThreeWireReadingInput {
  /** Main lead to common. 0 to 10 000 Ω. */
  readonly mainToCommon: Resistance;
  /** Start lead to common. 0 to 10 000 Ω. */
  readonly startToCommon: Resistance;
  /** Main lead to start lead. 0 to 10 000 Ω. */
  readonly mainToStart: Resistance;
  /** Resistance of one cable conductor; 0 where left out. 0 to 1000 Ω. */
  readonly conductor?: Resistance;
}

/** What the three say together. */
export interface ThreeWireReading {
  /** Whether main and start add up, and the start winding is the higher one. */
  readonly state: "consistent" | "do not add up" | "leads mixed up";
  /** Main winding without the cable, Ω. */
  readonly main: Resistance;
  /** Start winding without the cable, Ω. */
  readonly start: Resistance;
  /** Reading between main and start, cable taken off, less the sum of the two windings, Ω. */
  readonly difference: Resistance;
  /** The tolerance is common practice. */
  readonly method: "common practice";
}

/**
 * Checks three readings of a three-wire motor against each other.
 *
 * @remarks
 * Through the common point, main to start is the sum of the two windings; the start winding, of thinner wire, has the higher
 * resistance. Each reading holds two cable conductors. The sum may be off by 10 %, common practice. Readings that fit in
 * another order mean that leads are mixed up.
 *
 * @param input - the three readings; each field says its unit and the values it takes
 * @returns the windings and the verdict
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { threeWireReading } from "risingmain/motor";
 * import { ohms } from "risingmain/units";
 *
 * const motor = threeWireReading({
 *   mainToCommon: ohms(2.6), startToCommon: ohms(9.4), mainToStart: ohms(11.1), conductor: ohms(0.45),
 * });
 * motor.state; // => "consistent"
 * motor.main; // ≈ 1.7
 * ```
 *
 * @source common practice
 */
export function threeWireReading(input: ThreeWireReadingInput): ThreeWireReading {
  requireObject("input", input);
  const { mainToCommon, startToCommon, mainToStart, conductor = 0 } = input;
  requireWithin("mainToCommon", mainToCommon, 0, 1e4, "Ω");
  requireWithin("startToCommon", startToCommon, 0, 1e4, "Ω");
  requireWithin("mainToStart", mainToStart, 0, 1e4, "Ω");
  requireWithin("conductor", conductor, 0, 1000, "Ω");
  const main = Math.max(0, mainToCommon - 2 * conductor);
  const start = Math.max(0, startToCommon - 2 * conductor);
  const both = Math.max(0, mainToStart - 2 * conductor);
  const adds = (whole: number, one: number, other: number): boolean =>
    Math.abs(whole - one - other) <= USUAL_TOLERANCE * whole;
  const inOrder = adds(both, main, start);
  const otherOrder = adds(main, both, start) || adds(start, both, main);
  return {
    state: inOrder ? (main > start ? "leads mixed up" : "consistent") : otherOrder ? "leads mixed up" : "do not add up",
    main: main as Resistance,
    start: start as Resistance,
    difference: (both - main - start) as Resistance,
    method: "common practice",
  };
}
