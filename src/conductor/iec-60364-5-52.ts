/**
 * Current-carrying capacity of copper conductors by method of installation: IEC 60364-5-52, annex B.
 *
 * Source: `iec-60364-5-52`, 2009 edition, Tables B.52.2 to B.52.5. Provenance: memory; no copy could be looked at again. The
 * factors for ambient follow the law of `ambient-factor.ts` and are not tabulated here; those for grouping (Table B.52.17,
 * bunched) are from memory too.
 *
 * @module
 */

/**
 * How a cable is installed: A1 in conduit in an insulated wall, B1 in conduit on a wall, C clipped direct, D1 in a duct in the
 * ground.
 */
export type IecInstallation = "A1" | "B1" | "C" | "D1";

/** Insulation of the cable: PVC to 70 °C, cross-linked polyethylene to 90 °C. */
export type IecInsulation = "PVC 70 °C" | "XLPE 90 °C";

/**
 * Areas of the columns, mm².
 *
 * @source iec-60364-5-52, Tables B.52.2 to B.52.5; recalled
 */
export const iecCapacityAreas: readonly number[] = [1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95];

/**
 * Amperes for two or three loaded conductors at 30 °C in air, 20 °C in ground, by area as in `iecCapacityAreas`.
 *
 * @source iec-60364-5-52, Tables B.52.2 to B.52.5
 */
export const iecCapacity: Readonly<
  Record<IecInsulation, Readonly<Record<IecInstallation, Readonly<Record<2 | 3, readonly number[]>>>>>
> = {
  "PVC 70 °C": {
    A1: {
      2: [14.5, 19.5, 26, 34, 46, 61, 80, 99, 119, 151, 182],
      3: [13.5, 18, 24, 31, 42, 56, 73, 89, 108, 136, 164],
    },
    B1: {
      2: [17.5, 24, 32, 41, 57, 76, 101, 125, 151, 192, 232],
      3: [15.5, 21, 28, 36, 50, 68, 89, 110, 134, 171, 207],
    },
    C: {
      2: [19.5, 27, 36, 46, 63, 85, 112, 138, 168, 213, 258],
      3: [17.5, 24, 32, 41, 57, 76, 96, 119, 144, 184, 223],
    },
    D1: {
      2: [22, 29, 37, 46, 60, 78, 99, 119, 140, 173, 204],
      3: [18, 24, 30, 38, 50, 64, 82, 98, 116, 143, 169],
    },
  },
  "XLPE 90 °C": {
    A1: {
      2: [19, 26, 35, 45, 61, 81, 106, 131, 158, 200, 241],
      3: [17, 23, 31, 40, 54, 73, 95, 117, 141, 179, 216],
    },
    B1: {
      2: [23, 31, 42, 54, 75, 100, 133, 164, 198, 253, 306],
      3: [20, 28, 37, 48, 66, 88, 117, 144, 175, 222, 269],
    },
    C: {
      2: [24, 33, 45, 58, 80, 107, 138, 171, 209, 269, 328],
      3: [22, 30, 40, 52, 71, 96, 119, 147, 179, 229, 278],
    },
    D1: {
      2: [25, 33, 43, 53, 71, 91, 116, 139, 164, 203, 239],
      3: [21, 28, 36, 44, 58, 75, 96, 115, 135, 167, 197],
    },
  },
};

/**
 * Factors for circuits bunched together, by their number from 1 up; the last one holds for all beyond.
 *
 * @source iec-60364-5-52, Table B.52.17, row 1
 */
export const iecGroupingFactors: readonly number[] = [1, 0.8, 0.7, 0.65, 0.6, 0.57, 0.54, 0.52, 0.5];
