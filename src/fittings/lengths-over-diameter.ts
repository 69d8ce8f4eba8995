/**
 * Fittings as a length in diameters, for K = (L/D) f_T with f_T of clean commercial steel.
 *
 * Recalled, as commonly reprinted from the handbook of 1976 and later editions; the part-open gate and the butterfly valve were
 * read in a reprint of an older list, which has 13 for the open gate, 135 for the swing check and 145 to 200 for the angle valve.
 *
 * @module
 */

/** Fittings with a length in diameters. */
export type LengthOverDiameterFitting =
  | "gate valve"
  | "gate valve half open"
  | "gate valve quarter open"
  | "butterfly valve"
  | "globe valve"
  | "angle valve 90"
  | "ball valve"
  | "plug valve straight"
  | "swing check valve"
  | "swing check valve clearway"
  | "foot valve poppet"
  | "foot valve hinged"
  | "elbow 90"
  | "elbow 90 long radius"
  | "elbow 45"
  | "return bend close"
  | "tee run"
  | "tee branch";

/**
 * Length in diameters of each fitting.
 *
 * @source crane-410, recalled but for the part-open gate and the butterfly valve
 */
export const lengthsOverDiameter: Readonly<Record<LengthOverDiameterFitting, number>> = {
  "gate valve": 8,
  "gate valve half open": 160,
  "gate valve quarter open": 900,
  "butterfly valve": 40,
  "globe valve": 340,
  "angle valve 90": 150,
  "ball valve": 3,
  "plug valve straight": 18,
  "swing check valve": 100,
  "swing check valve clearway": 50,
  "foot valve poppet": 420,
  "foot valve hinged": 75,
  "elbow 90": 30,
  "elbow 90 long radius": 14,
  "elbow 45": 16,
  "return bend close": 50,
  "tee run": 20,
  "tee branch": 60,
};
