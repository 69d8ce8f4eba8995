/**
 * What each stage of a plan holds, in the order the work is done.
 *
 * @module
 */
import type { PressureHeld } from "../control/index.ts";
import type { DailyDemand } from "../demand/index.ts";
import type { BleachDose, TreatedVolume } from "../disinfection/index.ts";
import type { GeneratorChecked, GeneratorMisfit, Receptacle } from "../generator/index.ts";
import type { TotalDynamicHead } from "../head/index.ts";
import type { GradePoint } from "../network/index.ts";
import type { PipeSize } from "../pipe/index.ts";
import type { DemandSegment } from "../system/index.ts";
import type { TankDrawdown, WorstDemand } from "../tank/index.ts";
import type {
  AbsolutePressure,
  Current,
  Duration,
  Energy,
  Force,
  Frequency,
  GaugePressure,
  Length,
  Power,
  Ratio,
  Transmissivity,
  Velocity,
  Voltage,
  Volume,
  VolumeFlow,
} from "../units/index.ts";
import type { Water } from "../water/index.ts";
import type { DrawdownLaw, Fixings, MotorCooling, PumpSetting } from "../well/index.ts";
import type { PipeChoiceState } from "./choose-pipes.ts";
import type { Measure } from "./measure.ts";

/** The place: its water and its air. */
export interface SiteStage {
  /** Properties of the water at its temperature. */
  readonly water: Water;
  /** Absolute pressure of the air at the well. */
  readonly atmosphere: AbsolutePressure;
}

/** What the property wants. */
export interface DemandStage {
  /** The day's water and its parts; null where the job does not say who drinks. */
  readonly daily: DailyDemand | null;
  /** What the well gives in a day. */
  readonly yieldPerDay: Volume;
  /** The most that is used at once. */
  readonly designFlow: VolumeFlow;
  /** The use that asks for it. */
  readonly governingUse: string;
}

/** The well. */
export interface WellStage {
  /** Drawdown against flow, from the test. */
  readonly law: DrawdownLaw;
  /** What the law was taken from. */
  readonly lawBasis: "single test" | "step test" | "largest step alone";
  /** Flow per drawdown at the design flow. */
  readonly specificCapacity: Transmissivity;
  /** Depth to the water at rest. */
  readonly staticLevel: Length;
  /** Fall of the water at the design flow. */
  readonly drawdown: Length;
  /** Depth to the water at the design flow. */
  readonly pumpingLevel: Length;
  /** Height of water standing in the hole at rest. */
  readonly waterColumn: Length;
  /** Water standing in the hole at rest. */
  readonly standingWater: Volume;
}

/** A run of pipe, sized or checked. */
export interface RunPlan {
  /** "from – to". */
  readonly name: string;
  /** One end. */
  readonly from: string;
  /** The other. */
  readonly to: string;
  /** Its length. */
  readonly length: Length;
  /** Its pipe. */
  readonly pipe: PipeSize;
  /** Whether the job gave the pipe or the plan chose it. */
  readonly pipeBy: "job" | "plan";
  /** Largest flow in any use. */
  readonly flow: VolumeFlow;
  /** Velocity there. */
  readonly velocity: Velocity;
  /** Head lost there. */
  readonly headLoss: Length;
  /** Highest pressure it sees at rest, at its lowest end. */
  readonly highestPressure: GaugePressure;
  /** What its pipe may see at the temperature of the water; null where its standard gives no rating. */
  readonly pressureRating: GaugePressure | null;
}

/** An outlet in a use. */
export interface OutletPlan {
  /** Its name. */
  readonly name: string;
  /** Flow it takes. */
  readonly flow: VolumeFlow;
  /** Pressure there with the tank at cut-in. */
  readonly pressureAtCutIn: GaugePressure;
  /** Pressure there with the tank at the pressure held: the valve's, else cut-in. */
  readonly pressureHeld: GaugePressure;
  /** Pressure wanted. */
  readonly wanted: GaugePressure;
}

/** A use: outlets that run together. */
export interface UsePlan {
  /** Its name. */
  readonly name: string;
  /** Flow of all its outlets. */
  readonly flow: VolumeFlow;
  /** Its outlets. */
  readonly outlets: readonly OutletPlan[];
  /** Least pressure at the tank at which every outlet has what it wants. */
  readonly tankPressureNeeded: GaugePressure;
}

/** The yard lines. */
export interface LayoutStage {
  /** The runs, as the job lists them. */
  readonly runs: readonly RunPlan[];
  /** The uses. */
  readonly uses: readonly UsePlan[];
  /** Least pressure at the tank that serves every use. */
  readonly tankPressureNeeded: GaugePressure;
  /** How the sizes left open were chosen. */
  readonly choice: PipeChoiceState;
  /** The way to the outlet with the least pressure to spare while the pump runs; null where no run leads to it. */
  readonly gradeLine: LayoutGradeLine | null;
}

/** The grade line along the way to an outlet. */
export interface LayoutGradeLine {
  /** The use it is reckoned in. */
  readonly use: string;
  /** The outlet it leads to. */
  readonly outlet: string;
  /** The places on the way, from the wellhead, the tank at the pressure held. */
  readonly points: readonly GradePoint[];
}

/** A pump at one pressure. */
export interface PumpPoint {
  /** Gauge pressure at the tank. */
  readonly pressure: GaugePressure;
  /** Flow. */
  readonly flow: VolumeFlow;
  /** Head. */
  readonly head: Length;
  /** Efficiency of the pump end, where its curve gives it. */
  readonly efficiency: Ratio | null;
  /** Power into the pump's shaft, where its curve gives efficiency. */
  readonly shaftPower: Power | null;
}

/** Why a pump does not do the job. */
export interface CandidateFault {
  /** In words, after "it": "cannot reach the cut-out pressure". */
  readonly reason: string;
  /** What it gives or asks. */
  readonly value: Measure;
  /** What was wanted or allowed. */
  readonly limit: Measure;
}

/** A pump of the job's list, tried. */
export interface CandidatePlan {
  /** Its name. */
  readonly name: string;
  /** Whether it does the job. */
  readonly suits: boolean;
  /** Why not; empty where nothing stands against it. */
  readonly faults: readonly CandidateFault[];
  /** Flow at cut-in; null where it delivers none. */
  readonly atCutIn: PumpPoint | null;
  /** Flow at cut-out; null where it delivers none. */
  readonly atCutOut: PumpPoint | null;
}

/** The least and the most of a flow. */
export interface FlowBand {
  /** The least. */
  readonly low: VolumeFlow;
  /** The most. */
  readonly high: VolumeFlow;
}

/** The pump chosen, in its well. */
export interface ChosenPump {
  /** Its name. */
  readonly name: string;
  /** At cut-in, where it gives most; null where it delivers nothing. */
  readonly atCutIn: PumpPoint | null;
  /** At cut-out, where it gives least; null where it cannot reach it. */
  readonly atCutOut: PumpPoint | null;
  /** Flow at cut-in of the weakest and the strongest pump that ISO 9906 accepts as this one; null where one delivers none. */
  readonly flowBand: FlowBand | null;
  /** Pressure at the surface against a closed valve, the water at its highest. */
  readonly shutoffPressure: GaugePressure;
  /** The same with the water at its usual level. */
  readonly usualShutoff: GaugePressure;
  /** Cooling of its motor at the least flow it runs long at. */
  readonly cooling: MotorCooling;
}

/** The pump. */
export interface PumpStage {
  /** Flow the pump is wanted for. */
  readonly dutyFlow: VolumeFlow;
  /** Head there, part by part. */
  readonly duty: TotalDynamicHead;
  /** Depth of the intake. */
  readonly setting: Length;
  /** Whether the job gave the setting or the plan worked it out. */
  readonly settingBy: "job" | "plan";
  /** The setting against casing, screen, bottom and water. */
  readonly settingChecks: PumpSetting;
  /** Whether some depth inside the casing keeps the intake covered; where none does the pump hangs in the open hole. */
  readonly casingServes: boolean;
  /** Depth to the water at the most flow: what the setting was chosen for. */
  readonly lowestLevel: Length;
  /** The pumps tried, best first. */
  readonly candidates: readonly CandidatePlan[];
  /** The one to take; null where the list has none or none was given: buy by the duty. */
  readonly chosen: ChosenPump | null;
}

/** The drop pipe. */
export interface DropPipeStage {
  /** Its pipe. */
  readonly pipe: PipeSize;
  /** Whether the job gave it or the plan chose it. */
  readonly pipeBy: "job" | "plan";
  /** Length, from the pump to the tank. */
  readonly length: Length;
  /** Velocity at the duty flow. */
  readonly velocity: Velocity;
  /** Head lost in pipe and fittings at the duty flow. */
  readonly headLoss: Length;
  /** Highest pressure at its lower end: against a closed valve, water at its highest. */
  readonly highestPressure: GaugePressure;
  /** What it may see at the temperature of the water; null where its standard gives no rating. */
  readonly pressureRating: GaugePressure | null;
  /** Pull on the hoist, pipe full and nothing buoyed up: pump, pipe and water; null where the pump's mass is not known. */
  readonly hangingLoad: Force | null;
  /** Check valves, guides and cable ties by depth, as practice has them. */
  readonly fixings: Fixings;
}

/** What the controls do in a use. */
export interface HeldPlan {
  /** The use. */
  readonly use: string;
  /** Flow of it. */
  readonly flow: VolumeFlow;
  /** What happens. */
  readonly held: PressureHeld;
}

/** Controls. */
export interface ControlsStage {
  /** Pressure that starts the pump. */
  readonly cutIn: GaugePressure;
  /** Pressure that stops it. */
  readonly cutOut: GaugePressure;
  /** Pressure the regulating valve holds; null where there is none. */
  readonly setPressure: GaugePressure | null;
  /** Flow the valve always lets pass; null where there is none. */
  readonly minimumFlow: VolumeFlow | null;
  /** What happens in each use, with a valve and a pump; empty otherwise. */
  readonly held: readonly HeldPlan[];
  /** Pressure a relief valve opens at; null where there is none. */
  readonly reliefPressure: GaugePressure | null;
  /** Flow it must pass there; null where there is no valve or no pump. */
  readonly reliefCapacity: VolumeFlow | null;
}

/** The tank. */
export interface TankStage {
  /** Volume of the vessel. */
  readonly volume: Volume;
  /** Whether the job gave it or the plan sized it. */
  readonly volumeBy: "job" | "plan";
  /** Its precharge. */
  readonly precharge: GaugePressure;
  /** Highest working pressure of its plate; null where the job does not say. */
  readonly maximumPressure: GaugePressure | null;
  /** What it gives between cut-out and cut-in. */
  readonly drawdown: TankDrawdown;
  /** The use that starts the pump most often; null where no pump delivers. */
  readonly worst: WorstDemand | null;
  /** Most starts in an hour that the motor stands; null where there is no pump. */
  readonly mostStarts: Frequency | null;
  /** Time to fill from cut-in to cut-out with nothing used; null where no pump delivers. */
  readonly fillTime: Duration | null;
}

/** A day of use, run through event by event. */
export interface DayStage {
  /** What is drawn, and when: each part of the day with its flow. */
  readonly demand: readonly DemandSegment[];
  /** How the run ended. */
  readonly state: "completed" | "ran dry" | "no storage" | "too many steps";
  /** Equal parts the day's water is drawn in, at the flows of the uses in turn. */
  readonly draws: number;
  /** Starts of the pump. */
  readonly starts: number;
  /** Most of them in one hour. */
  readonly mostStartsInAnHour: number;
  /** Time the pump runs. */
  readonly runTime: Duration;
  /** Its shortest run; null where none ended. */
  readonly shortestRun: Duration | null;
  /** Water delivered. */
  readonly delivered: Volume;
  /** Water asked for that did not come. */
  readonly refused: Volume;
  /** Share of the water asked for that came. */
  readonly servedShare: Ratio;
  /** Energy from the supply; null where the pump's curve gives no efficiency. */
  readonly energy: Energy | null;
  /** Energy for a volume, J/m³; null likewise. */
  readonly energyPerVolume: number | null;
}

/** A cable of the circuit, sized or checked. */
export interface CablePlan {
  /** Where it runs. */
  readonly name: string;
  /** One-way length. */
  readonly length: Length;
  /** Size. */
  readonly size: string;
  /** Whether the job gave it or the plan sized it. */
  readonly sizeBy: "job" | "plan";
  /** Copper or aluminium. */
  readonly material: "copper" | "aluminium";
  /** Least equipment grounding conductor beside it. */
  readonly groundingSize: string;
  /** Volts lost in it at the running current. */
  readonly drop: Voltage;
}

/** A source of power, tried. */
export interface SourcePlan {
  /** Its name. */
  readonly name: string;
  /** Utility or generator. */
  readonly kind: "utility" | "generator";
  /** Its phases. */
  readonly phase: "single-phase" | "three-phase";
  /** Voltage at its terminals. */
  readonly voltage: Voltage;
  /** Generator: the receptacle the pump is fed from; null where none was named. */
  readonly receptacle: Receptacle | null;
  /** Voltage at the motor while running; 0 where the circuit cannot carry it. */
  readonly runningVoltage: Voltage;
  /** Voltage at the motor as it starts, the circuit's drop alone taken off. */
  readonly startingVoltage: Voltage;
  /** What the generator makes of it, with its margins; null for a utility. */
  readonly generator: GeneratorChecked | GeneratorMisfit | null;
}

/** Power. */
export interface PowerStage {
  /** Current of the motor at full load. */
  readonly fullLoadCurrent: Current;
  /** Current as it starts. */
  readonly lockedRotorCurrent: Current;
  /** Least ampacity of the conductors, 125 % of full load. */
  readonly conductorAmpacity: Current;
  /** Highest standard breaker the code permits. */
  readonly highestBreaker: Current;
  /** Least equipment grounding conductor, the thickest that any of the cables asks for. */
  readonly groundingSize: string;
  /** Power drawn at the full-load current. */
  readonly inputPower: Power;
  /** Efficiency of the motor, from its plate or typical. */
  readonly motorEfficiency: Ratio;
  /** The code that the currents, ratings and sizes follow. */
  readonly method: "nfpa-70";
  /** The cables. */
  readonly cables: readonly CablePlan[];
  /** Volts lost from source to motor while running. */
  readonly drop: Voltage;
  /** The same as a share of the source's voltage. */
  readonly dropShare: Ratio;
  /** The sources. */
  readonly sources: readonly SourcePlan[];
}

/** Disinfection. */
export interface DisinfectionStage {
  /** Water to treat. */
  readonly treated: TreatedVolume;
  /** Bleach for it. */
  readonly dose: BleachDose;
  /** Time to pump the treated water out at the duty flow, once. */
  readonly flushTime: Duration;
}

/** All stages; the order of the fields is the order of the work. */
export interface PlanStages {
  /** The place. */
  readonly site: SiteStage;
  /** What the property wants. */
  readonly demand: DemandStage;
  /** The well. */
  readonly well: WellStage;
  /** The yard lines. */
  readonly layout: LayoutStage;
  /** The pump. */
  readonly pump: PumpStage;
  /** The drop pipe. */
  readonly dropPipe: DropPipeStage;
  /** Controls. */
  readonly controls: ControlsStage;
  /** The tank. */
  readonly tank: TankStage;
  /** A day of use; null where there is no pump, or the job does not say how much a day takes. */
  readonly day: DayStage | null;
  /** Power; null where there is no pump to feed. */
  readonly power: PowerStage | null;
  /** Disinfection. */
  readonly disinfection: DisinfectionStage;
}
