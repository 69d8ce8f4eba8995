/** Pumps and systems for the laws of this folder. */
import fc from "fast-check";
import { type PumpCurve, pumpCurve } from "risingmain/pump";
import type { Length, Ratio, VolumeFlow } from "risingmain/units";

export const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Falling curves of 2 to 10 points, from a shutoff head of 20 to 300 m, to 0.1 to 100 L/s. */
export const fallingCurves: fc.Arbitrary<PumpCurve> = fc
  .record({
    shutoff: number(20, 300),
    end: number(1e-4, 0.1),
    steps: fc.array(fc.record({ run: number(0.2, 1), drop: number(0.02, 1) }), { minLength: 1, maxLength: 9 }),
    left: number(0.05, 0.7),
  })
  .map(({ shutoff, end, steps, left }) => {
    const runs = steps.reduce((sum, { run }) => sum + run, 0);
    const drops = steps.reduce((sum, { drop }) => sum + drop, 0);
    let flow = 0;
    let fallen = 0;
    const points = [{ flow: 0 as VolumeFlow, head: shutoff as Length, efficiency: 0 as Ratio }];
    for (const { run, drop } of steps) {
      flow += run;
      fallen += drop;
      points.push({
        flow: ((flow / runs) * end) as VolumeFlow,
        head: (shutoff * (1 - (1 - left) * (fallen / drops))) as Length,
        efficiency: (0.7 * Math.sin((flow / runs) * 2)) as Ratio,
      });
    }
    return pumpCurve({ points });
  });

/** What a system takes, as shares of a curve's shutoff head at its end. */
export interface SystemShares {
  readonly lift: number;
  readonly drawdown: number;
  readonly friction: number;
  readonly exponent: number;
}

export const systems: fc.Arbitrary<SystemShares> = fc.record({
  lift: number(-0.2, 0.95),
  drawdown: number(0, 0.5),
  friction: number(0, 3),
  exponent: number(1, 2),
});

export function systemOf(curve: PumpCurve, { lift, drawdown, friction, exponent }: SystemShares) {
  const H = curve.shutoffHead;
  return (flow: VolumeFlow): Length => {
    const q = flow / curve.runoutFlow;
    return (H * (lift + drawdown * q + friction * q ** exponent)) as Length;
  };
}
