/**
 * Net positive suction head: how far above boiling the water arrives at a pump, and how high it may be sucked.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { AbsolutePressure, Density, GaugePressure, Length } from "../units/index.ts";
import { requireDensity, requireHead, requirePressure } from "./ranges.ts";

/** The water on the suction side of a pump. */
export interface SuctionInput {
  /** Pressure of the air at the site's altitude; `atmosphereAt` in `risingmain/water`. 0 to 1e6 Pa. */
  readonly atmosphere: AbsolutePressure;
  /** Vapour pressure of the water at its temperature; `waterAt` in `risingmain/water`. 0 to 1e7 Pa. */
  readonly vapourPressure: AbsolutePressure;
  /** Gauge pressure on the surface of the water, in a closed tank. ±1e9 Pa; 0 (open) where left out. */
  readonly surfacePressure?: GaugePressure;
  /** Density of the water at its temperature. 1 to 25 000 kg/m³. */
  readonly density: Density;
  /** Head lost in the suction pipe, foot valve and fittings. 0 to 1 000 000 m. */
  readonly suctionLoss: Length;
}

/** The suction side with the height of the water. */
export interface NpshInput extends SuctionInput {
  /** Height of the water above the pump's inlet; negative for a suction lift. ±1 000 000 m. */
  readonly waterAbovePump: Length;
}

/** NPSH available, and its parts. */
export interface NpshAvailable {
  /** Head above the vapour pressure at the pump's inlet, m; 0 or less: the water boils before it gets there. */
  readonly npshAvailable: Length;
  /** Head of the air, m. */
  readonly atmosphericHead: Length;
  /** Head of the gauge pressure on the water, m. */
  readonly surfaceHead: Length;
  /** Height of the water above the inlet, m; negative for a lift. */
  readonly waterAbovePump: Length;
  /** Head of the vapour pressure, m; taken off. */
  readonly vapourHead: Length;
  /** Head lost on the way, m; taken off. */
  readonly suctionLoss: Length;
}

/** What a pump needs, on top of the suction side. */
export interface SuctionLiftInput extends SuctionInput {
  /** NPSH the pump requires at its flow, by its maker. 0 to 1000 m. */
  readonly npshRequired: Length;
  /** Head kept in hand above that. 0 to 1000 m. Two or three feet (0.6 to 1 m) is common practice. */
  readonly margin: Length;
}

/** The height a pump may stand above the water; or how far below the water it must. */
export type SuctionLift =
  | {
      /** The pump may stand above the water. */
      readonly state: "can lift";
      /** At most so high, m. */
      readonly greatestLift: Length;
    }
  | {
      /** The pump must stand below the water. */
      readonly state: "must be flooded";
      /** At least so deep, m. */
      readonly depthNeeded: Length;
    };

/**
 * NPSH available at a pump's inlet.
 *
 * @remarks
 * NPSH = (p_air + p_surface − p_vapour) / (ρ g) + z − h
 *
 * with z `waterAbovePump`, h `suctionLoss`. Counted as total head at the inlet, so the velocity head there is neither
 * added nor taken off. Falls by about 1 ft for each 900 ft of altitude, and fast with temperature above 40 °C.
 *
 * @param input - air, vapour and surface pressure (Pa), height and loss (m), density (kg/m³)
 * @returns NPSH available with its parts
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A jet pump 15 ft above cold water, high in the hills
 * ```ts
 * import { npshAvailable } from "risingmain/head";
 * import { feet, inFeet, kilogramsPerCubicMetre, psia } from "risingmain/units";
 *
 * const npsh = npshAvailable({
 *   atmosphere: psia(11.8), vapourPressure: psia(0.178), density: kilogramsPerCubicMetre(999.7),
 *   waterAbovePump: feet(-15), suctionLoss: feet(2.5),
 * });
 * inFeet(npsh.npshAvailable); // ≈ 9.316
 * ```
 *
 * @source ansi-hi-9.6.1: definition of NPSH available (from memory)
 * @source derived: Bernoulli's equation from the water's surface to the inlet
 */
export function npshAvailable(input: NpshInput): NpshAvailable {
  const parts = suction(input);
  const { waterAbovePump } = input;
  requireHead("waterAbovePump", waterAbovePump);
  return {
    npshAvailable: (parts.atSurface + waterAbovePump) as Length,
    atmosphericHead: parts.atmosphericHead as Length,
    surfaceHead: parts.surfaceHead as Length,
    waterAbovePump,
    vapourHead: parts.vapourHead as Length,
    suctionLoss: input.suctionLoss,
  };
}

/**
 * The greatest height at which a pump may stand above the water it sucks, without cavitation.
 *
 * @remarks
 * z = (p_air + p_surface − p_vapour) / (ρ g) − h − NPSH_required − margin
 *
 * The theoretical limit of cold water at sea level is about 33.7 ft (10.3 m); with real losses and a real pump 20 to
 * 25 ft (6 to 7.5 m) is common practice, less 1 ft for each 1 000 ft of altitude.
 *
 * @param input - the suction side, the NPSH required and the margin
 * @returns the greatest lift, or the depth below the water that the pump needs
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { greatestSuctionLift } from "risingmain/head";
 * import { feet, inFeet, kilogramsPerCubicMetre, psia } from "risingmain/units";
 *
 * const lift = greatestSuctionLift({
 *   atmosphere: psia(14.696), vapourPressure: psia(0.178), density: kilogramsPerCubicMetre(999.7),
 *   suctionLoss: feet(2.5), npshRequired: feet(6), margin: feet(3),
 * });
 * lift.state === "can lift" ? inFeet(lift.greatestLift) : Number.NaN; // ≈ 22.00
 * ```
 *
 * @source derived: NPSH available set equal to NPSH required plus margin
 */
export function greatestSuctionLift(input: SuctionLiftInput): SuctionLift {
  const { atSurface } = suction(input);
  const { npshRequired, margin } = input;
  requireWithin("npshRequired", npshRequired, 0, 1000, "m");
  requireWithin("margin", margin, 0, 1000, "m");
  const lift = atSurface - npshRequired - margin;
  return lift >= 0
    ? { state: "can lift", greatestLift: lift as Length }
    : { state: "must be flooded", depthNeeded: -lift as Length };
}

/** Heads of the suction side, and the NPSH of a pump level with the water. */
function suction(
  input: SuctionInput,
): Readonly<Record<"atmosphericHead" | "surfaceHead" | "vapourHead" | "atSurface", number>> {
  requireObject("input", input);
  const { atmosphere, vapourPressure, surfacePressure = 0, density, suctionLoss } = input;
  requireWithin("atmosphere", atmosphere, 0, 1e6, "Pa");
  requireWithin("vapourPressure", vapourPressure, 0, 1e7, "Pa");
  requirePressure("surfacePressure", surfacePressure);
  requireDensity(density);
  requireWithin("suctionLoss", suctionLoss, 0, 1e6, "m");
  const weight = density * STANDARD_GRAVITY;
  return {
    atmosphericHead: atmosphere / weight,
    surfaceHead: surfacePressure / weight,
    vapourHead: vapourPressure / weight,
    atSurface: (atmosphere + surfacePressure - vapourPressure) / weight - suctionLoss,
  };
}
