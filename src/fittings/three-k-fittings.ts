/**
 * Constants of the three-K method for resistance of fittings, as Darby printed them.
 *
 * Read as coded in a general-purpose fluids library. Kd carries inches to the power 0.3.
 *
 * @module
 */

/** Fittings with three-K constants. */
export type ThreeKFitting =
  | "elbow 90 threaded standard"
  | "elbow 90 threaded long radius"
  | "elbow 90 flanged"
  | "bend 90 r/D 2"
  | "bend 90 r/D 4"
  | "bend 90 r/D 6"
  | "elbow 90 mitred 1 weld"
  | "elbow 90 mitred 2 welds"
  | "elbow 90 mitred 3 welds"
  | "elbow 45 threaded standard"
  | "elbow 45 long radius"
  | "elbow 45 mitred 1 weld"
  | "elbow 45 mitred 2 welds"
  | "return bend threaded close"
  | "return bend flanged"
  | "return bend long radius"
  | "tee branch threaded"
  | "tee branch threaded long radius"
  | "tee branch flanged"
  | "tee branch stub-in"
  | "tee run threaded"
  | "tee run flanged"
  | "tee run stub-in"
  | "angle valve 45"
  | "angle valve 90"
  | "globe valve"
  | "plug valve branch"
  | "plug valve straight"
  | "plug valve three-way"
  | "gate valve"
  | "ball valve"
  | "diaphragm valve"
  | "swing check valve"
  | "lift check valve";

/** The three constants of a fitting. */
export interface ThreeKConstants {
  /** Coefficient at a Reynolds number of 1; 0 to 100 000. */
  readonly K1: number;
  /** Coefficient in a very large fitting at a high Reynolds number; 0 to 10 000. */
  readonly Ki: number;
  /** How much a small fitting adds, in^0.3; 0 to 100. */
  readonly Kd: number;
}

/**
 * The three constants of each fitting.
 *
 * @source darby-1999, table of 3-K constants
 */
export const threeKFittings: Readonly<Record<ThreeKFitting, ThreeKConstants>> = {
  "elbow 90 threaded standard": { K1: 800, Ki: 0.14, Kd: 4 },
  "elbow 90 threaded long radius": { K1: 800, Ki: 0.071, Kd: 4.2 },
  "elbow 90 flanged": { K1: 800, Ki: 0.091, Kd: 4 },
  "bend 90 r/D 2": { K1: 800, Ki: 0.056, Kd: 3.9 },
  "bend 90 r/D 4": { K1: 800, Ki: 0.066, Kd: 3.9 },
  "bend 90 r/D 6": { K1: 800, Ki: 0.075, Kd: 4.2 },
  "elbow 90 mitred 1 weld": { K1: 1000, Ki: 0.27, Kd: 4 },
  "elbow 90 mitred 2 welds": { K1: 800, Ki: 0.068, Kd: 4.1 },
  "elbow 90 mitred 3 welds": { K1: 800, Ki: 0.035, Kd: 4.2 },
  "elbow 45 threaded standard": { K1: 500, Ki: 0.071, Kd: 4.2 },
  "elbow 45 long radius": { K1: 500, Ki: 0.052, Kd: 4 },
  "elbow 45 mitred 1 weld": { K1: 500, Ki: 0.086, Kd: 4 },
  "elbow 45 mitred 2 welds": { K1: 500, Ki: 0.052, Kd: 4 },
  "return bend threaded close": { K1: 1000, Ki: 0.23, Kd: 4 },
  "return bend flanged": { K1: 1000, Ki: 0.12, Kd: 4 },
  "return bend long radius": { K1: 1000, Ki: 0.1, Kd: 4 },
  "tee branch threaded": { K1: 500, Ki: 0.274, Kd: 4 },
  "tee branch threaded long radius": { K1: 800, Ki: 0.14, Kd: 4 },
  "tee branch flanged": { K1: 800, Ki: 0.28, Kd: 4 },
  "tee branch stub-in": { K1: 1000, Ki: 0.34, Kd: 4 },
  "tee run threaded": { K1: 200, Ki: 0.091, Kd: 4 },
  "tee run flanged": { K1: 150, Ki: 0.05, Kd: 4 },
  "tee run stub-in": { K1: 100, Ki: 0, Kd: 0 },
  "angle valve 45": { K1: 950, Ki: 0.25, Kd: 4 },
  "angle valve 90": { K1: 1000, Ki: 0.69, Kd: 4 },
  "globe valve": { K1: 1500, Ki: 1.7, Kd: 3.6 },
  "plug valve branch": { K1: 500, Ki: 0.41, Kd: 4 },
  "plug valve straight": { K1: 300, Ki: 0.084, Kd: 3.9 },
  "plug valve three-way": { K1: 300, Ki: 0.14, Kd: 4 },
  "gate valve": { K1: 300, Ki: 0.037, Kd: 3.9 },
  "ball valve": { K1: 300, Ki: 0.017, Kd: 3.5 },
  "diaphragm valve": { K1: 1000, Ki: 0.69, Kd: 4.9 },
  "swing check valve": { K1: 1500, Ki: 0.46, Kd: 4 },
  "lift check valve": { K1: 2000, Ki: 2.85, Kd: 3.8 },
};
