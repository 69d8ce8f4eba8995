/**
 * Whether a regulating valve's setting suits the switch, the pump and the valve itself.
 *
 * @module
 */
import type { Caution } from "../sources/index.ts";
import type { GaugePressure, PressureDifference } from "../units/index.ts";
import { calledPressure, type PressureAtFlow, requireFunction } from "./called-flow.ts";
import type { ControlCondition } from "./condition.ts";
import { requirePressureSwitch } from "./pressure-switch.ts";
import { type RegulatingValve, requireRegulatingValve } from "./regulating-valve.ts";

/** A valve, its switch and the pump before it. */
export interface RegulatingValveCheckInput {
  /** The valve. */
  readonly valve: RegulatingValve;
  /** Gauge pressure at which the switch starts the pump. 0 to 100 MPa. */
  readonly cutIn: GaugePressure;
  /** Gauge pressure at which the switch stops the pump. Up to 100 MPa. */
  readonly cutOut: GaugePressure;
  /**
   * Gauge pressure the pump makes at the valve's inlet against its flow, the well at its highest level; never rising,
   * −1 to 1 GPa.
   */
  readonly pumpPressureAt: PressureAtFlow;
}

/** What can be wrong with a regulating valve. */
export type RegulatingValveCode =
  | "set at or below the cut-in"
  | "set at or above the cut-out"
  | "pump cannot reach cut-out"
  | "inlet pressure above the valve's limit"
  | "pump does not reach the set pressure";

/** What a check of a valve found. */
export interface RegulatingValveCheck {
  /** Pressure at the inlet with only the minimum flow passing, Pa. */
  readonly inletAtMinimumFlow: GaugePressure;
  /** Pressure at the inlet at no flow: the most the pump can put on the valve, Pa. */
  readonly inletAtShutoff: GaugePressure;
  /** Pressure the valve takes up at its minimum flow with the tank at the cut-out, Pa; 0 where there is none to take. */
  readonly throttled: PressureDifference;
  /** What was found; empty where nothing was. */
  readonly conditions: readonly ControlCondition<RegulatingValveCode>[];
  /** Warnings to show with the result. */
  readonly cautions: readonly Caution[];
}

/** Warnings of a throttled pump. */
const VALVE_CAUTIONS: readonly Caution[] = [
  {
    code: "pipe-before-valve",
    text: "Everything between the pump and the regulating valve sees the pump's full pressure, up to shutoff: pipe, fittings and check valves there need that rating.",
    basis: "derived",
  },
  {
    code: "cooling-at-minimum-flow",
    text: "Throttled to its minimum flow for long, the motor must still be cooled by the water passing it: hold the minimum flow against the motor's own figure.",
    basis: "common practice",
  },
];

/**
 * Checks a regulating valve between pump and tank against the switch, the pump and its own limit.
 *
 * @remarks
 * The set pressure must lie between cut-in and cut-out: below the cut-in the pump never leaves its minimum flow, above the
 * cut-out the switch opens first. At its minimum flow the pump must still pass the cut-out, or the switch never opens. The
 * inlet sees up to the pump's shutoff pressure.
 *
 * @param input - the valve, the switch and the pump's pressure against flow
 * @returns the pressures at the inlet, the conditions found and the cautions
 * @throws {@link units.InputError} naming the first field that is not usable, or the curve where it is not a pressure
 *
 * @example A valve good for 125 psi on a pump that shuts off at 150 psi
 * ```ts
 * import { checkRegulatingValve } from "risingmain/control";
 * import { inGpm, inPsi, psi, gpm, type VolumeFlow } from "risingmain/units";
 *
 * const check = checkRegulatingValve({
 *   valve: { setPressure: psi(50), minimumFlow: gpm(1), maximumInlet: psi(125) },
 *   cutIn: psi(40), cutOut: psi(60),
 *   pumpPressureAt: (flow: VolumeFlow) => psi(150 - 0.6 * inGpm(flow) ** 2),
 * });
 * inPsi(check.inletAtMinimumFlow); // ≈ 149.4
 * check.conditions.map(({ code }) => code); // => ["inlet pressure above the valve's limit"]
 * ```
 *
 * @source derived: from what the settings mean
 */
export function checkRegulatingValve(input: RegulatingValveCheckInput): RegulatingValveCheck {
  requirePressureSwitch(input);
  const { valve, cutIn, cutOut, pumpPressureAt } = input;
  requireRegulatingValve(valve);
  requireFunction("pumpPressureAt", pumpPressureAt);
  const { setPressure, minimumFlow, maximumInlet } = valve;
  const atMinimum = calledPressure("pumpPressureAt", pumpPressureAt, minimumFlow);
  const atShutoff = calledPressure("pumpPressureAt", pumpPressureAt, 0);
  const reached = atMinimum - lossAt(valve, minimumFlow);

  const conditions: ControlCondition<RegulatingValveCode>[] = [];
  const found = (code: RegulatingValveCode, value: number, limit: number): void => {
    conditions.push({ code, severity: "problem", value, limit, unit: "Pa", basis: "derived" });
  };
  if (setPressure <= cutIn) found("set at or below the cut-in", setPressure, cutIn);
  if (setPressure >= cutOut) found("set at or above the cut-out", setPressure, cutOut);
  if (reached <= setPressure) found("pump does not reach the set pressure", reached, setPressure);
  else if (reached <= cutOut) found("pump cannot reach cut-out", reached, cutOut);
  const most = Math.max(atShutoff, atMinimum);
  if (maximumInlet !== undefined && most > maximumInlet) {
    found("inlet pressure above the valve's limit", most, maximumInlet);
  }
  return {
    inletAtMinimumFlow: atMinimum as GaugePressure,
    inletAtShutoff: atShutoff as GaugePressure,
    throttled: Math.max(0, reached - cutOut) as PressureDifference,
    conditions,
    cautions: VALVE_CAUTIONS,
  };
}

/** Pressure lost in the valve wide open. */
function lossAt({ openLoss, openLossFlow }: RegulatingValve, flow: number): number {
  return openLoss && openLossFlow ? openLoss * (flow / openLossFlow) ** 2 : 0;
}
