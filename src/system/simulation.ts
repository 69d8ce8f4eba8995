/**
 * What a run of the system is asked, and what it answers.
 *
 * @module
 */
import type { Duration, Energy, Frequency, GaugePressure, Length, Ratio, Volume, VolumeFlow } from "../units/index.ts";
import type { RunningSystem } from "./description.ts";
import type { SystemEvent } from "./tally.ts";

/** A use that stays the same for a time. */
export interface DemandSegment {
  /** How long it lasts. 0.001 s to 10 years. */
  readonly duration: Duration;
  /** Flow wanted. 0 to 100 m³/s. */
  readonly flow: VolumeFlow;
}

/** How things stand when a run begins. */
export interface RunStart {
  /** Gauge pressure at the switch; the stop pressure if left out. 0 to 100 MPa. */
  readonly pressure?: GaugePressure;
  /** Whether the pump is running; not, if left out. Below the start pressure it starts anyway. */
  readonly pumpRunning?: boolean;
  /** Drawdown in a well with a free area; 0 if left out. 0 to 10 000 m. */
  readonly drawdown?: Length;
}

/** A system, what is drawn from it, and what the caller wants to keep. */
export interface SimulationInput {
  /** The system. */
  readonly system: RunningSystem;
  /** The use, 1 to 1 000 000 segments, begun again when it ends. */
  readonly demand: readonly DemandSegment[];
  /** Length of the run. 0.001 s to 100 years. */
  readonly duration: Duration;
  /** How things stand at its beginning. */
  readonly start?: RunStart;
  /** Most events to keep; further ones are only counted, which is quicker. 1000 if left out. 0 to 10 000 000. */
  readonly keepEvents?: number;
  /** Time between samples; none are taken if left out. Such that there are at most 10 000 000. */
  readonly sampleEvery?: Duration;
  /** Days for which the starts of each are kept; 0 if left out. 0 to 40 000. */
  readonly keepDays?: number;
  /**
   * Most stretches of time, and steps of integration, to work through one by one before giving up. A year of 100 000
   * events takes some 200 000, with a storing well some 1 000 000. 5 000 000 if left out. 1 to 1e9.
   */
  readonly mostSteps?: number;
}

/** How things stood at a sampled time. */
export interface SystemSample {
  /** Time since the start of the run, s. */
  readonly time: Duration;
  /** Gauge pressure at the switch, Pa. */
  readonly pressure: GaugePressure;
  /** Water in the tanks that a tap can have, m³. */
  readonly water: Volume;
  /** Depth of the water in the well, m. */
  readonly depth: Length;
  /** Flow of the pump, m³/s. */
  readonly flow: VolumeFlow;
  /** Whether the pump is switched on. */
  readonly pumpRunning: boolean;
}

/** What a run came to. */
export interface Simulation {
  /**
   * - "completed": to its end.
   * - "ran dry": the water fell to the intake, and the run ended there.
   * - "no storage": the tanks hold no water between start and stop, so the pump would start without end.
   * - "too many steps": `mostSteps` was reached first.
   */
  readonly state: "completed" | "ran dry" | "no storage" | "too many steps";
  /** Length of time run, s. */
  readonly time: Duration;
  /** Number of starts. */
  readonly starts: number;
  /** Starts over time, Hz; 0 where no time was run. */
  readonly startRate: Frequency;
  /** Most starts in any one hour counted from the beginning. */
  readonly mostStartsInAnHour: number;
  /** Most starts in any one day counted from the beginning. */
  readonly mostStartsInADay: number;
  /** Starts of each of the first `keepDays` days, up to the last that had one. */
  readonly startsByDay: readonly number[];
  /** Shortest run from a start to a stop; null where no run ended. */
  readonly shortestRun: Duration | null;
  /** Shortest time from one start to the next; null with fewer than two. */
  readonly shortestCycle: Duration | null;
  /** Time the pump ran, s. */
  readonly runTime: Duration;
  /** Energy used, J; null where the pump's curve says nothing of power. */
  readonly energy: Energy | null;
  /** Where the energy is counted: at the wire with a motor efficiency, otherwise at the pump's shaft. */
  readonly energyAt: "wire" | "shaft";
  /** Volume pumped, m³. */
  readonly pumped: Volume;
  /** Volume delivered to the use, m³. */
  readonly delivered: Volume;
  /** Volume wanted and not delivered, m³. */
  readonly refused: Volume;
  /** Water in the tanks at the end less that at the start, m³. */
  readonly storedChange: Volume;
  /** (Pumped − delivered − stored change) over the largest volume at hand, the tanks' water included: rounding and quadrature. */
  readonly balanceError: Ratio;
  /** The first `keepEvents` events. */
  readonly events: readonly SystemEvent[];
  /** Number of events in all. */
  readonly eventCount: number;
  /** Samples, where they were asked for. */
  readonly samples: readonly SystemSample[];
  /** How things stand at the end. */
  readonly end: SystemSample;
  /** False where the pump ran past the end of its curve, its flow there being held at the last point. */
  readonly insideRange: boolean;
}
