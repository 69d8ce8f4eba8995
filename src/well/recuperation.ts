/**
 * How much a low-yield or dug well lets in, from how fast its level comes back.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import {
  type Area,
  type Duration,
  InputError,
  type Length,
  type Transmissivity,
  type VolumeFlow,
} from "../units/index.ts";

/** Two levels of a recovery with the pump off. */
export interface RecuperationInput {
  /** Area of the water's surface in the well. 1e-6 to 1e5 m². */
  readonly area: Area;
  /** Drawdown at the first reading. 1e-6 to 10 000 m. */
  readonly firstDrawdown: Length;
  /** Drawdown at the second. 1e-6 m to below the first. */
  readonly laterDrawdown: Length;
  /** Time between the readings. 1e-3 to 1e9 s. */
  readonly time: Duration;
}

/** What a recovery of the well's own storage shows. */
export interface Recuperation {
  /** Inflow for each length of drawdown, m³/s per m. */
  readonly specificCapacity: Transmissivity;
  /** Mean inflow between the readings, m³/s; belongs to the drawdown between them, not to the deepest. */
  readonly meanInflow: VolumeFlow;
}

/**
 * Inflow of a dug or low-yield well from how fast its level comes back.
 *
 * @remarks
 * k = (A/t) ln(s₁/s₂); mean inflow A (s₁ − s₂)/t. The yield at a working drawdown s is k s. Dividing the rise by the
 * time alone understates the yield at full drawdown, because recovery slows as it goes.
 *
 * @param input - area, the two drawdowns and the time between; each field says its unit and the values it takes
 * @returns specific capacity, and the mean inflow of the interval
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { recuperation } from "risingmain/well";
 * import { inLitresPerSecond, metres, minutes, squareMetres, type VolumeFlow } from "risingmain/units";
 *
 * const well = recuperation({
 *   area: squareMetres(12.566), firstDrawdown: metres(2.5), laterDrawdown: metres(0.7), time: minutes(80),
 * });
 * inLitresPerSecond((well.specificCapacity * 3) as VolumeFlow); // ≈ 10.0
 * ```
 *
 * @source derived: what flows into a cylinder
 */
export function recuperation(input: RecuperationInput): Recuperation {
  requireObject("input", input);
  const { area, firstDrawdown, laterDrawdown, time } = input;
  requireWithin("area", area, 1e-6, 1e5, "m²");
  requireWithin("firstDrawdown", firstDrawdown, 1e-6, 10_000, "m");
  requireWithin("laterDrawdown", laterDrawdown, 1e-6, 10_000, "m");
  requireWithin("time", time, 1e-3, 1e9, "s");
  if (!(laterDrawdown < firstDrawdown)) {
    throw new InputError("laterDrawdown", laterDrawdown, `less than the first, ${firstDrawdown} m`);
  }
  return {
    specificCapacity: ((area / time) * Math.log(firstDrawdown / laterDrawdown)) as Transmissivity,
    meanInflow: ((area * (firstDrawdown - laterDrawdown)) / time) as VolumeFlow,
  };
}
