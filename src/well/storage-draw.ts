/**
 * A well that gives little, used as its own storage: drawn down faster than it fills, and left to recover.
 *
 * Inflow is taken as proportional to drawdown, Q = k s, as a single test or a recovery shows it; the level then goes
 * exponentially. Below the fracture or the screen that feeds a well its inflow grows no more: test as deep as you pump.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import {
  type Area,
  type Duration,
  InputError,
  type Length,
  type Transmissivity,
  type Volume,
  type VolumeFlow,
} from "../units/index.ts";

/** A well that stores water and lets some in. */
export interface StoringWell {
  /** Area of the water's surface in the well: of the casing, less pipe and cable. 1e-6 to 1e5 m². */
  readonly area: Area;
  /** Inflow for each length of drawdown: specific capacity. 1e-12 to 100 m³/s per m. */
  readonly specificCapacity: Transmissivity;
}

/** A well drawn on. */
export interface DrawInput extends StoringWell {
  /** Steady flow drawn. 1e-9 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Drawdown when the draw begins; 0 for a rested well. 0 to 10 000 m. */
  readonly startDrawdown: Length;
  /** Drawdown at which the pump must stop: the intake less its cover. Above `startDrawdown`, at most 10 000 m. */
  readonly lowestDrawdown: Length;
}

/** How long a draw can last. */
export type Draw =
  | {
      /** The level reaches the lowest allowed. */
      readonly state: "drawn down";
      /** Time until then, s. */
      readonly time: Duration;
      /** Volume delivered until then, m³. */
      readonly volume: Volume;
      /** Part of it that the well let in meanwhile, m³; the rest came out of storage. */
      readonly inflow: Volume;
    }
  | {
      /** The well lets in as much as is drawn before that level: the draw may go on. */
      readonly state: "holds";
      /** Drawdown at which it settles, m. */
      readonly drawdown: Length;
    };

/** Times beyond this are as good as never, s. */
const FOREVER = 1e12;

/**
 * How long a low-yield well can be drawn on before the level reaches the lowest allowed.
 *
 * @remarks
 * A ds/dt = Q − k s, so s = Q/k − (Q/k − s₀) e^(−k t/A): time = (A/k) ln((Q/k − s₀) / (Q/k − s₁)).
 *
 * @param input - the well, the flow and the two drawdowns; each field says its unit and the values it takes
 * @returns time and volume, or that the well keeps up
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { drawOnStorage } from "risingmain/well";
 * import { feet, gpm, gpmPerFoot, inMinutes, inUsGallons, squareFeet } from "risingmain/units";
 *
 * const draw = drawOnStorage({
 *   area: squareFeet(0.196), specificCapacity: gpmPerFoot(0.01), flow: gpm(8),
 *   startDrawdown: feet(0), lowestDrawdown: feet(150),
 * });
 * draw.state === "drawn down" ? inMinutes(draw.time) : 0; // ≈ 30.4
 * draw.state === "drawn down" ? inUsGallons(draw.volume) : 0; // ≈ 243.5
 * ```
 *
 * @source derived: what flows in and out of a cylinder
 */
export function drawOnStorage(input: DrawInput): Draw {
  requireWell(input);
  const { area, specificCapacity: k, flow, startDrawdown, lowestDrawdown } = input;
  requireWithin("flow", flow, 1e-9, 100, "m³/s");
  requireWithin("startDrawdown", startDrawdown, 0, 10_000, "m");
  requireWithin("lowestDrawdown", lowestDrawdown, 0, 10_000, "m");
  if (!(lowestDrawdown > startDrawdown)) {
    throw new InputError("lowestDrawdown", lowestDrawdown, `more than the drawdown at the start, ${startDrawdown} m`);
  }
  const settled = flow / k;
  if (settled <= lowestDrawdown) return { state: "holds", drawdown: settled as Length };
  // ln(1 + x) keeps its digits where the level moves little against the settled drawdown.
  const time = (area / k) * Math.log1p((lowestDrawdown - startDrawdown) / (settled - lowestDrawdown));
  if (!(time <= FOREVER)) return { state: "holds", drawdown: lowestDrawdown };
  const volume = flow * time;
  return {
    state: "drawn down",
    time: time as Duration,
    volume: volume as Volume,
    inflow: Math.max(0, volume - area * (lowestDrawdown - startDrawdown)) as Volume,
  };
}

/** A well left to recover. */
export interface RestInput extends StoringWell {
  /** Drawdown when the rest begins. 0 to 10 000 m. */
  readonly startDrawdown: Length;
  /** Time of rest. 0 to 1e12 s. */
  readonly time: Duration;
}

/**
 * Drawdown left after a well has rested.
 *
 * @remarks
 * s = s₀ e^(−k t/A): the same share of what is left in each equal time, never past the static level.
 *
 * @param input - the well, its drawdown and the time; each field says its unit and the values it takes
 * @returns drawdown after the rest, m
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { drawdownAfterRest } from "risingmain/well";
 * import { feet, gpmPerFoot, hours, inFeet, squareFeet } from "risingmain/units";
 *
 * const left = drawdownAfterRest({
 *   area: squareFeet(0.196), specificCapacity: gpmPerFoot(0.01), startDrawdown: feet(150), time: hours(2),
 * });
 * inFeet(left); // ≈ 66.2
 * ```
 *
 * @source derived: what flows into a cylinder
 */
export function drawdownAfterRest(input: RestInput): Length {
  requireWell(input);
  const { area, specificCapacity, startDrawdown, time } = input;
  requireWithin("startDrawdown", startDrawdown, 0, 10_000, "m");
  requireWithin("time", time, 0, 1e12, "s");
  return (startDrawdown * Math.exp((-specificCapacity * time) / area)) as Length;
}

/** A recovery from one drawdown to a smaller one. */
export interface RestTimeInput extends StoringWell {
  /** Drawdown when the rest begins. 1e-6 to 10 000 m. */
  readonly startDrawdown: Length;
  /** Drawdown to come back to; the static level itself is never quite reached. 1e-6 m to `startDrawdown`. */
  readonly endDrawdown: Length;
}

/**
 * How long a well rests until its level has come back so far.
 *
 * @remarks
 * t = (A/k) ln(s₀/s₁).
 *
 * @param input - the well and the two drawdowns; each field says its unit and the values it takes
 * @returns time, s; at most 1e19
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { restTime } from "risingmain/well";
 * import { feet, gpmPerFoot, inHours, squareFeet } from "risingmain/units";
 *
 * const time = restTime({
 *   area: squareFeet(0.196), specificCapacity: gpmPerFoot(0.01), startDrawdown: feet(150), endDrawdown: feet(15),
 * });
 * inHours(time); // ≈ 5.63
 * ```
 *
 * @source derived: what flows into a cylinder
 */
export function restTime(input: RestTimeInput): Duration {
  requireWell(input);
  const { area, specificCapacity, startDrawdown, endDrawdown } = input;
  requireWithin("startDrawdown", startDrawdown, 1e-6, 10_000, "m");
  requireWithin("endDrawdown", endDrawdown, 1e-6, 10_000, "m");
  if (!(endDrawdown <= startDrawdown)) {
    throw new InputError("endDrawdown", endDrawdown, `at most the drawdown at the start, ${startDrawdown} m`);
  }
  return ((area / specificCapacity) * Math.log(startDrawdown / endDrawdown)) as Duration;
}

/** @internal */
export function requireWell(input: StoringWell): void {
  requireObject("input", input);
  requireWithin("area", input.area, 1e-6, 1e5, "m²");
  requireWithin("specificCapacity", input.specificCapacity, 1e-12, 100, "m³/s per m");
}
