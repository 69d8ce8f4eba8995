/**
 * From a gauge to the head a pump makes, and from several gauge readings to its measured curve.
 *
 * @module
 */
import { requireList, requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import { type Density, type GaugePressure, InputError, type Length, type VolumeFlow } from "../units/index.ts";
import { pressureCautions } from "./cautions.ts";

/** A gauge and where it is. */
export interface GaugeHeadInput {
  /** Gauge pressure read, the gauge's own centre being what it reads at. −100 kPa to 100 MPa. */
  readonly pressure: GaugePressure;
  /** Elevation of the centre of the gauge over the datum; negative below it. −5000 to 5000 m. */
  readonly gaugeElevation: Length;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
}

/**
 * The head over a datum that a gauge reads: where the water would stand in an open tube.
 *
 * @remarks
 * H = z + p/(ρ g) with z `gaugeElevation`. Leave no air in the gauge's tube.
 *
 * @param input - pressure, elevation and density; each field says its unit and range
 * @returns the head over the datum, m
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example 50 psi on a gauge 3 ft above the ground
 * ```ts
 * import { gaugeHead } from "risingmain/field";
 * import { feet, inFeet, kilogramsPerCubicMetre, psi } from "risingmain/units";
 *
 * const water = kilogramsPerCubicMetre(999.7);
 * inFeet(gaugeHead({ pressure: psi(50), gaugeElevation: feet(3), density: water })); // ≈ 118.4
 * ```
 *
 * @source derived: hydrostatic pressure of a column of water
 */
export function gaugeHead(input: GaugeHeadInput): Length {
  requireObject("input", input);
  const { pressure, gaugeElevation, density } = input;
  requireWithin("pressure", pressure, -1e5, 1e8, "Pa");
  requireWithin("gaugeElevation", gaugeElevation, -5000, 5000, "m");
  requireWithin("density", density, 900, 1100, "kg/m³");
  return (gaugeElevation + pressure / (density * STANDARD_GRAVITY)) as Length;
}

/** A flow held at a valve, with what was read at it. */
export interface CurveReading {
  /** Flow, by bucket or meter. 0 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Gauge pressure at the wellhead, before the valve. −100 kPa to 100 MPa. */
  readonly pressure: GaugePressure;
  /** Depth to the pumping level below the datum, once steady. 0 to 5000 m. */
  readonly pumpingLevel: Length;
}

/** Readings of a pump at several flows. */
export interface MeasuredCurveInput {
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

/** A point of the measured curve, and what it was added from. */
export interface MeasuredCurvePoint {
  /** Flow, m³/s. */
  readonly flow: VolumeFlow;
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

/**
 * A pump's curve from flow, gauge and water level at several throttled flows.
 *
 * @remarks
 * H = pumping level + gauge elevation + p/(ρ g) + friction(q) + V²/(2 g), all from one datum. The pumping level of each reading
 * counts, not the static one: wait for it to settle. Include no flow (for seconds only) and full flow.
 *
 * @param input - readings, gauge and friction; each field says its unit and range
 * @returns points by rising flow, with their parts
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
  const points = readings.map((reading, i): MeasuredCurvePoint => {
    requireObject(`readings[${i}]`, reading);
    const { flow, pressure, pumpingLevel } = reading;
    requireWithin(`readings[${i}].flow`, flow, 0, 1000, "m³/s");
    requireWithin(`readings[${i}].pressure`, pressure, -1e5, 1e8, "Pa");
    requireWithin(`readings[${i}].pumpingLevel`, pumpingLevel, 0, 5000, "m");
    const lost: number = friction === undefined ? 0 : friction(flow);
    requireWithin("friction", lost, 0, 1e6, "m from the function given");
    const gauge = gaugeHead({ pressure, gaugeElevation, density });
    const velocity = gaugeDiameter === undefined ? 0 : (4 * flow) / (Math.PI * gaugeDiameter * gaugeDiameter);
    const velocityHead = (velocity * velocity) / (2 * STANDARD_GRAVITY);
    return {
      flow,
      head: (pumpingLevel + gauge + lost + velocityHead) as Length,
      lift: pumpingLevel,
      gauge,
      friction: lost as Length,
      velocityHead: velocityHead as Length,
    };
  });
  return { points: points.sort((a, b) => a.flow - b.flow), cautions: pressureCautions };
}
