/**
 * Flow coefficients of valves, Kv and Cv: one from the other, and loss and flow from one.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { PressureDifference, VolumeFlow } from "../units/index.ts";

/** Cubic metres an hour in m³/s, and the bar in Pa: the units Kv is defined with. */
export const PER_HOUR: number = 1 / 3600;
export const BAR: number = 1e5;
/** US gallons a minute in m³/s, and the psi in Pa: the units Cv is defined with (`nist-sp811`). */
const GPM = 231 * 0.0254 ** 3 * (1 / 60);
const PSI = (0.45359237 * 9.80665) / 0.0254 ** 2;
/** Square of the Kv of a valve whose Cv is 1. */
const KV_OF_CV_SQUARED = (GPM / PER_HOUR) ** 2 * (BAR / PSI);

/** Density of water at 15 °C, kg/m³, to which relative density refers (`iec-60534-2-1`). */
export const REFERENCE_DENSITY = 999.1;

/**
 * Kv of a valve from its Cv.
 *
 * @remarks
 * Kv = 0.865 Cv. Cv is the flow of water in US gpm at a loss of 1 psi, Kv the flow in m³/h at a loss of 1 bar; the factor
 * is exact from the units.
 *
 * @param Cv - flow coefficient, gpm/psi^0.5. 1e-9 to 1e9
 * @returns Kv, m³/h/bar^0.5
 * @throws {@link units.InputError} where Cv is not a number in its range
 *
 * @example
 * ```ts
 * import { kvOfCv } from "risingmain/fittings";
 *
 * kvOfCv(1); // ≈ 0.865
 * ```
 *
 * @source iec-60534-2-1
 */
export function kvOfCv(Cv: number): number {
  requireWithin("Cv", Cv, 1e-9, 1e9, "gpm/psi^0.5");
  return Cv * Math.sqrt(KV_OF_CV_SQUARED);
}

/**
 * Cv of a valve from its Kv; undoes {@link kvOfCv}.
 *
 * @param Kv - flow coefficient, m³/h/bar^0.5. 1e-9 to 1e9
 * @returns Cv, gpm/psi^0.5
 * @throws {@link units.InputError} where Kv is not a number in its range
 *
 * @example
 * ```ts
 * import { cvOfKv } from "risingmain/fittings";
 *
 * cvOfKv(1); // ≈ 1.156
 * ```
 *
 * @source iec-60534-2-1
 */
export function cvOfKv(Kv: number): number {
  requireWithin("Kv", Kv, 1e-9, 1e9, "m³/h/bar^0.5");
  return Kv / Math.sqrt(KV_OF_CV_SQUARED);
}

/** A valve of known Kv and the flow through it. */
export interface ValveLossInput {
  /** Flow coefficient, m³/h/bar^0.5. 1e-9 to 1e9. */
  readonly Kv: number;
  /** Flow; a negative flow runs backwards. −1000 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Density over that of water at 15 °C; 1 when left out. 0.1 to 20. */
  readonly relativeDensity?: number;
}

/**
 * Pressure lost in a valve of known Kv.
 *
 * @remarks
 * ΔP = G (Q / Kv)², in bar with Q in m³/h, G the relative density. Turbulent flow without flashing; where the valve may
 * choke use `requiredKv`.
 *
 * @param input - Kv and flow; each field says its unit and the values it takes
 * @returns the pressure lost, Pa; negative when the flow is
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { kvOfCv, valveLoss } from "risingmain/fittings";
 * import { gpm, inPsiDifference } from "risingmain/units";
 *
 * inPsiDifference(valveLoss({ Kv: kvOfCv(10), flow: gpm(20) })); // ≈ 4.000
 * ```
 *
 * @source iec-60534-2-1
 */
export function valveLoss(input: ValveLossInput): PressureDifference {
  requireObject("input", input);
  const { Kv, flow, relativeDensity = 1 } = input;
  requireWithin("Kv", Kv, 1e-9, 1e9, "m³/h/bar^0.5");
  requireWithin("flow", flow, -1e3, 1e3, "m³/s");
  requireWithin("relativeDensity", relativeDensity, 0.1, 20, "");
  const ratio = flow / PER_HOUR / Kv;
  return (BAR * relativeDensity * ratio * Math.abs(ratio)) as PressureDifference;
}

/** A valve of known Kv and the pressure across it. */
export interface ValveFlowInput {
  /** Flow coefficient, m³/h/bar^0.5. 1e-9 to 1e9. */
  readonly Kv: number;
  /** Pressure lost across the valve. −1e9 to 1e9 Pa. */
  readonly pressureLoss: PressureDifference;
  /** Density over that of water at 15 °C; 1 when left out. 0.1 to 20. */
  readonly relativeDensity?: number;
}

/**
 * Flow through a valve of known Kv; undoes {@link valveLoss}.
 *
 * @remarks
 * Q = Kv √(ΔP / G), in m³/h with ΔP in bar.
 *
 * @param input - Kv and pressure lost; each field says its unit and the values it takes
 * @returns the flow, m³/s; negative when the pressure is
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { kvOfCv, valveFlow } from "risingmain/fittings";
 * import { inGpm, psiDifference } from "risingmain/units";
 *
 * inGpm(valveFlow({ Kv: kvOfCv(10), pressureLoss: psiDifference(4) })); // ≈ 20.00
 * ```
 *
 * @source iec-60534-2-1
 */
export function valveFlow(input: ValveFlowInput): VolumeFlow {
  requireObject("input", input);
  const { Kv, pressureLoss, relativeDensity = 1 } = input;
  requireWithin("Kv", Kv, 1e-9, 1e9, "m³/h/bar^0.5");
  requireWithin("pressureLoss", pressureLoss, -1e9, 1e9, "Pa");
  requireWithin("relativeDensity", relativeDensity, 0.1, 20, "");
  const flow = Kv * PER_HOUR * Math.sqrt(Math.abs(pressureLoss) / (BAR * relativeDensity));
  return (pressureLoss < 0 ? -flow : flow) as VolumeFlow;
}
