/**
 * A running system as plain data: well, pump, main, control, tanks.
 *
 * @module
 */
import type { LevelCutOff, RegulatingValve } from "../control/index.ts";
import type { PumpCurve } from "../pump/index.ts";
import type { BankTank } from "../tank/index.ts";
import type {
  AbsolutePressure,
  Area,
  Density,
  Duration,
  GaugePressure,
  Length,
  Ratio,
  VolumeFlow,
} from "../units/index.ts";
import type { DrawdownLaw } from "../well/index.ts";

/** A well the pump draws from. Depths run downwards from one datum, such as the top of the casing. */
export interface WellInService {
  /** Depth of the water at rest. 0 to 10 000 m. */
  readonly staticLevel: Length;
  /** Drawdown against the flow that comes out of the ground. */
  readonly law: DrawdownLaw;
  /**
   * Area of the water surface that rises and falls: the bore less the drop pipe. 0 or left out for a level that follows
   * the pump's flow at once. 0, or 1e-6 to 1e6 m².
   */
  readonly freeArea?: Area;
  /** Depth of the pump's intake; where the water falls to it the pump runs dry and the run ends. 0 to 10 000 m. */
  readonly intake?: Length;
}

/** Loss in the main at one flow. */
export interface MainLossPoint {
  /** Flow in the main. Above 0, at most 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Head lost between pump and tank at that flow: pipe, fittings, check valves, filters. 0 to 10 000 m. */
  readonly headLoss: Length;
}

/** A pressure switch, with or without a regulating valve between pump and tank. */
export interface SwitchControl {
  /** Says that a switch starts and stops the pump. */
  readonly kind: "switch";
  /** Gauge pressure at the switch at which it starts the pump. 0 to 100 MPa. */
  readonly cutIn: GaugePressure;
  /** Gauge pressure at the switch at which it stops the pump. Up to 100 MPa. */
  readonly cutOut: GaugePressure;
  /** The valve, where there is one. */
  readonly valve?: RegulatingValve;
}

/** A drive that turns the pump just fast enough to hold a pressure. */
export interface SpeedControl {
  /** Says that a variable-speed drive runs the pump. */
  readonly kind: "variable speed";
  /** Gauge pressure at which it starts the pump. 0 to 100 MPa. */
  readonly startPressure: GaugePressure;
  /** Gauge pressure it holds. 0 to 100 MPa. */
  readonly setPressure: GaugePressure;
  /** Gauge pressure at which it stops the pump once the use is below the minimum flow; above the start. Up to 100 MPa. */
  readonly stopPressure: GaugePressure;
  /** Least flow it lets the pump give while it runs. Above 0 to 100 m³/s. */
  readonly minimumFlow: VolumeFlow;
}

/** A low-level cut-off with the time it keeps the pump from starting again. */
export interface DryRunProtection extends LevelCutOff {
  /** Least time from a stop for low water to the next start. 1 s to 30 days. */
  readonly restartDelay: Duration;
}

/** Well, pump, main, control and tanks, as they run together. */
export interface RunningSystem {
  /** The pump's curve, from `pumpCurve`; it must fall all the way. */
  readonly pump: PumpCurve;
  /** Electrical efficiency of motor (and drive) together; with it energy is counted at the wire, without it at the shaft. 0.01 to 1. */
  readonly motorEfficiency?: Ratio;
  /** The well. */
  readonly well: WellInService;
  /** Height of the switch over the datum of the well's depths. −10 000 to 10 000 m. */
  readonly rise: Length;
  /**
   * Loss in the main: 1 point for a loss that grows as the square of the flow, or 2 to 1000 points that reach the end of
   * the pump's curve; {@link pipeMainLoss} makes them for a pipe.
   */
  readonly mainLoss: readonly MainLossPoint[];
  /** Most flow a flow-limiting valve at the pump lets through; left out where there is none. Above 0 to 100 m³/s. */
  readonly flowLimit?: VolumeFlow;
  /** What starts, stops and throttles the pump. */
  readonly control: SwitchControl | SpeedControl;
  /** 1 to 1000 tanks; heights count from the switch. */
  readonly tanks: readonly BankTank[];
  /** Exponent n of p·Vⁿ = constant for the tanks' air, 1 if left out. 1 to 1.4. */
  readonly polytropicExponent?: number;
  /** The low-level cut-off, where there is one. */
  readonly lowLevel?: DryRunProtection;
  /** Absolute pressure of the air outside. 10 to 200 kPa. */
  readonly atmosphere: AbsolutePressure;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
}
