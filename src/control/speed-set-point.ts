/**
 * Start, set and stop pressures of a variable-speed drive.
 *
 * @module
 */
import { requireObject, requirePositive, requireWithin } from "../numeric/index.ts";
import type { GaugePressure, PressureDifference, VolumeFlow } from "../units/index.ts";
import { calledPressure, type PressureAtFlow, requireFunction } from "./called-flow.ts";
import type { ControlCondition } from "./condition.ts";
import { requirePressureSwitch } from "./pressure-switch.ts";

/** A drive's pressures, and the pump at full speed. */
export interface SpeedSetPointInput {
  /** Gauge pressure at which the drive starts the pump. 0 to 100 MPa. */
  readonly startPressure: GaugePressure;
  /** Gauge pressure it holds. 0 to 100 MPa. */
  readonly setPressure: GaugePressure;
  /** Gauge pressure at which it stops the pump; above the start. Up to 100 MPa. */
  readonly stopPressure: GaugePressure;
  /** Least flow it lets the pump give while it runs. Above 0 to 100 m³/s. */
  readonly minimumFlow: VolumeFlow;
  /** Largest use to be met at the set pressure. 0 to 100 m³/s. */
  readonly peakDemand: VolumeFlow;
  /** Gauge pressure the pump makes at the sensor at full speed, against its flow; −1 to 1 GPa. */
  readonly fullSpeedPressureAt: PressureAtFlow;
  /** Rating of the weakest part. 0 to 100 MPa. */
  readonly weakestRating?: GaugePressure;
}

/** What can be wrong with a drive's pressures. */
export type SpeedSetPointCode =
  | "set not above the start"
  | "stop not above the set"
  | "full speed does not reach the stop pressure"
  | "full speed falls short of the peak"
  | "full speed can pass a rating";

/** What a check of a drive found. */
export interface SpeedSetPointCheck {
  /** Pressure at full speed at the peak demand, less the set pressure, Pa; negative where it falls short. */
  readonly reserveAtPeak: PressureDifference;
  /** Pressure at full speed at no flow, should the drive fail: what the parts must bear, Pa. */
  readonly failedDrivePressure: GaugePressure;
  /** What was found; empty where nothing was. */
  readonly conditions: readonly ControlCondition<SpeedSetPointCode>[];
}

/**
 * Checks the start, set and stop pressures of a variable-speed drive against its pump at full speed.
 *
 * @remarks
 * Start < set < stop. At full speed the pump must pass the stop pressure at the minimum flow and the set pressure at the
 * peak. A drive that fails at full speed puts the shutoff pressure on every part.
 *
 * @param input - the pressures, the flows and the pump at full speed
 * @returns the reserve at the peak, the pressure with the drive failed, and the conditions found
 * @throws {@link units.InputError} naming the first field that is not usable, or the curve where it is not a pressure
 *
 * @example
 * ```ts
 * import { checkSpeedSetPoint } from "risingmain/control";
 * import { gpm, inGpm, inPsiDifference, psi, type VolumeFlow } from "risingmain/units";
 *
 * const check = checkSpeedSetPoint({
 *   startPressure: psi(45), setPressure: psi(50), stopPressure: psi(55),
 *   minimumFlow: gpm(2), peakDemand: gpm(12),
 *   fullSpeedPressureAt: (flow: VolumeFlow) => psi(100 - 0.25 * inGpm(flow) ** 2),
 * });
 * inPsiDifference(check.reserveAtPeak); // ≈ 14.0
 * check.conditions.length; // => 0
 * ```
 *
 * @source derived: from what the settings mean
 */
export function checkSpeedSetPoint(input: SpeedSetPointInput): SpeedSetPointCheck {
  requireObject("input", input);
  const { startPressure, setPressure, stopPressure, minimumFlow, peakDemand, fullSpeedPressureAt, weakestRating } =
    input;
  requirePressureSwitch({ cutIn: startPressure, cutOut: stopPressure }, "startPressure", "stopPressure");
  requireWithin("setPressure", setPressure, 0, 1e8, "Pa gauge");
  requirePositive("minimumFlow", minimumFlow, 100, "m³/s");
  requireWithin("peakDemand", peakDemand, 0, 100, "m³/s");
  requireFunction("fullSpeedPressureAt", fullSpeedPressureAt);
  if (weakestRating !== undefined) requireWithin("weakestRating", weakestRating, 0, 1e8, "Pa gauge");
  const at = (flow: number): number => calledPressure("fullSpeedPressureAt", fullSpeedPressureAt, flow);
  const failed = at(0);
  const reserve = at(peakDemand) - setPressure;
  const atMinimum = at(minimumFlow);

  const conditions: ControlCondition<SpeedSetPointCode>[] = [];
  const found = (code: SpeedSetPointCode, value: number, limit: number): void => {
    conditions.push({ code, severity: "problem", value, limit, unit: "Pa", basis: "derived" });
  };
  if (setPressure <= startPressure) found("set not above the start", setPressure, startPressure);
  if (stopPressure <= setPressure) found("stop not above the set", stopPressure, setPressure);
  if (atMinimum <= stopPressure) found("full speed does not reach the stop pressure", atMinimum, stopPressure);
  if (reserve < 0) found("full speed falls short of the peak", reserve + setPressure, setPressure);
  if (weakestRating !== undefined && failed > weakestRating) {
    found("full speed can pass a rating", failed, weakestRating);
  }
  return {
    reserveAtPeak: reserve as PressureDifference,
    failedDrivePressure: failed as GaugePressure,
    conditions,
  };
}
