/**
 * From the cold of the air to the cold of the ground's surface.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { DegreeTime, Ratio } from "../units/index.ts";

/** What lies on top. */
export type GroundSurface = "snow" | "concrete pavement" | "bare soil" | "shaded surface" | "turf" | "tree covered";

/** Freezing n-factors: US Army Corps of Engineers, TM 5-852-4 (1983), table 4-1 (`tm-5-852-4`). Thawing where printed. */
const FACTORS: Readonly<Record<GroundSurface, { readonly freezing: number; readonly thawing?: number }>> = {
  snow: { freezing: 1 },
  "concrete pavement": { freezing: 0.75, thawing: 1.5 },
  "bare soil": { freezing: 0.7 },
  "shaded surface": { freezing: 0.9, thawing: 1 },
  turf: { freezing: 0.5, thawing: 0.8 },
  "tree covered": { freezing: 0.3, thawing: 0.4 },
};

/** The air's freezing index and the surface. */
export interface SurfaceIndexInput {
  /** Freezing index of the air: days times degrees below freezing over the winter. 0 to 1e9 K·s (about 20 800 °F·d). */
  readonly airIndex: DegreeTime;
  /** What lies on top. */
  readonly surface: GroundSurface;
}

/** The index at the surface. */
export interface SurfaceIndex {
  /** Freezing index of the surface, K·s. */
  readonly surfaceIndex: DegreeTime;
  /** Factor from air to surface in winter. */
  readonly freezing: Ratio;
  /** Factor in summer, where it is printed. */
  readonly thawing?: Ratio;
  /** Source of the factor. */
  readonly method: "tm-5-852-4";
}

/**
 * The freezing index of the ground's surface from that of the air.
 *
 * @remarks
 * F_s = n F. The factor of snow is that of its own upper face; the warmth it keeps in below is not in it. Grass and trees keep the
 * ground warm; a drive cleared of snow is the cold case, for which take bare soil's factor, or 0.9 where it is shaded. The factors
 * scatter by a fifth from site to site.
 *
 * @param input - the air's index and the surface; each field says its unit and range
 * @returns the surface's index and the factors
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { surfaceFreezingIndex } from "risingmain/freeze";
 * import { fahrenheitDegreeDays, inFahrenheitDegreeDays } from "risingmain/units";
 *
 * const drive = surfaceFreezingIndex({ airIndex: fahrenheitDegreeDays(1500), surface: "bare soil" });
 * inFahrenheitDegreeDays(drive.surfaceIndex); // ≈ 1050
 * ```
 *
 * @source tm-5-852-4, table 4-1
 */
export function surfaceFreezingIndex(input: SurfaceIndexInput): SurfaceIndex {
  requireObject("input", input);
  requireWithin("airIndex", input.airIndex, 0, 1e9, "K·s");
  requireOneOf("surface", input.surface, Object.keys(FACTORS));
  const { freezing, thawing } = FACTORS[input.surface];
  return {
    surfaceIndex: (freezing * input.airIndex) as DegreeTime,
    freezing: freezing as Ratio,
    ...(thawing === undefined ? {} : { thawing: thawing as Ratio }),
    method: "tm-5-852-4",
  };
}
