/**
 * What the clockwork of a run needs to know of the hydraulics: one interface, two kinds of well.
 *
 * @module
 */

/** Why a stretch of time ended. */
export type Outcome = "limit" | "cut-in" | "cut-out" | "low level" | "tank empty" | "ran dry" | "given up";

/** Well, pump, main and tank in motion. Holds its state; made anew for each run, so that a run stays a pure function. */
export interface Plant {
  /** Water in the tanks, m³. */
  readonly water: number;
  /** Gauge pressure at the switch, Pa. */
  readonly pressure: number;
  /** Flow of the pump, m³/s; 0 at rest. */
  readonly flow: number;
  /** Length of the last stretch, s. */
  readonly elapsed: number;
  /** Volume pumped in it, m³, from the integral of the pump's flow. */
  readonly pumped: number;
  /** Volume wanted in it and not delivered, m³. */
  readonly refused: number;
  /** Energy used in it, J; 0 where the pump's curve says nothing of power. */
  readonly energy: number;
  /** Steps of integration taken so far; 0 where times are found by quadrature. */
  readonly steps: number;
  /** Fall of the well's level that matters to the next cycle, m; 0 where the level follows the flow at once. */
  readonly memory: number;
  /** Depth of the water in the well now, m. A function: an accessor would give each plant a shape of its own, and slow code. */
  depth(): number;
  /** Starts the pump. False where the level is too low at once. */
  start(demand: number): boolean;
  /** Stops the pump. */
  stop(): void;
  /** Goes on with the pump running, for at most `limit` seconds. */
  running(limit: number, demand: number): Outcome;
  /** Goes on with the pump at rest; held off, it does not stop at the cut-in. */
  resting(limit: number, demand: number, heldOff: boolean): Outcome;
  /** Time at rest until the water has risen to a depth, s; infinite where it never does. */
  recoveryTime(depth: number): number;
}

/** Where a run begins, and how much work it may be. */
export interface PlantStart {
  /** Gauge pressure at the switch, Pa. */
  readonly pressure: number;
  /** Fall of the level below static, m; used only where the well stores. */
  readonly drawdown: number;
  /** Most steps of integration before giving up. */
  readonly mostSteps: number;
}

/** A plant as its maker sees it. */
export type Mutable<T> = { -readonly [Key in keyof T]: T[Key] };
