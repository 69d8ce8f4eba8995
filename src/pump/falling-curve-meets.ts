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
import { type CubicLine, cubicSlope, cubicValue, findRoot } from "../numeric/index.ts";

/** The meeting, or the end of the curve with head to spare there. */
export type Meeting =
  | { readonly state: "meets"; readonly flow: number }
  | { readonly state: "ends"; readonly spare: number }
  | { readonly state: "system falls"; readonly flow: number };

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
/** Halving alone would need about 60 steps to reach the last bit; Newton's method takes five. */
const MOST_NEWTON_STEPS = 100;
/** Estimates hold for smooth systems: a step that came out this many times its estimate shows one that is not. */
const SMOOTH = 100;

/** Finds the meeting; `atRest` is `system(0)`, below the curve's first value. */
export function fallingCurveMeets(curve: CubicLine, system: (flow: number) => number, atRest: number): Meeting {
  const end = curve.x.at(-1) as number;
  const friction = (flow: number): number => system(flow) - atRest;
  // Where the pump makes just the lift, friction leaves an excess of none or less: the bracket's far side, unasked.
  const lift = { scale: 0, at: end, exponent: 1, drift: 0 };
  let high = (curve.y.at(-1) as number) >= atRest ? end : meetsModel(curve, atRest, lift, end / 2, 0, end);
  let low = 0;
  let endIsOpen = high === end;
  const known: { readonly flow: number; readonly friction: number }[] = [];
  let estimate = Number.POSITIVE_INFINITY;
  let flow = FIRST_SHARE * high;
  for (let step = 0; step < MOST_STEPS; step++) {
    const lost = friction(flow);
    const excess = cubicValue(curve, flow) - atRest - lost;
    if (excess === 0) return { state: "meets", flow };
    if (excess > 0 && flow >= high) return beyond(flow, excess, end, curve.y[0] as number);
    if (excess > 0) low = flow;
    else {
      high = flow;
      endIsOpen = false;
    }
    known.unshift({ flow, friction: lost });
    const model = systemModel(known);
    if (model === null) {
      flow = endIsOpen ? end : (low + high) / 2;
      estimate = Number.POSITIVE_INFINITY;
      continue;
    }
    const next = meetsModel(curve, atRest, model, flow, low, high);
    const share = Math.abs(next - flow) / flow;
    const asExpected = estimate < Number.POSITIVE_INFINITY && share <= SMOOTH * estimate;
    estimate = stepError(known, share);
    const settled = share <= 4 * Number.EPSILON || (asExpected && estimate < RELATIVE_TOLERANCE);
    if (settled && !(next === end && endIsOpen)) return { state: "meets", flow: next };
    flow = next;
  }
  return bracketed((at) => cubicValue(curve, at) - atRest - friction(at), low, high, end, curve.y[0] as number);
}

/** Brent's method on what is left of the bracket, its far side asked at last. */
function bracketed(excess: (flow: number) => number, low: number, high: number, end: number, scale: number): Meeting {
  const spare = excess(high);
  if (spare > 0) return beyond(high, spare, end, scale);
  if (spare === 0) return { state: "meets", flow: high };
  if (!(excess(low) > 0)) return { state: "system falls", flow: low };
  return { state: "meets", flow: findRoot(excess, low, high, ROUNDING * end).x };
}

/** Head to spare where there should be none: the curve ends, or rounding hides the meeting, or the system falls. */
function beyond(flow: number, spare: number, end: number, scale: number): Meeting {
  if (flow === end) return { state: "ends", spare };
  return spare <= ROUNDING * scale ? { state: "meets", flow } : { state: "system falls", flow };
}

/** Friction as scale · (flow/at)^(exponent + drift · ln(flow/at)). */
interface SystemModel {
  readonly scale: number;
  readonly at: number;
  readonly exponent: number;
  readonly drift: number;
}

/** The model through the last points asked, newest first; nothing where they do not show friction that grows. */
function systemModel(known: readonly { readonly flow: number; readonly friction: number }[]): SystemModel | null {
  const [newest, second, third] = known;
  if (newest === undefined) return null;
  // No friction: the system is level, and the model too.
  if (!(newest.friction > 0)) return { scale: newest.friction, at: newest.flow, exponent: 0, drift: 0 };
  const usual = { scale: newest.friction, at: newest.flow, exponent: USUAL_EXPONENT, drift: 0 };
  if (second === undefined) return usual;
  const span = Math.log(second.flow / newest.flow);
  const exponent = Math.log(second.friction / newest.friction) / span;
  if (!(exponent > 0 && exponent < 100)) return null;
  if (third === undefined) return { ...usual, exponent };
  const longer = Math.log(third.flow / newest.flow);
  const drift = (Math.log(third.friction / newest.friction) / longer - exponent) / (longer - span);
  return Number.isFinite(drift) ? { ...usual, exponent: exponent - drift * span, drift } : { ...usual, exponent };
}

/**
 * Error still left in a step of that relative length: a constant for the form of the model times the distances to the
 * points it was fitted through. The constants were measured on smooth and rough pipes with drawdown.
 */
function stepError(known: readonly { readonly flow: number }[], share: number): number {
  const [newest, second, third] = known as readonly [{ readonly flow: number }, ...{ readonly flow: number }[]];
  if (second === undefined) return 0.1 * share;
  const near = Math.abs(second.flow / newest.flow - 1);
  if (third === undefined) return 0.02 * share * near;
  return 0.005 * share * near * Math.abs(third.flow / newest.flow - 1);
}

/** Where the curve meets lift and modelled friction: Newton's method kept inside (low, high], both ends known. */
function meetsModel(
  curve: CubicLine,
  atRest: number,
  model: SystemModel,
  from: number,
  low: number,
  high: number,
): number {
  let flow = from;
  let below = low;
  let above = high;
  let endTried = false;
  for (let i = 0; i < MOST_NEWTON_STEPS; i++) {
    const distance = Math.log(flow / model.at);
    const lost = model.scale * Math.exp(distance * (model.exponent + model.drift * distance));
    const excess = cubicValue(curve, flow) - atRest - lost;
    const slope = cubicSlope(curve, flow) - (lost * (model.exponent + 2 * model.drift * distance)) / flow;
    if (excess > 0) below = flow;
    else above = flow;
    const next = flow - excess / slope;
    // The step is judged before the bracket: at the root rounding would send it out, and halving start again.
    if (Math.abs(next - flow) <= 2 * Number.EPSILON * flow) return flow;
    if (next >= high && !endTried) {
      endTried = true;
      flow = high;
    } else if (flow === high && excess >= 0) return high;
    else flow = next > below && next < above ? next : (below + above) / 2;
  }
  return flow;
}
