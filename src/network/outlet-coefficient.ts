/**
 * What one number says of an outlet: its flow at one metre of head.
 *
 * @module
 */
import { requireObject, requirePositive, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, GaugePressure, Length, VolumeFlow } from "../units/index.ts";
import { InputError } from "../units/index.ts";

declare const outletCoefficient: unique symbol;

/** Flow of an outlet at 1 m of head, m^2.5/s: a plain number, told apart by its type. */
export type OutletCoefficient = number & {
  /** Exists in the type only. */
  readonly [outletCoefficient]: true;
};

/** An outlet as a maker or a bucket test rates it. */
export interface OutletRating {
  /** Flow at the rated pressure. Above 0 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Gauge pressure at its inlet while that flow runs. Above 0 to 1e8 Pa. */
  readonly pressure: GaugePressure;
  /** Density of the water. 100 to 10 000 kg/m³. */
  readonly density: Density;
}

/** A nozzle by its bore. */
export interface OutletNozzle {
  /** Bore of the nozzle. 0.0001 to 1 m. */
  readonly diameter: Length;
  /** Discharge coefficient: 0.97 to 0.99 for a smooth nozzle, about 0.61 for a sharp-edged hole. Above 0 to 1. */
  readonly dischargeCoefficient: number;
}

/**
 * The coefficient of an outlet from one flow and the pressure that drives it.
 *
 * @remarks
 * c = Q / √(p / (ρ g)). A turbulent outlet follows the square root closely; one that regulates its own flow does not.
 *
 * @param input - flow (above 0 to 1000 m³/s), gauge pressure (above 0 to 1e8 Pa), density (100 to 10 000 kg/m³)
 * @returns the coefficient, m^2.5/s
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A hydrant that gives 12 gpm at 40 psi
 * ```ts
 * import { outletOfRating } from "risingmain/network";
 * import { gpm, kilogramsPerCubicMetre, psi } from "risingmain/units";
 *
 * outletOfRating({ flow: gpm(12), pressure: psi(40), density: kilogramsPerCubicMetre(999.7) }); // ≈ 0.00014274
 * ```
 *
 * @source derived: discharge under a head goes as its square root (`torricelli-1644`)
 */
export function outletOfRating(input: OutletRating): OutletCoefficient {
  requireObject("input", input);
  const { flow, pressure, density } = input;
  requirePositive("flow", flow, 1000, "m³/s");
  requirePositive("pressure", pressure, 1e8, "Pa gauge");
  requireWithin("density", density, 100, 1e4, "kg/m³");
  return accepted("flow", flow, flow / Math.sqrt(pressure / (density * STANDARD_GRAVITY)));
}

/**
 * The coefficient of a nozzle or a hole from its bore.
 *
 * @remarks
 * c = C_d · (π/4) d² · √(2 g)
 *
 * @param input - bore (0.0001 to 1 m) and discharge coefficient (above 0 to 1)
 * @returns the coefficient, m^2.5/s
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A quarter-inch smooth nozzle
 * ```ts
 * import { outletOfNozzle } from "risingmain/network";
 * import { inches } from "risingmain/units";
 *
 * outletOfNozzle({ diameter: inches(0.25), dischargeCoefficient: 0.98 }); // ≈ 0.00013745
 * ```
 *
 * @source derived: discharge under a head goes as its square root (`torricelli-1644`)
 */
export function outletOfNozzle(input: OutletNozzle): OutletCoefficient {
  requireObject("input", input);
  const { diameter, dischargeCoefficient } = input;
  requireWithin("diameter", diameter, 1e-4, 1, "m");
  requirePositive("dischargeCoefficient", dischargeCoefficient, 1, "");
  const area = (Math.PI / 4) * diameter * diameter;
  return accepted(
    "dischargeCoefficient",
    dischargeCoefficient,
    dischargeCoefficient * area * Math.sqrt(2 * STANDARD_GRAVITY),
  );
}

/** Smallest and largest coefficient that the solver takes, m^2.5/s. */
export const OUTLET_COEFFICIENTS = [1e-9, 1e3] as const;

function accepted(parameter: string, value: number, coefficient: number): OutletCoefficient {
  const [low, high] = OUTLET_COEFFICIENTS;
  if (!(coefficient >= low && coefficient <= high)) {
    throw new InputError(parameter, value, `an outlet that gives ${low} to ${high} m³/s at 1 m of head`);
  }
  return coefficient as OutletCoefficient;
}
