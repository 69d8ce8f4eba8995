/**
 * The longest run that a conductor serves within a limit of voltage drop.
 *
 * @module
 */
import { requireList, requireObject } from "../numeric/index.ts";
import { InputError, type Length, type Ratio, type Resistance, type Voltage } from "../units/index.ts";
import { type CircuitSegment, type ConductorOhms, lineFactor, readSegments, readSource } from "./circuit.ts";
import { type VoltageDropInput, voltageDrop } from "./voltage-drop.ts";

/** A conductor and the drop allowed. */
export interface LongestLengthInput extends Omit<VoltageDropInput, "segments"> {
  /** The conductor; its joints count once, whatever the length. */
  readonly conductor: Omit<CircuitSegment, "length">;
  /** Greatest drop from source to load as a share of the nominal voltage. Above 0, below 1. */
  readonly dropLimit: Ratio;
  /** Segments of the circuit that are already settled; they take their part of the drop. 0 to 998. */
  readonly settled?: readonly CircuitSegment[];
}

/** How far the conductor reaches. */
export type LongestLength =
  | {
      /** The limit is reached at a length. */
      readonly state: "limited";
      /** Longest one-way length, m. */
      readonly length: Length;
    }
  | {
      /** The conductor takes nothing, or so little that the limit is not reached within 100 km. */
      readonly state: "unlimited";
    }
  | {
      /** What is settled already takes more than the limit. */
      readonly state: "limit already exceeded";
      /** What it exceeds the limit by, V; null where the settled part cannot carry the current at all. */
      readonly excess: Voltage | null;
    };

/** Longest run accepted elsewhere in this module, m. */
const LONGEST = 1e5;

/**
 * The longest one-way run of a conductor within a limit of voltage drop.
 *
 * @remarks
 * The sending-end equation of {@link voltageDrop}, with the load voltage set by the limit, is a quadratic in the length; the
 * positive root is returned. Exact.
 *
 * @param input - conductor, load and limit; each field says its unit and the values it takes
 * @returns the length, or why there is none
 * @throws InputError naming the first field that is not in its range
 *
 * @example A 10 A motor at 230 V on 10 AWG copper, 5 %
 * ```ts
 * import { conductorResistance, longestLength } from "risingmain/conductor";
 * import { amperes, inFeet, percent, ratio, volts } from "risingmain/units";
 *
 * const reach = longestLength({
 *   system: "single-phase", sourceVoltage: volts(230), current: amperes(10), powerFactor: ratio(1),
 *   dropLimit: percent(5), conductor: conductorResistance({ size: "10 AWG" }),
 * });
 * if (reach.state !== "limited") throw new Error(reach.state);
 * inFeet(reach.length); // ≈ 463.7
 * ```
 *
 * @source derived: the sending-end equation solved for the length
 */
export function longestLength(input: LongestLengthInput): LongestLength {
  requireObject("input", input);
  const { conductor, dropLimit, settled = [], system, sourceVoltage, current, powerFactor } = input;
  requireObject("conductor", conductor);
  requireList("settled", settled, 0, 998);
  if (!(typeof dropLimit === "number" && dropLimit > 0 && dropLimit < 1)) {
    throw new InputError("dropLimit", dropLimit, "a share above 0 and below 1, such as 0.05 for 5 %");
  }
  // At length 0 the conductor still brings its joints; this call also checks every field.
  const fixed = [...settled, { ...conductor, length: 0 as Length }];
  const before = voltageDrop({ ...input, segments: fixed });
  const { nominalVoltage = sourceVoltage } = input;
  const allowed = dropLimit * nominalVoltage;
  if (before.state === "collapsed") return { state: "limit already exceeded", excess: null };
  if (before.drop > allowed) return { state: "limit already exceeded", excess: (before.drop - allowed) as Voltage };
  const loadVoltage = sourceVoltage - allowed;
  if (loadVoltage < 0)
    throw new InputError("dropLimit", dropLimit, "a limit that leaves the load some of the source voltage");

  const k = lineFactor(system) * current;
  const sine = Math.sqrt(1 - powerFactor * powerFactor);
  const inside = readSource("source", input.source, system);
  const sum = readSegments("segments", fixed, system).reduce((a, b) => ({ r: a.r + b.r, x: a.x + b.x }), {
    r: 0,
    x: 0,
  });
  const { r, x } = { r: k * sum.r + current * inside.r, x: k * sum.x + current * inside.x };
  // Per metre of the conductor, and of what is settled: along the load voltage, and across it.
  const metre = { ...conductor, length: 1 as Length, joints: 0 as Resistance };
  const [perMetre] = readSegments("conductor", [metre], system) as [ConductorOhms];
  const a = k * (perMetre.r * powerFactor + perMetre.x * sine);
  const b = k * (perMetre.x * powerFactor - perMetre.r * sine);
  const along = loadVoltage + r * powerFactor + x * sine;
  const across = x * powerFactor - r * sine;

  // (along + a L)² + (across + b L)² = Vs²: square·L² + 2 half·L − rest = 0 with rest ≥ 0.
  const square = a * a + b * b;
  const half = along * a + across * b;
  const rest = Math.max(0, (sourceVoltage - along) * (sourceVoltage + along) - across * across);
  const root = Math.sqrt(half * half + square * rest);
  // Of the two forms of the root, the one that does not subtract: half is load voltage · a and products of ohms, none
  // below 0. A conductor that takes nothing leaves NaN or Infinity.
  const length = rest / (half + root);
  if (!(length <= LONGEST)) return { state: "unlimited" };
  return { state: "limited", length: length as Length };
}
