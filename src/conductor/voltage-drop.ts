/**
 * Voltage lost in the conductors between a source and one load: the exact phasor form, over segments in series.
 *
 * The shortcuts of the trade are in `approximate-drops.ts`, several loads on one run in `run-with-loads.ts`, a motor standing
 * still in `locked-rotor-drop.ts`.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { type Current, InputError, type Power, type Ratio, type Voltage } from "../units/index.ts";
import {
  type CircuitSegment,
  conductorCount,
  lineFactor,
  readSegments,
  readSource,
  requireSystem,
  type SourceImpedance,
  type SupplySystem,
} from "./circuit.ts";

/** A source, conductors in series and one load at their end. */
export interface VoltageDropInput {
  /** How the circuit is fed. */
  readonly system: SupplySystem;
  /** Voltage at the source, line to line for three-phase; where `source` is given, with nothing connected. 0.1 to 1000 V. */
  readonly sourceVoltage: Voltage;
  /** The source's own impedance, where it is to count; none where left out. */
  readonly source?: SourceImpedance;
  /** Current of the load in each line. 0 to 10 000 A. */
  readonly current: Current;
  /** Power factor of the load, lagging, as a ratio. 0 to 1; 1 for direct current. */
  readonly powerFactor: Ratio;
  /** The conductors from source to load, in order. 1 to 1000. */
  readonly segments: readonly CircuitSegment[];
  /** Voltage that percentages refer to; the source voltage where left out. 0.1 to 1000 V. */
  readonly nominalVoltage?: Voltage;
}

/** One segment's share. */
export interface SegmentDrop {
  /** Voltage at the segment's source end less that at its load end, V. */
  readonly drop: Voltage;
  /** Voltage at its load end, V. */
  readonly voltage: Voltage;
}

/** The load is fed, at a lower voltage than the source. */
export interface CarriedDrop {
  /** The conductors carry the current. */
  readonly state: "carried";
  /** Source voltage less load voltage, as a voltmeter at each end reads them, V. */
  readonly drop: Voltage;
  /** The drop as a share of the nominal voltage. */
  readonly share: Ratio;
  /** Voltage at the load, V. */
  readonly loadVoltage: Voltage;
  /** The part in phase with the load voltage, I (R cos φ + X sin φ): what the usual formula gives, V. */
  readonly inPhase: Voltage;
  /** The part of that due to resistance alone, I R cos φ, V. */
  readonly resistive: Voltage;
  /** Heat lost in all conductors, W; not that lost inside the source. */
  readonly loss: Power;
  /** The part lost inside the source, V; 0 where it has no impedance. */
  readonly sourceDrop: Voltage;
  /** Each segment's share, in order; with `sourceDrop` they add up to the drop. */
  readonly segments: readonly SegmentDrop[];
  /** How it was worked out. */
  readonly method: "phasor";
}

/** The conductors cannot carry that current: they would need more than the whole source voltage. */
export interface CollapsedDrop {
  /** The conductors would need more than the source has. */
  readonly state: "collapsed";
  /** Voltage that the conductors alone would take, V. */
  readonly needed: Voltage;
  /** The source voltage, V. */
  readonly available: Voltage;
}

/** What becomes of the voltage on its way. */
export type VoltageDrop = CarriedDrop | CollapsedDrop;

/**
 * Voltage lost between a source and one load, exactly, over conductors in series.
 *
 * @remarks
 * With the load voltage V as reference and k = 2 (two wires) or √3 (three-phase, line to line), the sending-end equation is
 * Vs² = (V + k I (R cos φ + X sin φ))² + (k I (X cos φ − R sin φ))², solved for V in closed form.
 * R and X are one conductor's ohms summed over the segments (the source's own are added). Exact for steady sine waves, balanced phases and a
 * power factor taken at the load; the usual formula, its `inPhase` part, is a little low.
 *
 * @param input - source, load and conductors; each field says its unit and the values it takes
 * @returns the drop with its parts, or `"collapsed"` where the conductors would need more than the source has
 * @throws InputError naming the first field that is not in its range
 *
 * @example A 10 A pump motor on 150 ft of 10 AWG and 300 ft of 12 AWG
 * ```ts
 * import { conductorResistance, voltageDrop } from "risingmain/conductor";
 * import { amperes, feet, inPercent, ratio, volts } from "risingmain/units";
 *
 * const circuit = voltageDrop({
 *   system: "single-phase", sourceVoltage: volts(230), current: amperes(10), powerFactor: ratio(1),
 *   segments: [
 *     { length: feet(150), ...conductorResistance({ size: "10 AWG" }) },
 *     { length: feet(300), ...conductorResistance({ size: "12 AWG" }) },
 *   ],
 * });
 * if (circuit.state !== "carried") throw new Error(circuit.state);
 * circuit.loadVoltage; // ≈ 214.4
 * inPercent(circuit.share); // ≈ 6.783
 * ```
 *
 * @source derived: Kirchhoff's laws for sine waves
 */
export function voltageDrop(input: VoltageDropInput): VoltageDrop {
  requireObject("input", input);
  const { system, sourceVoltage, current, powerFactor, segments, nominalVoltage = sourceVoltage } = input;
  requireSystem(system);
  requireWithin("sourceVoltage", sourceVoltage, 0.1, 1000, "V");
  requireWithin("current", current, 0, 1e4, "A");
  requireWithin("powerFactor", powerFactor, 0, 1, "as a ratio");
  if (system === "direct current" && powerFactor !== 1) {
    throw new InputError("powerFactor", powerFactor, "1 for direct current");
  }
  const inside = readSource("source", input.source, system);
  const ohms = readSegments("segments", segments, system);
  requireWithin("nominalVoltage", nominalVoltage, 0.1, 1000, "V");

  const k = lineFactor(system);
  const sine = Math.sqrt(1 - powerFactor * powerFactor);
  // Voltage along each segment, in phase with the load voltage and across it.
  const steps = [inside, ...ohms.map(({ r, x }) => ({ r: k * r, x: k * x }))].map(({ r, x }) => ({
    along: current * (r * powerFactor + x * sine),
    across: current * (x * powerFactor - r * sine),
  }));
  const inPhase = steps.reduce((sum, step) => sum + step.along, 0);
  const across = steps.reduce((sum, step) => sum + step.across, 0);
  const resistance = ohms.reduce((sum, { r }) => sum + r, 0);
  const adjacent = Math.sqrt(Math.max(0, (sourceVoltage - across) * (sourceVoltage + across)));
  // Vs − √(Vs² − across²) without losing the digits that a subtraction would.
  const drop = inPhase + (across * across) / (sourceVoltage + adjacent);
  // Where `across` alone is over the source voltage, so is its square over it, and with it the drop.
  if (!(drop <= sourceVoltage)) {
    return { state: "collapsed", needed: Math.hypot(inPhase, across) as Voltage, available: sourceVoltage };
  }
  const loadVoltage = sourceVoltage - drop;
  const [sourceDrop, ...parts] = segmentDrops(loadVoltage, steps);
  return {
    state: "carried",
    drop: drop as Voltage,
    share: (drop / nominalVoltage) as Ratio,
    loadVoltage: loadVoltage as Voltage,
    inPhase: inPhase as Voltage,
    resistive: (current * (inside.r + k * resistance) * powerFactor) as Voltage,
    loss: (conductorCount(system) * current * current * resistance) as Power,
    sourceDrop: (sourceDrop?.drop ?? 0) as Voltage,
    segments: parts,
    method: "phasor",
  };
}

/** Walks from the load back to the source; |V + d| − |V| is taken from the squares, which keeps the digits of small steps. */
function segmentDrops(
  loadVoltage: number,
  steps: readonly { readonly along: number; readonly across: number }[],
): readonly SegmentDrop[] {
  const parts: SegmentDrop[] = [];
  let re = loadVoltage;
  let im = 0;
  for (const { along, across } of [...steps].reverse()) {
    const before = Math.hypot(re + along, im + across);
    const after = Math.hypot(re, im);
    const risen = along * (2 * re + along) + across * (2 * im + across);
    parts.push({ drop: (before + after > 0 ? risen / (before + after) : 0) as Voltage, voltage: after as Voltage });
    re += along;
    im += across;
  }
  return parts.reverse();
}
