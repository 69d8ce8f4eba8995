/**
 * Which pump of a list serves every use, and which does it best.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: lists of one length, walked together.
import { type CurveSource, type Network, pumpSource, type RegulatedAt, solveScenarios } from "../network/index.ts";
import {
  requireList,
  requireObject,
  requireOneOf,
  requirePositive,
  requireWithin,
  STANDARD_GRAVITY,
} from "../numeric/index.ts";
import { type PumpCurve, pumpEfficiencyAt, pumpHeadAt, pumpInputPowerAt } from "../pump/index.ts";
import {
  type GaugePressure,
  InputError,
  type Length,
  type Power,
  type Ratio,
  type VolumeFlow,
} from "../units/index.ts";

/** A pump on offer. */
export interface PumpCandidate {
  /** Its name, unique among the candidates. 1 to 200 characters. */
  readonly name: string;
  /** Its curve; with efficiency or input power where energy is to be judged. */
  readonly curve: PumpCurve;
  /** Power its motor may give at the shaft, service factor included; not judged if left out. Above 0 to 1e7 W. */
  readonly motorPower?: Power;
  /** Least flow it may run at (cooling, wear); 0 if left out. 0 to 100 m³/s. */
  readonly leastFlow?: VolumeFlow;
}

/** Where the pump stands. */
export interface PumpPlace {
  /** Junction it feeds. */
  readonly junction: string;
  /** Elevation of the water it draws from against its flow, m. */
  readonly waterLevelAt: (flow: VolumeFlow) => Length;
  /** Head lost between the pump and the junction against the flow, m, never falling. */
  readonly lossAt: (flow: VolumeFlow) => Length;
  /** A regulating valve at the junction, if there is one. */
  readonly regulated?: RegulatedAt;
}

/** One use of the layout and how much of the pumping it is. */
export interface PumpScenario {
  /** What it is called. 1 to 200 characters. */
  readonly name: string;
  /** Names of the outlets that are open. */
  readonly open: readonly string[];
  /** Its share of the hours of pumping; weights are divided by their sum. 1 if left out. Above 0 to 1e6. */
  readonly weight?: number;
}

/** What orders the pumps that serve. */
export type PumpCriterion = "energy" | "margin" | "best efficiency";

/** Candidates, place, uses and limits. */
export interface ChoosePumpInput {
  /** 1 to 1000 pumps. */
  readonly candidates: readonly PumpCandidate[];
  /** The layout without the pump; it may have other sources. */
  readonly network: Omit<Network, "sources"> & Partial<Pick<Network, "sources">>;
  /** Where the pump stands. */
  readonly place: PumpPlace;
  /** 1 to 1000 uses; each must be served. */
  readonly scenarios: readonly PumpScenario[];
  /** Flow that the well gives for good; not judged if left out. Above 0 to 100 m³/s. */
  readonly wellYield?: VolumeFlow;
  /** Most gauge pressure any junction may see with all outlets shut and the pump running; not judged if left out. Above 0 to 1e8 Pa. */
  readonly greatestShutoffPressure?: GaugePressure;
  /** Least pump efficiency in any use; not judged if left out. Above 0 to 1. */
  readonly leastEfficiency?: Ratio;
  /** What orders the pumps that serve; "energy" if left out. */
  readonly rankBy?: PumpCriterion;
}

/** Why a pump is not taken. */
export interface PumpRejection {
  /** What it fails. */
  readonly code:
    | "outlet starves"
    | "cannot supply"
    | "not settled"
    | "more than the well yields"
    | "motor overloaded"
    | "below its least flow"
    | "efficiency too low"
    | "shutoff pressure too high"
    | "curve rises";
  /** The use in which it does; null where it does in none by name. */
  readonly scenario: string | null;
  /** What was found, SI: Pa of margin or pressure, m³/s, W or a ratio by the code. */
  readonly value: number;
  /** What was allowed, in the same unit. */
  readonly limit: number;
}

/** A pump in one use. */
export interface PumpDuty {
  /** Name of the use. */
  readonly scenario: string;
  /** Flow through the pump, m³/s. */
  readonly flow: VolumeFlow;
  /** Head it adds, m. */
  readonly head: Length;
  /** Its efficiency there; null where the curve does not say. */
  readonly efficiency: Ratio | null;
  /** Shaft power there, W; null where the curve does not say. */
  readonly shaftPower: Power | null;
}

/** A pump that serves every use. */
export interface RankedPump {
  /** Its name. */
  readonly name: string;
  /** What it does in each use. */
  readonly duties: readonly PumpDuty[];
  /** Shaft energy for a cubic metre over the pattern of use, J/m³; null where the curve does not say. */
  readonly energyPerVolume: number | null;
  /** Least pressure to spare at any open outlet in any use, Pa. */
  readonly margin: GaugePressure;
  /** Mean distance from the flow of best efficiency over the pattern of use, as a share of it; null likewise. */
  readonly offBestEfficiency: number | null;
}

/** A pump that does not serve. */
export interface RejectedPump {
  /** Its name. */
  readonly name: string;
  /** Everything it fails. */
  readonly reasons: readonly PumpRejection[];
}

/** The pumps that serve, best first, and why the others do not. */
export interface PumpChoice {
  /** The pumps that serve every use, best first. */
  readonly suitable: readonly RankedPump[];
  /** The others, each with every reason. */
  readonly rejected: readonly RejectedPump[];
  /** What ordered them. */
  readonly rankedBy: PumpCriterion;
}

/**
 * The pumps of a list that serve every use of a layout, best first, and the reasons against each of the others.
 *
 * @remarks
 * Each pump is put in its place and each use is solved. By "energy" the order is that of shaft energy per cubic metre,
 * weighted by the pattern of use: Σ w P / Σ w Q; by "margin" the pump with most pressure to spare at its worst outlet
 * comes first; by "best efficiency" the one whose duties lie nearest its flow of best efficiency. A pump whose curve
 * does not say comes after those whose does; ties go by margin, then by name.
 *
 * @param input - candidates, layout, place, uses and limits; each field says its unit and the values it takes
 * @returns the suitable pumps in order and the rejected ones with reasons
 * @throws {@link units.InputError} naming the first part that cannot be used
 *
 * @example
 * ```ts
 * import { pumpCurve } from "risingmain/pump";
 * import { choosePump } from "risingmain/selection";
 * import { celsius, feet, gpm, inches, psi } from "risingmain/units";
 * import { waterAt } from "risingmain/water";
 *
 * const pump = (name: string, shutoff: number, runout: number) => ({
 *   name,
 *   curve: pumpCurve({ points: [{ flow: gpm(0), head: feet(shutoff) }, { flow: gpm(10), head: feet(0.8 * shutoff) }, { flow: gpm(18), head: feet(runout) }] }),
 * });
 * const choice = choosePump({
 *   candidates: [pump("small", 240, 90), pump("middle", 380, 190)],
 *   network: {
 *     water: waterAt({ temperature: celsius(10) }),
 *     junctions: [{ id: "tank tee", elevation: feet(0) }, { id: "field", elevation: feet(20) }],
 *     runs: [{ id: "line", from: "tank tee", to: "field", law: "darcy-weisbach", insideDiameter: inches(1.38), length: feet(900), roughness: feet(0.000005) }],
 *     outlets: [{ id: "hydrant", junction: "field", kind: "fixed demand", flow: gpm(10), leastPressure: psi(30) }],
 *   },
 *   place: { junction: "tank tee", waterLevelAt: () => feet(-150), lossAt: () => feet(5) },
 *   scenarios: [{ name: "hydrant", open: ["hydrant"] }],
 * });
 * choice.suitable.map(({ name }) => name); // => ["middle"]
 * choice.rejected[0]?.reasons.map(({ code }) => code); // => ["outlet starves"]
 * ```
 *
 * @source derived: each pump is solved in each use
 */
export function choosePump(input: ChoosePumpInput): PumpChoice {
  requireObject("input", input);
  const { network, place, rankBy = "energy" } = input;
  requireList("candidates", input.candidates, 1, 1000);
  requireObject("network", network);
  requireObject("place", place);
  requireList("scenarios", input.scenarios, 1, 1000);
  const candidates = Array.from(input.candidates); // a hole in a list must not be passed over
  const scenarios = Array.from(input.scenarios);
  requireOneOf("rankBy", rankBy, ["energy", "margin", "best efficiency"]);
  requireLimits(input);
  const weights = scenarios.map((scenario, s) => {
    requireObject(`scenarios[${s}]`, scenario);
    const { weight = 1 } = scenario;
    requirePositive(`scenarios[${s}].weight`, weight, 1e6, "");
    return weight;
  });
  const names = new Set<string>();
  const suitable: RankedPump[] = [];
  const rejected: { name: string; reasons: readonly PumpRejection[] }[] = [];
  candidates.forEach((candidate, c) => {
    const path = `candidates[${c}]`;
    requireObject(path, candidate);
    const { name, curve, motorPower, leastFlow } = candidate;
    if (!(typeof name === "string" && name.length >= 1 && name.length <= 200) || names.has(name)) {
      throw new InputError(`${path}.name`, name, "a name of 1 to 200 characters that no other candidate has");
    }
    names.add(name);
    if (motorPower !== undefined) requirePositive(`${path}.motorPower`, motorPower, 1e7, "W");
    if (leastFlow !== undefined) requireWithin(`${path}.leastFlow`, leastFlow, 0, 100, "m³/s");
    const source = pumpSource({ ...place, id: pumpName(network), curve });
    const { reasons, duties, margin } = judge(input, candidate, source);
    if (reasons.length > 0) rejected.push({ name, reasons });
    else suitable.push(ranked(candidate, duties, margin, weights, network.water.density));
  });
  return { suitable: suitable.sort(order(rankBy)), rejected, rankedBy: rankBy };
}

function requireLimits({ wellYield, greatestShutoffPressure, leastEfficiency }: ChoosePumpInput): void {
  if (wellYield !== undefined) requirePositive("wellYield", wellYield, 100, "m³/s");
  if (greatestShutoffPressure !== undefined)
    requirePositive("greatestShutoffPressure", greatestShutoffPressure, 1e8, "Pa gauge");
  if (leastEfficiency !== undefined)
    requirePositive("leastEfficiency", leastEfficiency, 1, "as a ratio: 0.50 for 50 %");
}

/** A name that no other source of the layout has. */
function pumpName({ sources = [] }: ChoosePumpInput["network"]): string {
  requireList("network.sources", sources, 0, 999);
  let name = "pump";
  while (sources.some((source) => source?.id === name)) name += "'";
  return name;
}

/** Everything a pump fails; and what it does in each use it can supply, with the least pressure to spare. */
function judge(
  {
    network,
    place,
    scenarios,
    wellYield = Infinity as VolumeFlow,
    greatestShutoffPressure = Infinity as GaugePressure,
    leastEfficiency = 0 as Ratio,
  }: ChoosePumpInput,
  { curve, motorPower = Infinity as Power, leastFlow = 0 as VolumeFlow }: PumpCandidate,
  source: CurveSource,
): { readonly reasons: readonly PumpRejection[]; readonly duties: readonly PumpDuty[]; readonly margin: number } {
  const reasons: PumpRejection[] = [];
  const reject = (code: PumpRejection["code"], scenario: string | null, value: number, limit: number): void => {
    reasons.push({ code, scenario, value, limit });
  };
  const duties: PumpDuty[] = [];
  let margin = Infinity;
  if (curve.shape !== "falling") {
    reject("curve rises", null, curve.rising[0]?.rise ?? 0, 0);
    return { reasons, duties, margin };
  }
  const whole: Network = { ...network, sources: [source, ...(network.sources ?? [])] };
  const { results } = solveScenarios({
    network: whole,
    scenarios: scenarios.map(({ name, open }) => ({ name, open })),
  });
  for (const { name: scenario, result } of results) {
    if (result.state === "cannot supply") {
      reject("cannot supply", scenario, source.largestFlow + result.short, source.largestFlow);
      continue;
    }
    if (result.state === "not settled") {
      reject("not settled", scenario, result.residuals.energy, 0);
      continue;
    }
    result.outlets.forEach(({ pressure, state }, i) => {
      const asked = whole.outlets[i]!.leastPressure ?? 0;
      if (state === "not open") return;
      margin = Math.min(margin, pressure - asked);
      if (state === "starving") reject("outlet starves", scenario, pressure, asked);
    });
    const flow = Math.max(0, Math.min(result.sources[0]!.flow, curve.runoutFlow)) as VolumeFlow;
    const duty = dutyAt(curve, flow, scenario, network.water.density);
    duties.push(duty);
    const { shaftPower, efficiency } = duty;
    if (flow > wellYield) reject("more than the well yields", scenario, flow, wellYield);
    if (flow < leastFlow) reject("below its least flow", scenario, flow, leastFlow);
    if ((shaftPower ?? 0) > motorPower) reject("motor overloaded", scenario, shaftPower!, motorPower);
    if (efficiency !== null && efficiency < leastEfficiency) {
      reject("efficiency too low", scenario, efficiency, leastEfficiency);
    }
  }
  // Against shut outlets without a regulating valve: a valve may fail or pass its minimum flow until the cut-out.
  const level = place.waterLevelAt(0 as VolumeFlow) + curve.shutoffHead;
  const lowest = Math.min(...network.junctions.map(({ elevation }) => elevation));
  const pressure = (level - lowest) * network.water.density * STANDARD_GRAVITY;
  if (pressure > greatestShutoffPressure) reject("shutoff pressure too high", null, pressure, greatestShutoffPressure);
  return { reasons, duties, margin };
}

/** What a pump does at a flow; shaft power from its own line, or from the efficiency. */
function dutyAt(curve: PumpCurve, flow: VolumeFlow, scenario: string, density: number): PumpDuty {
  const head = pumpHeadAt(curve, flow);
  const efficiency = pumpEfficiencyAt(curve, flow);
  const given = pumpInputPowerAt(curve, flow);
  const water = density * STANDARD_GRAVITY * flow * head;
  const shaftPower = given ?? (efficiency ? water / efficiency : null);
  const shown = efficiency ?? (given ? water / given : null);
  return { scenario, flow, head, efficiency: shown as Ratio | null, shaftPower: shaftPower as Power | null };
}

function ranked(
  { name, curve }: PumpCandidate,
  duties: readonly PumpDuty[],
  margin: number,
  weights: readonly number[],
  density: number,
): RankedPump {
  const pumped = duties.reduce((sum, { flow }, s) => sum + weights[s]! * flow, 0);
  const worked = duties.every(({ shaftPower }) => shaftPower !== null)
    ? duties.reduce((sum, { shaftPower }, s) => sum + weights[s]! * shaftPower!, 0)
    : null;
  const best = bestFlow(curve, density);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return {
    name,
    duties,
    energyPerVolume: worked === null || !(pumped > 0) ? null : worked / pumped,
    margin: (Number.isFinite(margin) ? margin : 0) as GaugePressure,
    offBestEfficiency:
      best && duties.reduce((sum, { flow }, s) => sum + weights[s]! * Math.abs(flow / best - 1), 0) / total,
  };
}

/** Steps in which a curve is searched for its best efficiency: to half a per cent of its length. */
const SEARCH_STEPS = 200;

/** Flow of best efficiency; null where the curve does not say. */
function bestFlow(curve: PumpCurve, density: number): number | null {
  let best: number | null = null;
  let highest = 0;
  for (let k = 1; k <= SEARCH_STEPS; k++) {
    const flow = Math.min(curve.runoutFlow, (curve.runoutFlow * k) / SEARCH_STEPS) as VolumeFlow;
    const efficiency = dutyAt(curve, flow, "", density).efficiency ?? 0;
    if (efficiency > highest) {
      highest = efficiency;
      best = flow;
    }
  }
  return best;
}

/** Best first; what is not known comes last; ties by margin, then by name. */
function order(criterion: PumpCriterion): (a: RankedPump, b: RankedPump) => number {
  const score = ({ energyPerVolume, offBestEfficiency, margin }: RankedPump): number => {
    if (criterion === "margin") return -margin;
    return (criterion === "energy" ? energyPerVolume : offBestEfficiency) ?? Infinity;
  };
  return (a, b) => rising(score(a), score(b)) || rising(b.margin, a.margin) || rising(a.name, b.name);
}

function rising<T extends number | string>(x: T, y: T): number {
  return Number(x > y) - Number(x < y);
}
