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
  type VoltageDropInput,
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
import { type Current, InputError, type Length, type Power, type Ratio, type Voltage } from "../units/index.ts";
import type { Job, JobCable, JobMotor, JobPumpCandidate, JobSource } from "./job.ts";
import { phases } from "./pump-stage.ts";
import type { CablePlan, PowerStage, SourcePlan } from "./stages.ts";

/** Most drop while running where the job names none: 5 % from source to motor, as the code recommends. */
export const USUAL_DROP: Ratio = 0.05 as Ratio;

/** Insulation of usual wire, and terminals that nothing marks for more: the code takes 60 °C up to 100 A (`nfpa-70`, 110.14(C)). */
export const USUAL_WIRE: Pick<ConductorAmpacityInput, "insulation" | "terminals" | "bundled"> = {
  insulation: "75 °C",
  terminals: "60 °C",
  bundled: 3,
};

/** A drop left over that is less than this is none: the thickest size is then the best there is. */
const LEAST_DROP_SHARE = 1e-4;

/** The motor as the circuit sees it. */
interface MotorLoad {
  readonly current: Current;
  readonly powerFactor: Ratio;
  readonly efficiency: Ratio;
  readonly lockedRotorCurrent: Current;
  readonly lockedRotorPowerFactor: Ratio;
}

/** Currents, cables and sources for the pump chosen; its setting is the length of a drop cable the job gives none for. */
export function powerStage(job: Job, { motor }: JobPumpCandidate, setting: Length): PowerStage {
  const { sources, circuit } = job.power;
  // Sized for a source the motor can run on; where there is none the findings say so.
  const source = sources.find(({ phase }) => phase === motor.phase) ?? sources[0];
  if (source === undefined) throw new Error("a job without a source passed its schema");
  const load = loadOf(motor);
  const branch = motorBranchCircuit({
    fullLoadCurrent: tableCurrent(motor) ?? load.current,
    ...(motor.fullLoadCurrent === undefined ? {} : { nameplateCurrent: motor.fullLoadCurrent }),
  });
  const sizes = sizesOf(job, source, load, branch.conductorAmpacity, setting);
  const segments = circuit.map((cable, i) => segmentOf(cable, sizes[i] as ConductorSize, setting));
  const running = voltageDrop({ ...runningCircuit(source, load), segments });
  const carried = running.state === "carried";
  const breaker = job.power.breaker ?? branch.protectionRating;
  const cables = circuit.map((cable, i): CablePlan => {
    const size = sizes[i] as ConductorSize;
    return {
      name: cable.name,
      length: lengthOf(cable, setting),
      size,
      sizeBy: cable.size === undefined ? "plan" : "job",
      material: cable.material ?? "copper",
      groundingSize: groundingOf(cable.material, breaker, branch.conductorAmpacity, size),
      drop: (carried ? running.segments[i]?.drop : 0) as Voltage,
    };
  });
  return {
    fullLoadCurrent: load.current,
    lockedRotorCurrent: load.lockedRotorCurrent,
    conductorAmpacity: branch.conductorAmpacity,
    highestBreaker: branch.protectionRating,
    groundingSize: cables.map(({ groundingSize }) => groundingSize).reduce(thicker),
    inputPower: (motor.voltage * load.current * load.powerFactor * Math.sqrt(phases(motor.phase))) as Power,
    motorEfficiency: load.efficiency,
    cables,
    drop: carried ? running.drop : running.available,
    dropShare: (carried ? running.share : 1) as Ratio,
    sources: sources.map((each) => sourcePlan(each, motor, load, segments)),
    method: "nfpa-70",
  };
}

/** Full-load current of the code's table; null where it lists no such voltage or power. */
function tableCurrent({ power, voltage, phase }: JobMotor): Current | null {
  try {
    return fullLoadCurrent({ power, voltage, system: phase }).current;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return null;
  }
}

/** What the plate says; the code's table and typical figures for the rest. */
function loadOf(motor: JobMotor): MotorLoad {
  const { power, voltage, phase } = motor;
  const typical = typicalMotor({ power, system: phase });
  const codeLetter: CodeLetter = motor.codeLetter ?? typical.codeLetter;
  const letter = lockedRotorCurrent({ power, voltage, system: phase, codeLetter });
  const current = motor.fullLoadCurrent ?? tableCurrent(motor);
  if (current === null) throw new Error("a motor beyond the table and without a plate current passed the job's checks");
  return {
    current,
    powerFactor: motor.powerFactor ?? typical.powerFactor,
    efficiency: motor.efficiency ?? typical.efficiency,
    // The upper end of the letter's band, since a start that fails is found out at the well.
    lockedRotorCurrent: motor.lockedRotorCurrent ?? letter.high ?? letter.low,
    lockedRotorPowerFactor: typical.lockedRotorPowerFactor,
  };
}

/** The circuit with the motor running on a source, its cables aside; drop is told as a share of the source's voltage. */
function runningCircuit(source: JobSource, load: MotorLoad): Omit<VoltageDropInput, "segments"> {
  return {
    system: source.phase,
    sourceVoltage: source.voltage,
    current: load.current,
    powerFactor: load.powerFactor,
    nominalVoltage: source.voltage,
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
  const common = runningCircuit(source, load);
  const [first, second] = open;
  let chosen: readonly ConductorSize[];
  if (first !== undefined && second !== undefined && open.length === 2 && settled.length === 0) {
    // Two runs in series, the usual case: proven least metal.
    const run = (cable: JobCable) => ({
      length: lengthOf(cable, setting),
      choices: choicesFor(cable.material),
      ampacityNeeded,
    });
    const least = leastMetal({ ...common, dropLimit: mostVoltageDrop, runs: [run(first), run(second)] });
    chosen = (least.state === "found" ? least.choices : [first, second].map(({ material }) => thickest(material))).map(
      ({ size }) => parseConductorSize(size),
    );
  } else {
    // Each takes the share of what drop is left that its length has of the lengths left open.
    const spent = settled.length === 0 ? null : voltageDrop({ ...common, segments: settled });
    const left = mostVoltageDrop - (spent === null ? 0 : spent.state === "carried" ? spent.share : mostVoltageDrop);
    const total = open.reduce((sum, cable) => sum + lengthOf(cable, setting), 0);
    chosen = open.map((cable) => {
      const length = lengthOf(cable, setting);
      const dropLimit = Math.max(left * (total > 0 ? length / total : 1), LEAST_DROP_SHARE) as Ratio;
      const { choice } = smallestConductor({
        ...common,
        length,
        choices: choicesFor(cable.material),
        ampacityNeeded,
        dropLimit,
      });
      return parseConductorSize(choice.size);
    });
  }
  let next = 0;
  return given.map((size) => size ?? (chosen[next++] as ConductorSize));
}

function choicesFor(material: JobCable["material"] = "copper"): readonly ConductorChoice[] {
  return conductorChoices({ material, ...USUAL_WIRE });
}

function thickest(material: JobCable["material"]): ConductorChoice {
  return choicesFor(material).at(-1) as ConductorChoice;
}

function areaOf(size: string): number {
  return conductorGeometry(parseConductorSize(size)).area;
}

function thicker(a: string, b: string): string {
  return areaOf(b) > areaOf(a) ? b : a;
}

/**
 * Least grounding conductor beside a cable: by the breaker; where drop enlarged the cable, enlarged in proportion; never
 * larger than the cable itself.
 */
function groundingOf(
  material: JobCable["material"] = "copper",
  overcurrentRating: Current,
  ampacityNeeded: Current,
  size: ConductorSize,
): ConductorSize {
  const enough = choicesFor(material).find(({ ampacity = 0 }) => ampacity >= ampacityNeeded)?.size ?? size;
  const enlarged = areaOf(size) > areaOf(enough) ? { enlarged: { from: parseConductorSize(enough), to: size } } : {};
  const least = groundingConductor({ overcurrentRating, material, ...enlarged }).size;
  return areaOf(least) > areaOf(size) ? size : least;
}

function sourcePlan(
  source: JobSource,
  motor: JobMotor,
  load: MotorLoad,
  segments: readonly CircuitSegment[],
): SourcePlan {
  const running = voltageDrop({ ...runningCircuit(source, load), segments });
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
    receptacle: source.receptacle ?? null,
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
