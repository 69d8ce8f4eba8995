/**
 * Where a falling pump curve meets a system that never falls, in as few calls of the system as can be.
 *
 * The pump's curve is known to the bit and costs nothing; the system may be a chain of pipes and costs much. So each
 * step fits what is known of the system by S(0) + k Qⁿ (its friction), meets that with the pump's curve exactly, and
 * asks the system only there. The exponent comes from two points and its drift from three, so each step multiplies
 * the digits. A bracket is kept throughout, and after a dozen steps Brent's method ends what is left.
 *
 * @module
 */
import { type CubicLine, cubicValue, findRoot, sameBitsExp, sameBitsLog } from "../numeric/index.ts";
import { InputError } from "../units/index.ts";

/** The meeting, or the end of the curve with head to spare there. */
export type Meeting =
  | { readonly state: "meets"; readonly flow: number }
  | { readonly state: "ends"; readonly spare: number };

/** Exponent of pipe friction before two points show the system's own: between smooth (1.75) and rough (2). */
const USUAL_EXPONENT = 1.83;
/** The first flow tried, as a share of the greatest that the lift alone allows. */
const FIRST_SHARE = 0.82;
/** Steps of the method before Brent's takes over; smooth systems take three or four. */
const MOST_STEPS = 12;
/** The flow is accepted without a further call where the step's own error estimate is below this share of it. */
const RELATIVE_TOLERANCE = 1e-12;
/** Heads nearer than this share of the shutoff head, and flows than this of the end, are equal but for rounding. */
const ROUNDING = 1e-12;
/** A step of Halley's method leaves about a third of its cube: one this short leaves less than the tolerance. */
const SHORT_STEP = 1e-4;
/** What a last step may leave by its curvature, as a share of the flow. */
const LEFT_OVER = 1e-14;
/** Halving alone would need about 60 steps to reach the last bit; Halley's method takes one to three. */
const MOST_INNER_STEPS = 100;
/** Estimates hold for smooth systems: a step that came out this many times its estimate shows one that is not. */
const SMOOTH = 100;

/** Finds the meeting; `atRest` is `system(0)`, below the curve's first value. */
export function fallingCurveMeets(curve: CubicLine, system: (flow: number) => number, atRest: number): Meeting {
  const { x, y } = curve;
  const last = x.length - 1;
  const end = x[last] as number;
  const friction = (flow: number): number => {
    const lost = system(flow) - atRest;
    return lost < -ROUNDING * (y[0] as number) ? refuse(flow) : lost;
  };
  // Where the pump makes no more than the lift, friction leaves no excess: the bracket's far side, unasked.
  let i = 1;
  while (i < last && (y[i] as number) > atRest) i++;
  let high = x[i] as number;
  let low = 0;
  let endIsOpen = (y[i] as number) > atRest;
  let second: Asked | undefined;
  let third: Asked | undefined;
  let newest: Asked | undefined;
  let estimate = Number.POSITIVE_INFINITY;
  let flow = FIRST_SHARE * (endIsOpen ? end : chordAt(curve, i, atRest));
  for (let step = 0; step < MOST_STEPS; step++) {
    const lost = friction(flow);
    const excess = cubicValue(curve, flow) - atRest - lost;
    if (excess === 0) return { state: "meets", flow };
    if (excess > 0 && flow >= high) return beyond(flow, excess, end);
    if (excess > 0) low = flow;
    else {
      high = flow;
      endIsOpen = false;
    }
    third = second;
    second = newest;
    newest = { flow, friction: lost };
    const model = systemModel(newest, second, third);
    if (model === null) {
      flow = endIsOpen ? end : (low + high) / 2;
      estimate = Number.POSITIVE_INFINITY;
      continue;
    }
    const next = meetsModel(curve, atRest, model, flow, low, high);
    const share = Math.abs(next - flow) / flow;
    const asExpected = estimate < Number.POSITIVE_INFINITY && share <= SMOOTH * estimate;
    estimate = stepError(share, newest, second, third);
    const settled = asExpected && estimate < RELATIVE_TOLERANCE && !(next === end && endIsOpen);
    if (settled) return { state: "meets", flow: next };
    flow = next;
  }
  // Brent's method on what is left of the bracket, its far side asked at last.
  const excess = (at: number): number => cubicValue(curve, at) - atRest - friction(at);
  const spare = excess(high);
  if (spare > 0) return beyond(high, spare, end);
  // Head was left here when it was asked before.
  if (excess(low) < 0) refuse(low);
  return { state: "meets", flow: findRoot(excess, low, high, ROUNDING * end).x };
}

/** Head left on the far side: the curve ends, or rounding hides the meeting. */
function beyond(flow: number, spare: number, end: number): Meeting {
  return flow === end ? { state: "ends", spare } : { state: "meets", flow };
}

function refuse(flow: number): never {
  throw new InputError("systemHead", flow, "a function whose head never falls as the flow grows");
}

/** Friction as scale · (flow/at)^(exponent + drift · ln(flow/at)). */
interface SystemModel {
  readonly scale: number;
  readonly at: number;
  readonly exponent: number;
  readonly drift: number;
}

/** What was asked of the system: a flow and its friction. */
interface Asked {
  readonly flow: number;
  readonly friction: number;
}

/** The model through the last points asked, newest first; nothing where they show a step, or friction from nothing. */
function systemModel(newest: Asked, second: Asked | undefined, third: Asked | undefined): SystemModel | null {
  const scale = newest.friction;
  const at = newest.flow;
  // No friction: the system is level, and the model too.
  if (!(scale > 0)) return { scale, at, exponent: 0, drift: 0 };
  if (second === undefined) return { scale, at, exponent: USUAL_EXPONENT, drift: 0 };
  const span = sameBitsLog(second.flow / at);
  const exponent = sameBitsLog(second.friction / scale) / span;
  if (!(exponent < 100)) return null;
  if (third === undefined) return { scale, at, exponent, drift: 0 };
  const longer = sameBitsLog(third.flow / at);
  const drift = (sameBitsLog(third.friction / scale) / longer - exponent) / (longer - span);
  if (!Number.isFinite(drift)) return { scale, at, exponent, drift: 0 };
  return { scale, at, exponent: exponent - drift * span, drift };
}

/**
 * Error still left in a step of that relative length: a constant for the form of the model times the distances to the
 * points it was fitted through. The constants were measured on smooth and rough pipes with drawdown.
 */
function stepError(share: number, newest: Asked, second: Asked | undefined, third: Asked | undefined): number {
  if (second === undefined) return 0.1 * share;
  const near = Math.abs(second.flow / newest.flow - 1);
  if (third === undefined) return 0.02 * share * near;
  return 0.005 * share * near * Math.abs(third.flow / newest.flow - 1);
}

/** The flow at which the chord of the i-th piece, counted from one, makes a head. */
function chordAt({ x, y }: CubicLine, i: number, head: number): number {
  const x0 = x[i - 1] as number;
  const y0 = y[i - 1] as number;
  return x0 + (((x[i] as number) - x0) * (y0 - head)) / (y0 - (y[i] as number));
}

/** Where the curve meets lift and modelled friction: Halley's method kept inside (low, high], both ends known. */
function meetsModel(
  { x, y, slope }: CubicLine,
  atRest: number,
  { scale, at, exponent, drift }: SystemModel,
  from: number,
  low: number,
  high: number,
): number {
  let flow = from;
  let below = low;
  let above = high;
  let endTried = false;
  let i = 0;
  for (let step = 0; step < MOST_INNER_STEPS; step++) {
    while (flow > (x[i + 1] as number)) i++;
    while (flow < (x[i] as number)) i--;
    // Value and slope of the piece at once; read apart they cost as much as a pipe's friction.
    const x0 = x[i] as number;
    const y0 = y[i] as number;
    const h = (x[i + 1] as number) - x0;
    const t = (flow - x0) / h;
    const rise = (y[i + 1] as number) - y0;
    const d0 = (slope[i] as number) * h;
    const d1 = (slope[i + 1] as number) * h;
    const c2 = 3 * rise - 2 * d0 - d1;
    const c3 = d0 + d1 - 2 * rise;
    const distance = sameBitsLog(flow / at);
    const lost = scale * sameBitsExp(distance * (exponent + drift * distance));
    const excess = y0 + t * (d0 + t * (c2 + t * c3)) - atRest - lost;
    const local = exponent + 2 * drift * distance;
    const rate = (d0 + t * (2 * c2 + t * 3 * c3)) / h - (lost * local) / flow;
    const bend = (2 * c2 + t * 6 * c3) / (h * h) - (lost * (local * (local - 1) + 2 * drift)) / (flow * flow);
    if (excess > 0) below = flow;
    else above = flow;
    const newton = excess / rate;
    const curvature = (newton * bend) / (2 * rate);
    // Where the two nearly touch the correction is no small one any more, and Newton's own step is the safer.
    const next = flow - (Math.abs(curvature) < 0.5 ? newton / (1 - curvature) : newton);
    // The step is judged before the bracket: at the root rounding would send it out, and halving start again.
    const size = Math.abs(next - flow);
    if (size <= 2 * Number.EPSILON * flow) return flow;
    if (next > below && next < above) {
      if (size <= SHORT_STEP * flow && size * curvature * curvature <= LEFT_OVER * flow) return next;
      flow = next;
    } else if (next >= high && !endTried) {
      endTried = true;
      flow = high;
    } else if (flow === high && excess >= 0) return high;
    else flow = (below + above) / 2;
  }
  return flow;
}
