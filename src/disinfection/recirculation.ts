/**
 * Turning chlorinated water over by a hose back into the well.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Ratio, Volume, VolumeFlow } from "../units/index.ts";

/** Water that is turned over by a hose back into the well. */
export interface RecirculationInput {
  /** Water in the loop. 0 to 100 000 m³. */
  readonly volume: Volume;
  /** Flow of the hose. 1e-6 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** How often the volume is turned over. Above 0, to 100; 3 where left out (common practice). */
  readonly turnovers?: number;
}

/** How long to let it run. */
export interface Recirculation {
  /** Time to run, s. */
  readonly time: Duration;
  /** Water pumped round in that time, m³. */
  readonly pumped: Volume;
  /** Share of the water that has not yet passed the pump, were the loop well stirred. */
  readonly notYetPassed: Ratio;
}

/**
 * How long to run a hose back into the well for the dose to mix.
 *
 * @remarks
 * t = n V / q; of a stirred volume e^(−n) has not passed the pump after n turnovers: 5 % after three. Go by the smell and a
 * test strip at the hose as well: a deep column below the pump does not stir (common practice).
 *
 * @param input - water, flow and turnovers; each field says its unit and range
 * @returns the time, the volume pumped and the share not yet passed
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { recirculation } from "risingmain/disinfection";
 * import { gpm, inMinutes, usGallons } from "risingmain/units";
 *
 * inMinutes(recirculation({ volume: usGallons(147), flow: gpm(8) }).time); // ≈ 55.1
 * ```
 *
 * @source derived: first-order wash-out of a stirred volume
 * @source common practice
 */
export function recirculation(input: RecirculationInput): Recirculation {
  requireObject("input", input);
  const { volume, flow, turnovers = 3 } = input;
  requireWithin("volume", volume, 0, 1e5, "m³");
  requireWithin("flow", flow, 1e-6, 1000, "m³/s");
  requireWithin("turnovers", turnovers, 1e-3, 100, "");
  const pumped = turnovers * volume;
  return {
    time: (pumped / flow) as Duration,
    pumped: pumped as Volume,
    notYetPassed: Math.exp(-turnovers) as Ratio,
  };
}
