/**
 * Water held in a casing and in the ring around what hangs in it.
 *
 * @module
 */
import { requireObject, requirePositive, requireWithin } from "../numeric/index.ts";
import { type Area, InputError, type Length, type Volume } from "../units/index.ts";

/** A length of casing or open hole. */
export interface CasingVolumeInput {
  /** Inside diameter of the casing, or diameter of the open hole. Above 0, at most 100 m. */
  readonly insideDiameter: Length;
  /** Length of it that holds water. 0 to 10 000 m. */
  readonly length: Length;
}

/**
 * Water held in a length of casing or open hole.
 *
 * @remarks
 * V = π D² L / 4, with D `insideDiameter` and L `length`. Exact for a round casing; an open hole is seldom round.
 *
 * @param input - the casing; each field says its unit and the values it takes
 * @returns the volume, m³
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { casingVolume } from "risingmain/well";
 * import { feet, inches, inUsGallons } from "risingmain/units";
 *
 * inUsGallons(casingVolume({ insideDiameter: inches(6), length: feet(1) })); // ≈ 1.47
 * ```
 *
 * @source derived: volume of a cylinder
 */
export function casingVolume(input: CasingVolumeInput): Volume {
  requireObject("input", input);
  const { insideDiameter: D, length: L } = input;
  requirePositive("insideDiameter", D, 100, "m");
  requireWithin("length", L, 0, 10_000, "m");
  return ((Math.PI / 4) * D * D * L) as Volume;
}

/** A ring between a casing and a round body inside it. */
export interface AnnulusInput {
  /** Inside diameter of the casing. Above 0, at most 100 m. */
  readonly insideDiameter: Length;
  /** Outside diameter of the pump, motor, pipe or sleeve in it. 0 to below the casing's, m. */
  readonly bodyDiameter: Length;
}

/** The ring. */
export interface Annulus {
  /** Area open to the water, m². */
  readonly area: Area;
  /** Width of the ring where the body hangs in the middle, m. */
  readonly clearance: Length;
}

/**
 * Open area and width of the ring between a casing and a body inside it.
 *
 * @remarks
 * A = π (D − d)(D + d) / 4; clearance (D − d) / 2, with D `insideDiameter`, d `bodyDiameter`.
 *
 * @param input - the two diameters, m
 * @returns area, m², and width, m, of the ring
 * @throws {@link units.InputError} where a diameter is out of its range or the body does not fit
 *
 * @example
 * ```ts
 * import { annulus } from "risingmain/well";
 * import { inches, inInches } from "risingmain/units";
 *
 * inInches(annulus({ insideDiameter: inches(6.065), bodyDiameter: inches(3.75) }).clearance); // ≈ 1.1575
 * ```
 *
 * @source derived: area between two circles
 */
export function annulus(input: AnnulusInput): Annulus {
  requireObject("input", input);
  const { insideDiameter: D, bodyDiameter: d } = input;
  requirePositive("insideDiameter", D, 100, "m");
  requireWithin("bodyDiameter", d, 0, 100, "m");
  if (!(d < D)) throw new InputError("bodyDiameter", d, `less than the inside diameter, ${D} m`);
  return { area: ((Math.PI / 4) * (D - d) * (D + d)) as Area, clearance: ((D - d) / 2) as Length };
}

/** A ring of some length. */
export interface AnnulusVolumeInput extends AnnulusInput {
  /** Length of the ring that holds water. 0 to 10 000 m. */
  readonly length: Length;
}

/**
 * Water held in the ring between a casing and what hangs in it.
 *
 * @remarks
 * V = π (D − d)(D + d) L / 4.
 *
 * @param input - the two diameters and the length, m
 * @returns the volume, m³
 * @throws {@link units.InputError} where a field is out of its range or the body does not fit
 *
 * @example
 * ```ts
 * import { annulusVolume } from "risingmain/well";
 * import { inches, inLitres, metres, millimetres } from "risingmain/units";
 *
 * const ring = { insideDiameter: millimetres(150), bodyDiameter: millimetres(33.4), length: metres(10) };
 * inLitres(annulusVolume(ring)); // ≈ 168.0
 * ```
 *
 * @source derived: area between two circles, times the length
 */
export function annulusVolume(input: AnnulusVolumeInput): Volume {
  const { area } = annulus(input);
  requireWithin("length", input.length, 0, 10_000, "m");
  return (area * input.length) as Volume;
}

/** Water standing in a well. Depths are measured down from one mark, such as the top of the casing. */
export interface WaterColumnInput {
  /** Depth of the bottom of the well. 0 to 10 000 m. */
  readonly wellDepth: Length;
  /** Depth of the water; negative for a flowing well. −1000 to 10 000 m. */
  readonly waterLevel: Length;
}

/**
 * Height of the water standing above the bottom of a well; 0 where the level lies below the bottom.
 *
 * @param input - the two depths below the same mark, m
 * @returns height of the column, m
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { waterColumn } from "risingmain/well";
 * import { feet, inFeet } from "risingmain/units";
 *
 * inFeet(waterColumn({ wellDepth: feet(200), waterLevel: feet(35) })); // ≈ 165.0
 * ```
 *
 * @source derived: difference of depths
 */
export function waterColumn(input: WaterColumnInput): Length {
  requireObject("input", input);
  const { wellDepth, waterLevel } = input;
  requireWithin("wellDepth", wellDepth, 0, 10_000, "m");
  requireWithin("waterLevel", waterLevel, -1000, 10_000, "m");
  return Math.max(0, wellDepth - waterLevel) as Length;
}
