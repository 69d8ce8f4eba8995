/**
 * Percentages of the code's rules for one motor on one branch circuit.
 *
 * Source: `nfpa-70`: 430.22, Table 430.52 (2011 edition), 430.32 (2008 text). Provenance: read in public reproductions, but
 * the 130 % of 430.32(C), the larger ratings of 430.52(C)(1) exception 2 and the 115 % of 430.110 from memory.
 *
 * @module
 */

/** Kinds of short-circuit and ground-fault protection. */
export type ProtectionDevice =
  | "inverse-time breaker"
  | "dual-element fuse"
  | "non-time-delay fuse"
  | "instantaneous-trip breaker";

/** What the code allows of one kind of device, as a share of the full-load current. */
export interface ProtectionRule {
  /** Greatest rating or setting; the next standard rating up is permitted. */
  readonly share: number;
  /** Greatest where the motor will not start with that, for currents up to 100 A, then above. */
  readonly ifItWillNotStart: readonly [upTo100A: number, above100A: number];
}

/**
 * Rules for single-phase and squirrel-cage motors.
 *
 * @source nfpa-70, Table 430.52 and 430.52(C)(1) exception 2
 */
export const protectionRules: Readonly<Record<ProtectionDevice, ProtectionRule>> = {
  "inverse-time breaker": { share: 2.5, ifItWillNotStart: [4, 3] },
  "dual-element fuse": { share: 1.75, ifItWillNotStart: [2.25, 2.25] },
  "non-time-delay fuse": { share: 3, ifItWillNotStart: [4, 4] },
  "instantaneous-trip breaker": { share: 8, ifItWillNotStart: [13, 13] },
};

/** Least ampacity of the conductors to one motor in continuous duty, of its full-load current (430.22). */
export const CONDUCTOR_SHARE = 1.25;

/** Least rating of the disconnecting switch, of the full-load current (430.110). */
export const DISCONNECT_SHARE = 1.15;

/** Overload setting, of the nameplate current: service factor 1.15 or more, or rise of 40 °C or less; then all others. */
export const OVERLOAD_SHARES: Readonly<Record<"robust" | "other", { first: number; ifItWillNotStart: number }>> = {
  robust: { first: 1.25, ifItWillNotStart: 1.4 },
  other: { first: 1.15, ifItWillNotStart: 1.3 },
};

/** Thermal protector in the motor: greatest trip current, of the full-load current of the tables, up to 9 A, 20 A, above. */
export const THERMAL_PROTECTOR_SHARES: readonly (readonly [upTo: number, share: number])[] = [
  [9, 1.7],
  [20, 1.56],
  [Infinity, 1.4],
];
