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
  type TemperatureDifference,
  type Volume,
  type VolumeFlow,
} from "../units/index.ts";
import { waterDensity } from "../water/index.ts";
import { type BoundedReading, type Carried, carried, type TrialOptions } from "./carried.ts";
import { pressureCautions } from "./cautions.ts";
import { clearOf } from "./judge-reading.ts";
import { GAUGE, LINE_SHARE, NEEDLE, TANK_SHARE, THERMOMETER, WATCH } from "./usual-doubts.ts";

/** Bulk modulus of water as the trade takes it, 316 000 psi, Pa. */
const WATER_MODULUS = 316_000 * 6894.757;
/** The pressures a leak test is accepted at, Pa gauge. */
const MOST_PRESSURE = 1e8;
/** The least absolute pressure that an air charge accepts, Pa. */
const LEAST_AIR = 100;
/** The temperatures accepted, K. */
const COLDEST = 273.15;
const WARMEST = 372.15;

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
export interface PressureHoldInput extends TrialOptions {
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
  /** Standard uncertainty of the line's volume. 0 to 100 000 m³; 5 % of it where left out (common practice). */
  readonly volumeUncertainty?: Volume;
  /** Standard uncertainty of each reading of the one gauge, its own error dropping out. 0 to 1 MPa; half a psi where left out
   * (common practice). */
  readonly pressureUncertainty?: GaugePressure;
  /** Standard uncertainty of the time. 0 to 1 day; 1 s where left out (common practice). */
  readonly timeUncertainty?: Duration;
  /** Standard uncertainty of each temperature, where they are given. 0 to 50 K; 0.5 K where left out (common practice). */
  readonly temperatureUncertainty?: TemperatureDifference;
  /** Standard uncertainty of the tank's precharge. 0 to 1 MPa; 1 psi where left out (common practice). */
  readonly prechargeUncertainty?: GaugePressure;
  /** Standard uncertainty of the tank's volume. 0 to 1000 m³; 2 % of it where left out (common practice). */
  readonly tankUncertainty?: Volume;
}

/** What the drop means; the uncertainty, its parts and trials are those of `leak`. */
export interface PressureHold extends Carried<VolumeFlow> {
  /** "leaks" or "gains" by more than two standard uncertainties, or "nothing to tell": within the doubt of the readings. */
  readonly state: "leaks" | "gains" | "nothing to tell";
  /** Water that left the line, m³; negative where some came in (a check valve that passes, or warming not told). */
  readonly lost: Volume;
  /** Its standard uncertainty, m³. */
  readonly lostUncertainty: Volume;
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
 * Temperature is the great unknown: where none is given it is taken as unchanged, without doubt, and a line in the sun is judged
 * wrongly. A tank on line turns half a psi of needle into half a gallon of doubt.
 *
 * @param input - line, pressures, time, tank and temperatures; each field says its unit and range
 * @returns the water lost with its parts and uncertainty, the leak, and the pressure a tight line would show
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
 * @source jcgm-100, 5.1.2
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
  const expansion = wall?.expansion ?? 0;

  const balance: Balance = { pipeVolume: V, startPressure, endPressure, start, end, tank };
  const { pipe, tank: fromTank, warming } = parts(balance, stretch, expansion);
  const lost = pipe + fromTank + warming;
  const readings = doubts(input, balance);
  const formula = (values: readonly number[]): number => {
    const [volume = V, high = startPressure, low = endPressure, _, warm = start, cool = end] = values;
    const [precharge = 0, size = 0] = values.slice(6);
    const changed = parts(
      {
        pipeVolume: volume,
        startPressure: high,
        endPressure: low,
        start: warm,
        end: cool,
        tank:
          tank === undefined ? undefined : { ...tank, precharge: precharge as GaugePressure, volume: size as Volume },
      },
      stretch,
      expansion,
    );
    return changed.pipe + changed.tank + changed.warming;
  };
  const doubt = carried<VolumeFlow>(readings, (values) => formula(values) / (values[3] as number), input);
  const leak = lost / time;
  return {
    state:
      !clearOf(leak, [0], doubt.standardUncertainty) || leak === 0 ? "nothing to tell" : leak > 0 ? "leaks" : "gains",
    lost: lost as Volume,
    lostUncertainty: carried<Volume>(readings, formula, {}).standardUncertainty,
    leak: leak as VolumeFlow,
    fromPipe: pipe as Volume,
    fromTank: fromTank as Volume,
    fromTemperature: warming as Volume,
    tightPressure: tightPressure((pressure) => {
      const held = parts({ ...balance, endPressure: pressure }, stretch, expansion);
      return held.pipe + held.tank + held.warming;
    }),
    ...doubt,
    cautions: pressureCautions,
  };
}

/** A shut line between two looks at its gauge. */
interface Balance {
  readonly pipeVolume: number;
  readonly startPressure: number;
  readonly endPressure: number;
  readonly start: number;
  readonly end: number;
  readonly tank: AirCharge | undefined;
}

/** Where the water came from: pipe, tank, warming. */
function parts(
  { pipeVolume: V, startPressure, endPressure, start, end, tank }: Balance,
  stretch: number,
  expansion: number,
) {
  const pipe = V * stretch * (startPressure - endPressure);
  const water = waterDensity(start as Temperature) / waterDensity(end as Temperature);
  const warming = V * (water - 1 - 3 * expansion * (end - start));
  if (tank === undefined) return { pipe, tank: 0, warming };
  const before = storedWater({ ...tank, pressure: startPressure as GaugePressure });
  const after = storedWater({ ...tank, pressure: endPressure as GaugePressure });
  // Warmer air at the same pressure takes more room, but no more than the tank has.
  const air = Math.min(after.air * (end / start - 1), after.stored);
  return { pipe, tank: before.stored - after.stored, warming: warming + air };
}

/** The readings behind a balance with their doubts: volume, two pressures, time, two temperatures, and the tank's two. */
function doubts(input: PressureHoldInput, { start, end, tank }: Balance): readonly BoundedReading[] {
  const { pipeVolume, startPressure, endPressure, time, volumeUncertainty = LINE_SHARE * pipeVolume } = input;
  const { pressureUncertainty = NEEDLE, timeUncertainty = WATCH, prechargeUncertainty = GAUGE } = input;
  const { temperatureUncertainty = input.startTemperature === undefined ? 0 : THERMOMETER } = input;
  const { tankUncertainty = TANK_SHARE * (tank?.volume ?? 0) } = input;
  requireWithin("volumeUncertainty", volumeUncertainty, 0, 1e5, "m³");
  requireWithin("pressureUncertainty", pressureUncertainty, 0, 1e6, "Pa");
  requireWithin("timeUncertainty", timeUncertainty, 0, 86_400, "s");
  requireWithin("temperatureUncertainty", temperatureUncertainty, 0, 50, "K");
  requireWithin("prechargeUncertainty", prechargeUncertainty, 0, 1e6, "Pa");
  requireWithin("tankUncertainty", tankUncertainty, 0, 1000, "m³");
  const gauge = { standardUncertainty: pressureUncertainty, low: 0, high: MOST_PRESSURE };
  const thermometer = { standardUncertainty: temperatureUncertainty, low: COLDEST, high: WARMEST };
  return [
    { name: "pipeVolume", value: pipeVolume, standardUncertainty: volumeUncertainty, low: 0, high: 1e6 },
    { name: "startPressure", value: startPressure, ...gauge },
    { name: "endPressure", value: endPressure, ...gauge },
    { name: "time", value: time, standardUncertainty: timeUncertainty, low: 0.1, high: 1e8 },
    { name: "startTemperature", value: start, ...thermometer },
    { name: "endTemperature", value: end, ...thermometer },
    ...(tank === undefined
      ? []
      : [
          {
            name: "precharge",
            value: tank.precharge,
            standardUncertainty: prechargeUncertainty,
            low: LEAST_AIR - tank.atmosphere,
            high: MOST_PRESSURE,
          },
          { name: "tankVolume", value: tank.volume, standardUncertainty: tankUncertainty, low: 1e-9, high: 1e4 },
        ]),
  ];
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
  requireWithin("startTemperature", start, COLDEST, WARMEST, "K");
  requireWithin("endTemperature", end, COLDEST, WARMEST, "K");
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
