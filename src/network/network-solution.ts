/**
 * What a solved layout says of each of its parts.
 *
 * @module
 */
import type { GaugePressure, Length, Velocity, VolumeFlow } from "../units/index.ts";

/** Head and pressure at a junction. */
export interface JunctionResult {
  /** Its name. */
  readonly id: string;
  /** Elevation of the grade line, m. */
  readonly head: Length;
  /** Gauge pressure, Pa. */
  readonly pressure: GaugePressure;
  /** "negative pressure": air or dirt is drawn in at any leak. "cut off": no source reaches it; head and pressure say nothing. */
  readonly state: "under pressure" | "negative pressure" | "cut off";
}

/** Flow in a run. */
export interface RunResult {
  /** Its name. */
  readonly id: string;
  /** Flow, m³/s, positive from `from` to `to`. */
  readonly flow: VolumeFlow;
  /** Mean velocity with the sign of the flow, m/s; null for a run without a bore (law "power"). */
  readonly velocity: Velocity | null;
  /** Head lost from `from` to `to`, m, what a reducing valve takes included; 0 in a run that is shut. */
  readonly headLoss: Length;
  /** "closed": a check valve holds. "reducing": a reducing valve holds its set pressure. "shut": turned shut, or cut off. */
  readonly state: "forward" | "reversed" | "at rest" | "closed" | "reducing" | "shut";
  /** False where its law is used beyond the range its source gives. */
  readonly insideRange: boolean;
}

/** What comes out of an outlet. */
export interface OutletResult {
  /** Its name. */
  readonly id: string;
  /** Flow, m³/s. */
  readonly flow: VolumeFlow;
  /** Gauge pressure at its junction, Pa. */
  readonly pressure: GaugePressure;
  /** "starving": nothing comes, or the pressure is below what the outlet needs. */
  readonly state: "running" | "starving" | "not open";
}

/** What a source gives. */
export interface SourceResult {
  /** Its name. */
  readonly id: string;
  /** Flow into the layout, m³/s; negative where a fixed head takes water in. */
  readonly flow: VolumeFlow;
  /** Elevation of the grade line at its junction, m. */
  readonly head: Length;
  /** "held shut": the others press harder than it can. "at its limit": it gives its largest flow. */
  readonly state: "supplying" | "filling" | "idle" | "held shut" | "at its limit";
}

/** How well the answer balances. */
export interface Residuals {
  /** Largest difference between what enters and what leaves a junction, m³/s. */
  readonly mass: VolumeFlow;
  /** Largest difference between the fall of the grade line along a link and the head it loses, m. */
  readonly energy: Length;
}

/** A layout in balance. */
export interface SolvedNetwork {
  /** A balance was found. */
  readonly state: "solved";
  /** Whether every open outlet runs and none starves. */
  readonly everyOutletServed: boolean;
  /** One result for each junction, in their order. */
  readonly junctions: readonly JunctionResult[];
  /** One result for each run, in their order. */
  readonly runs: readonly RunResult[];
  /** One result for each outlet, in their order. */
  readonly outlets: readonly OutletResult[];
  /** One result for each source, in their order. */
  readonly sources: readonly SourceResult[];
  /** How well it balances. */
  readonly residuals: Residuals;
  /** Linear systems solved, all passes together. */
  readonly iterations: number;
  /** Id of the source of the method. */
  readonly method: "todini-1988";
  /** False where any run's law is used beyond the range its source gives. */
  readonly insideRange: boolean;
}

/** Fixed demands that the sources cannot give, whatever the pressure. */
export interface CannotSupply {
  /** More is asked than the sources can give. */
  readonly state: "cannot supply";
  /** Flow that is missing, m³/s. */
  readonly short: VolumeFlow;
  /** Names of the sources that were asked for more than their largest flow. */
  readonly sources: readonly string[];
}

/**
 * Heads so far apart that rounding hides the balance: bores or lengths far beyond any pipe. Or water put in (a demand below
 * 0) where nothing takes it, behind a valve or a pump that lets none back: there is no steady flow.
 */
export interface NotSettled {
  /** No balance was reached. */
  readonly state: "not settled";
  /** How far the best answer is from balance. */
  readonly residuals: Residuals;
}

/** The outcome of {@link solveNetwork}. */
export type NetworkResult = SolvedNetwork | CannotSupply | NotSettled;
