/**
 * The power a pump takes at a flow, from whatever its curve says of power.
 *
 * @module
 */
import { type CubicLine, cubicSlope, cubicValue, findRoot, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { PumpCurve } from "../pump/index.ts";

/** Power taken at a flow and at the head the pump makes there, W. */
export type PowerAt = (flow: number, head: number) => number;

/** Power at full speed, W at the shaft over `motorEfficiency`; undefined where the curve says nothing of power. */
export function fullSpeedPower(pump: PumpCurve, density: number, motorEfficiency: number): PowerAt | undefined {
  const { inputPower, efficiency, head } = pump;
  if (inputPower !== undefined) {
    return (flow) => cubicValue(inputPower, within(inputPower, flow)) / motorEfficiency;
  }
  if (efficiency === undefined) return undefined;
  const weight = density * STANDARD_GRAVITY;
  return (flow) => {
    const at = within(efficiency, flow);
    const share = cubicValue(efficiency, at);
    // At no flow both water power and efficiency are 0; their quotient is the limit, by slopes.
    const perEfficiency = share > 0 ? at / share : 1 / cubicSlope(efficiency, at);
    const power = (weight * perEfficiency * cubicValue(head, within(head, at))) / motorEfficiency;
    return Number.isFinite(power) && power >= 0 ? power : 0;
  };
}

/**
 * Power at the speed that makes a head at a flow: H(Q/r) r² = head by the affinity laws, power r³ times that at Q/r.
 * Beyond what full speed can do, full speed.
 */
export function variableSpeedPower(pump: PumpCurve, fullSpeed: PowerAt): PowerAt {
  const { head } = pump;
  const end = pump.runoutFlow as number;
  return (flow, wanted) => {
    if (!(flow > 0)) {
      const ratio = Math.sqrt(Math.min(1, Math.max(0, wanted) / pump.shutoffHead));
      return ratio ** 3 * fullSpeed(0, pump.shutoffHead);
    }
    const at = Math.min(flow, end);
    // x = Q/r is the flow at full speed that the affinity laws carry to this one; H(x)/x² falls, so there is one.
    const excess = (x: number): number => cubicValue(head, x) * (at / x) ** 2 - wanted;
    let x = at;
    if (excess(at) > 0) x = excess(end) >= 0 ? end : findRoot(excess, at, end).x;
    return (at / x) ** 3 * fullSpeed(x, cubicValue(head, x));
  };
}

/** The flow, kept to the stretch a line covers. */
function within(line: CubicLine, flow: number): number {
  return Math.min(Math.max(flow, line.x[0] as number), line.x.at(-1) as number);
}
