/**
 * The ways a submersible motor is connected.
 *
 * @module
 */

/** Kind of connection. */
export type MotorConnectionKind = "two-wire" | "three-wire" | "three-phase" | "variable-speed drive";

/** What a connection needs. */
export interface MotorConnection {
  /** Phases of the supply it needs. */
  readonly system: "single-phase" | "three-phase" | "either";
  /** Conductors down the well, the grounding conductor apart. */
  readonly conductors: 2 | 3;
  /** What stands between breaker and well. */
  readonly surface: string;
  /** How to work out its drop. */
  readonly drop: string;
  /** What goes wrong where it is mistaken for another. */
  readonly caution: string;
}

/**
 * The kinds of connection.
 *
 * @source common practice
 */
export const motorConnections: Readonly<Record<MotorConnectionKind, MotorConnection>> = {
  "two-wire": {
    system: "single-phase",
    conductors: 2,
    surface: "Disconnect and pressure switch. Starting parts are inside the motor.",
    drop: "One single-phase circuit from source to motor.",
    caution: "Fed through a three-wire control box it will not start.",
  },
  "three-wire": {
    system: "single-phase",
    conductors: 3,
    surface: "Disconnect, pressure switch and the control box made for this motor: starting relay and capacitors.",
    drop: "One single-phase circuit: the line current flows in the main and common conductors. The start conductor carries less; all three are made the same size.",
    caution:
      "Black, red and yellow are main, start and common by custom only: find them with an ohmmeter. The wrong box or a mixed-up lead burns the start winding.",
  },
  "three-phase": {
    system: "three-phase",
    conductors: 3,
    surface: "Disconnect, starter with overloads in all three lines, and protection against loss of a phase.",
    drop: "A three-phase circuit, line to line.",
    caution: "Two lines exchanged turn the pump backwards: it then gives some water and much less pressure.",
  },
  "variable-speed drive": {
    system: "either",
    conductors: 3,
    surface: "Disconnect and drive; no contactor between drive and motor. Filter where the cable is long.",
    drop: "Supply to drive: at the drive's input current. Drive to motor: three-phase, at the motor's current and frequency.",
    caution:
      "Reflections on a long output cable can double the voltage at the motor. Keep the filtered length in the drive's and the motor's data.",
  },
};
