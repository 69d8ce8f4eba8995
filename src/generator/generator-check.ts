/**
 * Whether a generator starts a pump motor and keeps it running, with the margins.
 *
 * @module
 */
import { type CircuitSegment, lockedRotorDrop, voltageDrop } from "../conductor/index.ts";
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Current, Ratio, Voltage } from "../units/index.ts";
import {
  besideLoads,
  type Generator,
  type GeneratorLoad,
  type GeneratorMotor,
  readGenerator,
  readLoads,
  readMotor,
} from "./generator-plate.ts";
import { type ReceptacleCheck, receptacleCheck } from "./receptacle-check.ts";
import type { Receptacle } from "./receptacles.ts";

/** Default limit of one federal guide specification for the dip while a motor starts. */
const USUAL_DIP_LIMIT = 0.25;
/** Share of the running rating for hours of use: common practice. */
const USUAL_CONTINUOUS_SHARE = 0.8;
/** Least share of rated voltage with which a loaded motor may be trusted to start: common practice, no source. */
const USUAL_STARTING_VOLTAGE = 0.65;
/** Running motors stand ±10 % of their rated voltage (`nema-mg-1`). */
const VOLTAGE_TOLERANCE = 0.1;

/** A generator, a pump motor at the end of its circuit, and whatever else is on. */
export interface GeneratorCheckInput {
  /** The generator. */
  readonly generator: Generator;
  /** The motor. */
  readonly motor: GeneratorMotor;
  /** Conductors from the generator to the motor, in order. 1 to 1000. */
  readonly segments: readonly CircuitSegment[];
  /** Loads already on when the motor starts. 0 to 100. */
  readonly otherLoads?: readonly GeneratorLoad[];
  /** Receptacle that the pump's circuit plugs into. */
  readonly receptacle?: Receptacle;
  /** Greatest dip of the generator's voltage during the start; 0.25 where left out. 0.01 to 0.9. */
  readonly dipLimit?: Ratio;
  /** Share of the running power that may be used for hours; 0.8 where left out. 0.1 to 1. */
  readonly continuousShare?: Ratio;
  /** Least voltage at the motor during the start as a share of its rated voltage; 0.65 where left out. 0.1 to 1. */
  readonly leastStartingVoltage?: Ratio;
}

/** One limit and what is left before it. */
export interface GeneratorMargin {
  /** What was checked. */
  readonly check:
    | "running power"
    | "running apparent power"
    | "starting power"
    | "starting apparent power"
    | "voltage dip"
    | "starting voltage"
    | "running voltage"
    | "receptacle";
  /** What the load asks for, in W, VA, A or as a share, by the check. */
  readonly value: number;
  /** What may be asked for, in the same unit. */
  readonly limit: number;
  /** What is left, in the same unit; negative where the check fails. */
  readonly margin: number;
  /** Unit of the three. */
  readonly unit: "W" | "VA" | "A" | "1";
}

/** The answer, the numbers behind it and every margin. */
export interface GeneratorChecked {
  /** Whether it starts, and whether it may run for hours. */
  readonly state: "starts and runs" | "starts but overloads" | "cannot start";
  /** The margins, one for each check, in the order of use. */
  readonly margins: readonly GeneratorMargin[];
  /** The check with the least margin in proportion to its limit. */
  readonly tightest: GeneratorMargin;
  /** Voltage at the motor while running, V. */
  readonly runningVoltage: Voltage;
  /** Current of the motor in the first moment of the start, A. */
  readonly startingCurrent: Current;
  /** Torque in the first moment as a share of that at rated voltage. */
  readonly torqueShare: Ratio;
  /** The receptacle, where one was named. */
  readonly receptacle: ReceptacleCheck | null;
  /** True where the transient reactance was assumed, not given. */
  readonly assumedReactance: boolean;
  /** How the dip was worked out. */
  readonly method: "phasor";
}

/** The supply does not fit the motor, or the conductors cannot carry its current at all. */
export interface GeneratorMisfit {
  /** Why the supply does not fit at all. */
  readonly state: "wrong phases" | "wrong voltage" | "circuit collapses";
  /** What the motor needs, in words. */
  readonly needed: string;
  /** What there is, in words. */
  readonly available: string;
}

/**
 * Whether a generator starts a pump motor through its circuit and runs it, and with what margins.
 *
 * @remarks
 * Before the start the regulator holds the generator's voltage. In the first moment the alternator is that voltage behind
 * its transient reactance, the loads already on are impedances beside it, and the motor is its locked-rotor impedance at the
 * end of the conductors; the circuit is solved as phasors. Real and apparent power at the sagged voltage are compared with
 * the surge rating, the dip with its limit, the motor's voltage with the least it starts on. Then the running load is
 * compared with 80 % of the running rating. The regulator's recovery, a tenth of a second later, is left out, on the safe
 * side. Bonding, transfer switch and carbon monoxide: see {@link generatorCautions}; wiring is licensed work.
 *
 * @param input - generator, motor, conductors and other loads; each field says its unit and the values it takes
 * @returns the answer with every margin, or the reason why the supply does not fit at all
 * @throws InputError naming the first field that is not in its range
 *
 * @example A 1-1/2 hp, 230 V pump on an 8,000 W set with 10,000 W surge
 * ```ts
 * import { generatorCheck } from "risingmain/generator";
 * import { amperes, feet, ohmsPerThousandFeet, ratio, volts, watts } from "risingmain/units";
 *
 * const check = generatorCheck({
 *   generator: {
 *     runningPower: watts(8000), surgePower: watts(10000), voltage: volts(240), system: "single-phase",
 *   },
 *   motor: {
 *     system: "single-phase", ratedVoltage: volts(230), current: amperes(10), powerFactor: ratio(0.8),
 *     lockedRotorCurrent: amperes(55.4), lockedRotorPowerFactor: ratio(0.5),
 *   },
 *   segments: [{ length: feet(450), resistance: ohmsPerThousandFeet(1.24) }],
 *   receptacle: "L14-30",
 * });
 * check.state; // => "starts and runs"
 * ```
 *
 * @source ufgs-16237n, 2.1.1.4: 25 % dip
 * @source nema-mg-1, ±10 % of rated voltage while running
 * @source common practice
 */
export function generatorCheck(input: GeneratorCheckInput): GeneratorChecked | GeneratorMisfit {
  requireObject("input", input);
  const { segments, receptacle, dipLimit = USUAL_DIP_LIMIT, continuousShare = USUAL_CONTINUOUS_SHARE } = input;
  const { leastStartingVoltage = USUAL_STARTING_VOLTAGE } = input;
  const generator = readGenerator(input.generator);
  const motor = readMotor(input.motor);
  requireWithin("dipLimit", dipLimit, 0.01, 0.9, "as a ratio");
  requireWithin("continuousShare", continuousShare, 0.1, 1, "as a ratio");
  requireWithin("leastStartingVoltage", leastStartingVoltage, 0.1, 1, "as a ratio");
  const others = readLoads(input.otherLoads ?? []);
  const { voltage, system } = generator;

  const running = voltageDrop({
    system,
    sourceVoltage: voltage,
    current: motor.current,
    powerFactor: motor.powerFactor,
    segments,
    nominalVoltage: motor.ratedVoltage,
  });
  if (motor.system !== system) return { state: "wrong phases", needed: motor.system, available: system };
  // A voltage on the limit itself passes, whatever the rounding of the quotient.
  if (Math.abs(voltage / motor.ratedVoltage - 1) > VOLTAGE_TOLERANCE + 1e-12) {
    return { state: "wrong voltage", needed: `${motor.ratedVoltage} V`, available: `${voltage} V` };
  }
  if (running.state === "collapsed") {
    return { state: "circuit collapses", needed: `${running.needed} V`, available: `${voltage} V` };
  }

  const start = lockedRotorDrop({
    system,
    sourceVoltage: voltage,
    source: besideLoads(generator, others),
    segments,
    lockedRotorCurrent: motor.lockedRotorCurrent,
    lockedRotorPowerFactor: motor.lockedRotorPowerFactor,
    ratedVoltage: motor.ratedVoltage,
  });
  // Loads already on take less while the voltage is down.
  const sag = (start.terminalVoltage / voltage) ** 2;
  const startPower = start.power + others.power * sag;
  const startReactive = reactive(start.apparentPower, start.power) + others.reactive * sag;
  const phases = system === "three-phase" ? Math.sqrt(3) : 1;
  // Apparent power at the source end: line current there is the motor's, voltage the generator's.
  const motorPower = phases * running.loadVoltage * motor.current * motor.powerFactor + running.loss;
  const motorReactive = reactive(phases * voltage * motor.current, motorPower);
  const runPower = motorPower + others.power;
  const outlet =
    receptacle === undefined
      ? null
      : receptacleCheck({ receptacle, voltage, current: motor.current, continuousShare: continuousShare as Ratio });

  const { runningPower, surgePower, powerFactor } = generator;
  const startShare = start.motorVoltage / motor.ratedVoltage;
  const runShare = running.loadVoltage / motor.ratedVoltage;
  const starting = [
    atMost("starting power", startPower, surgePower, "W"),
    atMost("starting apparent power", Math.hypot(startPower, startReactive), surgePower / powerFactor, "VA"),
    atMost("voltage dip", start.terminalDip, dipLimit, "1"),
    atLeast("starting voltage", startShare, leastStartingVoltage),
  ];
  const margins = [
    ...starting,
    atMost("running power", runPower, runningPower * continuousShare, "W"),
    atMost(
      "running apparent power",
      Math.hypot(runPower, motorReactive + others.reactive),
      (runningPower / powerFactor) * continuousShare,
      "VA",
    ),
    atLeast("running voltage", runShare, 1 - VOLTAGE_TOLERANCE),
    ...(outlet ? [atMost("receptacle", motor.current, outlet.continuous, "A")] : []),
  ];
  const fails = (list: readonly GeneratorMargin[]): boolean => list.some(({ margin }) => margin < 0);
  return {
    state: fails(starting) ? "cannot start" : fails(margins) ? "starts but overloads" : "starts and runs",
    margins,
    tightest: margins.reduce((least, next) => (next.margin / next.limit < least.margin / least.limit ? next : least)),
    runningVoltage: running.loadVoltage,
    startingCurrent: start.current,
    torqueShare: start.torqueShare,
    receptacle: outlet,
    assumedReactance: input.generator.transientReactance === undefined,
    method: "phasor",
  };
}

function atMost(
  check: GeneratorMargin["check"],
  value: number,
  limit: number,
  unit: GeneratorMargin["unit"],
): GeneratorMargin {
  return { check, value, limit, margin: limit - value, unit };
}

function atLeast(check: GeneratorMargin["check"], value: number, limit: number): GeneratorMargin {
  return { check, value, limit, margin: value - limit, unit: "1" };
}

function reactive(apparent: number, real: number): number {
  return Math.sqrt(Math.max(0, (apparent - real) * (apparent + real)));
}
