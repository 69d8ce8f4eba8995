/**
 * Flow from the tank itself: the water between two pressures, and the time it took to come or go.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { type AirCharge, storedWater } from "../tank/index.ts";
import type { Duration, GaugePressure, Volume, VolumeFlow } from "../units/index.ts";
import { propagateUncertainty, type UncertaintyPart } from "./uncertainty.ts";

/** A tank between two pressures. */
export interface TankTestInput extends AirCharge {
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
export interface TankTest {
  /** Mean flow into or out of the tank, m³/s: filling, the pump's with every tap shut; drawing, the taps' with the pump off. */
  readonly flow: VolumeFlow;
  /** Water that moved, m³. */
  readonly volume: Volume;
  /** Combined standard uncertainty of the flow, m³/s. */
  readonly standardUncertainty: VolumeFlow;
  /** What each reading adds to it. */
  readonly parts: readonly UncertaintyPart[];
  /** Source of the uncertainty. */
  readonly method: "jcgm-100";
}

/** The ends of what an air charge accepts: gauge pressure, and absolute pressure of the air, Pa. */
const MOST_PRESSURE = 1e8;
const LEAST_AIR = 100;
const ONE_PSI = 6894.757;
/** Tank volumes on a label are good to about this share, common practice. */
const VOLUME_SHARE = 0.02;

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
  const { lowPressure, highPressure, time, pressureUncertainty = ONE_PSI, timeUncertainty = 1, ...charge } = input;
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
  // The steps of the slopes must stay inside what the tank accepts, so readings near its ends are held there.
  const vacuum = LEAST_AIR - charge.atmosphere;
  const { value, standardUncertainty, parts } = propagateUncertainty({
    inputs: [
      { name: "volume", value: charge.volume, standardUncertainty: VOLUME_SHARE * charge.volume },
      { name: "precharge", value: charge.precharge, standardUncertainty: pressureUncertainty },
      { name: "lowPressure", value: lowPressure, standardUncertainty: pressureUncertainty },
      { name: "highPressure", value: highPressure, standardUncertainty: pressureUncertainty },
      { name: "time", value: time, standardUncertainty: timeUncertainty },
    ],
    model: ([v = 0, precharge = 0, low = 0, high = 0, t = 1]) =>
      moved(
        clamp(v, 1e-9, 1e4),
        clamp(precharge, vacuum, MOST_PRESSURE),
        clamp(low, 0, MOST_PRESSURE),
        clamp(high, 0, MOST_PRESSURE),
      ) / Math.max(t, 0.01),
  });
  return {
    flow: value as VolumeFlow,
    volume: volume as Volume,
    standardUncertainty: standardUncertainty as VolumeFlow,
    parts,
    method: "jcgm-100",
  };
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}
