/**
 * The parts a yard system is drawn with: junctions, runs, outlets and sources.
 *
 * @module
 */
import type { Density, GaugePressure, KinematicViscosity, Length, VolumeFlow } from "../units/index.ts";
import type { OutletCoefficient } from "./outlet-coefficient.ts";

/** A point where runs meet or end: a tee, a hydrant's foot, the tank tee. */
export interface Junction {
  /** Its name, unique among the junctions. 1 to 200 characters. */
  readonly id: string;
  /** Elevation above the datum that all heads share, m. −10 000 to 10 000 m. */
  readonly elevation: Length;
}

/** A check valve: water passes from `from` to `to` only. */
export interface CheckValve {
  /** Which valve it is. */
  readonly kind: "check";
}

/** A pressure-reducing valve at the `to` end: holds a set pressure there, opens wide below it, lets nothing back. */
export interface ReducingValve {
  /** Which valve it is. */
  readonly kind: "reducing";
  /** Gauge pressure held at the `to` junction. 0 to 1e8 Pa. */
  readonly setPressure: GaugePressure;
}

/** A valve turned shut. */
export interface ShutValve {
  /** Which valve it is. */
  readonly kind: "shut";
}

/** What every run has. */
export interface RunEnds {
  /** Its name, unique among the runs. 1 to 200 characters. */
  readonly id: string;
  /** The junction it leaves; flow from here is positive. */
  readonly from: string;
  /** The junction it reaches. */
  readonly to: string;
  /** A valve in the run; none if left out. */
  readonly valve?: CheckValve | ReducingValve | ShutValve;
}

/** A run of pipe by the Darcy–Weisbach equation. */
export interface DarcyRun extends RunEnds {
  /** The law of its friction. */
  readonly law: "darcy-weisbach";
  /** Inside diameter, not the trade size. 0.001 to 20 m. */
  readonly insideDiameter: Length;
  /** Length of pipe. 0.001 to 1e6 m. */
  readonly length: Length;
  /** Equivalent sand-grain height of the wall, 0 for smooth. 0 to half the diameter, m. */
  readonly roughness: Length;
  /** Sum of the resistance coefficients of its fittings, on the velocity in this bore; 0 if left out. 0 to 1e6. */
  readonly lossCoefficient?: number;
}

/** A run of pipe by the rule of Hazen and Williams. */
export interface HazenWilliamsRun extends RunEnds {
  /** The law of its friction. */
  readonly law: "hazen-williams";
  /** Inside diameter, not the trade size. 0.001 to 20 m. */
  readonly insideDiameter: Length;
  /** Length of pipe. 0.001 to 1e6 m. */
  readonly length: Length;
  /** The coefficient C. 10 to 200. */
  readonly coefficient: number;
  /** Sum of the resistance coefficients of its fittings, on the velocity in this bore; 0 if left out. 0 to 1e6. */
  readonly lossCoefficient?: number;
}

/** Anything whose loss was measured or published as a power of the flow: a filter, a softener, an old line. */
export interface PowerRun extends RunEnds {
  /** The law of its loss. */
  readonly law: "power";
  /** Head lost at 1 m³/s, so that h = resistance · Q^exponent. 1e-6 to 1e18 m. */
  readonly resistance: number;
  /** Power of the flow: 1 for slow flow in a filter bed, 2 for fittings. 1 to 3. */
  readonly exponent: number;
}

/** Anything water flows through from one junction to another. */
export type Run = DarcyRun | HazenWilliamsRun | PowerRun;

/** An outlet that takes a fixed flow, whatever the pressure. */
export interface FixedDemand {
  /** Its name, unique among the outlets. 1 to 200 characters. */
  readonly id: string;
  /** The junction it stands on. */
  readonly junction: string;
  /** How it takes water. */
  readonly kind: "fixed demand";
  /** Flow it takes; negative where water is put in. −1000 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Gauge pressure below which the user calls it starved; 0 if left out. 0 to 1e8 Pa. */
  readonly leastPressure?: GaugePressure;
}

/** An outlet that gives what the pressure drives: hydrant, hose, nozzle, sprinkler, float valve. */
export interface OpenOutlet {
  /** Its name, unique among the outlets. 1 to 200 characters. */
  readonly id: string;
  /** The junction it stands on. */
  readonly junction: string;
  /** How it takes water. */
  readonly kind: "pressure-dependent";
  /** Flow at 1 m of head, so that Q = coefficient · √h. 1e-9 to 1e3 m^2.5/s; see {@link outletOfRating}. */
  readonly coefficient: OutletCoefficient;
  /** Height of the opening above the junction, m; 0 if left out. −1000 to 1000 m. */
  readonly height?: Length;
  /** Gauge pressure at the junction below which the user calls it starved; 0 if left out. 0 to 1e8 Pa. */
  readonly leastPressure?: GaugePressure;
}

/** Anything that takes water out. */
export type Outlet = FixedDemand | OpenOutlet;

/** A source whose grade line does not move: a gravity tank, a pond, a pressure tank at the pressure of the moment. */
export interface FixedHeadSource {
  /** Its name, unique among the sources. 1 to 200 characters. */
  readonly id: string;
  /** The junction it feeds. */
  readonly junction: string;
  /** How its head answers to the flow. */
  readonly kind: "fixed head";
  /** Elevation of its water surface, or of its junction plus the pressure head there. −10 000 to 20 000 m. */
  readonly head: Length;
}

/** A source whose head falls as the flow grows: a pump less its lift and its line. Water cannot flow back into it. */
export interface CurveSource {
  /** Its name, unique among the sources. 1 to 200 characters. */
  readonly id: string;
  /** The junction it feeds. */
  readonly junction: string;
  /** How its head answers to the flow. */
  readonly kind: "curve";
  /**
   * Elevation of the grade line it holds at its junction against the flow it gives: pumping level plus pump head less
   * riser losses. Never rising with flow; asked only from 0 to `largestFlow`. See {@link pumpSource}.
   */
  readonly headAtFlow: (flow: VolumeFlow) => Length;
  /** Flow beyond which it gives no more. Above 0 to 1000 m³/s. */
  readonly largestFlow: VolumeFlow;
}

/** Anything that puts water in. */
export type NetworkSource = FixedHeadSource | CurveSource;

/** What the solver needs to know of the water; the result of `waterAt` will do. */
export interface NetworkWater {
  /** Density. 100 to 10 000 kg/m³. */
  readonly density: Density;
  /** Kinematic viscosity. 1e-8 to 1e-2 m²/s. */
  readonly kinematicViscosity: KinematicViscosity;
}

/** A whole layout. */
export interface Network {
  /** The water in it. */
  readonly water: NetworkWater;
  /** 1 to 1 000 000 junctions. */
  readonly junctions: readonly Junction[];
  /** 0 to 1 000 000 runs. */
  readonly runs: readonly Run[];
  /** 0 to 1 000 000 outlets. */
  readonly outlets: readonly Outlet[];
  /** 1 to 1000 sources. */
  readonly sources: readonly NetworkSource[];
}
