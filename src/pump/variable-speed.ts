/**
 * A pump at variable speed: the speed a point takes, and speed and power against flow at constant pressure.
 *
 * @module
 */
import { cubicValue, findRoot, requireList, requireObject, requireWithin } from "../numeric/index.ts";
import { InputError, type Length, type Power, type Ratio, type VolumeFlow } from "../units/index.ts";
import type { PumpCurve } from "./curve.ts";
import { requireFalling } from "./flow-at-head.ts";

/** A point to be reached by changing the speed. */
export interface SpeedForInput {
  /** The pump at its rated speed: a falling curve from {@link pumpCurve}. */
  readonly curve: PumpCurve;
  /** Flow wanted. 0 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Head wanted at that flow. Above 0, at most 10 000 m; at least 1e-3. */
  readonly head: Length;
  /** Greatest speed over the rated one. 0.1 to 2; 1 where left out. */
  readonly greatestSpeed?: Ratio;
}

/** The speed for a point, or why there is none. */
export type SpeedFor =
  | {
      /** The pump makes the point at this speed. */
      readonly state: "runs";
      /** Speed over the rated speed. */
      readonly speed: Ratio;
      /** Flow of the similar point on the rated curve, m³/s. */
      readonly similarFlow: VolumeFlow;
      /** Pump efficiency there; null where the curve has none at that flow. */
      readonly efficiency: Ratio | null;
      /** Shaft power, by the cube of the speed from the curve's own power; null where the curve has none at that flow. */
      readonly shaftPower: Power | null;
    }
  | {
      /** Even at the greatest speed the pump makes too little head at this flow. */
      readonly state: "too little";
      /** Head missing at the greatest speed, m; null where the flow lies past the end of the curve even then. */
      readonly short: Length | null;
    }
  | {
      /** The point lies right of the curve's last point at every speed: the head is too low for the flow. */
      readonly state: "past the curve";
    };

/**
 * The speed at which a pump makes a head at a flow.
 *
 * @remarks
 * Solves r² H(Q/r) = H* for r between the speed at which Q is the end of the curve and the greatest: the left side
 * grows with r on a falling curve, so the speed is the only one. The similar point on the rated curve gives efficiency
 * and, by r³, power.
 *
 * @param input - the pump, the point and the greatest speed
 * @returns the speed and the similar point, or why no speed will do
 * @throws {@link units.InputError} where the curve is not a falling one or a field is out of its range
 *
 * @example
 * ```ts
 * import { pumpCurve, speedFor } from "risingmain/pump";
 * import { cubicMetresPerSecond, metres } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: cubicMetresPerSecond(0), head: metres(40) },
 *     { flow: cubicMetresPerSecond(0.006), head: metres(35) },
 *     { flow: cubicMetresPerSecond(0.01), head: metres(20) },
 *   ],
 * });
 * const at = speedFor({ curve, flow: cubicMetresPerSecond(0.00495), head: metres(23) });
 * at.state === "runs" ? at.speed : 0; // ≈ 0.813
 * ```
 *
 * @source derived: affinity laws, see {@link curveAtSpeed}
 */
export function speedFor(input: SpeedForInput): SpeedFor {
  requireObject("input", input);
  const { curve, flow, head, greatestSpeed = 1 } = input;
  requireFalling(curve);
  requireWithin("flow", flow, 0, 100, "m³/s");
  requireWithin("head", head, 1e-3, 10_000, "m");
  requireWithin("greatestSpeed", greatestSpeed, 0.1, 2, "");
  const end = curve.runoutFlow as number;
  const made = (r: number): number => r * r * cubicValue(curve.head, Math.min(flow / r, end));
  const slowest = flow / end;
  if (slowest > greatestSpeed) return { state: "too little", short: null };
  const most = made(greatestSpeed);
  if (most < head) return { state: "too little", short: (head - most) as Length };
  // At no flow any speed is on the curve; the one whose shutoff head is the point's is taken in closed form.
  if (flow === 0) return runsAt(curve, flow, Math.sqrt(head / curve.shutoffHead));
  if (made(slowest) > head) return { state: "past the curve" };
  return runsAt(curve, flow, findRoot((r) => made(r) - head, slowest, greatestSpeed).x);
}

function runsAt(curve: PumpCurve, flow: number, speed: number): SpeedFor {
  const similar = Math.min(flow / speed, curve.runoutFlow);
  const at = (line: PumpCurve["efficiency"]): number | null =>
    line !== undefined && similar >= (line.x[0] as number) && similar <= (line.x.at(-1) as number)
      ? cubicValue(line, similar)
      : null;
  const power = at(curve.inputPower);
  return {
    state: "runs",
    speed: speed as Ratio,
    similarFlow: similar as VolumeFlow,
    efficiency: at(curve.efficiency) as Ratio | null,
    shaftPower: (power === null ? null : power * speed ** 3) as Power | null,
  };
}

/** A variable-speed pump that holds a pressure. */
export interface ConstantPressureInput {
  /** The pump at its rated speed: a falling curve from {@link pumpCurve}. */
  readonly curve: PumpCurve;
  /** Head the system takes at a flow while the set pressure is held; never falls. 1e-3 to 10 000 m. */
  readonly systemHead: (flow: VolumeFlow) => Length;
  /** Flows to report, 1 to 10 000 of them. 0 to 100 m³/s. */
  readonly flows: readonly VolumeFlow[];
  /** Greatest speed over the rated one. 0.1 to 2; 1 where left out. */
  readonly greatestSpeed?: Ratio;
  /** Least speed the drive or the thrust bearing allows, over the rated one. 0 to 1; 0.5 where left out (30 of 60 Hz, common practice). */
  readonly leastSpeed?: Ratio;
}

/** The pump at one of the flows. */
export interface ConstantPressureRow {
  /** Flow, m³/s. */
  readonly flow: VolumeFlow;
  /** Head the system takes, m. */
  readonly head: Length;
  /** The speed for it, or why there is none. */
  readonly at: SpeedFor;
  /** Whether the speed lies below the least: the drive stops or holds the least speed, and the pressure rises. */
  readonly belowLeast: boolean;
}

/** A variable-speed pump across its flows. */
export interface ConstantPressure {
  /** One row for each flow, in the order given. */
  readonly rows: readonly ConstantPressureRow[];
  /** Speed that just holds the pressure with no flow, over the rated speed: slower, nothing flows. */
  readonly speedAtNoFlow: Ratio;
  /** How fast that speed grows with the head asked for, 1/m: speed control is coarse where this is small against the drive's steps. */
  readonly speedPerHead: number;
}

/** Least speed of submersible motors whose thrust bearing needs water: 30 Hz of 60; common practice. */
const USUAL_LEAST_SPEED = 0.5;

/**
 * Speed and power of a variable-speed pump that holds a pressure, flow by flow.
 *
 * @remarks
 * Each flow is a {@link speedFor}. The speed at no flow is √(S(0)/H(0)): with much static head the range of speeds
 * between no flow and full flow is narrow, and so is the saving.
 *
 * @param input - the pump, the system at the set pressure, the flows, and the limits of speed
 * @returns a row for each flow, and the speed at no flow
 * @throws {@link units.InputError} naming the first field that cannot be used, or `systemHead` where it returns no head in its range
 *
 * @example
 * ```ts
 * import { constantPressure, pumpCurve } from "risingmain/pump";
 * import { feet, gpm } from "risingmain/units";
 *
 * const curve = pumpCurve({ points: [{ flow: gpm(0), head: feet(400) }, { flow: gpm(20), head: feet(100) }] });
 * const held = constantPressure({ curve, systemHead: () => feet(256), flows: [gpm(2), gpm(8)] });
 * held.speedAtNoFlow; // ≈ 0.800
 * held.rows[1]?.at.state; // => "runs"
 * ```
 *
 * @source derived: affinity laws, see {@link curveAtSpeed}
 */
export function constantPressure(input: ConstantPressureInput): ConstantPressure {
  requireObject("input", input);
  const { curve, systemHead, flows, greatestSpeed = 1 as Ratio, leastSpeed = USUAL_LEAST_SPEED } = input;
  requireFalling(curve);
  if (typeof systemHead !== "function") throw new InputError("systemHead", systemHead, "a function of flow");
  requireList("flows", flows, 1, 10_000);
  requireWithin("leastSpeed", leastSpeed, 0, 1, "");
  const headAt = (flow: VolumeFlow): Length => {
    const head = systemHead(flow);
    requireWithin("systemHead", head, 1e-3, 10_000, "m, returned by the function");
    return head;
  };
  const rows = flows.map((flow, i): ConstantPressureRow => {
    requireWithin(`flows[${i}]`, flow, 0, 100, "m³/s");
    const head = headAt(flow);
    const at = speedFor({ curve, flow, head, greatestSpeed });
    return { flow, head, at, belowLeast: at.state === "runs" && at.speed < leastSpeed };
  });
  const atRest = headAt(0 as VolumeFlow);
  const speedAtNoFlow = Math.sqrt(atRest / curve.shutoffHead);
  return {
    rows,
    speedAtNoFlow: speedAtNoFlow as Ratio,
    speedPerHead: speedAtNoFlow / (2 * atRest),
  };
}
