/**
 * Head lost to friction by the empirical rule of Hazen and Williams: cold water, turbulent, moderate speed.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Length, Temperature, Velocity, VolumeFlow } from "../units/index.ts";

/** K of V = K C R^0.63 S^0.54 in metres: 1.318 · 0.3048^0.37, from the 1.318 of the authors' tables in feet. */
export const METRE_CONSTANT = 0.849182325631969;

/** Exponents of the hydraulic radius and of the slope. */
export const RADIUS_POWER = 0.63;
export const SLOPE_POWER = 0.54;

/**
 * Published range: bore, m (2 in to 6 ft); velocity, m/s (10 ft/s); temperature, K, near 60 °F, which is taken as 5 to
 * 25 °C (common practice).
 */
const BORE = [0.0508, 1.8288] as const;
const FASTEST = 3.048;
const TEMPERATURE = [278.15, 298.15] as const;

/** A full pipe with cold water moving in it. */
export interface HazenWilliamsInput {
  /** Flow; a negative flow runs backwards. −1000 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Inside diameter, not the trade size. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Length of straight pipe. 0 to 1 000 000 m. */
  readonly length: Length;
  /** The coefficient C: the higher, the smoother. 10 to 200. */
  readonly coefficient: number;
  /** Water temperature, only to judge the range; taken as inside it when left out. 253.15 to 383.15 K. */
  readonly temperature?: Temperature;
}

/** A limit of the rule that was passed. */
export type HazenWilliamsLimit = "bore" | "velocity" | "temperature";

/** The loss, and the numbers it was made from. */
export interface HazenWilliamsLoss {
  /** Head lost from inlet to outlet, m; negative when the flow is. */
  readonly headLoss: Length;
  /** Slope of the head loss with flow, s/m²; 0 at rest, never negative. */
  readonly headLossSlope: number;
  /** Mean velocity, m/s, with the sign of the flow. */
  readonly velocity: Velocity;
  /** Id of the source of the rule. */
  readonly method: "williams-hazen-1920";
  /** False where a limit of the published range was passed. */
  readonly insideRange: boolean;
  /** The limits that were passed, none inside the range. */
  readonly outside: readonly HazenWilliamsLimit[];
}

/**
 * Head lost to friction in a straight pipe full of cold water, by Hazen and Williams.
 *
 * @remarks
 * V = K C R^0.63 S^0.54,  h = L (4 |Q| / (π D² K C (D/4)^0.63))^(1/0.54)
 *
 * with R = D/4 the hydraulic radius, S = h/L, and K = 1.318 · 0.3048^0.37 ≈ 0.84918, the exact conversion of the
 * authors' 1.318 in feet. Handbook forms with 10.67, 4.52 or 0.2083 round it and its powers, and differ by up to 1.5 %.
 * Range: 2 in to 6 ft bore, up to 10 ft/s, water near 60 °F. Small smooth lines lie outside; there, and in slow flow,
 * it errs by 10 % and more where `darcyWeisbachLoss` does not.
 *
 * @param input - the pipe and the flow; each field says its unit and the values it takes
 * @returns the loss, with the velocity and the limits passed
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example 200 gpm through 100 ft of 4 in pipe
 * ```ts
 * import { hazenWilliamsLoss } from "risingmain/pipe";
 * import { feet, gpm, inches, inFeet } from "risingmain/units";
 *
 * const loss = hazenWilliamsLoss({ flow: gpm(200), insideDiameter: inches(4.026), length: feet(100), coefficient: 120 });
 * inFeet(loss.headLoss); // ≈ 3.0495
 * loss.insideRange; // => true
 * ```
 *
 * @source williams-hazen-1920: the rule and its constants
 * @source mott-2006, section 8.9: the range
 * @source common practice: "near 60 °F" as 5 to 25 °C
 */
export function hazenWilliamsLoss(input: HazenWilliamsInput): HazenWilliamsLoss {
  requireObject("input", input);
  const { flow, insideDiameter: D, length: L, coefficient: C, temperature } = input;
  requireWithin("flow", flow, -1e3, 1e3, "m³/s");
  requireWithin("insideDiameter", D, 1e-4, 100, "m");
  requireWithin("length", L, 0, 1e6, "m");
  requireWithin("coefficient", C, 10, 200, "");
  if (temperature !== undefined) requireWithin("temperature", temperature, 253.15, 383.15, "K");

  const V = (4 * flow) / (Math.PI * D * D);
  const slope = (Math.abs(V) / (METRE_CONSTANT * C * (D / 4) ** RADIUS_POWER)) ** (1 / SLOPE_POWER);
  const loss = L * slope;
  const outside = hazenWilliamsLimits(D, V, temperature);
  return {
    headLoss: (flow < 0 ? -loss : loss) as Length,
    headLossSlope: flow === 0 ? 0 : loss / SLOPE_POWER / Math.abs(flow),
    velocity: V as Velocity,
    method: "williams-hazen-1920",
    insideRange: outside.length === 0,
    outside,
  };
}

/** The limits of the rule that a bore, a velocity and a temperature pass. */
export function hazenWilliamsLimits(D: number, V: number, temperature?: number): HazenWilliamsLimit[] {
  const outside: HazenWilliamsLimit[] = [];
  if (!(D >= BORE[0] && D <= BORE[1])) outside.push("bore");
  if (Math.abs(V) > FASTEST) outside.push("velocity");
  if (temperature !== undefined && !(temperature >= TEMPERATURE[0] && temperature <= TEMPERATURE[1])) {
    outside.push("temperature");
  }
  return outside;
}

/** Head that a pipe loses at 1 m³/s, for h = resistance · Q^(1/0.54), without the gate. */
export function hazenWilliamsResistance(D: number, L: number, C: number): number {
  return L * ((Math.PI / 4) * D * D * METRE_CONSTANT * C * (D / 4) ** RADIUS_POWER) ** (-1 / SLOPE_POWER);
}
