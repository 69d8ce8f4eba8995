/**
 * Flow coefficients of valves, Kv and Cv, and what follows from one: loss, flow, the resistance coefficient.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Length, PressureDifference, VolumeFlow } from "../units/index.ts";

/** Cubic metres an hour in m³/s, and the bar in Pa: the units Kv is defined with. */
const PER_HOUR = 1 / 3600;
const BAR = 1e5;
/** US gallons a minute in m³/s, and the psi in Pa: the units Cv is defined with (`nist-sp811`). */
const GPM = 231 * 0.0254 ** 3 * (1 / 60);
const PSI = (0.45359237 * 9.80665) / 0.0254 ** 2;
/** Kv of a valve whose Cv is 1. */
const KV_OF_CV = (GPM / PER_HOUR) * Math.sqrt(BAR / PSI);

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
  return Cv * KV_OF_CV;
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
  return Kv / KV_OF_CV;
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

/** A Kv and the pipe whose velocity head a coefficient refers to. */
export interface CoefficientOfKvInput {
  /** Flow coefficient, m³/h/bar^0.5. 1e-9 to 1e9. */
  readonly Kv: number;
  /** Inside diameter of the pipe. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
}

/**
 * Resistance coefficient of a valve from its Kv.
 *
 * @remarks
 * K = 2 ΔP A² / (ρ Q²) with Q = Kv at ΔP = 1 bar; K = 1.6e9 d⁴ / Kv² with d in m. On the velocity head in the pipe.
 *
 * @param input - Kv and bore; each field says its unit and the values it takes
 * @returns K, above 0
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A valve of 500 m³/h in a bore of 154 mm
 * ```ts
 * import { coefficientOfKv } from "risingmain/fittings";
 * import { millimetres } from "risingmain/units";
 *
 * coefficientOfKv({ Kv: 500, insideDiameter: millimetres(154) }); // ≈ 3.60
 * ```
 *
 * @source iec-60534-2-1: the definition of Kv
 */
export function coefficientOfKv(input: CoefficientOfKvInput): number {
  requireObject("input", input);
  const { Kv, insideDiameter } = input;
  requireWithin("Kv", Kv, 1e-9, 1e9, "m³/h/bar^0.5");
  return twoPressureHeads(insideDiameter) / (Kv * PER_HOUR) ** 2;
}

/** A resistance coefficient and the pipe it refers to. */
export interface KvOfCoefficientInput {
  /** Resistance coefficient on the velocity head in the pipe. 1e-9 to 1e12. */
  readonly coefficient: number;
  /** Inside diameter of the pipe. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
}

/**
 * Kv of a fitting from its resistance coefficient; undoes {@link coefficientOfKv}.
 *
 * @remarks
 * Kv = 3600 A √(2 · 1 bar / (ρ K))
 *
 * @param input - coefficient and bore; each field says its unit and the values it takes
 * @returns Kv, m³/h/bar^0.5
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { kvOfCoefficient } from "risingmain/fittings";
 * import { millimetres } from "risingmain/units";
 *
 * kvOfCoefficient({ coefficient: 2.475, insideDiameter: millimetres(97.2) }); // ≈ 240
 * ```
 *
 * @source iec-60534-2-1: the definition of Kv
 */
export function kvOfCoefficient(input: KvOfCoefficientInput): number {
  requireObject("input", input);
  const { coefficient, insideDiameter } = input;
  requireWithin("coefficient", coefficient, 1e-9, 1e12, "");
  return Math.sqrt(twoPressureHeads(insideDiameter) / coefficient) / PER_HOUR;
}

/** 2 A² · 1 bar / ρ: the square of the flow that a coefficient of 1 passes at a loss of 1 bar. */
function twoPressureHeads(insideDiameter: number): number {
  requireWithin("insideDiameter", insideDiameter, 1e-4, 100, "m");
  const area = (Math.PI / 4) * insideDiameter ** 2;
  return (2 * area * area * BAR) / REFERENCE_DENSITY;
}
