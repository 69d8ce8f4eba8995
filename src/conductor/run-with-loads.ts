/**
 * Voltages along one run that feeds several loads on its way.
 *
 * @module
 */
import { findRoot, requireList, requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { type Current, InputError, type Ratio, type Voltage } from "../units/index.ts";
import {
  type CircuitSegment,
  type ConductorOhms,
  lineFactor,
  readSegments,
  readSource,
  requireSystem,
  type SourceImpedance,
  type SupplySystem,
} from "./circuit.ts";

/** A load taken off at the end of a segment. */
export interface RunLoad {
  /** Line current of the load; 0 where nothing is taken off. 0 to 10 000 A. */
  readonly current: Current;
  /** Power factor, lagging; 1 for direct current. 0 to 1. */
  readonly powerFactor: Ratio;
}

/** What the power factors are measured against: the voltage at each load, or the voltage at the far end for all. */
export type PowerFactorReference = "own voltage" | "far end";

/** What both directions of the calculation are told. */
interface RunInput {
  /** How the run is fed. */
  readonly system: SupplySystem;
  /** The conductors, in order from the source. 1 to 1000. */
  readonly segments: readonly CircuitSegment[];
  /** The load at the end of each segment, one for each. */
  readonly loads: readonly RunLoad[];
  /** What the power factors are measured against; each load's own voltage where left out. */
  readonly reference?: PowerFactorReference;
  /** The source's own impedance; none where left out. */
  readonly source?: SourceImpedance;
}

/** A run with a known source. */
export interface RunVoltagesInput extends RunInput {
  /** Voltage at the source; where `source` is given, with nothing connected. 0.1 to 1000 V. */
  readonly sourceVoltage: Voltage;
}

/** A run of which the voltage at the far end is known. */
export interface SendingVoltageInput extends RunInput {
  /** Voltage at the end of the last segment. 0.1 to 1000 V. */
  readonly farVoltage: Voltage;
}

/** Voltages and currents along a run. */
export interface RunVoltages {
  /** The conductors carry the currents. */
  readonly state: "carried";
  /** Voltage at the source, V; where it has an impedance, behind that. */
  readonly sourceVoltage: Voltage;
  /** Voltage at the source's terminals, V. */
  readonly terminalVoltage: Voltage;
  /** Voltage at the end of each segment, V. */
  readonly voltages: readonly Voltage[];
  /** Current in each segment, A. */
  readonly currents: readonly Current[];
  /** Source voltage less far voltage, as voltmeters read them, V. */
  readonly drop: Voltage;
  /** Length of the phasor between the two, V: what the conductors take, angle included. At least the drop. */
  readonly difference: Voltage;
  /** How far the source voltage leads that at the far end, rad. */
  readonly angle: number;
  /** How it was worked out. */
  readonly method: "phasor";
}

/** The run cannot carry those currents. */
export interface RunCollapsed {
  /** The conductors would need more than the source has. */
  readonly state: "collapsed";
  /** Least source voltage at which the far end would have any, V. */
  readonly needed: Voltage;
  /** The source voltage, V. */
  readonly available: Voltage;
}

/**
 * Source voltage that a run needs for a given voltage at its far end.
 *
 * @remarks
 * From the far end backwards: each load's current is added at its angle, then the voltage k Z I of the segment, with k = 2
 * or √3. Exact for constant currents.
 *
 * @param input - far voltage, conductors and loads; each field says its unit and the values it takes
 * @returns voltages and currents along the run
 * @throws InputError naming the first field that is not in its range
 *
 * @example Two loads, each power factor against its own voltage
 * ```ts
 * import { sendingVoltage } from "risingmain/conductor";
 * import { amperes, metres, ohmsPerMetre, ratio, volts } from "risingmain/units";
 *
 * const segment = { length: metres(100), resistance: ohmsPerMetre(0.0005), reactance: ohmsPerMetre(0.00075) };
 * const run = sendingVoltage({
 *   system: "single-phase", farVoltage: volts(200), segments: [segment, segment],
 *   loads: [
 *     { current: amperes(100), powerFactor: ratio(0.6) },
 *     { current: amperes(100), powerFactor: ratio(0.8) },
 *   ],
 * });
 * run.voltages.map((voltage) => Math.round(voltage * 10) / 10); // => [217.1, 200]
 * run.sourceVoltage; // ≈ 252.33
 * ```
 *
 * @source derived: Kirchhoff's laws for sine waves
 */
export function sendingVoltage(input: SendingVoltageInput): RunVoltages {
  requireObject("input", input);
  const run = readRun(input);
  requireWithin("farVoltage", input.farVoltage, 0.1, 1000, "V");
  return walkBack(run, input.farVoltage);
}

/**
 * Voltages along a run that feeds several loads, from the source voltage.
 *
 * @remarks
 * The far voltage is found at which {@link sendingVoltage} gives the source's. Exact for constant currents.
 *
 * @param input - source voltage, conductors and loads; each field says its unit and the values it takes
 * @returns voltages and currents along the run, or `"collapsed"` where the conductors would need more than the source has
 * @throws InputError naming the first field that is not in its range
 *
 * @example A pump and a barn on one line of direct current
 * ```ts
 * import { runVoltages } from "risingmain/conductor";
 * import { amperes, metres, ohmsPerKilometre, ratio, volts } from "risingmain/units";
 *
 * const wire = { resistance: ohmsPerKilometre(0.66) };
 * const run = runVoltages({
 *   system: "direct current", sourceVoltage: volts(250),
 *   segments: [
 *     { ...wire, length: metres(75) }, { ...wire, length: metres(100) }, { ...wire, length: metres(50) },
 *   ],
 *   loads: [
 *     { current: amperes(12), powerFactor: ratio(1) },
 *     { current: amperes(15), powerFactor: ratio(1) },
 *     { current: amperes(20), powerFactor: ratio(1) },
 *   ],
 * });
 * if (run.state !== "carried") throw new Error(run.state);
 * run.voltages.map((voltage) => Math.round(voltage * 100) / 100); // => [245.35, 240.73, 239.41]
 * ```
 *
 * @source derived: Kirchhoff's laws for sine waves
 */
export function runVoltages(input: RunVoltagesInput): RunVoltages | RunCollapsed {
  requireObject("input", input);
  const run = readRun(input);
  const { sourceVoltage } = input;
  requireWithin("sourceVoltage", sourceVoltage, 0.1, 1000, "V");
  const missing = (far: number): number => walkBack(run, far).sourceVoltage - sourceVoltage;
  const needed = walkBack(run, 0).sourceVoltage;
  if (!(needed < sourceVoltage)) return { state: "collapsed", needed, available: sourceVoltage };
  // At the upper end the far voltage alone exceeds the source's by all that the conductors can take.
  const inside = run.total * Math.hypot(run.inside.r, run.inside.x);
  const most = run.steps.reduce((sum, { r, x, total }) => sum + total * Math.hypot(r, x), sourceVoltage + inside);
  return walkBack(run, findRoot(missing, 0, most * (1 + 1e-9)).x);
}

interface Step extends ConductorOhms {
  readonly current: number;
  readonly cosine: number;
  readonly sine: number;
  /** Sum of this load and all beyond it as plain numbers: no phasor sum is larger. */
  readonly total: number;
}

interface Run {
  readonly steps: readonly Step[];
  /** Sum of all loads as plain numbers. */
  readonly total: number;
  readonly inside: ConductorOhms;
  readonly own: boolean;
}

function readRun(input: RunInput): Run {
  const { system, segments, loads, reference = "own voltage" } = input;
  requireSystem(system);
  const k = lineFactor(system);
  const ohms = readSegments("segments", segments, system);
  requireList("loads", loads, ohms.length, ohms.length);
  requireOneOf("reference", reference, ["own voltage", "far end"]);
  const inside = readSource("source", input.source, system);
  for (const [i, load] of Array.from(loads).entries()) {
    requireObject(`loads[${i}]`, load);
    requireWithin(`loads[${i}].current`, load.current, 0, 1e4, "A");
    requireWithin(`loads[${i}].powerFactor`, load.powerFactor, 0, 1, "as a ratio");
    if (system === "direct current" && load.powerFactor !== 1) {
      throw new InputError(`loads[${i}].powerFactor`, load.powerFactor, "1 for direct current");
    }
  }
  let total = 0;
  const steps = loads
    .map(({ current, powerFactor }, i) => ({ current, powerFactor, ohms: ohms[i] as ConductorOhms }))
    .reverse()
    .map(({ current, powerFactor, ohms: { r, x } }): Step => {
      total += current;
      return { r: k * r, x: k * x, current, cosine: powerFactor, sine: Math.sqrt(1 - powerFactor ** 2), total };
    })
    .reverse();
  return { steps, total, inside, own: reference === "own voltage" };
}

function walkBack(run: Run, farVoltage: number): RunVoltages {
  let re = farVoltage;
  let im = 0;
  let currentRe = 0;
  let currentIm = 0;
  const voltages: Voltage[] = [];
  const currents: Current[] = [];
  const add = (r: number, x: number): void => {
    re += r * currentRe - x * currentIm;
    im += r * currentIm + x * currentRe;
  };
  for (const { r, x, current, cosine, sine } of [...run.steps].reverse()) {
    const magnitude = Math.hypot(re, im);
    voltages.push(magnitude as Voltage);
    // Direction of the voltage that the power factor is measured against; at no voltage at all, that of the far end.
    const ure = run.own && magnitude > 0 ? re / magnitude : 1;
    const uim = run.own && magnitude > 0 ? im / magnitude : 0;
    currentRe += current * (cosine * ure + sine * uim);
    currentIm += current * (cosine * uim - sine * ure);
    currents.push(Math.hypot(currentRe, currentIm) as Current);
    add(r, x);
  }
  const terminalVoltage = Math.hypot(re, im);
  add(run.inside.r, run.inside.x);
  const sourceVoltage = Math.hypot(re, im);
  return {
    state: "carried",
    sourceVoltage: sourceVoltage as Voltage,
    terminalVoltage: terminalVoltage as Voltage,
    voltages: voltages.reverse(),
    currents: currents.reverse(),
    drop: (sourceVoltage - farVoltage) as Voltage,
    difference: Math.hypot(re - farVoltage, im) as Voltage,
    angle: Math.atan2(im, re),
    method: "phasor",
  };
}
