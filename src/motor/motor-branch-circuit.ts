/**
 * The branch circuit of one motor: conductor ampacity, short-circuit protection, overload, disconnect.
 *
 * @module
 */
import { standardRatings } from "../conductor/index.ts";
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Current, Ratio } from "../units/index.ts";
import {
  CONDUCTOR_SHARE,
  DISCONNECT_SHARE,
  OVERLOAD_SHARES,
  type ProtectionDevice,
  protectionRules,
  THERMAL_PROTECTOR_SHARES,
} from "./motor-rules.ts";

/** A motor on its own circuit. */
export interface MotorBranchCircuitInput {
  /** Full-load current of the code's table ({@link fullLoadCurrent}). 0.01 to 2000 A. */
  readonly fullLoadCurrent: Current;
  /** Current on the nameplate, at the service factor where one is printed; the table's where left out. 0.01 to 2000 A. */
  readonly nameplateCurrent?: Current;
  /** Service factor on the nameplate; 1 where left out. 1 to 2. */
  readonly serviceFactor?: Ratio;
  /** Kind of short-circuit protection; an inverse-time breaker where left out. */
  readonly device?: ProtectionDevice;
}

/** Limits for the parts of the circuit. */
export interface MotorBranchCircuit {
  /** The current that sized conductors and protection: the larger of table and nameplate, A. */
  readonly designCurrent: Current;
  /** Least ampacity of the conductors, 125 % of the design current, A. */
  readonly conductorAmpacity: Current;
  /** Greatest rating by percentage, A, before rounding to a standard rating. */
  readonly protectionByShare: Current;
  /** The standard rating to use: the percentage, or the next rating above it, A. An instantaneous-trip breaker is set, not rounded. */
  readonly protectionRating: Current;
  /** The largest permitted where the motor will not start with that, A. */
  readonly protectionLargest: Current;
  /** Greatest overload setting, A, from the nameplate current. */
  readonly overloadSetting: Current;
  /** Greatest overload setting where the motor will not start or carry its load with that, A. */
  readonly overloadLargest: Current;
  /** Greatest trip current of a thermal protector inside the motor, A. */
  readonly thermalProtector: Current;
  /** Least rating of the disconnecting switch, A. */
  readonly disconnect: Current;
  /** Where the rules are from. */
  readonly method: "nfpa-70";
}

/**
 * Limits for the branch circuit of one motor in continuous duty.
 *
 * @remarks
 * Conductors 125 % of the full-load current (430.22). Breaker at most 250 %, dual-element fuse 175 %, plain fuse 300 %, the
 * next standard rating up permitted (430.52). Overload 125 % of the nameplate current with a service factor of 1.15 or more,
 * else 115 % (430.32). Disconnect 115 % (430.110). Where the nameplate current is above the table's, all but the thermal
 * protector go by the nameplate, which the code permits and submersible motors need.
 * Mains wiring is licensed work: the local code and the inspector have the last word.
 *
 * @param input - the motor; each field says its unit and the values it takes
 * @returns the limits, A
 * @throws InputError naming the first field that is not in its range
 *
 * @example A 7-1/2 hp, 230 V, three-phase motor
 * ```ts
 * import { motorBranchCircuit } from "risingmain/motor";
 * import { amperes } from "risingmain/units";
 *
 * const circuit = motorBranchCircuit({ fullLoadCurrent: amperes(22) });
 * circuit.conductorAmpacity; // => 27.5
 * circuit.protectionRating; // => 60
 * ```
 *
 * @source nfpa-70, 430.22, 430.32, 430.52, 430.110 and 240.6(A)
 */
export function motorBranchCircuit(input: MotorBranchCircuitInput): MotorBranchCircuit {
  requireObject("input", input);
  const { fullLoadCurrent, nameplateCurrent = fullLoadCurrent, serviceFactor = 1 } = input;
  const { device = "inverse-time breaker" } = input;
  requireWithin("fullLoadCurrent", fullLoadCurrent, 0.01, 2000, "A");
  requireWithin("nameplateCurrent", nameplateCurrent, 0.01, 2000, "A");
  requireWithin("serviceFactor", serviceFactor, 1, 2, "");
  requireOneOf("device", device, Object.keys(protectionRules));

  const design = Math.max(fullLoadCurrent, nameplateCurrent);
  const rule = protectionRules[device];
  const byShare = rule.share * design;
  const largest = rule.ifItWillNotStart[design <= 100 ? 0 : 1] * design;
  const set = device === "instantaneous-trip breaker";
  const overload = OVERLOAD_SHARES[serviceFactor >= 1.15 ? "robust" : "other"];
  const thermal = THERMAL_PROTECTOR_SHARES.find(([upTo]) => fullLoadCurrent <= upTo) as readonly [number, number];
  const rating = set ? byShare : standardRatings(byShare as Current).above;
  return {
    designCurrent: design as Current,
    conductorAmpacity: (CONDUCTOR_SHARE * design) as Current,
    protectionByShare: byShare as Current,
    protectionRating: rating as Current,
    // Never below the rating that the next-standard-size rule already permits.
    protectionLargest: Math.max(rating, set ? largest : standardRatings(largest as Current).below) as Current,
    overloadSetting: (overload.first * nameplateCurrent) as Current,
    overloadLargest: (overload.ifItWillNotStart * nameplateCurrent) as Current,
    thermalProtector: (thermal[1] * fullLoadCurrent) as Current,
    disconnect: (DISCONNECT_SHARE * design) as Current,
    method: "nfpa-70",
  };
}
