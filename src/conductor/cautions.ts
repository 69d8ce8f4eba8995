/**
 * Cautions that go with mains wiring; a report prints them.
 *
 * @module
 */

/** One caution. */
export interface CircuitCaution {
  /** Short name. */
  readonly id: "licensed-work" | "isolation" | "grounding" | "water" | "edition";
  /** What to do or not to do. */
  readonly text: string;
}

/**
 * What goes with every figure about a mains circuit.
 *
 * @source common practice
 */
export const circuitCautions: readonly CircuitCaution[] = [
  {
    id: "licensed-work",
    text: "Mains wiring is licensed work in most places. These figures help to plan and to check; the local code, the licence holder and the inspector have the last word.",
  },
  {
    id: "isolation",
    text: "Disconnect, lock out and prove dead with a tester before touching a conductor. A capacitor in a control box stays charged after the power is off.",
  },
  {
    id: "grounding",
    text: "Run an equipment grounding conductor to the pump and bond a metal casing and well cap to it. Earth alone does not open a breaker.",
  },
  {
    id: "water",
    text: "Splices under water need kits made for it, on cable listed for submersible pumps. A splice that leaks current makes the well dangerous before it stops the pump.",
  },
  {
    id: "edition",
    text: "Tables are those of the edition each result names. Codes change, and places adopt them late and amended: compare before relying on a value near its limit.",
  },
];
