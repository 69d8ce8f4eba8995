/**
 * What a check is told of a generator, of a motor and of the other loads, and the generator as the motor sees it.
 *
 * @module
 */
import type { SourceImpedance } from "../conductor/index.ts";
import { requireList, requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { type Current, InputError, type Power, type Ratio, type Resistance, type Voltage } from "../units/index.ts";

/** Transient reactance of a small alternator where none is published: common practice, no source. */
const USUAL_TRANSIENT_REACTANCE = 0.2;

/** A generator by its plate. */
export interface Generator {
  /** Power it gives for hours. 1 W to 10 MW. */
  readonly runningPower: Power;
  /** Power it gives for the seconds of a motor start. At least the running power, at most 10 MW. */
  readonly surgePower: Power;
  /** Voltage it holds, line to line for three-phase. 1 to 1000 V. */
  readonly voltage: Voltage;
  /** Phases it gives. */
  readonly system: "single-phase" | "three-phase";
  /** Power factor at which its powers are stated; 1 where left out, as portable sets are rated. 0.5 to 1. */
  readonly powerFactor?: Ratio;
  /** Transient reactance as a share of its rated impedance; 0.2 where left out. 0.01 to 1. */
  readonly transientReactance?: Ratio;
  /** What is left of its powers at the site's altitude and temperature; 1 where left out. 0.1 to 1. */
  readonly derating?: Ratio;
}

/** A motor as its supply sees it. */
export interface GeneratorMotor {
  /** Phases it needs. */
  readonly system: "single-phase" | "three-phase";
  /** Rated voltage. 1 to 1000 V. */
  readonly ratedVoltage: Voltage;
  /** Line current while running. 0.01 to 10 000 A. */
  readonly current: Current;
  /** Power factor while running, lagging. 0.05 to 1. */
  readonly powerFactor: Ratio;
  /** Line current standing still at rated voltage. 0.01 to 10 000 A. */
  readonly lockedRotorCurrent: Current;
  /** Power factor standing still, lagging. 0.05 to 1. */
  readonly lockedRotorPowerFactor: Ratio;
}

/** Another load on at the same time. */
export interface GeneratorLoad {
  /** Real power. 0 to 10 MW. */
  readonly power: Power;
  /** Power factor, lagging; 1 where left out. 0.05 to 1. */
  readonly powerFactor?: Ratio;
}

/** A generator with every default filled in and its powers derated. */
export type SizedGenerator = Required<Omit<Generator, "derating">>;

/** Checks a generator. Private to the module. */
export function readGenerator(generator: Generator): SizedGenerator {
  requireObject("generator", generator);
  const { runningPower, surgePower, voltage, system, powerFactor = 1, derating = 1 } = generator;
  const { transientReactance = USUAL_TRANSIENT_REACTANCE } = generator;
  requireWithin("generator.runningPower", runningPower, 1, 1e7, "W");
  requireWithin("generator.surgePower", surgePower, 1, 1e7, "W");
  if (surgePower < runningPower) {
    throw new InputError("generator.surgePower", surgePower, `at least the running power, ${runningPower} W`);
  }
  requireWithin("generator.voltage", voltage, 1, 1000, "V");
  requireOneOf("generator.system", system, ["single-phase", "three-phase"]);
  requireWithin("generator.powerFactor", powerFactor, 0.5, 1, "as a ratio");
  requireWithin("generator.transientReactance", transientReactance, 0.01, 1, "as a ratio");
  requireWithin("generator.derating", derating, 0.1, 1, "as a ratio");
  return {
    runningPower: (runningPower * derating) as Power,
    surgePower: (surgePower * derating) as Power,
    voltage,
    system,
    powerFactor: powerFactor as Ratio,
    // Thin air weakens the engine, not the alternator: its reactance stays that of the full rating.
    transientReactance: (transientReactance * derating) as Ratio,
  };
}

/** Checks a motor. Private to the module. */
export function readMotor(motor: GeneratorMotor): GeneratorMotor {
  requireObject("motor", motor);
  requireOneOf("motor.system", motor.system, ["single-phase", "three-phase"]);
  requireWithin("motor.ratedVoltage", motor.ratedVoltage, 1, 1000, "V");
  requireWithin("motor.current", motor.current, 0.01, 1e4, "A");
  requireWithin("motor.powerFactor", motor.powerFactor, 0.05, 1, "as a ratio");
  requireWithin("motor.lockedRotorCurrent", motor.lockedRotorCurrent, 0.01, 1e4, "A");
  requireWithin("motor.lockedRotorPowerFactor", motor.lockedRotorPowerFactor, 0.05, 1, "as a ratio");
  return motor;
}

/** Checks the other loads and adds them up. Private to the module. */
export function readLoads(loads: readonly GeneratorLoad[]): { readonly power: number; readonly reactive: number } {
  requireList("otherLoads", loads, 0, 100);
  let power = 0;
  let reactivePower = 0;
  for (const [i, load] of Array.from(loads).entries()) {
    requireObject(`otherLoads[${i}]`, load);
    requireWithin(`otherLoads[${i}].power`, load.power, 0, 1e7, "W");
    const { powerFactor = 1 } = load;
    requireWithin(`otherLoads[${i}].powerFactor`, powerFactor, 0.05, 1, "as a ratio");
    power += load.power;
    reactivePower += (load.power * Math.sqrt(1 - powerFactor * powerFactor)) / powerFactor;
  }
  return { power, reactive: reactivePower };
}

/**
 * The generator as the motor sees it: its transient reactance with the loads already on beside it.
 *
 * jX / (1 + jX Y) with Y = (P − jQ) / V²; the voltage behind it is the one the regulator held before the start.
 */
export function besideLoads(
  generator: SizedGenerator,
  loads: { readonly power: number; readonly reactive: number },
): SourceImpedance {
  const { voltage, runningPower, powerFactor, transientReactance } = generator;
  const x = (transientReactance * voltage * voltage * powerFactor) / runningPower;
  const g = (x * loads.power) / (voltage * voltage);
  const b = 1 + (x * loads.reactive) / (voltage * voltage);
  const square = g * g + b * b;
  return { resistance: ((x * g) / square) as Resistance, reactance: ((x * b) / square) as Resistance };
}
