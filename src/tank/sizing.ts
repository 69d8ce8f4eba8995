/**
 * The volume of an air-charged tank for a run time, or for a limit on starts.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { AbsolutePressure, Duration, Frequency, GaugePressure, Volume, VolumeFlow } from "../units/index.ts";
import { requireAirCharge, requireSwitch } from "./air-charge.ts";
import { tankDrawdown } from "./drawdown.ts";
import { recommendedPrecharge } from "./precharge.ts";

/** A pump, a switch and the air: what a tank's size follows from. */
export interface TankSizeInput {
  /** Flow of the pump into the tank; where it falls as the tank fills, that at cut-in is the safe one. 1e-12 to 100 m³/s. */
  readonly pumpFlow: VolumeFlow;
  /** Gauge pressure at which the pump starts, at the tank. 0 to 100 MPa. */
  readonly cutIn: GaugePressure;
  /** Gauge pressure at which the pump stops, at the tank. Up to 100 MPa. */
  readonly cutOut: GaugePressure;
  /** Gauge pressure of the air in the empty tank; 2 psi below the cut-in if left out. Below the cut-out. */
  readonly precharge?: GaugePressure;
  /** Absolute pressure of the air outside. 10 to 200 kPa. */
  readonly atmosphere: AbsolutePressure;
  /** Exponent n of p·Vⁿ = constant, 1 if left out. 1 to 1.4. */
  readonly polytropicExponent?: number;
}

/** A size of tank. */
export type TankSize =
  | {
      /** A tank of this volume does it. */
      readonly state: "sized";
      /** Whole volume of the tank, m³. */
      readonly volume: Volume;
      /** Usable water it gives, m³. */
      readonly usable: Volume;
      /** Usable water as a share of the volume. */
      readonly acceptance: number;
      /** Precharge the size holds for. */
      readonly precharge: GaugePressure;
    }
  | {
      /** The precharge is at or above the cut-out: no tank of any size stores water. */
      readonly state: "no water enters";
      /** Precharge that was given. */
      readonly precharge: GaugePressure;
    };

/**
 * The tank that keeps the pump running for a given time when nothing is used.
 *
 * @remarks
 * W = Q · t, V = W / acceptance. With water being used the pump runs longer, so this is the shortest run.
 * One minute is usual for small motors, two for larger ones (common practice).
 *
 * @param input - pump, switch and air, with the run time wanted (0.001 s to a day)
 * @returns the volume and its usable water
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example One minute of a 10 gpm pump on a 40/60 psi switch
 * ```ts
 * import { tankSizeForRunTime } from "risingmain/tank";
 * import { gpm, inUsGallons, minutes, psi, standardAtmospheres } from "risingmain/units";
 *
 * const job = { pumpFlow: gpm(10), cutIn: psi(40), cutOut: psi(60), atmosphere: standardAtmospheres(1) };
 * const size = tankSizeForRunTime({ ...job, runTime: minutes(1) });
 * if (size.state === "sized") inUsGallons(size.volume); // ≈ 38.8
 * ```
 *
 * @source the-driller-when-the-well, storage paragraph: 10 gal of drawdown for a 10 gpm pump
 */
export function tankSizeForRunTime(input: TankSizeInput & { readonly runTime: Duration }): TankSize {
  requireObject("input", input);
  requireWithin("runTime", input.runTime, 1e-3, 86400, "s");
  return sized(input, (flow) => flow * input.runTime);
}

/**
 * The tank that keeps the pump within a number of starts per hour at the worst use.
 *
 * @remarks
 * W = Q / (4 N), V = W / acceptance: the worst use is half the pump's flow ({@link worstDemand}).
 *
 * @param input - pump, switch and air, with the most starts per time (1e-9 to 1 Hz; 6 an hour is 0.00167 Hz)
 * @returns the volume and its usable water
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example Six starts an hour, 20 gpm, a 40/60 psi switch
 * ```ts
 * import { tankSizeForStarts } from "risingmain/tank";
 * import { gpm, inUsGallons, perHour, psi, psia } from "risingmain/units";
 *
 * const job = { pumpFlow: gpm(20), cutIn: psi(40), cutOut: psi(60), atmosphere: psia(14.7) };
 * const size = tankSizeForStarts({ ...job, starts: perHour(6) });
 * if (size.state === "sized") inUsGallons(size.volume); // ≈ 193.8
 * ```
 *
 * @source washington-state-department-2009, section 11.1: the 15 Q/N of its equations
 */
export function tankSizeForStarts(input: TankSizeInput & { readonly starts: Frequency }): TankSize {
  requireObject("input", input);
  requireWithin("starts", input.starts, 1e-9, 1, "Hz");
  return sized(input, (flow) => flow / (4 * input.starts));
}

/** A peak of use that a tank helps a pump over. */
export interface PeakStorageInput {
  /** Flow used during the peak. 0 to 100 m³/s. */
  readonly peakDemand: VolumeFlow;
  /** Flow of the pump. 0 to 100 m³/s. */
  readonly pumpFlow: VolumeFlow;
  /** How long the peak lasts; seven minutes is a trade council's advice (`the-driller-when-the-well`). 0 to one day. */
  readonly peakDuration: Duration;
  /** Shortest run of the pump. 0 to one day. */
  readonly runTime: Duration;
}

/** The usable water a peak asks for. */
export interface PeakStorage {
  /** What the peak takes beyond the pump's flow, m³. */
  readonly extra: Volume;
  /** That, and the water of the shortest run, m³. */
  readonly usable: Volume;
}

/**
 * Usable water a tank needs to carry a peak the pump alone cannot.
 *
 * @remarks
 * extra = (q − Q) · t where the peak is above the pump's flow; usable = extra + Q · run time.
 *
 * @param input - peak, pump and run time; each field says its unit and the values it takes
 * @returns the extra and the whole usable water
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example Seven minutes at 13 gpm from a 10 gpm pump
 * ```ts
 * import { peakStorage } from "risingmain/tank";
 * import { gpm, inUsGallons, minutes } from "risingmain/units";
 *
 * const peak = { peakDemand: gpm(13), pumpFlow: gpm(10), peakDuration: minutes(7), runTime: minutes(1) };
 * inUsGallons(peakStorage(peak).usable); // ≈ 31.0
 * ```
 *
 * @source the-driller-when-the-well, storage paragraph
 */
export function peakStorage(input: PeakStorageInput): PeakStorage {
  requireObject("input", input);
  const { peakDemand, pumpFlow, peakDuration, runTime } = input;
  requireWithin("peakDemand", peakDemand, 0, 100, "m³/s");
  requireWithin("pumpFlow", pumpFlow, 0, 100, "m³/s");
  requireWithin("peakDuration", peakDuration, 0, 86400, "s");
  requireWithin("runTime", runTime, 0, 86400, "s");
  const extra = Math.max(0, peakDemand - pumpFlow) * peakDuration;
  return { extra: extra as Volume, usable: (extra + pumpFlow * runTime) as Volume };
}

/** Minutes of pump flow in the gross volume of a public system's pressure tank (`great-lakes-upper-recommended-standards-for`). */
const MINUTES_OF_PUMP_FLOW = 10;

/**
 * Gross volume of a public system's pressure tank: ten minutes of the largest pump's flow.
 *
 * @remarks
 * "At least ten times the capacity of the largest pump, in gallons per minute." A rule for public systems with steady
 * pumps, generous for one house; a variable-speed drive is its stated exception. Local rules differ.
 *
 * @param pumpFlow - flow of the largest pump, 0 to 100 m³/s
 * @returns whole volume of the tank
 * @throws {@link units.InputError} where the flow is not a number in its range
 *
 * @example
 * ```ts
 * import { publicSystemTank } from "risingmain/tank";
 * import { gpm, inUsGallons } from "risingmain/units";
 *
 * inUsGallons(publicSystemTank(gpm(250))); // ≈ 2500
 * ```
 *
 * @source great-lakes-upper-recommended-standards-for, section 7.2.2 b
 */
export function publicSystemTank(pumpFlow: VolumeFlow): Volume {
  requireWithin("pumpFlow", pumpFlow, 0, 100, "m³/s");
  return (MINUTES_OF_PUMP_FLOW * 60 * pumpFlow) as Volume;
}

/** The tank that gives a drawdown, the drawdown following from the pump's flow. */
function sized(input: TankSizeInput, usableFor: (flow: number) => number): TankSize {
  const { pumpFlow, cutIn, cutOut, atmosphere, polytropicExponent = 1 } = input;
  requireWithin("pumpFlow", pumpFlow, 1e-12, 100, "m³/s");
  requireSwitch(cutIn, cutOut);
  const { precharge = recommendedPrecharge(cutIn) } = input;
  const unit = { volume: 1 as Volume, precharge, atmosphere, polytropicExponent };
  requireAirCharge(unit);
  const { acceptance } = tankDrawdown({ ...unit, cutIn, cutOut });
  if (!(acceptance > 0)) return { state: "no water enters", precharge };
  const usable = usableFor(pumpFlow);
  return { state: "sized", volume: (usable / acceptance) as Volume, usable: usable as Volume, acceptance, precharge };
}
