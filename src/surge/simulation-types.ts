/**
 * What a simulation of a surge is told, and what it tells: the terms of `simulate-surge.ts`.
 *
 * @module
 */
import type { Caution } from "../sources/index.ts";
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
import type { LineEnd, PumpEnd } from "./line-end-types.ts";

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
      /** What to show beside it. */
      readonly cautions: readonly Caution[];
    }
  | {
      /** The steady flow before the event would already need less than the vapour pressure somewhere. */
      readonly state: "cannot start";
      /** Where it is worst, m along the line. */
      readonly distance: Length;
      /** Head missing there, m. */
      readonly short: Length;
    };
