/**
 * Constants of the two-K method for resistance of fittings, as Hooper printed them in 1981.
 *
 * Read as coded in a general-purpose fluids library, but for three values recalled: the angle and butterfly valves, which
 * the library does not have, and the K∞ of 0.60 of the screwed return bend, where it has 0.70 on a line labelled wrong.
 *
 * @module
 */

/** Fittings with two-K constants. */
export type TwoKFitting =
  | "elbow 90 standard screwed"
  | "elbow 90 standard flanged"
  | "elbow 90 long radius"
  | "elbow 90 mitred 1 weld"
  | "elbow 90 mitred 2 welds"
  | "elbow 90 mitred 3 welds"
  | "elbow 45 standard"
  | "elbow 45 long radius"
  | "return bend standard screwed"
  | "return bend standard flanged"
  | "return bend long radius"
  | "tee branch screwed"
  | "tee branch long radius screwed"
  | "tee branch flanged"
  | "tee branch stub-in"
  | "tee run screwed"
  | "tee run flanged"
  | "tee run stub-in"
  | "gate, ball or plug valve full bore"
  | "gate, ball or plug valve reduced 0.9"
  | "gate, ball or plug valve reduced 0.8"
  | "globe valve"
  | "angle valve"
  | "diaphragm valve"
  | "lift check valve"
  | "swing check valve"
  | "tilting disc check valve"
  | "butterfly valve";

/** The two constants of a fitting. */
export interface TwoKConstants {
  /** Coefficient at a Reynolds number of 1; 0 to 100 000. */
  readonly K1: number;
  /** Coefficient in a very large fitting at a high Reynolds number; 0 to 10 000. */
  readonly Kinf: number;
}

/**
 * The two constants of each fitting.
 *
 * @source hooper-1981, table of 2-K constants
 */
export const twoKFittings: Readonly<Record<TwoKFitting, TwoKConstants>> = {
  "elbow 90 standard screwed": { K1: 800, Kinf: 0.4 },
  "elbow 90 standard flanged": { K1: 800, Kinf: 0.25 },
  "elbow 90 long radius": { K1: 800, Kinf: 0.2 },
  "elbow 90 mitred 1 weld": { K1: 1000, Kinf: 1.15 },
  "elbow 90 mitred 2 welds": { K1: 800, Kinf: 0.35 },
  "elbow 90 mitred 3 welds": { K1: 800, Kinf: 0.3 },
  "elbow 45 standard": { K1: 500, Kinf: 0.2 },
  "elbow 45 long radius": { K1: 500, Kinf: 0.15 },
  "return bend standard screwed": { K1: 1000, Kinf: 0.6 },
  "return bend standard flanged": { K1: 1000, Kinf: 0.35 },
  "return bend long radius": { K1: 1000, Kinf: 0.3 },
  "tee branch screwed": { K1: 500, Kinf: 0.7 },
  "tee branch long radius screwed": { K1: 800, Kinf: 0.4 },
  "tee branch flanged": { K1: 800, Kinf: 0.8 },
  "tee branch stub-in": { K1: 1000, Kinf: 1 },
  "tee run screwed": { K1: 200, Kinf: 0.1 },
  "tee run flanged": { K1: 150, Kinf: 0.05 },
  "tee run stub-in": { K1: 100, Kinf: 0 },
  "gate, ball or plug valve full bore": { K1: 300, Kinf: 0.1 },
  "gate, ball or plug valve reduced 0.9": { K1: 500, Kinf: 0.15 },
  "gate, ball or plug valve reduced 0.8": { K1: 1000, Kinf: 0.25 },
  "globe valve": { K1: 1500, Kinf: 4 },
  "angle valve": { K1: 1000, Kinf: 2 },
  "diaphragm valve": { K1: 1000, Kinf: 2 },
  "lift check valve": { K1: 2000, Kinf: 10 },
  "swing check valve": { K1: 1500, Kinf: 1.5 },
  "tilting disc check valve": { K1: 1000, Kinf: 0.5 },
  "butterfly valve": { K1: 800, Kinf: 0.25 },
};
