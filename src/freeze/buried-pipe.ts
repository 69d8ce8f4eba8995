/**
 * A warm pipe in frozen ground: what it loses, and how wide it keeps the ground thawed.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Length, Ratio, Temperature, ThermalConductivity } from "../units/index.ts";
import { FREEZING } from "./constants.ts";

/** A pipe in ground of one temperature. */
export interface BuriedPipeInput {
  /** Depth of the pipe's axis. Above the pipe's outside radius, to 100 m. */
  readonly axisDepth: Length;
  /** Outside diameter of the pipe. 0.001 to 10 m. */
  readonly outsideDiameter: Length;
  /** Temperature of the pipe's surface. 173.15 to 373.15 K. */
  readonly pipe: Temperature;
  /** Temperature of the ground's surface. 173.15 to 373.15 K. */
  readonly ground: Temperature;
  /** Conductivity of the ground. 0.05 to 10 W/(m·K). */
  readonly conductivity: ThermalConductivity;
}

/** Ground that a warm pipe keeps thawed: a cylinder whose axis lies deeper than the pipe's. */
export interface ThawedCylinder {
  /** Depth of its axis, m. */
  readonly axisDepth: Length;
  /** Its radius, m. */
  readonly radius: Length;
  /** How far its axis is below the bottom of the pipe, m; negative while it is above. */
  readonly axisBelowPipe: Length;
  /** The argument A of the method. */
  readonly argument: number;
}

/** Loss and thaw. */
export interface BuriedPipe {
  /** Heat lost by each metre of pipe, W (negative where the ground is warmer). */
  readonly heatLossPerMetre: number;
  /** arccosh(H/r): what divides in the heat loss. */
  readonly shape: Ratio;
  /** The common approximation ln(2H/r), good where the pipe is deep. */
  readonly approximateShape: Ratio;
  /** The thawed cylinder, where the pipe is above freezing and the ground's surface below it. */
  readonly thawed?: ThawedCylinder;
  /** Source of the method. */
  readonly method: "tm-5-852-5";
}

/**
 * Heat lost by a buried pipe in the steady state, and the thawed ground round it.
 *
 * @remarks
 * q = 2 π k (T_p − T_g)/arccosh(H/r). With T* = (0 °C − T_g)/(T_p − T_g), A = T* ln(2H/r) and c = √(H² − r²) the thawed
 * ground is a cylinder of radius c/sinh A about an axis at c coth A.
 *
 * with H `axisDepth`, r half the outside diameter. Steady, homogeneous ground, its surface at one temperature: a bound for a long
 * winter, since real ground takes weeks to answer. The manual prints a radius of 2.08 ft in its example where its own formula
 * gives 2.44 ft.
 *
 * @param input - pipe and ground; each field says its unit and range
 * @returns heat loss, shape factor and thawed cylinder
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { buriedPipe } from "risingmain/freeze";
 * import { celsius, feet, inFeet, wattsPerMetreKelvin } from "risingmain/units";
 *
 * const line = buriedPipe({
 *   axisDepth: feet(4), outsideDiameter: feet(0.5), pipe: celsius(6.34), ground: celsius(-3.66),
 *   conductivity: wattsPerMetreKelvin(1.5),
 * });
 * if (line.thawed === undefined) throw new Error("nothing thawed");
 * inFeet(line.thawed.radius); // ≈ 2.44
 * ```
 *
 * @source tm-5-852-5, p. 12-20
 */
export function buriedPipe(input: BuriedPipeInput): BuriedPipe {
  requireObject("input", input);
  const { axisDepth: H, outsideDiameter, pipe, ground, conductivity } = input;
  requireWithin("outsideDiameter", outsideDiameter, 0.001, 10, "m");
  const r = outsideDiameter / 2;
  requireWithin("axisDepth", H, r * (1 + 1e-6), 100, "m (below the pipe's outside radius)");
  requireWithin("pipe", pipe, 173.15, 373.15, "K");
  requireWithin("ground", ground, 173.15, 373.15, "K");
  requireWithin("conductivity", conductivity, 0.05, 10, "W/(m·K)");
  const shape = Math.acosh(H / r);
  const approximateShape = Math.log((2 * H) / r);
  const loss = {
    heatLossPerMetre: (2 * Math.PI * conductivity * (pipe - ground)) / shape,
    shape: shape as Ratio,
    approximateShape: approximateShape as Ratio,
    method: "tm-5-852-5",
  } as const;
  // With the surface a hair below freezing the cylinder grows without bound: no frost to speak of.
  if (!(pipe > FREEZING && ground < FREEZING - 1e-3)) return loss;
  const argument = ((FREEZING - ground) / (pipe - ground)) * approximateShape;
  const c = Math.sqrt((H - r) * (H + r));
  const axisDepth = c / Math.tanh(argument);
  return {
    ...loss,
    thawed: {
      axisDepth: axisDepth as Length,
      radius: (c / Math.sinh(argument)) as Length,
      axisBelowPipe: (axisDepth - H - r) as Length,
      argument,
    },
  };
}
