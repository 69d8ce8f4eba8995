/**
 * What a simulation of a surge is told, and what it tells: the terms of `simulate-surge.ts`.
 *
 * @module
 */
import type {
  AbsolutePressure,
  Density,
  Duration,
  GaugePressure,
  Length,
  Velocity,
  Volume,
  VolumeFlow,
} from "../units/index.ts";

/** One pipe of the line, as long as its bore, wall and slope stay the same. */
export interface SurgePipe {
  /** Length. 0.01 to 100 000 m. */
  readonly length: Length;
  /** Inside diameter. 0.001 to 10 m. */
  readonly insideDiameter: Length;
  /** Speed of a pressure wave in it; `waveSpeed`, `plasticWaveSpeed`. 10 to 3000 m/s. */
  readonly waveSpeed: Velocity;
  /** Darcy friction factor at the running flow, held through the surge. 0 to 1. */
  readonly frictionFactor: number;
  /** Height of its far end above the datum. ±10 000 m. */
  readonly endElevation: Length;
}

/** An air-charged tank, teed into an end of the line at the height of the pipe. */
export interface AirTank {
  /** Volume of the whole tank. 1e-6 to 10 000 m³. */
  readonly volume: Volume;
  /** Air pressure with no water in it. −50 000 to 1e8 Pa. */
  readonly precharge: GaugePressure;
  /** Exponent n of p Vⁿ while the surge lasts: 1 held at one temperature, 1.4 no heat passing. 1 to 1.4. */
  readonly exponent: number;
  /** Inside diameter of its connection. 0.001 to 10 m. */
  readonly connectionDiameter: Length;
  /** Loss in the connection, in velocity heads, either way. 0 to 10 000. */
  readonly connectionLoss: number;
}

/** How far a valve stands open at a time. */
export interface ValveOpening {
  /** Time from the start; never less than that of the row before. 0 to 1e6 s. */
  readonly time: Duration;
  /** Flow it passes over the flow it passes wide open, at one head loss. 0 to 1. */
  readonly opening: number;
}

/** A flow at a time. */
export interface ScheduledFlow {
  /** Time from the start; never less than that of the row before. 0 to 1e6 s. */
  readonly time: Duration;
  /** Flow along the line, from its start to its end. ±100 m³/s. */
  readonly flow: VolumeFlow;
}

/** A tank or main whose head does not change. */
export interface FixedHeadEnd {
  /** Names the kind. */
  readonly kind: "fixed head";
  /** Height of its water, or of its pressure's head, above the datum. ±10 000 m. */
  readonly head: Length;
}

/** A dead end. */
export interface ClosedEnd {
  /** Names the kind. */
  readonly kind: "closed";
  /** A tank at it. */
  readonly airTank?: AirTank;
}

/** A valve between the line and an outlet. Between two rows of its schedule it turns evenly; before and after it stands. */
export interface ValveEnd {
  /** Names the kind. */
  readonly kind: "valve";
  /** Height of the outlet, or of the head beyond the valve, above the datum. ±10 000 m. */
  readonly outletHead: Length;
  /** A flow through the valve wide open. 1e-9 to 100 m³/s. */
  readonly ratedFlow: VolumeFlow;
  /** The head it loses at that flow. 1e-6 to 10 000 m. */
  readonly ratedHeadLoss: Length;
  /** Openings in order of time, 1 to 1000. Two rows of one time make a jump; the first row holds at the start. */
  readonly openings: readonly ValveOpening[];
  /** A tank beside it, on the line's side. */
  readonly airTank?: AirTank;
}

/** A flow laid down beforehand: a positive-displacement pump, a demand, a textbook's even closure. */
export interface FlowEnd {
  /** Names the kind. */
  readonly kind: "flow";
  /** Flows in order of time, 1 to 1000. Two rows of one time make a jump; the first row holds at the start. */
  readonly flows: readonly ScheduledFlow[];
  /** A tank beside it, on the line's side. */
  readonly airTank?: AirTank;
}

/** A centrifugal pump with a check valve, at the start of the line, that runs and then stops. */
export interface PumpEnd {
  /** Names the kind. */
  readonly kind: "pump";
  /** Height of the water it draws from, above the datum. ±10 000 m. */
  readonly sourceHead: Length;
  /** Head at no flow. 0.01 to 10 000 m. */
  readonly shutoffHead: Length;
  /** A flow of its curve, which is taken as H = shutoff − k Q². 1e-9 to 100 m³/s. */
  readonly ratedFlow: VolumeFlow;
  /** Head at that flow; below the shutoff head. 0 to 10 000 m. */
  readonly ratedHead: Length;
  /** When the power goes off. 0 to 1e6 s. */
  readonly stopTime: Duration;
  /** Time in which its speed then falls to half. 0 (at once) to 1e6 s. */
  readonly halfSpeedTime: Duration;
  /** Time the check valve stays open after the flow has turned. 0 (ideal valve) to 1000 s. */
  readonly checkValveDelay: Duration;
  /** A tank just after the check valve. */
  readonly airTank?: AirTank;
}

/** What a line begins or ends with. */
export type LineEnd = FixedHeadEnd | ClosedEnd | ValveEnd | FlowEnd;

/** A line, its ends, and how to look at it. */
export interface SurgeSimulationInput {
  /** The pipes in order, 1 to 100. */
  readonly pipes: readonly SurgePipe[];
  /** Height of the line's start above the datum. ±10 000 m. */
  readonly startElevation: Length;
  /** What is at its start. */
  readonly start: LineEnd | PumpEnd;
  /** What is at its end. */
  readonly end: LineEnd;
  /** Density of the water. 500 to 2000 kg/m³. */
  readonly density: Density;
  /** Vapour pressure of the water. 0 to 1e5 Pa. */
  readonly vapourPressure: AbsolutePressure;
  /** Pressure of the air at the site; above the vapour pressure, at most 2e5 Pa. */
  readonly atmosphere: AbsolutePressure;
  /** How long to follow it. Above 0, at most 1e5 s; at most 200 000 time steps. */
  readonly duration: Duration;
  /**
   * Into how many reaches to cut the line; 50 where left out. From the number of pipes to 2 000; reaches times steps at
   * most 20 million.
   */
  readonly reaches?: number;
  /** Distances along the line at which to keep the history, at most 50; probes times steps at most 2 million. */
  readonly probes?: readonly Length[];
}

/** Extremes at a point of the grid. */
export interface SurgeEnvelopePoint {
  /** Distance along the line, m. */
  readonly distance: Length;
  /** Height of the pipe, m. */
  readonly elevation: Length;
  /** Head before the event, m above the datum. */
  readonly startHead: Length;
  /** Highest head, m above the datum. */
  readonly highestHead: Length;
  /** Lowest head, m above the datum. */
  readonly lowestHead: Length;
  /** Highest gauge pressure, Pa. */
  readonly highestPressure: GaugePressure;
  /** Lowest gauge pressure, Pa; not below the vapour pressure. */
  readonly lowestPressure: GaugePressure;
}

/** The history at one point of the grid; one value a time step, from time 0. */
export interface SurgeHistory {
  /** Distance of the grid point, the nearest to the probe asked for, m. */
  readonly distance: Length;
  /** Heads, m above the datum. */
  readonly heads: readonly Length[];
  /** Gauge pressures, Pa. */
  readonly pressures: readonly GaugePressure[];
  /** Flows leaving the point towards the end of the line, m³/s. */
  readonly flows: readonly VolumeFlow[];
}

/** Where and when the water first boiled. */
export interface ColumnSeparation {
  /** Time of the first cavity, s. */
  readonly time: Duration;
  /** Its distance along the line, m. */
  readonly distance: Length;
  /** The largest cavity of any time and place, m³. */
  readonly largestCavity: Volume;
}

/** What the check valve did. */
export interface CheckValveMotion {
  /** When it first shut after the pump stopped, s. */
  readonly time: Duration;
  /** Speed of the water backwards as it shut, m/s; 0 for an ideal valve. */
  readonly reverseVelocity: Velocity;
}

/** The swing of an air-charged tank. */
export interface AirTankSwing {
  /** At which end it is. */
  readonly at: "start" | "end";
  /** Highest air pressure, Pa. */
  readonly highestPressure: GaugePressure;
  /** Lowest air pressure, Pa. */
  readonly lowestPressure: GaugePressure;
  /** Least water in it, m³; 0: it ran empty. */
  readonly leastWater: Volume;
  /** Most water in it, m³. */
  readonly mostWater: Volume;
}

/** A surge followed in time; or why it could not begin. */
export type SurgeSimulation =
  | {
      /** The surge was followed to the end. */
      readonly state: "followed";
      /** Steady flow before the event, m³/s. */
      readonly startFlow: VolumeFlow;
      /** Time step, s: reach over wave speed. */
      readonly timeStep: Duration;
      /** Number of time steps. */
      readonly steps: number;
      /** Extremes at every point of the grid, from start to end. */
      readonly envelope: readonly SurgeEnvelopePoint[];
      /** Histories at the probes, in the order asked. */
      readonly histories: readonly SurgeHistory[];
      /** The highest gauge pressure, Pa. */
      readonly highestPressure: GaugePressure;
      /** The lowest gauge pressure, Pa. */
      readonly lowestPressure: GaugePressure;
      /** Column separation, where the vapour pressure was reached. */
      readonly columnSeparation?: ColumnSeparation;
      /** The check valve, where it shut. */
      readonly checkValve?: CheckValveMotion;
      /** The tanks, start first. */
      readonly airTanks: readonly AirTankSwing[];
      /** The largest share by which a wave speed was moved to fit the grid. */
      readonly waveSpeedShift: number;
      /** Where the method comes from. */
      readonly method: "wylie-streeter-1993";
      /** False where a cavity outgrew a tenth of its reach, or a wave speed was moved by more than 15 %. */
      readonly insideRange: boolean;
    }
  | {
      /** The steady flow before the event would already need less than the vapour pressure somewhere. */
      readonly state: "cannot start";
      /** Where it is worst, m along the line. */
      readonly distance: Length;
      /** Head missing there, m. */
      readonly short: Length;
    };
