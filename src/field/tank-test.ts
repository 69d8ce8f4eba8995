/**
 * Flow from the tank itself: the water between two pressures, and the time it took to come or go.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { type AirCharge, storedWater } from "../tank/index.ts";
import type { Duration, GaugePressure, Volume, VolumeFlow } from "../units/index.ts";
import { type Carried, carried, type TrialOptions } from "./carried.ts";
import { GAUGE, TANK_SHARE, WATCH } from "./usual-doubts.ts";

/** A tank between two pressures. */
export interface TankTestInput extends AirCharge, TrialOptions {
  /** Lower pressure: where the pump starts. 0 to 100 MPa. */
  readonly lowPressure: GaugePressure;
  /** Upper pressure: where it stops; above the lower. Up to 100 MPa. */
  readonly highPressure: GaugePressure;
  /** Time the pressure took from one to the other. 0.1 s to 1 day. */
  readonly time: Duration;
  /** Standard uncertainty of each pressure, precharge included. 0 to 1 MPa; 1 psi where left out (common practice). */
  readonly pressureUncertainty?: GaugePressure;
  /** Standard uncertainty of the time. 0 to 1 day; 1 s where left out (common practice). */
  readonly timeUncertainty?: Duration;
}

/** The flow. */
export interface TankTest extends Carried<VolumeFlow> {
  /** Mean flow into or out of the tank, m³/s: filling, the pump's with every tap shut; drawing, the taps' with the pump off. */
  readonly flow: VolumeFlow;
  /** Water that moved, m³. */
  readonly volume: Volume;
  /** Source of the uncertainty. */
  readonly method: "jcgm-100";
}

/** The ends of what an air charge accepts: gauge pressure, and absolute pressure of the air, Pa. */
const MOST_PRESSURE = 1e8;
const LEAST_AIR = 100;

/**
 * The flow that filled or drew a tank between its switch points.
 *
 * @remarks
 * q = ΔV/t with ΔV the difference of `storedWater` at the two pressures. Shut every tap while filling, stop the pump while drawing.
 * The mean over the pressures: a pump gives more at the lower, less at the upper. The precharge is the weak point: check it
 * with the tank empty.
 *
 * @param input - tank, pressures and time; each field says its unit and range
 * @returns the flow, the water moved and the uncertainty
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example An 85 gal tank on 40/60 psi filled in 95 s
 * ```ts
 * import { tankTest } from "risingmain/field";
 * import { inGpm, psi, seconds, standardAtmospheres, usGallons } from "risingmain/units";
 *
 * const filled = tankTest({
 *   volume: usGallons(85), precharge: psi(38), atmosphere: standardAtmospheres(1),
 *   lowPressure: psi(40), highPressure: psi(60), time: seconds(95),
 * });
 * inGpm(filled.flow); // ≈ 13.85
 * inGpm(filled.standardUncertainty); // ≈ 1.15
 * ```
 *
 * @source derived: Boyle's law over the time
 * @source jcgm-100, 5.1.2
 */
export function tankTest(input: TankTestInput): TankTest {
  requireObject("input", input);
  const { lowPressure, highPressure, time, pressureUncertainty = GAUGE, timeUncertainty = WATCH, ...charge } = input;
  requireWithin("lowPressure", lowPressure, 0, MOST_PRESSURE, "Pa");
  requireWithin("highPressure", highPressure, lowPressure, MOST_PRESSURE, "Pa (above the lower)");
  requireWithin("time", time, 0.1, 86_400, "s");
  requireWithin("pressureUncertainty", pressureUncertainty, 0, 1e6, "Pa");
  requireWithin("timeUncertainty", timeUncertainty, 0, 86_400, "s");
  const moved = (volume: number, precharge: number, low: number, high: number): number =>
    storedWater({
      ...charge,
      volume: volume as Volume,
      precharge: precharge as GaugePressure,
      pressure: high as GaugePressure,
    }).stored -
    storedWater({
      ...charge,
      volume: volume as Volume,
      precharge: precharge as GaugePressure,
      pressure: low as GaugePressure,
    }).stored;
  const volume = moved(charge.volume, charge.precharge, lowPressure, highPressure);
  const vacuum = LEAST_AIR - charge.atmosphere;
  const gauge = { standardUncertainty: pressureUncertainty, high: MOST_PRESSURE };
  return {
    flow: (volume / time) as VolumeFlow,
    volume: volume as Volume,
    ...carried<VolumeFlow>(
      [
        {
          name: "volume",
          value: charge.volume,
          standardUncertainty: TANK_SHARE * charge.volume,
          low: 1e-9,
          high: 1e4,
        },
        { name: "precharge", value: charge.precharge, low: vacuum, ...gauge },
        { name: "lowPressure", value: lowPressure, low: 0, ...gauge },
        { name: "highPressure", value: highPressure, low: 0, ...gauge },
        { name: "time", value: time, standardUncertainty: timeUncertainty, low: 0.01, high: 1e6 },
      ],
      ([v = 0, precharge = 0, low = 0, high = 0, t = 1]) => moved(v, precharge, low, high) / t,
      input,
    ),
    method: "jcgm-100",
  };
}
