/**
 * The flow coefficient a valve needs for a liquid flow, with choking by vapour and the reducers beside the valve.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { type AbsolutePressure, type Density, InputError, type Length, type VolumeFlow } from "../units/index.ts";
import { REFERENCE_DENSITY } from "./flow-coefficient.ts";

/** A flow that a valve has to pass, and the pressures around it. */
export interface RequiredKvInput {
  /** Flow. 1e-9 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Absolute pressure before the valve. 1000 to 1e9 Pa. */
  readonly inletPressure: AbsolutePressure;
  /** Absolute pressure behind the valve, under that before it. 0 to 1e9 Pa. */
  readonly outletPressure: AbsolutePressure;
  /** Density of the liquid. 100 to 20 000 kg/m³. */
  readonly density: Density;
  /** Vapour pressure of the liquid. 0 to 2e7 Pa. */
  readonly vapourPressure: AbsolutePressure;
  /** Pressure recovery factor F_L of the valve: about 0.9 for globe valves, 0.6 for ball valves. 0.1 to 1. */
  readonly recoveryFactor: number;
  /** Thermodynamic critical pressure of the liquid; that of water, 22.064 MPa, when left out. 1e5 to 1e9 Pa. */
  readonly criticalPressure?: AbsolutePressure;
  /** Nominal size of the valve as a length, where it is smaller than the pipe. 0.0001 to 10 m. */
  readonly valveSize?: Length;
  /** Inside diameter of the pipe, where the valve is smaller. 0.0001 to 10 m. */
  readonly pipeInsideDiameter?: Length;
}

/** The flow coefficient needed, or why no valve will do. */
export type RequiredKv =
  | {
      /** A valve of this Kv passes the flow. */
      readonly state: "sized";
      /** Kv needed, m³/h/bar^0.5. */
      readonly Kv: number;
      /** Whether vapour chokes the valve, so that the flow no longer depends on the outlet pressure. */
      readonly choked: boolean;
      /** Pressure difference at which choking begins, Pa. */
      readonly chokingDifference: number;
    }
  | {
      /** The reducers alone lose more than the pressure difference: take a larger valve. */
      readonly state: "reducers too narrow";
    };

/** Critical pressure of water, Pa (IAPWS). */
const WATER_CRITICAL_PRESSURE = 22.064e6;
/** Constant N₂ of the piping geometry factor for Kv and millimetres. */
const N2 = 0.0016;

/**
 * The flow coefficient a valve needs to pass a liquid flow between two pressures.
 *
 * @remarks
 * Kv = Q √(G / ΔP), in m³/h and bar, G the relative density; ΔP is held at F_L² (P₁ − F_F P_v) where that is less, with
 * F_F = 0.96 − 0.28 √(P_v / P_c): beyond it vapour chokes the valve, and cavitation wears it well before. Reducers of a valve
 * smaller than its pipe make Kv larger by the piping geometry factor, ΣK = 1.5 (1 − (d/D)²)², closed form. The recovery factor
 * with reducers and viscous flow are left out.
 *
 * @param input - flow, pressures, liquid and valve; each field says its unit and the values it takes
 * @returns the Kv needed and whether the valve chokes
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { requiredKv } from "risingmain/fittings";
 * import { cubicMetresPerHour, kilogramsPerCubicMetre, kilopascalsAbsolute } from "risingmain/units";
 *
 * const sized = requiredKv({
 *   flow: cubicMetresPerHour(360), inletPressure: kilopascalsAbsolute(680), outletPressure: kilopascalsAbsolute(220),
 *   density: kilogramsPerCubicMetre(965.4), vapourPressure: kilopascalsAbsolute(70.1), recoveryFactor: 0.9,
 * });
 * sized.state === "sized" ? sized.Kv : 0; // ≈ 165
 * ```
 *
 * @source iec-60534-2-1
 */
export function requiredKv(input: RequiredKvInput): RequiredKv {
  requireObject("input", input);
  const { flow, inletPressure: p1, outletPressure: p2, density, vapourPressure, recoveryFactor, valveSize } = input;
  const { criticalPressure = WATER_CRITICAL_PRESSURE, pipeInsideDiameter } = input;
  requireWithin("flow", flow, 1e-9, 1e3, "m³/s");
  requireWithin("inletPressure", p1, 1e3, 1e9, "Pa absolute");
  requireWithin("outletPressure", p2, 0, 1e9, "Pa absolute");
  requireWithin("density", density, 100, 2e4, "kg/m³");
  requireWithin("criticalPressure", criticalPressure, 1e5, 1e9, "Pa absolute");
  requireWithin("vapourPressure", vapourPressure, 0, 2e7, "Pa absolute");
  requireWithin("recoveryFactor", recoveryFactor, 0.1, 1, "");
  if (!(p1 - p2 >= 1)) throw new InputError("outletPressure", p2, "at least 1 Pa under the inlet pressure");
  if (vapourPressure >= criticalPressure) {
    throw new InputError("vapourPressure", vapourPressure, "a pressure under the critical pressure");
  }
  const criticalRatio = 0.96 - 0.28 * Math.sqrt(vapourPressure / criticalPressure);
  const chokingDifference = recoveryFactor ** 2 * (p1 - criticalRatio * vapourPressure);
  if (chokingDifference < 1)
    throw new InputError("vapourPressure", vapourPressure, "a pressure under that of the inlet");
  const choked = p1 - p2 >= chokingDifference;
  const difference = Math.min(p1 - p2, chokingDifference) / 1e5;
  const bare = flow * 3600 * Math.sqrt(density / REFERENCE_DENSITY / difference);
  if (valveSize === undefined && pipeInsideDiameter === undefined) {
    return { state: "sized", Kv: bare, choked, chokingDifference };
  }
  requireWithin("pipeInsideDiameter", pipeInsideDiameter, 1e-4, 10, "m, given with the valve size");
  requireWithin("valveSize", valveSize, 1e-4, 10, "m, given with the inside diameter of the pipe");
  const d = valveSize as number;
  const D = pipeInsideDiameter as number;
  if (d > D) throw new InputError("valveSize", d, `at most the inside diameter of the pipe, ${D} m`);
  const reducers = 1.5 * (1 - (d / D) ** 2) ** 2;
  const lost = (reducers / N2) * (bare / (d * 1e3) ** 2) ** 2;
  if (lost >= 1) return { state: "reducers too narrow" };
  return { state: "sized", Kv: bare / Math.sqrt(1 - lost), choked, chokingDifference };
}
