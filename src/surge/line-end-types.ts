/**
 * What a line can begin or end with: a fixed head, a dead end, a valve, a flow laid down, a pump; and a tank beside it.
 *
 * @module
 */
import type { Duration, GaugePressure, Length, Volume, VolumeFlow } from "../units/index.ts";

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
