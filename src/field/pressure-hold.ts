/**
 * Pressure-hold leak tests: what a drop of pressure means, with the tank, the pipe's stretch and the temperature allowed for.
 *
 * @module
 */
import { findRoot, requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import { type AirCharge, storedWater } from "../tank/index.ts";
import {
  type Duration,
  type GaugePressure,
  InputError,
  type Length,
  type Modulus,
  type Temperature,
  type Volume,
  type VolumeFlow,
} from "../units/index.ts";
import { waterDensity } from "../water/index.ts";
import { pressureCautions } from "./cautions.ts";

/** Bulk modulus of water as the trade takes it, 316 000 psi, Pa. */
const WATER_MODULUS = 316_000 * 6894.757;
/** The pressures a leak test is accepted at, Pa gauge. */
const MOST_PRESSURE = 1e8;

/** The wall of the pipe, where its stretch counts: plastic. */
export interface PipeWall {
  /** Inside diameter. 0.001 to 10 m. */
  readonly insideDiameter: Length;
  /** Wall thickness. 0.0001 to 1 m. */
  readonly wall: Length;
  /** Modulus of the wall for the time of the test. 1 MPa to 1 TPa: some 2.8 GPa for PVC, 0.2 to 0.8 GPa for polyethylene. */
  readonly modulus: Modulus;
  /** Linear thermal expansion of the wall, 1/K. 0 to 0.001; 0 where left out. */
  readonly expansion?: number;
}

/** A line under test. */
export interface PressureHoldInput {
  /** Water in the line, the tank's left out. 0 to 100 000 m³. */
  readonly pipeVolume: Volume;
  /** Pressure when the line was shut. 0 to 100 MPa. */
  readonly startPressure: GaugePressure;
  /** Pressure at the end. 0 to 100 MPa. */
  readonly endPressure: GaugePressure;
  /** Time between. 1 s to 100 days. */
  readonly time: Duration;
  /** Bulk modulus of water. 0.1 to 10 GPa; 316 000 psi where left out. */
  readonly bulkModulus?: Modulus;
  /** The pipe's wall; rigid where left out. */
  readonly wall?: PipeWall;
  /** The air-charged tank, where it is not shut off; its precharge taken at the start temperature. */
  readonly tank?: AirCharge;
  /** Temperature of water and tank at the start. 273.15 to 372.15 K; no change where left out. */
  readonly startTemperature?: Temperature;
  /** Temperature at the end. 273.15 to 372.15 K. */
  readonly endTemperature?: Temperature;
}

/** What the drop means. */
export interface PressureHold {
  /** Water that left the line, m³; negative where some came in (a check valve that passes, or warming not told). */
  readonly lost: Volume;
  /** The same over the time, m³/s. */
  readonly leak: VolumeFlow;
  /** Part of it that the fall of pressure let out of water and pipe, m³. */
  readonly fromPipe: Volume;
  /** Part that came out of the tank, m³: the tank feeds a leak, and hides it. */
  readonly fromTank: Volume;
  /** Part that warming made room for (negative: cooling took), m³. */
  readonly fromTemperature: Volume;
  /** The end pressure a tight line would show after the change of temperature, Pa; null where it would be below no pressure or
   * over what is accepted. */
  readonly tightPressure: GaugePressure | null;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

/**
 * The water lost in a pressure-hold test.
 *
 * @remarks
 * lost = V (1/K + d/(E s)) (p₁ − p₂) + [w(p₁) − w(p₂)] + V (ρ₁/ρ₂ − 1 − 3 α ΔT) + V_a (T₂/T₁ − 1)
 *
 * with V `pipeVolume`, K `bulkModulus`, d, s, E, α the wall's diameter, thickness, modulus and expansion, w the water in the tank
 * by Boyle's law, V_a its air at the end pressure, ρ water's density. A rigid line loses 1 psi for an eyedropper of water; a tank on
 * line gives most of a gallon for the same psi, so shut it off to find a small leak. Plastic creeps: let it settle for hours, and
 * take its modulus for the time of the test. Trapped air works as a small tank.
 *
 * @param input - line, pressures, time, tank and temperatures; each field says its unit and range
 * @returns the water lost with its parts, the leak, and the pressure a tight line would show
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example Forty gallons of steel pipe, the tank shut off, 1 psi in an hour
 * ```ts
 * import { pressureHold } from "risingmain/field";
 * import { hours, inMillilitres, psi, usGallons } from "risingmain/units";
 *
 * const line = pressureHold({
 *   pipeVolume: usGallons(40), startPressure: psi(60), endPressure: psi(59), time: hours(1),
 * });
 * inMillilitres(line.lost); // ≈ 0.48
 * ```
 *
 * @source derived: mass balance of a shut line
 */
export function pressureHold(input: PressureHoldInput): PressureHold {
  requireObject("input", input);
  const { pipeVolume: V, startPressure, endPressure, time, bulkModulus = WATER_MODULUS, wall, tank } = input;
  requireWithin("pipeVolume", V, 0, 1e5, "m³");
  requireWithin("startPressure", startPressure, 0, MOST_PRESSURE, "Pa");
  requireWithin("endPressure", endPressure, 0, MOST_PRESSURE, "Pa");
  requireWithin("time", time, 1, 8_640_000, "s");
  requireWithin("bulkModulus", bulkModulus, 1e8, 1e10, "Pa");
  const { start, end } = temperatures(input);
  const stretch = 1 / bulkModulus + (wall === undefined ? 0 : wallStretch(wall));
  if (tank !== undefined) storedWater({ ...tank, pressure: startPressure });

  const expansion = wall?.expansion ?? 0;
  const warming = V * (waterDensity(start) / waterDensity(end) - 1 - 3 * expansion * (end - start));
  const parts = (pressure: number) => {
    if (tank === undefined) return { pipe: V * stretch * (startPressure - pressure), tank: 0, air: 0 };
    const before = storedWater({ ...tank, pressure: startPressure });
    const after = storedWater({ ...tank, pressure: pressure as GaugePressure });
    return {
      pipe: V * stretch * (startPressure - pressure),
      tank: before.stored - after.stored,
      // Warmer air at the same pressure takes more room, but no more than the tank has.
      air: Math.min(after.air * (end / start - 1), after.stored),
    };
  };
  const lostAt = (pressure: number): number => {
    const { pipe, tank: fromTank, air } = parts(pressure);
    return pipe + fromTank + warming + air;
  };
  const { pipe, tank: fromTank, air } = parts(endPressure);
  const lost = lostAt(endPressure);
  return {
    lost: lost as Volume,
    leak: (lost / time) as VolumeFlow,
    fromPipe: pipe as Volume,
    fromTank: fromTank as Volume,
    fromTemperature: (warming + air) as Volume,
    tightPressure: tightPressure(lostAt),
    cautions: pressureCautions,
  };
}

/** Where nothing is lost: the loss falls as the end pressure rises, so the root is one. */
function tightPressure(lostAt: (pressure: number) => number): GaugePressure | null {
  if (!(lostAt(0) > 0 && lostAt(MOST_PRESSURE) < 0)) return null;
  return findRoot(lostAt, 0, MOST_PRESSURE).x as GaugePressure;
}

function temperatures(input: PressureHoldInput): { readonly start: Temperature; readonly end: Temperature } {
  const { startTemperature, endTemperature } = input;
  if ((startTemperature === undefined) !== (endTemperature === undefined)) {
    throw new InputError("endTemperature", endTemperature, "both temperatures or neither");
  }
  // With no change told, any temperature does: the difference is what counts.
  const start = startTemperature ?? (283.15 as Temperature);
  const end = endTemperature ?? start;
  requireWithin("startTemperature", start, 273.15, 372.15, "K");
  requireWithin("endTemperature", end, 273.15, 372.15, "K");
  return { start, end };
}

function wallStretch(wall: PipeWall): number {
  requireObject("wall", wall);
  requireWithin("wall.insideDiameter", wall.insideDiameter, 0.001, 10, "m");
  requireWithin("wall.wall", wall.wall, 1e-4, 1, "m");
  requireWithin("wall.modulus", wall.modulus, 1e6, 1e12, "Pa");
  if (wall.expansion !== undefined) requireWithin("wall.expansion", wall.expansion, 0, 0.001, "1/K");
  return wall.insideDiameter / (wall.modulus * wall.wall);
}
