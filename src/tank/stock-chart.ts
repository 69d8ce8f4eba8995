/**
 * Stock sizes of conventional (air-over-water) tanks by pump and switch.
 *
 * Source: US Environmental Protection Agency, SEAHOME library, Private Water Systems (archived 2008), Pressure Tank
 * Selection Chart (`us-environmental-protection-seahome-library-private`). Read in a stored copy whose columns run together;
 * split by the repeating stock sizes. Plain tanks in US gallons; flows in US gallons per minute, pressures in psi.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { type GaugePressure, inGpm, inPsi, usGallons, type Volume, type VolumeFlow } from "../units/index.ts";
import { requireSwitch } from "./air-charge.ts";

/** Switch settings of the columns, psi. */
const SETTINGS: readonly (readonly [cutIn: number, cutOut: number])[] = [
  [20, 40],
  [30, 50],
  [40, 60],
  [50, 70],
  [60, 80],
  [70, 100],
];

/** Pump flows of the rows, US gpm, and the tank of each setting, US gal. */
const ROWS: readonly (readonly [flow: number, sizes: readonly number[]])[] = [
  [4, [42, 82, 120, 120, 120, 120]],
  [12, [120, 180, 220, 315, 315, 315]],
  [18, [180, 315, 315, 525, 525, 525]],
  [24, [220, 315, 525, 525, 1000, 1000]],
  [32, [315, 525, 525, 1000, 1000, 1000]],
];

/** Pump and switch. */
export interface StockTankInput {
  /** Flow of the pump. 0 to 100 m³/s. */
  readonly pumpFlow: VolumeFlow;
  /** Gauge pressure at which the pump starts. 0 to 100 MPa. */
  readonly cutIn: GaugePressure;
  /** Gauge pressure at which the pump stops. Up to 100 MPa. */
  readonly cutOut: GaugePressure;
}

/** A line of the chart, or that the chart has none. */
export type StockTank =
  | {
      /** The chart has a tank for this. */
      readonly state: "listed";
      /** Whole volume of the stock tank. */
      readonly volume: Volume;
      /** Where it comes from. */
      readonly method: "us-environmental-protection-seahome-library-private";
    }
  | {
      /** The switch setting is not one of the chart's, or the pump is larger than its last. */
      readonly state: "not listed";
    };

/**
 * The stock size of a plain air-over-water tank, from a published chart.
 *
 * @remarks
 * The row is the first whose pump flow reaches the one asked for (4, 12, 18, 24, 32 gpm); the column the switch setting
 * (20/40, 30/50, 40/60, 50/70, 60/80 and 70/100 psi), met to half a psi. The chart goes by stock sizes, so it jumps.
 *
 * @param input - pump flow and switch
 * @returns the tank, or that the chart has none
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { stockTank } from "risingmain/tank";
 * import { gpm, inUsGallons, psi } from "risingmain/units";
 *
 * const tank = stockTank({ pumpFlow: gpm(10), cutIn: psi(40), cutOut: psi(60) });
 * if (tank.state === "listed") inUsGallons(tank.volume); // ≈ 220
 * ```
 *
 * @source us-environmental-protection-seahome-library-private, Pressure Tank Selection Chart
 */
export function stockTank(input: StockTankInput): StockTank {
  requireObject("input", input);
  requireWithin("pumpFlow", input.pumpFlow, 0, 100, "m³/s");
  requireSwitch(input.cutIn, input.cutOut);
  const [cutIn, cutOut] = [inPsi(input.cutIn), inPsi(input.cutOut)];
  const column = SETTINGS.findIndex(([low, high]) => Math.abs(low - cutIn) < 0.5 && Math.abs(high - cutOut) < 0.5);
  const flow = inGpm(input.pumpFlow);
  const size = ROWS.find(([most]) => flow <= most * (1 + 1e-9))?.[1][column];
  if (size === undefined) return { state: "not listed" };
  return { state: "listed", volume: usGallons(size), method: "us-environmental-protection-seahome-library-private" };
}
