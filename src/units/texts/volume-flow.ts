/**
 * How a volume flow is written.
 *
 * @module
 */

import { parseQuantity, type UnitText } from "../parse-quantity.ts";
import {
  cubicFeetPerSecond,
  cubicMetresPerDay,
  cubicMetresPerHour,
  cubicMetresPerSecond,
  gpm,
  imperialGallonsPerDay,
  imperialGpm,
  inCubicFeetPerSecond,
  inCubicMetresPerDay,
  inCubicMetresPerHour,
  inCubicMetresPerSecond,
  inGpm,
  inImperialGallonsPerDay,
  inImperialGpm,
  inLitresPerHour,
  inLitresPerMinute,
  inLitresPerSecond,
  inUsGallonsPerDay,
  inUsGallonsPerHour,
  inUsGallonsPerSecond,
  litresPerHour,
  litresPerMinute,
  litresPerSecond,
  usGallonsPerDay,
  usGallonsPerHour,
  usGallonsPerSecond,
  type VolumeFlow,
} from "../volume-flow.ts";

/** The units in which a volume flow is read and written. */
export const volumeFlowUnits: readonly UnitText<VolumeFlow>[] = [
  { symbol: "m³/s", words: ["m³/s", "m^3/s"], make: cubicMetresPerSecond, read: inCubicMetresPerSecond },
  { symbol: "L/s", words: ["L/s", "l/s"], make: litresPerSecond, read: inLitresPerSecond },
  { symbol: "gal/s", words: ["gps", "gal/s", "USgal/s"], make: usGallonsPerSecond, read: inUsGallonsPerSecond },
  { symbol: "ft³/s", words: ["ft³/s", "ft^3/s", "cfs"], make: cubicFeetPerSecond, read: inCubicFeetPerSecond },
  { symbol: "L/min", words: ["L/min", "l/min", "lpm"], make: litresPerMinute, read: inLitresPerMinute },
  { symbol: "L/h", words: ["L/h", "l/h"], make: litresPerHour, read: inLitresPerHour },
  { symbol: "m³/h", words: ["m³/h", "m^3/h"], make: cubicMetresPerHour, read: inCubicMetresPerHour },
  { symbol: "m³/d", words: ["m³/d", "m^3/d", "m³/day"], make: cubicMetresPerDay, read: inCubicMetresPerDay },
  {
    symbol: "gpm",
    words: ["gpm", "gal/min", "gallons/min", "gallonsperminute", "gallonsaminute", "USgpm", "USgal/min"],
    make: gpm,
    read: inGpm,
  },
  { symbol: "imp gpm", words: ["impgpm", "impgal/min"], make: imperialGpm, read: inImperialGpm },
  { symbol: "gph", words: ["gph", "gal/h", "gal/hr", "USgph"], make: usGallonsPerHour, read: inUsGallonsPerHour },
  { symbol: "gpd", words: ["gpd", "gal/d", "gal/day", "USgpd"], make: usGallonsPerDay, read: inUsGallonsPerDay },
  {
    symbol: "imp gpd",
    words: ["impgpd", "impgal/d", "impgal/day"],
    make: imperialGallonsPerDay,
    read: inImperialGallonsPerDay,
  },
];

/**
 * Reads a volume flow from text, with its unit.
 *
 * @param text - a number and a unit, such as `18 gpm`
 * @returns the quantity
 * @throws {@link InputError} where the text has no number, no unit, or a unit of something else
 * @source common practice
 *
 * @example
 * ```ts
 * import { parseFlow } from "risingmain/units";
 *
 * parseFlow("18 gpm"); // ≈ 0.0011356
 * ```
 */
export function parseFlow(text: string): VolumeFlow {
  return parseQuantity("a volume flow", volumeFlowUnits, "18 gpm", text);
}
