/**
 * Pressure a plastic pipe is rated for, from the design stress of its material and the proportions of its wall.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { GaugePressure, Length, Modulus } from "../units/index.ts";

/** A pipe by its ratio of outside diameter to wall. */
export interface DimensionRatioInput {
  /** Hydrostatic design stress of the material. 1e5 to 1e9 Pa. */
  readonly designStress: Modulus;
  /** Outside diameter over minimum wall: the number of an SDR or DR. 3 to 100. */
  readonly dimensionRatio: number;
}

/**
 * Pressure rating of plastic pipe by its outside dimension ratio (SDR, DR).
 *
 * @remarks
 * P = 2 S / (R − 1)
 *
 * with S `designStress`, R `dimensionRatio`: the mean hoop stress in the wall. Standards print it rounded, within 2.5 %.
 *
 * @param input - design stress and ratio; each field says its unit and the values it takes
 * @returns the pressure rating, Pa, at the temperature of the design stress
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example SDR 21 of PVC 1120
 * ```ts
 * import { pressureRatingOfRatio } from "risingmain/pipe";
 * import { inPsi, psiModulus } from "risingmain/units";
 *
 * inPsi(pressureRatingOfRatio({ designStress: psiModulus(2000), dimensionRatio: 21 })); // ≈ 200.0
 * ```
 *
 * @source astm-d2241: the equation of the standard's appendix; ISO 161-1 has the same
 */
export function pressureRatingOfRatio(input: DimensionRatioInput): GaugePressure {
  requireObject("input", input);
  const { designStress, dimensionRatio } = input;
  requireWithin("designStress", designStress, 1e5, 1e9, "Pa");
  requireWithin("dimensionRatio", dimensionRatio, 3, 100, "");
  return ((2 * designStress) / (dimensionRatio - 1)) as GaugePressure;
}

/** A pipe by its ratio of inside diameter to wall. */
export interface InsideDimensionRatioInput {
  /** Hydrostatic design stress of the material. 1e5 to 1e9 Pa. */
  readonly designStress: Modulus;
  /** Inside diameter over minimum wall: the number of a SIDR. 1 to 100. */
  readonly insideDimensionRatio: number;
}

/**
 * Pressure rating of plastic pipe by its inside dimension ratio (SIDR).
 *
 * @remarks
 * P = 2 S / (R + 1)
 *
 * with S `designStress`, R `insideDimensionRatio`. Standards print it rounded, within 2.5 %.
 *
 * @param input - design stress and ratio; each field says its unit and the values it takes
 * @returns the pressure rating, Pa, at the temperature of the design stress
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example SIDR 15 of PE3408
 * ```ts
 * import { pressureRatingOfInsideRatio } from "risingmain/pipe";
 * import { inPsi, psiModulus } from "risingmain/units";
 *
 * inPsi(pressureRatingOfInsideRatio({ designStress: psiModulus(800), insideDimensionRatio: 15 })); // ≈ 100.0
 * ```
 *
 * @source astm-d2239: the equation of the standard's appendix
 */
export function pressureRatingOfInsideRatio(input: InsideDimensionRatioInput): GaugePressure {
  requireObject("input", input);
  const { designStress, insideDimensionRatio } = input;
  requireWithin("designStress", designStress, 1e5, 1e9, "Pa");
  requireWithin("insideDimensionRatio", insideDimensionRatio, 1, 100, "");
  return ((2 * designStress) / (insideDimensionRatio + 1)) as GaugePressure;
}

/** A pipe by its outside diameter and wall. */
export interface PlasticWallInput {
  /** Hydrostatic design stress of the material. 1e5 to 1e9 Pa. */
  readonly designStress: Modulus;
  /** Outside diameter. 0.001 to 10 m. */
  readonly outsideDiameter: Length;
  /** Minimum wall. 1/100 to 1/3 of the outside diameter, m. */
  readonly wall: Length;
}

/**
 * Pressure rating of plastic pipe by its outside diameter and wall: the schedules, whose ratio changes with size.
 *
 * @remarks
 * P = 2 S t / (D − t)
 *
 * with S `designStress`, D `outsideDiameter`, t `wall`. For pipe with plain ends; threads cut into schedule 80 halve it.
 * Standards print it rounded, within 2.5 %.
 *
 * @param input - design stress, diameter and wall; each field says its unit and the values it takes
 * @returns the pressure rating, Pa, at the temperature of the design stress
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example 2 in schedule 40 of PVC 1120
 * ```ts
 * import { pressureRatingOfWall } from "risingmain/pipe";
 * import { inches, inPsi, psiModulus } from "risingmain/units";
 *
 * inPsi(pressureRatingOfWall({ designStress: psiModulus(2000), outsideDiameter: inches(2.375), wall: inches(0.154) })); // ≈ 277
 * ```
 *
 * @source astm-d1785: the equation of the standard's appendix
 */
export function pressureRatingOfWall(input: PlasticWallInput): GaugePressure {
  requireObject("input", input);
  const { designStress, outsideDiameter: D, wall: t } = input;
  requireWithin("designStress", designStress, 1e5, 1e9, "Pa");
  requireWithin("outsideDiameter", D, 1e-3, 10, "m");
  requireWithin("wall", t, D / 100, D / 3, "m (1/100 to 1/3 of the outside diameter)");
  return ((2 * designStress * t) / (D - t)) as GaugePressure;
}

/** The highest share of its rating a plastic pipe works at where surge was not reckoned. */
const SHARE_WITHOUT_SURGE = 0.72;

/**
 * The highest working pressure for plastic pipe in a line whose surges have not been worked out.
 *
 * @remarks
 * 72 % of the pressure rating at the water's temperature: a rule of irrigation and livestock pipeline standards that
 * leaves the rest for water hammer. Where surge is worked out, add it to the working pressure instead.
 *
 * @param pressureRating - rating at the temperature of the water. 0 to 1e8 Pa
 * @returns the highest working pressure, Pa
 * @throws {@link units.InputError} where the rating is not a number in its range
 *
 * @example
 * ```ts
 * import { workingPressureWithoutSurge } from "risingmain/pipe";
 * import { inPsi, psi } from "risingmain/units";
 *
 * inPsi(workingPressureWithoutSurge(psi(160))); // ≈ 115.2
 * ```
 *
 * @source missouri-livestock-watering, chapter 5, after ASAE S376.1
 */
export function workingPressureWithoutSurge(pressureRating: GaugePressure): GaugePressure {
  requireWithin("pressureRating", pressureRating, 0, 1e8, "Pa");
  return (SHARE_WITHOUT_SURGE * pressureRating) as GaugePressure;
}
