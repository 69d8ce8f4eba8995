/**
 * Diameter and area of a conductor from its size: the gauge law of ASTM B258, circular mils, square millimetres.
 *
 * @module
 */
import { requireWithin } from "../numeric/index.ts";
import type { Area, Length } from "../units/index.ts";
import { type ConductorSize, readSize } from "./size.ts";

/** One inch in metres; exact by definition. */
const INCH = 0.0254;
/** 36 AWG is 0.005 in and 4/0 AWG 0.46 in, 39 equal ratios apart (`astm-b258`). */
const INCHES_AT_36 = 0.005;
const RATIO_OVER_ALL_STEPS = 92;
const STEPS = 39;
/** A circular mil is the area of a circle one mil (1/1000 in) across. */
const CIRCULAR_MIL = (Math.PI / 4) * (INCH / 1000) ** 2;

/** The metal of one conductor, without insulation. */
export interface ConductorGeometry {
  /** Area of metal, m². */
  readonly area: Area;
  /** Diameter of a solid round wire of that area, m; a stranded conductor is 10 to 15 % thicker. */
  readonly solidDiameter: Length;
}

/**
 * Diameter of solid wire by American wire gauge number.
 *
 * @remarks
 * d = 0.005 in · 92^((36 − n) / 39), with n the gauge number; 1/0, 2/0, 3/0 and 4/0 AWG are n = 0, −1, −2 and −3.
 * Exact by definition; the standard's tables round it to four figures.
 *
 * @param gauge - gauge number, −3 (4/0 AWG) to 40; fractions are allowed, since the law is continuous
 * @returns the diameter, m
 * @throws InputError where the gauge is not a number in that range
 *
 * @example
 * ```ts
 * import { gaugeDiameter } from "risingmain/conductor";
 * import { inInches, inMillimetres } from "risingmain/units";
 *
 * inInches(gaugeDiameter(-3)); // ≈ 0.4600
 * inMillimetres(gaugeDiameter(12)); // ≈ 2.0525
 * ```
 *
 * @source astm-b258, diameter of solid round wire
 */
export function gaugeDiameter(gauge: number): Length {
  requireWithin("gauge", gauge, -3, 40, "");
  return (INCHES_AT_36 * RATIO_OVER_ALL_STEPS ** ((36 - gauge) / STEPS) * INCH) as Length;
}

/**
 * Area and equivalent solid diameter of a conductor size.
 *
 * @remarks
 * A gauge by its law; kcmil by definition, 1 cmil = π/4 · (0.001 in)²; a metric size by its nominal area, though metric
 * conductors are made to a resistance and may hold a few per cent less metal.
 *
 * @param size - trade size, such as `"12 AWG"`, `"250 kcmil"` or `"2.5 mm²"`
 * @returns area and diameter
 * @throws InputError where the size is unknown
 *
 * @example
 * ```ts
 * import { conductorGeometry } from "risingmain/conductor";
 * import { inCircularMils, inSquareMillimetres } from "risingmain/units";
 *
 * inSquareMillimetres(conductorGeometry("12 AWG").area); // ≈ 3.3088
 * inCircularMils(conductorGeometry("12 AWG").area); // ≈ 6530
 * ```
 *
 * @source astm-b258, diameter of solid round wire
 */
export function conductorGeometry(size: ConductorSize): ConductorGeometry {
  const parts = readSize("size", size);
  if (parts.system === "AWG") {
    const solidDiameter = gaugeDiameter(parts.gauge);
    return { area: ((Math.PI / 4) * solidDiameter * solidDiameter) as Area, solidDiameter };
  }
  const area =
    parts.system === "kcmil" ? parts.thousandCircularMils * 1000 * CIRCULAR_MIL : parts.squareMillimetres * 1e-6;
  return { area: area as Area, solidDiameter: Math.sqrt((4 * area) / Math.PI) as Length };
}
