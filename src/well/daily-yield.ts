/**
 * What a low-yield well gives in a day, and in a peak.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Length, Volume, VolumeFlow } from "../units/index.ts";
import { drawOnStorage, requireWell, restTime, type StoringWell } from "./storage-draw.ts";

/** Draws and rests in turn between two levels. */
export interface DailyYieldInput extends StoringWell {
  /** Flow of the pump. 1e-9 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Drawdown at which the pump stops. 1e-6 to 10 000 m. */
  readonly lowestDrawdown: Length;
  /** Drawdown at which it may start again. 1e-6 m to below `lowestDrawdown`. */
  readonly restartDrawdown: Length;
}

/** What a well gives in a day of draws and rests. */
export interface DailyYield {
  /** Volume in a day of steady turns, m³; of steady pumping where the well keeps up. */
  readonly volume: Volume;
  /** Volume of each draw, m³; 0 where the well keeps up. */
  readonly volumePerDraw: Volume;
  /** Time of each draw, s; a day where the well keeps up. */
  readonly drawTime: Duration;
  /** Time of each rest, s; 0 where the well keeps up. */
  readonly restTime: Duration;
  /** Starts in a day; below 1 where a turn takes longer. */
  readonly startsPerDay: number;
  /** Most that any way of pumping could give with this lowest level: inflow at it for a whole day, m³. */
  readonly mostVolume: Volume;
}

/** Seconds in a day. */
const DAY = 86_400;

/**
 * What a low-yield well gives in a day when the pump draws it down and rests until it has come back some way.
 *
 * @remarks
 * Draw and rest by {@link drawOnStorage} and {@link restTime}. A well gives most when it is kept low, so short turns
 * near the lowest level give more water than long ones, and cost more starts.
 *
 * @param input - the well, the pump and the two levels; each field says its unit and the values it takes
 * @returns the day's volume and the turns it is made of
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { dailyYield } from "risingmain/well";
 * import { feet, gpm, gpmPerFoot, inUsGallons, squareFeet } from "risingmain/units";
 *
 * const day = dailyYield({
 *   area: squareFeet(0.196), specificCapacity: gpmPerFoot(0.01), flow: gpm(8),
 *   lowestDrawdown: feet(150), restartDrawdown: feet(50),
 * });
 * inUsGallons(day.volume); // ≈ 1328
 * inUsGallons(day.mostVolume); // ≈ 2160
 * ```
 *
 * @source derived: what flows in and out of a cylinder
 */
export function dailyYield(input: DailyYieldInput): DailyYield {
  requireWell(input);
  const { flow, lowestDrawdown, restartDrawdown } = input;
  requireWithin("restartDrawdown", restartDrawdown, 1e-6, 10_000, "m");
  const well = { area: input.area, specificCapacity: input.specificCapacity };
  const draw = drawOnStorage({ ...well, flow, startDrawdown: restartDrawdown, lowestDrawdown });
  const mostVolume = (well.specificCapacity * lowestDrawdown * DAY) as Volume;
  if (draw.state === "holds") {
    return {
      volume: (flow * DAY) as Volume,
      volumePerDraw: 0 as Volume,
      drawTime: DAY as Duration,
      restTime: 0 as Duration,
      startsPerDay: 0,
      mostVolume,
    };
  }
  const rest = restTime({ ...well, startDrawdown: lowestDrawdown, endDrawdown: restartDrawdown });
  const startsPerDay = DAY / (draw.time + rest);
  return {
    volume: (draw.volume * startsPerDay) as Volume,
    volumePerDraw: draw.volume,
    drawTime: draw.time,
    restTime: rest,
    startsPerDay,
    mostVolume,
  };
}

/** A well that meets a peak from storage and a steady inflow. */
export interface PeakSupplyInput {
  /** Water in storage above the lowest level. 0 to 1e6 m³. */
  readonly storage: Volume;
  /** Steady inflow, taken low. 0 to 100 m³/s. */
  readonly inflow: VolumeFlow;
  /** Length of the peak. 0 to 1e9 s. */
  readonly period: Duration;
}

/**
 * What a well can supply in a peak: its storage and what it lets in meanwhile.
 *
 * @remarks
 * V = storage + inflow × period, with the inflow taken as steady: the simple budget of the trade.
 *
 * @param input - storage, inflow and period; each field says its unit and the values it takes
 * @returns volume, m³
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { peakSupply } from "risingmain/well";
 * import { hours, inLitres, litres, litresPerMinute } from "risingmain/units";
 *
 * inLitres(peakSupply({ storage: litres(181), inflow: litresPerMinute(9), period: hours(2) })); // ≈ 1261
 * ```
 *
 * @source derived: a sum of volumes
 */
export function peakSupply(input: PeakSupplyInput): Volume {
  requireObject("input", input);
  const { storage, inflow, period } = input;
  requireWithin("storage", storage, 0, 1e6, "m³");
  requireWithin("inflow", inflow, 0, 100, "m³/s");
  requireWithin("period", period, 0, 1e9, "s");
  return (storage + inflow * period) as Volume;
}
