/**
 * Power: the motor's currents, its cables, and each source of power that feeds it.
 *
 * @module
 */
import {
  type CircuitSegment,
  type ConductorAmpacityInput,
  type ConductorChoice,
  type ConductorSize,
  conductorChoices,
  conductorGeometry,
  conductorImpedance,
  groundingConductor,
  leastMetal,
  lockedRotorDrop,
  parseConductorSize,
  smallestConductor,
  voltageDrop,
} from "../conductor/index.ts";
import { generatorCheck } from "../generator/index.ts";
import {
  type CodeLetter,
  fullLoadCurrent,
  lockedRotorCurrent,
  motorBranchCircuit,
  typicalMotor,
} from "../motor/index.ts";
import { type Current, type Length, type Power, percent, type Ratio, type Voltage } from "../units/index.ts";
import type { Job, JobCable, JobMotor, JobPumpCandidate, JobSource } from "./job.ts";
import type { CablePlan, PowerStage, SourcePlan } from "./stages.ts";

/** Most drop while running where the job names none: 5 % from source to motor, as the code recommends. */
export const USUAL_DROP: Ratio = percent(5);

/** Insulation of usual wire, and terminals that nothing marks for more: the code takes 60 °C up to 100 A (`nfpa-70`, 110.14(C)). */
export const USUAL_WIRE: Pick<ConductorAmpacityInput, "insulation" | "terminals" | "bundled"> = {
  insulation: "75 °C",
  terminals: "60 °C",
  bundled: 3,
};

/** The motor as the circuit sees it. */
interface MotorLoad {
  readonly current: Current;
  readonly powerFactor: Ratio;
  readonly lockedRotorCurrent: Current;
  readonly lockedRotorPowerFactor: Ratio;
  readonly inputPower: Power;
}

/** Currents, cables and sources for the pump chosen; its setting is the length of a drop cable the job gives none for. */
export function powerStage(job: Job, { motor }: JobPumpCandidate, setting: Length): PowerStage {
  const [source] = job.power.sources;
  if (source === undefined) throw new Error("a job without a source passed its schema");
  const load = loadOf(motor);
  const table = fullLoadCurrent({ power: motor.power, voltage: motor.voltage, system: motor.phase }).current;
  const branch = motorBranchCircuit({
    fullLoadCurrent: table,
    ...(motor.fullLoadCurrent === undefined ? {} : { nameplateCurrent: motor.fullLoadCurrent }),
    ...(motor.serviceFactor === undefined ? {} : { serviceFactor: motor.serviceFactor }),
  });
  const sizes = sizesOf(job, source, load, branch.conductorAmpacity, setting);
  const segments = job.power.circuit.map((cable, i) => segmentOf(cable, sizes[i] as ConductorSize, setting));
  const running = voltageDrop({
    system: source.phase,
    sourceVoltage: source.voltage,
    current: load.current,
    powerFactor: load.powerFactor,
    segments,
    nominalVoltage: source.voltage,
  });
  const drops =
    running.state === "carried" ? running.segments.map(({ drop }) => drop) : segments.map(() => 0 as Voltage);
  return {
    fullLoadCurrent: load.current,
    lockedRotorCurrent: load.lockedRotorCurrent,
    conductorAmpacity: branch.conductorAmpacity,
    highestBreaker: branch.protectionRating,
    groundingSize: groundingOf(job, branch.protectionRating, branch.conductorAmpacity, sizes),
    inputPower: load.inputPower,
    cables: job.power.circuit.map(
      (cable, i): CablePlan => ({
        name: cable.name,
        length: segments[i]?.length as Length,
        size: sizes[i] as ConductorSize,
        sizeBy: cable.size === undefined ? "plan" : "job",
        material: cable.material ?? "copper",
        drop: drops[i] as Voltage,
      }),
    ),
    drop: running.state === "carried" ? running.drop : running.available,
    dropShare: (running.state === "carried" ? running.share : 1) as Ratio,
    sources: job.power.sources.map((each) => sourcePlan(each, motor, load, segments)),
  };
}

/** What the plate says; the code's table and typical figures for the rest. */
function loadOf(motor: JobMotor): MotorLoad {
  const { power, voltage, phase } = motor;
  const typical = typicalMotor({ power, system: phase });
  const codeLetter: CodeLetter = motor.codeLetter ?? typical.codeLetter;
  const letter = lockedRotorCurrent({ power, voltage, system: phase, codeLetter });
  const efficiency = motor.efficiency ?? typical.efficiency;
  return {
    current: motor.fullLoadCurrent ?? fullLoadCurrent({ power, voltage, system: phase }).current,
    powerFactor: motor.powerFactor ?? typical.powerFactor,
    // The upper end of the letter's band, since a start that fails is found out at the well.
    lockedRotorCurrent: motor.lockedRotorCurrent ?? letter.high ?? letter.low,
    lockedRotorPowerFactor: typical.lockedRotorPowerFactor,
    inputPower: (power / efficiency) as Power,
  };
}

function lengthOf(cable: JobCable, setting: Length): Length {
  return cable.length ?? setting;
}

function segmentOf(cable: JobCable, size: ConductorSize, setting: Length): CircuitSegment {
  const { resistance, reactance } = conductorImpedance({ size, material: cable.material ?? "copper" });
  return { length: lengthOf(cable, setting), resistance, reactance };
}

/** Sizes given, and for what is left open the least metal that keeps drop and ampacity. */
function sizesOf(
  job: Job,
  source: JobSource,
  load: MotorLoad,
  ampacityNeeded: Current,
  setting: Length,
): readonly ConductorSize[] {
  const { circuit, mostVoltageDrop = USUAL_DROP } = job.power;
  const given = circuit.map(({ size }) => (size === undefined ? null : parseConductorSize(size)));
  const open = circuit.filter((_, i) => given[i] === null);
  const settled = circuit.flatMap((cable, i) => (given[i] == null ? [] : [segmentOf(cable, given[i], setting)]));
  const common = {
    system: source.phase,
    sourceVoltage: source.voltage,
    current: load.current,
    powerFactor: load.powerFactor,
    nominalVoltage: source.voltage,
    dropLimit: mostVoltageDrop,
  };
  const [first, second] = open;
  let chosen: readonly ConductorSize[];
  if (first !== undefined && second !== undefined && open.length === 2 && settled.length === 0) {
    // Two runs in series, the usual case: each its own size.
    const run = (cable: JobCable) => ({
      length: lengthOf(cable, setting),
      choices: choicesFor(cable.material),
      ampacityNeeded,
    });
    const least = leastMetal({ ...common, runs: [run(first), run(second)] });
    const pair = least.state === "found" ? least.choices.map(({ size }) => size) : [thickest(first), thickest(second)];
    chosen = pair.map(parseConductorSize);
  } else {
    const length = open.reduce((sum, cable) => sum + lengthOf(cable, setting), 0) as Length;
    const material = open.some((cable) => cable.material === "aluminium") ? "aluminium" : "copper";
    const { choice } = smallestConductor({ ...common, length, choices: choicesFor(material), ampacityNeeded, settled });
    chosen = open.map(() => parseConductorSize(choice.size));
  }
  let next = 0;
  return given.map((size) => size ?? (chosen[next++] as ConductorSize));
}

function choicesFor(material: JobCable["material"] = "copper"): readonly ConductorChoice[] {
  return conductorChoices({ material, ...USUAL_WIRE });
}

function thickest({ material }: JobCable): string {
  return choicesFor(material).at(-1)?.size ?? "4/0 AWG";
}

/** Least grounding conductor: by the breaker; where drop enlarged the conductors, enlarged in proportion. */
function groundingOf(
  job: Job,
  breaker: Current,
  ampacityNeeded: Current,
  sizes: readonly ConductorSize[],
): ConductorSize {
  const material = job.power.circuit[0]?.material ?? "copper";
  const areaOf = (size: ConductorSize): number => conductorGeometry(size).area;
  const used = sizes.reduce((most, size) => (areaOf(size) > areaOf(most) ? size : most));
  const enough = choicesFor(material).find(({ ampacity = 0 }) => ampacity >= ampacityNeeded);
  const from = parseConductorSize(enough?.size ?? used);
  const enlarged = areaOf(used) > areaOf(from) ? { enlarged: { from, to: used } } : {};
  return groundingConductor({ overcurrentRating: job.power.breaker ?? breaker, material, ...enlarged }).size;
}

function sourcePlan(
  source: JobSource,
  motor: JobMotor,
  load: MotorLoad,
  segments: readonly CircuitSegment[],
): SourcePlan {
  const running = voltageDrop({
    system: source.phase,
    sourceVoltage: source.voltage,
    current: load.current,
    powerFactor: load.powerFactor,
    segments,
    nominalVoltage: source.voltage,
  });
  const start = lockedRotorDrop({
    system: source.phase,
    sourceVoltage: source.voltage,
    segments,
    lockedRotorCurrent: load.lockedRotorCurrent,
    lockedRotorPowerFactor: load.lockedRotorPowerFactor,
    ratedVoltage: motor.voltage,
  });
  return {
    name: source.name,
    kind: source.kind,
    phase: source.phase,
    voltage: source.voltage,
    runningVoltage: running.state === "carried" ? running.loadVoltage : (0 as Voltage),
    startingVoltage: start.motorVoltage,
    generator:
      source.kind === "utility" || source.runningPower === undefined
        ? null
        : generatorCheck({
            generator: {
              runningPower: source.runningPower,
              surgePower: source.surgePower ?? source.runningPower,
              voltage: source.voltage,
              system: source.phase,
            },
            motor: {
              system: motor.phase,
              ratedVoltage: motor.voltage,
              current: load.current,
              powerFactor: load.powerFactor,
              lockedRotorCurrent: load.lockedRotorCurrent,
              lockedRotorPowerFactor: load.lockedRotorPowerFactor,
            },
            segments,
            otherLoads: source.otherLoad === undefined ? [] : [{ power: source.otherLoad }],
            ...(source.receptacle === undefined ? {} : { receptacle: source.receptacle }),
          }),
  };
}
