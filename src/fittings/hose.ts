/**
 * A hose with or without a nozzle at its end: the flow a pressure drives through both.
 *
 * @module
 */
import { findRoot, requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import { darcyWeisbachLoss } from "../pipe/index.ts";
import {
  type Density,
  type GaugePressure,
  InputError,
  type KinematicViscosity,
  type Length,
  type PressureDifference,
  type VolumeFlow,
} from "../units/index.ts";

/** A hose, its end, and the pressure at its start. */
export interface HoseFlowInput {
  /** Gauge pressure at the start of the hose while it runs. 0 to 1e7 Pa. */
  readonly pressure: GaugePressure;
  /** Inside diameter of the hose. 0.001 to 1 m. */
  readonly insideDiameter: Length;
  /** Length. 0 to 10 000 m. */
  readonly length: Length;
  /** Sand-grain roughness of the hose; smooth rubber is near 0. 0 to half the diameter, m. */
  readonly roughness: Length;
  /** Rise from the start to the end; negative downhill. −1000 to 1000 m. */
  readonly rise?: Length;
  /** Diameter of the nozzle; an open end of the hose's own bore when left out. 0.0001 m to the inside diameter. */
  readonly nozzleDiameter?: Length;
  /** Discharge coefficient of the nozzle; 1 when left out. 0.01 to 1. */
  readonly dischargeCoefficient?: number;
  /** Sum of the resistance coefficients of what else the water passes, on the velocity head in the hose; 0 when left out. 0 to 1e6. */
  readonly coefficient?: number;
  /** Kinematic viscosity of the water. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
  /** Density of the water. 500 to 2000 kg/m³. */
  readonly density: Density;
}

/** What runs from the end of a hose, or by how much pressure it fails to. */
export type HoseFlow =
  | {
      /** Water runs. */
      readonly state: "flowing";
      /** Flow, m³/s. */
      readonly flow: VolumeFlow;
      /** Head lost along the hose and its fittings, m. */
      readonly headLoss: Length;
      /** Pressure just before the nozzle, Pa; 0 at an open end. */
      readonly nozzlePressure: GaugePressure;
    }
  | {
      /** The pressure does not lift water to the end. */
      readonly state: "no flow";
      /** Pressure that is missing before the first drop runs, Pa. */
      readonly short: PressureDifference;
    };

/**
 * Flow from a hose under a pressure at its start.
 *
 * @remarks
 * p / (ρ g) − z = h_f + (K − 1) V² / (2 g) + (A / (C A_n))² V² / (2 g)
 *
 * with p `pressure`, z `rise`, h_f the friction by Darcy–Weisbach, K `coefficient`, A and A_n the areas of hose and nozzle, C
 * `dischargeCoefficient`; the gauge at the start reads pressure apart from the water's velocity head, hence the −1. The sum rises
 * with flow, so there is one answer. About 10 % in flow.
 *
 * @param input - hose, nozzle and pressure; each field says its unit and the values it takes
 * @returns the flow, or the pressure missing
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example 100 ft of 5/8 in hose with an open end at 50 psi
 * ```ts
 * import { hoseFlow } from "risingmain/fittings";
 * import { feet, inches, inGpm, kilogramsPerCubicMetre, micrometres, psi, squareMetresPerSecond } from "risingmain/units";
 *
 * const hose = hoseFlow({
 *   pressure: psi(50), insideDiameter: inches(0.625), length: feet(100), roughness: micrometres(1.5),
 *   viscosity: squareMetresPerSecond(1.306e-6), density: kilogramsPerCubicMetre(999.7),
 * });
 * hose.state === "flowing" ? inGpm(hose.flow) : 0; // ≈ 13
 * ```
 *
 * @source derived: energy from the gauge to the jet
 * @source colebrook-1939: friction
 */
export function hoseFlow(input: HoseFlowInput): HoseFlow {
  requireObject("input", input);
  const { pressure, insideDiameter: D, length, roughness, viscosity, density } = input;
  const { rise = 0, nozzleDiameter = D, dischargeCoefficient = 1, coefficient = 0 } = input;
  requireWithin("pressure", pressure, 0, 1e7, "Pa");
  requireWithin("insideDiameter", D, 1e-3, 1, "m");
  requireWithin("length", length, 0, 1e4, "m");
  requireWithin("roughness", roughness, 0, D / 2, "m (half the inside diameter)");
  requireWithin("rise", rise, -1e3, 1e3, "m");
  requireWithin("nozzleDiameter", nozzleDiameter, 1e-4, D, "m (the inside diameter)");
  requireWithin("dischargeCoefficient", dischargeCoefficient, 0.01, 1, "");
  requireWithin("coefficient", coefficient, 0, 1e6, "");
  requireWithin("viscosity", viscosity, 1e-9, 1, "m²/s");
  requireWithin("density", density, 500, 2000, "kg/m³");

  const head = pressure / (density * STANDARD_GRAVITY) - rise;
  if (head <= 0)
    return { state: "no flow", short: (Math.abs(head) * density * STANDARD_GRAVITY) as PressureDifference };

  const area = (Math.PI / 4) * D * D;
  const jet = (D / nozzleDiameter) ** 4 / dischargeCoefficient ** 2;
  const friction = (flow: number): number =>
    darcyWeisbachLoss({ flow: flow as VolumeFlow, insideDiameter: D, length, roughness, viscosity }).headLoss;
  const velocityHead = (flow: number): number => (flow / area) ** 2 / (2 * STANDARD_GRAVITY);
  const excess = (flow: number): number => friction(flow) + (coefficient + jet - 1) * velocityHead(flow) - head;

  // The flow without friction, and a little, so that rounding cannot put the answer outside.
  const held = Math.max(coefficient + jet - 1, 1e-12);
  const most = 1.001 * area * Math.min(MOST_VELOCITY, Math.sqrt((2 * STANDARD_GRAVITY * head) / held));
  // An open end without length or fittings would pass any flow: the gauge itself would read 0.
  if (excess(most) <= 0) throw new InputError("length", length, "a hose or nozzle that holds the pressure back");
  const flow = findRoot(excess, 0, most).x;
  return {
    state: "flowing",
    flow: flow as VolumeFlow,
    headLoss: (friction(flow) + coefficient * velocityHead(flow)) as Length,
    nozzlePressure: ((jet - 1) * velocityHead(flow) * density * STANDARD_GRAVITY) as GaugePressure,
  };
}

/** No hose runs this fast, m/s; it only ends the search. */
const MOST_VELOCITY = 1000;
