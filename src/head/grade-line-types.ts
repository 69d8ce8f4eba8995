/**
 * What is known of a profile, and what its grade lines say: the terms of `grade-lines.ts`.
 *
 * @module
 */
import type { AbsolutePressure, Density, GaugePressure, Length, Velocity } from "../units/index.ts";

/** A station of the profile, in the order the water passes them. */
export interface GradeStationInput {
  /** What the reader calls it: "wellhead", "ridge". At most 200 characters; empty where left out. */
  readonly name?: string;
  /** Distance along the pipe from its start; never less than that of the station before. 0 to 1 000 000 m. */
  readonly distance: Length;
  /** Height of the pipe's centre above the datum. ±1 000 000 m. */
  readonly elevation: Length;
  /** Mean velocity in the pipe there. 0 to 1000 m/s; 0 where left out. */
  readonly velocity?: Velocity;
  /** Head lost since the station before. 0 to 1 000 000 m; 0 where left out; none at the first station. */
  readonly headLoss?: Length;
  /**
   * Head a pump adds since the station before. 0 to 1 000 000 m; 0 where left out; none at the first station. Put a pump
   * between two stations of one distance, and its step is drawn upright.
   */
  readonly pumpHead?: Length;
  /** Head of that pump at no flow. 0 to 1 000 000 m; as `pumpHead` where left out. */
  readonly shutoffHead?: Length;
}

/** A profile, and the state of the water at its start. */
export interface GradeLinesInput {
  /** The stations, 2 to 10 000, in the order the water passes them. */
  readonly stations: readonly GradeStationInput[];
  /** Gauge pressure at the first station while water flows. ±1e9 Pa. */
  readonly startPressure: GaugePressure;
  /**
   * Height above the datum to which the water stands at rest at the first station: a tank's level, or the cut-out
   * pressure's head. ±1 000 000 m; where left out, the energy grade of the start.
   */
  readonly staticGrade?: Length;
  /** Least gauge pressure wanted anywhere. ±1e9 Pa; 0 where left out: below it a leak draws air, or dirt, in. */
  readonly leastPressure?: GaugePressure;
  /** Pressure of the air at the site. 0 to 1e6 Pa. */
  readonly atmosphere: AbsolutePressure;
  /** Vapour pressure of the water at its temperature. 0 to 1e6 Pa. */
  readonly vapourPressure: AbsolutePressure;
  /** Density of the water. 1 to 25 000 kg/m³. */
  readonly density: Density;
}

/**
 * How the pipe runs at a station: full at the pressure wanted or more; below that pressure; below the air outside, as the
 * upper leg of a siphon, where air comes out of the water and in at every leak; or at the vapour pressure, where the
 * column parts and the flow supposed is not possible.
 */
export type GradeState = "full" | "below limit" | "siphon" | "column separation";

/** A station with its grade lines. */
export interface GradeStation {
  /** The name given. */
  readonly name: string;
  /** Distance along the pipe, m. */
  readonly distance: Length;
  /** Height of the pipe, m. */
  readonly elevation: Length;
  /** Height of the hydraulic grade line: where water stands in a tube on the pipe, m. */
  readonly hydraulicGrade: Length;
  /** Height of the energy grade line: hydraulic grade plus velocity head, m. */
  readonly energyGrade: Length;
  /** Residual pressure: gauge pressure while water flows, Pa. */
  readonly pressure: GaugePressure;
  /** Static pressure: gauge pressure at rest, pumps at no flow, Pa. */
  readonly staticPressure: GaugePressure;
  /** Whether the pipe comes up to here and goes down after: where air gathers and an air valve belongs. */
  readonly highPoint: boolean;
  /** How the pipe runs here while water flows. */
  readonly state: GradeState;
}

/** A piece of pipe between two neighbouring stations. */
export interface GradeSection {
  /** Index of its first station. */
  readonly from: number;
  /** Index of its last station. */
  readonly to: number;
  /** Length along the pipe, m. */
  readonly length: Length;
  /** The highest gauge pressure anywhere in it, flowing or at rest, Pa. */
  readonly highestPressure: GaugePressure;
  /** The lowest gauge pressure anywhere in it while water flows, Pa. */
  readonly lowestPressure: GaugePressure;
}

/** A stretch of pipe that lies above the hydraulic grade line. */
export interface SiphonReach {
  /** Where the pipe comes out above the line, m along the pipe. */
  readonly start: Length;
  /** Where it goes below it again, or ends, m along the pipe. */
  readonly end: Length;
}

/** Both grade lines and what follows from them. */
export interface GradeLines {
  /** The stations, in the order given. */
  readonly stations: readonly GradeStation[];
  /** The pieces of pipe between them. */
  readonly sections: readonly GradeSection[];
  /** The stretches under less than the air's pressure while water flows. */
  readonly siphons: readonly SiphonReach[];
  /** The worst state of any station. */
  readonly state: GradeState;
}
