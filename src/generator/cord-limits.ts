/**
 * Current that a flexible cord may carry between a generator and its load.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Current } from "../units/index.ts";

/** Sizes of flexible cord in common use. */
export type CordSize = "18 AWG" | "16 AWG" | "14 AWG" | "12 AWG" | "10 AWG" | "8 AWG" | "6 AWG" | "4 AWG" | "2 AWG";

/**
 * Ampacity of hard-service cord: three current-carrying conductors, then two.
 *
 * Provenance: memory.
 *
 * @source nfpa-70, Table 400.5(A)(1), 2014 edition
 */
export const cordAmpacity: Readonly<Record<CordSize, readonly [three: number, two: number]>> = {
  "18 AWG": [7, 10],
  "16 AWG": [10, 13],
  "14 AWG": [15, 18],
  "12 AWG": [20, 25],
  "10 AWG": [25, 30],
  "8 AWG": [35, 40],
  "6 AWG": [45, 55],
  "4 AWG": [60, 70],
  "2 AWG": [80, 95],
};

/** A cord and its load. */
export interface CordCheckInput {
  /** Size of its conductors. */
  readonly size: CordSize;
  /** Current-carrying conductors: 2 for a single-phase load, 3 for three-phase. A neutral that carries only the difference of two live conductors is not counted. */
  readonly loaded: 2 | 3;
  /** Current of the load. 0 to 10 000 A. */
  readonly current: Current;
}

/** The cord's limit and what is left of it. */
export interface CordCheck {
  /** Whether the cord carries the load. */
  readonly state: "within limit" | "above limit";
  /** Current the cord may carry, A. */
  readonly ampacity: Current;
  /** Ampacity less the load, A; negative where the load is above it. */
  readonly margin: Current;
  /** Where the figure is from. */
  readonly method: "nfpa-70";
}

/**
 * Whether a flexible cord carries a load.
 *
 * @remarks
 * Ampacity at 30 °C, uncoiled; a cord left on its reel overheats well below it. Check the voltage drop as well.
 *
 * @param input - cord and load; each field says the values it takes
 * @returns limit and margin
 * @throws InputError naming the first field that is not known or not in its range
 *
 * @example
 * ```ts
 * import { cordCheck } from "risingmain/generator";
 * import { amperes } from "risingmain/units";
 *
 * cordCheck({ size: "10 AWG", loaded: 2, current: amperes(10) }).margin; // => 20
 * ```
 *
 * @source nfpa-70, Table 400.5(A)(1), 2014 edition
 */
export function cordCheck(input: CordCheckInput): CordCheck {
  requireObject("input", input);
  const { size, loaded, current } = input;
  requireOneOf("size", size, Object.keys(cordAmpacity));
  requireWithin("loaded", loaded, 2, 3, "");
  requireOneOf("loaded", String(loaded), ["2", "3"]);
  requireWithin("current", current, 0, 1e4, "A");
  const ampacity = cordAmpacity[size][loaded === 3 ? 0 : 1];
  const margin = ampacity - current;
  return {
    state: margin >= 0 ? "within limit" : "above limit",
    ampacity: ampacity as Current,
    margin: margin as Current,
    method: "nfpa-70",
  };
}
