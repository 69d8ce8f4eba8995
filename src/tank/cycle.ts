/**
 * On, off and starts per hour of a pump that fills a tank at a steady rate.
 *
 * Where the pump's flow falls as the tank fills, `worst-demand.ts` has the same things from the pump's curve.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Frequency, Volume, VolumeFlow } from "../units/index.ts";

/** A tank's usable water, a pump's flow and a use. */
export interface TankCycleInput {
  /** Usable water of the tank from cut-out to cut-in: the drawdown. Above 0 to 10 000 m³. */
  readonly usable: Volume;
  /** Flow of the pump while it runs. Above 0 to 100 m³/s. */
  readonly pumpFlow: VolumeFlow;
  /** Flow used while the pump cycles. 0 to 100 m³/s. */
  readonly demand: VolumeFlow;
}

/** How a pump and a tank meet a steady use. */
export type TankCycle =
  | {
      /** The pump starts and stops. */
      readonly state: "cycling";
      /** Time the pump runs in a cycle, s. */
      readonly runTime: Duration;
      /** Time it rests in a cycle, s. */
      readonly offTime: Duration;
      /** From one start to the next, s. */
      readonly cycleTime: Duration;
      /** Starts per time, Hz; `inPerHour` reads it per hour. */
      readonly starts: Frequency;
    }
  | {
      /** Nothing is used: the pump fills the tank once and stays off. */
      readonly state: "stays off";
      /** Time to fill the tank from cut-in, s. */
      readonly runTime: Duration;
    }
  | {
      /** The use takes all the pump gives: it runs without a stop. */
      readonly state: "runs on";
      /** How much more is used than the pump gives, m³/s; the pressure falls while it is above 0. */
      readonly short: VolumeFlow;
    };

/**
 * Run time, rest and starts per hour of a pump and a tank at a steady use.
 *
 * @remarks
 * run = W / (Q − q), rest = W / q, cycle = run + rest
 *
 * with W `usable`, Q `pumpFlow`, q `demand`. Exact where the pump's flow does not change while the tank fills.
 *
 * @param input - usable water, pump flow and use; each field says its unit and the values it takes
 * @returns the cycle, or that the pump stays off or runs on
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example 10 gal of drawdown, a 10 gpm pump, 2 gpm used
 * ```ts
 * import { tankCycle } from "risingmain/tank";
 * import { gpm, inPerHour, usGallons } from "risingmain/units";
 *
 * const cycle = tankCycle({ usable: usGallons(10), pumpFlow: gpm(10), demand: gpm(2) });
 * cycle.state; // => "cycling"
 * if (cycle.state === "cycling") inPerHour(cycle.starts); // ≈ 9.6
 * ```
 *
 * @source derived: a volume over a flow
 */
export function tankCycle(input: TankCycleInput): TankCycle {
  const { usable, pumpFlow, demand } = requireCycle(input);
  requireWithin("demand", demand, 0, 100, "m³/s");
  if (demand >= pumpFlow) return { state: "runs on", short: (demand - pumpFlow) as VolumeFlow };
  const runTime = usable / (pumpFlow - demand);
  const offTime = usable / demand;
  const cycleTime = runTime + offTime;
  // A use too small to end the rest within the range of a double is no use.
  if (!Number.isFinite(cycleTime)) return { state: "stays off", runTime: (usable / pumpFlow) as Duration };
  return {
    state: "cycling",
    runTime: runTime as Duration,
    offTime: offTime as Duration,
    cycleTime: cycleTime as Duration,
    starts: (1 / cycleTime) as Frequency,
  };
}

/** The use at which a pump starts most often. */
export interface WorstDemand {
  /** The use, m³/s. */
  readonly demand: VolumeFlow;
  /** The shortest time from one start to the next, s. */
  readonly cycleTime: Duration;
  /** Time the pump runs in that cycle, s. */
  readonly runTime: Duration;
  /** Time it rests in that cycle, s. */
  readonly offTime: Duration;
  /** Most starts per time, Hz; `inPerHour` reads it per hour. */
  readonly starts: Frequency;
}

/**
 * The use at which a pump of steady flow starts most often: half its flow.
 *
 * @remarks
 * The cycle W/(Q − q) + W/q is shortest at q = Q/2, where it lasts 4 W/Q: 15 Q/W starts an hour with Q per minute.
 * A real pump's flow falls as the tank fills; {@link worstDemandOnCurve} does not assume the half.
 *
 * @param input - usable water (above 0 to 10 000 m³) and pump flow (above 0 to 100 m³/s)
 * @returns the worst use and its cycle
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { worstDemand } from "risingmain/tank";
 * import { gpm, inGpm, inPerHour, usGallons } from "risingmain/units";
 *
 * const worst = worstDemand({ usable: usGallons(10), pumpFlow: gpm(10) });
 * inGpm(worst.demand); // ≈ 5.0
 * inPerHour(worst.starts); // ≈ 15.0
 * ```
 *
 * @source derived: the minimum of W/(Q − q) + W/q over q
 */
export function worstDemand(input: Omit<TankCycleInput, "demand">): WorstDemand {
  const { usable, pumpFlow } = requireCycle(input);
  const half = (2 * usable) / pumpFlow;
  return {
    demand: (pumpFlow / 2) as VolumeFlow,
    cycleTime: (2 * half) as Duration,
    runTime: half as Duration,
    offTime: half as Duration,
    starts: (1 / (2 * half)) as Frequency,
  };
}

/** The least volume and flow a cycle is reckoned with, m³ and m³/s: smaller ones overflow when divided. */
const LEAST = 1e-12;

function requireCycle<T extends Omit<TankCycleInput, "demand">>(input: T): T {
  requireObject("input", input);
  requireWithin("usable", input.usable, LEAST, 1e4, "m³");
  requireWithin("pumpFlow", input.pumpFlow, LEAST, 100, "m³/s");
  return input;
}
