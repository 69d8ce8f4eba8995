/**
 * Where a pump runs on a system: the flow at which the head it makes is the head the system takes.
 *
 * @module
 */
import { type CubicLine, cubicSlope, cubicValue, findRoot, requireObject } from "../numeric/index.ts";
import { InputError, type Length, type VolumeFlow } from "../units/index.ts";
import type { PumpCurve } from "./curve.ts";
import { fallingCurveMeets, type Meeting } from "./falling-curve-meets.ts";
import { requireCurve } from "./read-curve.ts";

/** A pump on a system. */
export interface OperatingPointInput {
  /** The pump, from {@link pumpCurve}. */
  readonly curve: PumpCurve;
  /**
   * Head the system takes at a flow from 0 to the curve's `runoutFlow`: lift, drawdown, friction and the pressure
   * kept at the outlet. Must never fall as the flow grows. −100 000 to 1e12 m.
   */
  readonly systemHead: (flow: VolumeFlow) => Length;
}

/** The pump runs. */
export interface Running {
  /** The pump delivers. */
  readonly state: "running";
  /** Flow delivered, m³/s. */
  readonly flow: VolumeFlow;
  /** Head there, m. */
  readonly head: Length;
  /** False where the pump's head rises with flow at this point: the flow may hunt. */
  readonly stable: boolean;
  /** How often `systemHead` was called. */
  readonly evaluations: number;
}

/** The pump turns and delivers nothing. */
export interface CannotLift {
  /** At no flow the system takes at least the pump's shutoff head. */
  readonly state: "cannot lift";
  /** Head missing at no flow, m; 0 where the two are equal. */
  readonly short: Length;
  /** Head the pump makes at no flow, m. */
  readonly shutoffHead: Length;
  /** Head the system takes at no flow, m. */
  readonly systemHead: Length;
}

/** The system takes less than the pump makes at the last point of its curve. */
export interface RunsOut {
  /** The flow lies past the end of the curve, where nothing is known: throttle, or take a larger pump's curve. */
  readonly state: "runs out";
  /** Flow of the curve's last point: more than this flows, m³/s. */
  readonly moreThan: VolumeFlow;
  /** Head left over there, m. */
  readonly spare: Length;
}

/** How a pump runs on a system. */
export type OperatingPoint = Running | CannotLift | RunsOut;

/**
 * The operating point of a pump on any system.
 *
 * @remarks
 * Solves H(Q) = S(Q) with H the pump's head and S `systemHead`. A falling curve and a system that never falls meet at
 * most once, so the point is the only one. A pump starts from rest: where S(0) reaches the shutoff head nothing flows,
 * even if a rising curve would reach further once moving; of several meetings on a rising curve the first is taken,
 * though two between the same two points of the curve are not seen.
 *
 * Solved to the rounding of the heads, about 1e-12 of the flow on pipes. The system is called four or five times where
 * its friction is smooth in the flow, at no flow included, and Brent's method bounds the calls where it is not.
 *
 * @param input - the pump, and the system as a function
 * @returns the flow and head, or why there is none
 * @throws {@link units.InputError} where the curve is not one, or `systemHead` is not a function or returns no finite head
 *
 * @example
 * ```ts
 * import { operatingPoint, pumpCurve } from "risingmain/pump";
 * import { feet, gpm, inGpm, type Length, type VolumeFlow } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: gpm(0), head: feet(400) },
 *     { flow: gpm(10), head: feet(300) },
 *     { flow: gpm(20), head: feet(0) },
 *   ],
 * });
 * const systemHead = (flow: VolumeFlow) => feet(200 + (inGpm(flow) / 10) ** 2 * 40) as Length;
 * const point = operatingPoint({ curve, systemHead });
 * point.state === "running" ? inGpm(point.flow) : 0; // ≈ 11.952
 * operatingPoint({ curve, systemHead: () => feet(430) }).state; // => "cannot lift"
 * ```
 *
 * @source derived: the pump adds the head that the system takes
 * @source brent-1973: the method where the system's friction is not smooth
 */
export function operatingPoint(input: OperatingPointInput): OperatingPoint {
  requireObject("input", input);
  const { curve, systemHead } = input;
  requireCurve(curve);
  if (typeof systemHead !== "function") throw new InputError("systemHead", systemHead, "a function of flow");
  let evaluations = 0;
  const system = (flow: number): number => {
    evaluations++;
    return checkedHead(systemHead(flow as VolumeFlow));
  };

  const shutoffHead = curve.shutoffHead;
  const atRest = system(0);
  if (atRest >= shutoffHead) {
    return {
      state: "cannot lift",
      short: (atRest - shutoffHead) as Length,
      shutoffHead,
      systemHead: atRest as Length,
    };
  }
  const meeting =
    curve.shape === "falling" ? fallingCurveMeets(curve.head, system, atRest) : risingCurveMeets(curve.head, system);
  if (meeting.state === "ends") {
    return { state: "runs out", moreThan: curve.runoutFlow, spare: meeting.spare as Length };
  }
  const flow = meeting.flow;
  return {
    state: "running",
    flow: flow as VolumeFlow,
    head: cubicValue(curve.head, flow) as Length,
    stable: cubicSlope(curve.head, flow) <= 0,
    evaluations,
  };
}

/** The first meeting on a curve that rises in part: the first point the system reaches closes the bracket. */
function risingCurveMeets(head: CubicLine, system: (flow: number) => number): Meeting {
  const excess = (flow: number): number => cubicValue(head, flow) - system(flow);
  let low = 0;
  let spare = 0;
  for (const flow of head.x.slice(1)) {
    spare = excess(flow);
    if (spare <= 0) return { state: "meets", flow: findRoot(excess, low, flow, 1e-12 * flow).x };
    low = flow;
  }
  return { state: "ends", spare };
}

/** A head from the caller's function, or an error in its name. */
function checkedHead(head: unknown): number {
  if (!(typeof head === "number" && head >= -1e5 && head <= 1e12)) {
    throw new InputError("systemHead", head, "a function that returns a head from -100000 to 1e12 m");
  }
  return head;
}
