/**
 * An air-charged tank at an end of a simulated line: the air follows p Vⁿ, the connection takes its loss.
 *
 * @module
 */
import { findRoot, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { AirTank } from "./line-end-types.ts";

/** The state of a tank between two time steps. */
export interface TankState {
  /** Volume of air, m³. */
  air: number;
  /** Flow into the tank, m³/s. */
  flow: number;
  /** p Vⁿ of the air, held through the surge. */
  readonly gasConstant: number;
  /** Loss of the connection, H = k Q², s²/m⁵. */
  readonly k: number;
}

/** Where the tank stands, and in what water and air. */
export interface TankSite {
  /** Elevation, m. */
  readonly elevation: number;
  /** Specific weight ρ g of the water, N/m³. */
  readonly weight: number;
  /** Pressure of the air outside, Pa. */
  readonly atmosphere: number;
}

/** A tank in balance with a head: filled slowly, at one temperature. */
export function settledTank(tank: AirTank, site: TankSite, head: number): TankState {
  const precharge = tank.precharge + site.atmosphere;
  const pressure = Math.max(precharge, site.weight * (head - site.elevation) + site.atmosphere);
  const air = (tank.volume * precharge) / pressure;
  const area = (Math.PI / 4) * tank.connectionDiameter * tank.connectionDiameter;
  return {
    air,
    flow: 0,
    gasConstant: pressure * air ** tank.exponent,
    k: tank.connectionLoss / (2 * STANDARD_GRAVITY * area * area),
  };
}

/** Absolute pressure of the air at a volume, Pa. */
export function airPressure(tank: AirTank, state: TankState, air: number): number {
  return state.gasConstant / air ** tank.exponent;
}

/**
 * The flow into the tank over the coming step, when the node's head falls with that flow as `headAt` says.
 *
 * The air's pressure and the connection's loss rise with the flow and the node's head does not, so there is one root.
 * It lies between running the tank empty and pressing its air into nothing; at the first the tank gives no more.
 */
export function tankFlow(
  tank: AirTank,
  state: TankState,
  site: TankSite,
  timeStep: number,
  headAt: (flow: number) => number,
): number {
  const airAfter = (flow: number): number => state.air - (timeStep * (state.flow + flow)) / 2;
  const excess = (flow: number): number => {
    const pressure = airPressure(tank, state, airAfter(flow));
    const tankHead = site.elevation + (pressure - site.atmosphere) / site.weight;
    return tankHead + state.k * flow * Math.abs(flow) - headAt(flow);
  };
  const emptying = (2 * (state.air - tank.volume)) / timeStep - state.flow;
  // A billionth of the air left: by then its pressure has grown a billion times.
  const crushing = (2 * state.air * (1 - 1e-9)) / timeStep - state.flow;
  if (excess(emptying) >= 0) return emptying;
  if (excess(crushing) <= 0) return crushing;
  return findRoot(excess, emptying, crushing).x;
}

/** Moves the tank by one step. A tank run empty starts the next step at rest. */
export function fillTank(tank: AirTank, state: TankState, timeStep: number, flow: number): void {
  const air = state.air - (timeStep * (state.flow + flow)) / 2;
  // The emptying flow gives back the tank's volume but for rounding.
  const empty = air >= tank.volume * (1 - 4 * Number.EPSILON);
  state.air = empty ? tank.volume : air;
  state.flow = empty ? 0 : flow;
}
