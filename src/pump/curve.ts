/**
 * A pump curve: head, and where known efficiency, input power and required suction head, against flow.
 *
 * @module
 */
import { type CubicLine, monotoneCubic, requireList, requireObject, requireWithin } from "../numeric/index.ts";
import {
  InputError,
  type KinematicViscosity,
  type Length,
  type Power,
  type Ratio,
  type VolumeFlow,
} from "../units/index.ts";

/** One point read from a maker's sheet or measured in a test. */
export interface PumpPoint {
  /** Flow through the pump. 0 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Total head the pump adds at that flow. 0 to 10 000 m. */
  readonly head: Length;
  /** Pump efficiency: water power over shaft power, 0.70 for 70 %. 0 to 1; 0 at no flow. */
  readonly efficiency?: Ratio;
  /** Power into the pump's shaft (brake power). 0 to 1e8 W. */
  readonly inputPower?: Power;
  /** Net positive suction head the pump requires. 0 to 1000 m. */
  readonly npshRequired?: Length;
}

/** Points of one pump at one speed. */
export interface PumpCurveInput {
  /** 2 to 1000 points, in any order, no two at the same flow. */
  readonly points: readonly PumpPoint[];
  /** Kinematic viscosity of the liquid, as a check that it is water. 2.7e-7 to 1.9e-6 m²/s; water where left out. */
  readonly viscosity?: KinematicViscosity;
}

/** A quantity against flow: points, their values and slopes, with a cubic between each pair. */
export interface FlowLine {
  /** Flows of the points, strictly ascending, m³/s. */
  readonly x: readonly number[];
  /** Values there, SI. */
  readonly y: readonly number[];
  /** Slopes there, SI per m³/s. */
  readonly slope: readonly number[];
}

/** A part of a curve where the head does not fall as the flow grows. */
export interface RisingPart {
  /** Flow where it begins, m³/s. */
  readonly fromFlow: VolumeFlow;
  /** Flow where it ends, m³/s. */
  readonly toFlow: VolumeFlow;
  /** Head gained over it, m; 0 where the curve is level. */
  readonly rise: Length;
}

/** A pump curve as plain data. Make it with {@link pumpCurve}; read it with {@link pumpHeadAt} and its neighbours. */
export interface PumpCurve {
  /** Head against flow, from no flow to the last point. */
  readonly head: FlowLine;
  /** Pump efficiency against flow, where points gave it. */
  readonly efficiency?: FlowLine;
  /** Shaft power against flow, where points gave it. */
  readonly inputPower?: FlowLine;
  /** Required net positive suction head against flow, where points gave it. */
  readonly npshRequired?: FlowLine;
  /** Head at no flow, m. */
  readonly shutoffHead: Length;
  /** Whether a point gave the shutoff head, or a parabola with its vertex at no flow was carried back to it. */
  readonly shutoffBasis: "given" | "extrapolated";
  /** Greatest head anywhere on the curve, m; the shutoff head unless the curve rises. */
  readonly greatestHead: Length;
  /** Flow of the last point, beyond which nothing is known, m³/s. */
  readonly runoutFlow: VolumeFlow;
  /** Head of the last point, m. */
  readonly runoutHead: Length;
  /** "falling" where the head falls strictly all the way; otherwise the curve is unstable in part. */
  readonly shape: "falling" | "rising in part";
  /** The parts that do not fall; empty for a falling curve. */
  readonly rising: readonly RisingPart[];
}

/** Most points taken; a digitised sheet has tens. */
const MOST_POINTS = 1000;

/** Kinematic viscosity of liquid water from boiling to freezing at sea level, m²/s, a little widened (`iapws-sr6-08`). */
const WATER_VISCOSITY: readonly [number, number] = [2.7e-7, 1.9e-6];

/** Smallest gap between flows, as a share of the largest; closer points give slopes of rounding alone. */
const SMALLEST_GAP = 1e-6;

/**
 * A pump curve through points, smooth, and rising or falling only where the points do.
 *
 * @remarks
 * Between points each quantity is a cubic with three-point slopes limited so that no piece overshoots
 * (`fritsch-carlson-1980`, `hyman-1983`); points of H = a − b Q² are reproduced exactly. Two points give a straight line.
 *
 * Without a point at no flow the head is carried back as a parabola with its vertex there, H = H₁ + b (Q₁² − Q²),
 * b from the slope at the first point, and `shutoffBasis` says so. Efficiency is 0 at no flow by its definition.
 * Makers' points are good to a few per cent (see {@link acceptanceBand}); the interpolation adds far less.
 *
 * @param input - the points; each field says its unit and the values it takes
 * @returns the curve as plain data, with its shutoff head, its end and any part that does not fall
 * @throws {@link units.InputError} naming the first point or field that cannot be used
 *
 * @example
 * ```ts
 * import { pumpCurve, pumpHeadAt } from "risingmain/pump";
 * import { feet, gpm, inFeet } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: gpm(0), head: feet(365) },
 *     { flow: gpm(8), head: feet(322) },
 *     { flow: gpm(12), head: feet(275) },
 *     { flow: gpm(16), head: feet(206) },
 *   ],
 * });
 * curve.shape; // => "falling"
 * inFeet(pumpHeadAt(curve, gpm(12))); // ≈ 275.0
 * ```
 *
 * @source fritsch-carlson-1980: the condition for monotone pieces
 * @source iapws-sr6-08: the viscosity of water
 * @source hyman-1983: limiting three-point slopes
 */
export function pumpCurve(input: PumpCurveInput): PumpCurve {
  requireObject("input", input);
  requireWater(input.viscosity);
  requireList("points", input.points, 2, MOST_POINTS);
  const points = input.points.map((point, i) => checkedPoint(point, `points[${i}]`)).sort((a, b) => a.flow - b.flow);
  requireApart(points);
  return finishCurve({
    head: headLine(points),
    efficiency: optionalLine(points, "efficiency", true),
    inputPower: optionalLine(points, "inputPower", false),
    npshRequired: optionalLine(points, "npshRequired", false),
    shutoffBasis: points.some(({ flow }) => flow === 0) ? "given" : "extrapolated",
  });
}

/** The lines a curve is made of, before what follows from them is worked out. */
interface CurveLines {
  readonly head: FlowLine;
  readonly efficiency?: FlowLine | undefined;
  readonly inputPower?: FlowLine | undefined;
  readonly npshRequired?: FlowLine | undefined;
  readonly shutoffBasis: PumpCurve["shutoffBasis"];
}

/**
 * A curve from its lines: the one place where a curve's other fields are worked out.
 *
 * @internal
 */
export function finishCurve({ head, efficiency, inputPower, npshRequired, shutoffBasis }: CurveLines): PumpCurve {
  const rising = risingParts(head);
  return {
    head,
    ...(efficiency && { efficiency }),
    ...(inputPower && { inputPower }),
    ...(npshRequired && { npshRequired }),
    shutoffHead: head.y[0] as Length,
    shutoffBasis,
    greatestHead: Math.max(...head.y) as Length,
    runoutFlow: head.x.at(-1) as VolumeFlow,
    runoutHead: head.y.at(-1) as Length,
    shape: rising.length === 0 ? "falling" : "rising in part",
    rising,
  };
}

/** A pump's curve is taken on water; a thicker liquid lowers it by rules that are not in this library. */
function requireWater(viscosity: KinematicViscosity | undefined): void {
  if (viscosity === undefined) return;
  requireWithin("viscosity", viscosity, ...WATER_VISCOSITY, "m²/s, that of water: curves are taken on water");
}

function checkedPoint(point: PumpPoint, path: string): PumpPoint {
  requireObject(path, point);
  requireWithin(`${path}.flow`, point.flow, 0, 100, "m³/s");
  requireWithin(`${path}.head`, point.head, 0, 10_000, "m");
  if (point.efficiency !== undefined) {
    requireWithin(`${path}.efficiency`, point.efficiency, 0, 1, "as a ratio: 0.70 for 70 %");
    if (point.flow === 0 && point.efficiency !== 0) {
      throw new InputError(`${path}.efficiency`, point.efficiency, "0 at no flow, where no water power is made");
    }
  }
  if (point.inputPower !== undefined) requireWithin(`${path}.inputPower`, point.inputPower, 0, 1e8, "W");
  if (point.npshRequired !== undefined) requireWithin(`${path}.npshRequired`, point.npshRequired, 0, 1000, "m");
  return point;
}

function requireApart(points: readonly PumpPoint[]): void {
  const most = (points.at(-1) as PumpPoint).flow;
  if (!(most >= 1e-9)) throw new InputError("points", most, "a largest flow of at least 1e-9 m³/s");
  points.reduce((before, point) => {
    if (!(point.flow - before.flow >= SMALLEST_GAP * most)) {
      throw new InputError(
        "points",
        point.flow,
        "no two points at the same flow, nor within a millionth of the largest",
      );
    }
    return point;
  });
}

function headLine(points: readonly PumpPoint[]): FlowLine {
  const line = monotoneCubic(
    points.map(({ flow }) => flow),
    points.map(({ head }) => head),
  );
  const [x0 = 0] = line.x;
  const [y0 = 0] = line.y;
  const [slope0 = 0] = line.slope;
  if (x0 === 0) return line;
  // The piece from (0, y₀ − slope·x₀/2) with slope 0 to (x₀, y₀) with its slope is the parabola itself.
  const shutoff = Math.max(0, y0 - (slope0 * x0) / 2);
  return { x: [0, ...line.x], y: [shutoff, ...line.y], slope: [0, ...line.slope] };
}

/** The line through those points that give a quantity, or nothing where fewer than two do. */
function optionalLine(
  points: readonly PumpPoint[],
  name: "efficiency" | "inputPower" | "npshRequired",
  zeroAtRest: boolean,
): CubicLine | undefined {
  const given = points.filter((point) => point[name] !== undefined);
  const x = given.map(({ flow }) => flow as number);
  const y = given.map((point) => point[name] as number);
  if (zeroAtRest && x[0] !== 0) {
    x.unshift(0);
    y.unshift(0);
  }
  return x.length < 2 ? undefined : monotoneCubic(x, y);
}

function risingParts(head: FlowLine): readonly RisingPart[] {
  const parts: RisingPart[] = [];
  for (let i = 1; i < head.x.length; i++) {
    const rise = (head.y[i] as number) - (head.y[i - 1] as number);
    if (rise < 0) continue;
    const before = parts.at(-1);
    const fromFlow = head.x[i - 1] as VolumeFlow;
    const toFlow = head.x[i] as VolumeFlow;
    if (before?.toFlow === fromFlow)
      parts[parts.length - 1] = { ...before, toFlow, rise: (before.rise + rise) as Length };
    else parts.push({ fromFlow, toFlow, rise: rise as Length });
  }
  return parts;
}
