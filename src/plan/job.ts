/**
 * The job: what the driller's log, the site sketch and the customer say.
 *
 * Depths are measured down from the ground at the well, elevations up from it. What a job leaves out the plan sizes;
 * what it states the plan checks.
 *
 * @module
 */
import type { LivestockKind } from "../demand/index.ts";
import type { FittingName } from "../fittings/index.ts";
import type { Receptacle } from "../generator/index.ts";
import type { CodeLetter } from "../motor/index.ts";
import type {
  Concentration,
  Current,
  Duration,
  GaugePressure,
  Length,
  Mass,
  Power,
  PressureDifference,
  Ratio,
  Temperature,
  Velocity,
  Voltage,
  Volume,
  VolumeFlow,
} from "../units/index.ts";

/** A whole job. Its JSON document has the same fields, with quantities as text: `"240 ft"`. */
export interface Job {
  /** Form of the document; 1. */
  readonly version: 1;
  /** What the property is called. */
  readonly name: string;
  /** Units of the report; US customary where left out. */
  readonly reportUnits?: "us" | "metric";
  /** Where the well is. */
  readonly site: JobSite;
  /** The hole, as the driller left it. */
  readonly well: JobWell;
  /** The pipe from the pump to the surface. */
  readonly dropPipe?: JobDropPipe;
  /** The pump: its setting and the pumps to choose from; a duty point is worked out where there is none. */
  readonly pump?: JobPump;
  /** Switch, regulating valve, relief valve. */
  readonly controls: JobControls;
  /** The air-charged tank. */
  readonly tank?: JobTank;
  /** Places on the property, the wellhead apart. */
  readonly places: readonly JobPlace[];
  /** Pipe runs between places. */
  readonly runs: readonly JobRun[];
  /** Where water leaves the system. */
  readonly outlets: readonly JobOutlet[];
  /** Which outlets run together; each outlet alone, and all at once, where left out. */
  readonly uses?: readonly JobUse[];
  /** Who drinks, for the day's volume. */
  readonly demand?: JobDemand;
  /** What bounds the choice of pipe sizes left open. */
  readonly pipeChoice?: JobPipeChoice;
  /** From source to motor. */
  readonly power: JobPower;
  /** Disinfection after the work. */
  readonly disinfection?: JobDisinfection;
}

/** Where the well is. */
export interface JobSite {
  /** Elevation of the ground at the well above sea level. −500 to 6000 m. */
  readonly elevation: Length;
  /** Temperature of the water. 0 to 60 °C. */
  readonly waterTemperature: Temperature;
}

/** The hole. */
export interface JobWell {
  /** Inside diameter of the casing where the pump hangs. 50 mm to 2 m. */
  readonly casingInsideDiameter: Length;
  /** Depth of the hole. 1 to 2000 m. */
  readonly depth: Length;
  /** Depth of the bottom of the casing; that of the hole where left out. */
  readonly casingDepth?: Length;
  /** Diameter of the open hole below the casing; the casing's where left out. */
  readonly openHoleDiameter?: Length;
  /** Depth of the top of the screen or first perforation. */
  readonly screenTop?: Length;
  /** Depth to the water at rest. Negative where the well flows. −100 to 1500 m. */
  readonly staticLevel: Length;
  /** The highest the water at rest ever stands; the static level where left out. */
  readonly highestStaticLevel?: Length;
  /** Flow the well gives for as long as it is asked. 1e-6 to 1 m³/s. */
  readonly yield: VolumeFlow;
  /** The pumping test: one pair, or the steps of a step test. Steps at one flow are averaged. 1 to 500. */
  readonly test: readonly JobTestStep[];
}

/** One steady flow of a pumping test. */
export interface JobTestStep {
  /** The flow. */
  readonly flow: VolumeFlow;
  /** Depth to the water at the end. */
  readonly pumpingLevel: Length;
}

/** The drop pipe. */
export interface JobDropPipe {
  /** The pipe by standard and size, such as "1-1/4 in PVC SCH 80"; sized where left out. */
  readonly pipe?: string;
  /** Fittings from the pump to the tank. */
  readonly fittings?: readonly JobFitting[];
  /** Check valves above the pump's own. 0 to 10; 0 where left out. */
  readonly checkValves?: number;
}

/** Some fittings of one kind. */
export interface JobFitting {
  /** The kind: "elbow 90", "tee branch", "gate valve" and the other names of `namedFittings`. */
  readonly kind: FittingName;
  /** How many. 1 to 1000. */
  readonly count: number;
}

/** The pump. */
export interface JobPump {
  /** Depth of the intake; worked out where left out. */
  readonly setting?: Length;
  /** Pumps to choose from; with one, it is checked. Up to 500. */
  readonly candidates?: readonly JobPumpCandidate[];
}

/** A pump with its motor. */
export interface JobPumpCandidate {
  /** What the list calls it. */
  readonly name: string;
  /** The curve, 3 to 100 points from no flow on. */
  readonly curve: readonly JobPumpPoint[];
  /** Outside diameter of pump and motor, the larger. */
  readonly diameter: Length;
  /** Length of pump and motor together; 1 m where left out. */
  readonly length?: Length;
  /** Length of motor below the intake; half the length where left out. */
  readonly lengthBelowIntake?: Length;
  /** Mass of pump and motor. */
  readonly mass?: Mass;
  /** Its motor. */
  readonly motor: JobMotor;
}

/** A point of a pump's curve. */
export interface JobPumpPoint {
  /** Flow. */
  readonly flow: VolumeFlow;
  /** Head. */
  readonly head: Length;
  /** Efficiency of the pump end, if the curve shows it. */
  readonly efficiency?: Ratio;
}

/** A motor. */
export interface JobMotor {
  /** Power at the shaft, by its plate. */
  readonly power: Power;
  /** Voltage of its plate. */
  readonly voltage: Voltage;
  /** Single-phase or three-phase. */
  readonly phase: "single-phase" | "three-phase";
  /** Full-load current of its plate; that of the code's table where left out. */
  readonly fullLoadCurrent?: Current;
  /** Service factor of its plate; 1 where left out. */
  readonly serviceFactor?: Ratio;
  /** Locked-rotor code letter of its plate. */
  readonly codeLetter?: CodeLetter;
  /** Locked-rotor current of its plate. */
  readonly lockedRotorCurrent?: Current;
  /** Efficiency; a typical figure where left out. */
  readonly efficiency?: Ratio;
  /** Power factor; a typical figure where left out. */
  readonly powerFactor?: Ratio;
  /** Least velocity of water past it, where its plate or sheet states one. */
  readonly coolingVelocity?: Velocity;
}

/** Controls. */
export interface JobControls {
  /** Pressure at which the switch starts the pump. */
  readonly cutIn: GaugePressure;
  /** Pressure at which it stops the pump. */
  readonly cutOut: GaugePressure;
  /** A pressure-regulating valve between pump and tank. */
  readonly regulatingValve?: JobRegulatingValve;
  /** Relief valve: the pressure it opens at. */
  readonly reliefPressure?: GaugePressure;
  /** Flow the relief valve passes at that pressure, from its certificate. */
  readonly reliefCapacity?: VolumeFlow;
  /** Whether a low-level or dry-run cut-off is fitted; not, where left out. */
  readonly dryRunCutOff?: boolean;
}

/** A pressure-regulating valve between pump and tank. */
export interface JobRegulatingValve {
  /** Pressure it holds while water is used. */
  readonly setPressure: GaugePressure;
  /** Flow it always lets pass. */
  readonly minimumFlow: VolumeFlow;
  /** Its own loss when open, at `ratedFlow`. */
  readonly loss?: PressureDifference;
  /** Flow of `loss`. */
  readonly ratedFlow?: VolumeFlow;
  /** Highest pressure it may see at its inlet. */
  readonly maximumInletPressure?: GaugePressure;
}

/** The tank. */
export interface JobTank {
  /** Volume of the whole vessel; sized where left out. */
  readonly volume?: Volume;
  /** Air pressure with no water in it; set below cut-in where left out. */
  readonly precharge?: GaugePressure;
  /** Highest working pressure of its plate. */
  readonly maximumPressure?: GaugePressure;
  /** Elevation of its connection above the ground at the well. −50 to 500 m; 0 where left out. */
  readonly elevation?: Length;
  /** Least run of the pump the customer or the motor asks for; 1 minute where left out. */
  readonly leastRunTime?: Duration;
  /** Most starts in a day the motor is rated for; the published limit for its power where left out. */
  readonly mostStartsPerDay?: number;
}

/** A place on the property. */
export interface JobPlace {
  /** Its name. "wellhead" stands for the well with its tank and is not listed. */
  readonly name: string;
  /** Elevation above the ground at the well; negative below. −500 to 500 m. */
  readonly elevation: Length;
}

/** A run of pipe between two places. */
export interface JobRun {
  /** One end, a place or "wellhead". */
  readonly from: string;
  /** The other end. */
  readonly to: string;
  /** Length along the trench. Above 0, to 50 km. */
  readonly length: Length;
  /** The pipe by standard and size; sized where left out. */
  readonly pipe?: string;
  /** Fittings on it. */
  readonly fittings?: readonly JobFitting[];
}

/** An outlet. */
export interface JobOutlet {
  /** Its name. */
  readonly name: string;
  /** The place it stands at. */
  readonly at: string;
  /** Flow wanted there. */
  readonly flow: VolumeFlow;
  /** Pressure wanted there while it flows. */
  readonly pressure: GaugePressure;
}

/** Outlets that run together. */
export interface JobUse {
  /** What the use is called. */
  readonly name: string;
  /** The outlets open. */
  readonly outlets: readonly string[];
}

/** Daily demand. */
export interface JobDemand {
  /** People in the house. */
  readonly people?: number;
  /** Animals by kind, names of the livestock table. */
  readonly livestock?: readonly JobAnimals[];
  /** Other water on a day. */
  readonly other?: readonly JobOtherUse[];
}

/** Animals of a kind. */
export interface JobAnimals {
  /** The kind. */
  readonly kind: LivestockKind;
  /** How many. */
  readonly head: number;
}

/** Another use of water. */
export interface JobOtherUse {
  /** What it is. */
  readonly name: string;
  /** Water on a day. */
  readonly volume: Volume;
}

/** Bounds for pipe sizes left open. */
export interface JobPipeChoice {
  /** Family to choose from, such as "PE SIDR 15" or "PVC SCH 40". */
  readonly family?: string;
  /** Highest velocity; 5 ft/s where left out. */
  readonly highestVelocity?: Velocity;
}

/** From source to motor. */
export interface JobPower {
  /** What feeds it, now or later; each is checked. 1 to 500. */
  readonly sources: readonly JobSource[];
  /** Cable from the source to the motor, in order. 1 to 500. */
  readonly circuit: readonly JobCable[];
  /** Rating of the breaker or fuse that feeds the pump. */
  readonly breaker?: Current;
  /** Size of the equipment grounding conductor; sized where left out. */
  readonly groundingSize?: string;
  /** Most voltage drop at running current; 5 % where left out. */
  readonly mostVoltageDrop?: Ratio;
}

/** Where the power comes from. */
export interface JobSource {
  /** Its name: "generator", "utility from next spring". */
  readonly name: string;
  /** Utility service or generator. */
  readonly kind: "utility" | "generator";
  /** Voltage at its terminals. */
  readonly voltage: Voltage;
  /** Single-phase or three-phase. */
  readonly phase: "single-phase" | "three-phase";
  /** Generator: power it runs. */
  readonly runningPower?: Power;
  /** Generator: power it gives for a start. */
  readonly surgePower?: Power;
  /** Generator: the receptacle the pump is fed from, by its standard designation, such as "L14-30". */
  readonly receptacle?: Receptacle;
  /** Other loads running with the pump. */
  readonly otherLoad?: Power;
}

/** A length of cable. */
export interface JobCable {
  /** Where it runs. */
  readonly name: string;
  /** One-way length; the depth of the pump where left out, as for the drop cable. */
  readonly length?: Length;
  /** Size, such as "10 AWG"; sized where left out. */
  readonly size?: string;
  /** Copper where left out. */
  readonly material?: "copper" | "aluminium";
}

/** Disinfection. */
export interface JobDisinfection {
  /** Chlorine wanted in the standing water; 100 mg/L where left out. */
  readonly target?: Concentration;
  /** Strength of the bleach; 6 % where left out. */
  readonly bleachStrength?: Ratio;
}
