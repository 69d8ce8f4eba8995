/**
 * The pressure-regulating valve between pump and tank: its flow, and the pressure it holds.
 *
 * Wide open below its set pressure; throttling at it, so that the pump gives just what is used; and above it still
 * passing a small minimum flow, which fills the tank to the cut-out once the use stops.
 *
 * @module
 */
import { findRoot, requireObject, requirePositive, requireWithin } from "../numeric/index.ts";
import { type GaugePressure, InputError, type PressureDifference, type VolumeFlow } from "../units/index.ts";
import { calledFlow, type FlowAtPressure, requireFunction } from "./called-flow.ts";
import { requirePressureSwitch } from "./pressure-switch.ts";

/** A pressure-regulating valve between the pump and the tank. */
export interface RegulatingValve {
  /** Gauge pressure it holds at its outlet at the minimum flow. 0 to 100 MPa. */
  readonly setPressure: GaugePressure;
  /** Flow it passes even at the highest outlet pressure. Above 0 to 100 m³/s. */
  readonly minimumFlow: VolumeFlow;
  /** How far the outlet pressure falls below the set as the flow grows from `minimumFlow` to `droopFlow`; 0 if left out. 0 to 100 MPa. */
  readonly droop?: PressureDifference;
  /** The flow at which the whole droop is reached; needed with a droop. Above `minimumFlow` to 100 m³/s. */
  readonly droopFlow?: VolumeFlow;
  /** Pressure lost in the valve wide open, at `openLossFlow`; 0 if left out. Grows as the square of the flow. 0 to 100 MPa. */
  readonly openLoss?: PressureDifference;
  /** The flow that `openLoss` is given at; needed with it. 1e-9 to 100 m³/s. */
  readonly openLossFlow?: VolumeFlow;
  /** Most gauge pressure its inlet may see. 0 to 100 MPa. */
  readonly maximumInlet?: GaugePressure;
}

/** What the valve does: stands wide open, throttles, or passes its minimum flow. */
export type ValveMode = "open" | "regulating" | "minimum flow";

/** A valve between what the pump could give and the pressure after it. */
export interface RegulatedFlowInput {
  /** The valve. */
  readonly valve: RegulatingValve;
  /** Gauge pressure after the valve, at the tank. 0 to 100 MPa. */
  readonly outletPressure: GaugePressure;
  /** Flow the pump would give at that pressure with the valve wide open. 0 to 100 m³/s. */
  readonly openFlow: VolumeFlow;
  /** Flow used; decides the flow only exactly at the set pressure of a valve without droop. 0 to 100 m³/s. */
  readonly demand: VolumeFlow;
}

/** The flow through the valve. */
export interface RegulatedFlow {
  /** Flow into the tank and the outlets, m³/s. */
  readonly flow: VolumeFlow;
  /** What the valve does. */
  readonly mode: ValveMode;
}

/**
 * The flow a pressure-regulating valve lets through.
 *
 * @remarks
 * Q = min(Q_open, Q_min + (p_set − p) · (Q_d − Q_min) / Δp) below the set, min(Q_open, Q_min) above it
 *
 * with Q_open `openFlow`, Q_min `minimumFlow`, p `outletPressure`, Δp `droop` at the flow Q_d `droopFlow`. A model of two
 * straight lines; a real valve bends from one to the other and lags a second or so. Without droop the flow at the set
 * pressure is what is used, between Q_min and Q_open.
 *
 * @param input - the valve, the pressure after it and the flow it could pass
 * @returns the flow and the mode
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example Past its set pressure only the minimum flow goes through
 * ```ts
 * import { regulatedFlow } from "risingmain/control";
 * import { gpm, inGpm, psi } from "risingmain/units";
 *
 * const valve = { setPressure: psi(50), minimumFlow: gpm(1) };
 * const flow = regulatedFlow({ valve, outletPressure: psi(55), openFlow: gpm(12), demand: gpm(0) });
 * flow.mode; // => "minimum flow"
 * inGpm(flow.flow); // ≈ 1.0
 * ```
 *
 * @source derived: from the definitions of set pressure, droop and minimum flow
 */
export function regulatedFlow(input: RegulatedFlowInput): RegulatedFlow {
  requireObject("input", input);
  const { valve, outletPressure, openFlow, demand } = input;
  requireRegulatingValve(valve);
  requireWithin("outletPressure", outletPressure, 0, 1e8, "Pa gauge");
  requireWithin("openFlow", openFlow, 0, 100, "m³/s");
  requireWithin("demand", demand, 0, 100, "m³/s");
  const wanted = wantedFlow(valve, outletPressure, demand);
  if (openFlow <= wanted) return { flow: openFlow, mode: "open" };
  return { flow: wanted as VolumeFlow, mode: wanted > valve.minimumFlow ? "regulating" : "minimum flow" };
}

/** The flow a valve would pass from a pump without limit. */
function wantedFlow(valve: RegulatingValve, pressure: number, demand: number): number {
  const { setPressure, minimumFlow, droop = 0, droopFlow = minimumFlow } = valve;
  if (pressure > setPressure) return minimumFlow;
  if (droop > 0) return minimumFlow + ((setPressure - pressure) / droop) * (droopFlow - minimumFlow);
  return pressure < setPressure ? Number.MAX_VALUE : Math.max(minimumFlow, demand);
}

/** A valve, a switch, a pump and a use. */
export interface PressureHeldInput {
  /** The valve. */
  readonly valve: RegulatingValve;
  /** Gauge pressure at which the switch starts the pump. 0 to 100 MPa. */
  readonly cutIn: GaugePressure;
  /** Gauge pressure at which the switch stops the pump. Up to 100 MPa. */
  readonly cutOut: GaugePressure;
  /** Flow used. 0 to 100 m³/s. */
  readonly demand: VolumeFlow;
  /** Flow of the pump into the tank with the valve wide open (its own loss counted), against the gauge pressure there; never rising. */
  readonly openFlowAt: FlowAtPressure;
}

/** What a running pump and its valve do at a steady use. */
export type PressureHeld =
  | {
      /** The pressure stays where it is and the pump runs on. */
      readonly state: "holds";
      /** Gauge pressure at the tank, Pa. */
      readonly pressure: GaugePressure;
      /** What the valve does. */
      readonly mode: ValveMode;
    }
  | {
      /** The use is below the valve's minimum flow: the tank fills and the switch stops the pump. */
      readonly state: "switch opens";
      /** Flow left to fill the tank at the end, m³/s. */
      readonly fillFlow: VolumeFlow;
    }
  | {
      /** The use is below the minimum flow, but the pump makes too little pressure to reach the cut-out. */
      readonly state: "never reaches cut-out";
      /** Flow of the pump at the cut-out, m³/s. */
      readonly flowAtCutOut: VolumeFlow;
    }
  | {
      /** More is used than the pump gives even at the cut-in: the pressure falls below it. */
      readonly state: "falls below cut-in";
      /** Flow missing at the cut-in, m³/s. */
      readonly short: VolumeFlow;
    };

/**
 * The pressure a running pump and its regulating valve settle at, for a steady use.
 *
 * @remarks
 * The pressure where the flow through the valve equals the use. Between the minimum flow and what the pump gives at the
 * set pressure that is the set pressure, less droop: the pump runs without cycling. Below the minimum flow no pressure
 * balances, the tank fills and the switch opens.
 *
 * @param input - valve, switch, use and the pump's flow against pressure
 * @returns the pressure held, or which way it leaves
 * @throws {@link units.InputError} naming the first field that is not usable, or the curve where it is not a flow
 *
 * @example A hose on an 80/100 psi switch with the pressure held at 88 psi
 * ```ts
 * import { pressureHeld } from "risingmain/control";
 * import { type GaugePressure, gpm, inPsi, psi } from "risingmain/units";
 *
 * const pump = (pressure: GaugePressure) => gpm(Math.max(0, 30 - inPsi(pressure) / 5));
 * const job = { valve: { setPressure: psi(88), minimumFlow: gpm(1) }, cutIn: psi(80), cutOut: psi(100) };
 * const open = pressureHeld({ ...job, demand: gpm(6), openFlowAt: pump });
 * open.state; // => "holds"
 * if (open.state === "holds") inPsi(open.pressure); // ≈ 88.0
 * pressureHeld({ ...job, demand: gpm(0), openFlowAt: pump }).state; // => "switch opens"
 * ```
 *
 * @source derived: a balance of flows
 */
export function pressureHeld(input: PressureHeldInput): PressureHeld {
  requirePressureSwitch(input);
  const { valve, cutIn, cutOut, demand, openFlowAt } = input;
  requireRegulatingValve(valve);
  requireWithin("demand", demand, 0, 100, "m³/s");
  requireFunction("openFlowAt", openFlowAt);
  const openFlow = (pressure: number): number => calledFlow("openFlowAt", openFlowAt, pressure);
  const surplus = (pressure: number): number =>
    Math.min(openFlow(pressure), wantedFlow(valve, pressure, demand)) - demand;

  const atCutOut = surplus(cutOut);
  if (atCutOut > 0) return { state: "switch opens", fillFlow: atCutOut as VolumeFlow };
  const atCutIn = surplus(cutIn);
  if (atCutIn < 0) return { state: "falls below cut-in", short: -atCutIn as VolumeFlow };
  if (demand < valve.minimumFlow)
    return { state: "never reaches cut-out", flowAtCutOut: (atCutOut + demand) as VolumeFlow };
  // The set pressure is asked first: without droop the valve steps there from wide open to its minimum, and no search
  // finds the inside of a step.
  const set = Math.min(Math.max(valve.setPressure, cutIn), cutOut);
  const pressure = findRoot(surplus, set, cutIn).x;
  const mode = openFlow(pressure) <= wantedFlow(valve, pressure, demand) ? "open" : "regulating";
  return { state: "holds", pressure: pressure as GaugePressure, mode };
}

/** Refuses a valve that is not one. @internal */
export function requireRegulatingValve(valve: RegulatingValve): void {
  requireObject("valve", valve);
  const { setPressure, minimumFlow, droop, droopFlow, openLoss, openLossFlow, maximumInlet } = valve;
  requireWithin("valve.setPressure", setPressure, 0, 1e8, "Pa gauge");
  requirePositive("valve.minimumFlow", minimumFlow, 100, "m³/s");
  if (droop !== undefined) {
    requireWithin("valve.droop", droop, 0, 1e8, "Pa");
    if (droop > 0 && !(typeof droopFlow === "number" && droopFlow > minimumFlow && droopFlow <= 100)) {
      throw new InputError(
        "valve.droopFlow",
        droopFlow,
        `a flow above the minimum of ${minimumFlow} m³/s, to 100 m³/s`,
      );
    }
  }
  if (openLoss !== undefined) {
    requireWithin("valve.openLoss", openLoss, 0, 1e8, "Pa");
    // The loss goes with the square of the flow over this one: near nothing it would overflow.
    if (openLoss > 0) requireWithin("valve.openLossFlow", openLossFlow, 1e-9, 100, "m³/s");
  }
  if (maximumInlet !== undefined) requireWithin("valve.maximumInlet", maximumInlet, 0, 1e8, "Pa gauge");
}
