/**
 * Filling and cycling with a real pump, whose flow falls as the tank fills.
 *
 * @module
 */
import { findRoot, integrate, requireWithin } from "../numeric/index.ts";
import { type Duration, type Frequency, type GaugePressure, InputError, type VolumeFlow } from "../units/index.ts";
import { type AirCharge, requireAirCharge, requireSwitch, waterShare } from "./air-charge.ts";
import type { WorstDemand } from "./cycle.ts";

/** A tank on a switch, filled by a pump whose flow depends on the pressure. */
export interface FillingInput extends AirCharge {
  /** Gauge pressure at which the pump starts, at the tank. 0 to 100 MPa. */
  readonly cutIn: GaugePressure;
  /** Gauge pressure at which the pump stops, at the tank. Up to 100 MPa. */
  readonly cutOut: GaugePressure;
  /** Flow of the pump into the tank against the gauge pressure there, 0 to 100 m³/s; never rising with pressure. */
  readonly pumpFlowAt: (pressure: GaugePressure) => VolumeFlow;
}

/** The time a pump takes from cut-in to cut-out, or why it never gets there. */
export type FillTime =
  | {
      /** The pump reaches the cut-out. */
      readonly state: "fills";
      /** Time from cut-in to cut-out, s. */
      readonly time: Duration;
      /** Flow at the cut-in, m³/s. */
      readonly flowAtCutIn: VolumeFlow;
      /** Flow at the cut-out, m³/s. */
      readonly flowAtCutOut: VolumeFlow;
    }
  | {
      /** At the cut-out the pump gives no more than is used: the switch never opens. */
      readonly state: "never stops";
      /** What the pump falls short by at the cut-out, m³/s; 0 where it just balances. */
      readonly short: VolumeFlow;
    };

/**
 * Time for a pump to bring a tank from cut-in to cut-out, while some water is used.
 *
 * @remarks
 * t = ∫ w′(p) dp / (Q(p) − q) from cut-in to cut-out
 *
 * with w the water in the tank, Q `pumpFlowAt`, q `demand`. By quadrature to 1e-12 where Q is smooth.
 *
 * @param input - tank, switch, pump and the flow used meanwhile (0 to 100 m³/s)
 * @returns the time, or that the pump never reaches the cut-out
 * @throws {@link units.InputError} naming the first field that is not usable, or the curve where it is not a flow
 *
 * @example
 * ```ts
 * import { tankFillTime } from "risingmain/tank";
 * import { type GaugePressure, gpm, inPsi, psi, standardAtmospheres, usGallons } from "risingmain/units";
 *
 * const pumpFlowAt = (pressure: GaugePressure) => gpm(20 - inPsi(pressure) / 5);
 * const tank = { volume: usGallons(85), precharge: psi(38), atmosphere: standardAtmospheres(1) };
 * const fill = tankFillTime({ ...tank, cutIn: psi(40), cutOut: psi(60), pumpFlowAt, demand: gpm(0) });
 * if (fill.state === "fills") fill.time; // ≈ 130.6
 * ```
 *
 * @source derived: a volume over a flow, summed along the pump's curve
 */
export function tankFillTime(input: FillingInput & { readonly demand: VolumeFlow }): FillTime {
  const { cutOut, flowAt, storedOver, from } = checkedFilling(input);
  const { demand } = input;
  requireWithin("demand", demand, 0, 100, "m³/s");
  const flowAtCutOut = flowAt(cutOut);
  if (!(flowAtCutOut - demand > LEAST_SURPLUS)) {
    return { state: "never stops", short: Math.max(0, demand - flowAtCutOut) as VolumeFlow };
  }
  const time = storedOver((flow) => 1 / (flow - demand), from, demand);
  return {
    state: "fills",
    time: time as Duration,
    flowAtCutIn: flowAt(input.cutIn) as VolumeFlow,
    flowAtCutOut: flowAtCutOut as VolumeFlow,
  };
}

/** The worst use with a real pump, or that the pump never stops. */
export type WorstDemandOnCurve =
  | (WorstDemand & {
      /** The pump reaches the cut-out and cycles. */
      readonly state: "cycles";
      /** The worst use as a share of the mean of the flows at cut-in and cut-out; 0.5 for a flow that does not change. */
      readonly shareOfMeanFlow: number;
    })
  | {
      /** The pump gives nothing at the cut-out, or the tank holds nothing: there is no cycle. */
      readonly state: "no cycle";
    };

/**
 * The use at which a pump starts most often, from its own curve.
 *
 * @remarks
 * The cycle T(q) = W/q + ∫ dw/(Q − q) has one minimum, since both terms bend upwards: where W/q² = ∫ dw/(Q − q)².
 * Half the flow is right only for a pump whose flow does not change with pressure.
 *
 * @param input - tank, switch and pump; each field says its unit and the values it takes
 * @returns the worst use and its cycle, or that there is none
 * @throws {@link units.InputError} naming the first field that is not usable, or the curve where it is not a flow
 *
 * @example
 * ```ts
 * import { worstDemandOnCurve } from "risingmain/tank";
 * import { type GaugePressure, gpm, inGpm, inPerHour, inPsi, psi, standardAtmospheres, usGallons } from "risingmain/units";
 *
 * const pumpFlowAt = (pressure: GaugePressure) => gpm(20 - inPsi(pressure) / 5);
 * const tank = { volume: usGallons(85), precharge: psi(38), atmosphere: standardAtmospheres(1) };
 * const worst = worstDemandOnCurve({ ...tank, cutIn: psi(40), cutOut: psi(60), pumpFlowAt });
 * if (worst.state === "cycles") inGpm(worst.demand); // ≈ 4.90
 * if (worst.state === "cycles") inPerHour(worst.starts); // ≈ 6.8
 * ```
 *
 * @source derived: the minimum of the cycle over the use
 */
export function worstDemandOnCurve(input: FillingInput): WorstDemandOnCurve {
  const { volume, cutIn, cutOut, flowAt, storedOver, from, shareAt } = checkedFilling(input);
  const least = flowAt(cutOut);
  const stored = volume * (shareAt(cutOut) - shareAt(cutIn));
  if (!(least > 1e-9 && stored > 1e-12)) return { state: "no cycle" };
  // dT/dq, times q² so that it stays of one size; rises from −W at no use to beyond any bound at the least flow.
  const slope = (share: number): number => {
    const q = share * least;
    return storedOver((flow) => (q / (flow - q)) ** 2, from, q) - stored;
  };
  // Near the least flow the integral is all but singular and slow; the bracket goes there only if it must.
  let below = LEAST_SHARE;
  let share = 0;
  for (const upTo of SHARES) {
    share = upTo;
    if (slope(upTo) > 0) {
      share = findRoot(slope, below, upTo, SHARE_TOLERANCE).x;
      break;
    }
    below = upTo;
  }
  const demand = share * least;
  const runTime = storedOver((flow) => 1 / (flow - demand), from, demand);
  const offTime = stored / demand;
  return {
    state: "cycles",
    demand: demand as VolumeFlow,
    cycleTime: (runTime + offTime) as Duration,
    runTime: runTime as Duration,
    offTime: offTime as Duration,
    starts: (1 / (runTime + offTime)) as Frequency,
    shareOfMeanFlow: demand / ((flowAt(cutIn) + least) / 2),
  };
}

/** Shares of the least flow between which the worst use is bracketed. */
const LEAST_SHARE = 1e-9;
const SHARES = [0.6, 0.9, 0.99, 0.9999, 1 - 1e-6] as const;
/** The cycle is level at its worst use: a share this near changes its time in the last digits only. */
const SHARE_TOLERANCE = 1e-12;

/** Flows nearer than this count as equal, m³/s: a time over less would pass the age of the well. */
const LEAST_SURPLUS = 1e-15;

function checkedFilling(input: FillingInput) {
  requireAirCharge(input);
  const { volume, precharge, atmosphere, polytropicExponent: n = 1, cutIn, cutOut, pumpFlowAt } = input;
  requireSwitch(cutIn, cutOut);
  if (typeof pumpFlowAt !== "function") throw new InputError("pumpFlowAt", pumpFlowAt, "a function of pressure");
  const flowAt = (pressure: number): number => {
    const flow: unknown = pumpFlowAt(pressure as GaugePressure);
    requireWithin(`pumpFlowAt(${pressure} Pa)`, flow, 0, 100, "m³/s");
    return flow as number;
  };
  const shareAt = (pressure: number): number => waterShare(precharge + atmosphere, pressure + atmosphere, n);
  /** Water stored per rise of pressure, m³/Pa. */
  const compliance = (pressure: number): number =>
    (volume / (n * (pressure + atmosphere))) * ((precharge + atmosphere) / (pressure + atmosphere)) ** (1 / n);
  const from = Math.min(cutOut, Math.max(cutIn, precharge));
  const storedOver = (weight: (flow: number) => number, begin: number, demand: number): number =>
    integrate(
      (pressure) => {
        const flow = flowAt(pressure);
        if (!(flow > demand)) throw new InputError("pumpFlowAt", flow, "a flow that never rises with pressure");
        return compliance(pressure) * weight(flow);
      },
      begin,
      cutOut,
    ).value;
  return { volume, cutIn, cutOut, flowAt, storedOver, from, shareAt };
}
