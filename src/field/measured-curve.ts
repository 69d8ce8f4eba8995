/**
 * A pump's curve as it is: from flow, gauge and water level at several throttled flows.
 *
 * @module
 */
import { requireList, requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import { type Density, type GaugePressure, InputError, type Length, type VolumeFlow } from "../units/index.ts";
import { type Carried, carried, type TrialOptions } from "./carried.ts";
import { pressureCautions } from "./cautions.ts";
import { FLOW_SHARE, GAUGE, TAPE } from "./usual-doubts.ts";

/** A flow held at a valve, with what was read at it. */
export interface CurveReading {
  /** Flow, by bucket or meter. 0 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Gauge pressure at the wellhead, before the valve. −100 kPa to 100 MPa. */
  readonly pressure: GaugePressure;
  /** Depth to the pumping level below the datum, once steady. 0 to 5000 m. */
  readonly pumpingLevel: Length;
  /** Standard uncertainty of the flow, as `bucketFlow` gives it. 0 to 1000 m³/s; 3 % of it where left out (common practice). */
  readonly flowUncertainty?: VolumeFlow;
  /** Standard uncertainty of the gauge. 0 to 10 MPa; 1 psi where left out (common practice). */
  readonly pressureUncertainty?: GaugePressure;
  /** Standard uncertainty of the level. 0 to 100 m; 0.01 ft, a graduated tape's, where left out. An air line is far worse. */
  readonly levelUncertainty?: Length;
}

/** Readings of a pump at several flows. */
export interface MeasuredCurveInput extends TrialOptions {
  /** The readings; 1 to 1000. */
  readonly readings: readonly CurveReading[];
  /** Elevation of the centre of the gauge over the datum. −5000 to 5000 m. */
  readonly gaugeElevation: Length;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
  /** Head lost from pump to gauge at a flow (drop pipe, check valves); none where left out, which reads the pump as weaker. */
  readonly friction?: (flow: VolumeFlow) => Length;
  /** Inside diameter where the gauge sits, for the velocity head, 0.001 to 10 m; left out where it is not given. */
  readonly gaugeDiameter?: Length;
}

/** A point of the measured curve, what it was added from, and the doubt of its head. */
export interface MeasuredCurvePoint extends Carried<Length> {
  /** Flow, m³/s. */
  readonly flow: VolumeFlow;
  /** Standard uncertainty of the flow, m³/s; what it adds to the head by friction and velocity is in that of the head. */
  readonly flowUncertainty: VolumeFlow;
  /** Total head of the pump, m. */
  readonly head: Length;
  /** Lift from the pumping level to the datum, m. */
  readonly lift: Length;
  /** Head that the gauge reads over the datum, m. */
  readonly gauge: Length;
  /** Friction from pump to gauge, m. */
  readonly friction: Length;
  /** Velocity head at the gauge, m. */
  readonly velocityHead: Length;
}

/** The measured curve. */
export interface MeasuredCurve {
  /** Points by rising flow: what `pumpCurve` and `fitPumpCurve` take. */
  readonly points: readonly MeasuredCurvePoint[];
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

const MOST_FLOW = 1000;

/**
 * A pump's curve from flow, gauge and water level at several throttled flows.
 *
 * @remarks
 * H = pumping level + gauge elevation + p/(ρ g) + friction(q) + V²/(2 g), all from one datum. The pumping level of each reading
 * counts, not the static one: wait for it to settle. The doubt of the head is that of gauge, level and, through friction and velocity head, flow:
 * u²(H) = (u_p/(ρ g))² + u_level² + ((f'(q) + V/g · dV/dq) u_q)². Include no flow (for seconds only) and full flow.
 *
 * @param input - readings, gauge and friction; each field says its unit and range
 * @returns points by rising flow, with their parts and uncertainties
 * @throws {@link units.InputError} naming the first field outside its range, or the friction where it gives no head
 *
 * @example
 * ```ts
 * import { measuredCurve } from "risingmain/field";
 * import { feet, gpm, inFeet, kilogramsPerCubicMetre, psi } from "risingmain/units";
 *
 * const curve = measuredCurve({
 *   gaugeElevation: feet(2), density: kilogramsPerCubicMetre(999.7),
 *   readings: [
 *     { flow: gpm(10), pressure: psi(60), pumpingLevel: feet(120) },
 *     { flow: gpm(0), pressure: psi(90), pumpingLevel: feet(100) },
 *   ],
 * });
 * curve.points.map(({ head }) => Math.round(inFeet(head))); // => [310, 260]
 * ```
 *
 * @source derived: Bernoulli's equation from the pumping level to the gauge
 * @source jcgm-100, 5.1.2
 * @source usgs-gwpd-4: the tape
 */
export function measuredCurve(input: MeasuredCurveInput): MeasuredCurve {
  requireObject("input", input);
  const { readings, gaugeElevation, density, friction, gaugeDiameter } = input;
  requireList("readings", readings, 1, 1000);
  requireWithin("gaugeElevation", gaugeElevation, -5000, 5000, "m");
  requireWithin("density", density, 900, 1100, "kg/m³");
  if (gaugeDiameter !== undefined) requireWithin("gaugeDiameter", gaugeDiameter, 0.001, 10, "m");
  if (friction !== undefined && typeof friction !== "function") {
    throw new InputError("friction", friction, "a function of the flow");
  }
  const weight = density * STANDARD_GRAVITY;
  const lost = (flow: number): number => {
    const head: number = friction === undefined ? 0 : friction(flow as VolumeFlow);
    requireWithin("friction", head, 0, 1e6, "m from the function given");
    return head;
  };
  const velocityHead = (flow: number): number => {
    if (gaugeDiameter === undefined) return 0;
    const velocity = (4 * flow) / (Math.PI * gaugeDiameter * gaugeDiameter);
    return (velocity * velocity) / (2 * STANDARD_GRAVITY);
  };
  const points = readings.map((reading, i): MeasuredCurvePoint => {
    const at = `readings[${i}]`;
    requireObject(at, reading);
    const { flow, pressure, pumpingLevel } = reading;
    requireWithin(`${at}.flow`, flow, 0, MOST_FLOW, "m³/s");
    requireWithin(`${at}.pressure`, pressure, -1e5, 1e8, "Pa");
    requireWithin(`${at}.pumpingLevel`, pumpingLevel, 0, 5000, "m");
    const { flowUncertainty: uQ = FLOW_SHARE * flow, pressureUncertainty: uP = GAUGE } = reading;
    const { levelUncertainty: uL = TAPE } = reading;
    requireWithin(`${at}.flowUncertainty`, uQ, 0, MOST_FLOW, "m³/s");
    requireWithin(`${at}.pressureUncertainty`, uP, 0, 1e7, "Pa");
    requireWithin(`${at}.levelUncertainty`, uL, 0, 100, "m");
    const gauge = gaugeElevation + pressure / weight;
    const losses = lost(flow);
    const velocity = velocityHead(flow);
    return {
      flow,
      flowUncertainty: uQ as VolumeFlow,
      head: (pumpingLevel + gauge + losses + velocity) as Length,
      lift: pumpingLevel,
      gauge: gauge as Length,
      friction: losses as Length,
      velocityHead: velocity as Length,
      ...carried<Length>(
        [
          { name: "flow", value: flow, standardUncertainty: uQ, low: 0, high: MOST_FLOW },
          { name: "pressure", value: pressure, standardUncertainty: uP, low: -1e9, high: 1e9 },
          { name: "pumpingLevel", value: pumpingLevel, standardUncertainty: uL, low: 0, high: 1e4 },
        ],
        ([q = 0, read = 0, level = 0]) => level + gaugeElevation + read / weight + lost(q) + velocityHead(q),
        input,
      ),
    };
  });
  return { points: points.sort((a, b) => a.flow - b.flow), cautions: pressureCautions };
}
