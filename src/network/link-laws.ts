/**
 * Head lost in a link against its flow, with its slope: what the solver steps by.
 *
 * Every law rises strictly with flow, through zero or not. What lets water one way only (a check valve, an outlet, a
 * pump) goes on below zero as a straight line so steep that next to nothing flows: the solver then sees one smooth rule,
 * and `steady-flow.ts` shuts the link for good once it is known to be one of those.
 * Private to the network solver.
 *
 * @module
 */
import { STANDARD_GRAVITY } from "../numeric/index.ts";
import { frictionOf } from "../pipe/friction-factor.ts";
import { hazenWilliamsLimits, hazenWilliamsResistance, SLOPE_POWER } from "../pipe/hazen-williams.ts";
import { InputError, type Length, type VolumeFlow } from "../units/index.ts";
import type { CurveSource, NetworkWater, Run } from "./network-parts.ts";

/** Loss and slope of one link at one flow. */
export interface LinkLoss {
  /** Head lost, m. */
  loss: number;
  /** d loss / d flow, s/m²; above 0. */
  slope: number;
}

/** One link's law. */
export interface LinkLaw {
  /** Writes loss and slope at a flow. */
  readonly at: (flow: number, into: LinkLoss) => void;
  /** Slope of the straight line from rest to a usual flow, s/m²: where the first step starts. */
  readonly usualSlope: number;
  /** True where water passes one way only. */
  readonly oneWay: boolean;
  /** Whether the law's source covers a flow. */
  readonly covers: (flow: number) => boolean;
}

/** Of a law that knows no limits. */
const always = (): boolean => true;

/** Velocity that small lines are usually sized for, m/s (common practice); only a place to start from. */
const USUAL_VELOCITY = 1;
/** A link that is shut resists a million times as much as at its usual flow. */
const STEEP = 1e6;
/** Least slope, as a share of the usual one: a power law is level at rest, and a level law has no flow to step to. */
const LEAST_SLOPE = 1e-6;
/** Below this Reynolds number the flow is laminar and the loss a straight line. */
const LAMINAR_END = 2000;
/** Highest Reynolds number that the friction factor takes. */
const MOST_REYNOLDS = 1e17;

/** The law of a run of pipe, or of anything with a power law. */
export function runLaw(run: Run, water: NetworkWater): LinkLaw {
  const oneWay = run.valve?.kind === "check" || run.valve?.kind === "reducing";
  if (run.law === "power")
    return withOneWay(powerLaw(run.resistance, run.exponent, 0, usualPowerFlow(run), always), oneWay);
  const D = run.insideDiameter;
  const area = (Math.PI / 4) * D * D;
  const minor = (run.lossCoefficient ?? 0) / (2 * STANDARD_GRAVITY * area * area);
  const usualFlow = USUAL_VELOCITY * area;
  if (run.law === "hazen-williams") {
    const resistance = hazenWilliamsResistance(D, run.length, run.coefficient);
    const covers = (flow: number): boolean => flow === 0 || hazenWilliamsLimits(D, flow / area).length === 0;
    return withOneWay(powerLaw(resistance, 1 / SLOPE_POWER, minor, usualFlow, covers), oneWay);
  }
  return withOneWay(darcyLaw(D, run.length, run.roughness, water.kinematicViscosity, minor, usualFlow), oneWay);
}

/** Flow at which a power law loses 1 m. */
function usualPowerFlow({ resistance, exponent }: { readonly resistance: number; readonly exponent: number }): number {
  return resistance ** (-1 / exponent);
}

function powerLaw(
  resistance: number,
  exponent: number,
  minor: number,
  usualFlow: number,
  covers: LinkLaw["covers"],
): LinkLaw {
  const power = exponent - 1;
  // A third of the time of Math.pow, and off by 1e-15 of the loss at most. At rest any small flow does, as log 0 does not.
  const raised = (speed: number): number =>
    power === 1 ? speed : Math.exp(power * Math.log(speed || Number.MIN_VALUE));
  const usualSlope = resistance * raised(usualFlow) + minor * usualFlow;
  const least = LEAST_SLOPE * usualSlope;
  return {
    at: (flow, into) => {
      const speed = Math.abs(flow);
      const friction = resistance * raised(speed);
      const slope = exponent * friction + 2 * minor * speed;
      into.loss = flow * (friction + minor * speed);
      into.slope = Math.max(slope, least);
    },
    usualSlope,
    oneWay: false,
    covers,
  };
}

function darcyLaw(
  D: number,
  length: number,
  roughness: number,
  viscosity: number,
  minor: number,
  usualFlow: number,
): LinkLaw {
  const area = (Math.PI / 4) * D * D;
  const reynoldsPerFlow = D / (area * viscosity);
  const perFactor = length / (D * 2 * STANDARD_GRAVITY * area * area);
  const laminar = (64 / reynoldsPerFlow) * perFactor;
  const relativeRoughness = roughness / D;
  const at = (flow: number, into: LinkLoss): void => {
    const speed = Math.abs(flow);
    const reynolds = speed * reynoldsPerFlow;
    if (reynolds <= LAMINAR_END) {
      into.loss = flow * (laminar + minor * speed);
      into.slope = laminar + 2 * minor * speed;
      return;
    }
    const f = frictionOf(Math.min(reynolds, MOST_REYNOLDS), relativeRoughness);
    const friction = perFactor * f.value * speed;
    into.loss = flow * (friction + minor * speed);
    into.slope = friction * (2 + f.slope) + 2 * minor * speed;
  };
  const usual: LinkLoss = { loss: 0, slope: 0 };
  at(usualFlow, usual);
  const covers = (flow: number): boolean =>
    frictionOf(Math.min(Math.max(Math.abs(flow) * reynoldsPerFlow, 1), MOST_REYNOLDS), relativeRoughness).insideRange;
  return { at, usualSlope: usual.loss / usualFlow, oneWay: false, covers };
}

/** An outlet to the air: h = (Q/c)², and nothing is drawn in. The head it may see, m, is where the first step starts. */
export function outletLaw(coefficient: number, usualHead: number): LinkLaw {
  // Head for flow, not flow for head: the root's endless slope at rest would stop the steps short.
  return withOneWay(powerLaw(1 / (coefficient * coefficient), 2, 0, coefficient * Math.sqrt(usualHead), always), true);
}

/** A source whose head falls with flow, seen as a link from the datum that loses what the curve gives. */
export function curveLaw(source: CurveSource, path: string): LinkLaw {
  const { headAtFlow, largestFlow } = source;
  const read = (flow: number): number => {
    const head: unknown = headAtFlow(flow as VolumeFlow);
    if (!(typeof head === "number" && Math.abs(head) <= 1e6)) {
      throw new InputError(`${path}.headAtFlow(${flow})`, head, "a head from -1000000 to 1000000 m");
    }
    return head;
  };
  const shutoff = read(0);
  const runout = read(largestFlow);
  const fall = shutoff - runout;
  if (fall < 0) {
    throw new InputError(
      `${path}.headAtFlow`,
      runout as Length,
      `a head at the largest flow not above that at rest, ${shutoff} m`,
    );
  }
  const usualSlope = Math.max(fall, 1) / largestFlow;
  const least = LEAST_SLOPE * usualSlope;
  const steep = STEEP * usualSlope;
  const step = largestFlow * 1e-6;
  return {
    at: (flow, into) => {
      const inside = flow < 0 ? 0 : Math.min(flow, largestFlow);
      const head = inside === 0 ? shutoff : inside === largestFlow ? runout : read(inside);
      into.loss = -head;
      if (flow !== inside) {
        into.loss += steep * (flow - inside);
        into.slope = steep;
        return;
      }
      const low = Math.max(0, inside - step);
      const high = Math.min(largestFlow, inside + step);
      const slope = (read(low) - read(high)) / (high - low);
      if (slope < -1e-3 * usualSlope) {
        throw new InputError(`${path}.headAtFlow(${inside})`, head, "a head that does not rise with the flow");
      }
      into.slope = Math.max(slope, least);
    },
    usualSlope,
    oneWay: true,
    covers: always,
  };
}

/** The law with next to no flow below zero, where asked. */
function withOneWay(law: LinkLaw, oneWay: boolean): LinkLaw {
  if (!oneWay) return law;
  const steep = STEEP * law.usualSlope;
  return {
    at: (flow, into) => {
      if (flow >= 0) law.at(flow, into);
      else {
        into.loss = steep * flow;
        into.slope = steep;
      }
    },
    usualSlope: law.usualSlope,
    oneWay: true,
    covers: law.covers,
  };
}
